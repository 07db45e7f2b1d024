// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/turning.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

constexpr TurningTorque before{poundFeet(12), poundFeet(8)};

TurningJudgement judgedRise(double breakaway, double running) {
    return judgeTurning(before, {poundFeet(breakaway), poundFeet(running)}, {usualTurningRise()}, {}).value();
}

} // namespace

TEST(TurningTorque, is_judged_by_the_larger_of_both_rises) {
    EXPECT_EQ(judgedRise(13.9, 8).verdict, Verdict::in) << "2 lbf·ft is allowed";
    EXPECT_EQ(judgedRise(14.2, 8).verdict, Verdict::out);
    EXPECT_EQ(judgedRise(12, 10.2).verdict, Verdict::out) << "it starts as before and drags on the way";
    EXPECT_EQ(judgedRise(13, 9.5).rise, poundFeet(9.5) - poundFeet(8));
}

// ISO 6789-1:2017: ±4 % of the reading (from memory). Worked by hand: the rise of 2 lbf·ft is known to ±0.08, rectangular,
// so U = 2 · 0.08 / √3 = 0.092 lbf·ft; with two wrenches to ±√(0.48² + 0.56²) = ±0.738, so U = 0.852.
TEST(TurningTorque, counts_what_the_wrench_may_be_off_by) {
    EXPECT_EQ(judgedRise(14, 8).verdict, Verdict::tooCloseToCall);
    EXPECT_NEAR(inPoundFeet(judgedRise(14, 8).expandedUncertainty), 0.0924, 0.001);
    const TurningTorque now{poundFeet(14), poundFeet(8)};
    const TurningLimit twoWrenches{poundFeet(2.8), false, DecisionRule::guarded};
    const auto judged = judgeTurning(before, now, twoWrenches, {}).value();
    EXPECT_NEAR(inPoundFeet(judged.expandedUncertainty), 0.852, 0.001);
    EXPECT_EQ(judged.verdict, Verdict::tooCloseToCall);
    EXPECT_EQ(judgeTurning(before, now, {poundFeet(2.9), false, DecisionRule::guarded}, {})->verdict, Verdict::in);
    EXPECT_EQ(judgeTurning(before, now, {poundFeet(2), true, DecisionRule::simple}, {})->verdict, Verdict::in);
    EXPECT_EQ(wrenchError(newtonMetres(10)), 0.06);
    EXPECT_EQ(wrenchError(newtonMetres(10.1)), 0.04);
}

TEST(TurningTorque, a_crank_that_turns_easier_than_before_is_good) {
    EXPECT_EQ(judgedRise(11, 7).verdict, Verdict::in);
    EXPECT_NE(judgedRise(11, 7).sentence.find("no harder than before"), std::string::npos);
}

TEST(TurningTorque, refuses_what_is_below_zero) {
    EXPECT_FALSE(judgeTurning(before, {poundFeet(-1), poundFeet(-2)}, {usualTurningRise()}, {}));
    EXPECT_FALSE(judgeTurning(before, before, {poundFeet(-1)}, {}));
}
