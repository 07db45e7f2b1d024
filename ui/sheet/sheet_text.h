// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Words on the sheet: translated ones, the core's text, and quantities that may be missing.
#include <QCoreApplication>
#include <QString>
#include <ledger/entry.h>
#include <optional>
#include <units/format.h>
#include <units/words.h>

namespace caprail::sheet {

/// Whose words the sheet's are, for translators: Sheet::tr("…").
class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
template <Worded E> QString wordText(E value) {
    return text(word(value));
}
/// "Cap 3 right" from "cap 3 right".
inline QString capitalised(QString words) {
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}
/// "2026-05-04 09:30", in UTC as the record keeps it; never parted over two lines.
inline QString timeText(UtcTime time) {
    return text(format(time)).left(16).replace(QLatin1Char('T'), QChar(QChar::Nbsp));
}
inline QString dayText(UtcTime time) {
    return text(format(dateOf(time)));
}
/// A dash where there is nothing to show.
inline QString none() {
    return QStringLiteral("–");
}
/// Without its unit, for columns whose head names it.
inline QString bare(const std::optional<Length>& length, const Units& units) {
    return length ? text(formatBare(*length, units)) : none();
}
/// An uncertainty or standard deviation in nanometres, without its unit; a dash for none.
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
template <class T> QString byAndWhen(const T& seen) {
    return text(seen.person) + QStringLiteral(", ") + timeText(seen.time);
}

} // namespace caprail::sheet
