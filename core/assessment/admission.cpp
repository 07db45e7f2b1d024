// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/plausibility.h>
#include <assessment/rests_on.h>
#include <assessment/work_order.h>
#include <units/say.h>

namespace caprail {

namespace {

Result<void> mayStrike(const Ledger& ledger, const Struck& strike) {
    if (strike.entry < 1 || strike.entry > ledger.size()) {
        return refuse(Core::say("There is no entry %1 to strike: this record has %2.", strike.entry, ledger.size()));
    }
    if (std::holds_alternative<Struck>(ledger.at(strike.entry).body)) {
        return refuse(Core::say("Entry %1 is itself a strike: make the struck entry again instead.", strike.entry));
    }
    if (ledger.isStruck(strike.entry)) {
        return refuse(
            Core::say("Entry %1 was struck already by entry %2.", strike.entry, ledger.struckBy(strike.entry)));
    }
    // Striking is as if the entry had never been made; every later live entry must still make sense without it.
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        if (entry.sequence == strike.entry || ledger.isStruck(entry.sequence) ||
            std::holds_alternative<Struck>(entry.body)) {
            continue;
        }
        if (entry.sequence > strike.entry) {
            if (const auto ok = admit(facts, entry.person, entry.body); !ok) {
                return refuse(Core::say("Entry %1 needs entry %2: strike entry %3 first. (%4)", entry.sequence,
                                        strike.entry, entry.sequence, ok.error().sentence));
            }
        }
        apply(facts, entry);
    }
    return {};
}

std::string whyLocked(const Assessment& assessment, const Gate& gate) {
    const Check& first = assessment.checks[gate.holding.front()];
    std::string sentence = Core::say("%1 is %2.", first.title, shown(first.state));
    if (gate.holding.size() > 1) {
        sentence +=
            " " + Core::count(gate.holding.size() - 1, Core::mark("%1 more holds it."), Core::mark("%1 more hold it."));
    }
    return sentence + (first.remedy.empty() ? "" : " " + first.remedy);
}

} // namespace

Result<void> mayAppend(const Ledger& ledger, const Facts& facts, const Assessment& assessment, std::string_view person,
                       const Body& body, const Units& units) {
    const bool afterClosing = std::holds_alternative<NoteAdded>(body) ||
                              std::holds_alternative<AttachmentAdded>(body) || std::holds_alternative<BuildBegun>(body);
    if (const auto* strike = std::get_if<Struck>(&body)) {
        if (facts.isClosed() && strike->entry != facts.signedOff->entry) {
            return refuse(Core::say("This build is signed off: strike the sign-off (entry %1) before any other entry.",
                                    facts.signedOff->entry));
        }
        if (auto ok = admit(facts, person, body); !ok) {
            return ok;
        }
        return mayStrike(ledger, *strike);
    }
    if (facts.isClosed() && !afterClosing) {
        return refuse(Core::say("This build is signed off and closed: begin a new build of this engine to go on."));
    }
    // A locked gate is said first: what else may be wrong with the entry matters only behind it.
    if (std::holds_alternative<TrialFitResult>(body) && !assessment.gate(GateKind::trialFit).isOpen) {
        return refuse(
            Core::say("The trial fit is locked: %1", whyLocked(assessment, assessment.gate(GateKind::trialFit))));
    }
    const bool isClosing = std::holds_alternative<ClosingStepDone>(body) || std::holds_alternative<SignedOff>(body);
    if (isClosing && !assessment.gate(GateKind::closing).isOpen) {
        return refuse(Core::say("Closing is locked: %1", whyLocked(assessment, assessment.gate(GateKind::closing))));
    }
    if (auto ok = admit(facts, person, body); !ok) {
        return ok;
    }
    if (auto order = isInOrder(facts, body); !order) {
        return order;
    }
    if (auto sentence = askedBack(facts, body, units)) {
        return refuse(std::move(*sentence));
    }
    if (std::holds_alternative<RoundBegun>(body) && !facts.stacksOn().empty()) {
        return refuse(Core::say("The torques are verified with the stacks off: take off the one at %1 first.",
                                describe(facts.stacksOn().front())));
    }
    if (const auto* again = std::get_if<JudgedAgain>(&body)) {
        const Check* check = assessment.find(again->check);
        if (check == nullptr || check->state != CheckState::stale) {
            return refuse(
                Core::say("“%1” is no stale check of this record: only a stale one is judged again.", again->check));
        }
        if (!canBeJudgedAgain(facts, *check)) {
            return refuse(Core::say("%1 cannot be judged again from the numbers: %2. Measure it again.", check->title,
                                    describe(check->staleBecause.cause, units)));
        }
    }
    return {};
}

} // namespace caprail
