// SPDX-License-Identifier: GPL-3.0-or-later
/// What is different between two builds of one engine: the sheet that lies beside the build sheet of a rebuild.
#include <sheet/difference_tables.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <work/deviations.h>

namespace caprail::sheet {

void differenceSection(const Writing& w, const BuildComparison& comparison) {
    const Facts& facts = w.facts();
    letterhead(w, Sheet::tr("Difference of builds"));
    w.flow.paragraph(facts.engine && !facts.engine->what.engine.empty() ? text(facts.engine->what.engine)
                                                                        : Sheet::tr("Engine not described"),
                     w.flow.type().title, w.flow.type().ink);
    const auto said = [&](std::string EngineDescribed::*field) {
        return orNone(facts.engine ? text(facts.engine->what.*field) : QString());
    };
    w.flow.values({{Sheet::tr("Customer"), said(&EngineDescribed::customer)},
                   {Sheet::tr("Serial number"), said(&EngineDescribed::serial)}},
                  2);
    w.flow.values({{Sheet::tr("Then"), buildLine(comparison.then)}, {Sheet::tr("Now"), buildLine(comparison.now)}}, 1);
    w.flow.paragraph(Sheet::tr("In the present build: %1").arg(text(deviationsLine(deviationsOf(w.source.ledger, facts, w.units())))));
    const auto tables = differenceTables(comparison, w.units());
    if (tables.empty()) {
        w.flow.paragraph(Sheet::tr("There is nothing to compare yet: neither build holds a measured value."));
    }
    for (const DifferenceTable& one : tables) {
        w.flow.heading(one.title);
        if (!one.remark.isEmpty()) {
            w.flow.introduction(one.remark);
        }
        SheetTable table;
        for (qsizetype i = 0; i < one.heads.size(); ++i) {
            const bool isWord = i == 0 || (i == one.heads.size() - 1 && !one.changes.empty());
            table.columns.push_back(isWord ? SheetColumn{one.heads[i]} : rightColumn(one.heads[i]));
        }
        for (std::size_t row = 0; row < one.rows.size(); ++row) {
            std::vector<SheetCell> cells;
            for (qsizetype i = 0; i < one.rows[row].size(); ++i) {
                const bool isStrong = i == 0 || (i == one.rows[row].size() - 1 && one.changes.contains(row));
                cells.push_back(isStrong ? strongCell(one.rows[row][i]) : SheetCell(one.rows[row][i]));
            }
            table.rows.push_back(std::move(cells));
        }
        w.flow.table(table);
    }
    changesSection(w);
}

} // namespace caprail::sheet
