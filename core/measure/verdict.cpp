// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
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

std::string describeVerdict(Length x, double expandedUncertainty, Band band, DecisionRule rule, const Units& units) {
    const Verdict verdict = judge(x, expandedUncertainty, band, rule);
    std::string sentence =
        Core::say("%1 ± %2 is %3 (%4, %5).", format(x, units), formatSpread(expandedUncertainty, units), shown(verdict),
                  format(band, units), shown(rule));
    if (verdict == Verdict::tooCloseToCall && !acceptanceZone(band, expandedUncertainty, rule)) {
        sentence += " " + Core::say("The uncertainty is more than half the band: no value could pass; measure better.");
    }
    return sentence;
}

} // namespace caprail
