// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <assessment/standing.h>
#include <clearances/pickup.h>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t readingsNeeded = 2;

} // namespace

void pickupCheck(const Assessing& a) {
    const BandFact* band = a.band(bands::pickupClearance);
    if (!a.facts.layout || band == nullptr) {
        return;
    }
    Check& check = a.add(CheckKind::pickup, {}, {}, Core::say("Clearance under the pickup"), {Station::pickup, {}});
    PickupReadings standing;
    std::string missing;
    std::string missingWord;
    Change felled;
    for (const auto& [term, name] : allWords<PickupTerm>()) {
        const Change change = a.facts.changeOf(topicOf(partOf(term)));
        const auto all = a.facts.pickup.find(term);
        const auto& list = standing[term] = standingPickup(a.facts, term);
        if (all != a.facts.pickup.end()) {
            const bool hasFallen = list.size() < all->second.size();
            felled = hasFallen && list.size() < readingsNeeded && change.entry > felled.entry ? change : felled;
        }
        for (const auto& reading : list) {
            rest(check, reading.entry);
        }
        if (!list.empty()) {
            a.out.pickup.means[term] =
                Length(toNearest(summarise(lengthsOf(list, [](const auto& r) { return r.value.value; })).mean));
        }
        if (list.size() < readingsNeeded && missing.empty()) {
            missingWord = name;
            missing = list.empty() ? Core::say("Measure the %1, twice.", shown(term))
                                   : Core::say("Measure the %1 once more.", shown(term));
        }
    }
    if (a.out.pickup.means.size() == standing.size()) {
        const auto& m = a.out.pickup.means;
        a.out.pickup.clearance = m.at(PickupTerm::panDepth) + m.at(PickupTerm::gasket) + m.at(PickupTerm::plate) -
                                 m.at(PickupTerm::pickupDepth);
        a.out.pickup.expandedUncertainty = expandedBy(a.facts, pickupBudgetOf(a.facts, standing));
    }
    if (!missing.empty()) {
        check.remedy = missing;
        check.place.subject = missingWord;
        if (felled.entry != 0) {
            check.state = CheckState::stale;
            check.staleBecause = felled;
            check.sentence = Core::say("Entry %1: %2.", felled.entry, felled.what);
        }
        return;
    }
    const Length clearance = *a.out.pickup.clearance;
    check.state = a.judged(clearance, a.out.pickup.expandedUncertainty, *band);
    check.sentence = a.against(clearance, a.out.pickup.expandedUncertainty, *band) + ".";
    if (!check.isGood()) {
        check.remedy = pickupAdvice(clearance, band->band, a.units);
    }
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Look at the clearance, and judge it again.");
    }
}

} // namespace caprail
