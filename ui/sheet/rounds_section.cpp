// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <assessment/specified.h>
#include <charts/verify_history_chart.h>

namespace caprail::sheet {

namespace {

SheetCell resultCell(const Facts& facts, const RoundFact& round, const Units& units) {
    if (round.voidedBy.entry != 0) {
        return stateCell(
            CheckState::stale,
            Sheet::tr("no longer counts: entry %1, %2").arg(round.voidedBy.entry).arg(text(describe(round.voidedBy.cause, units))));
    }
    if (round.anyMoved()) {
        return stateCell(CheckState::out, Sheet::tr("moved: must hold in a later round"));
    }
    for (const auto& [fastener, outcome] : round.outcomes) {
        if (const auto fault = whyNotCounted(facts, outcome, units)) {
            return stateCell(CheckState::notProven, Sheet::tr("does not count: %1").arg(text(*fault)));
        }
    }
    return isComplete(facts, round) ? stateCell(CheckState::good, Sheet::tr("every fastener held"))
                                    : stateCell(CheckState::notDone, Sheet::tr("not complete"));
}

} // namespace

void roundsSection(const Writing& w) {
    const auto& rounds = w.facts().rounds;
    if (rounds.empty() || !w.facts().layout) {
        return;
    }
    const std::size_t asked = w.facts().layout->verifiedFasteners().size();
    SheetTable table{{{Sheet::tr("Round")},
                      {Sheet::tr("Begun")},
                      {Sheet::tr("By")},
                      {Sheet::tr("Wrench")},
                      rightColumn(Sheet::tr("Verified")),
                      rightColumn(Sheet::tr("Held")),
                      rightColumn(Sheet::tr("Moved")),
                      {Sheet::tr("Result")}},
                     {}};
    std::ptrdiff_t allMoved = 0;
    for (const RoundFact& round : rounds) {
        const auto moved = std::ranges::count_if(
            round.outcomes, [](const auto& one) { return one.second.what.outcome == Outcome::moved; });
        allMoved += moved;
        const auto verified = std::ranges::count_if(
            round.outcomes, [&](const auto& one) { return !whyNotCounted(w.facts(), one.second); });
        const auto held = std::ranges::count_if(round.outcomes, [&](const auto& one) {
            return one.second.what.outcome == Outcome::held && !whyNotCounted(w.facts(), one.second);
        });
        table.rows.push_back({strongCell(QString::number(round.begun.what.round)), w.time(round.begun.time),
                              text(round.begun.person), orNone(text(round.begun.what.instrument)),
                              Sheet::tr("%1 of %2").arg(verified).arg(asked), QString::number(held),
                              QString::number(moved), resultCell(w.facts(), round, w.units())});
    }
    w.flow.heading(Sheet::tr("Verify rounds"));
    w.flow.introduction(
        Sheet::tr("With the stacks off, every main-cap and rod fastener is pulled to its specified torque again, without "
                  "backing it off; or, where it must not be pulled, its stretch is read or its witness mark looked at. "
                  "Fastener by fastener under Torques."));
    w.flow.table(table);
    if (allMoved > 2) { // fewer are said in a sentence each
        w.flow.subheading(Sheet::tr("How far each one moved, round by round"));
        w.flow.figure(
            mm(48),
            Sheet::tr(
                "Chart of how far each fastener moved, round by round; the table under Torques holds its figures."),
            [&facts = w.facts(), units = w.units(), look = w.flow.type().look](QPainter& painter, const QRectF& area) {
                drawVerifyHistoryChart(painter, area, facts, units, look);
            });
        return;
    }
    for (const RoundFact& round : rounds) {
        for (const auto& [fastener, outcome] : round.outcomes) {
            if (outcome.what.outcome == Outcome::moved) {
                w.flow.paragraph(text(describe(FoundMoved{fastener, outcome.what.angle ? std::optional(outcome.what.angle->value)
                                                                                       : std::nullopt,
                                                          round.begun.what.round},
                                               w.units())));
            }
        }
    }
}

} // namespace caprail::sheet
