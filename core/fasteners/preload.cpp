// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <fasteners/preload.h>
#include <fasteners/text.h>
#include <numbers>
#include <base/say.h>

namespace caprail {

using namespace fastenertext;

namespace {

/// In inches a torque is worked in lbf·in, so that it divides by a diameter in inches; the step is shown.
struct WorkedTorque {
    std::string text;
    std::vector<std::string> steps;
};
std::string workingTorqueText(Torque torque, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inPoundInches(torque), 1, units.decimalMark) + " lbf·in"
                                            : formatNumber(inNewtonMetres(torque), 1, units.decimalMark) + " N·m";
}
WorkedTorque workedTorque(Torque torque, const Units& units) {
    WorkedTorque out{workingTorqueText(torque, units), {}};
    if (const std::string written = format(torque, units); written != out.text) {
        out.steps.push_back("T = " + written + " = " + out.text);
    }
    return out;
}
std::string ratio(double value, const Units& units) {
    return shortNumber(value, 4, units.decimalMark);
}

constexpr double cos30 = std::numbers::sqrt3 / 2.0;

Result<double> checkedNutFactor(double nutFactor) {
    if (!(nutFactor >= 0.03 && nutFactor <= 1.0)) {
        return refuse(Core::say("A nut factor K of %1 is outside 0.03 to 1: steel threads have about 0.1 to 0.3.",
                                shortNumber(nutFactor, 4)));
    }
    return nutFactor;
}

/// The lever P/2π + μt·d2/(2·cos 30°) + μb·rb that turns torque into preload, and how it adds up.
Result<Worked<Length>> longFormLever(const Thread& thread, const JointFriction& friction, const Units& units) {
    for (const double mu : {friction.thread, friction.bearing}) {
        if (!(mu >= 0.01 && mu <= 1.0)) {
            return refuse(
                Core::say("A friction coefficient of %1 is outside 0.01 to 1: steel on steel has about 0.08 to 0.25.",
                          shortNumber(mu, 4)));
        }
    }
    if (friction.bearingRadius <= Length()) {
        return refuse(Core::say("The mean radius of the bearing face must be above zero, not %1.",
                                format(friction.bearingRadius, units)));
    }
    const Length wedge = millimetres(inMillimetres(thread.pitch()) / (2.0 * std::numbers::pi));
    const Length threadArm = millimetres(friction.thread * inMillimetres(thread.pitchDiameter()) / (2.0 * cos30));
    const Length bearingArm = millimetres(friction.bearing * inMillimetres(friction.bearingRadius));
    const Length lever = wedge + threadArm + bearingArm;
    return Worked<Length>{lever,
                          {"P/2π = " + format(thread.pitch(), units) + " / 6.283 = " + format(wedge, units),
                           Core::say("μt·d2/(2·cos 30°) = %1 × %2 / 1.732 = %3", ratio(friction.thread, units),
                                     format(thread.pitchDiameter(), units), format(threadArm, units)),
                           Core::say("μb·rb = %1 × %2 = %3", ratio(friction.bearing, units),
                                     format(friction.bearingRadius, units), format(bearingArm, units)),
                           Core::say("sum = %1", format(lever, units))}};
}

Force forceAt(Torque torque, Length lever) {
    return newtons(inNewtonMetres(torque) / inMillimetres(lever) * 1'000.0);
}

} // namespace

Result<Torque> plausibleTorque(Torque torque, const Units& units) {
    if (torque < smallestPlausibleTorque || torque > largestPlausibleTorque) {
        return refuse(Core::say(
            "A torque of %1 is outside what a fastener here can have (%2 to %3): check the figure and its unit.",
            format(torque, units), format(smallestPlausibleTorque, units), format(largestPlausibleTorque, units)));
    }
    return torque;
}

Result<Force> plausiblePreload(Force preload, const Units& units) {
    if (preload <= Force() || preload > largestPlausiblePreload) {
        return refuse(Core::say(
            "A preload of %1 is outside what a fastener here can have (up to %2): check the figure and its unit.",
            format(preload, units), format(largestPlausiblePreload, units)));
    }
    return preload;
}

Result<Worked<Force>> preloadShortForm(Torque torque, const Thread& thread, double nutFactor, const Units& units) {
    if (const auto checked = plausibleTorque(torque, units); !checked) {
        return tl::unexpected(checked.error());
    }
    if (const auto checked = checkedNutFactor(nutFactor); !checked) {
        return tl::unexpected(checked.error());
    }
    const Force force = newtons(inNewtonMetres(torque) / (nutFactor * inMillimetres(thread.nominal())) * 1'000.0);
    WorkedTorque worked = workedTorque(torque, units);
    worked.steps.push_back("F = T / (K·D) = " + worked.text + " / (" + ratio(nutFactor, units) + " × " +
                           format(thread.nominal(), units) + ") = " + format(force, units));
    return Worked<Force>{force, std::move(worked.steps)};
}

Length usualBearingRadius(const Thread& thread) {
    return millimetres(0.65 * inMillimetres(thread.nominal()));
}

Result<Worked<Force>> preloadLongForm(Torque torque, const Thread& thread, const JointFriction& friction,
                                      const Units& units) {
    if (const auto checked = plausibleTorque(torque, units); !checked) {
        return tl::unexpected(checked.error());
    }
    return longFormLever(thread, friction, units).map([&](Worked<Length> lever) {
        const Force force = forceAt(torque, lever.value);
        WorkedTorque worked = workedTorque(torque, units);
        std::vector<std::string> lines = std::move(lever.working);
        lines.insert(lines.end(), worked.steps.begin(), worked.steps.end());
        lines.push_back(
            Core::say("F = T / sum = %1 / %2 = %3", worked.text, format(lever.value, units), format(force, units)));
        return Worked<Force>{force, std::move(lines)};
    });
}

Result<ThreadStress> threadStress(Force preload, const Thread& thread, double threadFriction, const Units& units) {
    if (const auto checked = plausiblePreload(preload, units); !checked) {
        return tl::unexpected(checked.error());
    }
    if (!(threadFriction >= 0.01 && threadFriction <= 1.0)) {
        return refuse(Core::say("A friction coefficient of %1 is outside 0.01 to 1: steel on steel has about 0.08 to 0.25.",
                                shortNumber(threadFriction, 4)));
    }
    const double area = inSquareMillimetres(thread.stressArea());
    const double diameter = std::sqrt(4.0 * area / std::numbers::pi);
    const double arm = inMillimetres(thread.pitch()) / (2.0 * std::numbers::pi) +
                       threadFriction * inMillimetres(thread.pitchDiameter()) / (2.0 * cos30);
    const Torque inThread = newtonMetres(inNewtons(preload) * arm / 1'000.0);
    const double axial = inNewtons(preload) / area;
    const double torsion = 16.0 * inNewtons(preload) * arm / (std::numbers::pi * std::pow(diameter, 3));
    ThreadStress out{megapascals(axial), megapascals(torsion), megapascals(std::sqrt(axial * axial + 3 * torsion * torsion)),
                     {}};
    out.working = {Core::say("thread torque M = F·(P/2π + μt·d2/(2·cos 30°)) = %1", workingTorqueText(inThread, units)),
                   Core::say("σ = %1, τ = 16·M/(π·ds³) = %2, σe = √(σ² + 3τ²) = %3", format(out.axial, units),
                             format(out.torsion, units), format(out.equivalent, units))};
    return out;
}

Result<Worked<Force>> clampFromTorques(Torque on, Torque off, const Thread& thread, const Units& units) {
    for (const Torque torque : {on, off}) {
        if (const auto checked = plausibleTorque(torque, units); !checked) {
            return tl::unexpected(checked.error());
        }
    }
    if (off >= on) {
        return refuse(Core::say("Loosening took %1 and tightening %2: a fastener that clamps comes loose at less than it was "
                                "tightened with.",
                                format(off, units), format(on, units)));
    }
    const Torque difference = on - off;
    const Force force =
        newtons(std::numbers::pi * inNewtonMetres(difference) * 1'000.0 / inMillimetres(thread.pitch()));
    return Worked<Force>{force,
                         {"F = π·(T_on − T_off)/P = π × " + workingTorqueText(difference, units) + " / " +
                          format(thread.pitch(), units) + " = " + format(force, units)}};
}

} // namespace caprail
