// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/rests_on.h>

namespace caprail {

namespace {

Result<void> mayStrike(const Ledger& ledger, const Struck& strike) {
    if (strike.entry < 1 || strike.entry > ledger.size()) {
        return refuse("There is no entry " + std::to_string(strike.entry) + " to strike: this record has " +
                      std::to_string(ledger.size()) + ".");
    }
    if (std::holds_alternative<Struck>(ledger.at(strike.entry).body)) {
        return refuse("Entry " + std::to_string(strike.entry) +
                      " is itself a strike: make the struck entry again instead.");
    }
    if (ledger.isStruck(strike.entry)) {
        return refuse("Entry " + std::to_string(strike.entry) + " was struck already by entry " +
                      std::to_string(ledger.struckBy(strike.entry)) + ".");
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
                return refuse("Entry " + std::to_string(entry.sequence) + " needs entry " +
                              std::to_string(strike.entry) + ": strike entry " + std::to_string(entry.sequence) +
                              " first. (" + ok.error().sentence + ")");
            }
        }
        apply(facts, entry);
    }
    return {};
}

std::string whyLocked(const Assessment& assessment, const Gate& gate) {
    const Check& first = assessment.checks[gate.holding.front()];
    std::string sentence = first.title + " is " + std::string(word(first.state)) + ".";
    if (gate.holding.size() > 1) {
        sentence += " " + std::to_string(gate.holding.size() - 1) + " more hold it.";
    }
    return sentence + (first.remedy.empty() ? "" : " " + first.remedy);
}

} // namespace

Result<void> mayAppend(const Ledger& ledger, const Facts& facts, const Assessment& assessment, std::string_view person,
                       const Body& body) {
    const bool afterClosing = std::holds_alternative<NoteAdded>(body) ||
                              std::holds_alternative<AttachmentAdded>(body) || std::holds_alternative<BuildBegun>(body);
    if (const auto* strike = std::get_if<Struck>(&body)) {
        if (facts.isClosed() && strike->entry != facts.signedOff->entry) {
            return refuse("This build is signed off: strike the sign-off (entry " +
                          std::to_string(facts.signedOff->entry) + ") before any other entry.");
        }
        if (auto ok = admit(facts, person, body); !ok) {
            return ok;
        }
        return mayStrike(ledger, *strike);
    }
    if (facts.isClosed() && !afterClosing) {
        return refuse("This build is signed off and closed: begin a new build of this engine to go on.");
    }
    // A locked gate is said first: what else may be wrong with the entry matters only behind it.
    if (std::holds_alternative<TrialFitResult>(body) && !assessment.gate(GateKind::trialFit).isOpen) {
        return refuse("The trial fit is locked: " + whyLocked(assessment, assessment.gate(GateKind::trialFit)));
    }
    const bool isClosing = std::holds_alternative<ClosingStepDone>(body) || std::holds_alternative<SignedOff>(body);
    if (isClosing && !assessment.gate(GateKind::closing).isOpen) {
        return refuse("Closing is locked: " + whyLocked(assessment, assessment.gate(GateKind::closing)));
    }
    if (auto ok = admit(facts, person, body); !ok) {
        return ok;
    }
    if (std::holds_alternative<RoundBegun>(body) && !facts.stacksOn().empty()) {
        return refuse("The torques are verified with the stacks off: take off the one at " +
                      describe(facts.stacksOn().front()) + " first.");
    }
    if (const auto* again = std::get_if<JudgedAgain>(&body)) {
        const Check* check = assessment.find(again->check);
        if (check == nullptr || check->state != CheckState::stale) {
            return refuse("“" + again->check + "” is no stale check of this record: only a stale one is judged again.");
        }
        if (!canBeJudgedAgain(facts, *check)) {
            return refuse(check->title + " cannot be judged again from the numbers: " + check->staleBecause.what +
                          ". Measure it again.");
        }
    }
    return {};
}

} // namespace caprail
