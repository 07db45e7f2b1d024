// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <assessment/standing.h>
#include <bearings/clearance.h>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

template <class T>
const std::vector<Seen<T>>& readingsOf(const std::map<JournalId, std::vector<Seen<T>>>& all, JournalId j) {
    static const std::vector<Seen<T>> none;
    const auto at = all.find(j);
    return at == all.end() ? none : at->second;
}

std::vector<DiameterReading> diametersOf(std::span<const Seen<JournalReading>> journal) {
    std::vector<DiameterReading> list;
    for (const auto& reading : journal) {
        list.push_back({reading.what.station, reading.what.direction, reading.what.diameter.value});
    }
    return list;
}

/// The readings of the way in which the bearing was measured last: bore with shells, bare housing, or strip.
std::vector<StationReading> latestWay(std::span<const Seen<BoreReading>> bores) {
    std::vector<StationReading> list;
    for (const auto& reading : bores) {
        if (reading.what.method == bores.back().what.method) {
            list.push_back({reading.what.station, reading.what.value.value});
        }
    }
    return list;
}

/// The clearance of one bearing, or what must be measured first.
Result<BearingClearance> clearanceOf(const Facts& facts, JournalId j, std::span<const Seen<JournalReading>> journal,
                                     std::span<const Seen<BoreReading>> bores) {
    const auto readings = latestWay(bores);
    const BoreMethod method = bores.back().what.method;
    if (method == BoreMethod::strip) {
        return clearanceFromStrip(readings);
    }
    const auto shape = journalShape(diametersOf(journal));
    if (!shape) {
        return tl::unexpected(shape.error());
    }
    if (method == BoreMethod::boreWithShells) {
        return clearanceFromBore(readings, *shape);
    }
    const auto fitted = facts.shellsFitted.find(j);
    const auto thickness = [&](const std::string& shell) { return shellThickness(facts, shell); };
    const auto upper = fitted == facts.shellsFitted.end() ? std::nullopt : thickness(fitted->second.what.upper);
    const auto lower = fitted == facts.shellsFitted.end() ? std::nullopt : thickness(fitted->second.what.lower);
    if (!upper || !lower) {
        return refuse(Core::say("Say which shells lie in %1, with their thickness.", describe(j)));
    }
    return clearanceFromHousing(readings, *upper, *lower, *shape);
}

void clearanceCheck(const Assessing& a, JournalId j, const BandFact& band) {
    const bool isMain = j.kind == JournalKind::main;
    Check& check = a.add(isMain ? CheckKind::mainClearance : CheckKind::rodClearance, j, code(j),
                         Core::say("Bearing clearance at %1", describe(j)), {Station::bearings, code(j)});
    const auto& allJournal = readingsOf(a.facts.journals, j);
    const auto& allBores = readingsOf(a.facts.bores, j);
    const Change journalFelled = a.facts.changeOf(Topic::crank);
    const Change boreFelled = boreFelledBy(a.facts, j);
    const auto journal = standingJournal(a.facts, j);
    const auto bores = standingBores(a.facts, j);

    ClearanceResult& result = a.out.clearances[j];
    result.journalReadings = journal.size();
    result.boreReadings = bores.size();
    for (const auto& reading : journal) {
        rest(check, reading.entry);
    }
    for (const auto& reading : bores) {
        rest(check, reading.entry);
    }
    std::string incomplete; // two stations and two directions are asked for before a clearance counts
    if (const auto shape = journalShape(diametersOf(journal))) {
        incomplete = shape->missing;
        result.journalMean = shape->mean;
        result.taper = shape->taper;
        result.outOfRound = shape->outOfRound;
    }
    const bool hasFallen = journal.size() < allJournal.size() || bores.size() < allBores.size();
    const bool isStripped = !bores.empty() && bores.back().what.method == BoreMethod::strip;
    if (bores.empty() || (journal.empty() && !isStripped)) {
        check.sentence =
            journal.empty() ? Core::say("The journal is not measured.") : Core::say("The bore is not measured.");
        check.remedy = journal.empty() && !isStripped
                           ? Core::say("Measure the journal at two stations or more, in two directions.")
                           : Core::say("Measure the bore with the shells in and the cap at full torque.");
        if (hasFallen) {
            const Change& cause = bores.empty() && !allBores.empty() ? boreFelled : journalFelled;
            check.state = CheckState::stale;
            check.staleBecause = cause;
            check.sentence = Core::say("Entry %1: %2.", cause.entry, cause.what);
        }
        return;
    }
    const auto clearance = clearanceOf(a.facts, j, journal, bores);
    if (!clearance) {
        check.sentence = Core::say("The clearance cannot be worked out yet.");
        check.remedy = clearance.error().sentence;
        return;
    }
    result.clearance = clearance->mean;
    result.smallest = clearance->smallest;
    result.largest = clearance->largest;
    if (result.journalMean) {
        result.boreMean = *result.journalMean + *result.clearance;
    }
    result.expandedUncertainty = expandedBy(a.facts, clearanceBudgetOf(a.facts, j));
    check.state = a.judged(*result.clearance, result.expandedUncertainty, band);
    check.sentence = Core::say("Clearance %1.", a.against(*result.clearance, result.expandedUncertainty, band));
    if (check.state == CheckState::out) {
        check.remedy = *result.clearance > band.band.hi()
                           ? Core::say("Too wide: fit a thicker shell, or look at journal and housing.")
                           : Core::say("Too tight: fit a thinner shell, or look at journal and housing.");
    } else if (check.state == CheckState::tooCloseToCall) {
        check.remedy = Core::say("Measure again: more readings, or a finer gauge, make the uncertainty smaller.");
    }
    if (!incomplete.empty() && !isStripped) {
        check.state = CheckState::notDone;
        check.remedy = incomplete;
    }
    const std::string numbers = check.sentence;
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.sentence += " " + Core::say("Now: %1", numbers);
        check.remedy = canBeJudgedAgain(a.facts, check) ? Core::say("Look at the clearance, and judge it again.")
                                                        : Core::say("Measure it again.");
    }
}

void fitCheck(const Assessing& a, const FitPlace& place, const BandFact& band, const std::string& title) {
    const std::string subject = place.first + ":" + std::to_string(place.second);
    Check& check = a.add(CheckKind::fit, place, subject, title, {Station::bearings, subject});
    const auto at = a.facts.fits.find(place);
    check.remedy = Core::say("Measure it.");
    if (at == a.facts.fits.end()) {
        return;
    }
    const auto standing = standingFits(a.facts, place);
    const auto shown = standing.empty() ? std::span<const Seen<FitReading>>(at->second) : standing;
    for (const auto& reading : shown) {
        rest(check, reading.entry);
    }
    const auto summary = summarise(lengthsOf(shown, [](const auto& r) { return r.value.value; }));
    const Length mean(toNearest(summary.mean));
    const double uncertainty = expandedBy(a.facts, fitBudgetOf(a.facts, place));
    check.state = a.judged(mean, uncertainty, band);
    check.sentence = a.against(mean, uncertainty, band) + ".";
    check.remedy = check.isGood() ? ""
                   : check.state == CheckState::out
                       ? Core::say("Bring it into its band, and measure again.")
                       : Core::say("Measure it again: more readings make the uncertainty smaller.");
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.remedy = canBeJudgedAgain(a.facts, check) ? Core::say("Look at it, and judge it again.")
                                                        : Core::say("Measure it again.");
    }
}

void fitChecks(const Assessing& a) {
    for (const auto& [name, band] : a.facts.bands) {
        if (!bands::isFit(name)) {
            continue;
        }
        if (name == bands::rodSideClearance) {
            for (int number = 1; number <= a.facts.layout->throws(); ++number) {
                fitCheck(a, {name, number}, band, Core::say("Rod side clearance, throw %1", number));
            }
            continue;
        }
        // A fit of the shop's own has as many places as were read, and one at least.
        fitCheck(a, {name, 1}, band,
                 name == bands::crankEndPlay ? Core::say("Crank end play") : Core::say("Fit: %1", name));
        for (const auto& [place, readings] : a.facts.fits) {
            if (place.first == name && place.second != 1) {
                fitCheck(a, place, band, Core::say("Fit: %1, place %2", name, place.second));
            }
        }
    }
}

} // namespace

void bearingChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    if (const BandFact* band = a.band(bands::mainClearance)) {
        for (const JournalId j : a.facts.layout->mainJournals()) {
            clearanceCheck(a, j, *band);
        }
    }
    if (const BandFact* band = a.band(bands::rodClearance)) {
        for (const JournalId j : a.facts.layout->rodJournals()) {
            clearanceCheck(a, j, *band);
        }
    }
    fitChecks(a);
}

} // namespace caprail
