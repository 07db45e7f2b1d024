// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <fasteners/text.h>
#include <fasteners/wrench.h>
#include <numbers>
#include <base/say.h>

namespace caprail {

using namespace fastenertext;

namespace {

constexpr Length longest = millimetres(5'000);

/// The whole lever L + E·cos α, and how it adds up.
Result<Worked<Length>> wholeLever(const WrenchExtension& extension, const Units& units) {
    if (extension.wrenchLength <= Length() || extension.wrenchLength > longest) {
        return refuse(Core::say("The length of the wrench must be above zero and at most 5 m, not %1: measure from the "
                                "grip to the drive.",
                                format(extension.wrenchLength, units)));
    }
    if (extension.offset < Length() || extension.offset > longest) {
        return refuse(Core::say("The extension's length cannot be negative or above 5 m, and %1 was given: for one "
                                "folded back give an angle of more than 90°.",
                                format(extension.offset, units)));
    }
    if (extension.angle < Angle() || extension.angle > degrees(180)) {
        return refuse(
            Core::say("The extension's angle lies between 0° (straight on) and 180° (folded back), and %1 was given.",
                      format(extension.angle, units)));
    }
    const double cosine = std::cos(inDegrees(extension.angle) * std::numbers::pi / 180.0);
    const Length lever =
        extension.wrenchLength + Length(toNearest(static_cast<double>(extension.offset.value()) * cosine));
    // A tenth of the wrench is the least with which the correction still means anything (common practice, no source).
    if (lever * 10 < extension.wrenchLength) {
        return refuse(Core::say(
            "An extension of %1 at %2 leaves no lever on a wrench of %3: turn it forward or take a shorter one.",
            format(extension.offset, units), format(extension.angle, units), format(extension.wrenchLength, units)));
    }
    return Worked<Length>{
        lever,
        {Core::say("L + E·cos α = %1 + %2 × %3 = %4", format(extension.wrenchLength, units),
                   format(extension.offset, units), shortNumber(cosine, 4, units.decimalMark), format(lever, units))}};
}

Torque scaled(Torque torque, Length numerator, Length denominator) {
    return Torque(toNearest(static_cast<double>(torque.value()) * static_cast<double>(numerator.value()) /
                            static_cast<double>(denominator.value())));
}

} // namespace

Result<Worked<Torque>> wrenchSetting(Torque wanted, const WrenchExtension& extension, const Units& units) {
    if (const auto checked = plausibleTorque(wanted, units); !checked) {
        return tl::unexpected(checked.error());
    }
    return wholeLever(extension, units).map([&](Worked<Length> lever) {
        const Torque setting = scaled(wanted, extension.wrenchLength, lever.value);
        lever.working.push_back(Core::say("setting = T·L/(L + E·cos α) = %1 × %2 / %3 = %4", format(wanted, units),
                                          format(extension.wrenchLength, units), format(lever.value, units),
                                          format(setting, units)));
        return Worked<Torque>{setting, std::move(lever.working)};
    });
}

Result<WrenchRange> WrenchRange::upTo(Torque largest, std::optional<Torque> markedSmallest) {
    if (largest <= Torque()) {
        return refuse(
            Core::say("The largest value of a torque wrench must be above zero, not %1.", format(largest, Units{})));
    }
    if (markedSmallest && (*markedSmallest <= Torque() || *markedSmallest >= largest)) {
        return refuse(
            Core::say("The smallest value marked on the wrench (%1) must lie between zero and its largest (%2).",
                      format(*markedSmallest, Units{}), format(largest, Units{})));
    }
    const Torque fifth(toNearest(static_cast<double>(largest.value()) / 5.0));
    return WrenchRange(markedSmallest.value_or(fifth), largest, markedSmallest.has_value());
}

RangeVerdict rangeVerdict(Torque reading, const WrenchRange& range) {
    return reading < range.smallest()  ? RangeVerdict::below
           : reading > range.largest() ? RangeVerdict::above
                                       : RangeVerdict::within;
}

std::string rangeMark(Torque reading, const WrenchRange& range, const Units& units) {
    switch (rangeVerdict(reading, range)) {
    case RangeVerdict::within:
        return {};
    case RangeVerdict::below:
        return range.isSmallestMarked()
                   ? Core::say("%1 is below the wrench's range (from %2, as marked on it)", format(reading, units),
                               format(range.smallest(), units))
                   : Core::say("%1 is below the wrench's range (from %2, 20 % of its largest value, ISO 6789)",
                               format(reading, units), format(range.smallest(), units));
    case RangeVerdict::above:
        break;
    }
    return Core::say("%1 is above the wrench's largest value (%2)", format(reading, units),
                     format(range.largest(), units));
}

} // namespace caprail
