// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/budget_of.h>
#include <assessment/fastener_groups.h>
#include <assessment/figures.h>
#include <assessment/gap_window.h>
#include <base/say.h>
#include <cmath>
#include <fasteners/movement.h>

namespace caprail {

namespace {

struct Move {
    std::int64_t entry = 0;
    FastenerId fastener;
    Angle angle;
};

/// Movements of the cap's fasteners after an entry.
std::vector<Move> movesSince(const Facts& facts, int cap, std::int64_t entry) {
    std::vector<Move> moves;
    for (const RoundFact& round : facts.rounds) {
        for (const auto& [fastener, outcome] : round.outcomes) {
            if (fastener.kind == FastenerKind::mainCap && fastener.number == cap && outcome.entry > entry &&
                outcome.what.outcome == Outcome::moved && outcome.what.angle) {
                moves.push_back({outcome.entry, fastener, outcome.what.angle->value});
            }
        }
    }
    return moves;
}

/// What a nut's turn did, by the joint's own stiffnesses where its group gives its dimensions.
Result<NutTravel> travelOf(const FastenerGroupSet& group, const Thread& thread, Angle turned) {
    const auto joint = jointStiffness(group);
    return joint ? nutTravel(thread, turned, joint->fastener, joint->clamped) : nutTravel(thread, turned);
}

/// Takes one movement into account; false where its thread is not known.
bool addMovement(GapAfterMovement& after, GapWindow& window, const FastenerGroupSet& group, Angle turned) {
    const auto thread = parseThread(group.thread);
    if (!thread) {
        return false;
    }
    const auto next = gapAfterMovement(window, *thread, turned, {});
    const auto travel = travelOf(group, *thread, turned);
    if (!next || !travel) {
        return false;
    }
    window = next->value;
    after.bound += travel->travel;
    after.likelyLeast += travel->likelyLeast;
    after.likelyMost += travel->likelyMost;
    after.isJointKnown = after.isJointKnown && travel->clampGained;
    after.clampGained = after.isJointKnown
                            ? std::optional(after.clampGained.value_or(Force()) + *travel->clampGained)
                            : std::nullopt;
    return true;
}

} // namespace

std::optional<GapAfterMovement> gapAfterMovementAt(const Facts& facts, Position p) {
    const auto all = facts.gaps.find(p);
    const auto era = facts.sortedGaps.find(p);
    const Change invalidated = facts.gapInvalidatedBy(p);
    if (all == facts.gaps.end() || era == facts.sortedGaps.end() ||
        !std::holds_alternative<MovedInRound>(invalidated.cause)) {
        return {};
    }
    // The readings that stood until the first of these movements: those of the last era, and of no earlier one.
    std::vector<Seen<GapReading>> before;
    for (const auto& reading : all->second) {
        if (reading.entry > era->second.invalidatedBy) {
            before.push_back(reading);
        }
    }
    if (before.empty() || before.back().entry > invalidated.entry) {
        return {};
    }
    const GapSurvey survey = acceptGap(lengthsOf(before, [](const GapReading& r) { return r.value(); }),
                                       facts.rules.repeatLimit, facts.rules.minimumPasses, {});
    if (!survey.accepted) {
        return {};
    }
    const Uncertainty uncertainty(gapBudgetFrom(facts, before, gapScatter(facts)), coverageOf(facts));
    GapAfterMovement after{Band::between(*survey.accepted, *survey.accepted).value(), *survey.accepted, uncertainty, {}, {},
                           {}, true, {}};
    GapWindow window{*survey.accepted, *survey.accepted};
    for (const Move& move : movesSince(facts, p.cap, before.back().entry)) {
        if (move.fastener.side != p.side) {
            continue;
        }
        const auto* group = facts.groupOf(move.fastener);
        if (group == nullptr || !addMovement(after, window, group->what, move.angle)) {
            return {};
        }
    }
    const Length wider = uncertainty.isKnown()
                             ? Length(static_cast<std::int64_t>(std::ceil(uncertainty.known()->expanded)))
                             : facts.rules.repeatLimit;
    const auto band = Band::between(window.smallest - wider, window.largest + wider);
    if (!band) {
        return {};
    }
    after.window = *band;
    return after;
}

std::optional<Band> windowAfterMovement(const Facts& facts, Position p) {
    const auto after = gapAfterMovementAt(facts, p);
    return after ? std::optional(after->window) : std::nullopt;
}

std::string describeLikely(const GapAfterMovement& after, const Units& units) {
    if (after.bound == Length()) {
        return Core::say("The nut of this side did not turn.");
    }
    const std::string grew = after.likelyLeast == after.likelyMost
                                 ? formatFine(after.likelyMost, units)
                                 : Core::say("%1 to %2", formatFine(after.likelyLeast, units), formatFine(after.likelyMost, units));
    std::string text = after.isJointKnown
                           ? Core::say("It can have grown by %1 at most, likely by %2, by the stiffness of this joint.",
                                       formatFine(after.bound, units), grew)
                           : Core::say("It can have grown by %1 at most, likely by %2, as is usual for such joints.",
                                       formatFine(after.bound, units), grew);
    if (after.clampGained) {
        text += " " + Core::say("The fastener clamps by %1 more.", format(*after.clampGained, units));
    }
    const auto expanded = after.uncertaintyBefore.expanded();
    if (!expanded) {
        return text;
    }
    const bool isHidden = static_cast<double>(after.likelyMost.value()) <= *expanded;
    return text + " " +
           (isHidden ? Core::say("The gap is known to %1 only: a new reading cannot tell whether it grew.",
                                 describe(after.uncertaintyBefore, units))
                     : Core::say("The gap is known to %1: a new reading can tell.", describe(after.uncertaintyBefore, units)));
}

std::optional<Length> likelyDrop(const Facts& facts, FastenerId f, Angle turned) {
    const auto thread = threadOf(facts, f);
    if (!thread) {
        return {};
    }
    const auto travel = travelOf(facts.groupOf(f)->what, *thread, turned);
    return travel ? std::optional(travel->likelyMost) : std::nullopt;
}

} // namespace caprail
