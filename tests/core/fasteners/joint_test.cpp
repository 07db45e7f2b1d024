// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/joint.h>
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

Thread stud() {
    return *parseThread("7/16-20");
}

} // namespace

TEST(Joint, lets_a_nut_press_down_only_part_of_what_it_travels) {
    // 7/16-20 by 5°: 0.05 in × 5/360 = 0.000694 in; by 0.15 to 0.32 of it (common practice, no source).
    const auto travel = nutTravel(stud(), degrees(5));
    ASSERT_TRUE(travel);
    EXPECT_NEAR(inThou(travel->travel), 0.694, 0.001);
    EXPECT_NEAR(inThou(travel->likelyLeast), 0.104, 0.001);
    EXPECT_NEAR(inThou(travel->likelyMost), 0.222, 0.001);
    EXPECT_FALSE(travel->clampGained) << "of a joint that nobody measured nobody knows the clamp";
    EXPECT_THAT(sentenceOf(nutTravel(stud(), Angle())), IsOneSentence());
}

TEST(Joint, is_softer_with_a_thin_shank_and_stiffer_with_a_short_grip) {
    const auto plain = fastenerStiffness(stud(), {inches(3), {}, inches(0)}, steelModulus);
    const auto thin = fastenerStiffness(stud(), {inches(3), inches(0.39), inches(0)}, steelModulus);
    const auto brief = fastenerStiffness(stud(), {inches(1.5), {}, inches(0)}, steelModulus);
    ASSERT_TRUE(plain && thin && brief);
    EXPECT_LT(*thin, *plain);
    EXPECT_NEAR(static_cast<double>(brief->value()), 2.0 * static_cast<double>(plain->value()), 2.0);
    // By hand: A = π/4·11.1125² = 96.987 mm², E = 205 000 N/mm², L = 76.2 mm: 260 927 N/mm.
    EXPECT_NEAR(static_cast<double>(plain->value()) / 1000.0, 260'927, 15);
}

TEST(Joint, refuses_dimensions_that_no_main_stud_has) {
    EXPECT_THAT(sentenceOf(fastenerStiffness(stud(), {Length(), {}, {}}, steelModulus)), IsOneSentence());
    EXPECT_THAT(sentenceOf(fastenerStiffness(stud(), {inches(12), {}, {}}, steelModulus)), HasSubstr("20 diameters"));
    EXPECT_THAT(sentenceOf(fastenerStiffness(stud(), {inches(3), inches(1), {}}, steelModulus)), HasSubstr("shank"));
    EXPECT_THAT(sentenceOf(fastenerStiffness(stud(), {inches(3), {}, inches(4)}, steelModulus)), HasSubstr("thread"));
    EXPECT_THAT(sentenceOf(clampedStiffness(stud(), inches(-1), steelModulus)), IsOneSentence());
    EXPECT_THAT(sentenceOf(nutTravel(stud(), degrees(5), Stiffness(), Stiffness(1))), IsOneSentence());
    EXPECT_THAT(sentenceOf(findClampedMaterial("cheese")), HasSubstr("cast iron"));
}

TEST(ThreadStress, of_the_usual_main_stud_is_a_fifth_higher_with_its_torsion) {
    // 7/16-20 at 70 lbf·ft, K 0.18, μ 0.135. By hand: F = 840/(0.18·0.4375) = 10 667 lbf on 0.1187 in²: 89.9 ksi;
    // P/2π + μ·d2/(2·cos 30°) = 0.00796 + 0.03157 = 0.03953 in, d_s = 0.3888 in: τ = 16·421.6/(π·0.05876) = 36.5 ksi.
    const auto stress = threadStress(poundsForce(10'667), stud(), 0.135, Units{});
    ASSERT_TRUE(stress);
    EXPECT_NEAR(inPsi(stress->axial), 89'900, 100);
    EXPECT_NEAR(inPsi(stress->torsion), 36'500, 100);
    EXPECT_NEAR(inPsi(stress->equivalent), 109'900, 150);
    EXPECT_NEAR(stress->factor(), 1.223, 0.002);
    EXPECT_THAT(sentenceOf(threadStress(poundsForce(10'667), stud(), 3, Units{})), IsOneSentence());
    EXPECT_THAT(sentenceOf(threadStress(Force(), stud(), 0.135, Units{})), IsOneSentence());
}

TEST(ClampFromTorques, needs_it_to_come_loose_at_less_than_it_was_tightened_with) {
    EXPECT_THAT(sentenceOf(clampFromTorques(poundFeet(70), poundFeet(70), stud(), Units{})), IsOneSentence());
    EXPECT_THAT(sentenceOf(clampFromTorques(Torque(), poundFeet(1), stud(), Units{})), IsOneSentence());
    // By hand: π·(840 − 600)/0.05 = 15 080 lbf.
    const auto clamp = clampFromTorques(poundFeet(70), poundFeet(50), stud(), Units{});
    ASSERT_TRUE(clamp);
    EXPECT_NEAR(inPoundsForce(clamp->value), 15'080, 2);
    ASSERT_EQ(clamp->working.size(), 1U);
    EXPECT_THAT(clamp->working.front(), HasSubstr("240.0 lbf·in"));
}
