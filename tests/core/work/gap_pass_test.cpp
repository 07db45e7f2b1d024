// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/gap_pass.h>

namespace caprail {
namespace {

TEST(PassOrder, must_name_every_place_once) {
    WorkBench bench;
    const EngineLayout& layout = *bench.facts.layout;
    const auto order = parsePassOrder("3R, 3L 2R 2L 1R 1L", layout);
    ASSERT_TRUE(order);
    EXPECT_EQ(order->front(), (Position{3, Side::right}));
    EXPECT_NE(parsePassOrder("1L 1R 2L 2R 3L", layout).error().sentence.find("3R"), std::string::npos);
    EXPECT_FALSE(parsePassOrder("1L 1R 2L 2R 3L 3R 3R", layout));
    EXPECT_FALSE(parsePassOrder("1L 1R 2L 2R 3L 9R", layout));
}

TEST(PassOrder, walks_round_the_stand_when_asked_to) {
    WorkBench bench;
    EXPECT_EQ(passOrderText(passOrder(*bench.facts.layout, PassOrder::sideBySide)), "1L 2L 3L 3R 2R 1R");
}

TEST(GapPass, goes_only_to_places_that_a_movement_spoiled) {
    WorkBench bench;
    bench.survey();
    const auto order = bench.positions();
    EXPECT_TRUE(nextInPass(order, {1, Side::left}, 2, bench.assessment).isFinished);
    bench.make(FastenerLoosened{{FastenerKind::mainCap, 2, Side::left, Ring::inner}, "look"});
    const PassStep begin = beginPass(order, bench.assessment);
    EXPECT_EQ(begin.position, (Position{2, Side::left}));
    EXPECT_EQ(begin.pass, bench.assessment.survey.nextPass);
    EXPECT_EQ(begin.left, 2U);
    bench.make(GapReading{{2, Side::left}, begin.pass, {thou(51), ""}, "LEAVES"});
    EXPECT_EQ(nextInPass(order, {2, Side::left}, begin.pass, bench.assessment).position, (Position{2, Side::right}));
    bench.make(GapReading{{2, Side::right}, begin.pass, {thou(51), ""}, "LEAVES"});
    const PassStep again = nextInPass(order, {2, Side::right}, begin.pass, bench.assessment);
    EXPECT_EQ(again.position, (Position{2, Side::left}));
    EXPECT_EQ(again.pass, begin.pass + 1);
}

TEST(GapPass, is_the_earliest_that_a_place_still_lacks) {
    WorkBench bench;
    bench.layIn();
    const auto order = bench.positions();
    const auto read = [&](Position place, std::int64_t pass) {
        bench.make(GapReading{place, pass, {thou(50), ""}, "LEAVES"});
    };
    EXPECT_EQ(bench.assessment.survey.nextPass, 1);
    for (std::int64_t pass = 1; pass <= 3; ++pass) {
        read(order.front(), pass); // accepted after two
    }
    EXPECT_EQ(bench.assessment.survey.nextPass, 1) << "the others were not read at all";
    EXPECT_EQ(beginPass(order, bench.assessment).position, order[1]);
    for (const Position place : order) {
        if (place != order.front()) {
            read(place, 1);
        }
    }
    EXPECT_EQ(bench.assessment.survey.nextPass, 2);
    EXPECT_EQ(beginPass(order, bench.assessment).pass, 2);
    for (const Position place : order) {
        if (place != order.front()) {
            read(place, 2);
        }
    }
    EXPECT_EQ(bench.assessment.survey.nextPass, 4) << "all are accepted: the one after the last";
}

TEST(PassOrder, is_typed_with_arrows_and_written_with_blanks) {
    WorkBench bench;
    const auto order = parsePassOrder("1L → 1R>2L;2R,3L 3R", *bench.facts.layout);
    ASSERT_TRUE(order) << order.error().sentence;
    EXPECT_EQ(passOrderText(*order), "1L 1R 2L 2R 3L 3R");
}

} // namespace
} // namespace caprail
