// SPDX-License-Identifier: GPL-3.0-or-later
/// Taper and out-of-round of the journals: what more readings cannot mend.
#include <assessment/bearing_readings.h>
#include <assessment/budget_of.h>
#include <assessment/current_readings.h>
#include <assessment/rests_on.h>
#include <base/say.h>
#include <ledger/band_names.h>

namespace caprail {

namespace {

/// The limit that the shop set, else the usual one.
Band limitOf(const Assessing& a, std::string_view name) {
    const BandFact* band = a.band(name);
    return atMost(band == nullptr ? usualFormLimit : band->band.hi());
}

struct Form {
    CheckKind kind;
    std::string title;
    Length value;
    Band limit;
};

/// Gives the uncertainty that it was judged with.
Uncertainty formCheck(const Assessing& a, JournalId j, const Form& form,
                      std::span<const Seen<JournalReading>> journal) {
    Check& check = a.add(form.kind, j, code(j), form.title, {Station::bearings, code(j)});
    check.remedy = Core::say("Measure the journal at two stations or more, in two directions.");
    for (const auto& reading : journal) {
        rest(check, reading.entry);
    }
    const auto shape = journalShape(diametersOf(journal));
    if (!shape) {
        const auto all = a.facts.journals.find(j);
        if (all != a.facts.journals.end() && !all->second.empty()) {
            check.state = CheckState::stale;
            check.staleBecause = a.facts.changeOf(Topic::crank);
            check.sentence = describe(check.staleBecause, a.units);
        }
        return {};
    }
    Uncertainty uncertainty =
        a.judge(check, "", form.value, formBudgetOf(a.facts, j, a.scatters), form.limit).uncertainty;
    check.sentence = a.against(check.judged.front()) + ".";
    a.settle(check, Core::say("No reading mends a shape: have the journal ground, or another crank."),
             Core::say("Read the places that differ most again: more readings of one place make the uncertainty "
                       "smaller."));
    if (!shape->isComplete() && check.state != CheckState::out) {
        check.state = CheckState::notDone;
        check.remedy = shape->missing;
    }
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Look at the shape, and accept it by the new numbers with a reason.");
    }
    return uncertainty;
}

void formChecksOf(const Assessing& a, JournalId j) {
    const auto journal = currentJournal(a.facts, j);
    ClearanceResult& result = a.out.clearances[j];
    result.uncertaintyTaper =
        formCheck(a, j,
                  {CheckKind::taper, Core::say("Taper of journal %1", describe(j)), result.taper,
                   limitOf(a, bands::journalTaper)},
                  journal);
    result.uncertaintyOutOfRound =
        formCheck(a, j,
                  {CheckKind::outOfRound, Core::say("Out-of-round of journal %1", describe(j)), result.outOfRound,
                   limitOf(a, bands::journalOutOfRound)},
                  journal);
}

/// By gauging strip alone no journal is measured, and nothing is known of its shape.
bool isByStripOnly(const Assessing& a, JournalId j) {
    const auto bores = currentBores(a.facts, j);
    return !bores.empty() && bores.back().what.method == BoreMethod::strip && !a.facts.journals.contains(j);
}

} // namespace

void formChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    const auto each = [&](const std::vector<JournalId>& journals, std::string_view band) {
        for (const JournalId j : journals) {
            if (a.band(band) != nullptr && !isByStripOnly(a, j)) {
                formChecksOf(a, j);
            }
        }
    };
    each(a.facts.layout->mainJournals(), bands::mainClearance);
    each(a.facts.layout->rodJournals(), bands::rodClearance);
}

} // namespace caprail
