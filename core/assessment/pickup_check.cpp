// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <base/say.h>
#include <clearances/pickup.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// The stack-up of the terms that have readings enough.
Result<PickupClearance> stackUpOf(const PickupReadings& terms) {
    const auto lengths = [&](PickupTerm term) {
        return lengthsOf(terms.at(term), [](const PickupReading& r) { return r.value.value; });
    };
    return pickupClearance({lengths(PickupTerm::panDepth), lengths(PickupTerm::gasket), lengths(PickupTerm::plate),
                            lengths(PickupTerm::pickupDepth)});
}

} // namespace

void pickupCheck(const Assessing& a) {
    const BandFact* band = a.band(bands::pickupClearance);
    if (!a.facts.layout || band == nullptr) {
        return;
    }
    Check& check = a.add(CheckKind::pickup, {}, {}, Core::say("Clearance under the pickup"), {Station::pickup, {}});
    PickupReadings current;
    std::string missing;
    std::string missingWord;
    Change invalidated;
    for (const auto& [term, name] : allWords<PickupTerm>()) {
        const Change change = a.facts.changeOf(topicOf(partOf(term)));
        const auto all = a.facts.pickup.find(term);
        const auto& list = current[term] = currentPickup(a.facts, term);
        if (all != a.facts.pickup.end()) {
            const bool isInvalidated = list.size() < all->second.size();
            invalidated = isInvalidated && list.size() < pickupReadingsNeeded && change.entry > invalidated.entry
                              ? change
                              : invalidated;
        }
        for (const auto& reading : list) {
            rest(check, reading.entry);
        }
        if (!list.empty()) {
            a.out.pickup.means[term] =
                Length(toNearest(summarise(lengthsOf(list, [](const auto& r) { return r.value.value; })).mean));
        }
        if (list.size() < pickupReadingsNeeded && missing.empty()) {
            missingWord = name;
            missing = list.empty() ? Core::say("Measure the %1, twice.", shown(term))
                                   : Core::say("Measure the %1 once more.", shown(term));
        }
    }
    const auto stackUp = stackUpOf(current);
    if (stackUp) {
        a.out.pickup.clearance = stackUp->clearance;
    }
    if (!missing.empty()) {
        check.remedy = missing;
        check.destination.subject = missingWord;
        if (invalidated.entry != 0) {
            check.state = CheckState::stale;
            check.staleBecause = invalidated;
            check.sentence = describe(invalidated, a.units);
        }
        return;
    }
    if (!stackUp) {
        check.sentence = stackUp.error().sentence;
        check.remedy = Core::say("Strike the reading that cannot be right, and measure that term again.");
        return;
    }
    const Length clearance = *a.out.pickup.clearance;
    const Judged& judged = a.judge(check, "", clearance, pickupBudgetOf(a.facts, current), band->band);
    a.out.pickup.uncertainty = judged.uncertainty;
    check.sentence = a.against(judged) + ".";
    const std::string advice = pickupAdvice(clearance, band->band, a.units);
    a.settle(check, advice, advice);
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Look at the clearance, and accept it by the new numbers with a reason.");
    }
}

} // namespace caprail
