// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How a bolted joint shares what a turned nut travels: part of it stretches the fastener, the rest presses the parts
/// together, and only by that does the nut's face go down.
#include <base/problem.h>
#include <fasteners/thread.h>
#include <optional>
#include <string>
#include <string_view>
#include <units/angle.h>
#include <units/force.h>
#include <vector>

namespace caprail {

/// What main caps and blocks are made of, with Young's modulus (Shigley, table A-5, from memory).
struct ClampedMaterial {
    std::string name;
    Stress modulus;
};
const std::vector<ClampedMaterial>& clampedMaterials();
/// The material of that name. Refuses an unknown one with the list of known ones.
Result<ClampedMaterial> findClampedMaterial(std::string_view name);

/// What is known of one joint's dimensions.
struct JointShape {
    Length grip;                         ///< clamped length: from under the nut or head to where the thread holds
    std::optional<Length> shank;         ///< diameter without thread; none: the nominal diameter
    std::optional<Length> threadInGrip;  ///< how much of the grip is threaded; none: one diameter, at most the grip
};

/// Spring rate of the fastener over its grip: shank and thread in series, 1/k = l_d/(A_d·E) + l_t/(A_t·E) (Shigley
/// eq. 8-17). Refuses a grip that is not positive or over 20 diameters, a thread longer than the grip, a shank outside
/// half to one and a half times the nominal diameter.
Result<Stiffness> fastenerStiffness(const Thread& thread, const JointShape& shape, Stress modulus);

/// Spring rate of the clamped parts, all of one material, by the cone of 30° under a washer face of 1.5 diameters:
/// k = 0.5774·π·E·d / (2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d))) (Shigley eq. 8-22). Refuses a grip as above.
Result<Stiffness> clampedStiffness(const Thread& thread, Length grip, Stress modulus);

/// The joint's share C = k_fastener/(k_fastener + k_clamped), between 0 and 1.
struct JointShare {
    double least;
    double most;
};
/// What C usually is (common practice, no source): where the joint's dimensions are not known.
inline constexpr JointShare usualJointShare{0.15, 0.32};

/// What a nut that turned by an angle did.
struct NutTravel {
    Length travel;                       ///< P·θ/360°: the bound of what its face went down
    Length likelyLeast, likelyMost;      ///< C·P·θ/360°
    std::optional<Force> clampGained;    ///< travel·k_f·k_c/(k_f + k_c); none where the stiffnesses are not known
};
/// By the usual share. Refuses what plausibleMovement refuses (movement.h).
Result<NutTravel> nutTravel(const Thread& thread, Angle turned);
/// By these stiffnesses, both of which must be positive.
Result<NutTravel> nutTravel(const Thread& thread, Angle turned, Stiffness fastener, Stiffness clamped);

} // namespace caprail
