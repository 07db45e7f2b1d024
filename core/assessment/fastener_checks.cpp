// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <assessment/work_order.h>
#include <base/say.h>

namespace caprail {

namespace {

void groupCheck(const Assessing& a, FastenerKind kind, const std::vector<FastenerId>& members) {
    const std::string name(word(kind));
    Check& check = a.add(CheckKind::fastenersTightened, kind, name,
                         kind == FastenerKind::mainCap ? Core::say("Main-cap fasteners at torque")
                                                       : Core::say("Rod fasteners at torque"),
                         {Station::fasteners, {}});
    std::size_t done = 0;
    std::vector<FastenerId> wrong;
    std::optional<FastenerId> firstMissing;
    const FastenerId* withoutGroup = nullptr;
    for (const FastenerId& f : members) {
        const auto* group = a.facts.groupOf(f);
        const auto at = a.facts.fasteners.find(f);
        if (group == nullptr) {
            withoutGroup = &f;
            break;
        }
        if (at == a.facts.fasteners.end() || !at->second.tightened || at->second.isLoose) {
            firstMissing = firstMissing.value_or(f);
            continue;
        }
        rest(check, at->second.tightened->entry);
        ++done;
        if (!isTightAsSpecified(a.facts, f)) {
            wrong.push_back(f);
        }
    }
    if (withoutGroup != nullptr) {
        check.sentence = Core::say("Nothing is specified for %1.", describe(*withoutGroup));
        check.remedy = Core::say("Set the group “%1” at the fasteners station.", name);
        return;
    }
    check.sentence = Core::say("%1 of %2 tightened.", done, members.size());
    if (!wrong.empty()) {
        check.state = CheckState::out;
        check.sentence = wrong.size() > 1
                             ? Core::say("%1 was not brought to its specified value, nor were %2 more.",
                                         describe(wrong.front()), wrong.size() - 1)
                             : Core::say("%1 was not brought to its specified value.", describe(wrong.front()));
        check.remedy = Core::say("Tighten it to what is specified, and enter it.");
        check.destination.subject = code(wrong.front());
    } else if (firstMissing) {
        check.remedy = Core::say("Tighten %1 and the rest of the group.", describe(*firstMissing));
        check.destination.subject = code(*firstMissing);
    } else {
        check.state = CheckState::good;
    }
    // The oldest counts here: a group is as fresh as its stalest fastener.
    if (!check.restsOn.empty()) {
        check.madeAt = *std::ranges::min_element(check.restsOn);
        applyStaleness(check, a.facts, a.units);
        if (check.state == CheckState::stale) {
            check.remedy = Core::say("Tighten the group to the value that is specified now.");
        }
    }
}

std::string progress(const RoundFact& round, std::size_t total) {
    return Core::say("%1 of %2 pulled", round.outcomes.size(), total);
}

/// The newest entry of the trial fit: a round must be newer.
std::int64_t lastTrialFit(const Facts& facts) {
    std::int64_t last = 0;
    for (const auto& [item, result] : facts.trialFits) {
        last = std::max(last, result.entry);
    }
    return last;
}

} // namespace

void fastenerChecks(const Assessing& a) {
    if (a.facts.layout) {
        groupCheck(a, FastenerKind::mainCap, a.facts.layout->mainFasteners());
        groupCheck(a, FastenerKind::rod, a.facts.layout->rodFasteners());
    }
}

void verifyRoundCheck(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    Check& check = a.add(CheckKind::verifyRound, {}, {}, Core::say("Torques verified"), {Station::fasteners, "round"});
    const auto fasteners = a.facts.layout->verifiedFasteners();
    if (a.facts.rounds.empty()) {
        check.sentence = Core::say("No verify round was made.");
        check.remedy = Core::say("Take the stacks off and pull every main-cap and rod fastener at full torque.");
        return;
    }
    const RoundFact& round = a.facts.rounds.back();
    const std::string name = Core::say("Round %1", round.begun.what.round);
    rest(check, round.begun.entry);
    for (const auto& [fastener, outcome] : round.outcomes) {
        rest(check, outcome.entry);
    }
    const auto isMissing = [&](FastenerId f) { return !round.outcomes.contains(f); };
    const auto missing = std::ranges::find_if(fasteners, isMissing);
    const std::int64_t trialFit = lastTrialFit(a.facts);
    if (round.voidedBy.entry != 0) {
        check.state = CheckState::stale;
        check.staleBecause = round.voidedBy;
        check.sentence = Core::say("Entry %1: %2; round %3 no longer counts.", round.voidedBy.entry,
                                   describe(round.voidedBy.cause, a.units), round.begun.what.round);
        check.remedy = Core::say("With the stacks off, make a new round over every fastener.");
    } else if (round.anyMoved()) {
        const auto moved =
            std::ranges::find_if(round.outcomes, [](const auto& o) { return o.second.what.outcome == Outcome::moved; });
        check.state = CheckState::out;
        const auto& angle = moved->second.what.angle;
        check.sentence =
            angle ? Core::say("%1: %2 moved %3 (%4).", name, describe(moved->first), format(angle->value, a.units),
                              progress(round, fasteners.size()))
                  : Core::say("%1: %2 moved (%3).", name, describe(moved->first), progress(round, fasteners.size()));
        check.remedy =
            missing != fasteners.end()
                ? Core::say("Finish the round; every fastener must then hold in a later one.")
                : Core::say("Measure what the movement spoiled, then make a round in which every fastener holds.");
    } else if (missing != fasteners.end()) {
        check.sentence = name + ": " + progress(round, fasteners.size()) + ".";
        check.remedy = Core::say("Go on with %1.", describe(*missing));
        check.destination.subject = code(*missing);
    } else if (trialFit > round.begun.entry) {
        check.state = CheckState::stale;
        check.staleBecause = {trialFit, GirdleTriedAfter{}};
        check.sentence = Core::say("%1 is older than the last trial fit (entry %2).", name, trialFit);
        check.remedy = Core::say("Take the stacks off and make a new round: nothing can be checked after closing.");
    } else {
        check.state = CheckState::good;
        check.sentence = Core::say("%1: every one of %2 fasteners held.", name, fasteners.size());
    }
}

} // namespace caprail
