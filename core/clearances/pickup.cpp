// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/pickup.h>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

struct TermChecked {
    Length mean;
    MeasuredTerm term;
};

/// The mean of a term with what its uncertainty is made from. `mayBeZero`: a gasket may be replaced by sealant.
Result<TermChecked> check(const PickupTermReadings& readings, const std::string& name, bool mayBeZero) {
    constexpr std::size_t needed = 2;
    if (readings.readings.size() < needed) {
        return refuse(readings.readings.empty()
                          ? Core::say("The %1 has 0 of two readings: measure it twice.", name)
                          : Core::say("The %1 has 1 of two readings: measure it once more.", name));
    }
    const Summary summary = summarise(readings.readings);
    if (summary.smallest < Length() || (!mayBeZero && summary.smallest == Length())) {
        return refuse(mayBeZero ? Core::say("The %1 must be zero or more: look at its readings.", name)
                                : Core::say("The %1 must be above zero: look at its readings.", name));
    }
    MeasuredTerm term;
    term.name = name;
    term.instrument = readings.instrument;
    term.readings = summary.count;
    term.repeatability = pool(std::span(&summary, 1));
    term.limitOfError = readings.limitOfError;
    return TermChecked{Length(toNearest(summary.mean)), std::move(term)};
}

} // namespace

Result<PickupClearance> pickupClearance(const PickupStackUp& stackUp) {
    const auto pan = check(stackUp.panDepth, Core::say("pan depth"), false);
    if (!pan) {
        return tl::unexpected(pan.error());
    }
    const auto gasket = check(stackUp.gasket, Core::say("compressed gasket"), true);
    if (!gasket) {
        return tl::unexpected(gasket.error());
    }
    PickupClearance result;
    std::optional<MeasuredTerm> plateTerm;
    if (stackUp.plate) {
        auto plate = check(*stackUp.plate, Core::say("girdle plate"), true);
        if (!plate) {
            return tl::unexpected(plate.error());
        }
        result.plate = plate->mean;
        plateTerm = std::move(plate->term);
    }
    const auto pickup = check(stackUp.pickupDepth, Core::say("pickup depth"), false);
    if (!pickup) {
        return tl::unexpected(pickup.error());
    }
    result.panDepth = pan->mean;
    result.gasket = gasket->mean;
    result.pickupDepth = pickup->mean;
    result.clearance = result.panDepth + result.gasket + result.plate - result.pickupDepth;
    auto budget = pickupBudget(pan->term, gasket->term, std::move(plateTerm), pickup->term);
    if (!budget) {
        return tl::unexpected(budget.error());
    }
    result.budget = std::move(*budget);
    return result;
}

Band defaultPickupBand() {
    return Band::between(inches(0.250), inches(0.375)).value();
}

std::string pickupAdvice(Length clearance, Band band, const Units& units) {
    const Length change = band.middle() - clearance;
    const std::string by = format(change.magnitude(), units);
    if (by == format(Length(), units)) {
        return Core::say("The clearance is at the middle of the band: nothing to change.");
    }
    const bool isTight = change > Length();
    return isTight
               ? Core::say("Raise the pickup by %1, or fit a gasket or plate thicker by as much: the clearance then "
                           "is %2, the middle of the band.",
                           by, format(band.middle(), units))
               : Core::say("Lower the pickup by %1, or fit a gasket or plate thinner by as much: the clearance then "
                           "is %2, the middle of the band.",
                           by, format(band.middle(), units));
}

std::string describe(const PickupClearance& pickup, Band band, Coverage coverage, DecisionRule rule,
                     const Units& units) {
    const double expanded = pickup.budget.expanded(coverage);
    std::string text = Core::say("Clearance %1", describeVerdict(pickup.clearance, expanded, band, rule, units));
    if (judge(pickup.clearance, expanded, band, rule) != Verdict::in) {
        text += " " + pickupAdvice(pickup.clearance, band, units);
    }
    return text;
}

} // namespace caprail
