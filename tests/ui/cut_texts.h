// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractButton>
#include <QLabel>
#include <QPushButton>
#include <QStyleOptionButton>
#include <QTabBar>
#include <QToolButton>
#include <set>
#include <string>

namespace caprail {

/// The texts of a window that are wider or higher than the room that they are shown in.
inline std::set<std::string> cutTexts(const QWidget& window) {
    std::set<std::string> cut;
    const auto note = [&](const QString& text, int needed, int there) {
        if (needed > there) {
            cut.insert("“" + text.toStdString() + "” needs " + std::to_string(needed) + " of " + std::to_string(there));
        }
    };
    for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
        const auto* tool = qobject_cast<const QToolButton*>(button);
        const bool isSign =
            tool != nullptr && !tool->icon().isNull() && tool->toolButtonStyle() == Qt::ToolButtonIconOnly;
        if (button->isVisible() && !isSign && !button->text().isEmpty()) {
            QStyleOptionButton option;
            option.initFrom(button);
            const QRect room = qobject_cast<const QPushButton*>(button) == nullptr
                                   ? button->rect()
                                   : button->style()->subElementRect(QStyle::SE_PushButtonContents, &option, button);
            const QSize text = button->fontMetrics().size(Qt::TextShowMnemonic, button->text());
            note(button->text(), text.width(), room.width());
            note(button->text(), text.height(), room.height());
        }
    }
    for (const QLabel* label : window.findChildren<QLabel*>()) {
        const bool isText = label->isVisible() && label->pixmap().isNull() && !label->text().isEmpty();
        if (isText && label->textFormat() == Qt::RichText) {
            note(label->text(), label->sizeHint().width(), label->width());
        } else if (isText && label->wordWrap()) {
            note(label->text(), label->heightForWidth(label->width()), label->height());
        } else if (isText) {
            note(label->text(), label->fontMetrics().size(Qt::TextShowMnemonic, label->text()).width(),
                 label->contentsRect().width());
        }
    }
    for (const QTabBar* tabs : window.findChildren<QTabBar*>()) {
        for (int i = 0; tabs->isVisible() && i < tabs->count(); ++i) {
            note(tabs->tabText(i), tabs->fontMetrics().size(Qt::TextShowMnemonic, tabs->tabText(i)).width(),
                 tabs->tabRect(i).width());
            note(tabs->tabText(i), tabs->tabRect(i).right(), tabs->width());
        }
    }
    return cut;
}

} // namespace caprail
