// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/current_readings.h>

#include <algorithm>
#include <ledger/band_names.h>
#include <measure/statistics.h>

namespace caprail {

namespace {

/// The readings made after an entry; earlier ones no longer stand. They lie in the order in which they were made.
template <class T> std::span<const Seen<T>> after(const std::vector<Seen<T>>& readings, std::int64_t entry) {
    return {std::ranges::upper_bound(readings, entry, {}, &Seen<T>::entry), readings.end()};
}

} // namespace

Change boreInvalidatedBy(const Facts& facts, JournalId j) {
    const bool isMain = j.kind == JournalKind::main;
    Change last = facts.changeOf(Topic::torque, j);
    for (const Change& other :
         {facts.changeOf(Topic::shells, j),
          facts.changeOf(Topic::groupValue, isMain ? FastenerKind::mainCap : FastenerKind::rod)}) {
        last = other.entry > last.entry ? other : last;
    }
    return last;
}

std::span<const Seen<JournalReading>> currentJournal(const Facts& facts, JournalId j) {
    const auto at = facts.journals.find(j);
    return at == facts.journals.end() ? std::span<const Seen<JournalReading>>()
                                      : after(at->second, facts.changeOf(Topic::crank).entry);
}

std::span<const Seen<BoreReading>> currentBores(const Facts& facts, JournalId j) {
    const auto at = facts.bores.find(j);
    return at == facts.bores.end() ? std::span<const Seen<BoreReading>>()
                                   : after(at->second, boreInvalidatedBy(facts, j).entry);
}

std::span<const Seen<FitReading>> currentFits(const Facts& facts, const FitId& place) {
    const auto at = facts.fits.find(place);
    const bool isOnTheCrank = place.first == bands::crankEndPlay || place.first == bands::rodSideClearance;
    const std::int64_t laid = isOnTheCrank ? facts.changeOf(Topic::crankLaid).entry : 0;
    return at == facts.fits.end() ? std::span<const Seen<FitReading>>()
                                  : after(at->second, std::max(laid, facts.changeOf(Topic::crank).entry));
}

std::span<const Seen<PickupReading>> currentPickup(const Facts& facts, PickupTerm term) {
    const auto at = facts.pickup.find(term);
    return at == facts.pickup.end() ? std::span<const Seen<PickupReading>>()
                                    : after(at->second, facts.changeOf(topicOf(partOf(term))).entry);
}

std::optional<Length> shellThickness(const Facts& facts, std::string_view shell) {
    const auto at = facts.shells.find(shell);
    if (at == facts.shells.end()) {
        return {};
    }
    std::vector<Length> measured;
    std::optional<Length> marked;
    for (const auto& reading : at->second) {
        if (reading.what.isMarked) {
            marked = reading.what.thickness.value;
        } else {
            measured.push_back(reading.what.thickness.value);
        }
    }
    return measured.empty() ? marked : Length(toNearest(summarise(measured).mean));
}

} // namespace caprail
