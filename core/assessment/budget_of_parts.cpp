// SPDX-License-Identifier: GPL-3.0-or-later
/// Budgets of bearings, fits and the pickup.
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/measured_terms.h>
#include <base/say.h>
#include <bearings/clearance.h>
#include <tuple>

namespace caprail {

namespace {

Entered<Length> diameterOf(const JournalReading& r) {
    return r.diameter;
}
Entered<Length> boreOf(const BoreReading& r) {
    return r.value;
}
Entered<Length> pickupOf(const PickupReading& r) {
    return r.value;
}
Entered<Length> fitOf(const FitReading& r) {
    return r.value;
}

/// The readings of the place with the smallest or largest mean. `placeOf` tells places apart, `get` gives the quantity.
template <class Readings, class PlaceOf, class Get>
auto worstPlace(const Readings& readings, PlaceOf placeOf, Get get, bool isLargest) {
    using One = std::ranges::range_value_t<Readings>;
    std::map<std::pair<std::int64_t, std::int64_t>, std::vector<One>> places;
    for (const auto& reading : readings) {
        places[placeOf(reading.what)].push_back(reading);
    }
    std::vector<One> worst;
    double extreme = 0;
    for (auto& [place, list] : places) {
        const double mean = summarise(lengthsOf(list, [&](const auto& r) { return get(r).value; })).mean;
        if (worst.empty() || (isLargest ? mean > extreme : mean < extreme)) {
            extreme = mean;
            worst = std::move(list);
        }
    }
    return worst;
}

/// What the parts of some readings may differ by in temperature: what the shop's rule says; where a thermometer was held
/// to all of them, the difference that it showed and its own error.
template <class... Readings> Temperature temperatureSpread(const Facts& facts, const Readings&... readings) {
    std::optional<Temperature> coldest;
    std::optional<Temperature> warmest;
    bool areAllKnown = true;
    const auto take = [&](const auto& list) {
        for (const auto& reading : list) {
            areAllKnown = areAllKnown && reading.what.partTemperature.has_value();
            if (reading.what.partTemperature) {
                const Temperature t = reading.what.partTemperature->value;
                coldest = std::min(coldest.value_or(t), t);
                warmest = std::max(warmest.value_or(t), t);
            }
        }
    };
    (take(readings), ...);
    return areAllKnown && coldest ? *warmest - *coldest + thermometerError
                                  : facts.rules.temperatureSpread.value_or(usualTemperatureSpread);
}

/// A bore gauge that was set in the micrometer that measured the journal carries that micrometer's error, which then
/// drops out of the difference; what is left of both is the gauge's own.
void shareSetting(const InstrumentsBehind& bore, const InstrumentsBehind& journal, MeasuredTerm& boreTerm,
                  MeasuredTerm& journalTerm) {
    if (!bore.setWith || !journal.isOne() || *bore.setWith != journal.name || !journal.limit) {
        return;
    }
    for (MeasuredTerm* term : {&boreTerm, &journalTerm}) {
        term->zeroOf = journal.name;
        term->zeroError = *journal.limit;
    }
    journalTerm.isLimitShared = true;
}

std::vector<MeasuredTerm> shellTerms(const Facts& facts, JournalId j) {
    std::vector<MeasuredTerm> terms;
    const auto fitted = facts.shellsFitted.find(j);
    if (fitted == facts.shellsFitted.end()) {
        return terms;
    }
    ByPlace<std::string> places;
    for (const auto& [name, readings] : facts.shells) {
        for (const auto& reading : readings) {
            if (!reading.what.isMarked) {
                places.add(name, reading.person, reading.what.thickness.value);
            }
        }
    }
    const Scatter scatter = places.scatter();
    for (const std::string& name : {fitted->second.what.upper, fitted->second.what.lower}) {
        const auto shell = facts.shells.find(name);
        auto readings = shell == facts.shells.end() ? std::vector<Seen<ShellMeasured>>() : shell->second;
        std::erase_if(readings, [](const auto& r) { return r.what.isMarked; });
        // A shell that nobody measured names no instrument: its marking is no measurement.
        terms.push_back(termOf(facts, Core::say("shell %1", name), readings,
                               [](const ShellMeasured& m) { return m.thickness; }, scatter));
    }
    return terms;
}

} // namespace

Scatter journalScatter(const Facts& facts) {
    ByPlace<std::tuple<JournalId, std::int64_t, std::int64_t>> places;
    for (const auto& [journal, readings] : facts.journals) {
        for (const auto& reading : currentJournal(facts, journal)) {
            places.add({journal, reading.what.station, reading.what.direction}, reading.person,
                       reading.what.diameter.value);
        }
    }
    return places.scatter();
}

Scatter boreScatter(const Facts& facts, BoreMethod method) {
    ByPlace<std::pair<JournalId, std::int64_t>> places;
    for (const auto& [journal, readings] : facts.bores) {
        for (const auto& reading : currentBores(facts, journal)) {
            if (reading.what.method == method) {
                places.add({journal, reading.what.station}, reading.person, reading.what.value.value);
            }
        }
    }
    return places.scatter();
}

Scatter fitScatter(const Facts& facts, const std::string& fit) {
    ByPlace<std::int64_t> places;
    for (const auto& [place, readings] : facts.fits) {
        if (place.first == fit) {
            for (const auto& reading : currentFits(facts, place)) {
                places.add(place.second, reading.person, reading.what.value.value);
            }
        }
    }
    return places.scatter();
}

Scatter pickupScatter(const Facts& facts, const std::string& instrument) {
    ByPlace<PickupTerm> places;
    for (const auto& [term, readings] : facts.pickup) {
        for (const auto& reading : currentPickup(facts, term)) {
            if (reading.what.instrument == instrument) {
                places.add(term, reading.person, reading.what.value.value);
            }
        }
    }
    return places.scatter();
}

UncertaintyBudget clearanceBudgetOf(const Facts& facts, JournalId j, Worst which) {
    return clearanceBudgetOf(facts, j, which, Scatters(facts));
}

UncertaintyBudget clearanceBudgetOf(const Facts& facts, JournalId j, Worst which, const Scatters& scatters) {
    const auto current = currentBores(facts, j);
    if (current.empty()) {
        return orNotKnown(refuse(""));
    }
    // The way in which it was measured last counts.
    const BoreMethod method = current.back().what.method;
    std::vector<Seen<BoreReading>> bores;
    std::ranges::copy_if(current, std::back_inserter(bores),
                         [&](const auto& reading) { return reading.what.method == method; });
    const auto journal = currentJournal(facts, j);
    const bool isLargest = which == Worst::largest;
    const auto boreThere = worstPlace(
        bores, [](const BoreReading& r) { return std::pair(r.station, std::int64_t{1}); }, boreOf, isLargest);
    const bool isHousing = method == BoreMethod::housing;
    MeasuredTerm bore = termOf(facts, isHousing ? Core::say("housing") : Core::say("bore"), boreThere, boreOf,
                               scatters.bores.at(method));
    if (method == BoreMethod::strip) {
        return orNotKnown(budgetFor(std::span(&bore, 1)));
    }
    const auto journalThere = worstPlace(
        journal, [](const JournalReading& r) { return std::pair(r.station, r.direction); }, diameterOf, !isLargest);
    MeasuredTerm journalTerm =
        termOf(facts, Core::say("journal"), journalThere, diameterOf, scatters.journals);
    shareSetting(instrumentsBehind(facts, boreThere, boreOf), instrumentsBehind(facts, journalThere, diameterOf), bore,
                 journalTerm);
    bore.temperatureError =
        temperatureError(boreThere.front().what.value.value, temperatureSpread(facts, boreThere, journalThere));
    return orNotKnown(
        clearanceBudget(bore, journalTerm, isHousing ? shellTerms(facts, j) : std::vector<MeasuredTerm>()));
}

UncertaintyBudget formBudgetOf(const Facts& facts, JournalId j, const Scatters& scatters) {
    const auto journal = currentJournal(facts, j);
    if (journal.empty()) {
        return orNotKnown(refuse(""));
    }
    std::map<std::pair<std::int64_t, std::int64_t>, std::vector<Seen<JournalReading>>> places;
    for (const auto& reading : journal) {
        places[{reading.what.station, reading.what.direction}].push_back(reading);
    }
    // Of all places the one that was read least.
    const auto fewest = std::ranges::min_element(places, {}, [](const auto& p) { return p.second.size(); });
    MeasuredTerm one = termOf(facts, Core::say("journal"), journal, diameterOf, scatters.journals);
    one.readings = fewest->second.size();
    one.people = peopleIn(fewest->second);
    if (peopleIn(journal) == 1) {
        one.scatter.people.reset(); // whatever that person reads too much drops out of the difference
    }
    if (instrumentsBehind(facts, journal, diameterOf).isOne()) {
        shareZero(one);
    }
    MeasuredTerm other = one;
    other.sensitivity = -1;
    return orNotKnown(budgetFor(std::array{one, other}));
}

UncertaintyBudget fitBudgetOf(const Facts& facts, const FitId& place) {
    auto readings = currentFits(facts, place);
    if (const auto at = facts.fits.find(place); readings.empty() && at != facts.fits.end()) {
        readings = at->second;
    }
    if (readings.empty()) {
        return orNotKnown(refuse(""));
    }
    const MeasuredTerm term =
        termOf(facts, Core::say("reading"), readings, fitOf, fitScatter(facts, place.first));
    return orNotKnown(budgetFor(std::span(&term, 1)));
}

UncertaintyBudget pickupTermBudgetOf(const Facts& facts, PickupTerm which,
                                     std::span<const Seen<PickupReading>> readings) {
    if (readings.empty()) {
        return orNotKnown(refuse(""));
    }
    const MeasuredTerm term =
        termOf(facts, shown(which), readings, pickupOf, pickupScatter(facts, readings.back().what.instrument));
    return orNotKnown(budgetFor(std::span(&term, 1)));
}

UncertaintyBudget pickupBudgetOf(const Facts& facts, const PickupReadings& terms) {
    if (std::ranges::any_of(allWords<PickupTerm>(), [&](const auto& entry) {
            const auto at = terms.find(entry.value);
            return at == terms.end() || at->second.empty();
        })) {
        return orNotKnown(refuse(""));
    }
    const auto term = [&](PickupTerm which) {
        const auto& readings = terms.at(which);
        MeasuredTerm one =
            termOf(facts, shown(which), readings, pickupOf, pickupScatter(facts, readings.back().what.instrument));
        if (instrumentsBehind(facts, readings, pickupOf).isOne()) {
            shareZero(one);
        }
        return one;
    };
    MeasuredTerm pan = term(PickupTerm::panDepth);
    pan.temperatureError =
        temperatureError(terms.at(PickupTerm::panDepth).front().what.value.value,
                         temperatureSpread(facts, terms.at(PickupTerm::panDepth), terms.at(PickupTerm::pickupDepth)));
    return orNotKnown(
        pickupBudget(pan, term(PickupTerm::gasket), term(PickupTerm::plate), term(PickupTerm::pickupDepth)));
}

} // namespace caprail
