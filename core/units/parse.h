// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <units/angle.h>
#include <units/force.h>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <units/torque.h>

namespace caprail {

/// A quantity with the text that a person typed for it; both are kept, and the text is shown again as typed.
template <class Q>
struct Entered {
    Q value{};
    std::string typed;
    friend bool operator==(const Entered&, const Entered&) = default;
};

/// What a field expects. A value outside [smallest, largest] is asked back, not stored: the sentence says what was
/// read, and typing the same text with a `!` behind it says «yes, really».
template <class Q>
struct Expected {
    std::string what;          ///< the field, as it reads inside a sentence: "the gap at cap 3 right"
    std::optional<Q> smallest; ///< plausible range, inclusive; none: any value
    std::optional<Q> largest;
};

/// Reads a length as a person at the bench types it: "0.0575", ".0575", "57.5 thou", "1.46 mm", "22+23+12.5 thou"
/// (feeler leaves in one slot, summed), "1/4", "2 1/4 in", a comma as decimal mark where `units` has one. A bare number
/// is in `units.length`. A sum of bare whole numbers in an inch field is feeler leaves in thousandths.
/// Refuses, saying what was read: empty and unparsable text; a bare whole number of 3 or more where inches are expected
/// (57 in? 57 thou?) unless it is plausible as it stands; a bare fraction in a millimetre field; mixed decimal marks;
/// a value outside the plausible range.
Result<Entered<Length>> parseLength(std::string_view text, const Units& units, const Expected<Length>& expected);

/// "75", "75 lbf·ft", "75 ft-lb", "900 lbf·in", "900 in-lb", "101.7 Nm". A bare number is in `units.torque`.
Result<Entered<Torque>> parseTorque(std::string_view text, const Units& units, const Expected<Torque>& expected);

/// "90", "90°", "90 deg". A bare number is in degrees.
Result<Entered<Angle>> parseAngle(std::string_view text, const Units& units, const Expected<Angle>& expected);

/// "21", "21 °C", "21 C", "70 °F". A bare number is in degrees Celsius.
Result<Entered<Temperature>> parseTemperature(std::string_view text, const Units& units,
                                              const Expected<Temperature>& expected);

/// A whole number from `smallest` to `largest`; the sentence names `what`.
Result<std::int64_t> parseCount(std::string_view text, const std::string& what, std::int64_t smallest,
                                std::int64_t largest);

} // namespace caprail
