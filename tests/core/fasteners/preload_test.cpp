// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

const Units inPounds{};
const Units metricUnits{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};

Thread studThread() {
    return *parseThread("7/16-20");
}

} // namespace

TEST(Preload, shows_its_working_in_the_units_of_the_shop) {
    const auto metric = preloadShortForm(newtonMetres(101.7), studThread(), 0.2, metricUnits);
    ASSERT_TRUE(metric);
    EXPECT_THAT(metric->working, ElementsAre("F = T / (K·D) = 101.7 N·m / (0.2 × 11.113 mm) = 45.8 kN"));
    const auto inch = preloadShortForm(poundFeet(75), studThread(), 0.2, inPounds);
    ASSERT_TRUE(inch);
    EXPECT_THAT(inch->working, ElementsAre("T = 75.0 lbf·ft = 900.0 lbf·in",
                                           "F = T / (K·D) = 900.0 lbf·in / (0.2 × 0.4375 in) = 10286 lbf"));
}

TEST(Preload, uses_the_decimal_mark_of_the_shop) {
    const auto worked = preloadShortForm(newtonMetres(101.7), studThread(), 0.15,
                                         Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','});
    EXPECT_EQ(worked->working.front(), "F = T / (K·D) = 101,7 N·m / (0,15 × 11,113 mm) = 61,0 kN");
}

TEST(Preload, of_the_long_form_shows_each_part_of_the_lever) {
    const auto worked =
        preloadLongForm(newtonMetres(50.7), *parseThread("M10x1.25"), {0.12, 0.12, millimetres(6.4)}, metricUnits);
    ASSERT_TRUE(worked);
    EXPECT_THAT(worked->working, ElementsAre("P/2π = 1.250 mm / 6.283 = 0.199 mm",
                                             "μt·d2/(2·cos 30°) = 0.12 × 9.188 mm / 1.732 = 0.637 mm",
                                             "μb·rb = 0.12 × 6.400 mm = 0.768 mm", "sum = 1.604 mm",
                                             "F = T / sum = 50.7 N·m / 1.604 mm = 31.6 kN"));
}

TEST(Preload, refuses_a_negative_or_absurd_torque_in_one_sentence) {
    for (const double pounds : {-5.0, 0.0, 0.01, 5'000.0}) {
        EXPECT_THAT(sentenceOf(preloadShortForm(poundFeet(pounds), studThread(), 0.2, inPounds)),
                    testing::AllOf(IsOneSentence(), HasSubstr("outside")))
            << pounds;
    }
    EXPECT_THAT(sentenceOf(plausibleTorque(poundFeet(-5), inPounds)), HasSubstr("−5.0 lbf·ft"));
}

TEST(Preload, refuses_friction_that_no_fastener_has) {
    for (const double k : {-0.2, 0.0, 0.01, 2.0, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_THAT(sentenceOf(preloadShortForm(poundFeet(75), studThread(), k, inPounds)), IsOneSentence()) << k;
    }
    EXPECT_THAT(sentenceOf(preloadLongForm(poundFeet(75), studThread(), {0.0, 0.1, inches(0.3)}, inPounds)),
                IsOneSentence());
    EXPECT_THAT(sentenceOf(preloadLongForm(poundFeet(75), studThread(), {0.1, 1.5, inches(0.3)}, inPounds)),
                IsOneSentence());
    EXPECT_THAT(sentenceOf(preloadLongForm(poundFeet(75), studThread(), {0.1, 0.1, Length()}, inPounds)),
                HasSubstr("mean radius"));
}

TEST(Preload, takes_a_usual_bearing_radius_where_none_was_measured) {
    EXPECT_EQ(usualBearingRadius(*parseThread("M10")), millimetres(6.5));
}

TEST(ProofShare, is_a_range_with_the_scatter_of_torque_control) {
    // 7/16-20 grade 8: 120 000 psi × 0.1187 in² = 14 244 lbf; 10 286 lbf of it is 72 %, ±30 % of that 51 to 94 %.
    const auto share =
        shareOfProof(poundsForce(10'286), studThread(), Grade::of(StandardGrade::sae8), usualScatter, inPounds);
    ASSERT_TRUE(share);
    EXPECT_NEAR(inPoundsForce(share->proofLoad), 14'244, 10);
    EXPECT_NEAR(share->nominal, 0.722, 0.002);
    EXPECT_NEAR(share->low, 0.505, 0.002);
    EXPECT_NEAR(share->high, 0.939, 0.002);
    ASSERT_EQ(share->working.size(), 3U);
    EXPECT_EQ(share->working.back(), "with a scatter of ±30 %: 51 % at the higher friction to 94 % at the lower");
}

TEST(ProofShare, refuses_an_absurd_scatter_and_a_size_without_proof_stress) {
    const Grade eight = Grade::of(StandardGrade::sae8);
    EXPECT_THAT(sentenceOf(shareOfProof(poundsForce(9'000), studThread(), eight, 1.5, inPounds)), IsOneSentence());
    EXPECT_THAT(sentenceOf(shareOfProof(poundsForce(9'000), studThread(), eight, -0.1, inPounds)), IsOneSentence());
    EXPECT_THAT(sentenceOf(shareOfProof(Force(), studThread(), eight, 0.3, inPounds)), IsOneSentence());
    EXPECT_THAT(sentenceOf(shareOfProof(newtons(9e9), studThread(), eight, 0.3, inPounds)), IsOneSentence());
    EXPECT_THAT(sentenceOf(shareOfProof(poundsForce(900), *parseThread("#8-32"), eight, 0.3, inPounds)),
                HasSubstr("#8-32"));
}

namespace {

std::vector<TorqueWarning> warningsAt(Torque torque) {
    const auto judged = judgeTorque(torque, studThread(), Grade::of(StandardGrade::sae8), 0.2, 0.155, usualScatter, inPounds);
    EXPECT_TRUE(judged);
    return judged ? judged->warnings : std::vector<TorqueWarning>();
}

} // namespace

TEST(TorqueWarning, is_absent_where_the_torque_keeps_below_ninety_percent) {
    EXPECT_TRUE(warningsAt(poundFeet(55)).empty());
    EXPECT_EQ(warningsAt(poundFeet(60)).size(), 1U) << "75 % by its clamp alone, and over 90 % with the torsion";
}

TEST(TorqueWarning, says_when_ninety_percent_of_proof_is_passed_at_the_lower_friction) {
    const auto warnings = warningsAt(poundFeet(75));
    ASSERT_EQ(warnings.size(), 1U);
    EXPECT_EQ(warnings[0].kind, TorqueWarningKind::passesNinetyPercentOfProof);
    EXPECT_THAT(warnings[0].sentence, testing::AllOf(IsOneSentence(), HasSubstr("torsion of tightening 119 %")));
}

TEST(TorqueWarning, says_when_inch_pounds_were_entered_as_foot_pounds_and_the_other_way) {
    const auto large = warningsAt(poundFeet(900));
    ASSERT_EQ(large.size(), 1U);
    EXPECT_EQ(large[0].kind, TorqueWarningKind::looksTwelveTimesTooLarge);
    EXPECT_THAT(large[0].sentence, HasSubstr("As lbf·in it would be 72 %"));
    const auto small = warningsAt(poundInches(75));
    ASSERT_EQ(small.size(), 1U);
    EXPECT_EQ(small[0].kind, TorqueWarningKind::looksTwelveTimesTooSmall);
    EXPECT_THAT(small[0].sentence, HasSubstr("As lbf·ft it would be 72 %"));
}

// By hand: 0.7854·(0.4375 − 0.9743/20)² = 0.118716 in²; 120 000 psi · 0.118716 in² = 14 245.9 lbf; 720/(0.2·0.4375) =
// 8228.6 lbf; 8228.6/14 245.9 = 57.8 %, ·0.7 = 40.4 %, ·1.3 = 75.1 %.
TEST(TorqueJudgement, shows_the_whole_way_from_torque_to_share_of_proof) {
    const auto judged =
        judgeTorque(poundFeet(60), studThread(), Grade::of(StandardGrade::sae8), 0.2, 0.155, usualScatter, inPounds);
    ASSERT_TRUE(judged);
    EXPECT_THAT(judged->working,
                ElementsAre("T = 60.0 lbf·ft = 720.0 lbf·in",
                            "F = T / (K·D) = 720.0 lbf·in / (0.2 × 0.4375 in) = 8229 lbf",
                            "proof load = 120000 psi × 0.1187 in² = 14246 lbf (SAE J429 grade 8, 7/16-20)",
                            "share of proof = 8229 lbf / 14246 lbf = 58 %",
                            "with a scatter of ±30 %: 40 % at the higher friction to 75 % at the lower",
                            "thread torque M = F·(P/2π + μt·d2/(2·cos 30°)) = 363.7 lbf·in",
                            "σ = 69313 psi, τ = 16·M/(π·ds³) = 31522 psi, σe = √(σ² + 3τ²) = 88234 psi",
                            "with torsion: 74 % of proof, 96 % at the lower friction"));
}

TEST(TorqueJudgement, hands_on_the_reason_why_there_is_none) {
    const Grade eight = Grade::of(StandardGrade::sae8);
    EXPECT_THAT(sentenceOf(judgeTorque(poundFeet(-60), studThread(), eight, 0.2, 0.155, 0.3, inPounds)), HasSubstr("−60.0"));
    EXPECT_THAT(sentenceOf(judgeTorque(poundFeet(2), *parseThread("#8-32"), eight, 0.2, 0.155, 0.3, inPounds)),
                HasSubstr("#8-32"));
}
