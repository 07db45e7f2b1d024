// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/grade.h>
#include <fasteners/lubricant.h>
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::HasSubstr;

TEST(Grade, is_read_as_people_write_it_and_from_its_own_name) {
    for (const auto standard : {StandardGrade::sae5, StandardGrade::sae8, StandardGrade::iso8_8, StandardGrade::iso10_9,
                                StandardGrade::iso12_9}) {
        const Grade grade = Grade::of(standard);
        EXPECT_EQ(parseGrade(grade.name()), grade) << grade.name();
    }
    EXPECT_EQ(parseGrade("grade 8"), Grade::of(StandardGrade::sae8));
    EXPECT_EQ(parseGrade(" SAE 5 "), Grade::of(StandardGrade::sae5));
    EXPECT_EQ(parseGrade("10.9"), Grade::of(StandardGrade::iso10_9));
}

TEST(Grade, that_is_a_stress_is_the_part_makers_proof_stress) {
    const auto grade = parseGrade("190 ksi");
    ASSERT_TRUE(grade);
    EXPECT_EQ(parseGrade("proof stress 190 ksi"), grade);
    EXPECT_EQ(parseGrade("by hand 190 ksi"), grade) << "as earlier versions had it";
    EXPECT_EQ(grade->proofStress(*parseThread("7/16-20")), psi(190'000));
    EXPECT_EQ(grade->proofStress(*parseThread("M11")), psi(190'000));
    EXPECT_EQ(grade->modulus(), steelModulus);
    EXPECT_EQ(parseGrade(grade->name()), grade) << grade->name();
    const auto titanium = parseGrade("by hand 830 MPa, E 114 GPa");
    ASSERT_TRUE(titanium);
    EXPECT_EQ(titanium->modulus(), megapascals(114'000));
    EXPECT_EQ(titanium->name(), "proof stress 830 MPa, E 114 GPa");
}

TEST(Grade, is_refused_where_its_standard_says_nothing) {
    const Grade five = Grade::of(StandardGrade::sae5);
    EXPECT_THAT(sentenceOf(five.proofStress(*parseThread("#10-32"))),
                testing::AllOf(IsOneSentence(), HasSubstr("#10-32"), HasSubstr("190 ksi")));
    EXPECT_THAT(sentenceOf(five.proofStress(*parseThread("M10"))), HasSubstr("inch threads only"));
    EXPECT_THAT(sentenceOf(proofLoad(*parseThread("1/2-13"), Grade::of(StandardGrade::iso8_8))),
                HasSubstr("metric threads only"));
}

TEST(Grade, that_is_unknown_or_absurd_is_refused) {
    for (const char* text :
         {"", "grade 99", "8,8", "by hand", "by hand 190", "by hand x MPa", "by hand 190 ksi, E",
          "by hand 190 ksi, E 200", "by hand 999999999 ksi", "by hand 1 MPa", "by hand 500 MPa, E 2 GPa"}) {
        EXPECT_THAT(sentenceOf(parseGrade(text)), IsOneSentence()) << text;
    }
}

TEST(Grade, changes_at_the_size_where_the_standard_changes) {
    const Grade five = Grade::of(StandardGrade::sae5);
    EXPECT_EQ(five.proofStress(*parseThread("1-8")), psi(85'000));
    EXPECT_EQ(five.proofStress(*parseThread("1 1/8-7")), psi(74'000));
    const Grade class8 = Grade::of(StandardGrade::iso8_8);
    EXPECT_EQ(class8.proofStress(*parseThread("M16")), megapascals(580));
    EXPECT_EQ(class8.proofStress(*parseThread("M18")), megapascals(600));
}

TEST(Lubricant, is_found_by_name_and_refused_with_the_list) {
    EXPECT_EQ(findLubricant("Engine Oil")->nutFactor, 0.18);
    EXPECT_THAT(sentenceOf(findLubricant("honey")), testing::AllOf(IsOneSentence(), HasSubstr("engine oil")));
}

TEST(Lubricant, has_a_nut_factor_and_a_friction_that_agree_and_a_source) {
    const auto thread = *parseThread("1/2-20");
    ASSERT_GE(lubricants().size(), 5U);
    for (const Lubricant& lubricant : lubricants()) {
        const JointFriction friction{lubricant.friction, lubricant.friction, usualBearingRadius(thread)};
        const auto longForm = preloadLongForm(newtonMetres(70), thread, friction, Units{});
        const auto shortForm = preloadShortForm(newtonMetres(70), thread, lubricant.nutFactor, Units{});
        ASSERT_TRUE(longForm && shortForm) << lubricant.name;
        EXPECT_NEAR(inNewtons(longForm->value) / inNewtons(shortForm->value), 1.0, 0.03) << lubricant.name;
        EXPECT_FALSE(lubricant.source.empty());
    }
}
