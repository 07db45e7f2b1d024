// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_geometry.h>

#include <algorithm>
#include <cmath>

namespace caprail {

namespace {

QPainterPath roundedBox(double x1, double y1, double x2, double y2, double radius) {
    QPainterPath path;
    path.addRoundedRect(QRectF(QPointF(x1, y1), QPointF(x2, y2)), radius, radius);
    return path;
}

std::vector<QPainterPath> discs(const std::vector<QPointF>& middles, double radius) {
    std::vector<QPainterPath> list;
    for (const QPointF middle : middles) {
        list.emplace_back().addEllipse(middle, radius, radius);
    }
    return list;
}

} // namespace

PlanGeometry::PlanGeometry(const EngineLayout& layout) : BlockOutline(layout) {
    washer = washerRadius(layout, *this);
    throwPitch = length / layout.throws();
    rodHalf = 0.4 * innerHalf;
    rodBolt = std::min(0.11 * innerHalf, 0.05 * spacing);
    for (int rod = 1; rod <= layout.rods(); ++rod) {
        rodBolt = std::min(rodBolt, 0.42 * rodWidth(layout, rod));
    }
    pickup = pickupRadius(*this);
}

double PlanGeometry::throwReach(const EngineLayout& layout, int number) const {
    const double x = inMillimetres(layout.throwAt(number));
    double nearest = throwPitch;
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        nearest = std::min(nearest, std::abs(x - inMillimetres(layout.capAt(cap))) - 1.25 * capHalfWidth);
    }
    // A throw under a cap (more throws than bays, unevenly) still gets a drawing, narrow and behind the cap.
    return std::max(std::min(nearest, 0.46 * throwPitch), 0.2 * throwPitch);
}

int PlanGeometry::throwOf(const EngineLayout& layout, int rod) {
    return (rod - 1) * layout.throws() / layout.rods() + 1;
}

double PlanGeometry::rodWidth(const EngineLayout& layout, int rod) const {
    const int number = throwOf(layout, rod);
    int sharing = 0;
    for (int other = 1; other <= layout.rods(); ++other) {
        sharing += throwOf(layout, other) == number ? 1 : 0;
    }
    return 1.3 * throwReach(layout, number) / sharing;
}

double PlanGeometry::rodAt(const EngineLayout& layout, int rod) const {
    const int number = throwOf(layout, rod);
    int before = 0;
    int sharing = 0;
    for (int other = 1; other <= layout.rods(); ++other) {
        if (throwOf(layout, other) == number) {
            ++sharing;
            before += other < rod ? 1 : 0;
        }
    }
    return inMillimetres(layout.throwAt(number)) + (before - (sharing - 1) / 2.0) * rodWidth(layout, rod);
}

QPointF inPlan(PlanPoint point) {
    return {inMillimetres(point.x), inMillimetres(point.y)};
}

std::vector<QPainterPath> railParts(const PlanGeometry& size, const std::vector<QPointF>& bolts) {
    const double w = size.railWidth;
    const double x1 = -size.overhang;
    const double x2 = size.length + size.overhang;
    const double y = size.across();
    QPainterPath rail = roundedBox(x1, -y, x2, y, 0.9 * w);
    rail.addPath(roundedBox(x1 + w, -y + w, x2 - w, y - w, 0.45 * w)); // what lies inside is left out: odd-even
    // Pads around the bolt holes: they swell outwards and inwards from the rail.
    std::vector<QPainterPath> parts = discs(bolts, 0.72 * w);
    parts.push_back(rail);
    return parts;
}

std::vector<QPainterPath> capParts(const EngineLayout& layout, const PlanGeometry& size, int cap) {
    const double x = inMillimetres(layout.capAt(cap));
    const double w = size.capHalfWidth;
    const double boss = std::max(1.25 * size.washer, w * 0.8);
    const double end =
        size.outermost + std::min(1.35 * size.washer, 0.9 * (size.railHalf - size.railWidth / 2 - size.outermost));
    std::vector<QPainterPath> parts;
    if (boss > w) {
        std::vector<QPointF> studs;
        for (const FastenerId f : layout.mainFasteners()) {
            if (f.number == cap) {
                studs.push_back(inPlan(layout.at(f)));
            }
        }
        parts = discs(studs, boss);
    }
    parts.push_back(roundedBox(x - w, -end, x + w, end, 0.3 * w));
    return parts;
}

QPainterPath throwShape(const EngineLayout& layout, const PlanGeometry& size, int number) {
    const double x = inMillimetres(layout.throwAt(number));
    const double reach = size.throwReach(layout, number);
    const double web = 0.3 * reach;
    const double swing = 0.86 * size.innerHalf;
    const double pin = 0.24 * size.innerHalf;
    QPainterPath path = roundedBox(x - reach, -swing, x - reach + web, swing, 0.5 * web);
    path.addPath(roundedBox(x + reach - web, -swing, x + reach, swing, 0.5 * web));
    path.moveTo(x - reach + web, -pin);
    path.lineTo(x + reach - web, -pin);
    path.moveTo(x - reach + web, pin);
    path.lineTo(x + reach - web, pin);
    return path;
}

QPainterPath rodShape(const EngineLayout& layout, const PlanGeometry& size, int rod) {
    const double x = size.rodAt(layout, rod);
    const double w = 0.44 * size.rodWidth(layout, rod);
    const double end = size.rodHalf + 1.7 * size.rodBolt;
    return roundedBox(x - w, -end, x + w, end, 0.35 * w);
}

QPainterPath girdleShape(const GirdleOutline& girdle, bool hasCutout) {
    const PlanBox& box = girdle.plate;
    const QPainterPath plate = roundedBox(box.x1, box.y1, box.x2, box.y2, girdle.plateCorner);
    QPainterPath openings;
    openings.setFillRule(Qt::WindingFill);
    for (const PlanBox& window : girdle.windows) {
        openings.addPath(roundedBox(window.x1, window.y1, window.x2, window.y2, girdle.windowCorner));
    }
    if (hasCutout) {
        openings.addEllipse(QPointF(girdle.cutout.x, girdle.cutout.y), girdle.cutout.radius, girdle.cutout.radius);
    }
    return plate.subtracted(openings);
}

} // namespace caprail
