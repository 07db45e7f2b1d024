// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/quantity.h>

namespace caprail {

struct ForceTag;
/// A force in whole millinewtons. 1 lbf = 4.448 221 615 260 5 N exactly (NIST SP 811 appendix B), held to the nearest mN.
using Force = Quantity<ForceTag>;

inline constexpr double newtonsPerPoundForce = 4.4482216152605;

constexpr Force newtons(double n) { return Force(toNearest(n * 1'000.0)); }
constexpr Force poundsForce(double n) { return Force(toNearest(n * newtonsPerPoundForce * 1'000.0)); }

constexpr double inNewtons(Force f) { return static_cast<double>(f.value()) / 1'000.0; }
constexpr double inKilonewtons(Force f) { return static_cast<double>(f.value()) / 1'000'000.0; }
constexpr double inPoundsForce(Force f) { return inNewtons(f) / newtonsPerPoundForce; }

struct StressTag;
/// A stress or modulus in whole kilopascals. 1 psi = 6 894.757 Pa (NIST SP 811, table B.8 to its published digits).
using Stress = Quantity<StressTag>;

inline constexpr double pascalsPerPsi = newtonsPerPoundForce / (0.0254 * 0.0254);

constexpr Stress kilopascals(std::int64_t n) { return Stress(n); }
constexpr Stress megapascals(double n) { return Stress(toNearest(n * 1'000.0)); }
constexpr Stress psi(double n) { return Stress(toNearest(n * pascalsPerPsi / 1'000.0)); }
constexpr double inMegapascals(Stress s) { return static_cast<double>(s.value()) / 1'000.0; }
constexpr double inPsi(Stress s) { return static_cast<double>(s.value()) * 1'000.0 / pascalsPerPsi; }

struct StiffnessTag;
/// A spring rate in whole newtons per metre: 1 lbf/in is 175.127 N/m, 1 lbf/thou a thousand times that.
using Stiffness = Quantity<StiffnessTag>;

constexpr Stiffness newtonsPerMillimetre(double n) { return Stiffness(toNearest(n * 1'000.0)); }
constexpr Stiffness poundsPerThou(double n) { return Stiffness(toNearest(n * 1e3 * newtonsPerPoundForce / 0.0254)); }
constexpr Stiffness millionPoundsPerInch(double n) { return poundsPerThou(n * 1e3); }
constexpr double inNewtonsPerMillimetre(Stiffness s) { return static_cast<double>(s.value()) / 1'000.0; }
constexpr double inPoundsPerThou(Stiffness s) {
    return static_cast<double>(s.value()) * 0.0254 / newtonsPerPoundForce / 1e3;
}
constexpr double inMillionPoundsPerInch(Stiffness s) { return inPoundsPerThou(s) / 1e3; }

} // namespace caprail
