// SPDX-License-Identifier: GPL-3.0-or-later
/// Trial fit, turning torque, the shop's own checks, and pickup.
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <assessment/beside_verdict.h>
#include <assessment/turning.h>
#include <ledger/band_names.h>

namespace caprail::sheet {

namespace {

/// Who made the entry that a check was made by, and when.
QString byOf(const Writing& w, const Check& check) {
    if (check.kind == CheckKind::girdleWay && w.facts().girdleWay) {
        return w.byAndWhen(*w.facts().girdleWay);
    }
    return check.madeAt == 0 ? none() : w.byAndWhen(w.source.ledger.at(check.madeAt));
}

/// After the pan the crank is turned once more: no check holds it, a closing step does.
std::vector<SheetCell> afterPanRow(const Writing& w) {
    const Standing standing = turningOf(w.facts(), TurningStage::afterPan, w.units());
    return {strongCell(Sheet::tr("Turning torque, %1").arg(wordText(TurningStage::afterPan))), none(),
            text(standing.sentence), quietCell(w.byAndWhen(w.facts().turning.at(TurningStage::afterPan))),
            stateCell(standing.state)};
}

std::vector<SheetCell> trialRow(const Writing& w, const Check& check) {
    const auto* place = std::get_if<TrialId>(&check.subject);
    if (place == nullptr) {
        const QString found = check.sentence.empty() ? none() : capitalised(text(check.sentence));
        return {strongCell(text(check.title)), none(), found, quietCell(byOf(w, check)), stateCell(check.state)};
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
    if (w.facts().trialFits.empty() && !w.facts().girdleWay && w.facts().turning.empty()) {
        return;
    }
    SheetTable table{{{Sheet::tr("What")},
                      rightColumn(Sheet::tr("Throw")),
                      {Sheet::tr("Found")},
                      {Sheet::tr("By, when")},
                      {Sheet::tr("State")}},
                     {}};
    for (const Check& check : w.assessment().checks) {
        if (check.kind == CheckKind::girdleWay || check.kind == CheckKind::trialFit ||
            check.kind == CheckKind::turningTorque) {
            table.rows.push_back(trialRow(w, check));
        }
    }
    if (w.facts().turning.contains(TurningStage::afterPan)) {
        table.rows.push_back(afterPanRow(w));
    }
    w.flow.heading(Sheet::tr("Trial fit"));
    w.flow.table(table);
}

void ownChecksSection(const Writing& w) {
    SheetTable table{{{Sheet::tr("What")}, {Sheet::tr("Holds")}, {Sheet::tr("Found")}, {Sheet::tr("By, when")},
                      {Sheet::tr("State")}},
                     {}};
    for (const Check& check : w.assessment().checks) {
        const auto* place = std::get_if<OwnPlace>(&check.subject);
        const auto* set = place == nullptr ? nullptr : w.facts().ownCheckNamed(place->check);
        if (set == nullptr) {
            continue;
        }
        table.rows.push_back({strongCell(text(check.title)),
                              set->what.step ? wordText(*set->what.step) : wordText(set->what.holds),
                              orNone(text(check.sentence)), quietCell(byOf(w, check)), stateCell(check.state)});
    }
    if (!table.rows.empty()) {
        w.flow.heading(Sheet::tr("The shop's own checks"));
        w.flow.table(table);
    }
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
    if (w.facts().bandNamed(bands::pickupClearance) != nullptr) {
        w.flow.introduction(Sheet::tr("Limits: %1").arg(bandText(w, bands::pickupClearance)));
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
