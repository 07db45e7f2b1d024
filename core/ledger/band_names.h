// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string_view>
#include <base/say.h>

namespace caprail::bands {

/// The bands that the program itself judges by. Any other name is a fit of the shop's own.
inline constexpr std::string_view residual = Core::mark("residual");
inline constexpr std::string_view twist = Core::mark("twist");
inline constexpr std::string_view mainClearance = Core::mark("main clearance");
inline constexpr std::string_view rodClearance = Core::mark("rod clearance");
inline constexpr std::string_view crankEndPlay = Core::mark("crank end play");
inline constexpr std::string_view rodSideClearance = Core::mark("rod side clearance");
inline constexpr std::string_view pickupClearance = Core::mark("pickup clearance");

/// Bands that are not fits: nothing is read against them by a fit reading.
constexpr bool isFit(std::string_view name) {
    return name != residual && name != twist && name != mainClearance && name != rodClearance &&
           name != pickupClearance;
}

} // namespace caprail::bands
