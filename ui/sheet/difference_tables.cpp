// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/difference_tables.h>

#include <sheet/sheet_text.h>

namespace caprail {

using sheet::bare;
using sheet::bareSigned;
using sheet::bareSpread;
using sheet::capitalised;
using sheet::inUnit;
using sheet::none;
using sheet::orNone;
using sheet::Sheet;
using sheet::text;

namespace {

/// Adds a row that ends in a word on its change.
void addRow(DifferenceTable& table, QStringList cells, const ThenNow& value) {
    if (value.isChange()) {
        table.changes.insert(table.rows.size());
    }
    cells << (!value.difference() ? none()
              : !value.isJudged() ? Sheet::tr("U not known")
              : value.isChange()  ? Sheet::tr("changed")
                                  : Sheet::tr("within ± U"));
    table.rows.push_back(std::move(cells));
}

QStringList thenNow(const ThenNow& value, const Units& units) {
    return {bare(value.then, units), bare(value.now, units), bareSigned(value.difference(), units),
            value.isJudged() ? bareSpread(*value.uncertainty(), units) : none()};
}

QStringList thenNowHeads(const QString& first, const Units& units) {
    return {first,
            inUnit(Sheet::tr("Then"), units),
            inUnit(Sheet::tr("Now"), units),
            Sheet::tr("Difference"),
            Sheet::tr("± U"),
            Sheet::tr("Change")};
}

QString uncertaintyRemark() {
    return Sheet::tr("± U is the expanded uncertainty of the difference, from those of both measurements. A difference "
                     "within it is not a measured change.");
}

DifferenceTable clearances(const BuildComparison& c, const Units& units) {
    DifferenceTable table{
        Sheet::tr("Bearing clearances"), uncertaintyRemark(), thenNowHeads(Sheet::tr("Bearing"), units), {}, {}};
    for (const BearingThenNow& b : c.bearings) {
        if (b.clearance.then || b.clearance.now) {
            addRow(table, QStringList{capitalised(text(describe(b.journal)))} + thenNow(b.clearance, units),
                   b.clearance);
        }
    }
    return table;
}

DifferenceTable wear(const BuildComparison& c, const Units& units) {
    DifferenceTable table{Sheet::tr("Journals, bores and shells"),
                          Sheet::tr("Means of the diameters. Positive is worn: a journal became smaller, a bore "
                                    "larger. If the shells were changed, the bore includes the new shells."),
                          {Sheet::tr("Bearing"), inUnit(Sheet::tr("Journal then"), units), Sheet::tr("now"),
                           Sheet::tr("wear"), inUnit(Sheet::tr("Bore then"), units), Sheet::tr("now"),
                           Sheet::tr("wear"), Sheet::tr("Shells then"), Sheet::tr("now")},
                          {},
                          {}};
    for (const BearingThenNow& b : c.bearings) {
        if (b.journalThen || b.journalNow || b.boreThen || b.boreNow) {
            table.rows.push_back({capitalised(text(describe(b.journal))), bare(b.journalThen, units),
                                  bare(b.journalNow, units), bareSigned(b.journalWear(), units),
                                  bare(b.boreThen, units), bare(b.boreNow, units), bareSigned(b.boreWear(), units),
                                  orNone(text(b.shellsThen)), orNone(text(b.shellsNow))});
        }
    }
    return table;
}

DifferenceTable gaps(const BuildComparison& c, const Units& units) {
    DifferenceTable table{Sheet::tr("Gaps under the girdle, and their stacks"),
                          {},
                          {Sheet::tr("Position"), inUnit(Sheet::tr("Gap then"), units), Sheet::tr("now"),
                           Sheet::tr("Difference"), Sheet::tr("± U"), inUnit(Sheet::tr("Stack then"), units),
                           Sheet::tr("now"), Sheet::tr("Change")},
                          {},
                          {}};
    for (const GapThenNow& g : c.gaps) {
        addRow(table,
               QStringList{capitalised(text(describe(g.position)))} + thenNow(g.gap, units) +
                   QStringList{bare(g.stackThen, units), bare(g.stackNow, units)},
               g.gap);
    }
    return table;
}

DifferenceTable fits(const BuildComparison& c, const Units& units) {
    DifferenceTable table{Sheet::tr("Fits and pickup"), {}, thenNowHeads(Sheet::tr("Fit"), units), {}, {}};
    for (const NamedThenNow& fit : c.fits) {
        addRow(table, QStringList{capitalised(text(fit.name))} + thenNow(fit.value, units), fit.value);
    }
    return table;
}

QString torqueText(const std::optional<Torque>& torque, const Units& units) {
    return torque ? text(format(*torque, units)) : none();
}

DifferenceTable torques(const BuildComparison& c, const Units& units) {
    DifferenceTable table{Sheet::tr("Torques, and movement in verify rounds"),
                          {},
                          {Sheet::tr("Fastener"), Sheet::tr("Torque then"), Sheet::tr("now"),
                           Sheet::tr("Rounds moved then"), Sheet::tr("now"), Sheet::tr("Change")},
                          {},
                          {}};
    for (const FastenerThenNow& f : c.fasteners) {
        const bool isChange = f.then && f.now && *f.then != *f.now;
        if (isChange) {
            table.changes.insert(table.rows.size());
        }
        table.rows.push_back({capitalised(text(describe(f.fastener))), torqueText(f.then, units),
                              torqueText(f.now, units), QString::number(f.movedThen), QString::number(f.movedNow),
                              !f.then || !f.now ? none()
                              : isChange        ? Sheet::tr("another torque")
                                                : Sheet::tr("the same")});
    }
    return table;
}

DifferenceTable rounds(const BuildComparison& c, const Units& units) {
    DifferenceTable table{Sheet::tr("Verify rounds"),
                          {},
                          {Sheet::tr("Build"), Sheet::tr("Rounds"), Sheet::tr("Pulls"), Sheet::tr("Moved"),
                           Sheet::tr("Largest movement")},
                          {},
                          {}};
    for (const auto& [side, r] : {std::pair(c.then, c.roundsThen), std::pair(c.now, c.roundsNow)}) {
        table.rows.push_back({QString::number(side.number), QString::number(r.rounds), QString::number(r.pulls),
                              QString::number(r.moved), r.moved > 0 ? text(format(r.largest, units)) : none()});
    }
    if (c.roundsThen.rounds + c.roundsNow.rounds == 0) {
        table.rows.clear();
    }
    return table;
}

} // namespace

std::vector<DifferenceTable> differenceTables(const BuildComparison& comparison, const Units& units) {
    std::vector<DifferenceTable> tables;
    for (const auto& make : {clearances, wear, gaps, fits, torques, rounds}) {
        DifferenceTable table = make(comparison, units);
        if (!table.rows.empty()) {
            tables.push_back(std::move(table));
        }
    }
    return tables;
}

QString buildLine(const BuildSide& side) {
    QString line = Sheet::tr("Build %1, %2 to %3, %4")
                       .arg(side.number)
                       .arg(text(format(dateOf(side.begun))), text(format(dateOf(side.last))),
                            side.isSignedOff ? Sheet::tr("signed off") : Sheet::tr("not signed off"));
    return side.why.empty() ? line : line + QStringLiteral(": ") + text(side.why);
}

} // namespace caprail
