// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry_json.h>

#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>
#include <ledger/expectations.h>
#include <ledger/strict_json.h>
#include <base/say.h>

namespace caprail {

namespace {

std::string utf8(const QString& text) {
    return text.toStdString();
}

Result<std::int64_t> wholeNumber(const QJsonValue& value, const std::string& name) {
    // QJsonValue keeps whole numbers as 64-bit integers; anything else comes as a binary fraction.
    const std::int64_t n = value.toInteger(INT64_MIN);
    if (!value.isDouble() || n == INT64_MIN) {
        return refuse(Core::say("“%1” must be a whole number.", name));
    }
    return n;
}

Result<Cell> cellFrom(const QJsonValue& value, const Column& column) {
    if (column.type == Column::Type::integer) {
        return wholeNumber(value, column.name).map([](std::int64_t n) { return Cell(n); });
    }
    if (!value.isString()) {
        return refuse(Core::say("“%1” must be a text in quotes.", column.name));
    }
    return Cell(utf8(value.toString()));
}

/// Fills "x_nm" from "x_typed" where only the typed text was given.
Result<std::optional<Cell>> cellFromTyped(const QJsonObject& object, const KindInfo& info, const Column& column) {
    const auto typedFor = [&](std::string_view unit) -> std::optional<std::string> {
        if (!std::string_view(column.name).ends_with(unit)) {
            return {};
        }
        const std::string typedName = column.name.substr(0, column.name.size() - unit.size()) + "_typed";
        const QJsonValue typed = object.value(QString::fromStdString(typedName));
        return typed.isString() ? std::optional(utf8(typed.toString())) : std::nullopt;
    };
    const auto field = [&](std::string_view unit) { return column.name.substr(0, column.name.size() - unit.size()); };
    const auto cell = [](const auto& entered) { return std::optional<Cell>(entered.value.value()); };
    if (const auto text = typedFor(columnUnit<Length>)) {
        return readLength(*text, Units{}, info.kind, field(columnUnit<Length>)).map(cell);
    }
    if (const auto text = typedFor(columnUnit<Torque>)) {
        return parseTorque(*text, Units{}, expectedTorque(info.kind, field(columnUnit<Torque>))).map(cell);
    }
    if (const auto text = typedFor(columnUnit<Angle>)) {
        return parseAngle(*text, Units{}, expectedAngle(info.kind, field(columnUnit<Angle>))).map(cell);
    }
    if (const auto text = typedFor(columnUnit<Temperature>)) {
        return parseTemperature(*text, Units{}, expectedTemperature(info.kind, field(columnUnit<Temperature>))).map(cell);
    }
    return std::optional<Cell>();
}

/// Takes a member out of the object and gives its text; absent: nothing.
Result<std::optional<std::string>> takeText(QJsonObject& object, const QString& name) {
    const QJsonValue value = object.take(name);
    if (value.isUndefined()) {
        return std::optional<std::string>();
    }
    if (!value.isString()) {
        return refuse(Core::say("“%1” must be a text in quotes.", utf8(name)));
    }
    return std::optional<std::string>(utf8(value.toString()));
}

std::string namesOf(const std::vector<Column>& columns) {
    std::string names;
    for (const Column& column : columns) {
        names += (names.empty() ? "" : ", ") + column.name;
    }
    return names;
}

/// The columns that must be given and were not, so that one answer names all of them.
std::vector<Column> missingOf(const KindInfo& info, const std::vector<Cell>& cells) {
    std::vector<Column> missing;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (std::holds_alternative<std::monostate>(cells[i]) && !info.columns[i].optional) {
            missing.push_back(info.columns[i]);
        }
    }
    return missing;
}

Result<std::vector<Cell>> takeCells(QJsonObject& object, const KindInfo& info) {
    std::vector<Cell> cells;
    const QJsonObject all = object;
    for (const Column& column : info.columns) {
        const QJsonValue value = object.take(QString::fromStdString(column.name));
        if (!value.isUndefined() && !value.isNull()) {
            auto cell = cellFrom(value, column);
            if (!cell) {
                return tl::unexpected(cell.error());
            }
            cells.push_back(std::move(*cell));
            continue;
        }
        auto typed = cellFromTyped(all, info, column);
        if (!typed) {
            return tl::unexpected(typed.error());
        }
        // A text that was not given is empty; a number that was not given is missing, which its kind may refuse.
        const bool isTypedBesideValue =
            column.name.ends_with("_typed") && !cells.empty() && std::holds_alternative<std::int64_t>(cells.back());
        const bool emptyText =
            column.type == Column::Type::text && column.words.empty() && (!column.optional || isTypedBesideValue);
        cells.push_back(*typed ? std::move(**typed) : emptyText ? Cell(std::string()) : Cell());
    }
    if (!object.isEmpty()) {
        return refuse(Core::say("The entry “%1” has no member “%2”; it has: %3.", info.kind,
                                utf8(object.begin().key()), namesOf(info.columns)));
    }
    if (const auto lacking = missingOf(info, cells); !lacking.empty()) {
        return refuse(Core::say("The entry “%1” lacks: %2.", info.kind, namesOf(lacking)));
    }
    return cells;
}

} // namespace

std::string toJsonLine(const Entry& entry) {
    std::string line = canonicalText(entry);
    line.pop_back();
    return line + ",\"seal\":\"" + toHex(entry.seal) + "\"}";
}

Result<void> mayBeMadeNow(const EntryDraft& draft) {
    const char* const given = draft.time ? "time" : draft.sequence ? "sequence" : draft.seal ? "seal" : nullptr;
    return given == nullptr
               ? Result<void>()
               : refuse(Core::say("An entry that is made now gets its number, time and seal here: leave “%1” out. A "
                                  "ledger that has them is imported into a record of its own.",
                                  given));
}

Result<EntryDraft> fromJson(std::string_view json) {
    if (auto good = checkJson(json); !good) {
        return tl::unexpected(good.error());
    }
    QJsonParseError error;
    const auto document =
        QJsonDocument::fromJson(QByteArray::fromRawData(json.data(), static_cast<qsizetype>(json.size())), &error);
    if (!document.isObject()) {
        return refuse(
            Core::say("This is not a JSON object: %1.",
                      (document.isNull() ? Core::say("%1 at character %2", utf8(error.errorString()), error.offset)
                                         : std::string(Core::say("an entry is written in braces")))));
    }
    QJsonObject object = document.object();
    EntryDraft draft;
    const auto kind = takeText(object, QStringLiteral("kind"));
    const auto person = takeText(object, QStringLiteral("person"));
    const auto time = takeText(object, QStringLiteral("time"));
    const auto seal = takeText(object, QStringLiteral("seal"));
    for (const auto* text : {&kind, &person, &time, &seal}) {
        if (!*text) {
            return tl::unexpected(text->error());
        }
    }
    if (!*kind) {
        return refuse(
            Core::say("The entry has no member “kind”: say what it is, for example \"kind\": \"gap_reading\"."));
    }
    if (*person) {
        draft.person = **person;
    }
    if (*time) {
        auto moment = parseUtcTime(**time);
        if (!moment) {
            return tl::unexpected(moment.error());
        }
        draft.time = *moment;
    }
    if (*seal) {
        auto value = sealFromHex(**seal);
        if (!value) {
            return tl::unexpected(value.error());
        }
        draft.seal = *value;
    }
    if (const QJsonValue sequence = object.take(QStringLiteral("sequence")); !sequence.isUndefined()) {
        auto n = wholeNumber(sequence, "sequence");
        if (!n) {
            return tl::unexpected(n.error());
        }
        draft.sequence = *n;
    }
    const auto index = kindIndex(**kind);
    if (!index) {
        return tl::unexpected(index.error());
    }
    const auto cells = takeCells(object, allKinds()[*index]);
    if (!cells) {
        return tl::unexpected(cells.error());
    }
    auto body = bodyFrom(*index, *cells);
    if (!body) {
        return tl::unexpected(body.error());
    }
    draft.body = std::move(*body);
    return draft;
}

} // namespace caprail
