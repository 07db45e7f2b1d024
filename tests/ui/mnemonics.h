// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Whether each letter behind Alt leads to one menu, each letter in a menu to one entry, and each on a page to one
/// thing.
#include <QAbstractButton>
#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>
#include <map>
#include <string>
#include <window/main_window.h>

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

/// Each text in a window whose letter behind Alt is that of a menu, or that of something else on its page, a line each.
/// What a page shows at times only counts too; `letters` says how many texts had one.
inline std::string sharedPageLetters(const MainWindow& window, int& letters) {
    std::map<QString, QString> ofMenus;
    for (const QAction* menu : window.menuBar()->actions()) {
        ofMenus.emplace(QKeySequence::mnemonic(menu->text()).toString(), menu->text());
    }
    std::string lines;
    std::map<std::pair<const QWidget*, QString>, QString> ofPages;
    const auto look = [&](const QWidget& widget, const QString& text) {
        const QString letter = QKeySequence::mnemonic(text).toString();
        const QWidget* page = &widget;
        while (page != nullptr && qobject_cast<QStackedWidget*>(page->parentWidget()) == nullptr) {
            page = page->parentWidget();
        }
        if (letter.isEmpty()) {
            return;
        }
        ++letters;
        const auto menu = ofMenus.find(letter);
        const auto [other, isFirst] = ofPages.emplace(std::pair(page, letter), text);
        if (menu != ofMenus.end() || !isFirst) {
            lines +=
                (text + QStringLiteral(" has the letter of ") + (menu != ofMenus.end() ? menu->second : other->second))
                    .toStdString() +
                "\n";
        }
    };
    for (const auto* button : window.findChildren<QAbstractButton*>()) {
        look(*button, button->text());
    }
    for (const auto* label : window.findChildren<QLabel*>()) {
        look(*label, label->buddy() == nullptr ? QString() : label->text());
    }
    return lines;
}

} // namespace caprail
