// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit that a refusal names, from both sides.
#include <fasteners/movement.h>
#include <fasteners/sequence.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

template <class T> std::string answer(const Result<T>& result) {
    return result ? std::string("taken") : result.error().sentence;
}

} // namespace

TEST(FastenerLimits, of_a_movement_are_more_than_nothing_and_a_whole_turn) {
    EXPECT_EQ(answer(plausibleMovement(Angle(1))), "taken");
    EXPECT_NE(answer(plausibleMovement(Angle())), "taken");
    EXPECT_EQ(answer(plausibleMovement(degrees(360))), "taken");
    EXPECT_THAT(answer(plausibleMovement(degrees(360) + Angle(1))), HasSubstr("more than a whole turn"));
}

TEST(FastenerLimits, of_sequences_are_those_that_their_refusals_name) {
    for (const int caps : {3, 9}) {
        EXPECT_EQ(answer(mainCapSequence(caps, 2)), "taken") << caps;
        EXPECT_EQ(answer(mainCapSequence(caps, 4)), "taken") << caps;
    }
    EXPECT_THAT(answer(mainCapSequence(2, 2)), HasSubstr("3 to 9 main caps"));
    EXPECT_THAT(answer(mainCapSequence(10, 2)), HasSubstr("3 to 9 main caps"));
    EXPECT_THAT(answer(mainCapSequence(5, 3)), HasSubstr("2 or 4 fasteners"));
    for (const int rods : {1, 16}) {
        EXPECT_EQ(answer(rodSequence(rods)), "taken") << rods;
    }
    EXPECT_THAT(answer(rodSequence(0)), HasSubstr("1 to 16 rods"));
    EXPECT_THAT(answer(rodSequence(17)), HasSubstr("1 to 16 rods"));
    const auto row = [](int count) {
        std::vector<PlanPoint> points;
        for (int i = 0; i < count; ++i) {
            points.push_back({inches(i), Length()});
        }
        return answer(outwardSequence(points));
    };
    EXPECT_EQ(row(1), "taken");
    EXPECT_EQ(row(500), "taken");
    EXPECT_NE(row(0), "taken");
    EXPECT_THAT(row(501), HasSubstr("500"));
}

TEST(FastenerLimits, of_steps_are_one_to_ten_and_more_than_nothing) {
    EXPECT_EQ(equalSteps(poundFeet(70), 1)->size(), 1U);
    EXPECT_EQ(equalSteps(poundFeet(70), 10)->size(), 10U);
    EXPECT_THAT(answer(equalSteps(poundFeet(70), 0)), HasSubstr("1 to 10 steps"));
    EXPECT_THAT(answer(equalSteps(poundFeet(70), 11)), HasSubstr("1 to 10 steps"));
    EXPECT_EQ(answer(equalSteps(millinewtonMetres(1), 1)), "taken");
    EXPECT_THAT(answer(equalSteps(Torque(), 3)), HasSubstr("more than nothing"));
}
