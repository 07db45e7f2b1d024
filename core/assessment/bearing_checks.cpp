// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/bearing_readings.h>
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/gap_window.h>
#include <assessment/rests_on.h>
#include <assessment/tightening_order.h>
#include <base/say.h>
#include <ledger/band_names.h>

namespace caprail {

std::vector<DiameterReading> diametersOf(std::span<const Seen<JournalReading>> journal) {
    std::vector<DiameterReading> list;
    for (const auto& reading : journal) {
        list.push_back({reading.what.station, reading.what.direction, reading.what.diameter.value});
    }
    return list;
}

namespace {

template <class T>
const std::vector<Seen<T>>& readingsOf(const std::map<JournalId, std::vector<Seen<T>>>& all, JournalId j) {
    static const std::vector<Seen<T>> none;
    const auto at = all.find(j);
    return at == all.end() ? none : at->second;
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

/// What the readings come to, as far as there are any. Gives what is still to be read of the journal.
std::string noteJournal(ClearanceResult& result, std::span<const Seen<JournalReading>> journal) {
    const auto shape = journalShape(diametersOf(journal));
    if (!shape) {
        return {};
    }
    result.journalMean = shape->mean;
    result.journalSmallest = shape->smallest;
    result.journalLargest = shape->largest;
    result.taper = shape->taper;
    result.outOfRound = shape->outOfRound;
    return shape->missing;
}

void noteClearance(ClearanceResult& result, const BearingClearance& clearance) {
    result.clearance = clearance.mean;
    result.smallest = clearance.smallest;
    result.largest = clearance.largest;
    std::vector<Length> bores;
    for (const StationReading& bore : clearance.bores) {
        result.bores.emplace_back(bore.station, bore.value);
        bores.push_back(bore.value);
    }
    if (!bores.empty()) {
        const Summary summary = summarise(bores);
        result.boreMean = Length(toNearest(summary.mean));
        result.boreSmallest = summary.smallest;
        result.boreLargest = summary.largest;
    }
}

/// A station at which the journal was read and the bore was not, as what is still to do; empty: none. A place that was not
/// read may be the worst.
std::string boreIsMissing(std::span<const Seen<JournalReading>> journal, const BearingClearance& clearance) {
    for (const auto& reading : journal) {
        const bool isRead = std::ranges::any_of(
            clearance.bores, [&](const StationReading& bore) { return bore.station == reading.what.station; });
        if (!isRead) {
            return Core::say("Read the bore at station %1 too, as the journal was.", reading.what.station);
        }
    }
    return {};
}

/// Both worst places against the band.
void judgeClearance(const Assessing& a, Check& check, JournalId j, ClearanceResult& result, const Band& band) {
    const bool isOnePlace = *result.smallest == *result.largest;
    const Judged smallest = a.judge(check, isOnePlace ? "" : Core::say("smallest clearance"), *result.smallest,
                                    clearanceBudgetOf(a.facts, j, Worst::smallest, a.scatters), band);
    result.uncertaintySmallest = result.uncertaintyLargest = smallest.uncertainty;
    check.sentence = Core::say("Clearance %1.", a.against(smallest));
    if (!isOnePlace) {
        const Judged largest = a.judge(check, Core::say("largest clearance"), *result.largest,
                                       clearanceBudgetOf(a.facts, j, Worst::largest, a.scatters), band);
        result.uncertaintyLargest = largest.uncertainty;
        check.sentence = Core::say("Clearance from %1 %2 to %3 %4, %5.", formatFine(smallest.value, a.units),
                                   describe(smallest.uncertainty, a.units), formatFine(largest.value, a.units),
                                   describe(largest.uncertainty, a.units), describeLimits(band, a.units));
    }
    const bool isWide = *result.largest > band.hi();
    const bool isTight = *result.smallest < band.lo();
    a.settle(check,
             isWide && isTight ? Core::say("One place is too wide and one too tight: look at journal and housing.")
             : isWide          ? Core::say("Too wide: fit a thicker shell, or look at journal and housing.")
                               : Core::say("Too tight: fit a thinner shell, or look at journal and housing."),
             Core::say("Read the worst place again: more readings of one place, or a finer gauge, make the uncertainty "
                       "smaller. They do not excuse a bad place."));
}

/// Nothing to judge yet: what to measure, or why what was measured fell.
void sayWhatIsMissing(const Assessing& a, Check& check, JournalId j, std::span<const Seen<JournalReading>> journal,
                      std::span<const Seen<BoreReading>> bores, bool isStripped) {
    std::optional<FastenerId>& waitsFor = a.out.clearances.at(j).boreWaitsFor;
    const auto& allJournal = readingsOf(a.facts.journals, j);
    const auto& allBores = readingsOf(a.facts.bores, j);
    check.sentence =
        journal.empty() ? Core::say("The journal is not measured.") : Core::say("The bore is not measured.");
    const bool isJournalMissing = journal.empty() && !isStripped;
    check.remedy = isJournalMissing ? Core::say("Measure the journal at two stations or more, in two directions.")
                                    : Core::say("Measure the bore with the shells in and the cap at full torque.");
    waitsFor = isJournalMissing ? std::nullopt : looseAt(a.facts, j);
    if (waitsFor) {
        check.remedy =
            Core::say("Bring its cap to torque, beginning with %1, then measure the bore with the shells in.",
                      describe(*waitsFor));
    }
    if (journal.size() < allJournal.size() || bores.size() < allBores.size()) {
        check.state = CheckState::stale;
        check.staleBecause =
            bores.empty() && !allBores.empty() ? boreInvalidatedBy(a.facts, j) : a.facts.changeOf(Topic::crank);
        check.sentence = describe(check.staleBecause, a.units);
    }
}

void applyClearanceStaleness(const Assessing& a, Check& check) {
    const std::string numbers = check.sentence;
    applyStaleness(check, a.facts, a.units);
    if (check.state != CheckState::stale) {
        return;
    }
    check.sentence += " " + Core::say("Now: %1", numbers);
    check.remedy = isMovedOnly(a.facts, check)
                       ? Core::say("The fastener did not have its full clamp when the bore was read: take the cap off "
                                   "and measure again, or a person accepts the clearance again with a reason.")
                   : canBeJudgedAgain(a.facts, check) ? Core::say("Look at the clearance, and accept it by the new "
                                                                  "numbers with a reason.")
                                                      : Core::say("Measure it again.");
    if (const auto* moved = std::get_if<MovedInRound>(&check.staleBecause.cause); moved != nullptr && moved->angle) {
        if (const auto drop = likelyDrop(a.facts, moved->fastener, *moved->angle)) {
            check.remedy += " " + Core::say("Its cap likely went down by no more than %1.", formatFine(*drop, a.units));
        }
    }
}

void clearanceCheck(const Assessing& a, JournalId j, const BandFact& band) {
    const bool isMain = j.kind == JournalKind::main;
    Check& check = a.add(isMain ? CheckKind::mainClearance : CheckKind::rodClearance, j, code(j),
                         Core::say("Bearing clearance at %1", describe(j)), {Station::bearings, code(j)});
    const auto journal = currentJournal(a.facts, j);
    const auto bores = currentBores(a.facts, j);
    ClearanceResult& result = a.out.clearances[j];
    result.journalReadings = journal.size();
    result.boreReadings = bores.size();
    for (const auto& reading : journal) {
        rest(check, reading.entry);
    }
    for (const auto& reading : bores) {
        rest(check, reading.entry);
    }
    std::string incomplete = noteJournal(result, journal);
    const bool isStripped = !bores.empty() && bores.back().what.method == BoreMethod::strip;
    if (bores.empty() || (journal.empty() && !isStripped)) {
        sayWhatIsMissing(a, check, j, journal, bores, isStripped);
        return;
    }
    result.method = bores.back().what.method;
    const auto clearance = clearanceOf(a.facts, j, journal, bores);
    if (!clearance) {
        check.sentence = Core::say("The clearance cannot be worked out yet.");
        check.remedy = clearance.error().sentence;
        return;
    }
    noteClearance(result, *clearance);
    judgeClearance(a, check, j, result, band.band);
    if (incomplete.empty() && !isStripped) {
        incomplete = boreIsMissing(journal, *clearance);
    }
    // Two stations and two directions are asked for before a clearance counts; what is out already is out.
    if (!incomplete.empty() && !isStripped && check.state != CheckState::out) {
        check.state = CheckState::notDone;
        check.remedy = incomplete;
    }
    applyClearanceStaleness(a, check);
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
}

} // namespace caprail
