// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QEvent>
#include <QKeyEvent>
#include <QWidget>
#include <functional>

namespace caprail {

/// Lets the arrow keys Up and Down, typed in one widget, step through places shown in another: a person filling a pass
/// keeps the keyboard in the value's field all the time.
class StepKeys : public QObject {
public:
    /// `step` gets −1 for Up and +1 for Down.
    StepKeys(QWidget* typedIn, std::function<void(int)> step) : QObject(typedIn), m_step(std::move(step)) {
        typedIn->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress) {
            const int key = static_cast<QKeyEvent*>(event)->key();
            if (key == Qt::Key_Up || key == Qt::Key_Down) {
                m_step(key == Qt::Key_Up ? -1 : 1);
                return true;
            }
        }
        return QObject::eventFilter(watched, event);
    }

private:
    std::function<void(int)> m_step;
};

} // namespace caprail
