// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <charts/spread_chart.h>

namespace caprail::sheet {

namespace {

QString currentText(const GapResult& gap, const Units& units) {
    std::vector<Length> readings;
    for (const auto& reading : gap.current) {
        readings.push_back(reading.what.value());
    }
    return readingsText(readings, units);
}

SheetTable gapsTable(const Writing& w) {
    const Units& units = w.units();
    SheetTable table{{{Sheet::tr("Position")},
                      {inUnit(Sheet::tr("Counted readings"), units)},
                      rightColumn(Sheet::tr("Mean")),
                      rightColumn(Sheet::tr("Range")),
                      rightColumn(Sheet::tr("Std. deviation")),
                      rightColumn(inUnit(Sheet::tr("Accepted gap"), units)),
                      rightColumn(Sheet::tr("± U")),
                      rightColumn(Sheet::tr("Outdated")),
                      {Sheet::tr("State")}},
                     {}};
    for (const Position p : w.facts().layout->positions()) {
        const auto at = w.assessment().gaps.find(p);
        const GapResult gap = at == w.assessment().gaps.end() ? GapResult{} : at->second;
        const bool hasSpread = gap.current.size() > 1;
        table.rows.push_back(
            {strongCell(text(code(p))), currentText(gap, units),
             gap.current.empty() ? none() : bare(Length(toNearest(gap.mean)), units),
             hasSpread ? bare(gap.range, units) : none(),
             hasSpread ? text(formatSpread(gap.standardDeviation, units)).section(QLatin1Char(' '), 0, 0) : none(),
             strongCell(bareFine(gap.accepted, units)), gap.current.empty() ? none() : bareU(gap.uncertainty, units),
             gap.outdated.empty() ? quietCell(none()) : SheetCell(QString::number(gap.outdated.size())),
             stateCell(w.stateOf("gap:" + code(p)))});
    }
    return table;
}

} // namespace

void surveySection(const Writing& w) {
    if (!w.facts().layout || w.facts().gaps.empty()) {
        return;
    }
    const SurveyResult& survey = w.assessment().survey;
    const Units& units = w.units();
    w.flow.heading(Sheet::tr("Gap survey"));
    w.flow.figure(mm(72), Sheet::tr("Chart of the gap readings at each position; the table below holds its figures."),
                  [&a = w.assessment(), units, look = w.flow.type().look](QPainter& painter, const QRectF& area) {
                      drawSpreadChart(painter, area, a, units, look);
                  });
    if (isSpreadChartThinned(w.assessment())) {
        w.flow.remark(Sheet::tr("The drawing shows the last readings of each position; the table counts them all."));
    }
    const auto length = [&](const std::optional<Length>& l) { return l ? text(format(*l, units)) : none(); };
    w.flow.values(
        {{Sheet::tr("Accepted"), Sheet::tr("%1 of %2 positions").arg(survey.accepted).arg(survey.positions)},
         {Sheet::tr("Smallest – largest gap"),
          survey.smallest ? bare(survey.smallest, units) + QStringLiteral(" – ") + length(survey.largest) : none()},
         {Sheet::tr("Spread of the survey"), length(survey.spread)},
         {Sheet::tr("Repeatability (pooled std. deviation)"),
          survey.pooledStandardDeviation ? text(formatSpread(*survey.pooledStandardDeviation, units)) : none()}},
        4);
    w.flow.table(gapsTable(w));
    w.flow.remark(Sheet::tr("The accepted gap is the median of the counted readings (at least %1, within %2). Outdated "
                            "readings were made before a fastener of the cap moved or a part was changed; they no "
                            "longer count. Large differences between positions are normal.")
                      .arg(w.facts().rules.minimumPasses)
                      .arg(text(format(w.facts().rules.repeatLimit, units))));
}

} // namespace caprail::sheet
