// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The girdle's plate as somebody gave it, and what its studs and caps give way like.
#include <array>
#include <base/problem.h>
#include <base/words.h>
#include <engine/girdle_outline.h>
#include <units/force.h>

namespace caprail {

struct GirdlePlate {
    Length thickness;
    Stress youngsModulus;
    double poissonRatio = 0.3;
    GirdleShape shape{};
    friend bool operator==(const GirdlePlate&, const GirdlePlate&) = default;
};
/// Refuses, saying what was read: a thickness outside 0.03 to 1.5 in, a modulus outside 34 to 276 GPa, Poisson's ratio
/// outside 0 to 0.49.
Result<void> checkPlate(const GirdlePlate& plate);

/// A metal that girdles are made of.
enum class PlateMetal { steel, aluminium };
template <> struct WordsOf<PlateMetal> {
    static constexpr std::array<Word<PlateMetal>, 2> list{
        {{PlateMetal::steel, Core::mark("steel")}, {PlateMetal::aluminium, Core::mark("aluminium")}}};
};
struct Elasticity {
    Stress youngsModulus;
    double poissonRatio;
};
/// Carbon steel and aluminium alloys (J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, 5th edition, table
/// A-5, from memory).
Elasticity elasticityOf(PlateMetal metal);

/// What stud and cap are taken for where nobody knows their stretch: stiffer than a main stud with its cap is, so the
/// loads come out rather too large than too small. Common practice, no source.
inline constexpr Stiffness stiffnessNotKnown = poundsPerThou(10'000);
/// Stud and cap as a spring: the stud's own stiffness F/δ from its stretch at a preload, and what it clamps
/// beside it: k_stud/C with the joint's share C = k_stud/(k_stud + k_clamped) (Shigley, chapter 8). Refuses a preload
/// or a stretch that is not above zero, and C outside 0.05 to 0.95.
Result<Stiffness> studAndCap(Force preload, Length stretch, double jointShare);

} // namespace caprail
