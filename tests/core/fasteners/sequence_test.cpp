// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <algorithm>
#include <engine/rows.h>
#include <fasteners/sequence.h>
#include <gtest/gtest.h>
#include <numeric>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

std::vector<int> capsInOrder(const std::vector<FastenerId>& order) {
    std::vector<int> caps;
    for (const FastenerId fastener : order) {
        if (caps.empty() || caps.back() != fastener.number) {
            caps.push_back(fastener.number);
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
            EXPECT_FALSE(order[i - 1].ring == Ring::outer && order[i].ring == Ring::inner);
            EXPECT_EQ(std::count(order.begin(), order.end(), order[i]), 1);
        }
        EXPECT_EQ(std::count_if(order.begin(), order.end(), [](const auto& f) { return f.ring == Ring::inner; }),
                  2 * caps);
    }
}

TEST(MainCapSequence, refuses_a_layout_that_is_none) {
    EXPECT_THAT(sentenceOf(mainCapSequence(2, 2)), IsOneSentence());
    EXPECT_THAT(sentenceOf(mainCapSequence(10, 2)), IsOneSentence());
    EXPECT_THAT(sentenceOf(mainCapSequence(5, 3)), IsOneSentence());
}

TEST(RodSequence, takes_both_fasteners_of_a_rod_together) {
    std::vector<std::string> order;
    for (const FastenerId fastener : *rodSequence(2)) {
        order.push_back(code(fastener));
    }
    EXPECT_THAT(order, ElementsAre("rod-1L", "rod-1R", "rod-2L", "rod-2R"));
    EXPECT_THAT(sentenceOf(rodSequence(0)), IsOneSentence());
    EXPECT_THAT(sentenceOf(rodSequence(17)), IsOneSentence());
}

TEST(OutwardSequence, starts_in_the_middle_of_the_pan_rail_and_goes_crosswise_outwards) {
    // Two rails of five, 8 in apart: 0–4 left, 5–9 right, front to rear.
    // From the rear right of the second ring (8) the front right (6) is 10 in away and the rear left (3) only 8.
    std::vector<PlanPoint> rail;
    for (const double y : {-4.0, 4.0}) {
        for (int i = 0; i < 5; ++i) {
            rail.push_back({inches(5.0 * i), inches(y)});
        }
    }
    EXPECT_THAT(*outwardSequence(rail), ElementsAre(2U, 7U, 1U, 8U, 6U, 3U, 5U, 4U, 0U, 9U));
}

TEST(OutwardSequence, holds_every_fastener_once_for_any_layout) {
    std::vector<PlanPoint> points;
    for (int i = 0; i < 60; ++i) {
        points.push_back({millimetres((i * 37) % 101), millimetres((i * 53) % 89)});
    }
    auto order = *outwardSequence(points);
    std::ranges::sort(order);
    ASSERT_EQ(order.size(), points.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        EXPECT_EQ(order[i], i);
    }
    EXPECT_THAT(sentenceOf(outwardSequence({})), IsOneSentence());
    EXPECT_THAT(sentenceOf(outwardSequence(std::vector<PlanPoint>(501))), IsOneSentence());
}

TEST(UsualSequence, of_a_row_holds_each_once_and_begins_nearer_to_the_middle_than_it_ends) {
    const EngineLayout layout = *EngineLayout::from({});
    for (const FastenerKind kind : {FastenerKind::panRail, FastenerKind::front, FastenerKind::rear}) {
        for (const int count : {1, 4, 18, 31}) {
            const auto order = usualSequence(layout, kind, count);
            std::vector<int> numbers;
            for (const FastenerId fastener : order) {
                EXPECT_EQ(fastener.kind, kind);
                numbers.push_back(fastener.number);
            }
            std::vector<int> all(static_cast<std::size_t>(count));
            std::iota(all.begin(), all.end(), 1);
            EXPECT_THAT(numbers, testing::UnorderedElementsAreArray(all));
        }
    }
    const auto points = rowPoints(layout, FastenerKind::panRail, 18);
    const auto order = usualSequence(layout, FastenerKind::panRail, 18);
    const auto away = [&](FastenerId f) {
        return (points[static_cast<std::size_t>(f.number - 1)].x - layout.capAt(3)).magnitude();
    };
    EXPECT_LT(away(order.front()), away(order.back()));
}

TEST(UsualSequence, of_girdle_nuts_begins_at_the_middle_of_the_tied_run) {
    const EngineLayout layout = *EngineLayout::from({});
    EXPECT_EQ(usualSequence(layout, FastenerKind::girdleNut).front().number, 3);
    EXPECT_EQ(usualSequence(layout, FastenerKind::girdleNut).size(), layout.girdleNuts().size());
    EXPECT_TRUE(usualSequence(layout, FastenerKind::panRail).empty()) << "a row of none";
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
