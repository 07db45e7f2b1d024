// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/turning.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

constexpr TurningTorque before{poundFeet(12), poundFeet(8)};

TurningJudgement judgedRise(double breakaway, double running) {
    return judgeTurning(before, {poundFeet(breakaway), poundFeet(running)}, usualTurningRise(), {}).value();
}

} // namespace

TEST(TurningTorque, is_judged_by_the_larger_of_both_rises) {
    EXPECT_TRUE(judgedRise(14, 8).isGood) << "2 lbf·ft is allowed, and no more";
    EXPECT_FALSE(judgedRise(14.1, 8).isGood);
    EXPECT_FALSE(judgedRise(12, 10.1).isGood) << "it starts as before and drags on the way";
    EXPECT_EQ(judgedRise(13, 9.5).rise, poundFeet(9.5) - poundFeet(8));
}

TEST(TurningTorque, a_crank_that_turns_easier_than_before_is_good) {
    EXPECT_TRUE(judgedRise(11, 7).isGood);
    EXPECT_NE(judgedRise(11, 7).sentence.find("no harder than before"), std::string::npos);
}

TEST(TurningTorque, refuses_what_is_below_zero) {
    EXPECT_FALSE(judgeTurning(before, {poundFeet(-1), poundFeet(-2)}, usualTurningRise(), {}));
    EXPECT_FALSE(judgeTurning(before, before, poundFeet(-1), {}));
}
