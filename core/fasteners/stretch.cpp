// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/stretch.h>
#include <fasteners/text.h>
#include <base/say.h>

namespace caprail {

using namespace fastenertext;

namespace {

constexpr Length smallestDiameter = millimetres(1);
constexpr Length largestDiameter = millimetres(100);
constexpr Length largestLength = millimetres(1'000);

std::string bothUnits(Length l) {
    return format(l, LengthUnit::inch) + " (" + format(l, LengthUnit::millimetre) + ")";
}

Result<Length> checkedLength(Length length) {
    if (length <= Length() || length > largestLength) {
        return refuse(Core::say(
            "A section of %1 is not part of a fastener here: give a length of more than nothing and up to %2.",
            bothUnits(length), bothUnits(largestLength)));
    }
    return length;
}

/// Σ Lᵢ/Aᵢ in 1/mm.
double slenderness(const std::vector<BoltSection>& sections) {
    double sum = 0;
    for (const BoltSection& section : sections) {
        sum += inMillimetres(section.length()) / inSquareMillimetres(section.area());
    }
    return sum;
}

Result<Length> totalLength(const std::vector<BoltSection>& sections, Stress modulus) {
    if (sections.empty()) {
        return refuse(
            Core::say("The stretch needs at least one section of the fastener: give its length and diameter."));
    }
    if (const auto checked = plausibleModulus(modulus); !checked) {
        return tl::unexpected(checked.error());
    }
    Length total;
    for (const BoltSection& section : sections) {
        total += section.length();
    }
    return total;
}

std::string modulusText(Stress modulus, const Units& units) {
    return units.length == LengthUnit::inch ? formatNumber(inPsi(modulus) / 1e6, 2, units.decimalMark) + " million psi"
                                            : formatNumber(inMegapascals(modulus) / 1e3, 1, units.decimalMark) + " GPa";
}

Length elongation(Force force, const BoltSection& section, Stress modulus) {
    return millimetres(inNewtons(force) * inMillimetres(section.length()) /
                       (inSquareMillimetres(section.area()) * inMegapascals(modulus)));
}

} // namespace

Result<BoltSection> BoltSection::shank(Length length, Length diameter) {
    if (diameter < smallestDiameter || diameter > largestDiameter) {
        return refuse(Core::say("A shank of %1 diameter is outside %2 to %3: check the figure and its unit.",
                                bothUnits(diameter), bothUnits(smallestDiameter), bothUnits(largestDiameter)));
    }
    return checkedLength(length).map(
        [&](Length checked) { return BoltSection(checked, circleArea(diameter), diameter, "shank"); });
}

Result<BoltSection> BoltSection::threaded(Length length, const Thread& thread) {
    return checkedLength(length).map([&](Length checked) {
        return BoltSection(checked, thread.stressArea(), Length(), Core::say("thread %1", thread.name()));
    });
}

std::string BoltSection::what(const Units& units) const {
    return m_diameter == Length() ? m_what : m_what + " " + format(m_diameter, units);
}

Result<Worked<Length>> stretchUnder(Force force, const std::vector<BoltSection>& sections, Stress modulus,
                                    const Units& units) {
    if (const auto checked = plausiblePreload(force, units); !checked) {
        return tl::unexpected(checked.error());
    }
    if (const auto total = totalLength(sections, modulus); !total) {
        return tl::unexpected(total.error());
    }
    Worked<Length> out{millimetres(inNewtons(force) * slenderness(sections) / inMegapascals(modulus)), {}};
    for (const BoltSection& section : sections) {
        out.working.push_back(
            section.what(units) + ": F·L/(A·E) = " + format(force, units) + " × " + format(section.length(), units) +
            " / (" + areaText(section.area(), units) + " × " + modulusText(modulus, units) +
            ") = " + formatSpread(static_cast<double>(elongation(force, section, modulus).value()), units));
    }
    out.working.push_back(Core::say("stretch = %1", format(out.value, units)));
    return out;
}

Result<Worked<Force>> forceFromStretch(Length stretch, const std::vector<BoltSection>& sections, Stress modulus,
                                       const Units& units) {
    if (stretch <= Length()) {
        return refuse(Core::say("A stretch must be more than nothing, and %1 was given.", format(stretch, units)));
    }
    const auto total = totalLength(sections, modulus);
    if (!total) {
        return tl::unexpected(total.error());
    }
    if (stretch * 50 > *total) {
        return refuse(
            Core::say("A stretch of %1 on a length of %2 is more than a bolt can take: check the figure and its unit.",
                      format(stretch, units), format(*total, units)));
    }
    const double perForce = slenderness(sections) / inMegapascals(modulus); // mm per N
    Worked<Force> out{newtons(inMillimetres(stretch) / perForce), {}};
    std::string sum;
    for (const BoltSection& section : sections) {
        sum += (sum.empty() ? "" : " + ") + format(section.length(), units) + " / " + areaText(section.area(), units);
    }
    out.working = {"Σ L/A = " + sum, "F = δ·E / Σ(L/A) = " + format(stretch, units) + " × " +
                                         modulusText(modulus, units) + " / Σ = " + format(out.value, units)};
    return out;
}

} // namespace caprail
