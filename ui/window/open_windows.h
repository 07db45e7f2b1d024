// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QApplication>
#include <QPointer>
#include <vector>
#include <window/main_window.h>

namespace caprail {

/// The windows of this kind that are on the screen; one that is closed meanwhile is null. Those of records, and the one
/// of the start page, are `MainWindow`s.
template <class Window> std::vector<QPointer<Window>> openWindows() {
    std::vector<QPointer<Window>> windows;
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* window = qobject_cast<Window*>(widget); window != nullptr && window->isVisible()) {
            windows.emplace_back(window);
        }
    }
    return windows;
}

/// Shows a record: in its window, which comes to the front, in that of a start page, or in a new one. What is refused
/// is said there.
void openInWindow(const QString& record);

/// In front of all others, and no longer minimized.
void bringToFront(QWidget& window);

} // namespace caprail
