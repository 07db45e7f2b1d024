// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/area.h>
#include <string>
#include <units/format.h>

// How this folder writes a step of a working.
namespace caprail::fastenertext {

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

/// "0.1187 in²" or "76.6 mm²"
inline std::string areaText(Area area, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inSquareInches(area), 4, units.decimalMark) + " in²"
                                            : formatNumber(inSquareMillimetres(area), 1, units.decimalMark) + " mm²";
}

} // namespace caprail::fastenertext
