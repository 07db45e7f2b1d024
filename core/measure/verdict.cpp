// SPDX-License-Identifier: GPL-3.0-or-later
#include <measure/verdict.h>

namespace caprail {

Verdict judge(Length x, double expandedUncertainty, Band band, DecisionRule rule) {
    const double u = rule == DecisionRule::guarded ? expandedUncertainty : 0.0;
    const auto value = static_cast<double>(x.value());
    const auto lo = static_cast<double>(band.lo().value());
    const auto hi = static_cast<double>(band.hi().value());
    if (value - u >= lo && value + u <= hi) {
        return Verdict::in;
    }
    if (value + u < lo || value - u > hi) {
        return Verdict::out;
    }
    return Verdict::tooCloseToCall;
}

} // namespace caprail
