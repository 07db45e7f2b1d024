// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/preferences.h>

#include <QApplication>
#include <QFileInfo>
#include <QLocale>
#include <QPalette>
#include <QSettings>
#include <session/language.h>
#include <session/look.h>
#include <window/house_style.h>

namespace caprail {

namespace {

constexpr int recentCount = 10;

QPalette paletteFor(const Look& look, bool isDark) {
    QPalette palette;
    const QColor raised = isDark ? look.paper.lighter(135) : QColor("#efede7");
    const QColor ground = isDark ? QColor("#212629") : QColor("#f4f2ec");
    palette.setColor(QPalette::Window, ground);
    palette.setColor(QPalette::WindowText, look.ink);
    palette.setColor(QPalette::Base, look.paper);
    palette.setColor(QPalette::AlternateBase, isDark ? QColor("#1f2427") : QColor("#f4f2ec"));
    palette.setColor(QPalette::Text, look.ink);
    palette.setColor(QPalette::Button, raised);
    palette.setColor(QPalette::ButtonText, look.ink);
    palette.setColor(QPalette::BrightText, look.out);
    palette.setColor(QPalette::ToolTipBase, raised);
    palette.setColor(QPalette::ToolTipText, look.ink);
    palette.setColor(QPalette::PlaceholderText, look.quiet);
    palette.setColor(QPalette::Highlight, isDark ? QColor("#1f4e7d") : look.accent);
    palette.setColor(QPalette::HighlightedText, Qt::white);
    palette.setColor(QPalette::Link, look.accent);
    palette.setColor(QPalette::LinkVisited, look.accent);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, look.quiet);
    }
    return palette;
}

/// Whether the desktop's own palette, before this program dressed itself, is dark.
bool isSystemDark() {
    static const bool isDark = [] {
        const QPalette palette = QGuiApplication::palette();
        return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    }();
    return isDark;
}

} // namespace

Preferences Preferences::load() {
    const QSettings settings;
    Preferences p;
    p.units.length =
        settings.value("units/length", "inch").toString() == "mm" ? LengthUnit::millimetre : LengthUnit::inch;
    const QString torque = settings.value("units/torque", "lbf.ft").toString();
    p.units.torque = torque == "N.m"      ? TorqueUnit::newtonMetre
                     : torque == "lbf.in" ? TorqueUnit::poundInch
                                          : TorqueUnit::poundFoot;
    const QString mark = settings.value("units/decimal-mark", QLocale::system().decimalPoint()).toString();
    p.units.decimalMark = mark == "," ? ',' : '.';
    const QString look = settings.value("look", "system").toString();
    p.look = look == "dark" ? LookChoice::dark : look == "light" ? LookChoice::light : LookChoice::system;
    p.language = chosenLanguage();
    p.shopName = settings.value("shop/name").toString();
    p.logoPath = settings.value("shop/logo").toString();
    p.paper = settings.value("paper", "A4").toString() == "Letter" ? QPageSize::Letter : QPageSize::A4;
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
    settings.setValue("look", look == LookChoice::dark ? "dark" : look == LookChoice::light ? "light" : "system");
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
    const bool isDark = look == LookChoice::dark || (look == LookChoice::system && isSystemDark());
    QApplication::setStyle(new HouseStyle);
    QApplication::setPalette(paletteFor(isDark ? darkLook() : lightLook(), isDark));
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
