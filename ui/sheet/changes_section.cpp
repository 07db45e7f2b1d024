// SPDX-License-Identifier: GPL-3.0-or-later
/// What was changed after something had been judged by it, and values that nobody spoke for.
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <assessment/unconfirmed.h>
#include <work/deviations.h>

namespace caprail::sheet {

void changesSection(const Writing& w) {
    SheetTable table{{rightColumn(Sheet::tr("Entry")),
                      {Sheet::tr("Sort")},
                      {Sheet::tr("What was changed, and why")},
                      {Sheet::tr("By, when")}},
                     {}};
    for (const Deviation& deviation : deviationsOf(w.source.ledger, w.facts(), w.units())) {
        table.rows.push_back({QString::number(deviation.entry), strongCell(wordText(sortOf(deviation.what))),
                              text(sentenceOf(deviation, w.assessment(), w.units())), quietCell(w.byAndWhen(deviation))});
    }
    if (table.rows.empty()) {
        return;
    }
    w.flow.heading(Sheet::tr("Changes"));
    w.flow.introduction(Sheet::tr("What was changed, struck or accepted again after something had been judged by it."));
    w.flow.table(table);
}

void valuesSection(const Writing& w) {
    std::vector<LabelledValue> list;
    for (const ValueStanding& value : valuesOf(w.facts(), w.units())) {
        if (!value.isConfirmed) {
            list.push_back({capitalised(text(value.title)), text(value.figure)});
        }
    }
    if (list.empty()) {
        return;
    }
    w.flow.heading(Sheet::tr("Values that nobody confirmed"));
    w.flow.introduction(Sheet::tr("Common practice, without a source: the part makers' own figures come first."));
    w.flow.values(list, 4);
}

} // namespace caprail::sheet
