// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <vector>

namespace caprail {

/// A box that wants a place in a lane beside the drawing. All figures are along the lane, in the painter's units.
struct LaneBox {
    double anchor = 0; ///< where its leader leaves the drawing: it wants to stand there
    double extent = 0; ///< its length along the lane
    double rank = 0;   ///< of boxes at one anchor the lower stands first, in the row next to the drawing
};

struct LanePlacing {
    double middle = 0;  ///< of the box
    int row = 0;        ///< 0 is next to the drawing
    double channel = 0; ///< where its leader passes the rows before its own
};

struct LanePlan {
    std::vector<LanePlacing> boxes; ///< in the order in which they were given
    int rows = 0;
    double farthestShift = 0; ///< the most that a box stands away from its anchor
};

/// Puts the boxes of one lane into as few rows as keep each near its anchor, from 1 to `mostRows`; boxes of a row stand
/// at least `gap` apart and between `lo` and `hi`, in the order of their anchors, and a leader never passes through a
/// box. Within a row the places are the least-squares ones (isotonic regression by pooling adjacent violators).
/// None: they do not fit in so many rows.
std::optional<LanePlan> placeInLane(const std::vector<LaneBox>& boxes, double lo, double hi, double gap, int mostRows);

} // namespace caprail
