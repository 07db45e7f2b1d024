// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/shop_wiring.h>

#include <QApplication>
#include <records/shop_window.h>
#include <window/doorbell.h>
#include <window/open_windows.h>

namespace caprail {

namespace {

void openRecord(const QString& path) {
    if (raiseWindowOf(path)) {
        return;
    }
    MainWindow* empty = nullptr;
    for (const auto& window : openMainWindows()) {
        empty = window->session() == nullptr ? window.data() : empty;
    }
    auto* window = empty == nullptr ? new MainWindow : empty;
    const bool isOpen = window->openFile(path);
    if (!isOpen && empty == nullptr) {
        window->deleteLater();
    } else {
        bringToFront(*window);
    }
}

} // namespace

ShopWindow* showShop(const QString& folder) {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        auto* window = qobject_cast<ShopWindow*>(widget);
        if (window != nullptr && window->isVisible() && (folder.isEmpty() || window->folder() == folder)) {
            bringToFront(*window);
            return window;
        }
    }
    auto* window = new ShopWindow;
    window->setUnits(Preferences::load().units);
    QObject::connect(window, &ShopWindow::openRequested, window, &openRecord);
    window->show();
    const QString wanted = folder.isEmpty() ? ShopWindow::lastFolder() : folder;
    if (wanted.isEmpty()) {
        window->chooseFolder();
    } else {
        window->showFolder(wanted);
    }
    return window;
}

} // namespace caprail
