// SPDX-License-Identifier: GPL-3.0-or-later
// Source: Budynas, Nisbett, «Shigley's Mechanical Engineering Design», 9th edition, example 8-3 (page 439): a 3/4-16 bolt
// of SAE grade 5, F 25 kip, k_b 6.50 and k_m 13.8 Mlbf/in. Seen there: the stiffnesses, A_t 0.373 in², 67.02 kpsi, C 0.320.
// Example 8-4 (5/8-11, grip 1.5 in, cast iron no. 25: k_b 5.21, k_m 8.95 Mlbf/in) is from memory.
#include <fasteners/joint.h>
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

const Stiffness bolt = millionPoundsPerInch(6.50);
const Stiffness parts = millionPoundsPerInch(13.8);

Thread threeQuarter() {
    return *parseThread("3/4-16");
}

} // namespace

TEST(Shigley, example_8_3_has_a_joint_share_of_0_320) {
    const auto travel = nutTravel(threeQuarter(), degrees(5), bolt, parts);
    ASSERT_TRUE(travel);
    EXPECT_NEAR(inInches(travel->likelyMost) / inInches(travel->travel), 0.320, 0.0005);
    EXPECT_EQ(travel->likelyLeast, travel->likelyMost);
}

TEST(Shigley, example_8_3_turned_by_five_degrees_goes_down_by_a_third_of_its_travel_and_clamps_more) {
    // 16 threads an inch: 0.0625·5/360 = 0.000868 in; × 0.320 = 0.000278 in; × 6.5·13.8/20.3 Mlbf/in = 3 836 lbf.
    const auto travel = nutTravel(threeQuarter(), degrees(5), bolt, parts);
    ASSERT_TRUE(travel && travel->clampGained);
    EXPECT_NEAR(inInches(travel->travel), 0.00087, 0.000005);
    EXPECT_NEAR(inInches(travel->likelyMost), 0.00028, 0.000005);
    EXPECT_NEAR(inPoundsForce(*travel->clampGained), 3'836, 1);
}

TEST(Shigley, example_8_3_has_its_preload_stress) {
    const auto stress = threadStress(poundsForce(25'000), threeQuarter(), 0.15, Units{});
    ASSERT_TRUE(stress);
    EXPECT_NEAR(inPsi(stress->axial), 67'020, 70) << "the book rounds the area to 0.373 in²";
}

TEST(Shigley, example_8_3_comes_loose_at_497_pound_inches_less_than_it_was_tightened_with) {
    // T_on − T_off = F·P/π = 25 000·0.0625/π (statics of the thread; the book gives the force alone).
    const auto clamp =
        clampFromTorques(poundInches(3551), poundInches(3551 - 497.36), threeQuarter(), Units{});
    ASSERT_TRUE(clamp);
    EXPECT_NEAR(inPoundsForce(clamp->value), 25'000, 5);
}

TEST(Shigley, example_8_4_has_the_stiffnesses_of_bolt_and_parts) {
    const Thread thread = *parseThread("5/8-11");
    const auto own = fastenerStiffness(thread, {inches(1.5), {}, inches(0.75)}, psi(30e6));
    const auto clamped = clampedStiffness(thread, inches(1.5), psi(14e6));
    ASSERT_TRUE(own && clamped);
    EXPECT_NEAR(inMillionPoundsPerInch(*own), 5.21, 0.01);
    EXPECT_NEAR(inMillionPoundsPerInch(*clamped), 8.95, 0.02);
}
