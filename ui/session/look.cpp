// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/look.h>

#include <QGuiApplication>
#include <QPalette>

namespace caprail {

QColor Look::of(CheckState state) const {
    switch (state) {
    case CheckState::good:
        return good;
    case CheckState::out:
        return out;
    case CheckState::tooCloseToCall:
    case CheckState::notProven:
        return close;
    case CheckState::stale:
        return stale;
    case CheckState::notDone:
        break;
    }
    return open;
}

Look lightLook() {
    return {QColor("#fbfaf7"), QColor("#1d2327"), QColor("#c9c6bd"), QColor("#59625f"), QColor("#0b5cad"),
            QColor("#0b6a75"), QColor("#b3261e"), QColor("#8a5a00"), QColor("#7a3e9d"), QColor("#59625f")};
}

Look darkLook() {
    return {QColor("#191d20"), QColor("#ece9e1"), QColor("#434a4e"), QColor("#a9b0ad"), QColor("#7db8f5"),
            QColor("#5cc7d4"), QColor("#ff8a7a"), QColor("#e6b450"), QColor("#d3a4f0"), QColor("#a9b0ad")};
}

Look paperLook() {
    Look look = lightLook();
    look.paper = Qt::white;
    return look;
}

Look screenLook() {
    const QPalette palette = QGuiApplication::palette();
    const bool isDark = palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    return isDark ? darkLook() : lightLook();
}

QColor washed(const QColor& colour, const QColor& ground, double share) {
    const auto mixed = [share](int over, int under) { return static_cast<int>(under + share * (over - under) + 0.5); };
    return {mixed(colour.red(), ground.red()), mixed(colour.green(), ground.green()), mixed(colour.blue(), ground.blue())};
}

QString sign(CheckState state) {
    switch (state) {
    case CheckState::good:
        return QStringLiteral("✓");
    case CheckState::out:
        return QStringLiteral("✕");
    case CheckState::tooCloseToCall:
        return QStringLiteral("≈");
    case CheckState::notProven:
        return QStringLiteral("?");
    case CheckState::stale:
        return QStringLiteral("↻");
    case CheckState::notDone:
        break;
    }
    return QStringLiteral("○");
}

QString stateWord(CheckState state) {
    const std::string text = shown(state);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace caprail
