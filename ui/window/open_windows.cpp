// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/open_windows.h>

#include <window/doorbell.h>

namespace caprail {

void openInWindow(const QString& record) {
    if (raiseWindowOf(record)) {
        return;
    }
    MainWindow* empty = nullptr;
    for (const auto& window : openWindows<MainWindow>()) {
        empty = window->session() == nullptr ? window.data() : empty;
    }
    auto* window = empty == nullptr ? new MainWindow : empty;
    const bool isOpen = window->openFile(record);
    if (!isOpen && empty == nullptr) {
        window->deleteLater();
    } else {
        bringToFront(*window);
    }
}

void bringToFront(QWidget& window) {
    window.setWindowState(window.windowState() & ~Qt::WindowMinimized);
    window.show();
    window.raise();
    window.activateWindow();
}

} // namespace caprail
