// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/movement.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;

TEST(Movement, of_a_whole_turn_advances_by_the_pitch) {
    EXPECT_EQ(axialAdvance(*parseThread("7/16-20"), degrees(360)), inches(0.05));
    EXPECT_EQ(axialAdvance(*parseThread("M12"), degrees(360)), millimetres(1.75));
    EXPECT_EQ(axialAdvance(*parseThread("M12"), degrees(-180)), millimetres(-0.875));
}

TEST(Movement, leaves_the_new_gap_between_the_old_one_and_the_whole_advance_more) {
    // 7/16-20 by 9°: 0.05 in × 9/360 = 0.00125 in.
    const auto window = gapAfterMovement({inches(0.0575), inches(0.0575)}, *parseThread("7/16-20"), degrees(9), Units{});
    ASSERT_TRUE(window);
    EXPECT_EQ(window->value.smallest, inches(0.0575));
    EXPECT_EQ(window->value.largest, inches(0.05875));
    EXPECT_THAT(window->working, ElementsAre("P·θ/360° = 0.0500 in × 9.0° / 360° = 0.0013 in",
                                             "gap = 0.0575 in + 0 to 0.0013 in = 0.0575 to 0.0588 in"));
}

TEST(Movement, a_second_time_before_measuring_widens_the_window) {
    const Thread thread = *parseThread("7/16-20");
    const auto first = gapAfterMovement({inches(0.0575), inches(0.0575)}, thread, degrees(18), Units{});
    const auto second = gapAfterMovement(first->value, thread, degrees(9), Units{});
    EXPECT_EQ(second->value, (GapWindow{inches(0.0575), inches(0.06125)}));
}

TEST(Movement, of_nothing_or_more_than_a_turn_is_asked_back) {
    EXPECT_THAT(sentenceOf(plausibleMovement(Angle())), testing::AllOf(IsOneSentence(), HasSubstr("it held")));
    EXPECT_THAT(sentenceOf(plausibleMovement(degrees(-3))), IsOneSentence());
    EXPECT_THAT(sentenceOf(plausibleMovement(degrees(361))), testing::AllOf(IsOneSentence(), HasSubstr("361.0°")));
    EXPECT_EQ(plausibleMovement(degrees(360)), degrees(360));
    EXPECT_FALSE(gapAfterMovement({inches(0.05), inches(0.05)}, *parseThread("7/16-20"), degrees(400), Units{}));
}
