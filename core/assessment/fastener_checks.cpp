// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <assessment/tightening_order.h>
#include <base/say.h>

namespace caprail {

namespace {

/// How far the fasteners of a kind are, in the order of tightening.
struct GroupProgress {
    std::size_t done = 0;
    std::optional<FastenerId> unspecified, missing;
    std::vector<FastenerId> wrong;                            ///< not at the value that is specified
    std::optional<std::pair<FastenerId, std::string>> fault;  ///< what is wrong with a wrench
    Change changed;                                           ///< what is asked of one that was tightened before
};

GroupProgress progressOf(const Assessing& a, Check& check, const std::vector<FastenerId>& order) {
    GroupProgress now;
    std::int64_t oldest = 0;
    for (const FastenerId f : order) {
        const auto* group = a.facts.groupOf(f);
        const auto at = a.facts.fasteners.find(f);
        if (group == nullptr || !isSpecified(group->what)) {
            now.unspecified = f;
            return now;
        }
        if (at == a.facts.fasteners.end() || !at->second.tightened || at->second.isLoose) {
            now.missing = now.missing.value_or(f);
            continue;
        }
        const auto& tightened = *at->second.tightened;
        rest(check, tightened.entry);
        oldest = oldest == 0 ? tightened.entry : std::min(oldest, tightened.entry);
        ++now.done;
        if (Change change = a.facts.changeOf(Topic::groupValue, f); change.entry > tightened.entry) {
            now.changed = change.entry > now.changed.entry ? std::move(change) : now.changed;
        }
        if (!isTightAsSpecified(a.facts, f)) {
            now.wrong.push_back(f);
        } else if (tightened.what.torque && !now.fault) {
            if (auto fault = wrenchFault(a.facts, tightened.what.instrument, tightened.entry, tightened.what.torque->value,
                                         a.units)) {
                now.fault = {f, std::move(*fault)};
            }
        }
    }
    // The oldest counts here: a group is as fresh as its stalest fastener.
    check.madeAt = oldest;
    return now;
}

void groupCheck(const Assessing& a, FastenerKind kind) {
    const std::string name(word(kind));
    Check& check = a.add(CheckKind::fastenersTightened, kind, name,
                         kind == FastenerKind::mainCap ? Core::say("Main-cap fasteners at torque")
                                                       : Core::say("Rod fasteners at torque"),
                         {Station::fasteners, {}});
    const auto order = tighteningOrder(a.facts, kind);
    const GroupProgress now = progressOf(a, check, order);
    if (now.unspecified) {
        check.sentence = Core::say("Nothing is specified for %1.", describe(*now.unspecified));
        check.remedy = Core::say("Set the group “%1”: its maker says torque, lubricant and, where it is so, stretch.", name);
        check.destination.subject = "groups";
        return;
    }
    check.sentence = Core::say("%1 of %2 tightened.", now.done, order.size());
    if (!now.wrong.empty()) {
        check.state = CheckState::out;
        check.sentence =
            now.wrong.size() > 1
                ? Core::count(now.wrong.size() - 1, Core::mark("%2 and another one are not at their specified value."),
                              Core::mark("%2 and %1 others are not at their specified value."),
                              describe(now.wrong.front()))
                : Core::say("%1 is not at its specified value.", describe(now.wrong.front()));
        check.remedy = Core::say("Tighten it to what is specified, and enter it.");
        check.destination.subject = code(now.wrong.front());
    } else if (now.missing) {
        check.remedy = Core::say("Tighten %1 and the rest of the group.", describe(*now.missing));
        check.destination.subject = code(*now.missing);
    } else if (now.fault) {
        check.state = CheckState::notProven;
        check.sentence += " " + now.fault->second;
        check.remedy = Core::say("Enter what is missing, or tighten %1 with a wrench that fits.",
                                 describe(now.fault->first));
        check.destination.subject = code(now.fault->first);
    } else {
        check.state = CheckState::good;
    }
    if (now.changed.entry != 0) {
        check.state = CheckState::stale;
        check.staleBecause = now.changed;
        check.sentence = describe(now.changed, a.units);
        check.remedy = Core::say("Tighten the group to the value that is specified now.");
    }
}

/// The first outcome that counts for nothing, in the order of the round, and why.
std::optional<std::pair<FastenerId, std::string>> firstNotCounted(const Assessing& a, const RoundFact& round,
                                                                  const std::vector<FastenerId>& order) {
    for (const FastenerId f : order) {
        if (const auto outcome = round.outcomes.find(f); outcome != round.outcomes.end()) {
            if (auto why = whyNotCounted(a.facts, outcome->second, a.units)) {
                return std::pair(f, std::move(*why));
            }
        }
    }
    return {};
}

std::string progress(std::size_t left, std::size_t total) {
    return Core::say("%1 of %2 verified", total - left, total);
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
        groupCheck(a, FastenerKind::mainCap);
        groupCheck(a, FastenerKind::rod);
    }
}

void verifyRoundCheck(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    Check& check = a.add(CheckKind::verifyRound, {}, {}, Core::say("Torques verified"), {Station::fasteners, "round"});
    const auto fasteners = verifyOrder(a.facts);
    if (a.facts.rounds.empty()) {
        check.sentence = Core::say("No verify round has been made.");
        check.remedy = Core::say("Take the stacks off and verify every main-cap and rod fastener: by its torque, its length "
                                 "or its witness mark, as its group says.");
        return;
    }
    const RoundFact& round = a.facts.rounds.back();
    const std::string name = Core::say("Round %1", round.begun.what.round);
    rest(check, round.begun.entry);
    for (const auto& [fastener, outcome] : round.outcomes) {
        rest(check, outcome.entry);
    }
    const auto left = stillToPull(a.facts, round);
    const auto notCounted = firstNotCounted(a, round, fasteners);
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
                              progress(left.size(), fasteners.size()))
                  : Core::say("%1: %2 moved (%3).", name, describe(moved->first), progress(left.size(), fasteners.size()));
        check.remedy =
            !left.empty()
                ? Core::say("Finish the round; every fastener must then hold in a later one.")
                : Core::say("Measure again what the movement made stale, then make a round in which every fastener "
                            "holds.");
        check.destination.subject = left.empty() ? check.destination.subject : code(left.front());
    } else if (notCounted) {
        check.state = CheckState::notProven;
        check.sentence = name + ": " + notCounted->second + " " + Core::say("It counts for nothing.");
        check.remedy = Core::say("Verify %1 once more as it is specified.", describe(notCounted->first));
        check.destination.subject = code(notCounted->first);
    } else if (!left.empty()) {
        check.sentence = name + ": " + progress(left.size(), fasteners.size()) + ".";
        check.remedy = Core::say("Go on with %1.", describe(left.front()));
        check.destination.subject = code(left.front());
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
