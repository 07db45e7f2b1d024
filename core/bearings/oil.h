// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How thick an oil is at a temperature, from two published points.
#include <base/problem.h>
#include <span>
#include <string_view>
#include <units/angle.h>

namespace caprail {

/// A published point of an oil: its kinematic viscosity at a temperature.
struct ViscosityPoint {
    Temperature at;
    double squareMillimetresPerSecond = 0; ///< cSt
};

/// An oil as its data sheet gives it.
struct Oil {
    ViscosityPoint first, second;
    double density15 = 870; ///< kg/m³ at 15 °C
};

/// A grade to start from: figures of data sheets of common oils, rounded; the sheet of the oil in the can comes first
/// (common practice, no source).
struct OilGrade {
    std::string_view name;
    double at40, at100; ///< mm²/s
};
std::span<const OilGrade> commonGrades();

/// Kinematic viscosity in mm²/s by ASTM D341: log10 log10(ν + 0.7) = A − B·log10(T/K), for ν of 2 mm²/s and more.
/// Refuses points at one temperature, a viscosity of less than 2 or more than 20 000 mm²/s at either point, an oil that
/// is thicker at the hotter point, and temperatures outside −40 to 200 °C.
Result<double> kinematicViscosity(const Oil& oil, Temperature at);
/// Dynamic viscosity in mPa·s: ν times the density, which falls by 0.65 kg/m³ per kelvin (common practice, no source).
Result<double> dynamicViscosity(const Oil& oil, Temperature at);

} // namespace caprail
