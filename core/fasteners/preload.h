// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/grade.h>
#include <fasteners/thread.h>
#include <string>
#include <units/force.h>
#include <units/format.h>
#include <base/problem.h>
#include <units/torque.h>
#include <vector>

namespace caprail {

/// An answer with the way to it, one line of text per step, in the units that the user chose.
template <class Q> struct Worked {
    Q value;
    std::vector<std::string> working;
};

/// A torque on one fastener outside this range is asked back, not used (common practice, no source).
inline constexpr Torque smallestPlausibleTorque = millinewtonMetres(100);
inline constexpr Torque largestPlausibleTorque = millinewtonMetres(2'000'000);

/// The torque itself, or a refusal that says what was read: nothing, negative, or outside the plausible range.
Result<Torque> plausibleTorque(Torque torque, const Units& units);

/// The most that a fastener of an engine can hold; more is asked back (an M39 of class 12.9 proves at 947 kN).
inline constexpr Force largestPlausiblePreload = newtons(2'000'000);
/// The preload itself, or a refusal that says what was read: nothing, negative, or more than the largest plausible.
Result<Force> plausiblePreload(Force preload, const Units& units);

/// Short form, F = T / (K·D) (NASA RP-1228, «Fastener torque»). Refuses an implausible torque and K outside 0.03 to 1.
Result<Worked<Force>> preloadShortForm(Torque torque, const Thread& thread, double nutFactor, const Units& units);
/// Friction as the long form needs it. Coefficients are dimensionless.
struct JointFriction {
    double thread;        ///< μt
    double bearing;       ///< μb, under the part that turns
    Length bearingRadius; ///< rb, mean radius of the bearing face
};
/// rb = 0.65·D, for a hexagon nut on a washer whose face has not been measured (common practice, no source).
Length usualBearingRadius(const Thread& thread);

/// Long form, F = T / (P/2π + μt·d2/(2·cos 30°) + μb·rb) (ISO 16047; VDI 2230-1). Refuses an implausible torque, a
/// friction coefficient outside 0.01 to 1, and a radius that is not positive.
Result<Worked<Force>> preloadLongForm(Torque torque, const Thread& thread, const JointFriction& friction,
                                      const Units& units);
/// Scatter of the preload that torque control reaches, as a share: ±30 % (common practice ±25 to ±35 %, and the factors
/// 0.25 lubricated and 0.35 dry of NASA-STD-5020).
inline constexpr double usualScatter = 0.30;

/// What a thread carries while its nut is turned: tension from the clamp, torsion from the part of the torque that the
/// thread takes, and both together, σ_e = √(σ² + 3τ²) with τ = 16·M/(π·d_s³), M = F·(P/2π + μt·d2/(2·cos 30°)) and d_s
/// the diameter of the stress area (VDI 2230-1, elastic form).
struct ThreadStress {
    Stress axial;
    Stress torsion;
    Stress equivalent;
    std::vector<std::string> working;
    /// σ_e/σ, 1 or more.
    [[nodiscard]] double factor() const {
        return static_cast<double>(equivalent.value()) / static_cast<double>(axial.value());
    }
};
/// Refuses an implausible preload and a friction coefficient outside 0.01 to 1.
Result<ThreadStress> threadStress(Force preload, const Thread& thread, double threadFriction, const Units& units);

/// Clamp from the torque that tightens and the torque that loosens one fastener: F = π·(T_on − T_off)/P. Friction, which
/// is in both, falls out (statics of the thread; both moving slowly). Refuses implausible torques, and a loosening
/// torque that is not below the tightening one.
Result<Worked<Force>> clampFromTorques(Torque on, Torque off, const Thread& thread, const Units& units);

/// Preload as a share of the proof load: 0.75 means 75 %. `low` at the higher, `high` at the lower friction.
struct ProofShare {
    double low;
    double nominal;
    double high;
    Force proofLoad;
    std::vector<std::string> working;
};
/// Refuses an implausible preload, scatter outside 0 to 0.9, and what proofLoad refuses.
Result<ProofShare> shareOfProof(Force preload, const Thread& thread, const Grade& grade, double scatter,
                                const Units& units);

enum class TorqueWarningKind {
    passesNinetyPercentOfProof, ///< at the lower friction, with the torsion of tightening
    looksTwelveTimesTooLarge,   ///< as if lbf·in had been entered as lbf·ft
    looksTwelveTimesTooSmall,   ///< as if lbf·ft had been entered as lbf·in
};
struct TorqueWarning {
    TorqueWarningKind kind;
    std::string sentence;
};
/// Warnings on a specified torque from the share of proof that it gives: `equivalentHigh`, the share with torsion at the
/// lower friction, above 0.90; `nominal` below 0.12 or
/// above 3 looks like the wrong unit (a factor of 12; the limits are common practice, no source). A value that looks
/// like the wrong unit gets that warning alone.
std::vector<TorqueWarning> torqueWarnings(Torque torque, const ProofShare& share, double equivalentHigh,
                                          const Units& units);

/// All of the above for one specified torque, as screen and sheet show it.
struct TorqueJudgement {
    Force preload;
    ProofShare share;                 ///< of the clamp alone
    ProofShare equivalent;            ///< with the torsion of tightening
    ThreadStress stress;
    std::vector<TorqueWarning> warnings;
    std::vector<std::string> working; ///< short form first, then the share of proof, then torsion
    /// Over 90 % of proof at the lower friction, torsion counted.
    [[nodiscard]] bool isOverProof() const;
};
/// By the short form, with the friction of the thread for the torsion. Refuses what preloadShortForm, shareOfProof and
/// threadStress refuse.
Result<TorqueJudgement> judgeTorque(Torque torque, const Thread& thread, const Grade& grade, double nutFactor,
                                    double threadFriction, double scatter, const Units& units);

} // namespace caprail
