// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <clearances/trial_fit.h>
#include <base/say.h>

namespace caprail {

namespace {

std::string titleOf(TrialId id) {
    return isPerThrow(id.first) ? Core::say("Trial fit: %1, throw %2", shown(id.first), id.second)
                                : Core::say("Trial fit: %1", shown(id.first));
}

TrialFitObservation observed(const TrialFitResult& result) {
    TrialFitObservation observation{result.item, static_cast<int>(result.throwNumber), result.result, {}};
    if (result.clearance) {
        observation.clearance = result.clearance->value;
    }
    return observation;
}

/// The least clearance by the record's rules; the usual one where they name none.
Length leastOf(const RulesSet& rules, TrialItem item) {
    switch (item) {
    case TrialItem::dipstick:
        return rules.dipstickMinimum.value_or(defaultDipstickClearance());
    case TrialItem::pickupTube:
        return rules.pickupTubeMinimum.value_or(defaultPickupTubeClearance());
    default:
        return rules.counterweightMinimum;
    }
}

void itemCheck(const Assessing& a, TrialId id) {
    const std::string checkCode =
        std::string(word(id.first)) + (isPerThrow(id.first) ? ":" + std::to_string(id.second) : std::string());
    const std::string subject = isPerThrow(id.first) ? "throw-" + std::to_string(id.second) : checkCode;
    Check& check = a.add(CheckKind::trialFit, id, checkCode, titleOf(id), {Station::trialFit, subject});
    const auto at = a.facts.trialFits.find(id);
    if (at == a.facts.trialFits.end()) {
        check.remedy = Core::say("Lay the girdle on its stacks, bring its nuts to torque, and look.");
        return;
    }
    const TrialFitResult& result = at->second.what;
    rest(check, at->second.entry);
    const auto judgement = judgeTrialFit(observed(result), leastOf(a.facts.rules, result.item), a.units);
    if (!judgement) {
        check.sentence = judgement.error().sentence;
        check.remedy = Core::say("Strike that entry and answer again.");
        return;
    }
    check.state = judgement->isGood ? CheckState::good : CheckState::out;
    check.sentence = judgement->sentence + (result.note.empty() ? "" : " " + result.note + ".");
    check.remedy = judgement->remedy;
    if (check.isGood() && a.facts.triedLoose.contains(at->second.entry)) {
        check.state = CheckState::notProven;
        check.sentence += " " + Core::say("The girdle's nuts were not at torque.");
        check.remedy = Core::say("Bring the girdle's nuts to torque, and look again.");
    }
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Trial-fit the girdle again.");
    }
}

} // namespace

void trialFitChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    Check& way = a.add(CheckKind::girdleWay, {}, {}, Core::say("Girdle orientation"), {Station::trialFit, "way"});
    if (a.facts.girdleWay) {
        rest(way, a.facts.girdleWay->entry);
        const auto& what = a.facts.girdleWay->what;
        const bool cutoutAtPickup = what.cutoutSide == a.facts.layout->description().pickupSide;
        way.state = cutoutAtPickup ? CheckState::good : CheckState::out;
        way.sentence = Core::say("%1 up, cutout towards the %2 on the %3.", shown(what.faceUp),
                                 shown(what.cutoutTowards), shown(what.cutoutSide));
        way.remedy = cutoutAtPickup ? "" : Core::say("The cutout belongs on the pickup side: turn the girdle round.");
        applyStaleness(way, a.facts, a.units);
        way.remedy = way.state == CheckState::stale ? Core::say("Record the girdle's orientation again.") : way.remedy;
    } else {
        way.remedy = Core::say("Say which face is up and where the cutout is.");
    }
    for (const auto& [item, name] : allWords<TrialItem>()) {
        if (!isPerThrow(item)) {
            itemCheck(a, {item, 0});
            continue;
        }
        for (int number = 1; number <= a.facts.layout->throws(); ++number) {
            itemCheck(a, {item, number});
        }
    }
}

void findingsCheck(const Assessing& a) {
    Check& check = a.add(CheckKind::findings, {}, {}, Core::say("Findings settled"), {Station::closing, "findings"});
    check.state = CheckState::good;
    for (const auto& [name, finding] : a.facts.findings) {
        rest(check, finding.settled ? finding.settled->entry : finding.opened.entry);
        if (!finding.settled) {
            a.out.openFindings.push_back(name);
        }
    }
    if (a.out.openFindings.empty()) {
        check.sentence = a.facts.findings.empty() ? Core::say("None was opened.") : Core::say("All are settled.");
        return;
    }
    const auto& first = a.facts.findings.find(a.out.openFindings.front())->second.opened.what;
    check.state = CheckState::out;
    const std::string name = first.place.empty() ? first.finding : Core::say("%1 at %2", first.finding, first.place);
    const std::size_t others = a.out.openFindings.size() - 1;
    check.sentence = others == 0 ? Core::say("%1: %2.", name, first.text)
                                 : Core::count(others, Core::mark("%2: %3. Another one is open."),
                                               Core::mark("%2: %3. %1 others are open."), name, first.text);
    check.remedy = Core::say("Decide it, and enter what was done.");
}

} // namespace caprail
