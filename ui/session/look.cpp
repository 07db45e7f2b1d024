// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/look.h>

#include <QGuiApplication>
#include <algorithm>
#include <cmath>

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

Look contrastLook(bool isDark) {
    if (isDark) {
        return {Qt::black, Qt::white, QColor("#a6a6a6"), QColor("#e0e0e0"), QColor("#ffe14d"),
                QColor("#7fe9f7"), QColor("#ffa396"), QColor("#ffc861"), QColor("#e6c4ff"), QColor("#e0e0e0")};
    }
    return {Qt::white, Qt::black, QColor("#595959"), QColor("#333333"), QColor("#00408a"),
            QColor("#004a54"), QColor("#8f0f0a"), QColor("#5f3d00"), QColor("#5b2280"), QColor("#333333")};
}

double contrast(const QColor& one, const QColor& other) {
    const auto luminance = [](const QColor& colour) {
        const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
        return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
    };
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

bool isHighContrast(const QPalette& palette) {
    constexpr double ordinary = 19; // the plainest of the usual looks, black on #efefef, has 18.3
    return contrast(palette.color(QPalette::Window), palette.color(QPalette::WindowText)) >= ordinary;
}

Look paperLook() {
    Look look = lightLook();
    look.paper = Qt::white;
    return look;
}

Look screenLook() {
    const QPalette palette = QGuiApplication::palette();
    const bool isDark = palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    return isHighContrast(palette) ? contrastLook(isDark) : isDark ? darkLook() : lightLook();
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
