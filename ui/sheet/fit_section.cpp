// SPDX-License-Identifier: GPL-3.0-or-later
/// Trial fit and pickup.
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <assessment/beside_verdict.h>
#include <ledger/band_names.h>

namespace caprail::sheet {

namespace {

std::vector<SheetCell> trialRow(const Writing& w, const Check& check) {
    const auto* place = std::get_if<TrialId>(&check.subject);
    if (place == nullptr) {
        return {strongCell(text(check.title)), none(), capitalised(text(check.sentence)), quietCell(none()),
                stateCell(check.state)};
    }
    const QString throwNumber = isPerThrow(place->first) ? QString::number(place->second) : none();
    const auto at = w.facts().trialFits.find(*place);
    if (at == w.facts().trialFits.end()) {
        return {strongCell(capitalised(wordText(place->first))), throwNumber, none(), none(), stateCell(check.state)};
    }
    QString found = withoutName(text(check.sentence), wordText(place->first));
    if (at->second.what.clearance && !at->second.what.note.empty()) {
        found += QLatin1Char(' ') + text(at->second.what.note);
    }
    return {strongCell(capitalised(wordText(place->first))), throwNumber, found, quietCell(w.byAndWhen(at->second)),
            stateCell(check.state)};
}

} // namespace

void trialFitSection(const Writing& w) {
    if (w.facts().trialFits.empty() && !w.facts().girdleWay) {
        return;
    }
    SheetTable table{{{Sheet::tr("What")},
                      rightColumn(Sheet::tr("Throw")),
                      {Sheet::tr("Found")},
                      {Sheet::tr("By, when")},
                      {Sheet::tr("State")}},
                     {}};
    for (const Check& check : w.assessment().checks) {
        if (check.kind == CheckKind::girdleWay || check.kind == CheckKind::trialFit) {
            table.rows.push_back(trialRow(w, check));
        }
    }
    w.flow.heading(Sheet::tr("Trial fit"));
    w.flow.table(table);
}

void pickupSection(const Writing& w) {
    if (w.facts().pickup.empty()) {
        return;
    }
    const Units& units = w.units();
    const PickupResult& result = w.assessment().pickup;
    SheetTable table{{{Sheet::tr("Term")},
                      {Sheet::tr("Readings")},
                      {Sheet::tr("Instrument")},
                      rightColumn(inUnit(Sheet::tr("Mean"), units))},
                     {}};
    for (const auto& entry : allWords<PickupTerm>()) {
        const PickupTerm term = entry.value;
        const auto at = w.facts().pickup.find(term);
        std::vector<Length> readings;
        QStringList instruments;
        if (at != w.facts().pickup.end()) {
            for (const auto& reading : at->second) {
                readings.push_back(reading.what.value.value);
                if (!reading.what.instrument.empty() && !instruments.contains(text(reading.what.instrument))) {
                    instruments << text(reading.what.instrument);
                }
            }
        }
        const auto mean = result.means.find(term);
        const bool isTakenOff = term == PickupTerm::pickupDepth;
        table.rows.push_back(
            {strongCell((isTakenOff ? QStringLiteral("− ") : QStringLiteral("+ ")) + capitalised(wordText(term))),
             readingsText(readings, units), instruments.isEmpty() ? none() : instruments.join(QStringLiteral(", ")),
             mean == result.means.end() ? none() : bare(mean->second, units)});
    }
    w.flow.heading(Sheet::tr("Clearance under the pickup"));
    if (const BandFact* band = w.facts().bandNamed(bands::pickupClearance)) {
        w.flow.introduction(Sheet::tr("Band: %1").arg(bandText(*band, units)));
    }
    w.flow.table(table);
    if (const Check* check = w.assessment().find("pickup"); check != nullptr) {
        const std::string beside = besideVerdict(*check, units);
        w.flow.stateLine(
            check->state,
            Sheet::tr("Clearance: %1").arg(check->sentence.empty() ? stateWord(check->state) : text(check->sentence)) +
                (beside.empty() ? QString() : QStringLiteral(" (") + text(beside) + QLatin1Char(')')));
    }
}

} // namespace caprail::sheet
