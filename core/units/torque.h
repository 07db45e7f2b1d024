// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/quantity.h>

namespace caprail {

struct TorqueTag;
/// A torque in whole millinewton metres. The pound-foot is 1.355 817 948 331 400 4 N·m exactly (0.3048 m ×
/// 4.448 221 615 260 5 N, NIST SP 811 appendix B); a torque given in it is held to the nearest mN·m, which is a
/// thousandth of what a torque wrench can repeat. What was typed is kept beside it.
using Torque = Quantity<TorqueTag>;

inline constexpr double newtonMetresPerPoundFoot = 1.3558179483314004;
inline constexpr double newtonMetresPerPoundInch = newtonMetresPerPoundFoot / 12.0;

constexpr Torque millinewtonMetres(std::int64_t n) { return Torque(n); }
/// Exact for multiples of 0.001 N·m.
constexpr Torque newtonMetres(double n) { return Torque(toNearest(n * 1'000.0)); }
/// To the nearest mN·m.
constexpr Torque poundFeet(double n) { return Torque(toNearest(n * newtonMetresPerPoundFoot * 1'000.0)); }
/// To the nearest mN·m.
constexpr Torque poundInches(double n) { return Torque(toNearest(n * newtonMetresPerPoundInch * 1'000.0)); }

constexpr double inNewtonMetres(Torque t) { return static_cast<double>(t.value()) / 1'000.0; }
constexpr double inPoundFeet(Torque t) { return inNewtonMetres(t) / newtonMetresPerPoundFoot; }
constexpr double inPoundInches(Torque t) { return inNewtonMetres(t) / newtonMetresPerPoundInch; }

} // namespace caprail
