// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/record_summary.h>

#include <algorithm>
#include <shop/builds.h>
#include <shop/template_note.h>
#include <work/parts.h>
#include <base/plain_text.h>
#include <assessment/specified.h>
#include <base/say.h>

namespace caprail {

namespace {

void roundOf(const Facts& facts, RecordSummary& s) {
    if (facts.rounds.empty()) {
        return;
    }
    const RoundFact& last = facts.rounds.back();
    s.round = last.begun.what.round;
    s.pulled = std::ranges::count_if(last.outcomes, [&](const auto& o) { return !whyNotCounted(facts, o.second); });
    s.moved =
        std::ranges::count_if(last.outcomes, [](const auto& o) { return o.second.what.outcome == Outcome::moved; });
    s.roundResult = last.voidedBy.entry != 0  ? RoundResult::voided
                    : s.moved > 0             ? RoundResult::moved
                    : isComplete(facts, last) ? RoundResult::held
                                              : RoundResult::begun;
}

JobState stateOf(const Facts& facts, const Assessment& assessment) {
    if (facts.isClosed()) {
        return JobState::signedOff;
    }
    if (assessment.gate(GateKind::closing).isOpen) {
        return JobState::closingOpen;
    }
    return assessment.gate(GateKind::trialFit).isOpen ? JobState::trialFitOpen : JobState::locked;
}

std::string layoutWords(const Facts& facts) {
    if (!facts.layout) {
        return {};
    }
    const LayoutDescription& d = facts.layout->description();
    return Core::say("%1 mains of %2, %3 rods, %4 throws", d.caps, d.fastenersPerCap, d.rods, d.throws);
}

/// Everything that a person may remember of a record. Struck texts are found too: they stay readable.
std::string wordsOf(const Ledger& ledger, const RecordSummary& s) {
    std::string words = s.customer + "\n" + s.engine + "\n" + s.serial + "\n" + s.templateName + "\n" + s.layout +
                        "\n" + s.people + "\n" + std::string(word(s.state)) + "\n" + format(dateOf(s.lastEntry));
    const auto add = [&](std::string_view text) {
        if (!text.empty()) {
            words += '\n';
            words += text;
        }
    };
    if (s.round > 0) {
        add(Core::say("round %1 %2", s.round, shown(s.roundResult)));
    }
    for (const Entry& entry : ledger.entries()) {
        if (const auto* note = entry.body.as<NoteAdded>()) {
            add(note->text);
        } else if (const auto* finding = entry.body.as<FindingOpened>()) {
            add(finding->finding);
            add(finding->text);
        } else if (const auto* settled = entry.body.as<FindingSettled>()) {
            add(settled->done);
        } else if (const auto* photo = entry.body.as<AttachmentAdded>()) {
            add(photo->caption);
        } else if (const auto* engine = entry.body.as<EngineDescribed>()) {
            add(engine->shop);
            add(engine->note);
        } else if (const auto* instrument = entry.body.as<InstrumentAdded>()) {
            add(instrument->instrument);
            add(instrument->serial);
        } else if (const auto* part = entry.body.as<PartChanged>()) {
            add(part->what);
        } else if (const auto* fitted = entry.body.as<PartEntered>()) {
            add(describe(*fitted));
            add(fitted->machined.value_or(""));
            add(fitted->machinedBy.value_or(""));
            add(fitted->note.value_or(""));
        } else if (const auto* done = entry.body.as<ClosingStepDone>()) {
            add(done->product.value_or(""));
            add(done->lot ? Core::say("lot %1", *done->lot) : std::string());
        } else if (const auto* build = entry.body.as<BuildBegun>()) {
            add(build->why);
        }
    }
    return words;
}

std::string peopleOf(const Ledger& ledger) {
    std::vector<std::string> names;
    for (const Entry& entry : ledger.entries()) {
        if (std::ranges::find(names, entry.person) == names.end()) {
            names.push_back(entry.person);
        }
    }
    std::string people;
    for (const auto& name : names) {
        people += (people.empty() ? "" : "\n") + visibly(name);
    }
    return people;
}

} // namespace

RecordDigest digest(const Ledger& ledger) {
    RecordDigest d;
    RecordSummary& s = d.summary;
    const std::vector<Build> builds = buildsOf(ledger);
    const Facts none;
    const Facts& facts = builds.empty() ? none : builds.back().facts; // the last build's are the record's
    const Assessment assessment = assess(facts);
    if (facts.engine) {
        s.customer = visibly(facts.engine->what.customer);
        s.engine = visibly(facts.engine->what.engine);
        s.serial = visibly(facts.engine->what.serial);
    }
    s.entries = ledger.size();
    if (!ledger.empty()) {
        s.lastEntry = ledger.entries().back().time;
        s.who = visibly(ledger.entries().back().person);
    }
    s.state = stateOf(facts, assessment);
    s.build = facts.build;
    roundOf(facts, s);
    s.out = std::ranges::count(assessment.checks, CheckState::out, &Check::state);
    s.stale = std::ranges::count(assessment.checks, CheckState::stale, &Check::state);
    s.layout = layoutWords(facts);
    s.people = peopleOf(ledger);
    if (const auto note = templateNoteOf(facts)) {
        s.templateName = visibly(note->name);
    }
    d.figures = figuresOf(ledger, builds, assessment);
    for (const InstrumentFigure& instrument : d.figures.instruments) {
        if (instrument.due && (!s.due || *instrument.due < *s.due)) {
            s.due = instrument.due;
        }
    }
    d.words = wordsOf(ledger, s);
    return d;
}

} // namespace caprail
