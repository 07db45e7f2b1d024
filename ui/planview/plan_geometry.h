// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPainterPath>
#include <QPointF>
#include <engine/girdle_outline.h>

namespace caprail {

/// The sizes of what is drawn, in millimetres of the plan, made from what a layout says; the rest is drawn in fair
/// proportion to it. x runs from cap 1 to the rear, y from left (negative) to right.
struct PlanGeometry : BlockOutline {
    explicit PlanGeometry(const EngineLayout& layout);

    double washer;     ///< radius of a washer under a main nut
    double throwPitch; ///< of the crank along its axis, for one throw
    double rodBolt;    ///< radius of a rod fastener's head
    double rodHalf;    ///< from the crank's axis to a rod fastener
    double pickup;     ///< radius of the pickup

    [[nodiscard]] double across() const { return railHalf + railWidth / 2; } ///< from the axis to the outer edge
    /// Half of the room that a throw has along the crank, clear of the caps.
    [[nodiscard]] double throwReach(const EngineLayout& layout, int number) const;
    /// On which throw a rod runs: the rods are shared out evenly, in order.
    [[nodiscard]] static int throwOf(const EngineLayout& layout, int rod);
    /// The middle of a rod along the crank; rods of one throw lie side by side.
    [[nodiscard]] double rodAt(const EngineLayout& layout, int rod) const;
    /// Thickness of one rod along the crank.
    [[nodiscard]] double rodWidth(const EngineLayout& layout, int rod) const;
};

/// A point of the plan in millimetres.
QPointF inPlan(PlanPoint point);

/// Shapes in millimetres of the plan. A body of several parts is the union of them (see `paintBody`).
std::vector<QPainterPath> railParts(const PlanGeometry& size, const std::vector<QPointF>& bolts);
std::vector<QPainterPath> capParts(const EngineLayout& layout, const PlanGeometry& size, int cap);
QPainterPath throwShape(const EngineLayout& layout, const PlanGeometry& size, int number);
QPainterPath rodShape(const EngineLayout& layout, const PlanGeometry& size, int rod);
/// The plate with its windows, and with its cutout at the pickup when asked for.
QPainterPath girdleShape(const GirdleOutline& girdle, bool hasCutout);

} // namespace caprail
