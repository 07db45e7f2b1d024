// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <algorithm>
#include <fasteners/sequence.h>
#include <gtest/gtest.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

std::vector<int> capsInOrder(const std::vector<CapFastener>& order) {
    std::vector<int> caps;
    for (const CapFastener& fastener : order) {
        if (caps.empty() || caps.back() != fastener.cap) {
            caps.push_back(fastener.cap);
        }
    }
    return caps;
}

} // namespace

TEST(MainCapSequence, runs_from_the_centre_cap_outwards) {
    EXPECT_THAT(capsInOrder(*mainCapSequence(5, 2)), ElementsAre(3, 2, 4, 1, 5));
    EXPECT_THAT(capsInOrder(*mainCapSequence(4, 2)), ElementsAre(2, 3, 1, 4));
    EXPECT_THAT(capsInOrder(*mainCapSequence(7, 2)), ElementsAre(4, 3, 5, 2, 6, 1, 7));
}

TEST(MainCapSequence, alternates_sides_and_pulls_the_inner_ring_before_the_outer) {
    for (int caps = 3; caps <= 9; ++caps) {
        const auto order = *mainCapSequence(caps, 4);
        ASSERT_EQ(order.size(), static_cast<std::size_t>(4 * caps));
        for (std::size_t i = 1; i < order.size(); ++i) {
            EXPECT_NE(order[i].side, order[i - 1].side);
            EXPECT_FALSE(order[i - 1].ring == FastenerRing::outer && order[i].ring == FastenerRing::inner);
            EXPECT_EQ(std::count(order.begin(), order.end(), order[i]), 1);
        }
        EXPECT_EQ(
            std::count_if(order.begin(), order.end(), [](const auto& f) { return f.ring == FastenerRing::inner; }),
            2 * caps);
    }
}

TEST(MainCapSequence, refuses_a_layout_that_is_none) {
    EXPECT_THAT(sentenceOf(mainCapSequence(2, 2)), IsOneSentence());
    EXPECT_THAT(sentenceOf(mainCapSequence(10, 2)), IsOneSentence());
    EXPECT_THAT(sentenceOf(mainCapSequence(5, 3)), IsOneSentence());
}

TEST(RodSequence, takes_both_fasteners_of_a_rod_together) {
    EXPECT_THAT(*rodSequence(2), ElementsAre(RodFastener{1, FastenerSide::left}, RodFastener{1, FastenerSide::right},
                                             RodFastener{2, FastenerSide::left}, RodFastener{2, FastenerSide::right}));
    EXPECT_THAT(sentenceOf(rodSequence(0)), IsOneSentence());
    EXPECT_THAT(sentenceOf(rodSequence(17)), IsOneSentence());
}

TEST(CircularSequence, goes_crosswise) {
    EXPECT_THAT(*circularSequence(1), ElementsAre(0U));
    EXPECT_THAT(*circularSequence(4), ElementsAre(0U, 2U, 1U, 3U));
    EXPECT_THAT(*circularSequence(6), ElementsAre(0U, 3U, 1U, 4U, 2U, 5U));
    EXPECT_THAT(*circularSequence(8), ElementsAre(0U, 4U, 2U, 6U, 1U, 5U, 3U, 7U));
    EXPECT_THAT(sentenceOf(circularSequence(0)), IsOneSentence());
}

TEST(OutwardSequence, starts_in_the_middle_of_the_pan_rail_and_goes_crosswise_outwards) {
    // Two rails of five, 8 in apart: 0–4 left, 5–9 right, front to rear.
    // From the rear right of the second ring (8) the front right (6) is 10 in away and the rear left (3) only 8.
    std::vector<FastenerPoint> rail;
    for (const double y : {-4.0, 4.0}) {
        for (int i = 0; i < 5; ++i) {
            rail.push_back({inches(5.0 * i), inches(y)});
        }
    }
    EXPECT_THAT(*outwardSequence(rail), ElementsAre(2U, 7U, 1U, 8U, 6U, 3U, 5U, 4U, 0U, 9U));
}

TEST(OutwardSequence, holds_every_fastener_once_for_any_layout) {
    std::vector<FastenerPoint> points;
    for (int i = 0; i < 60; ++i) {
        points.push_back({millimetres((i * 37) % 101), millimetres((i * 53) % 89)});
    }
    EXPECT_TRUE(checkedSequence(*outwardSequence(points), points.size()));
    EXPECT_THAT(sentenceOf(outwardSequence({})), IsOneSentence());
    EXPECT_THAT(sentenceOf(outwardSequence(std::vector<FastenerPoint>(501))), IsOneSentence());
}

TEST(CheckedSequence, names_the_fastener_that_an_edit_lost_doubled_or_made_up) {
    EXPECT_THAT(*checkedSequence({2, 0, 1}, 3), ElementsAre(2U, 0U, 1U));
    EXPECT_THAT(sentenceOf(checkedSequence({2, 0}, 3)),
                testing::AllOf(IsOneSentence(), HasSubstr("leaves out fastener 2")));
    EXPECT_THAT(sentenceOf(checkedSequence({2, 0, 0}, 3)), HasSubstr("fastener 1 twice"));
    EXPECT_THAT(sentenceOf(checkedSequence({2, 0, 3}, 3)), HasSubstr("names fastener 4"));
}

TEST(TorqueSteps, are_equal_and_end_exactly_at_the_final_torque) {
    EXPECT_THAT(*equalSteps(poundFeet(75)),
                ElementsAre(millinewtonMetres(33'895), millinewtonMetres(67'791), poundFeet(75)));
    EXPECT_THAT(*equalSteps(newtonMetres(100), 1), ElementsAre(newtonMetres(100)));
    EXPECT_EQ(equalSteps(newtonMetres(100), 7)->back(), newtonMetres(100));
    EXPECT_THAT(sentenceOf(equalSteps(Torque())), IsOneSentence());
    EXPECT_THAT(sentenceOf(equalSteps(newtonMetres(100), 0)), IsOneSentence());
    EXPECT_THAT(sentenceOf(equalSteps(newtonMetres(100), 11)), IsOneSentence());
}
