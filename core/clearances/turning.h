// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How hard the crank turns, and how much harder it may turn with the girdle on.
#include <base/problem.h>
#include <measure/verdict.h>
#include <string>
#include <units/format.h>
#include <units/torque.h>

namespace caprail {

/// At the crank bolt, by hand and slowly: to start it, and to keep it turning.
struct TurningTorque {
    Torque breakaway, running;
};

/// The largest rise that is allowed where the record names none: 2 lbf·ft (common practice, no source; unconfirmed).
constexpr Torque usualTurningRise() {
    return poundFeet(2);
}

/// What a torque wrench may be off by: 4 % of the reading, 6 % up to 10 N·m (ISO 6789-1:2017, 5.1.5; from memory).
double wrenchError(Torque reading);

/// How a rise is judged.
struct TurningLimit {
    Torque largestRise;
    /// Both stages read with one wrench: what it is off by is the same share of both, so of their difference too. Read
    /// with two, each is off by itself.
    bool isOneWrench = true;
    DecisionRule decision = DecisionRule::guarded;
};
struct TurningJudgement {
    Verdict verdict = Verdict::tooCloseToCall;
    Torque rise;                ///< the larger of the two; below zero: it turns easier
    Torque expandedUncertainty; ///< of that rise: k = 2 of wrench errors taken as rectangular
    std::string sentence;
};
/// Both torques against those before the girdle: each may rise by the largest rise and no more, the wrench's error counted
/// where the rule guards. Refuses torques and a largest rise below zero.
Result<TurningJudgement> judgeTurning(const TurningTorque& before, const TurningTorque& now, const TurningLimit&,
                                      const Units&);

} // namespace caprail
