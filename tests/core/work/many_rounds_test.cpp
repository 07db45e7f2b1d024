// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <work/rounds.h>

namespace caprail {
namespace {

Ledger withRounds(std::size_t count) {
    Ledger ledger;
    for (std::size_t round = 1; round <= count; ++round) {
        ledger.append({1'700'000'000'000}, "Mira", RoundBegun{static_cast<std::int64_t>(round), "W1"});
    }
    return ledger;
}

TEST(RoundHistory, shows_the_last_500_rounds_and_says_how_many_it_leaves_out) {
    EXPECT_EQ(mostRoundsShown, 500U);
    const RoundHistory whole = roundHistory(withRounds(500));
    EXPECT_EQ(whole.rounds.size(), 500U);
    EXPECT_EQ(whole.leftOut, 0U);
    const RoundHistory cut = roundHistory(withRounds(503));
    ASSERT_EQ(cut.rounds.size(), 500U);
    EXPECT_EQ(cut.leftOut, 3U);
    EXPECT_EQ(cut.rounds.front().round, 4);
    EXPECT_EQ(cut.rounds.back().round, 503);
}

} // namespace
} // namespace caprail
