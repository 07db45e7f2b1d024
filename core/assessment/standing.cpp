// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/standing.h>

#include <algorithm>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// The readings made after an entry; earlier ones no longer stand.
template <class T> std::vector<Seen<T>> after(const std::vector<Seen<T>>& readings, std::int64_t entry) {
    std::vector<Seen<T>> list;
    std::ranges::copy_if(readings, std::back_inserter(list), [&](const auto& r) { return r.entry > entry; });
    return list;
}

} // namespace

Change boreFelledBy(const Facts& facts, JournalId j) {
    const bool isMain = j.kind == JournalKind::main;
    Change last = facts.changeOf(Topic::torque, j);
    for (const Change& other : {facts.changeOf(Topic::shells, j),
                                facts.changeOf(Topic::groupValue, isMain ? FastenerKind::mainCap : FastenerKind::rod)}) {
        last = other.entry > last.entry ? other : last;
    }
    return last;
}

std::vector<Seen<JournalReading>> standingJournal(const Facts& facts, JournalId j) {
    const auto at = facts.journals.find(j);
    return at == facts.journals.end() ? std::vector<Seen<JournalReading>>()
                                      : after(at->second, facts.changeOf(Topic::crank).entry);
}

std::vector<Seen<BoreReading>> standingBores(const Facts& facts, JournalId j) {
    const auto at = facts.bores.find(j);
    return at == facts.bores.end() ? std::vector<Seen<BoreReading>>() : after(at->second, boreFelledBy(facts, j).entry);
}

std::vector<Seen<FitReading>> standingFits(const Facts& facts, const FitPlace& place) {
    const auto at = facts.fits.find(place);
    const bool isOnTheCrank = place.first == bands::crankEndPlay || place.first == bands::rodSideClearance;
    const std::int64_t laid = isOnTheCrank ? facts.changeOf(Topic::crankLaid).entry : 0;
    return at == facts.fits.end() ? std::vector<Seen<FitReading>>()
                                  : after(at->second, std::max(laid, facts.changeOf(Topic::crank).entry));
}

std::vector<Seen<PickupReading>> standingPickup(const Facts& facts, PickupTerm term) {
    const auto at = facts.pickup.find(term);
    return at == facts.pickup.end() ? std::vector<Seen<PickupReading>>()
                                    : after(at->second, facts.changeOf(topicOf(partOf(term))).entry);
}

} // namespace caprail
