// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <bearings/expansion.h>
#include <string>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::string_view callister =
    "Callister & Rethwisch, Fundamentals of Materials Science and Engineering, 3rd edition, Appendix B, table B.6";

constexpr std::array<MaterialExpansion, 7> materials{{
    {Core::mark("grey cast iron"), millionthsPerKelvin(11.4), callister},
    {Core::mark("ductile iron 60-40-18"), millionthsPerKelvin(11.2), callister},
    {Core::mark("ductile iron 80-55-06"), millionthsPerKelvin(10.6), callister},
    {Core::mark("aluminium alloy 356.0"), millionthsPerKelvin(21.5), callister},
    {Core::mark("steel 1040"), millionthsPerKelvin(11.3), callister},
    {Core::mark("steel 4140"), millionthsPerKelvin(12.3), callister},
    {Core::mark("steel 4340"), millionthsPerKelvin(12.3), callister},
}};

constexpr Temperature coldest = celsius(-60);
constexpr Temperature hottest = celsius(300);
constexpr Expansion largestExpansion = millionthsPerKelvin(100);

bool isPlausible(Temperature t) {
    return coldest <= t && t <= hottest;
}

bool isPlausible(Expansion e) {
    return Expansion() <= e && e <= largestExpansion;
}

} // namespace

std::span<const MaterialExpansion> knownExpansions() {
    return materials;
}

Result<Length> clearanceAt(Length clearance, Length journal, const Warming& warming) {
    if (journal <= Length()) {
        return refuse(Core::say("The journal's diameter must be above zero: measure it first."));
    }
    if (!isPlausible(warming.block) || !isPlausible(warming.crank)) {
        return refuse(Core::say("A coefficient of expansion lies between 0 and 100 millionths per kelvin: enter 11.4 "
                                "for grey cast iron, for example."));
    }
    if (!isPlausible(warming.measuredAt) || !isPlausible(warming.blockNow) || !isPlausible(warming.crankNow)) {
        return refuse(
            Core::say("A temperature of block or crank lies between −60 °C and 300 °C: look at what was entered."));
    }
    // Coefficients in 1e-9 1/K times temperatures in 1e-3 K.
    const auto growth = [&](Expansion coefficient, Temperature now) {
        return static_cast<double>(coefficient.value()) * static_cast<double>((now - warming.measuredAt).value()) *
               1e-12;
    };
    const double difference = growth(warming.block, warming.blockNow) - growth(warming.crank, warming.crankNow);
    return clearance + Length(toNearest(static_cast<double>(journal.value()) * difference));
}

} // namespace caprail
