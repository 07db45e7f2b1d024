// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/expansion.h>
#include <gmock/gmock.h>

using namespace caprail;

namespace {

Warming aluminiumBlock(double block, double crank) {
    return {millionthsPerKelvin(21.5), millionthsPerKelvin(12.3), celsius(20), celsius(block), celsius(crank), {}};
}

} // namespace

TEST(ClearanceWhenWarm, does_not_change_at_the_temperature_of_measuring) {
    EXPECT_EQ(clearanceAt(tenths(25), inches(2.5), aluminiumBlock(20, 20)), tenths(25));
}

TEST(ClearanceWhenWarm, opens_when_the_block_grows_more_than_the_crank) {
    // c + D·(α_block − α_crank)·ΔT: 63.5 mm · 9.2e-6 · 70 K = 40 894 nm.
    EXPECT_EQ(clearanceAt(Length(), millimetres(63.5), aluminiumBlock(90, 90)), nanometres(40'894));
}

TEST(ClearanceWhenWarm, closes_when_the_crank_is_hotter) {
    // 63.5 mm · (21.5e-6 · 70 K − 12.3e-6 · 130 K) = −5 969 nm.
    EXPECT_EQ(clearanceAt(Length(), millimetres(63.5), aluminiumBlock(90, 150)), nanometres(-5'969));
}

TEST(ClearanceWhenWarm, counts_the_shells_which_grow_less_than_an_aluminium_block) {
    // 2.75 in journal, 0.0938 in shells, aluminium block, 68 to 200 °F: 0.00379 in where the short form says 0.00366.
    Warming warming{millionthsPerKelvin(21.5), millionthsPerKelvin(12.3), fahrenheit(68), fahrenheit(200),
                    fahrenheit(200), {}};
    const Length cold = tenths(18);
    EXPECT_NEAR(inInches(*clearanceAt(cold, inches(2.75), warming)), 0.00366, 0.00001);
    warming.shells = WarmShells{inches(2 * 0.0938), millionthsPerKelvin(11.3)};
    EXPECT_NEAR(inInches(*clearanceAt(cold, inches(2.75), warming)), 0.00379, 0.00001);
    warming.shells->both = -tenths(1);
    EXPECT_FALSE(clearanceAt(cold, inches(2.75), warming));
}

TEST(ClearanceWhenWarm, refuses_what_no_engine_has) {
    EXPECT_FALSE(clearanceAt(tenths(25), Length(), aluminiumBlock(90, 90)));
    EXPECT_FALSE(clearanceAt(tenths(25), inches(2.5), aluminiumBlock(900, 90)));
    EXPECT_FALSE(clearanceAt(tenths(25), inches(2.5), aluminiumBlock(90, -100)));
    Warming wrong = aluminiumBlock(90, 90);
    wrong.crank = millionthsPerKelvin(-1);
    EXPECT_FALSE(clearanceAt(tenths(25), inches(2.5), wrong));
    wrong.crank = millionthsPerKelvin(11'400);
    EXPECT_FALSE(clearanceAt(tenths(25), inches(2.5), wrong));
}

TEST(KnownExpansions, each_name_their_source) {
    ASSERT_FALSE(knownExpansions().empty());
    for (const MaterialExpansion& m : knownExpansions()) {
        EXPECT_FALSE(m.material.empty());
        EXPECT_FALSE(m.source.empty()) << m.material;
        EXPECT_GT(inMillionthsPerKelvin(m.coefficient), 5) << m.material;
        EXPECT_LT(inMillionthsPerKelvin(m.coefficient), 30) << m.material;
    }
}
