// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/plausibility.h>
#include <assessment/rests_on.h>
#include <assessment/second_person.h>
#include <assessment/signatures.h>
#include <assessment/work_order.h>
#include <base/say.h>

namespace caprail {

namespace {

Result<void> mayStrike(const Ledger& ledger, const Struck& strike, std::optional<Facts>* afterwards) {
    if (auto may = mayBeStruck(ledger, strike.entry, ledger.size()); !may) {
        return may;
    }
    if (ledger.isStruck(strike.entry)) {
        return refuse(
            Core::say("Entry %1 was struck already by entry %2.", strike.entry, ledger.struckBy(strike.entry)));
    }
    // An entry that older rules allowed may make no sense with the struck one either: then it does not hold the strike.
    Facts asItStands;
    std::size_t folded = 0;
    const auto isWrongAlready = [&](const Entry& entry) {
        for (; folded + 1 < static_cast<std::size_t>(entry.sequence); ++folded) {
            const Entry& before = ledger.entries()[folded];
            if (!ledger.isStruck(before.sequence)) {
                apply(asItStands, before);
            }
        }
        return !admit(asItStands, entry.person, entry.body);
    };
    // Striking is as if the entry had never been made; every later live entry must still make sense without it.
    Facts facts;
    bool hasClosing = false; // what `fold` judges by the gates, and this does not
    for (const Entry& entry : ledger.entries()) {
        if (entry.sequence == strike.entry || ledger.isStruck(entry.sequence) || entry.body.is<Struck>()) {
            continue;
        }
        if (entry.sequence > strike.entry) {
            if (const auto ok = admit(facts, entry.person, entry.body); !ok && !isWrongAlready(entry)) {
                return refuse(Core::say("Entry %1 needs entry %2: strike entry %3 first. (%4)", entry.sequence,
                                        strike.entry, entry.sequence, ok.error().sentence));
            }
        }
        apply(facts, entry);
        hasClosing = hasClosing || isClosing(entry.body);
    }
    if (afterwards != nullptr && !hasClosing) {
        *afterwards = std::move(facts);
    }
    return {};
}

std::string whyLocked(const Assessment& assessment, const Gate& gate) {
    if (gate.holding.empty()) {
        return Core::say("There is no engine layout yet, and no band to judge by: set them first.");
    }
    const Check& first = assessment.checks[gate.holding.front()];
    std::string sentence = Core::say("%1: %2.", first.title, shown(first.state));
    if (gate.holding.size() > 1) {
        sentence +=
            " " + Core::count(gate.holding.size() - 1, Core::mark("%1 more holds it."), Core::mark("%1 more hold it."));
    }
    return sentence + (first.remedy.empty() ? "" : " " + first.remedy);
}

} // namespace

bool isClosing(const Body& body) {
    return isAnyOf<ClosingStepDone, SignedOff>(body);
}

bool isAllowedAfterClosing(const Body& body) {
    return isAnyOf<NoteAdded, AttachmentAdded, BuildBegun, SealSigned>(body);
}

Result<void> mayBeStruck(const Ledger& ledger, std::int64_t target, std::int64_t size) {
    if (target < 1 || target > size) {
        return refuse(Core::say("There is no entry %1 to strike: this record has %2.", target, size));
    }
    const Body& body = ledger.at(target).body;
    if (body.is<Struck>()) {
        return refuse(Core::say("Entry %1 is itself a strike: make the struck entry again instead.", target));
    }
    if (body.is<Salvaged>()) {
        return refuse(Core::say("Entry %1 says from what this record was salvaged: that stays.", target));
    }
    if (body.is<BroughtIn>()) {
        return refuse(Core::say("Entry %1 says which entries came in without seals: that stays.", target));
    }
    if (body.is<SealSigned>()) {
        return refuse(Core::say("Entry %1 is a signature: it stays. What is added now is signed by a new one.", target));
    }
    return {};
}

Result<void> mayAppend(const Ledger& ledger, const Facts& facts, const Assessment& assessment, std::string_view person,
                       const Body& body, const Units& units, std::optional<Facts>* afterwards) {
    if (body.is<Salvaged>()) {
        return refuse(Core::say("Such an entry is made by salvaging a damaged record, and in no other way."));
    }
    if (body.is<BroughtIn>()) {
        return refuse(Core::say("Such an entry is made by importing a text without seals, and in no other way."));
    }
    if (const auto* strike = body.as<Struck>()) {
        if (facts.isClosed() && strike->entry != facts.signedOff->entry) {
            return refuse(Core::say("This build is signed off: strike the sign-off (entry %1) before any other entry.",
                                    facts.signedOff->entry));
        }
        if (auto ok = admit(facts, person, body); !ok) {
            return ok;
        }
        return mayStrike(ledger, *strike, afterwards);
    }
    if (facts.isClosed() && !isAllowedAfterClosing(body)) {
        return refuse(Core::say("This build is signed off and closed: begin a new build of this engine to go on."));
    }
    // A locked gate is said first: what else may be wrong with the entry matters only behind it.
    if (body.is<TrialFitResult>() && !assessment.gate(GateKind::trialFit).isOpen) {
        return refuse(
            Core::say("The trial fit is locked: %1", whyLocked(assessment, assessment.gate(GateKind::trialFit))));
    }
    if (isClosing(body) && !assessment.gate(GateKind::closing).isOpen) {
        return refuse(Core::say("Closing is locked: %1", whyLocked(assessment, assessment.gate(GateKind::closing))));
    }
    if (auto ok = admit(facts, person, body); !ok) {
        return ok;
    }
    if (const auto* signature = body.as<SealSigned>()) {
        return signsEntryOf(ledger, *signature);
    }
    if (auto order = isInOrder(facts, body); !order) {
        return order;
    }
    if (auto second = maySecondPerson(facts, person, body); !second) {
        return second;
    }
    if (auto sentence = askedBack(facts, body, units)) {
        return refuse(std::move(*sentence));
    }
    if (body.is<RoundBegun>() && !facts.stacksOn().empty()) {
        return refuse(Core::say("The torques are verified with the stacks off: take off the one at %1 first.",
                                describe(facts.stacksOn().front())));
    }
    if (const auto* again = body.as<JudgedAgain>()) {
        const Check* check = assessment.find(again->check);
        if (check == nullptr || check->state != CheckState::stale) {
            return refuse(Core::say("“%1” is not a stale check of this record: only a stale one is accepted again.",
                                    again->check));
        }
        if (!canBeJudgedAgain(facts, *check)) {
            return refuse(Core::say("The numbers that %1 was judged by no longer say enough: %2. Measure it again.", check->title,
                                    describe(check->staleBecause.cause, units)));
        }
    }
    return {};
}

} // namespace caprail
