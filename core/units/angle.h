// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/quantity.h>

namespace caprail {

struct AngleTag;
/// An angle in whole millidegrees: exact for what an angle gauge reads.
using Angle = Quantity<AngleTag>;

constexpr Angle degrees(double n) { return Angle(toNearest(n * 1'000.0)); }
constexpr double inDegrees(Angle a) { return static_cast<double>(a.value()) / 1'000.0; }

struct TemperatureTag;
/// A temperature in whole thousandths of a degree Celsius.
using Temperature = Quantity<TemperatureTag>;

constexpr Temperature celsius(double n) { return Temperature(toNearest(n * 1'000.0)); }
/// To the nearest 0.001 °C.
constexpr Temperature fahrenheit(double n) { return Temperature(toNearest((n - 32.0) / 1.8 * 1'000.0)); }
constexpr double inCelsius(Temperature t) { return static_cast<double>(t.value()) / 1'000.0; }
constexpr double inFahrenheit(Temperature t) { return inCelsius(t) * 1.8 + 32.0; }

} // namespace caprail
