// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/record_figures.h>

#include <assessment/specified.h>
#include <fasteners/wrench.h>
#include <ledger/band_names.h>
#include <shop/builds.h>
#include <tuple>

namespace caprail {

namespace {

CheckState stateOf(const Assessment& assessment, const std::string& checkCode) {
    const Check* check = assessment.find(checkCode);
    return check == nullptr ? CheckState::notDone : check->state;
}

void bandedOf(const Build& build, const Assessment& a, std::vector<BandedFigure>& out) {
    const auto add = [&](std::string_view band, std::string place, Length value, CheckState state) {
        const BandFact* limits = build.facts.bandNamed(band);
        out.push_back({build.number, std::string(band), std::move(place), value, state,
                       limits == nullptr ? std::nullopt : std::optional(limits->band)});
    };
    for (const auto& [journal, result] : a.clearances) {
        if (result.clearance) { // the mean, as engines are compared; each is judged at its worst places
            const bool isMain = journal.kind == JournalKind::main;
            add(isMain ? bands::mainClearance : bands::rodClearance, code(journal), *result.clearance,
                stateOf(a, (isMain ? "main-clearance:" : "rod-clearance:") + code(journal)));
        }
    }
    for (const auto& [position, stack] : a.stacks) {
        if (stack.carriedResidual) {
            add(bands::residual, code(position), *stack.carriedResidual, stateOf(a, "stack:" + code(position)));
        }
    }
    if (a.flushness.twist) {
        add(bands::twist, "", Length(toNearest(*a.flushness.twist)), stateOf(a, "flushness"));
    }
    for (const auto& [place, fit] : a.fits) {
        const Check* check = a.find(CheckKind::fit, place);
        add(place.first, std::to_string(place.second), fit.value, check == nullptr ? CheckState::notDone : check->state);
    }
    if (a.pickup.clearance) {
        add(bands::pickupClearance, "", *a.pickup.clearance, stateOf(a, "pickup"));
    }
}

std::vector<PullFigure> pullsOf(const Ledger& ledger) {
    std::map<std::tuple<std::string, std::string, std::string>, PullFigure> counts;
    for (const Entry& entry : ledger.entries()) {
        const auto* outcome = entry.body.as<RoundOutcome>();
        if (outcome == nullptr || ledger.isStruck(entry.sequence)) {
            continue;
        }
        auto& figure = counts[{code(outcome->fastener), outcome->instrument, entry.person}];
        ++figure.pulled;
        figure.moved += outcome->outcome == Outcome::moved ? 1 : 0;
        if (outcome->angle && outcome->outcome == Outcome::moved) {
            figure.largest = std::max(figure.largest, outcome->angle->value);
        }
    }
    std::vector<PullFigure> list;
    for (auto& [key, figure] : counts) {
        std::tie(figure.fastener, figure.wrench, figure.person) = key;
        list.push_back(std::move(figure));
    }
    return list;
}

InstrumentFigure instrumentOf(const Facts& facts, const InstrumentAdded& added) {
    InstrumentFigure figure{added.instrument,        added.serial, added.type,
                            added.calibrated,        dueOf(added), added.dueCycles,
                            added.cycles.value_or(0)};
    if (const auto pulls = facts.wrenchPulls.find(added.instrument); pulls != facts.wrenchPulls.end()) {
        figure.cycles += pulls->second;
    }
    if (added.type == InstrumentType::torqueWrench) {
        figure.dueCycles = added.dueCycles.value_or(usualCalibrationCycles);
    }
    return figure;
}

} // namespace

RecordFigures figuresOf(const Ledger& ledger) {
    const std::vector<Build> builds = buildsOf(ledger);
    return figuresOf(ledger, builds, builds.empty() ? Assessment() : assess(builds.back().facts));
}

RecordFigures figuresOf(const Ledger& ledger, const std::vector<Build>& builds, const Assessment& last) {
    RecordFigures figures;
    for (const Build& build : builds) {
        bandedOf(build, &build == &builds.back() ? last : assess(build.facts), figures.banded);
    }
    figures.pulls = pullsOf(ledger);
    if (!builds.empty()) {
        for (const auto& [name, instrument] : builds.back().facts.instruments) {
            figures.instruments.push_back(instrumentOf(builds.back().facts, instrument.latest()));
        }
    }
    return figures;
}

} // namespace caprail
