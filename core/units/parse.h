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
/// read, and typing the same text with a `!` behind it says «yes, really»; the mark is
/// kept with the text.
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

/// "40", "40 lbf", "1.2 kN", "200 N". A bare number is in pounds beside inches, in kilonewtons beside millimetres.
Result<Entered<Force>> parseForce(std::string_view text, const Units& units, const Expected<Force>& expected);

/// "90", "90°", "90 deg". A bare number is in degrees.
Result<Entered<Angle>> parseAngle(std::string_view text, const Units& units, const Expected<Angle>& expected);

/// "21", "21 °C", "21 C", "70 °F". A bare number is in degrees Celsius.
Result<Entered<Temperature>> parseTemperature(std::string_view text, const Units& units,
                                              const Expected<Temperature>& expected);

/// How the text that was typed for a value goes with it.
enum class TypedFit {
    agrees,      ///< it can mean the value, to half of the last digit typed; or nothing was typed
    contradicts, ///< it is a quantity, and another one
    unreadable   ///< it is no quantity at all
};
/// The text is read in any unit that a bare number may have been in, with either decimal mark.
TypedFit fitOfTyped(const Entered<Length>&);
TypedFit fitOfTyped(const Entered<Torque>&);
TypedFit fitOfTyped(const Entered<Angle>&);
TypedFit fitOfTyped(const Entered<Temperature>&);

/// What the last digit typed is worth ("57.5 thou": 0.1 thou; of a sum, the coarsest), read in the unit in which the
/// text means the value. None where nothing was typed, for a fraction, and for a text that does not mean the value.
std::optional<Length> lastDigitOf(const Entered<Length>&);

/// Whether a `!` stands behind what was typed: «yes, really». It is kept with the text, so that the record shows it.
bool isInsisted(std::string_view typed);

/// A whole number from `smallest` to `largest`; the sentence names `what`.
Result<std::int64_t> parseCount(std::string_view text, const std::string& what, std::int64_t smallest,
                                std::int64_t largest);

} // namespace caprail
