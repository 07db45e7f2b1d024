// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/shop_wiring.h>

#include <QMenuBar>
#include <publishing/publish_dialog.h>
#include <records/database_window.h>
#include <records/shop_window.h>
#include <window/main_window.h>
#include <window/manual.h>
#include <window/open_windows.h>
#include <window/publish_wiring.h>

namespace caprail {

namespace {

/// The window of this kind that shows a place already, in front; null: none does.
template <class Window> Window* raised(const QString& place, QString (Window::*shown)() const) {
    for (const auto& window : openWindows<Window>()) {
        if (place.isEmpty() || (window->*shown)() == place) {
            bringToFront(*window);
            return window;
        }
    }
    return nullptr;
}

void addHelp(QMainWindow& window) {
    QMenu* help = window.menuBar()->addMenu(MainWindow::tr("&Help"));
    QAction* manual = help->addAction(MainWindow::tr("&Manual"));
    manual->setShortcut(QKeySequence::HelpContents);
    QObject::connect(manual, &QAction::triggered, &window,
                     [&window] { Manual::show(&window, QStringLiteral("shop.md")); });
}

} // namespace

DatabaseWindow* showShopDatabase(const QString& name) {
    auto* window = raised<DatabaseWindow>(name, &DatabaseWindow::database);
    if (window != nullptr) {
        return window;
    }
    window = new DatabaseWindow;
    window->setUnits([] { return Preferences::load().units; });
    addHelp(*window);
    QObject::connect(window, &DatabaseWindow::openRequested, window, &openInWindow);
    QObject::connect(window, &DatabaseWindow::folderRequested, window, [] { showShop(); });
    addPublishFoot(*window, [] { return QString(); }, &ShopWindow::lastFolder);
    window->show();
    const QString wanted = name.isEmpty() ? DatabaseWindow::lastDatabase() : name;
    if (wanted.isEmpty()) {
        window->chooseDatabase();
    } else {
        window->showDatabase(wanted);
    }
    return window;
}

ShopWindow* showShop(const QString& folder) {
    auto* window = raised<ShopWindow>(folder, &ShopWindow::folder);
    if (window != nullptr) {
        return window;
    }
    window = new ShopWindow;
    window->setUnits([] { return Preferences::load().units; });
    addHelp(*window);
    QObject::connect(window, &ShopWindow::openRequested, window, &openInWindow);
    QObject::connect(window, &ShopWindow::databaseRequested, window, [] { showShopDatabase(); });
    QObject::connect(window, &ShopWindow::publishRequested, window,
                     [window] { showPublishDialog({}, window->folder(), window); });
    addPublishFoot(*window, [] { return QString(); }, [window] { return window->folder(); });
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
