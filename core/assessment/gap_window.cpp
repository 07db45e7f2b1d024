// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/gap_window.h>
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

} // namespace

std::optional<Band> windowAfterMovement(const Facts& facts, Position p) {
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
    GapWindow window{*survey.accepted, *survey.accepted};
    for (const Move& move : movesSince(facts, p.cap, before.back().entry)) {
        if (move.fastener.side != p.side) {
            continue;
        }
        const auto* group = facts.groupOf(move.fastener);
        const auto thread = group == nullptr ? Result<Thread>(refuse("")) : parseThread(group->what.thread);
        const auto next =
            thread ? gapAfterMovement(window, *thread, move.angle, {}) : Result<Worked<GapWindow>>(refuse(""));
        if (!next) {
            return {};
        }
        window = next->value;
    }
    const Uncertainty uncertainty(gapBudgetFrom(facts, before, gapScatter(facts)), coverageOf(facts));
    const Length wider = uncertainty.isKnown()
                             ? Length(static_cast<std::int64_t>(std::ceil(uncertainty.known()->expanded)))
                             : facts.rules.repeatLimit;
    const auto band = Band::between(window.smallest - wider, window.largest + wider);
    return band ? std::optional(*band) : std::nullopt;
}

} // namespace caprail
