// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The girdle's plate in plan, as it is drawn and as its load is worked out: one outline for both.
#include <engine/rows.h>
#include <optional>

namespace caprail {

/// A box in millimetres of the plan: x along the crank from cap 1, y across it.
struct PlanBox {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
    [[nodiscard]] bool contains(double x, double y) const { return x > x1 && x < x2 && y > y1 && y < y2; }
};
struct PlanDisc {
    double x = 0, y = 0, radius = 0; ///< millimetres
    /// Not on its edge, as with a box.
    [[nodiscard]] bool contains(double atX, double atY) const;
    /// Whether the two have more in common than their edges.
    [[nodiscard]] bool meets(const PlanBox& box) const;
};

/// What somebody gave of the plate's shape. What nobody gave is in fair proportion to the layout.
struct GirdleShape {
    std::optional<Length> windowAlong{};  ///< of the window over each bay, along the crank; 0: no windows
    std::optional<Length> windowAcross{}; ///< and across it
    std::optional<Length> overhang{};     ///< of the plate beyond the first and the last tied cap
    friend bool operator==(const GirdleShape&, const GirdleShape&) = default;
};

struct GirdleOutline {
    PlanBox plate;
    double plateCorner = 0;       ///< radius of its corners
    std::vector<PlanBox> windows; ///< one over each bay of the tied run
    double windowCorner = 0;      ///< radius of their corners
    PlanDisc cutout;              ///< at the oil pump pickup; may lie beside the plate
    double washer = 0;            ///< radius of a washer under a main nut
};

/// The plate over the tied run of caps.
GirdleOutline girdleOutline(const EngineLayout& layout, const GirdleShape& shape = {});

/// Refuses windows that meet each other, the pan rail or a nut's washer, and an overhang that leaves no room for the
/// washers or reaches beyond the next cap.
Result<void> checkShape(const EngineLayout& layout, const GirdleShape& shape);

/// The middles of a usual set of bolt holes in the pan rail, at the ends and between the caps on both sides: for a
/// record that does not count its pan rail fasteners.
std::vector<PlanPoint> usualRailBolts(const EngineLayout& layout);

/// Radius of the oil pump pickup as it is drawn, and of a washer under a main nut, millimetres.
double pickupRadius(const BlockOutline& block);
double washerRadius(const EngineLayout& layout, const BlockOutline& block);

} // namespace caprail
