// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/problem.h>
#include <string>
#include <string_view>
#include <vector>

namespace caprail {

/// What the lines of one gauge look like: set once per gauge, by a person who sees its lines.
struct GaugeLineForm {
    /// The line, with # where the value stands (with its sign, and its unit where the line has one) and * for anything:
    /// "#" is a value alone, "01A#" one behind the gauge's own prefix. A space fits any number of spaces, or none.
    std::string pattern = "#";
    /// The unit of a value that comes without one, in one of the spellings of `gaugeUnits`; empty: the line says it.
    std::string unit;
    friend bool operator==(const GaugeLineForm&, const GaugeLineForm&) = default;
};

/// The units that a gauge may send, as they are typed in a field.
const std::vector<std::string>& gaugeUnits();

/// Refuses a pattern that does not say once where the value stands, and an unknown unit.
Result<void> checkGaugeForm(const GaugeLineForm& form);

/// What a person would have typed for the line: "01A+00.0575" is "0.0575 in", digit for digit. Either decimal mark is
/// read, since a gauge groups no digits; control characters and spaces around the line count for nothing. Refused: a line
/// that does not fit the pattern from its first sign to its last, a number of more than 15 digits, with an exponent or with
/// two marks, and a value without a unit where the form has none. Nothing is guessed out of a line that has more in it.
Result<std::string> readGaugeLine(std::string_view line, const GaugeLineForm& form);

/// Whether the text may be the beginning of such a line, or is one: keys that may come from a gauge are told so.
bool couldBeginGaugeLine(std::string_view text, const GaugeLineForm& form);

/// A pattern that fits this line: all of it but its last number and that number's unit, letter for letter. "#" where the
/// line has no number.
std::string patternOfLine(std::string_view line);

} // namespace caprail
