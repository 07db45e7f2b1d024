// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/length.h>
#include <units/quantity.h>

namespace caprail {

struct AreaTag;
/// A cross-section in whole square micrometres: 1 mm² = 1 000 000 µm² and 1 in² = 645 160 000 µm², both exact.
using Area = Quantity<AreaTag>;

/// Exact for multiples of 0.000001 mm².
constexpr Area squareMillimetres(double n) {
    return Area(toNearest(n * 1'000'000.0));
}
/// To the nearest µm² (0.0000000016 in²).
constexpr Area squareInches(double n) {
    return Area(toNearest(n * 645'160'000.0));
}
constexpr double inSquareMillimetres(Area a) {
    return static_cast<double>(a.value()) / 1'000'000.0;
}
constexpr double inSquareInches(Area a) {
    return static_cast<double>(a.value()) / 645'160'000.0;
}

/// The area π/4·d² of a round section.
constexpr Area circleArea(Length diameter) {
    constexpr double quarterPi = 0.785398163397448309616;
    return squareMillimetres(quarterPi * inMillimetres(diameter) * inMillimetres(diameter));
}

} // namespace caprail
