// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charconv>
#include <fasteners/area.h>
#include <optional>
#include <string>
#include <string_view>
#include <units/format.h>

// Small text helpers of this folder: reading what a person typed, and writing a step of a working.
namespace caprail::fastenertext {

inline std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

/// ASCII letters only; enough for names and units.
inline std::string lowered(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return out;
}

/// The whole text as an unsigned number without exponent; a comma counts as the decimal mark.
inline std::optional<double> decimalNumber(std::string_view text) {
    std::string plain(text);
    if (const auto comma = plain.find(','); comma != std::string::npos) {
        plain[comma] = '.';
    }
    if (plain.empty() || plain.size() > 15 || plain.find_first_not_of("0123456789.") != std::string::npos) {
        return std::nullopt;
    }
    double value = 0;
    const char* end = plain.data() + plain.size();
    const auto [stop, error] = std::from_chars(plain.data(), end, value);
    return error == std::errc() && stop == end ? std::optional(value) : std::nullopt;
}

/// The whole text as an unsigned whole number below a million.
inline std::optional<int> wholeNumber(std::string_view text) {
    if (text.empty() || text.size() > 6 || text.find_first_not_of("0123456789") != std::string_view::npos) {
        return std::nullopt;
    }
    int value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// A number with up to `decimals` places and no trailing zeros; the decimal point as given.
inline std::string shortNumber(double value, int decimals, char decimalMark = '.') {
    std::string text = formatNumber(value, decimals, decimalMark);
    if (text.find(decimalMark) != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == decimalMark) {
            text.pop_back();
        }
    }
    return text;
}

/// The typed text in quotation marks; a long one is cut after some 40 bytes, between two characters.
inline std::string quoted(std::string_view text) {
    constexpr std::size_t longest = 40;
    if (text.size() <= longest) {
        return "“" + std::string(text) + "”";
    }
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return "“" + std::string(text.substr(0, end)) + "…”";
}

/// "0.1187 in²" or "76.6 mm²"
inline std::string areaText(Area area, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inSquareInches(area), 4, units.decimalMark) + " in²"
                                            : formatNumber(inSquareMillimetres(area), 1, units.decimalMark) + " mm²";
}

/// "120000 psi" or "830 MPa", by the length unit.
inline std::string stressText(Stress stress, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inPsi(stress), 0, units.decimalMark) + " psi"
                                            : formatNumber(inMegapascals(stress), 0, units.decimalMark) + " MPa";
}

/// "75 %"
inline std::string percent(double share, const Units& units, int decimals = 0) {
    return formatNumber(share * 100.0, decimals, units.decimalMark) + " %";
}

} // namespace caprail::fastenertext
