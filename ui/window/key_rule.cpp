// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/key_rule.h>

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>
#include <array>

namespace caprail {

namespace {

bool isText(const QObject* widget) {
    return qobject_cast<const QLineEdit*>(widget) != nullptr ||
           qobject_cast<const QPlainTextEdit*>(widget) != nullptr ||
           qobject_cast<const QAbstractSpinBox*>(widget) != nullptr;
}

bool mayRepeat(const QObject* focus, const QKeyEvent& key) {
    static constexpr std::array<int, 12> moving{Qt::Key_Left, Qt::Key_Right, Qt::Key_Up,       Qt::Key_Down,
                                                Qt::Key_Home, Qt::Key_End,   Qt::Key_PageUp,   Qt::Key_PageDown,
                                                Qt::Key_Tab,  Qt::Key_Backtab, Qt::Key_Plus,   Qt::Key_Minus};
    if (key.key() == Qt::Key_Backspace || key.key() == Qt::Key_Delete) {
        return isText(focus);
    }
    const bool isZoom = key.key() == Qt::Key_Plus || key.key() == Qt::Key_Minus;
    return std::ranges::find(moving, key.key()) != moving.end() && (!isZoom || (key.modifiers() & Qt::ControlModifier));
}

/// A letter or digit with Alt alone. (AltGr, which some keyboards need for signs, comes as another modifier or with Ctrl.)
bool isAltText(const QKeyEvent& key) {
    return (key.modifiers() & (Qt::AltModifier | Qt::ControlModifier | Qt::MetaModifier)) == Qt::AltModifier &&
           !key.text().isEmpty() && key.text().front().isPrint();
}

bool isEnter(const QKeyEvent& key) {
    return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
}

/// In a dialog Qt presses those that may be its default; from any other, Enter would go to the default one, which the
/// keyboard is not on. A check box there leaves Enter to the dialog.
bool isPressedByEnter(const QAbstractButton& button) {
    const auto* push = qobject_cast<const QPushButton*>(&button);
    const bool isInDialog = qobject_cast<const QDialog*>(button.window()) != nullptr;
    return button.isEnabled() && (!isInDialog || (push != nullptr && !push->autoDefault()));
}

} // namespace

void KeyRule::install() {
    static const QObject* installedFor = nullptr;
    if (installedFor != qApp) {
        qApp->installEventFilter(new KeyRule(qApp));
        installedFor = qApp;
    }
}

bool KeyRule::eventFilter(QObject* watched, QEvent* event) {
    const bool isOverride = event->type() == QEvent::ShortcutOverride;
    if ((!isOverride && event->type() != QEvent::KeyPress) || !watched->isWidgetType()) {
        return QObject::eventFilter(watched, event);
    }
    auto& key = *static_cast<QKeyEvent*>(event);
    if (key.isAutoRepeat() && !mayRepeat(watched, key)) {
        event->accept(); // so that no shortcut sees it either
        return true;
    }
    if (isOverride) {
        return QObject::eventFilter(watched, event);
    }
    if (isAltText(key) && isText(watched)) {
        event->ignore();
        return true;
    }
    if (auto* button = qobject_cast<QAbstractButton*>(watched);
        button != nullptr && isEnter(key) && isPressedByEnter(*button)) {
        button->click();
        return true;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace caprail
