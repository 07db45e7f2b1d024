// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QToolBar>
#include <text/label.h>

class QTimer;
class QPushButton;

namespace caprail {

class MainWindow;

/// Over the record, in every view, while screen and disk are not the same: entries that wait to be stored, a file that
/// is no longer where it was, a record that was brought up to date, a clock that goes wrong. Says what is the matter,
/// shows what waits, and has the two ways out: to try again, and to save everything elsewhere and go on there. It looks
/// around every few seconds, so that a stick that was pulled is noticed before the next entry.
class DiskBar : public QToolBar {
    Q_OBJECT
public:
    /// Puts itself into the window.
    explicit DiskBar(MainWindow& window);
    /// Shows what there is to say now; hides when there is nothing.
    void refresh();
    /// Looks whether the file is where it was; the timer does so by itself.
    void look();
    void tryAgain();
    void saveElsewhere();
    /// Takes the record away from the other program or window that has it open, after asking.
    void takeOver();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void follow();
    /// What the person should know and can do nothing about here; empty when there is nothing.
    [[nodiscard]] QString notice() const;
    /// A tool bar does not ask wrapped text how high it is.
    void fit();
    MainWindow& m_window;
    QWidget* m_page = nullptr;
    Label* m_text;
    Label* m_waiting;
    QPushButton* m_again;
    QPushButton* m_elsewhere;
    QPushButton* m_hide;
    QPushButton* m_takeOver;
    QTimer* m_timer;
    QString m_readNotice; ///< was understood, and is not said again
};

} // namespace caprail
