// SPDX-License-Identifier: GPL-3.0-or-later
/// That the generated long records are such as the window makes; what they cost is measured in tests/bench.
#include "../../bench/large_record.h"

#include <algorithm>
#include <assessment/admission.h>
#include <ctime>
#include <gtest/gtest.h>

namespace caprail {
namespace {

using largerecord::Manner;

class LargeRecordOf : public testing::TestWithParam<Manner> {};

TEST_P(LargeRecordOf, holds_only_entries_that_were_allowed_when_they_were_made) {
    const Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, 900, GetParam());
    ASSERT_EQ(ledger.size(), 900);
    Ledger again;
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        const auto may = mayAppend(again, facts, assess(facts), entry.person, entry.body);
        ASSERT_TRUE(may) << "entry " << entry.sequence << ": " << may.error().sentence;
        again.append(entry.time, entry.person, entry.body);
        facts = entry.body.is<Struck>() ? fold(again) : (apply(facts, entry), std::move(facts));
    }
}

/// Seconds of this thread's computing that folding a ledger of so many verify rounds takes, the least of three.
double foldingOf(int rounds) {
    Ledger ledger;
    ledger.append({0}, "Ann", LayoutSet{});
    for (int round = 1; round <= rounds; ++round) {
        ledger.append({0}, "Ann", RoundBegun{round, "WRENCH"});
        for (int cap = 1; cap <= 5; ++cap) {
            ledger.append(
                {0}, "Ann",
                RoundOutcome{round, {FastenerKind::mainCap, cap, Side::left, Ring::inner}, Outcome::held, {}, {}, ""});
        }
        ledger.append({0}, "Ann",
                      FastenerTightened{{FastenerKind::mainCap, 1, Side::left, Ring::inner}, {}, {}, {}, ""});
    }
    const auto now = [] {
        timespec time{};
        ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) / 1e9;
    };
    double least = 1e9;
    for (int i = 0; i < 3; ++i) {
        const double begin = now();
        const Facts facts = fold(ledger);
        least = std::min(least, now() - begin);
        EXPECT_EQ(facts.rounds.size(), static_cast<std::size_t>(rounds));
        EXPECT_EQ(facts.rounds.front().voidedBy.entry, 8);
        EXPECT_EQ(facts.rounds.back().outcomes.size(), 5U);
    }
    return least;
}

TEST(LargeRecord, costs_four_times_as_much_to_fold_when_it_is_four_times_as_long) {
    EXPECT_LT(foldingOf(16'000), 9 * foldingOf(4'000)) << "sixteen times: each entry looks at all rounds before it";
}

INSTANTIATE_TEST_SUITE_P(Manners, LargeRecordOf, testing::Values(Manner::worked, Manner::heaped),
                         [](const auto& manner) { return manner.param == Manner::worked ? "worked" : "heaped"; });

} // namespace
} // namespace caprail
