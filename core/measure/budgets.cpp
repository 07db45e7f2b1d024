// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

void note(UncertaintyBudget& budget, const std::string& what) {
    if (std::ranges::find(budget.missing, what) == budget.missing.end()) {
        budget.missing.push_back(what);
    }
}

/// s/√n of a mean of n readings, or a note that nobody knows how well they repeat.
void addRepeatability(UncertaintyBudget& budget, const std::string& name, const std::optional<Pooled>& repeatability,
                      std::size_t readings, double sensitivity) {
    if (!repeatability || !(repeatability->degreesOfFreedom > 0)) {
        note(budget, Core::say("How well the readings of “%1” repeat is not known yet: read it twice or more.", name));
        return;
    }
    UncertaintyTerm term;
    term.name = Core::say("%1, repeatability", name);
    term.standardUncertainty = repeatability->standardDeviation / std::sqrt(static_cast<double>(readings));
    term.sensitivity = sensitivity;
    term.degreesOfFreedom = repeatability->degreesOfFreedom;
    term.isTypeA = true;
    budget.terms.push_back(std::move(term));
}

UncertaintyTerm limitTerm(std::string name, Length halfWidth, double sensitivity = 1, std::string correlatedWith = {}) {
    UncertaintyTerm term;
    term.name = std::move(name);
    term.standardUncertainty = rectangular(halfWidth);
    term.sensitivity = sensitivity;
    term.correlatedWith = std::move(correlatedWith);
    return term;
}

void addQuantity(UncertaintyBudget& budget, const MeasuredTerm& quantity) {
    const std::string instrument = quantity.instrument.empty() ? "instrument" : quantity.instrument;
    addRepeatability(budget, quantity.name, quantity.repeatability, quantity.readings, quantity.sensitivity);
    if (quantity.limitOfError > Length()) {
        budget.terms.push_back(
            limitTerm(quantity.name + ", " + instrument, quantity.limitOfError, quantity.sensitivity));
    } else {
        note(budget,
             Core::say("The limit of error of %1 is not entered: its share is left out.",
                       (quantity.instrument.empty() ? Core::say("what measured “%1”", quantity.name) : instrument)));
    }
    if (quantity.zeroError > Length()) {
        budget.terms.push_back(limitTerm(Core::say("%1, zero of %2", quantity.name, instrument), quantity.zeroError,
                                         quantity.sensitivity, Core::say("zero of %1", instrument)));
    }
}

std::string faultOf(const MeasuredTerm& quantity) {
    if (quantity.readings == 0) {
        return Core::say("“%1” has no reading: measure it first.", quantity.name);
    }
    if (quantity.limitOfError < Length() || quantity.zeroError < Length()) {
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

Result<UncertaintyBudget> gapBudget(const GapMeasurement& gap) {
    if (gap.readings == 0) {
        return refuse(Core::say("The gap has no reading: read it first."));
    }
    if (gap.leaves == 0) {
        return refuse(Core::say("A gap is read with one feeler leaf at least: enter how many lay in the slot."));
    }
    if (gap.feelerLimit < Length() || gap.straightedgeLimit < Length() || gap.micrometerLimit < Length()) {
        return refuse(Core::say("A limit of error for the gap is below zero: enter it as a half-width, without sign."));
    }
    UncertaintyBudget budget;
    addRepeatability(budget, Core::say("gap"), gap.repeatability, gap.readings, 1);
    if (gap.feelerLimit > Length()) {
        for (std::size_t leaf = 1; leaf <= gap.leaves; ++leaf) {
            const std::string which = gap.leaves == 1 ? "" : " " + std::to_string(leaf);
            budget.terms.push_back(limitTerm(Core::say("feeler leaf%1", which), gap.feelerLimit));
        }
    } else {
        note(budget, Core::say("The limit of error of the feeler gauge is not entered: its share is left out."));
    }
    if (gap.straightedgeLimit > Length()) {
        budget.terms.push_back(limitTerm(Core::say("straightedge flatness"), gap.straightedgeLimit));
    } else {
        note(budget, Core::say("The flatness of the straightedge is not entered: its share is left out."));
    }
    if (gap.micrometerLimit > Length()) {
        budget.terms.push_back(limitTerm(Core::say("micrometer on the leaves"), gap.micrometerLimit));
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
