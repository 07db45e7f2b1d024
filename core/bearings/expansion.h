// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How much block and crank grow with heat, and what that does to a bearing clearance.
#include <span>
#include <string_view>
#include <units/angle.h>
#include <units/length.h>
#include <base/problem.h>
#include <units/quantity.h>

namespace caprail {

struct ExpansionTag;
/// A coefficient of linear thermal expansion in whole billionths per kelvin (10⁻⁹ 1/K).
using Expansion = Quantity<ExpansionTag>;
/// From millionths per kelvin, as handbooks print it; exact for multiples of 0.001 · 10⁻⁶ 1/K.
constexpr Expansion millionthsPerKelvin(double n) {
    return Expansion(toNearest(n * 1'000.0));
}
constexpr double inMillionthsPerKelvin(Expansion e) {
    return static_cast<double>(e.value()) / 1'000.0;
}

/// A material with its coefficient near room temperature, and who says so.
struct MaterialExpansion {
    std::string_view material;
    Expansion coefficient;
    std::string_view source;
};
/// Materials of blocks and cranks to start from; a shop may use a figure of its own instead.
std::span<const MaterialExpansion> knownExpansions();

/// What a clearance is seen at.
struct Warming {
    Expansion block, crank;
    Temperature measuredAt;         ///< of both, when bore and journal were measured
    Temperature blockNow, crankNow; ///< of interest
};
/// c(T) = c + D·(α_block·ΔT_block − α_crank·ΔT_crank), to the nearest nanometre; with one temperature for both this is
/// c + D·(α_block − α_crank)·ΔT. `journal` is its diameter D at `measuredAt`. The shells, which are thin and held by
/// the housing, are taken to follow the block. Common practice, no source: it leaves out that a cap may be of another
/// metal, and that a running engine is not at one temperature.
/// Refuses a diameter that is not above zero, coefficients below zero or above 100 · 10⁻⁶ 1/K, and temperatures below
/// −60 °C or above 300 °C.
Result<Length> clearanceAt(Length clearance, Length journal, const Warming&);

} // namespace caprail
