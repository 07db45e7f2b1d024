// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/joint.h>

#include <base/say.h>
#include <base/text.h>
#include <cmath>
#include <fasteners/movement.h>
#include <numbers>

namespace caprail {

namespace {

/// A grip longer than this is no main stud's (common practice, no source).
constexpr double mostDiametersOfGrip = 20.0;

Result<Length> plausibleGrip(const Thread& thread, Length grip) {
    if (grip <= Length() || inMillimetres(grip) > mostDiametersOfGrip * inMillimetres(thread.nominal())) {
        return refuse(Core::say("A grip of %1 cannot be that of a %2: give the length that is clamped, up to %3 diameters.",
                                format(grip, Units{}), thread.name(), static_cast<int>(mostDiametersOfGrip)));
    }
    return grip;
}

NutTravel travelOf(const Thread& thread, Angle turned, const JointShare& share) {
    const Length travel = axialAdvance(thread, turned);
    const auto part = [&](double c) { return Length(toNearest(c * static_cast<double>(travel.value()))); };
    return {travel, part(share.least), part(share.most), {}};
}

} // namespace

const std::vector<ClampedMaterial>& clampedMaterials() {
    static const std::vector<ClampedMaterial> table{{Core::mark("cast iron"), kilopascals(100'000'000)},
                                                    {Core::mark("nodular iron"), kilopascals(169'000'000)},
                                                    {Core::mark("steel"), kilopascals(207'000'000)},
                                                    {Core::mark("aluminium"), kilopascals(71'000'000)}};
    return table;
}

Result<ClampedMaterial> findClampedMaterial(std::string_view name) {
    const std::string wanted = lowered(trimmed(name));
    std::string known;
    for (const ClampedMaterial& material : clampedMaterials()) {
        if (lowered(material.name) == wanted) {
            return material;
        }
        known += (known.empty() ? "" : "; ") + material.name;
    }
    return refuse(Core::say("%1 is not in the list of what a cap is made of: take one of %2.", quotedText(name), known));
}

Result<Stiffness> fastenerStiffness(const Thread& thread, const JointShape& shape, Stress modulus) {
    if (const auto grip = plausibleGrip(thread, shape.grip); !grip) {
        return tl::unexpected(grip.error());
    }
    const Length shank = shape.shank.value_or(thread.nominal());
    const double ratio = inMillimetres(shank) / inMillimetres(thread.nominal());
    if (ratio < 0.5 || ratio > 1.5) {
        return refuse(Core::say("A shank of %1 does not go with a %2: give its diameter where it has no thread.",
                                format(shank, Units{}), thread.name()));
    }
    const Length threaded = shape.threadInGrip.value_or(std::min(thread.nominal(), shape.grip));
    if (threaded < Length() || threaded > shape.grip) {
        return refuse(Core::say("%1 of thread cannot lie within a grip of %2: give the part of the grip that is threaded.",
                                format(threaded, Units{}), format(shape.grip, Units{})));
    }
    const double e = inMegapascals(modulus); // N/mm²
    const double give = inMillimetres(shape.grip - threaded) / (inSquareMillimetres(circleArea(shank)) * e) +
                        inMillimetres(threaded) / (inSquareMillimetres(thread.stressArea()) * e);
    return newtonsPerMillimetre(1.0 / give);
}

Result<Stiffness> clampedStiffness(const Thread& thread, Length grip, Stress modulus) {
    return plausibleGrip(thread, grip).map([&](Length known) {
        const double d = inMillimetres(thread.nominal());
        const double l = inMillimetres(known);
        const double cone = 5.0 * (0.5774 * l + 0.5 * d) / (0.5774 * l + 2.5 * d);
        return newtonsPerMillimetre(0.5774 * std::numbers::pi * inMegapascals(modulus) * d / (2.0 * std::log(cone)));
    });
}

Result<NutTravel> nutTravel(const Thread& thread, Angle turned) {
    return plausibleMovement(turned).map([&](Angle angle) { return travelOf(thread, angle, usualJointShare); });
}

Result<NutTravel> nutTravel(const Thread& thread, Angle turned, Stiffness fastener, Stiffness clamped) {
    if (fastener <= Stiffness() || clamped <= Stiffness()) {
        return refuse(Core::say("The stiffness of a fastener and of what it clamps must be above zero."));
    }
    return plausibleMovement(turned).map([&](Angle angle) {
        const auto kf = static_cast<double>(fastener.value());
        const auto kc = static_cast<double>(clamped.value());
        const double share = kf / (kf + kc);
        NutTravel result = travelOf(thread, angle, {share, share});
        // Newtons per metre times nanometres: 1e-9 N.
        result.clampGained = newtons(static_cast<double>(result.travel.value()) * 1e-9 * kf * kc / (kf + kc));
        return result;
    });
}

} // namespace caprail
