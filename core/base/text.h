// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Reading what a person typed, and quoting it back. Texts are UTF-8; white space is that of ASCII.
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace caprail {

/// Without the white space around it.
std::string_view trimmed(std::string_view text);
/// ASCII letters in small; enough for the names of units, grades and lubricants.
std::string lowered(std::string_view text);
/// ASCII letters and those of Latin-1 in capitals: "ü7" becomes "Ü7".
std::string capitalLetters(std::string_view text);

/// The typed text in quotation marks; a long one is cut after some 40 bytes, between two characters.
std::string quotedText(std::string_view text);

/// The first word and what follows it, both trimmed: "S014" and "0.0098" of "S014  0.0098".
struct HeadAndRest {
    std::string_view head, rest;
};
HeadAndRest headAndRest(std::string_view text);
/// The parts between white space and any of the marks ("," or "→"); empty ones are left out.
std::vector<std::string_view> partsOf(std::string_view text, std::initializer_list<std::string_view> marks);
/// Whether there is nothing in it but spaces, tabs and ends of lines.
bool isBlank(std::string_view text);
/// The parts between these marks (single characters), each trimmed; empty ones too, so that "a//c" has three.
std::vector<std::string_view> partedBy(std::string_view text, std::string_view marks);

/// A decimal number held exactly: digits × 10^-decimals.
struct Decimal {
    std::int64_t digits = 0;
    int decimals = 0;
    bool hasMark = false;
};
/// Takes an unsigned decimal number of at most 15 digits off the front; none where there is none or a longer one. A
/// point is always a decimal mark, a comma where `mark` is one.
std::optional<Decimal> takeDecimal(std::string_view& text, char mark);
/// The whole text as an unsigned number without exponent, to the nearest double; point and comma both count as the
/// decimal mark.
std::optional<double> decimalNumber(std::string_view text);
/// The whole text as an unsigned whole number below a million.
std::optional<int> wholeNumber(std::string_view text);

} // namespace caprail
