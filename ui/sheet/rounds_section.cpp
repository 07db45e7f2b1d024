// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <charts/verify_history_chart.h>

namespace caprail::sheet {

namespace {

SheetCell resultCell(const RoundFact& round, std::size_t asked, const Units& units) {
    if (round.voidedBy.entry != 0) {
        return stateCell(
            CheckState::stale,
            Sheet::tr("no longer counts: entry %1, %2").arg(round.voidedBy.entry).arg(text(describe(round.voidedBy.cause, units))));
    }
    if (round.anyMoved()) {
        return stateCell(CheckState::out, Sheet::tr("moved: must hold in a later round"));
    }
    return round.outcomes.size() < asked ? stateCell(CheckState::notDone, Sheet::tr("not complete"))
                                         : stateCell(CheckState::good, Sheet::tr("every fastener held"));
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
                      rightColumn(Sheet::tr("Pulled")),
                      rightColumn(Sheet::tr("Held")),
                      rightColumn(Sheet::tr("Moved")),
                      {Sheet::tr("Result")}},
                     {}};
    bool anyMoved = false;
    for (const RoundFact& round : rounds) {
        const auto moved = std::ranges::count_if(
            round.outcomes, [](const auto& one) { return one.second.what.outcome == Outcome::moved; });
        anyMoved = anyMoved || moved > 0;
        const auto pulled = static_cast<std::ptrdiff_t>(round.outcomes.size());
        table.rows.push_back({strongCell(QString::number(round.begun.what.round)), w.time(round.begun.time),
                              text(round.begun.person),
                              round.begun.what.instrument.empty() ? none() : text(round.begun.what.instrument),
                              Sheet::tr("%1 of %2").arg(pulled).arg(asked), QString::number(pulled - moved),
                              QString::number(moved), resultCell(round, asked, w.units())});
    }
    w.flow.heading(Sheet::tr("Verify rounds"));
    w.flow.introduction(
        Sheet::tr("With the stacks off, every main-cap and rod fastener is pulled to its specified value "
                  "again, without backing it off. Fastener by fastener under Torques."));
    w.flow.table(table);
    if (anyMoved) {
        w.flow.subheading(Sheet::tr("How far each one moved, round by round"));
        w.flow.figure(mm(48), [&facts = w.facts(), units = w.units(), look = w.flow.type().look](QPainter& painter,
                                                                                                 const QRectF& area) {
            drawVerifyHistoryChart(painter, area, facts, units, look);
        });
    }
}

} // namespace caprail::sheet
