// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How the fields of an entry kind (ledger/field.h) are typed and shown on a form: one overload per type of field.
/// `fieldText` writes a value so that reading it back gives the same value; `readField` reads what a person typed, or
/// says in one sentence that names the field (`what`) why it cannot; `fieldChoices` lists the words that alone are
/// allowed, or nothing where any text may be typed.
#include <QStringList>
#include <ledger/expectations.h>
#include <ledger/field.h>
#include <stations/common/station_text.h>

namespace caprail {

/// What a field needs to be read: the units that bare numbers are in, and where its plausible range is written down.
struct FieldContext {
    Units units;
    std::string_view kind, field;
    std::string what;
};

/// A length without rounding, in the chosen unit: four decimals (three in millimetres), more where it needs them.
QString exactText(Length, const Units&);
/// As typed, where the typed text still means the value in the chosen units; else written exactly.
QString fieldText(const Entered<Length>&, const Units&);
QString fieldText(const Entered<Torque>&, const Units&);
QString fieldText(const Entered<Angle>&, const Units&);
QString fieldText(const Entered<Temperature>&, const Units&);
/// A difference of temperatures, in degrees Celsius.
QString fieldText(Temperature, const Units&);
QString fieldText(Length, const Units&);
QString fieldText(Torque, const Units&);
QString fieldText(const std::string&, const Units&);
QString fieldText(std::int64_t, const Units&);
QString fieldText(bool, const Units&);
QString fieldText(Date, const Units&);
QString fieldText(const NameList&, const Units&);
QString fieldText(JournalId, const Units&);
template <Worded E> QString fieldText(E value, const Units&) {
    return qtShown(value);
}
template <class T> QString fieldText(const std::optional<T>& value, const Units& units) {
    return value ? fieldText(*value, units) : QString();
}
template <class T> QString fieldText(const Rare<T>& value, const Units& units) {
    return value ? fieldText(*value, units) : QString();
}

Result<void> readField(Entered<Length>&, const QString&, const FieldContext&);
Result<void> readField(Entered<Torque>&, const QString&, const FieldContext&);
Result<void> readField(Entered<Angle>&, const QString&, const FieldContext&);
Result<void> readField(Entered<Temperature>&, const QString&, const FieldContext&);
Result<void> readField(Temperature&, const QString&, const FieldContext&);
Result<void> readField(Length&, const QString&, const FieldContext&);
Result<void> readField(Torque&, const QString&, const FieldContext&);
Result<void> readField(std::string&, const QString&, const FieldContext&);
Result<void> readField(std::int64_t&, const QString&, const FieldContext&);
Result<void> readField(bool&, const QString&, const FieldContext&);
Result<void> readField(Date&, const QString&, const FieldContext&);
Result<void> readField(NameList&, const QString&, const FieldContext&);
Result<void> readField(JournalId&, const QString&, const FieldContext&);
template <Worded E> Result<void> readField(E& value, const QString& text, const FieldContext&) {
    for (const auto& entry : allWords<E>()) {
        if (qtShown(entry.value) == text.trimmed()) {
            value = entry.value;
            return {};
        }
    }
    const auto read = fromWord<E>(coreText(text)); // in the words of files; says which would do
    if (!read) {
        return tl::unexpected(read.error());
    }
    value = *read;
    return {};
}
template <class T> Result<void> readField(std::optional<T>& value, const QString& text, const FieldContext& context) {
    value.reset();
    return text.trimmed().isEmpty() ? Result<void>() : readField(value.emplace(), text, context);
}
template <class T> Result<void> readField(Rare<T>& value, const QString& text, const FieldContext& context) {
    value.reset();
    return text.trimmed().isEmpty() ? Result<void>() : readField(value.emplace(), text, context);
}

template <class T>
requires(!Worded<T>) QStringList fieldChoices(const T&) {
    return {};
}
template <Worded E> QStringList fieldChoices(E) {
    QStringList words;
    for (const auto& entry : allWords<E>()) {
        words << qtShown(entry.value);
    }
    return words;
}
inline QStringList fieldChoices(bool) {
    return {QStringLiteral("no"), QStringLiteral("yes")};
}
inline QStringList fieldChoices(const std::optional<bool>&) {
    return QStringList{QString()} + fieldChoices(false);
}
template <Worded E> QStringList fieldChoices(const std::optional<E>&) {
    return QStringList{QString()} + fieldChoices(E{});
}
template <Worded E> QStringList fieldChoices(const Rare<E>&) {
    return QStringList{QString()} + fieldChoices(E{});
}

} // namespace caprail
