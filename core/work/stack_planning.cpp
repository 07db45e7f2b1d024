// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/stack_planning.h>

#include <algorithm>
#include <assessment/budget_of.h>
#include <ledger/band_names.h>
#include <measure/verdict.h>

namespace caprail {

namespace {

/// Under guard bands a stack at the very end of the band is too close to call, so the plan aims at the zone in which
/// every stack will be judged in. Where the measurement is too coarse to leave such a zone, it aims at the whole band.
Band bandToAimAt(const Facts& facts, const std::vector<PlanPosition>& positions, Band band) {
    if (facts.rules.decision != DecisionWord::guarded) {
        return band;
    }
    double uncertainty = 0;
    for (const PlanPosition& position : positions) {
        if (const auto p = parsePosition(position.id)) {
            uncertainty = std::max(uncertainty, expectedResidualUncertainty(facts, *p));
        }
    }
    return acceptanceZone(band, uncertainty, DecisionRule::guarded).value_or(band);
}

} // namespace

ResidualBand residualBand(const Facts& facts) {
    const BandFact* band = facts.bandNamed(bands::residual);
    return band != nullptr ? ResidualBand{band->band, true}
                           : ResidualBand{*Band::between(tenths(-5), tenths(5)), false};
}

PlanTask planTaskFor(const Facts& facts, const Assessment& assessment) {
    PlanTask task{{}, residualBand(facts)};
    PlanRequest& request = task.request;
    request.band = task.band.band;
    request.largestStack = static_cast<int>(facts.rules.largestStack);
    request.objective =
        facts.rules.objective == ObjectiveWord::leastTwist ? Objective::leastTwist : Objective::smallestResidual;
    if (!facts.layout) {
        return task;
    }
    request.caps = facts.layout->caps();
    for (const Position p : facts.layout->positions()) {
        const auto gap = assessment.gaps.find(p);
        if (gap == assessment.gaps.end() || !gap->second.accepted) {
            continue;
        }
        PlanPosition position{code(p), p.cap, p.side == Side::left ? -1 : 1, *gap->second.accepted, {}};
        if (const auto pin = facts.pins.find(p); pin != facts.pins.end()) {
            position.pinned = pin->second;
        }
        request.positions.push_back(std::move(position));
    }
    for (const auto& [name, shim] : facts.shims) {
        if (!shim.isSetAside) {
            request.shims.push_back({name, shim.thickness()});
        }
    }
    request.band = bandToAimAt(facts, request.positions, request.band);
    return task;
}

Feel expectedFeel(Length residual, const Band& band) {
    if (residual < band.lo()) {
        return Feel::rocks;
    }
    return residual > band.hi() ? Feel::loose : Feel::drags;
}

} // namespace caprail
