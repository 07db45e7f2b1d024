// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/pickup.h>
#include <measure/statistics.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The mean of a term. `mayBeZero`: a gasket may be replaced by sealant.
Result<Length> meanOf(const std::vector<Length>& readings, const std::string& name, bool mayBeZero) {
    if (readings.size() < pickupReadingsNeeded) {
        return refuse(readings.empty() ? Core::say("The %1 has 0 of two readings: measure it twice.", name)
                                       : Core::say("The %1 has 1 of two readings: measure it once more.", name));
    }
    const Summary summary = summarise(readings);
    if (summary.smallest < Length() || (!mayBeZero && summary.smallest == Length())) {
        return refuse(mayBeZero ? Core::say("The %1 must be zero or more: look at its readings.", name)
                                : Core::say("The %1 must be above zero: look at its readings.", name));
    }
    return Length(toNearest(summary.mean));
}

} // namespace

Result<PickupClearance> pickupClearance(const PickupStackUp& stackUp) {
    const auto pan = meanOf(stackUp.panDepth, Core::say("pan depth"), false);
    if (!pan) {
        return tl::unexpected(pan.error());
    }
    const auto gasket = meanOf(stackUp.gasket, Core::say("compressed gasket"), true);
    if (!gasket) {
        return tl::unexpected(gasket.error());
    }
    const auto plate =
        stackUp.plate ? meanOf(*stackUp.plate, Core::say("girdle plate"), true) : Result<Length>(Length());
    if (!plate) {
        return tl::unexpected(plate.error());
    }
    const auto pickup = meanOf(stackUp.pickupDepth, Core::say("pickup depth"), false);
    if (!pickup) {
        return tl::unexpected(pickup.error());
    }
    return PickupClearance{*pan, *gasket, *plate, *pickup, *pan + *gasket + *plate - *pickup};
}

Band defaultPickupBand() {
    return Band::between(inches(0.250), inches(0.375)).value();
}

std::string pickupAdvice(Length clearance, Band band, const Units& units) {
    const Length change = band.middle() - clearance;
    const std::string by = format(change.magnitude(), units);
    if (by == format(Length(), units)) {
        return Core::say("The clearance is at the middle of the band: nothing to change.");
    }
    const bool isTight = change > Length();
    return isTight
               ? Core::say("Raise the pickup by %1, or fit a gasket or plate thicker by as much: the clearance then "
                           "is %2, the middle of the band.",
                           by, format(band.middle(), units))
               : Core::say("Lower the pickup by %1, or fit a gasket or plate thinner by as much: the clearance then "
                           "is %2, the middle of the band.",
                           by, format(band.middle(), units));
}

} // namespace caprail
