// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Words on the sheet: translated ones, the core's text, and quantities that may be missing.
#include <QCoreApplication>
#include <QDateTime>
#include <QString>
#include <QTimeZone>
#include <algorithm>
#include <ledger/entry.h>
#include <measure/uncertainty.h>
#include <optional>
#include <units/format.h>
#include <base/plain_text.h>
#include <base/words.h>
#include <vector>

namespace caprail::sheet {

/// Whose words the sheet's are, for translators: Sheet::tr("…").
class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

/// A text of the record: what cannot be seen in it is made visible, line feeds stay.
inline QString text(std::string_view utf8) {
    return QString::fromStdString(visibleLines(utf8));
}
template <Worded E> QString wordText(E value) {
    return text(shown(value));
}
/// "Cap 3 right" from "cap 3 right".
inline QString capitalised(QString words) {
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}
/// "2026-05-04 09:30" by the clock of a time zone; never parted over two lines.
inline QString timeText(UtcTime time, const QTimeZone& zone = QTimeZone::systemTimeZone()) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds, zone).toString(QStringLiteral("yyyy-MM-dd\u00A0HH:mm"));
}
/// "2026-05-04", the day on which the moment fell in that zone.
inline QString dayText(UtcTime time, const QTimeZone& zone = QTimeZone::systemTimeZone()) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds, zone).toString(QStringLiteral("yyyy-MM-dd"));
}
/// A dash where there is nothing to show.
inline QString none() {
    return QStringLiteral("–");
}
inline QString orNone(const QString& words) {
    return words.isEmpty() ? none() : words;
}
/// Without its unit, for columns whose head names it.
inline QString bare(const std::optional<Length>& length, const Units& units) {
    return length ? text(formatBare(*length, units)) : none();
}
/// "57.5, 57.6 …": each reading of one place without its unit, in their order; a dash for none. Of many, as a record
/// that is gone on with for years may hold, how many they are, the smallest, the largest, and the last.
inline QString readingsText(const std::vector<Length>& readings, const Units& units) {
    constexpr std::size_t most = 24;
    constexpr std::size_t last = 12;
    const std::size_t first = readings.size() > most ? readings.size() - last : 0;
    QStringList list;
    for (std::size_t i = first; i < readings.size(); ++i) {
        list << bare(readings[i], units);
    }
    const QString words = list.isEmpty() ? none() : list.join(QStringLiteral(", "));
    if (first == 0) {
        return words;
    }
    const auto [smallest, largest] = std::ranges::minmax(readings);
    return Sheet::tr("%1 readings, %2 to %3; the last %4: %5")
        .arg(readings.size())
        .arg(bare(smallest, units), bare(largest, units))
        .arg(last)
        .arg(words);
}
/// An uncertainty or standard deviation in nanometres, without its unit; a dash for none.
/// One digit finer, so that residuals and clearances add up from what is printed.
inline QString bareFine(const std::optional<Length>& length, const Units& units) {
    return length ? text(formatFineBare(*length, units)) : none();
}

/// "0.00024", or that it is not known: never nothing and never left out.
inline QString bareU(const Uncertainty& uncertainty, const Units& units) {
    return uncertainty.isKnown() ? text(formatUncertaintyBare(uncertainty.known()->expanded, units))
                                 : Sheet::tr("not known");
}

inline QString bareSpread(double nanometres, const Units& units) {
    return nanometres > 0 ? text(formatSpread(nanometres, units)).section(QLatin1Char(' '), 0, 0) : none();
}
/// With its sign and without its unit.
inline QString bareSigned(const std::optional<Length>& length, const Units& units) {
    return length ? text(formatSigned(*length, units)).section(QLatin1Char(' '), 0, 0) : none();
}
/// "Clearance, in"
inline QString inUnit(const QString& head, const Units& units) {
    return head + QStringLiteral(", ") + QLatin1String(symbol(units.length));
}
/// "pickup tube clear: 0.1100 in measured" beside a cell that names what is clear already: "0.1100 in measured".
inline QString withoutName(const QString& sentence, const QString& name) {
    const qsizetype colon = sentence.indexOf(QLatin1String(": "));
    return capitalised(colon > 0 && sentence.startsWith(name, Qt::CaseInsensitive) ? sentence.mid(colon + 2)
                                                                                   : sentence);
}

} // namespace caprail::sheet
