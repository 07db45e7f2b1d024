// SPDX-License-Identifier: GPL-3.0-or-later
/// Closing and sign-off, and what the seal proves; the page on which the annex begins.
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

/// What a step was entered with.
QString evidenceText(const ClosingStepDone& done) {
    QStringList note;
    if (done.fitted && done.aside && done.leftOver) {
        note << Sheet::tr("counted: %1 in the stacks + %2 set aside + %3 left over = %4")
                    .arg(*done.fitted)
                    .arg(*done.aside)
                    .arg(*done.leftOver)
                    .arg(*done.fitted + *done.aside + *done.leftOver);
    }
    if (done.product) {
        note << text(*done.product);
    }
    if (done.lot) {
        note << Sheet::tr("lot %1").arg(text(*done.lot));
    }
    if (done.openMinutes) {
        note << Sheet::tr("open time on the tube: %1 min").arg(*done.openMinutes);
    }
    if (!done.note.empty()) {
        note << text(done.note);
    }
    return note.isEmpty() ? none() : note.join(QStringLiteral("; "));
}

SheetCell standingCell(const Standing& standing) {
    return standing.state == CheckState::good ? stateCell(CheckState::good, Sheet::tr("done"))
                                              : stateCell(standing.state);
}

} // namespace

void closingSection(const Writing& w) {
    const Facts& facts = w.facts();
    SheetTable table{
        {{Sheet::tr("Step")}, {Sheet::tr("By")}, {Sheet::tr("When")}, {Sheet::tr("Note")}, {Sheet::tr("State")}}, {}};
    for (const auto& entry : allWords<ClosingStep>()) {
        const ClosingStep step = entry.value;
        const auto at = facts.closing.find(step);
        if (at == facts.closing.end()) {
            table.rows.push_back(
                {strongCell(capitalised(wordText(step))), none(), none(), none(), stateCell(CheckState::notDone)});
            continue;
        }
        const Standing& standing = w.assessment().closing.at(step);
        QString note = evidenceText(at->second.what);
        if (!standing.sentence.empty()) {
            note += QStringLiteral("; ") + text(standing.sentence);
        }
        table.rows.push_back({strongCell(capitalised(wordText(step))), text(at->second.person), w.time(at->second.time),
                              note, standingCell(standing)});
    }
    w.flow.heading(Sheet::tr("Closing and sign-off"));
    w.flow.table(table);
    if (!facts.signedOff) {
        w.flow.stateLine(CheckState::notDone, Sheet::tr("Not signed off."));
    }
}

void annexSection(const Writing& w) {
    w.flow.pageBreak();
    w.flow.paragraph(Sheet::tr("Annex: everything that was measured"), w.flow.type().title, w.flow.type().ink);
    w.flow.remark(Sheet::tr("± is the measuring uncertainty: a value counts as within its limits only with it."));
}

void sealSection(const Writing& w) {
    const Seal seal = w.source.ledger.seal();
    w.flow.heading(Sheet::tr("The seal"));
    w.flow.values({{Sheet::tr("Short form, on every page"), text(shortForm(seal))},
                   {Sheet::tr("Entries sealed"), QString::number(w.source.ledger.size())}},
                  2);
    w.flow.values({{Sheet::tr("In full (SHA-256 chain)"), text(toHex(seal))}}, 1);
    w.flow.paragraph(
        Sheet::tr("Every entry of the record carries a hash over itself and over all entries before it; the seal is "
                  "the last of them. The short form printed here matches only the record that this sheet was made "
                  "from: whoever changes, drops or reorders an entry gets another seal. “caprail check” shows the seal "
                  "of a file, to be compared with this page."));
    w.flow.paragraph(
        Sheet::tr("What it does not prove: that what was entered is true, that the clock was right, or who "
                  "sat at the keyboard. A file by itself can be rewritten as a whole with new seals; only "
                  "this page, kept apart from the file, shows that it was not."));
    w.flow.remark(Sheet::tr("All times: %1. Written by Caprail %2.").arg(w.times, w.options.appVersion));
}

} // namespace caprail::sheet
