// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The clearance between the oil pump pickup and the pan's floor, from the parts that stack up to it.
#include <measure/uncertainty.h>
#include <measure/verdict.h>
#include <optional>
#include <span>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// Readings of one term of the stack-up, with the instrument that took them.
struct PickupTermReadings {
    std::vector<Length> readings; ///< two or more
    std::string instrument;       ///< its name; may be empty
    Length limitOfError;          ///< half-width; zero: not known
};

struct PickupStackUp {
    PickupTermReadings panDepth;             ///< from the pan's flange face to its floor under the pickup
    PickupTermReadings gasket;               ///< compressed; sealant counts as nothing
    std::optional<PickupTermReadings> plate; ///< the girdle plate, where it holds the pan off the rail
    PickupTermReadings pickupDepth;          ///< lowest point of the pickup below the rail
};

struct PickupClearance {
    Length panDepth, gasket, plate, pickupDepth; ///< means, to the nearest nanometre
    Length clearance;                            ///< panDepth + gasket + plate − pickupDepth
    UncertaintyBudget budget;
};
/// Refuses a term with fewer than two readings (it names the term), a pan or pickup depth that is not above zero, a
/// gasket or plate below zero, and a limit of error below zero.
Result<PickupClearance> pickupClearance(const PickupStackUp&);

/// 0.250 to 0.375 in (common practice, no source).
Band defaultPickupBand();

/// What to change by how much to reach the middle of the band: "Raise the pickup by 0.0400 in, or fit a gasket or
/// plate thicker by as much: the clearance then is 0.3125 in, the middle of the band." Says so when it is there.
std::string pickupAdvice(Length clearance, Band band, const Units&);

/// "Clearance 0.2725 in ± …" with the verdict, then the advice where it is not in.
std::string describe(const PickupClearance&, Band, Coverage, DecisionRule, const Units&);

} // namespace caprail
