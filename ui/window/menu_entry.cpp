// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/menu_entry.h>

#include <QMenu>
#include <window/main_window.h>

namespace caprail {

QAction* addEntry(MainWindow& window, QMenu* menu, Needs needs, const QString& text, const QKeySequence& keys,
                  const std::function<void(MainWindow&)>& what) {
    QAction* action = menu->addAction(text);
    action->setShortcut(keys);
    QObject::connect(action, &QAction::triggered, &window, [&window, what] { what(window); });
    if (needs == Needs::record) {
        action->setEnabled(window.session() != nullptr);
        QObject::connect(&window, &MainWindow::recordChanged, action,
                         [&window, action] { action->setEnabled(window.session() != nullptr); });
    }
    return action;
}

} // namespace caprail
