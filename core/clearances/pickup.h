// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The clearance between the oil pump pickup and the pan's floor, from the parts that stack up to it.
#include <optional>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

struct PickupStackUp {
    std::vector<Length> panDepth;             ///< from the pan's flange face to its floor under the pickup
    std::vector<Length> gasket;               ///< compressed; sealant counts as nothing
    std::optional<std::vector<Length>> plate; ///< the girdle plate, where it holds the pan off the rail
    std::vector<Length> pickupDepth;          ///< lowest point of the pickup below the rail
};

struct PickupClearance {
    Length panDepth, gasket, plate, pickupDepth; ///< means, to the nearest nanometre
    Length clearance;                            ///< panDepth + gasket + plate − pickupDepth
};
/// Readings of each term that are asked for.
inline constexpr std::size_t pickupReadingsNeeded = 2;
/// Refuses a term with fewer than two readings (it names the term), a pan or pickup depth that is not above zero, and a
/// gasket or plate below zero.
Result<PickupClearance> pickupClearance(const PickupStackUp&);

/// 0.250 to 0.375 in (common practice, no source).
Band defaultPickupBand();

/// What to change by how much to reach the middle of the band: "Raise the pickup by 0.0400 in, or fit a gasket or
/// plate thicker by as much: the clearance then is 0.3125 in, the middle of the band." Says so when it is there.
std::string pickupAdvice(Length clearance, Band band, const Units&);

} // namespace caprail
