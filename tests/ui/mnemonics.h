// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Whether each letter behind Alt leads to one menu, and each letter in a menu to one entry.
#include <QKeySequence>
#include <QMenu>
#include <QMenuBar>
#include <string>

namespace caprail {

/// Each entry whose letter another entry of the same menu has before it, a line each.
inline std::string sharedLetters(const QMenuBar& bar) {
    std::string lines;
    QStringList menus;
    for (const QAction* menu : bar.actions()) {
        const QString letter = QKeySequence::mnemonic(menu->text()).toString();
        lines += letter.isEmpty() || menus.contains(letter) ? menu->text().toStdString() + "\n" : "";
        menus << letter;
        QStringList entries;
        for (const QAction* entry : menu->menu()->actions()) {
            const QString own = QKeySequence::mnemonic(entry->text()).toString();
            lines += !own.isEmpty() && entries.contains(own)
                         ? menu->text().toStdString() + " > " + entry->text().toStdString() + "\n"
                         : "";
            entries << own;
        }
    }
    return lines;
}

} // namespace caprail
