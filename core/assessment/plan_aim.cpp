// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/plan_aim.h>
#include <ledger/band_names.h>
#include <measure/verdict.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The middle half: what a bracketed recheck can prove, and no stack is called impossible that lies near the middle.
Band middleHalf(Band band) {
    const Length quarter((band.hi() - band.lo()).value() / 4);
    return Band::between(band.lo() + quarter, band.hi() - quarter).value();
}

} // namespace

std::optional<PlanAim> bandToAimAt(const Facts& facts, std::span<const Position> positions, const Units& units) {
    const BandFact* band = facts.bandNamed(bands::residual);
    if (band == nullptr) {
        return {};
    }
    if (facts.rules.decision != DecisionRule::guarded || positions.empty()) {
        return PlanAim{band->band, true, {}};
    }
    const Scatters scatters(facts);
    double largest = 0;
    for (const Position p : positions) {
        const Uncertainty expected = expectedResidualUncertainty(facts, p, scatters);
        if (!expected.isKnown()) {
            return PlanAim{middleHalf(band->band), false,
                           Core::say("The uncertainty of the residuals is not known, so the plan aims at the middle of "
                                     "the band.") +
                               " " + remedyFor(expected.missing().front())};
        }
        largest = std::max(largest, expected.known()->expanded);
    }
    if (const auto zone = acceptanceZone(band->band, largest, DecisionRule::guarded)) {
        return PlanAim{*zone, true, {}};
    }
    return PlanAim{middleHalf(band->band), false,
                   Core::say("With ± %1 no residual could be proven by arithmetic, so the plan aims at the middle of the "
                             "band: prove the stacks by bracketed rechecks.",
                             formatUncertainty(largest, units))};
}

} // namespace caprail
