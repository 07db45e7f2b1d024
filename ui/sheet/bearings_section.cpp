// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <charts/clearance_chart.h>
#include <ledger/band_names.h>

namespace caprail::sheet {

namespace {

/// The bore as it was read: one figure, or from the smallest to the largest; none by gauging strip.
QString boresText(const ClearanceResult& r, const Units& units) {
    if (!r.boreSmallest || r.boreSmallest == r.boreLargest) {
        return bare(r.boreSmallest, units);
    }
    return bare(r.boreSmallest, units) + QStringLiteral(" – ") + bare(r.boreLargest, units);
}

QString rangeText(const ClearanceResult& r, const Units& units) {
    if (!r.smallest || r.smallest == r.largest) {
        return bareFine(r.smallest, units);
    }
    return bareFine(r.smallest, units) + QStringLiteral(" – ") + bareFine(r.largest, units);
}

/// Taper or out-of-round with its own verdict.
SheetCell formCell(const Writing& w, const std::string& checkCode, Length value) {
    const QString figure = bareFine(value, w.units());
    return w.assessment().find(checkCode) == nullptr ? SheetCell(figure) : stateCell(w.stateOf(checkCode), figure);
}

SheetTable tableFor(const Writing& w, JournalKind kind, const std::vector<JournalId>& journals) {
    const Units& units = w.units();
    SheetTable table{{{Sheet::tr("Bearing")},
                      rightColumn(inUnit(Sheet::tr("Journal"), units)),
                      rightColumn(inUnit(Sheet::tr("Bore"), units)),
                      rightColumn(inUnit(Sheet::tr("Clearance"), units)),
                      rightColumn(Sheet::tr("Smallest – largest")),
                      rightColumn(Sheet::tr("± U")),
                      rightColumn(Sheet::tr("Taper")),
                      rightColumn(Sheet::tr("Out-of-round")),
                      {Sheet::tr("Shells, upper / lower")},
                      {Sheet::tr("Verdict")}},
                     {}};
    const std::string prefix = kind == JournalKind::main ? "main-clearance:" : "rod-clearance:";
    for (const JournalId j : journals) {
        const auto at = w.assessment().clearances.find(j);
        const ClearanceResult r = at == w.assessment().clearances.end() ? ClearanceResult{} : at->second;
        const bool hasShape = r.journalReadings > 1;
        const auto shells = w.facts().shellsFitted.find(j);
        table.rows.push_back(
            {strongCell(capitalised(text(describe(j)))), bare(r.journalMean, units), boresText(r, units),
             bareFine(r.clearance, units),
             strongCell(rangeText(r, units)),
             r.smallest ? bareU(r.uncertainty(), units) : none(), hasShape ? formCell(w, "taper:" + code(j), r.taper) : SheetCell(none()),
             hasShape ? formCell(w, "out-of-round:" + code(j), r.outOfRound) : SheetCell(none()),
             quietCell(shells == w.facts().shellsFitted.end()
                           ? none()
                           : text(shells->second.what.upper) + QStringLiteral(" / ") + text(shells->second.what.lower)),
             verdictCell(w, prefix + code(j))});
    }
    if (w.facts().shellsFitted.empty()) { // the column is for shops that mix shells
        table.columns.erase(table.columns.end() - 2);
        for (auto& row : table.rows) {
            row.erase(row.end() - 2);
        }
    }
    return table;
}

bool hasReadings(const Facts& facts, JournalKind kind) {
    const auto isOfKind = [&](const auto& one) { return one.first.kind == kind; };
    return std::ranges::any_of(facts.journals, isOfKind) || std::ranges::any_of(facts.bores, isOfKind);
}

/// Sentences of the bearings that are not good: why, and what to do.
void reasons(const Writing& w, CheckKind kind) {
    for (const Check& check : w.assessment().checks) {
        if (check.kind == kind && !check.isGood() && !check.sentence.empty()) {
            w.flow.remark(text(check.title + ": " + check.sentence + " " + check.remedy));
        }
    }
}

} // namespace

void bearingsSection(const Writing& w) {
    if (!w.facts().layout) {
        return;
    }
    struct Part {
        JournalKind kind;
        std::string_view band;
        QString title;
        CheckKind check;
        std::vector<JournalId> journals;
    };
    const Part parts[] = {{JournalKind::main, bands::mainClearance, Sheet::tr("Main bearings"),
                           CheckKind::mainClearance, w.facts().layout->mainJournals()},
                          {JournalKind::rod, bands::rodClearance, Sheet::tr("Rod bearings"), CheckKind::rodClearance,
                           w.facts().layout->rodJournals()}};
    const auto isShown = [&](const Part& part) {
        return w.facts().bandNamed(part.band) != nullptr || hasReadings(w.facts(), part.kind);
    };
    if (std::ranges::none_of(parts, isShown)) {
        return;
    }
    w.flow.heading(Sheet::tr("Bearings"));
    w.flow.introduction(ruleSentence(w.facts().rules));
    for (const Part& part : parts) {
        if (!isShown(part)) {
            continue;
        }
        w.flow.subheading(part.title);
        const BandFact* band = w.facts().bandNamed(part.band);
        w.flow.introduction(band == nullptr
                                ? Sheet::tr("Measured, but no limits are set: nothing was judged.")
                                : Sheet::tr("Limits of the vertical clearance: %1").arg(bandText(w, part.band)));
        w.flow.table(tableFor(w, part.kind, part.journals));
        reasons(w, part.check);
    }
    const auto& clearances = w.assessment().clearances;
    if (std::ranges::any_of(clearances, [](const auto& one) { return one.second.clearance.has_value(); })) {
        w.flow.subheading(Sheet::tr("Clearances against their limits"));
        w.flow.figure(
            mm(58), Sheet::tr("Chart of the clearances between their limits; the tables above hold its figures."),
            [&w = w.source, units = w.units(), look = w.flow.type().look](QPainter& painter, const QRectF& area) {
                drawClearanceChart(painter, area, w.facts, w.assessment, units, look);
            });
    }
}

void fitsSection(const Writing& w) {
    SheetTable table{{{Sheet::tr("What")},
                      rightColumn(Sheet::tr("Readings")),
                      {Sheet::tr("Mean ± U, and its limits")},
                      {Sheet::tr("Limits by")},
                      {Sheet::tr("Verdict")}},
                     {}};
    for (const Check& check : w.assessment().checks) {
        if (check.kind != CheckKind::fit) {
            continue;
        }
        const auto* place = std::get_if<FitId>(&check.subject);
        const BandFact* band = place == nullptr ? nullptr : w.facts().bandNamed(place->first);
        std::vector<Length> readings;
        if (place != nullptr) {
            if (const auto at = w.facts().fits.find(*place); at != w.facts().fits.end()) {
                for (const auto& reading : at->second) {
                    readings.push_back(reading.what.value.value);
                }
            }
        }
        table.rows.push_back({strongCell(text(check.title)), readingsText(readings, w.units()), text(check.sentence),
                              quietCell(band == nullptr ? none() : sourceText(w, "band:" + place->first, band->source)), verdictCell(w, check.code)});
    }
    if (!table.rows.empty()) {
        w.flow.heading(Sheet::tr("Other clearances"));
        if (const auto source = takeCommon(table, 3)) {
            w.flow.introduction(Sheet::tr("Limits by: %1").arg(*source));
        }
        w.flow.table(table);
    }
}

} // namespace caprail::sheet
