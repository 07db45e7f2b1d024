// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/standing.h>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

Coverage coverageOf(const Facts& facts) {
    return facts.rules.coverage == CoverageWord::two ? Coverage::two : Coverage::student;
}

Length limitOfError(const Facts& facts, const std::string& instrument) {
    const auto at = facts.instruments.find(instrument);
    return at == facts.instruments.end() || !at->second.what.limitOfError ? Length()
                                                                          : at->second.what.limitOfError->value;
}

/// The instrument with the largest limit of error among those that readings name.
template <class Readings> std::string worstInstrument(const Facts& facts, const Readings& readings) {
    std::string worst;
    const std::string* before = nullptr;
    for (const auto& reading : readings) {
        if (before != nullptr && *before == reading.what.instrument) {
            continue; // most were read with the same
        }
        before = &reading.what.instrument;
        if (worst.empty() || limitOfError(facts, reading.what.instrument) > limitOfError(facts, worst)) {
            worst = reading.what.instrument;
        }
    }
    return worst;
}

Length straightedgeLimit(const Facts& facts) {
    Length limit;
    for (const auto& [name, instrument] : facts.instruments) {
        if (instrument.what.type == InstrumentType::straightedge) {
            limit = std::max(limit, limitOfError(facts, name));
        }
    }
    return limit;
}

/// A quantity with the scatter of its own readings and the limit of its instrument.
template <class Readings, class Get>
MeasuredTerm termOf(const Facts& facts, std::string name, const Readings& readings, Get get) {
    MeasuredTerm term;
    term.name = std::move(name);
    term.instrument = worstInstrument(facts, readings);
    term.readings = std::max<std::size_t>(1, readings.size());
    term.limitOfError = limitOfError(facts, term.instrument);
    const Summary summary = summarise(lengthsOf(readings, get));
    if (summary.count > 1) {
        term.repeatability = Pooled{summary.standardDeviation, static_cast<double>(summary.count - 1)};
    }
    return term;
}

/// A shim as the micrometer knows it: half of the micrometer's limit is taken as error anew for each shim, half as its
/// zero, the same for all that it measured (common practice, no source).
MeasuredTerm shimTerm(const Facts& facts, const ShimFact& shim) {
    MeasuredTerm term = termOf(facts, Core::say("shim %1", shim.added.what.shim), shim.readings,
                               [](const ShimMeasured& m) { return m.thickness.value; });
    term.limitOfError = Length(term.limitOfError.value() / 2);
    term.zeroError = term.limitOfError;
    return term;
}

/// A budget that could not be made (nothing was measured) is an empty one: no uncertainty is claimed.
UncertaintyBudget orEmpty(Result<UncertaintyBudget> budget) {
    return budget ? std::move(*budget) : UncertaintyBudget{};
}

} // namespace

std::optional<Pooled> surveyRepeatability(const Facts& facts) {
    std::vector<Summary> places;
    for (const auto& [position, readings] : facts.gaps) {
        places.push_back(
            summarise(lengthsOf(facts.standingGaps(position), [](const GapReading& r) { return r.gap.value; })));
    }
    return pool(places);
}

UncertaintyBudget gapBudgetOf(const Facts& facts, Position p) {
    return gapBudgetOf(facts, p, surveyRepeatability(facts));
}

UncertaintyBudget gapBudgetOf(const Facts& facts, Position p, const std::optional<Pooled>& repeatability) {
    const auto standing = facts.standingGaps(p);
    GapMeasurement gap;
    gap.readings = standing.size();
    gap.repeatability = repeatability;
    gap.feelerLimit = limitOfError(facts, worstInstrument(facts, standing));
    gap.straightedgeLimit = straightedgeLimit(facts);
    // A typed sum names its leaves: "22+23+12.5 thou" is three in one slot.
    if (!standing.empty()) {
        const std::string& typed = standing.back().what.gap.typed;
        gap.leaves = 1 + static_cast<std::size_t>(std::ranges::count(typed, '+'));
    }
    return orEmpty(gapBudget(gap));
}

UncertaintyBudget residualBudgetOf(const Facts& facts, Position p) {
    return residualBudgetOf(facts, p, surveyRepeatability(facts));
}

UncertaintyBudget residualBudgetOf(const Facts& facts, Position p, const std::optional<Pooled>& repeatability) {
    std::vector<MeasuredTerm> shims;
    if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end()) {
        for (const auto& name : stack->second.shims) {
            if (const auto shim = facts.shims.find(name); shim != facts.shims.end() && !shim->second.readings.empty()) {
                shims.push_back(shimTerm(facts, shim->second));
            }
        }
    }
    return residualBudget(gapBudgetOf(facts, p, repeatability), orEmpty(stackBudget(shims)));
}

double expectedResidualUncertainty(const Facts& facts, Position p) {
    constexpr std::size_t usualStack = 3;
    if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end() && !stack->second.shims.empty()) {
        return expandedBy(facts, residualBudgetOf(facts, p));
    }
    std::vector<MeasuredTerm> shims;
    for (const auto& [name, shim] : facts.shims) {
        if (!shim.readings.empty() && shims.size() < usualStack) {
            shims.push_back(shimTerm(facts, shim));
        }
    }
    return expandedBy(facts, residualBudget(gapBudgetOf(facts, p), orEmpty(stackBudget(shims))));
}

UncertaintyBudget clearanceBudgetOf(const Facts& facts, JournalId j) {
    const auto journal = standingJournal(facts, j);
    const auto standing = standingBores(facts, j);
    if (standing.empty()) {
        return {};
    }
    // The way in which it was measured last counts.
    const BoreMethod method = standing.back().what.method;
    std::vector<Seen<BoreReading>> bores;
    std::ranges::copy_if(standing, std::back_inserter(bores),
                         [&](const auto& reading) { return reading.what.method == method; });
    const bool isHousing = method == BoreMethod::housing;
    const MeasuredTerm bore = termOf(facts, isHousing ? Core::say("housing") : Core::say("bore"), bores,
                                     [](const BoreReading& r) { return r.value.value; });
    if (method == BoreMethod::strip) {
        return orEmpty(budgetFor(std::span(&bore, 1)));
    }
    std::vector<MeasuredTerm> shells;
    if (const auto fitted = facts.shellsFitted.find(j); isHousing && fitted != facts.shellsFitted.end()) {
        for (const std::string& name : {fitted->second.what.upper, fitted->second.what.lower}) {
            if (const auto shell = facts.shells.find(name); shell != facts.shells.end()) {
                shells.push_back(termOf(facts, Core::say("shell %1", name), shell->second,
                                        [](const ShellMeasured& m) { return m.thickness.value; }));
            }
        }
    }
    return orEmpty(clearanceBudget(
        bore, termOf(facts, Core::say("journal"), journal, [](const JournalReading& r) { return r.diameter.value; }),
        shells));
}

UncertaintyBudget fitBudgetOf(const Facts& facts, const FitPlace& place) {
    auto readings = standingFits(facts, place);
    if (const auto at = facts.fits.find(place); readings.empty() && at != facts.fits.end()) {
        readings = at->second;
    }
    const MeasuredTerm term =
        termOf(facts, Core::say("reading"), readings, [](const FitReading& r) { return r.value.value; });
    return orEmpty(budgetFor(std::span(&term, 1)));
}

UncertaintyBudget pickupBudgetOf(const Facts& facts, const PickupReadings& terms) {
    const auto term = [&](PickupTerm which) {
        return termOf(facts, shown(which), terms.at(which), [](const PickupReading& r) { return r.value.value; });
    };
    return orEmpty(pickupBudget(term(PickupTerm::panDepth), term(PickupTerm::gasket), term(PickupTerm::plate),
                                term(PickupTerm::pickupDepth)));
}

double expandedBy(const Facts& facts, const UncertaintyBudget& budget) {
    return budget.expanded(coverageOf(facts));
}

} // namespace caprail
