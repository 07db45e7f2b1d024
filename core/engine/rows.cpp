// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/rows.h>

#include <algorithm>
#include <cmath>

namespace caprail {

namespace {

/// A place in millimetres of the plan.
struct Spot {
    double x, y;
};

PlanPoint between(Spot a, Spot b, double share) {
    return {millimetres(a.x + (b.x - a.x) * share), millimetres(a.y + (b.y - a.y) * share)};
}

/// `count` points from `a` to `b`, both ends included; a single one stands in the middle.
void addLine(std::vector<PlanPoint>& list, Spot a, Spot b, int count) {
    for (int i = 0; i < count; ++i) {
        list.push_back(between(a, b, count == 1 ? 0.5 : static_cast<double>(i) / (count - 1)));
    }
}

/// Points strictly between `a` and `b`.
void addBetween(std::vector<PlanPoint>& list, Spot a, Spot b, int count) {
    for (int i = 1; i <= count; ++i) {
        list.push_back(between(a, b, static_cast<double>(i) / (count + 1)));
    }
}

std::vector<PlanPoint> aroundTheRail(const BlockOutline& block, int count) {
    const double front = -block.overhang + block.railWidth / 2;
    const double rear = block.length + block.overhang - block.railWidth / 2;
    const double half = block.railHalf;
    std::vector<PlanPoint> list;
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

BlockOutline::BlockOutline(const EngineLayout& layout) {
    const LayoutDescription& d = layout.description();
    spacing = inMillimetres(d.capSpacing);
    length = spacing * (layout.caps() - 1);
    innerHalf = inMillimetres(d.studSpan) / 2;
    outermost = d.fastenersPerCap == 4 ? inMillimetres(d.outerStudSpan) / 2 : innerHalf;
    railHalf = inMillimetres(d.railSpan) / 2;
    railWidth = std::min({(railHalf - outermost) * 0.55, 0.12 * railHalf, 0.3 * spacing});
    overhang = 0.46 * spacing;
    capHalfWidth = 0.15 * spacing;
}

std::vector<PlanPoint> rowPoints(const EngineLayout& layout, FastenerKind kind, int count) {
    std::vector<PlanPoint> list;
    if (count < 1) {
        return list;
    }
    const BlockOutline block(layout);
    // Between the rail's end and the bulkhead of the outermost cap.
    const double clear = 0.5 * (block.overhang - block.railWidth + 1.45 * block.capHalfWidth);
    const double reach = 0.78 * (block.railHalf - block.railWidth);
    switch (kind) {
    case FastenerKind::panRail:
        return aroundTheRail(block, count);
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
        break;
    }
    return list;
}

} // namespace caprail
