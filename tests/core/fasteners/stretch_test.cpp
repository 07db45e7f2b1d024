// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/stretch.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

std::vector<BoltSection> rodBolt() {
    return {*BoltSection::shank(inches(1.2), inches(0.3125)),
            *BoltSection::threaded(inches(0.4), *parseThread("3/8-24"))};
}

} // namespace

TEST(Stretch, adds_up_over_sections_and_gives_the_force_back) {
    const auto stretch = stretchUnder(poundsForce(9'000), rodBolt(), steelModulus, Units{});
    ASSERT_TRUE(stretch);
    const auto force = forceFromStretch(stretch->value, rodBolt(), steelModulus, Units{});
    ASSERT_TRUE(force);
    EXPECT_NEAR(inPoundsForce(force->value), 9'000, 0.5);
    ASSERT_EQ(stretch->working.size(), 3U);
    EXPECT_THAT(stretch->working[0], HasSubstr("shank 0.3125 in"));
    EXPECT_THAT(stretch->working[1], HasSubstr("thread 3/8-24"));
    EXPECT_THAT(stretch->working[2], HasSubstr("stretch = "));
}

TEST(Stretch, of_two_halves_is_that_of_the_whole) {
    const auto whole =
        stretchUnder(newtons(40'000), {*BoltSection::shank(millimetres(60), millimetres(9))}, steelModulus, Units{});
    const auto halves = stretchUnder(
        newtons(40'000),
        {*BoltSection::shank(millimetres(30), millimetres(9)), *BoltSection::shank(millimetres(30), millimetres(9))},
        steelModulus, Units{});
    EXPECT_EQ(whole->value, halves->value);
}

TEST(Stretch, refuses_what_is_no_bolt) {
    EXPECT_THAT(sentenceOf(BoltSection::shank(Length(), inches(0.3))), IsOneSentence());
    EXPECT_THAT(sentenceOf(BoltSection::shank(inches(1), Length())), IsOneSentence());
    EXPECT_THAT(sentenceOf(BoltSection::shank(inches(1), inches(30))), IsOneSentence());
    EXPECT_THAT(sentenceOf(BoltSection::threaded(inches(-1), *parseThread("3/8-24"))), IsOneSentence());
    EXPECT_THAT(sentenceOf(stretchUnder(poundsForce(9'000), {}, steelModulus, Units{})),
                HasSubstr("at least one section"));
    EXPECT_THAT(sentenceOf(stretchUnder(Force(), rodBolt(), steelModulus, Units{})), IsOneSentence());
    EXPECT_THAT(sentenceOf(stretchUnder(poundsForce(9'000), rodBolt(), Stress(), Units{})), HasSubstr("modulus"));
}

TEST(Stretch, that_no_bolt_survives_is_asked_back) {
    EXPECT_THAT(sentenceOf(forceFromStretch(inches(0.6), rodBolt(), steelModulus, Units{})),
                HasSubstr("more than a bolt can take"));
    EXPECT_THAT(sentenceOf(forceFromStretch(inches(-0.006), rodBolt(), steelModulus, Units{})), IsOneSentence());
    EXPECT_TRUE(forceFromStretch(inches(0.006), rodBolt(), steelModulus, Units{}));
}
