// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <units/length.h>
#include <base/problem.h>
#include <units/torque.h>
#include <vector>

namespace caprail {

/// As seen from the flywheel end with the engine in its installed attitude.
enum class FastenerSide { left, right };
/// A cap with two fasteners has an inner ring only.
enum class FastenerRing { inner, outer };

struct CapFastener {
    int cap; ///< from 1 at the front
    FastenerSide side;
    FastenerRing ring;
    friend bool operator==(const CapFastener&, const CapFastener&) = default;
};
/// The default order for main caps (common practice, no source): from the centre cap outwards, the front one of two
/// equally far first, sides alternating; with four per cap the whole inner ring before the outer.
/// Refuses a count of caps outside 3 to 9 and anything but 2 or 4 fasteners per cap.
Result<std::vector<CapFastener>> mainCapSequence(int caps, int fastenersPerCap);

struct RodFastener {
    int rod; ///< from 1 at the front
    FastenerSide side;
    friend bool operator==(const RodFastener&, const RodFastener&) = default;
};
/// Rod by rod from the front, both fasteners of a rod one after the other (each rod is clamped by itself, so there is
/// no centre; common practice, no source). Refuses a count of rods outside 1 to 16.
Result<std::vector<RodFastener>> rodSequence(int rods);

/// Crosswise around a circle of `count` fasteners, numbered from 0 in the order around it: always as far as can be from
/// those already pulled, then as far as can be from the last. Refuses a count outside 1 to 100.
Result<std::vector<std::size_t>> circularSequence(int count);

/// A place in plan, in any axes.
struct FastenerPoint {
    Length x;
    Length y;
};
/// From the centre of the pattern outwards for any layout (pan rail, girdle, rectangle): nearest to the middle of the
/// bounding box first, and among equals (within 1 mm) the one farthest from the last pulled, then the first listed.
/// Gives the indices of `points` in the order to pull. Refuses an empty pattern and one of more than 500.
Result<std::vector<std::size_t>> outwardSequence(const std::vector<FastenerPoint>& points);

/// An order edited by hand, given back when it holds each of 0 … count−1 exactly once; else a sentence that names the
/// first fastener (counted from 1) that is missing, doubled or unknown.
Result<std::vector<std::size_t>> checkedSequence(std::vector<std::size_t> order, std::size_t count);

/// `count` equal steps up to the final torque, which is the last of them exactly; each to the nearest mN·m (default
/// three: common practice, no source). Refuses a torque ≤ 0 and a count outside 1 to 10.
Result<std::vector<Torque>> equalSteps(Torque final, int count = 3);

} // namespace caprail
