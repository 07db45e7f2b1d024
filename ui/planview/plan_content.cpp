// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_rows.h>

#include <algorithm>
#include <cmath>
#include <fasteners/sequence.h>
#include <planview/plan_content.h>

namespace caprail {

namespace {

/// `count` points from `a` to `b`, both ends included; a single one stands in the middle.
void addLine(std::vector<QPointF>& list, QPointF a, QPointF b, int count) {
    for (int i = 0; i < count; ++i) {
        const double share = count == 1 ? 0.5 : static_cast<double>(i) / (count - 1);
        list.push_back(a + (b - a) * share);
    }
}

/// Points strictly between `a` and `b`.
void addBetween(std::vector<QPointF>& list, QPointF a, QPointF b, int count) {
    for (int i = 1; i <= count; ++i) {
        list.push_back(a + (b - a) * (static_cast<double>(i) / (count + 1)));
    }
}

std::vector<QPointF> aroundTheRail(const PlanGeometry& size, int count) {
    const double front = -size.overhang + size.railWidth / 2;
    const double rear = size.length + size.overhang - size.railWidth / 2;
    const double half = size.railHalf;
    std::vector<QPointF> list;
    if (count < 4) {
        addLine(list, {front, -half}, {rear, -half}, count);
        return list;
    }
    // What the ends get of the bolts besides the corners, in proportion to their length; an odd one sits at the rear.
    const double share = 2 * half / (2 * half + rear - front);
    const int atEnd = std::clamp(static_cast<int>(std::lround(share * count / 2)) - 1, 0, (count - 4) / 2);
    const int along = (count - 2 * atEnd) / 2;
    const int extra = count - 2 * atEnd - 2 * along;
    addLine(list, {front, -half}, {rear, -half}, along);
    addBetween(list, {rear, -half}, {rear, half}, atEnd + extra);
    addLine(list, {rear, half}, {front, half}, along);
    addBetween(list, {front, half}, {front, -half}, atEnd);
    return list;
}

} // namespace

std::vector<QPointF> rowPoints(const EngineLayout& layout, const PlanGeometry& size, FastenerKind kind, int count) {
    std::vector<QPointF> list;
    if (count < 1) {
        return list;
    }
    // Between the rail's end and the bulkhead of the outermost cap.
    const double clear = 0.5 * (size.overhang - size.railWidth + 1.45 * size.capHalfWidth);
    const double reach = 0.78 * (size.railHalf - size.railWidth);
    switch (kind) {
    case FastenerKind::panRail:
        return aroundTheRail(size, count);
    case FastenerKind::front:
        addLine(list, {-clear, -reach}, {-clear, reach}, count);
        return list;
    case FastenerKind::rear: {
        const double x = inMillimetres(layout.capAt(layout.caps())) + clear;
        addLine(list, {x, -reach}, {x, reach}, count);
        return list;
    }
    case FastenerKind::mainCap:
    case FastenerKind::rod:
    case FastenerKind::girdleNut:
        return list;
    }
    return list;
}

std::vector<int> rowSequence(const EngineLayout& layout, FastenerKind kind, int count) {
    std::vector<FastenerPoint> points;
    for (const QPointF at : rowPoints(layout, PlanGeometry(layout), kind, count)) {
        points.push_back({millimetres(at.x()), millimetres(at.y())});
    }
    std::vector<int> numbers;
    for (const std::size_t i : outwardSequence(points).value_or(std::vector<std::size_t>())) {
        numbers.push_back(static_cast<int>(i) + 1);
    }
    return numbers;
}

std::map<FastenerKind, int> rowsOf(const Facts& facts) {
    std::map<FastenerKind, int> rows;
    for (const auto& [key, group] : facts.groups) {
        if (!hasSides(key.first)) {
            rows[key.first] = static_cast<int>(group.what.count);
        }
    }
    return rows;
}

PlanContent planContent(const Facts& facts) {
    PlanContent content{*facts.layout, {}, {}, {}, {}, {}, {}, {}, {}};
    content.rows = rowsOf(facts);
    return content;
}

} // namespace caprail
