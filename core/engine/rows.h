// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where the fasteners of a row lie. A layout does not say where its pan rail is drilled: they are spread evenly, which
/// is enough to tell them apart, to number them and to put them in an order.
#include <engine/layout.h>

namespace caprail {

/// The outline of a block from below, in millimetres of the plan; what a layout does not say is in fair proportion to
/// what it does.
struct BlockOutline {
    explicit BlockOutline(const EngineLayout& layout);

    double spacing;      ///< between neighbouring caps
    double length;       ///< from the first cap to the last
    double innerHalf;    ///< from the crank's axis to an inner stud
    double outermost;    ///< to the outermost stud of a cap
    double railHalf;     ///< to the middle of a pan rail
    double railWidth;    ///< of a pan rail
    double overhang;     ///< of the block beyond the first and the last cap
    double capHalfWidth; ///< of a main cap along the crank
};

/// The fasteners of a row, number 1 first:
/// - pan rail: around the rail, from the front left corner rearwards along the left, and on across the rear;
/// - front, rear: across the block's end, from left to right.
/// Other kinds and a count below 1 have none.
std::vector<PlanPoint> rowPoints(const EngineLayout& layout, FastenerKind kind, int count);

} // namespace caprail
