// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/oil.h>

#include <array>
#include <base/say.h>
#include <cmath>

namespace caprail {

namespace {

constexpr std::array<OilGrade, 6> grades{{{"5W-30", 64, 11.0},
                                          {"10W-30", 70, 10.7},
                                          {"10W-40", 95, 14.5},
                                          {"15W-40", 110, 14.8},
                                          {"20W-50", 165, 18.5},
                                          {"SAE 30", 95, 11.0}}};

double kelvin(Temperature t) {
    return inCelsius(t) + 273.15;
}
double twiceLog(double viscosity) {
    return std::log10(std::log10(viscosity + 0.7));
}
bool isOilTemperature(Temperature t) {
    return celsius(-40) <= t && t <= celsius(200);
}

} // namespace

std::span<const OilGrade> commonGrades() {
    return grades;
}

Result<double> kinematicViscosity(const Oil& oil, Temperature at) {
    const bool isInOrder = oil.first.at < oil.second.at;
    const ViscosityPoint& cold = isInOrder ? oil.first : oil.second;
    const ViscosityPoint& hot = isInOrder ? oil.second : oil.first;
    for (const ViscosityPoint& point : {cold, hot}) {
        if (!(point.squareMillimetresPerSecond >= 2 && point.squareMillimetresPerSecond <= 20'000)) {
            return refuse(Core::say("An engine oil has between 2 and 20 000 mm²/s: copy its viscosity at 40 °C and at "
                                    "100 °C from its data sheet."));
        }
    }
    if (!isOilTemperature(at) || !isOilTemperature(cold.at) || !isOilTemperature(hot.at)) {
        return refuse(Core::say("An oil's temperature lies between −40 °C and 200 °C: look at what was entered."));
    }
    if (cold.at == hot.at || cold.squareMillimetresPerSecond <= hot.squareMillimetresPerSecond) {
        return refuse(Core::say("An oil must be thinner at the hotter of two temperatures: copy both points from its "
                                "data sheet again."));
    }
    const double coldLog = twiceLog(cold.squareMillimetresPerSecond);
    const double slope = (coldLog - twiceLog(hot.squareMillimetresPerSecond)) /
                         (std::log10(kelvin(hot.at)) - std::log10(kelvin(cold.at)));
    const double here = coldLog - slope * (std::log10(kelvin(at)) - std::log10(kelvin(cold.at)));
    return std::pow(10, std::pow(10, here)) - 0.7;
}

Result<double> dynamicViscosity(const Oil& oil, Temperature at) {
    return kinematicViscosity(oil, at).map([&](double kinematic) {
        const double density = oil.density15 - 0.65 * (inCelsius(at) - 15);
        return kinematic * density / 1000;
    });
}

} // namespace caprail
