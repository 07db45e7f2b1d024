// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/turning.h>

#include <algorithm>
#include <base/say.h>

namespace caprail {

Result<TurningJudgement> judgeTurning(const TurningTorque& before, const TurningTorque& now, Torque largestRise,
                                      const Units& units) {
    const Torque smallest = std::min({before.breakaway, before.running, now.breakaway, now.running});
    if (smallest < Torque() || largestRise < Torque()) {
        return refuse(Core::say("A turning torque, and the rise that is allowed, are zero or more: look at the readings."));
    }
    const Torque toStart = now.breakaway - before.breakaway;
    const Torque toTurn = now.running - before.running;
    TurningJudgement judgement;
    judgement.rise = std::max(toStart, toTurn);
    judgement.isGood = judgement.rise <= largestRise;
    judgement.sentence =
        judgement.rise > Torque()
            ? Core::say("%1 to start it, %2 to turn it: up by %3, %4 allowed.", format(now.breakaway, units),
                        format(now.running, units), format(judgement.rise, units), format(largestRise, units))
            : Core::say("%1 to start it, %2 to turn it: no harder than before.", format(now.breakaway, units),
                        format(now.running, units));
    return judgement;
}

} // namespace caprail
