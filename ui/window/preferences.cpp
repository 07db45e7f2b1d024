// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/preferences.h>

#include <QApplication>
#include <QFileInfo>
#include <QLocale>
#include <QPalette>
#include <QSettings>
#include <algorithm>
#include <session/language.h>
#include <session/look.h>
#include <window/house_style.h>

namespace caprail {

namespace {

constexpr int recentCount = 10;

QPalette paletteFor(const Look& look, bool isDark, bool isContrast) {
    QPalette palette;
    const QColor raised = isContrast ? look.paper : isDark ? look.paper.lighter(135) : QColor("#efede7");
    const QColor ground = isContrast ? look.paper : isDark ? QColor("#212629") : QColor("#f4f2ec");
    palette.setColor(QPalette::Window, ground);
    palette.setColor(QPalette::WindowText, look.ink);
    palette.setColor(QPalette::Base, look.paper);
    palette.setColor(QPalette::AlternateBase, isContrast ? look.paper
                                              : isDark   ? QColor("#1f2427")
                                                         : QColor("#f4f2ec"));
    palette.setColor(QPalette::Text, look.ink);
    palette.setColor(QPalette::Button, raised);
    palette.setColor(QPalette::ButtonText, look.ink);
    palette.setColor(QPalette::BrightText, look.out);
    palette.setColor(QPalette::ToolTipBase, raised);
    palette.setColor(QPalette::ToolTipText, look.ink);
    palette.setColor(QPalette::PlaceholderText, look.quiet);
    // The ring of what has the focus is made of it: it must stand out from the ground, so on a dark one it is bright.
    palette.setColor(QPalette::Highlight, look.accent);
    palette.setColor(QPalette::HighlightedText, isDark ? QColor("#14181b") : QColor(Qt::white));
    palette.setColor(QPalette::Link, look.accent);
    palette.setColor(QPalette::LinkVisited, look.accent);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, look.quiet);
    }
    return palette;
}

/// The desktop's own palette, before this program dressed itself.
const QPalette& desktopPalette() {
    static const QPalette palette = QGuiApplication::palette();
    return palette;
}

/// The desktop's own letters, likewise.
const QFont& desktopFont() {
    static const QFont font = QApplication::font();
    return font;
}

bool isSystemDark() {
    const QPalette& palette = desktopPalette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

constexpr std::pair<LookChoice, const char*> lookWords[] = {{LookChoice::system, "system"},
                                                            {LookChoice::light, "light"},
                                                            {LookChoice::dark, "dark"},
                                                            {LookChoice::contrast, "contrast"}};

LookChoice lookOf(const QString& word) {
    for (const auto& [look, name] : lookWords) {
        if (word == QLatin1String(name)) {
            return look;
        }
    }
    return LookChoice::system;
}

} // namespace

Units unitsOf(const QLocale& locale) {
    Units units; // the program's own
    if (locale.language() != QLocale::C && locale.measurementSystem() == QLocale::MetricSystem) {
        units = {LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    }
    units.decimalMark = locale.decimalPoint() == QLatin1String(",") ? ',' : '.';
    return units;
}

QPageSize::PageSizeId paperOf(const QLocale& locale) {
    // CLDR, supplemental data, “paperSize US-Letter”; from memory.
    static constexpr QLocale::Territory letter[] = {
        QLocale::UnitedStates, QLocale::Canada,  QLocale::Mexico,    QLocale::Belize,     QLocale::Chile,
        QLocale::Colombia,     QLocale::CostaRica, QLocale::Guatemala, QLocale::Nicaragua,  QLocale::Panama,
        QLocale::ElSalvador,   QLocale::Venezuela, QLocale::Philippines, QLocale::PuertoRico};
    const bool isLetter = locale.language() != QLocale::C && std::ranges::find(letter, locale.territory()) != std::end(letter);
    return isLetter ? QPageSize::Letter : QPageSize::A4;
}

Preferences Preferences::load() {
    const QSettings settings;
    const Units usual = unitsOf(QLocale::system());
    Preferences p;
    p.units.length = settings.value("units/length", usual.length == LengthUnit::millimetre ? "mm" : "inch").toString() == "mm"
                         ? LengthUnit::millimetre
                         : LengthUnit::inch;
    const QString torque =
        settings.value("units/torque", usual.torque == TorqueUnit::newtonMetre ? "N.m" : "lbf.ft").toString();
    p.units.torque = torque == "N.m"      ? TorqueUnit::newtonMetre
                     : torque == "lbf.in" ? TorqueUnit::poundInch
                                          : TorqueUnit::poundFoot;
    const QString mark = settings.value("units/decimal-mark", QString(QLatin1Char(usual.decimalMark))).toString();
    p.units.decimalMark = mark == "," ? ',' : '.';
    p.look = lookOf(settings.value("look").toString());
    const int size = settings.value("text-size", 100).toInt();
    p.textSize = std::ranges::find(textSizes, size) == std::end(textSizes) ? 100 : size;
    p.language = chosenLanguage();
    p.shopName = settings.value("shop/name").toString();
    p.logoPath = settings.value("shop/logo").toString();
    const bool isLetter = paperOf(QLocale::system()) == QPageSize::Letter;
    p.paper = settings.value("paper", isLetter ? "Letter" : "A4").toString() == "Letter" ? QPageSize::Letter : QPageSize::A4;
    p.advice = GirdleAdvice::load();
    const QString confirmation = settings.value("confirmation", "silent").toString();
    p.confirmation = confirmation == "spoken"  ? ConfirmationChoice::spoken
                     : confirmation == "sound" ? ConfirmationChoice::sound
                                               : ConfirmationChoice::silent;
    return p;
}

void Preferences::save() const {
    QSettings settings;
    settings.setValue("units/length", units.length == LengthUnit::millimetre ? "mm" : "inch");
    settings.setValue("units/torque", units.torque == TorqueUnit::newtonMetre ? "N.m"
                                      : units.torque == TorqueUnit::poundInch ? "lbf.in"
                                                                              : "lbf.ft");
    settings.setValue("units/decimal-mark", QString(QLatin1Char(units.decimalMark)));
    for (const auto& [choice, name] : lookWords) {
        if (choice == look) {
            settings.setValue("look", name);
        }
    }
    settings.setValue("text-size", textSize);
    keepChosenLanguage(language);
    settings.setValue("shop/name", shopName);
    settings.setValue("shop/logo", logoPath);
    settings.setValue("paper", paper == QPageSize::Letter ? "Letter" : "A4");
    settings.setValue("confirmation", confirmation == ConfirmationChoice::spoken  ? "spoken"
                                      : confirmation == ConfirmationChoice::sound ? "sound"
                                                                                  : "silent");
    advice.save();
}

void applyLook(LookChoice look) {
    (void)desktopPalette(); // before it is dressed for the first time
    const bool isLikeDesktop = look == LookChoice::system || look == LookChoice::contrast;
    const bool isDark = isLikeDesktop ? isSystemDark() : look == LookChoice::dark;
    const bool isContrast =
        look == LookChoice::contrast || (look == LookChoice::system && isHighContrast(desktopPalette()));
    QApplication::setStyle(new HouseStyle);
    QApplication::setPalette(
        paletteFor(isContrast ? contrastLook(isDark) : isDark ? darkLook() : lightLook(), isDark, isContrast));
}

void applyTextSize(int percent) {
    QFont font = desktopFont();
    if (font.pointSizeF() > 0) {
        font.setPointSizeF(font.pointSizeF() * percent / 100);
    } else {
        font.setPixelSize(font.pixelSize() * percent / 100);
    }
    QApplication::setFont(font);
}

void keepSetting(const QString& key, const QVariant& value) {
    QSettings settings;
    if (settings.value(key) != value) {
        settings.setValue(key, value);
    }
}

QStringList recentFiles() {
    QStringList list = QSettings().value("recent").toStringList();
    list.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
    return list;
}

void noteRecentFile(const QString& path, const QString& whose) {
    QStringList list = recentFiles();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    list.removeAll(absolute);
    list.prepend(absolute);
    list = list.mid(0, recentCount);
    QVariantMap names = QSettings().value("recent-whose").toMap();
    names.insert(absolute, whose);
    names.removeIf([&](const auto& one) { return !list.contains(one.key()); });
    keepSetting(QStringLiteral("recent"), list);
    keepSetting(QStringLiteral("recent-whose"), names);
}

QString whoseRecord(const QString& path) {
    return QSettings().value("recent-whose").toMap().value(QFileInfo(path).absoluteFilePath()).toString();
}

} // namespace caprail
