// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/problem.h>
#include <cstddef>
#include <engine/layout.h>
#include <units/torque.h>
#include <vector>

namespace caprail {

/// The default order for main caps (common practice, no source): from the centre cap outwards, the front one of two
/// equally far first, sides alternating; with four per cap the whole inner ring before the outer.
/// Refuses a count of caps outside 3 to 9 and anything but 2 or 4 fasteners per cap.
Result<std::vector<FastenerId>> mainCapSequence(int caps, int fastenersPerCap);

/// Rod by rod from the front, both fasteners of a rod one after the other (each rod is clamped by itself, so there is
/// no centre; common practice, no source). Refuses a count of rods outside 1 to 16.
Result<std::vector<FastenerId>> rodSequence(int rods);

/// From the centre of the pattern outwards for any layout (pan rail, girdle, rectangle): nearest to the middle of the
/// bounding box first, and among equals (within 1 mm) the one farthest from the last pulled, then the first listed.
/// Gives the indices of `points` in the order to pull. Refuses an empty pattern and one of more than 500.
Result<std::vector<std::size_t>> outwardSequence(const std::vector<PlanPoint>& points);

/// The usual order of all fasteners of a kind: as above, girdle nuts and rows from the centre of their pattern outwards.
/// `count` is how many a row has; it means nothing for the kinds that the layout itself counts. Empty for a row of none.
std::vector<FastenerId> usualSequence(const EngineLayout& layout, FastenerKind kind, int count = 0);

/// `count` equal steps up to the final torque, which is the last of them exactly; each to the nearest mN·m (default
/// three: common practice, no source). Refuses a torque ≤ 0 and a count outside 1 to 10.
Result<std::vector<Torque>> equalSteps(Torque final, int count = 3);

} // namespace caprail
