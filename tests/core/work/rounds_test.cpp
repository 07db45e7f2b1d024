// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/rounds.h>

namespace caprail {
namespace {

/// Two rounds: in the first a main stud moved; in the second an outcome was struck and made again.
RoundHistory twoRounds() {
    WorkBench bench;
    bench.tightenAll();
    bench.layIn();
    bench.make(PersonAdded{"Tove", "assembler"});
    bench.make(RoundBegun{1, "W1"});
    const FastenerId moved{FastenerKind::mainCap, 2, Side::left, Ring::inner};
    for (const FastenerId f : bench.facts.layout->verifiedFasteners()) {
        f == moved ? bench.outcome(f, Outcome::moved, 4) : bench.outcome(f);
    }
    bench.make(RoundBegun{2, "W1"});
    std::int64_t first = 0;
    for (const FastenerId f : bench.facts.layout->verifiedFasteners()) {
        const std::int64_t entry = bench.outcome(f);
        first = first == 0 ? entry : first;
    }
    bench.make(Struck{first, "wrong fastener"});
    bench.outcome(bench.facts.layout->verifiedFasteners().front());
    return roundHistory(bench.ledger);
}

TEST(RoundHistory, shows_the_outcome_that_stands_and_tells_of_the_struck_one) {
    const RoundHistory history = twoRounds();
    ASSERT_EQ(history.rounds.size(), 2U);
    ASSERT_EQ(history.fasteners.size(), 10U);
    const auto& cell = history.cells[1][0];
    ASSERT_TRUE(cell);
    EXPECT_FALSE(cell->isStruck);
    EXPECT_EQ(cell->otherEntries, 1);
    EXPECT_EQ(cellText(*cell, {}), "✓");
    EXPECT_EQ(cellText(*history.cells[0][2], {}), "↷ 4.0°");
    EXPECT_EQ(history.rounds[1].name(false), "2");
    EXPECT_EQ(history.rounds[1].name(true), "build 1 · 2");
}

TEST(RoundHistory, is_filtered_by_outcome_cap_person_and_day) {
    const RoundHistory history = twoRounds();
    RoundChoice choice;
    choice.outcomes = RoundChoice::Outcomes::moved;
    EXPECT_EQ(visibleRounds(history, choice, RoundOrder::place).cells, 1U);
    choice = {};
    choice.cap = -1;
    EXPECT_EQ(visibleRounds(history, choice, RoundOrder::place).cells, 8U) << "four rod bolts, twice";
    choice = {};
    choice.person = "Tove";
    EXPECT_EQ(visibleRounds(history, choice, RoundOrder::place).cells, 0U);
    choice = {};
    choice.from = *parseDate("2999-01-01");
    EXPECT_EQ(visibleRounds(history, choice, RoundOrder::place).cells, 0U);
    choice = {};
    choice.outcomes = RoundChoice::Outcomes::struck;
    EXPECT_EQ(visibleRounds(history, choice, RoundOrder::place).cells, 1U);
}

TEST(RoundHistory, puts_the_fastener_that_moved_most_first_when_asked_to) {
    const RoundHistory history = twoRounds();
    const VisibleRounds visible = visibleRounds(history, {}, RoundOrder::mostMovements);
    EXPECT_EQ(code(history.fasteners[visible.fasteners.front()]), "main-2L");
    const auto rows = reviewRows(history, visible, {});
    EXPECT_EQ(rows.size(), 20U) << "the struck outcome is not counted";
    EXPECT_EQ(std::ranges::count_if(rows, [](const OutcomeRow& row) { return row.moved; }), 1);
}

TEST(RoundHistory, is_written_as_a_table_with_plain_units) {
    const RoundHistory history = twoRounds();
    RoundChoice choice;
    choice.outcomes = RoundChoice::Outcomes::moved;
    const std::string csv = roundsCsv(history, visibleRounds(history, choice, RoundOrder::place), choice);
    EXPECT_TRUE(
        csv.starts_with("build,round,fastener,outcome,angle_deg,torque_mNm,person,instrument,time_utc,entry,struck\r\n"
                        "1,1,main-2L,moved,4.000,,Mira,W1,2023-11-14T"))
        << csv;
    EXPECT_TRUE(csv.ends_with(",no\r\n"));
}

} // namespace
} // namespace caprail
