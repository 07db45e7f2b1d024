// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/measured_terms.h>
#include <base/say.h>

namespace caprail {

namespace {

/// Where a single figure stands for a gap: half of what lies between two sums of the usual set.
constexpr Length usualLeafStep = thou(1);
/// No leaf of a set is thicker (common practice): a sum that was typed as one number is at least so many leaves.
constexpr Length thickestLeaf = thou(35);

/// Leaves in the slot: a typed sum names them.
std::size_t leavesOf(const GapReading& gap) {
    const auto named = 1 + static_cast<std::size_t>(std::ranges::count(gap.gap.typed, '+'));
    const auto least = static_cast<std::size_t>(
        std::max<std::int64_t>(1, (gap.gap.value.value() + thickestLeaf.value() - 1) / thickestLeaf.value()));
    return std::max(named, least);
}

/// Half of what lies between what goes and what does not; of one figure, half the set's step.
Length halfWidthOf(const GapReading& gap, const InstrumentAdded* set) {
    if (gap.doesNotGo) {
        return Length((gap.doesNotGo->value - gap.gap.value).value() / 2);
    }
    const Length step = set != nullptr && set->step ? Length(set->step->value) : usualLeafStep;
    return Length(step.value() / 2);
}

/// The worst of the straightedges that lay across the rails. A reading that names none leaves it unknown, however many
/// the record lists: if one of them were taken for it, a worse one left out of the list would make the reading better.
struct Straightedge {
    std::string name;
    std::optional<Length> limit;
    bool isWithoutLimit = false;

    void take(const std::string& instrument, const InstrumentAdded* known) {
        const auto its = known != nullptr && known->limitOfError ? std::optional(known->limitOfError->value) : std::nullopt;
        const bool isWorse = !isWithoutLimit && (name.empty() || !its || *its > limit.value_or(Length()));
        if (isWorse) {
            name = instrument;
            limit = its;
            isWithoutLimit = !its;
        }
    }
};

Straightedge straightedgeBehind(const Facts& facts, std::span<const Seen<GapReading>> readings) {
    Straightedge worst;
    for (const auto& reading : readings) {
        if (!reading.what.straightedge || reading.what.straightedge->empty()) {
            return {};
        }
        worst.take(*reading.what.straightedge, facts.instrumentAt(*reading.what.straightedge, reading.entry));
    }
    return worst;
}

Entered<Length> gapAsTyped(const GapReading& r) {
    return r.gap;
}

MeasuredTerm shimTerm(const Facts& facts, const ShimFact& shim, const Scatter& scatter) {
    MeasuredTerm term = termOf(facts, Core::say("shim %1", shim.added.what.shim), shim.readings,
                               [](const ShimMeasured& m) { return m.thickness; }, scatter);
    shareZero(term);
    return term;
}

std::vector<MeasuredTerm> shimTerms(const Facts& facts, const std::vector<std::string>& names, double sensitivity,
                                    const Scatter& scatter) {
    std::vector<MeasuredTerm> terms;
    for (const auto& name : names) {
        if (const auto shim = facts.shims.find(name); shim != facts.shims.end() && !shim->second.readings.empty()) {
            terms.push_back(shimTerm(facts, shim->second, scatter));
            terms.back().sensitivity = sensitivity;
        }
    }
    return terms;
}

} // namespace

Coverage coverageOf(const Facts& facts) {
    return facts.rules.coverage;
}

Scatter gapScatter(const Facts& facts) {
    ByPlace<Position> places;
    for (const auto& [position, readings] : facts.gaps) {
        for (const auto& reading : facts.currentGaps(position)) {
            places.add(position, reading.person, reading.what.value());
        }
    }
    return places.scatter();
}

Scatter shimScatter(const Facts& facts) {
    ByPlace<std::string> places;
    for (const auto& [name, shim] : facts.shims) {
        for (const auto& reading : shim.readings) {
            places.add(name, reading.person, reading.what.thickness.value);
        }
    }
    return places.scatter();
}

Scatters::Scatters(const Facts& facts)
    : gaps(gapScatter(facts)), journals(journalScatter(facts)), shims(shimScatter(facts)) {
    for (const auto& [method, name] : allWords<BoreMethod>()) {
        bores.emplace(method, boreScatter(facts, method));
    }
}

UncertaintyBudget gapBudgetFrom(const Facts& facts, std::span<const Seen<GapReading>> readings,
                                const Scatter& scatter) {
    GapMeasurement gap;
    gap.readings = readings.size();
    gap.scatter = scatter;
    gap.people = peopleIn(readings);
    std::set<Length> figures;
    for (const auto& reading : readings) {
        figures.insert(reading.what.value());
        gap.leaves = std::max(gap.leaves, leavesOf(reading.what));
        gap.halfWidth = std::max(
            gap.halfWidth, halfWidthOf(reading.what, facts.instrumentAt(reading.what.instrument, reading.entry)));
    }
    gap.figures = std::max<std::size_t>(1, figures.size());
    const InstrumentsBehind behind = instrumentsBehind(facts, readings, gapAsTyped);
    gap.leafSet = behind.name;
    gap.leafLimit = behind.limit;
    const Straightedge edge = straightedgeBehind(facts, readings);
    gap.straightedge = edge.name;
    gap.straightedgeLimit = edge.limit;
    return orNotKnown(gapBudget(gap));
}

UncertaintyBudget gapBudgetOf(const Facts& facts, Position p, const Scatters& scatters) {
    return gapBudgetFrom(facts, facts.currentGaps(p), scatters.gaps);
}

UncertaintyBudget gapBudgetOf(const Facts& facts, Position p) {
    return gapBudgetOf(facts, p, Scatters(facts));
}

UncertaintyBudget residualBudgetWith(const Facts& facts, Position p, const std::vector<std::string>& shims,
                                     const Scatters& scatters) {
    return residualBudget(gapBudgetOf(facts, p, scatters),
                          orNotKnown(stackBudget(shimTerms(facts, shims, 1, scatters.shims))));
}

UncertaintyBudget residualBudgetOf(const Facts& facts, Position p, const Scatters& scatters) {
    const auto stack = facts.stacks.find(p);
    return residualBudgetWith(facts, p, stack == facts.stacks.end() ? std::vector<std::string>() : stack->second.shims,
                              scatters);
}

UncertaintyBudget residualBudgetOf(const Facts& facts, Position p) {
    return residualBudgetOf(facts, p, Scatters(facts));
}

UncertaintyBudget exchangeBudgetOf(const Facts& facts, const std::vector<std::string>& in,
                                   const std::vector<std::string>& out, const Scatter& shims) {
    std::vector<MeasuredTerm> terms = shimTerms(facts, in, 1, shims);
    for (MeasuredTerm& term : shimTerms(facts, out, -1, shims)) {
        terms.push_back(std::move(term));
    }
    return orNotKnown(budgetFor(terms));
}

UncertaintyBudget shimBudgetOf(const Facts& facts, const std::string& shim, const Scatters& scatters) {
    return orNotKnown(stackBudget(shimTerms(facts, {shim}, 1, scatters.shims)));
}

} // namespace caprail
