// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/pickup/terms.h>

#include <QCoreApplication>
#include <algorithm>
#include <assessment/current_readings.h>
#include <ledger/band_names.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class PickupTermsText {
    Q_DECLARE_TR_FUNCTIONS(PickupTermsText)
};

} // namespace

QString howToMeasure(PickupTerm term) {
    switch (term) {
    case PickupTerm::panDepth:
        return PickupTermsText::tr(
            "From the pan's flange face straight down to its floor, where the pickup will stand.");
    case PickupTerm::gasket:
        return PickupTermsText::tr(
            "The thickness it has when the pan is tight, not as it comes from the bag. None: enter 0.");
    case PickupTerm::plate:
        return PickupTermsText::tr(
            "Whatever holds the pan off the rail: the girdle plate where it lies between, else 0. Count a bead of "
            "sealant as 0.");
    case PickupTerm::pickupDepth:
        break;
    }
    return PickupTermsText::tr("From the pan rail down to the lowest point of the pickup as it is mounted.");
}

UncertaintyBudget pickupBudget(const Facts& facts) {
    PickupReadings terms;
    for (const auto& entry : allWords<PickupTerm>()) {
        terms[entry.value] = currentPickup(facts, entry.value);
    }
    return pickupBudgetOf(facts, terms);
}

QString termLine(const Facts& facts, PickupTerm term, const Units& units) {
    const auto readings = currentPickup(facts, term);
    if (readings.empty()) {
        return PickupTermsText::tr("not measured");
    }
    std::int64_t sum = 0;
    Length smallest = readings.front().what.value.value;
    Length largest = smallest;
    for (const auto& reading : readings) {
        sum += reading.what.value.value.value();
        smallest = std::min(smallest, reading.what.value.value);
        largest = std::max(largest, reading.what.value.value);
    }
    const auto count = static_cast<std::int64_t>(readings.size());
    const Length mean(toNearest(static_cast<double>(sum) / static_cast<double>(count)));
    const QString value = qtText(format(mean, units));
    if (count == 1) {
        return PickupTermsText::tr("%1   one reading: one more is needed").arg(value);
    }
    const Uncertainty own(pickupTermBudgetOf(facts, term, readings), coverageOf(facts));
    return PickupTermsText::tr("%1 %2   %3 readings within %4")
        .arg(value, qtText(describe(own, units)))
        .arg(count)
        .arg(qtText(format(largest - smallest, units)));
}

QString towardsMiddle(const Facts& facts, const Assessment& assessment, const Units& units) {
    const BandFact* band = facts.bandNamed(bands::pickupClearance);
    if (band == nullptr || !assessment.pickup.clearance) {
        return {};
    }
    const Length middle = band->target.value_or(band->band.middle());
    const Length off = *assessment.pickup.clearance - middle;
    if (off.magnitude() < thou(1)) {
        return PickupTermsText::tr("The clearance is in the middle of its band: leave it.");
    }
    const QString by = qtText(format(off.magnitude(), units));
    const QString aim = qtText(format(middle, units));
    return off > Length()
               ? PickupTermsText::tr(
                     "To centre it at %1: lower the pickup by %2, or take %2 off what lies between pan and "
                     "rail.")
                     .arg(aim, by)
               : PickupTermsText::tr("To centre it at %1: raise the pickup by %2, or put %2 more between pan and rail.")
                     .arg(aim, by);
}

} // namespace caprail
