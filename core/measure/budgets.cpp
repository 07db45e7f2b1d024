// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

void note(UncertaintyBudget& budget, Missing::What what, const std::string& about) {
    const Missing missing{what, about};
    if (std::ranges::find(budget.missing, missing) == budget.missing.end()) {
        budget.missing.push_back(missing);
    }
}

UncertaintyTerm limitTerm(std::string name, Length halfWidth, double sensitivity = 1, std::string correlatedWith = {}) {
    UncertaintyTerm term;
    term.name = std::move(name);
    term.standardUncertainty = rectangular(halfWidth);
    term.sensitivity = sensitivity;
    term.correlatedWith = std::move(correlatedWith);
    return term;
}

/// What the readings of one place scatter by, and the people who read it.
struct Repeats {
    const Scatter& scatter;
    std::size_t readings, people;
    double shareOfOne; ///< 1/√n for a mean, more for a median
    double stepAlone;  ///< standard uncertainty of the step, nanometres
    double sensitivity;
};

/// The type A terms, or a note that nobody knows how well the quantity repeats. Readings that agree better than their
/// step can tell are no better than the step. Where people are known to differ, a place that one of them read carries all
/// of that: it would be the better for the second not having read it otherwise.
void addScatter(UncertaintyBudget& budget, const std::string& name, const Repeats& r) {
    if (r.scatter.people) {
        UncertaintyTerm term;
        term.name = Core::say("%1, between people", name);
        term.standardUncertainty = r.scatter.people->standardDeviation / std::sqrt(static_cast<double>(r.people));
        term.sensitivity = r.sensitivity;
        term.degreesOfFreedom = r.scatter.people->degreesOfFreedom;
        term.isTypeA = true;
        budget.terms.push_back(std::move(term));
    }
    const auto& own = r.scatter.repeatability;
    if (!own || !(own->degreesOfFreedom > 0)) {
        if (!r.scatter.people) {
            note(budget, Missing::What::repeatability, name);
        }
        return;
    }
    UncertaintyTerm term;
    term.name = Core::say("%1, repeatability", name);
    term.sensitivity = r.sensitivity;
    term.isTypeA = true;
    term.readings = r.readings;
    double scatter = own->standardDeviation;
    if (scatter > r.stepAlone) {
        term.degreesOfFreedom = own->degreesOfFreedom;
    } else {
        scatter = r.stepAlone;
    }
    term.standardUncertainty = scatter * r.shareOfOne;
    budget.terms.push_back(std::move(term));
}

bool isKnown(const std::optional<Length>& limit) {
    return limit && *limit > Length();
}

void addLimit(UncertaintyBudget& budget, const MeasuredTerm& quantity) {
    if (quantity.instrument.empty()) {
        note(budget, Missing::What::instrument, quantity.name);
    } else if (!isKnown(quantity.limitOfError)) {
        note(budget, Missing::What::limitOfError, quantity.instrument);
    } else if (!quantity.isLimitShared) {
        budget.terms.push_back(
            limitTerm(quantity.name + ", " + quantity.instrument, *quantity.limitOfError, quantity.sensitivity));
    }
    if (quantity.zeroError > Length()) {
        const std::string& whose = quantity.zeroOf.empty() ? quantity.instrument : quantity.zeroOf;
        budget.terms.push_back(limitTerm(Core::say("%1, zero of %2", quantity.name, whose), quantity.zeroError,
                                         quantity.sensitivity, Core::say("zero of %1", whose)));
    }
}

void addQuantity(UncertaintyBudget& budget, const MeasuredTerm& quantity) {
    const double stepAlone = rectangular(static_cast<double>(quantity.step.value()) / 2);
    addScatter(budget, quantity.name,
               {quantity.scatter, quantity.readings, quantity.people,
                1 / std::sqrt(static_cast<double>(quantity.readings)), stepAlone, quantity.sensitivity});
    addLimit(budget, quantity);
    if (quantity.step > Length()) {
        UncertaintyTerm term = limitTerm(Core::say("%1, resolution", quantity.name), quantity.step, quantity.sensitivity);
        term.standardUncertainty = stepAlone;
        budget.terms.push_back(std::move(term));
    }
    if (quantity.temperatureError > Length()) {
        budget.terms.push_back(limitTerm(Core::say("%1, temperature", quantity.name), quantity.temperatureError,
                                         quantity.sensitivity));
    }
}

std::string faultOf(const MeasuredTerm& quantity) {
    if (quantity.readings == 0 || quantity.people == 0) {
        return Core::say("“%1” has no reading: measure it first.", quantity.name);
    }
    if (quantity.limitOfError.value_or(Length()) < Length() || quantity.zeroError < Length() ||
        quantity.step < Length() || quantity.temperatureError < Length()) {
        return Core::say("The limit of error for “%1” is below zero: enter it as a half-width, without sign.",
                         quantity.name);
    }
    return {};
}

} // namespace

Result<UncertaintyBudget> budgetFor(std::span<const MeasuredTerm> quantities) {
    if (quantities.empty()) {
        return refuse(Core::say("Nothing was measured: an uncertainty needs at least one reading."));
    }
    UncertaintyBudget budget;
    for (const MeasuredTerm& quantity : quantities) {
        if (std::string fault = faultOf(quantity); !fault.empty()) {
            return refuse(std::move(fault));
        }
        addQuantity(budget, quantity);
    }
    return budget;
}

Length temperatureError(Length size, Temperature halfWidth) {
    constexpr double steel = 11.5e-6;
    return Length(toNearest(static_cast<double>(size.magnitude().value()) * steel * inCelsius(halfWidth)));
}

Result<UncertaintyBudget> gapBudget(const GapMeasurement& gap) {
    if (gap.readings == 0 || gap.figures == 0 || gap.people == 0) {
        return refuse(Core::say("The gap has no reading: read it first."));
    }
    if (gap.leaves == 0) {
        return refuse(Core::say("A gap is read with one feeler leaf at least: enter how many lay in the slot."));
    }
    if (gap.leafLimit.value_or(Length()) < Length() || gap.straightedgeLimit.value_or(Length()) < Length() ||
        gap.halfWidth < Length()) {
        return refuse(Core::say("A limit of error for the gap is below zero: enter it as a half-width, without sign."));
    }
    UncertaintyBudget budget;
    const double stepAlone = rectangular(gap.halfWidth);
    addScatter(budget, Core::say("gap"),
               {gap.scatter, gap.figures, gap.people,
                medianFactor(gap.figures) / std::sqrt(static_cast<double>(gap.figures)), stepAlone, 1});
    if (gap.leafSet.empty()) {
        note(budget, Missing::What::instrument, Core::say("gap"));
    } else if (!isKnown(gap.leafLimit)) {
        note(budget, Missing::What::limitOfError, gap.leafSet);
    } else {
        for (std::size_t leaf = 1; leaf <= gap.leaves; ++leaf) {
            budget.terms.push_back(
                limitTerm(gap.leaves == 1 ? Core::say("feeler leaf") : Core::say("feeler leaf %1", leaf),
                          *gap.leafLimit, 1, Core::say("leaves of %1", gap.leafSet)));
        }
    }
    if (gap.straightedge.empty()) {
        note(budget, Missing::What::straightedge, {});
    } else if (!isKnown(gap.straightedgeLimit)) {
        note(budget, Missing::What::limitOfError, gap.straightedge);
    } else {
        budget.terms.push_back(limitTerm(Core::say("straightedge flatness"), *gap.straightedgeLimit));
    }
    if (gap.halfWidth > Length()) {
        budget.terms.push_back(limitTerm(Core::say("gap, between what goes and what does not"), gap.halfWidth));
    }
    return budget;
}

Result<UncertaintyBudget> stackBudget(std::span<const MeasuredTerm> shims) {
    return shims.empty() ? UncertaintyBudget() : budgetFor(shims);
}

UncertaintyBudget residualBudget(const UncertaintyBudget& gap, const UncertaintyBudget& stack) {
    return difference(gap, stack);
}

Result<UncertaintyBudget> clearanceBudget(MeasuredTerm bore, MeasuredTerm journal, std::vector<MeasuredTerm> shells) {
    bore.sensitivity = 1;
    journal.sensitivity = -1;
    std::vector<MeasuredTerm> all{std::move(bore), std::move(journal)};
    for (MeasuredTerm& shell : shells) {
        shell.sensitivity = -1;
        all.push_back(std::move(shell));
    }
    return budgetFor(all);
}

Result<UncertaintyBudget> pickupBudget(MeasuredTerm panDepth, MeasuredTerm gasket, std::optional<MeasuredTerm> plate,
                                       MeasuredTerm pickupDepth) {
    panDepth.sensitivity = 1;
    gasket.sensitivity = 1;
    pickupDepth.sensitivity = -1;
    std::vector<MeasuredTerm> all{std::move(panDepth), std::move(gasket)};
    if (plate) {
        plate->sensitivity = 1;
        all.push_back(std::move(*plate));
    }
    all.push_back(std::move(pickupDepth));
    return budgetFor(all);
}

} // namespace caprail
