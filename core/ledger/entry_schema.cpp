// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry_schema.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <ledger/kinds.h>
#include <ledger/qt_text.h>

namespace caprail {

namespace {

/// Whether the column holds what was typed for the quantity in the column before it.
bool isTypedFor(const std::vector<Column>& columns, std::size_t i) {
    return i > 0 && columns[i].name.ends_with("_typed") && columns[i - 1].type == Column::Type::integer &&
           columns[i - 1].name.rfind(columns[i].name.substr(0, columns[i].name.size() - 5), 0) == 0;
}

/// A text may be left out, and is empty then, unless it is one of a few words.
bool isNeeded(const Column& column) {
    return !column.optional && (column.type == Column::Type::integer || !column.words.empty());
}

QJsonObject valueOf(const Column& column) {
    QJsonObject value{{"type", column.type == Column::Type::integer ? "integer" : "string"}};
    if (!column.words.empty()) {
        QJsonArray words;
        for (const std::string_view word : column.words) {
            words.append(qtText(word));
        }
        value["enum"] = words;
    }
    return value;
}

QJsonObject schemaOf(const KindInfo& info) {
    QJsonObject properties{{"kind", QJsonObject{{"const", qtText(info.kind)}}},
                           {"person", QJsonObject{{"type", "string"}}},
                           {"time", QJsonObject{{"type", "string"}, {"format", "date-time"}}},
                           {"sequence", QJsonObject{{"type", "integer"}, {"minimum", 1}}},
                           {"seal", QJsonObject{{"type", "string"}, {"pattern", "^[0-9a-f]{64}$"}}}};
    QJsonArray needed{"kind"};
    QJsonArray eitherOf;
    for (std::size_t i = 0; i < info.columns.size(); ++i) {
        const Column& column = info.columns[i];
        properties[qtText(column.name)] = valueOf(column);
        const bool hasTyped = i + 1 < info.columns.size() && isTypedFor(info.columns, i + 1);
        if (isNeeded(column) && !hasTyped) {
            needed.append(qtText(column.name));
        } else if (isNeeded(column)) {
            const auto requiring = [](const std::string& name) {
                return QJsonObject{{"required", QJsonArray{qtText(name)}}};
            };
            eitherOf.append(QJsonObject{{"anyOf", QJsonArray{requiring(column.name), requiring(info.columns[i + 1].name)}}});
        }
    }
    QJsonObject schema{{"title", qtText(info.title)},
                       {"type", "object"},
                       {"properties", properties},
                       {"required", needed},
                       {"additionalProperties", false}};
    if (!eitherOf.isEmpty()) {
        schema["allOf"] = eitherOf;
    }
    return schema;
}

struct ColumnUnit {
    std::string_view ending, unit, words;
};
constexpr ColumnUnit columnUnits[] = {
    {columnUnit<Length>, "nm", "nanometres (1 in = 25400000)"},
    {columnUnit<Torque>, "mN·m", "millinewton metres (1 lbf·ft = 1356)"},
    {columnUnit<Angle>, "0.001°", "thousandths of a degree"},
    {columnUnit<Temperature>, "0.001 °C", "thousandths of a degree Celsius"},
    {columnUnit<Force>, "mN", "millinewtons"},
    {columnUnit<Stress>, "kPa", "kilopascals"}};

const ColumnUnit* columnUnitOf(const Column& column) {
    for (const ColumnUnit& one : columnUnits) {
        if (column.type == Column::Type::integer && column.name.ends_with(one.ending)) {
            return &one;
        }
    }
    return nullptr;
}

} // namespace

std::string_view unitOf(const Column& column) {
    const ColumnUnit* unit = columnUnitOf(column);
    return unit != nullptr ? unit->unit : column.type == Column::Type::integer ? "1" : "";
}

std::string meaningOf(const Column& column) {
    if (!column.words.empty()) {
        std::string all;
        for (const std::string_view word : column.words) {
            all += (all.empty() ? "" : ", ") + std::string(word);
        }
        return "one of: " + all;
    }
    if (column.type == Column::Type::text) {
        return "text";
    }
    const ColumnUnit* unit = columnUnitOf(column);
    return unit == nullptr ? "whole number" : "whole number of " + std::string(unit->words);
}

std::string entrySchema() {
    QJsonObject kinds;
    QJsonArray oneOf;
    for (const KindInfo& info : allKinds()) {
        kinds[qtText(info.kind)] = schemaOf(info);
        oneOf.append(QJsonObject{{"$ref", QStringLiteral("#/$defs/") + qtText(info.kind)}});
    }
    const QJsonObject schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                             {"title", "An entry of a build record"},
                             {"oneOf", oneOf},
                             {"$defs", kinds}};
    return QJsonDocument(schema).toJson().toStdString();
}

std::string entryManual() {
    std::string text =
        "An entry is one JSON object with “kind”, “person” (who made it; otherwise who worked last) and the members of its\n"
        "kind. A quantity may be given by its number (gap_nm) or as it is typed in the window (gap_typed: \"57.5 thou\").\n"
        "Members in brackets may be left out, and so may texts. Positions read 3R, journals main-3, fasteners main-3R.\n";
    for (const KindInfo& info : allKinds()) {
        text += "\n" + std::string(info.kind) + "  (" + std::string(info.title) + ")\n";
        for (std::size_t i = 0; i < info.columns.size(); ++i) {
            if (isTypedFor(info.columns, i)) {
                continue;
            }
            const bool hasTyped = i + 1 < info.columns.size() && isTypedFor(info.columns, i + 1);
            const Column& column = info.columns[i];
            const std::string name = column.name + (hasTyped ? " or " + info.columns[i + 1].name : "");
            text += "    " + (isNeeded(column) ? name : "[" + name + "]") + ": " + meaningOf(column) + "\n";
        }
    }
    return text;
}

} // namespace caprail
