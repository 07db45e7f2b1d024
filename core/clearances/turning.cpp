// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/turning.h>

#include <algorithm>
#include <base/say.h>
#include <cmath>

namespace caprail {

namespace {

/// k = 2 of a rectangular half-width.
double expanded(double halfWidth) {
    return 2 * halfWidth / std::sqrt(3.0);
}

struct Rise {
    Torque rise, uncertainty;
    Verdict verdict = Verdict::in;
};

Rise judgedRise(Torque before, Torque now, const TurningLimit& limit) {
    const Torque rise = now - before;
    const auto error = [](Torque t) { return wrenchError(t) * static_cast<double>(t.value()); };
    const double halfWidth = limit.isOneWrench ? std::abs(wrenchError(now) * static_cast<double>(rise.value()))
                                               : std::hypot(error(before), error(now));
    const auto u = Torque(static_cast<std::int64_t>(std::ceil(expanded(halfWidth))));
    const Torque guard = limit.decision == DecisionRule::guarded ? u : Torque();
    const Verdict verdict = rise + guard <= limit.largestRise  ? Verdict::in
                            : rise - guard > limit.largestRise ? Verdict::out
                                                               : Verdict::tooCloseToCall;
    return {rise, u, verdict};
}

} // namespace

double wrenchError(Torque reading) {
    return reading <= newtonMetres(10) ? 0.06 : 0.04;
}

Result<TurningJudgement> judgeTurning(const TurningTorque& before, const TurningTorque& now, const TurningLimit& limit,
                                      const Units& units) {
    const Torque smallest = std::min({before.breakaway, before.running, now.breakaway, now.running});
    if (smallest < Torque() || limit.largestRise < Torque()) {
        return refuse(Core::say("A turning torque, and the rise that is allowed, are zero or more: look at the readings."));
    }
    const Rise toStart = judgedRise(before.breakaway, now.breakaway, limit);
    const Rise toTurn = judgedRise(before.running, now.running, limit);
    const Rise& larger = toTurn.rise > toStart.rise ? toTurn : toStart;
    TurningJudgement judgement;
    judgement.rise = larger.rise;
    judgement.expandedUncertainty = larger.uncertainty;
    const auto either = [&](Verdict v) { return toStart.verdict == v || toTurn.verdict == v; };
    judgement.verdict = either(Verdict::out)              ? Verdict::out
                        : either(Verdict::tooCloseToCall) ? Verdict::tooCloseToCall
                                                          : Verdict::in;
    judgement.sentence =
        judgement.rise > Torque()
            ? Core::say("%1 to start it, %2 to turn it: up by %3 ± %4, %5 allowed.", format(now.breakaway, units),
                        format(now.running, units), format(judgement.rise, units),
                        format(judgement.expandedUncertainty, units), format(limit.largestRise, units))
            : Core::say("%1 to start it, %2 to turn it: no harder than before.", format(now.breakaway, units),
                        format(now.running, units));
    return judgement;
}

} // namespace caprail
