// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How hard the crank turns, and how much harder it may turn with the girdle on.
#include <base/problem.h>
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

struct TurningJudgement {
    bool isGood = false;
    Torque rise; ///< the larger of the two; below zero: it turns easier
    std::string sentence;
};
/// Both torques against those before the girdle: each may rise by `largestRise` and no more. The values alone decide.
/// Refuses torques and a largest rise below zero.
Result<TurningJudgement> judgeTurning(const TurningTorque& before, const TurningTorque& now, Torque largestRise,
                                      const Units&);

} // namespace caprail
