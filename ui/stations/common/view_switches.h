// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <vector>

class QTabWidget;
class QToolButton;

namespace caprail {

/// The views of a station as a row of buttons, of which one is pressed; each has a digit: Alt+1, Alt+2 … To screen
/// readers they are tabs, and what presses one there changes the view too. The Tab key comes to the view that is shown.
class ViewSwitches : public QWidget {
    Q_OBJECT
public:
    struct View {
        QString name; ///< as it stands on the button, behind its digit
        QString tip;  ///< more of it; empty: the name says all
    };
    ViewSwitches(const std::vector<View>& views, QWidget* parent);
    /// Marks this one, without telling: by weight and ink as well as by the pressed button, which some styles hardly
    /// show.
    void show(int view);

signals:
    void chosen(int view);

protected:
    void changeEvent(QEvent* event) override;

private:
    int m_shown = 0;
    std::vector<QToolButton*> m_buttons;
};

/// The same for pages behind tabs: each gets its digit, in front of its name and as a key. Called once, with all pages
/// in.
void giveDigits(QTabWidget& tabs);
/// Names a page that has a digit.
void nameTab(QTabWidget& tabs, int page, const QString& name);

/// The name of the view that a station shows, without its digit and what is counted behind it; empty: it has one only.
[[nodiscard]] QString shownView(const QWidget& station);

} // namespace caprail
