// SPDX-License-Identifier: GPL-3.0-or-later
/// NIST Special Publication 811 (2008), Guide for the Use of the International System of Units (SI), appendix B.8,
/// conversion factors listed alphabetically. From memory, to the digits published there.
#include <cmath>
#include <gmock/gmock.h>
#include <units/angle.h>
#include <units/force.h>
#include <units/length.h>
#include <units/torque.h>

using namespace caprail;

namespace {

/// Rounded to so many significant digits, as a table prints it.
double rounded(double x, int digits) {
    const double scale = std::pow(10.0, digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(x)))));
    return std::round(x * scale) / scale;
}

} // namespace

TEST(NistSp811, inch_is_25_4_millimetres_exactly) {
    EXPECT_EQ(inches(1), millimetres(25.4));
    EXPECT_EQ(inches(1).value(), 25'400'000);
    EXPECT_EQ(thou(1), microns(25) + nanometres(400));
    EXPECT_EQ(tenths(10'000), inches(1));
}

TEST(NistSp811, pound_force_foot) {
    EXPECT_DOUBLE_EQ(rounded(newtonMetresPerPoundFoot, 7), 1.355818);
    EXPECT_EQ(poundFeet(1'000), newtonMetres(1'355.818));
}

TEST(NistSp811, pound_force_inch) {
    EXPECT_DOUBLE_EQ(rounded(newtonMetresPerPoundInch, 7), 0.1129848);
    EXPECT_EQ(poundInches(1'000), newtonMetres(112.985));
    EXPECT_EQ(poundInches(12'000), poundFeet(1'000));
}

TEST(NistSp811, pound_force_per_square_inch) {
    EXPECT_DOUBLE_EQ(rounded(pascalsPerPsi, 7), 6894.757);
    EXPECT_EQ(psi(1'000'000), kilopascals(6'894'757));
}

TEST(NistSp811, pound_force) {
    EXPECT_DOUBLE_EQ(rounded(newtonsPerPoundForce, 7), 4.448222);
    EXPECT_EQ(poundsForce(1'000), newtons(4'448.222));
}

TEST(NistSp811, degree_fahrenheit) {
    // t/°C = (t/°F − 32)/1.8
    EXPECT_EQ(fahrenheit(212), celsius(100));
    EXPECT_EQ(fahrenheit(68), celsius(20));
    EXPECT_EQ(fahrenheit(-40), celsius(-40));
}
