// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/open_windows.h>

#include <QApplication>

namespace caprail {

std::vector<QPointer<MainWindow>> openMainWindows() {
    std::vector<QPointer<MainWindow>> windows;
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* window = qobject_cast<MainWindow*>(widget); window != nullptr && window->isVisible()) {
            windows.emplace_back(window);
        }
    }
    return windows;
}

void bringToFront(QWidget& window) {
    window.setWindowState(window.windowState() & ~Qt::WindowMinimized);
    window.show();
    window.raise();
    window.activateWindow();
}

} // namespace caprail
