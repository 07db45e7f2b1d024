// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/stack_planning.h>

#include <assessment/plan_aim.h>
#include <base/say.h>
#include <ledger/band_names.h>

namespace caprail {

ResidualBand residualBand(const Facts& facts) {
    const BandFact* band = facts.bandNamed(bands::residual);
    return band != nullptr ? ResidualBand{band->band, true}
                           : ResidualBand{*Band::between(tenths(-5), tenths(5)), false};
}

PlanTask planTaskFor(const Facts& facts, const Assessment& assessment, const Units& units,
                     const GirdleModel* girdle) {
    PlanTask task{{}, residualBand(facts), {}};
    PlanRequest& request = task.request;
    request.band = task.band.band;
    request.largestStack = static_cast<int>(facts.rules.largestStack);
    request.objective = facts.rules.objective;
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
    std::vector<Position> positions;
    for (const PlanPosition& position : request.positions) {
        if (const auto p = parsePosition(position.id)) {
            positions.push_back(*p);
        }
    }
    if (auto aim = bandToAimAt(facts, positions, units)) {
        request.band = aim->band;
        task.doubt = std::move(aim->sentence);
    }
    if (girdle != nullptr) {
        giveStiffness(request, *girdle);
    }
    if (request.objective == Objective::leastLoad && request.stiffness.empty() && !request.positions.empty()) {
        request.objective = Objective::smallestResidual;
        task.doubt += (task.doubt.empty() ? "" : " ") +
                      Core::say("Least load cannot be aimed at while nobody described the girdle's plate: the plan has "
                                "the smallest residuals instead.");
    }
    return task;
}

Feel expectedFeel(Length residual, const Band& band) {
    if (residual < band.lo()) {
        return Feel::rocks;
    }
    return residual > band.hi() ? Feel::loose : Feel::drags;
}

} // namespace caprail
