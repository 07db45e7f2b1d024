// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>
#include <measure/verdict.h>
#include <stdexcept>
#include <base/say.h>

namespace caprail {

namespace {

void mustBeUncertainty(double expandedUncertainty) {
    if (!std::isfinite(expandedUncertainty) || expandedUncertainty < 0) {
        throw std::invalid_argument(Core::say("an expanded uncertainty is finite and not below zero"));
    }
}

} // namespace

Verdict judge(Length x, double expandedUncertainty, Band band, DecisionRule rule) {
    mustBeUncertainty(expandedUncertainty);
    if (rule == DecisionRule::simple) {
        return band.contains(x) ? Verdict::in : Verdict::out;
    }
    // Whole nanometres first, so that the only rounding is that of U itself.
    const auto aboveLo = static_cast<double>((x - band.lo()).value());
    const auto belowHi = static_cast<double>((band.hi() - x).value());
    if (aboveLo >= expandedUncertainty && belowHi >= expandedUncertainty) {
        return Verdict::in;
    }
    if (-aboveLo > expandedUncertainty || -belowHi > expandedUncertainty) {
        return Verdict::out;
    }
    return Verdict::tooCloseToCall;
}

std::optional<Band> acceptanceZone(Band band, double expandedUncertainty, DecisionRule rule) {
    mustBeUncertainty(expandedUncertainty);
    if (rule == DecisionRule::simple) {
        return band;
    }
    const auto width = static_cast<double>((band.hi() - band.lo()).value());
    const double guard = std::ceil(expandedUncertainty);
    if (2 * guard > width) {
        return {};
    }
    const Length inwards(static_cast<std::int64_t>(guard));
    return Band::between(band.lo() + inwards, band.hi() - inwards).value();
}

std::optional<Verdict> judge(Length x, const Uncertainty& uncertainty, Band band, DecisionRule rule) {
    return uncertainty.isKnown() ? std::optional(judge(x, uncertainty.known()->expanded, band, rule)) : std::nullopt;
}

Conformity conformity(Length x, double standardUncertainty, Band band) {
    mustBeUncertainty(standardUncertainty);
    const auto at = static_cast<double>(x.value());
    const auto lo = static_cast<double>(band.lo().value());
    const auto hi = static_cast<double>(band.hi().value());
    if (standardUncertainty == 0) {
        return {band.contains(x) ? 1.0 : 0.0, std::numeric_limits<double>::infinity()};
    }
    const boost::math::normal_distribution<double> normal;
    const double below = boost::math::cdf(normal, (hi - at) / standardUncertainty);
    if (isUpperLimitOnly(band)) {
        return {below, hi / (4 * standardUncertainty)};
    }
    return {below - boost::math::cdf(normal, (lo - at) / standardUncertainty), (hi - lo) / (4 * standardUncertainty)};
}

namespace {
/// Beyond any length on an engine stand, and far from overflow.
constexpr Length farBelow = inches(-1e6);
} // namespace

Band atMost(Length largest) {
    return Band::between(std::min(farBelow, largest), largest).value();
}

bool isUpperLimitOnly(Band band) {
    return band.lo() <= farBelow;
}

std::string describeLimits(Band band, const Units& units) {
    return isUpperLimitOnly(band) ? Core::say("at most %1", format(band.hi(), units))
                                  : Core::say("limits %1", format(band, units));
}

} // namespace caprail
