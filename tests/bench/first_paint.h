// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// For the two programs whose start is compared: they end as soon as their window is on the screen.
#include <QCoreApplication>
#include <QEvent>
#include <QTimer>
#include <cstdio>
#include <sys/resource.h>

namespace caprail {

/// Waits until a window with all that lies on it has been painted once; then prints the largest resident memory that
/// the process ever had, in kilobytes (getrusage, Linux), and ends the event loop.
class FirstPaint : public QObject {
public:
    /// The window itself may be covered by what lies on it and never be painted: any widget's painting counts.
    FirstPaint() { QCoreApplication::instance()->installEventFilter(this); }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint && !m_isPainted) {
            m_isPainted = true;
            // All widgets are painted in one go: the timer's turn comes after the last of them.
            QTimer::singleShot(0, this, [] {
                rusage usage{};
                getrusage(RUSAGE_SELF, &usage);
                std::printf("%ld\n", usage.ru_maxrss);
                std::fflush(stdout); // whoever waits for it stops the clock
                QCoreApplication::quit();
            });
        }
        return false;
    }

private:
    bool m_isPainted = false;
};

} // namespace caprail
