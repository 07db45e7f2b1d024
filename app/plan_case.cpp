// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_case.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <ledger/strict_json.h>
#include <units/parse.h>

namespace caprail {

namespace {

constexpr std::int64_t largestNumber = 1'000'000'000;

Result<std::int64_t> whole(const QJsonValue& value, const std::string& where) {
    const std::int64_t n = value.toInteger(INT64_MIN);
    if (!value.isDouble() || n == INT64_MIN || n > largestNumber || n < -largestNumber) {
        return refuse(where + " must be a whole number between −1 000 000 000 and 1 000 000 000.");
    }
    return n;
}

Result<std::string> text(const QJsonValue& value, const std::string& where) {
    if (!value.isString() || value.toString().isEmpty()) {
        return refuse(where + " must be a text that is not empty.");
    }
    return value.toString().toStdString();
}

Result<Length> unitOf(const QJsonValue& value) {
    const auto name = text(value, "“unit”");
    if (!name) {
        return tl::unexpected(name.error());
    }
    const auto unit = parseLength(*name, {}, {"“unit”", Length(1), inches(1)});
    if (!unit) {
        return tl::unexpected(unit.error());
    }
    if (unit->value < Length(1) || unit->value > inches(1)) { // a “!” behind it makes a length plausible, not a unit
        return refuse("“unit” must be a length above zero and up to 1 in, for example \"0.0001 in\", not “" + *name +
                      "”.");
    }
    return unit->value;
}

Result<PlanPosition> positionFrom(const QJsonValue& value, Length unit, const std::string& where) {
    const QJsonObject object = value.toObject();
    const auto id = text(object["id"], where + " “id”");
    const auto cap = whole(object["cap"], where + " “cap”");
    const auto side = text(object["side"], where + " “side”");
    const auto gap = whole(object["gap"], where + " “gap”");
    if (!id || !cap || !side || !gap) {
        return tl::unexpected(!id ? id.error() : !cap ? cap.error() : !side ? side.error() : gap.error());
    }
    if (*side != "left" && *side != "right") {
        return refuse(where + " “side” must be left or right, not “" + *side + "”.");
    }
    if (*cap < 1 || *cap > 99) {
        return refuse(where + " “cap” must be from 1 to 99.");
    }
    PlanPosition position{*id, static_cast<int>(*cap), *side == "left" ? -1 : 1, unit * *gap, {}};
    if (const QJsonValue pinned = object["pinned"]; !pinned.isUndefined() && !pinned.isNull()) {
        if (!pinned.isArray()) {
            return refuse(where + " “pinned” must be a list of shims.");
        }
        position.pinned.emplace();
        for (const QJsonValue& shim : pinned.toArray()) {
            auto name = text(shim, where + " “pinned”");
            if (!name) {
                return tl::unexpected(name.error());
            }
            position.pinned->push_back(std::move(*name));
        }
    }
    return position;
}

Result<void> readBand(const QJsonValue& value, Length unit, PlanRequest& request) {
    QJsonArray ends = value.toArray();
    if (value.isDouble()) { // about nothing
        ends = {-value.toDouble(), value};
    }
    if (ends.size() != 2) {
        return refuse("“band” must be two whole numbers, for example [-5, 5], or one for as much on both sides.");
    }
    const auto lo = whole(ends[0], "“band”");
    const auto hi = whole(ends[1], "“band”");
    if (!lo || !hi) {
        return tl::unexpected(!lo ? lo.error() : hi.error());
    }
    const auto band = Band::between(unit * *lo, unit * *hi);
    if (!band) {
        return tl::unexpected(band.error());
    }
    request.band = *band;
    return {};
}

/// lbf per unit in the file, lbf per millimetre in the request.
Result<void> readStiffness(const QJsonValue& value, Length unit, PlanRequest& request) {
    if (value.isUndefined()) {
        return {};
    }
    const auto n = static_cast<qsizetype>(request.positions.size());
    const QJsonArray rows = value.toArray();
    bool isGood = value.isArray() && rows.size() == n;
    for (const QJsonValue& row : rows) {
        const QJsonArray numbers = row.toArray();
        isGood = isGood && numbers.size() == n;
        for (const QJsonValue& number : numbers) {
            isGood = isGood && number.isDouble();
            request.stiffness.push_back(number.toDouble() / inMillimetres(unit));
        }
    }
    if (!isGood) {
        return refuse("“stiffness” must be a list of " + std::to_string(n) + " rows of " + std::to_string(n) +
                      " numbers each, in the order of the positions.");
    }
    return {};
}

} // namespace

Result<PlanCase> readPlanCase(const QByteArray& json) {
    QJsonParseError error;
    if (auto good = checkJson({json.constData(), static_cast<std::size_t>(json.size())}); !good) {
        return tl::unexpected(good.error());
    }
    const auto document = QJsonDocument::fromJson(json, &error);
    if (!document.isObject()) {
        return refuse(document.isNull() ? "This is not JSON: " + error.errorString().toStdString() + " at character " +
                                              std::to_string(error.offset) + "."
                                        : std::string("A plan case is one JSON object in braces."));
    }
    const QJsonObject object = document.object();
    const auto unit = unitOf(object["unit"]);
    if (!unit) {
        return tl::unexpected(unit.error());
    }
    PlanCase planCase{{}, *unit};
    PlanRequest& request = planCase.request;
    if (auto band = readBand(object["band"], *unit, request); !band) {
        return tl::unexpected(band.error());
    }
    const auto largest = whole(object["largest_stack"], "“largest_stack”");
    if (!largest || *largest < 0 || *largest > 1000) {
        return refuse("“largest_stack” must be a whole number from 0 (no limit) to 1000.");
    }
    request.largestStack = static_cast<int>(*largest);
    if (const QJsonValue caps = object["caps"]; !caps.isUndefined()) {
        const auto n = whole(caps, "“caps”");
        if (!n || *n < 0 || *n > 99) {
            return refuse("“caps” must be a whole number from 0 to 99.");
        }
        request.caps = static_cast<int>(*n);
    }
    if (!object["positions"].isArray() || !object["shims"].isArray()) {
        return refuse("“positions” and “shims” must both be lists.");
    }
    int number = 0;
    for (const QJsonValue& value : object["positions"].toArray()) {
        auto position = positionFrom(value, *unit, "Position " + std::to_string(++number));
        if (!position) {
            return tl::unexpected(position.error());
        }
        request.positions.push_back(std::move(*position));
    }
    if (auto stiffness = readStiffness(object["stiffness"], *unit, request); !stiffness) {
        return tl::unexpected(stiffness.error());
    }
    number = 0;
    for (const QJsonValue& value : object["shims"].toArray()) {
        const std::string where = "Shim " + std::to_string(++number);
        const QJsonObject shim = value.toObject();
        auto id = text(shim["id"], where + " “id”");
        const auto thickness = whole(shim["thickness"], where + " “thickness”");
        if (!id || !thickness) {
            return tl::unexpected(!id ? id.error() : thickness.error());
        }
        const QJsonValue isSetAside = shim["set_aside"];
        if (!isSetAside.isUndefined() && !isSetAside.isBool()) {
            return refuse(where + " “set_aside” must be true or false.");
        }
        if (!isSetAside.toBool()) {
            request.shims.push_back({std::move(*id), *unit * *thickness});
        }
    }
    return planCase;
}

QJsonDocument planCaseSchema() {
    return QJsonDocument::fromJson(R"({
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "title": "A case for caprail plan; lengths are whole numbers of “unit”",
  "type": "object",
  "required": ["unit", "band", "largest_stack", "positions", "shims"],
  "properties": {
    "unit": {"type": "string", "description": "a length, such as 0.0001 in"},
    "band": {"type": ["array", "integer"], "items": {"type": "integer"}, "minItems": 2, "maxItems": 2,
             "description": "smallest and largest residual (gap less stack), or one number for as much on both sides"},
    "largest_stack": {"type": "integer", "minimum": 0, "maximum": 1000, "description": "shims in one stack; 0: no limit"},
    "caps": {"type": "integer", "minimum": 0, "maximum": 99},
    "positions": {"type": "array", "items": {
      "type": "object",
      "required": ["id", "cap", "side", "gap"],
      "properties": {
        "id": {"type": "string", "minLength": 1},
        "cap": {"type": "integer", "minimum": 1, "maximum": 99},
        "side": {"enum": ["left", "right"]},
        "gap": {"type": "integer"},
        "pinned": {"type": ["array", "null"], "items": {"type": "string"}, "description": "the shims that stay there"}}}},
    "stiffness": {"type": "array", "items": {"type": "array", "items": {"type": "number"}},
                  "description": "of the girdle, lbf per unit, symmetric, rows in the order of the positions"},
    "shims": {"type": "array", "items": {
      "type": "object",
      "required": ["id", "thickness"],
      "properties": {
        "id": {"type": "string", "minLength": 1},
        "thickness": {"type": "integer", "exclusiveMinimum": 0},
        "set_aside": {"type": "boolean"}}}}}
})");
}

namespace {
/// As the figure is called in the answer.
QString nameOf(PlanFigure figure) {
    switch (figure) {
    case PlanFigure::inBand:
        return "in_band";
    case PlanFigure::shims:
        return "shims";
    case PlanFigure::largestResidual:
        return "largest_residual";
    case PlanFigure::twistSum:
        return "twist_sum";
    case PlanFigure::sumResidual:
        return "sum_residual";
    case PlanFigure::largestLoad:
        return "largest_load";
    case PlanFigure::sumSquareLoad:
        return "sum_square_load";
    case PlanFigure::none:
        break;
    }
    return "none";
}
} // namespace

QJsonObject planJson(const PlanCase& planCase, const StackPlan& plan) {
    const auto inUnits = [&](Length l) { return QJsonValue(qint64{l.value() / planCase.unit.value()}); };
    QJsonObject stacks;
    for (const PlannedStack& stack : plan.stacks) {
        QJsonArray shims;
        for (const auto& shim : stack.shims) {
            shims.append(QString::fromStdString(shim));
        }
        stacks[QString::fromStdString(stack.position)] = shims;
    }
    QJsonArray unmet;
    QJsonObject nearest;
    for (const UnmetPosition& position : plan.unmet) {
        const QString id = QString::fromStdString(position.position);
        unmet.append(id);
        QJsonArray shims;
        for (const auto& shim : position.nearest) {
            shims.append(QString::fromStdString(shim));
        }
        nearest[id] = QJsonObject{{"shims", shims}, {"residual", inUnits(position.residual)}};
    }
    QJsonObject json{{"stacks", stacks},
                     {"in_band", plan.inBand},
                     {"shims", plan.shims},
                     {"largest_residual", inUnits(plan.largestResidual)},
                     {"sum_residual", inUnits(plan.sumResidual)},
                     {"twist_sum", qint64{plan.twistSum / planCase.unit.value()}},
                     {"proven", plan.proven},
                     {"unmet", unmet}};
    if (!nearest.isEmpty()) {
        json["nearest"] = nearest;
    }
    const bool hasLoads = !plan.loads.empty();
    if (hasLoads) {
        QJsonObject loads;
        for (std::size_t i = 0; i < plan.loads.size(); ++i) {
            loads[QString::fromStdString(plan.stacks[i].position)] = plan.loads[i];
        }
        json["loads"] = loads;
        json["largest_load"] = plan.largestLoad;
        json["sum_square_load"] = plan.sumSquareLoad;
    }
    if (!plan.proven) {
        const ShareOfBound share = shareOfBound(plan, planCase.request.objective);
        json["share_of_bound"] = QJsonObject{{"figure", nameOf(share.figure)}, {"share", share.share}};
        QJsonObject bound{{"in_band", plan.bound.inBand},
                          {"shims", plan.bound.shims},
                          {"largest_residual", inUnits(plan.bound.largestResidual)},
                          {"sum_residual", inUnits(plan.bound.sumResidual)},
                          {"twist_sum", qint64{plan.bound.twistSum / planCase.unit.value()}}};
        if (planCase.request.objective == Objective::leastLoad) {
            bound["largest_load"] = plan.bound.largestLoad;
            bound["sum_square_load"] = plan.bound.sumSquareLoad;
        }
        json["bound"] = bound;
    }
    return json;
}

} // namespace caprail
