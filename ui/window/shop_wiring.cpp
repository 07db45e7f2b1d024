// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/shop_wiring.h>

#include <QApplication>
#include <records/shop_window.h>
#include <window/open_windows.h>

namespace caprail {

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
    QObject::connect(window, &ShopWindow::openRequested, window, &openInWindow);
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
