// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDockWidget>
#include <QString>
#include <assessment/check.h>
#include <text/label.h>
#include <vector>

class QPushButton;

namespace caprail {

class MainWindow;

/// One page of the tour: what is seen at a station of the sample, and what to try there.
struct TourPage {
    Station station;
    QString subject; ///< the place that is selected, "main-4"; empty: none
    QString seen, toTry;
};

/// One page for each station, in the order of the work. They tell of the sample named by `tourSample`.
std::vector<TourPage> tourPages();
/// The sample that the tour walks through, without its folder.
QString tourSample();

/// Five minutes through the stations of a sample, in a narrow panel beside the real screen: one page a station, each with
/// something to try. Alt+Right goes on, Alt+Left goes back, Shift+F1 closes it. It belongs to a window that holds a copy of the
/// sample (MainWindow::startTour).
class Tour : public QDockWidget {
    Q_OBJECT
public:
    explicit Tour(MainWindow& window);

public slots:
    void next();
    void back();

private:
    void turnTo(std::size_t page);
    MainWindow& m_window;
    std::vector<TourPage> m_pages;
    std::size_t m_page = 0;
    Label *m_title, *m_seen, *m_try;
    QPushButton *m_back, *m_next;
};

} // namespace caprail
