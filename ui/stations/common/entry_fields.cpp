// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entry_fields.h>
#include <base/say.h>

namespace caprail {

namespace {

template <class T, class U> Result<void> take(T& into, Result<U> read) {
    if (!read) {
        return tl::unexpected(read.error());
    }
    into = std::move(*read);
    return {};
}

template <class Q> QString plainText(const Entered<Q>& entered, const Units& units) {
    return qtText(format(entered.value, units));
}

} // namespace

QString exactText(Length value, const Units& units) {
    return qtText(formatExact(value, units));
}

QString fieldText(const Entered<Length>& entered, const Units& units) {
    const auto back = parseLength(entered.typed, units, {});
    return back && back->value == entered.value ? qtText(entered.typed) : exactText(entered.value, units);
}
QString fieldText(const Entered<Torque>& entered, const Units& units) {
    const auto back = parseTorque(entered.typed, units, {});
    return back && back->value == entered.value ? qtText(entered.typed) : plainText(entered, units);
}
QString fieldText(const Entered<Angle>& entered, const Units& units) {
    const auto back = parseAngle(entered.typed, units, {});
    return back && back->value == entered.value ? qtText(entered.typed) : plainText(entered, units);
}
QString fieldText(const Entered<Temperature>& entered, const Units& units) {
    const auto back = parseTemperature(entered.typed, units, {});
    return back && back->value == entered.value ? qtText(entered.typed) : plainText(entered, units);
}
QString fieldText(Temperature difference, const Units& units) {
    return qtText(formatNumber(inCelsius(difference), 1, units.decimalMark));
}
QString fieldText(Length value, const Units& units) {
    return exactText(value, units);
}
QString fieldText(Torque value, const Units& units) {
    return qtText(format(value, units));
}
QString fieldText(const std::string& text, const Units&) {
    return qtText(text);
}
QString fieldText(std::int64_t number, const Units&) {
    return QString::number(number);
}
QString fieldText(bool isSo, const Units&) {
    return isSo ? QStringLiteral("yes") : QStringLiteral("no");
}
QString fieldText(Date date, const Units&) {
    return qtText(format(date));
}
QString fieldText(const NameList& list, const Units&) {
    QStringList names;
    for (const auto& name : list.names) {
        names << qtText(name);
    }
    return names.join(QLatin1Char(' '));
}

QString fieldText(JournalId journal, const Units&) {
    return qtText(code(journal));
}

Result<void> readField(Entered<Length>& value, const QString& text, const FieldContext& c) {
    return take(value, readLength(coreText(text), c.units, c.kind, c.field, c.what));
}
Result<void> readField(Entered<Torque>& value, const QString& text, const FieldContext& c) {
    return take(value, parseTorque(coreText(text), c.units, expectedTorque(c.kind, c.field, c.what)));
}
Result<void> readField(Entered<Angle>& value, const QString& text, const FieldContext& c) {
    return take(value, parseAngle(coreText(text), c.units, expectedAngle(c.kind, c.field, c.what)));
}
Result<void> readField(Entered<Temperature>& value, const QString& text, const FieldContext& c) {
    return take(value, parseTemperature(coreText(text), c.units, expectedTemperature(c.kind, c.field, c.what)));
}
Result<void> readField(Temperature& difference, const QString& text, const FieldContext& c) {
    // Of differences no scale has its own zero: only degrees Celsius can be meant.
    auto read = parseTemperature(coreText(text), c.units, {c.what, celsius(0), celsius(20)});
    if (read && text.contains(QLatin1Char('F'))) {
        return refuse(Core::say("%1 is a difference: type it in degrees Celsius, like 2.8.", c.what));
    }
    if (!read) {
        return tl::unexpected(read.error());
    }
    difference = read->value;
    return {};
}
Result<void> readField(Length& value, const QString& text, const FieldContext& c) {
    Entered<Length> entered;
    if (auto read = readField(entered, text, c); !read) {
        return read;
    }
    value = entered.value;
    return {};
}
Result<void> readField(Torque& value, const QString& text, const FieldContext& c) {
    Entered<Torque> entered;
    if (auto read = readField(entered, text, c); !read) {
        return read;
    }
    value = entered.value;
    return {};
}
Result<void> readField(std::string& value, const QString& text, const FieldContext&) {
    value = coreText(text);
    return {};
}
Result<void> readField(std::int64_t& value, const QString& text, const FieldContext& c) {
    const CountRange range = expectedCount(c.kind, c.field);
    return take(value, parseCount(coreText(text), c.what, range.smallest, range.largest));
}
Result<void> readField(bool& value, const QString& text, const FieldContext&) {
    value = text == fieldText(true, {});
    return {};
}
Result<void> readField(Date& value, const QString& text, const FieldContext& c) {
    const auto read = parseDate(coreText(text));
    if (!read) {
        return refuse(Core::say("“%1” is not a day for %2: write it as 2026-05-04.", coreText(text), c.what));
    }
    value = *read;
    return {};
}
Result<void> readField(NameList& value, const QString& text, const FieldContext&) {
    value.names.clear();
    for (const QString& name : text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        value.names.push_back(name.toStdString());
    }
    return {};
}

Result<void> readField(JournalId& value, const QString& text, const FieldContext&) {
    return take(value, parseJournal(coreText(text)));
}

} // namespace caprail
