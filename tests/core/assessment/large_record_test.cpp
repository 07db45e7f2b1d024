// SPDX-License-Identifier: GPL-3.0-or-later
/// That the generated long records are such as the window makes, and that assessing one does not look at everything
/// again for each place.
#include "../../bench/large_record.h"

#include <algorithm>
#include <assessment/admission.h>
#include <cstdio>
#include <ctime>
#include <gtest/gtest.h>

namespace caprail {
namespace {

using largerecord::Manner;

class LargeRecord : public testing::TestWithParam<Manner> {};

TEST_P(LargeRecord, holds_only_entries_that_were_allowed_when_they_were_made) {
    const Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, 900, GetParam());
    ASSERT_EQ(ledger.size(), 900);
    Ledger again;
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        const auto may = mayAppend(again, facts, assess(facts), entry.person, entry.body);
        ASSERT_TRUE(may) << "entry " << entry.sequence << ": " << may.error().sentence;
        again.append(entry.time, entry.person, entry.body);
        facts = std::holds_alternative<Struck>(entry.body) ? fold(again) : (apply(facts, entry), std::move(facts));
    }
}

/// Seconds of the processor, so that a busy machine does not count; the best of some.
template <class Work> double secondsOf(Work work) {
    double best = 1e9;
    for (int i = 0; i < 5; ++i) {
        const std::clock_t begun = std::clock();
        work();
        best = std::min(best, static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC);
    }
    return best;
}

TEST_P(LargeRecord, is_assessed_in_a_fraction_of_the_time_that_folding_it_takes) {
    const Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, 40'000, GetParam());
    const Facts facts = fold(ledger);
    const double folding = secondsOf([&] { (void)fold(ledger); });
    const double assessing = secondsOf([&] { (void)assess(facts); });
    RecordProperty("folding_ms", std::to_string(folding * 1000));
    RecordProperty("assessing_ms", std::to_string(assessing * 1000));
    std::printf("folding %.1f ms, assessing %.1f ms\n", folding * 1000, assessing * 1000);
    // It is done after each entry: what looks at every reading once for every place is seen here.
    EXPECT_LT(assessing, folding / 4);
}

INSTANTIATE_TEST_SUITE_P(Manners, LargeRecord, testing::Values(Manner::worked, Manner::heaped),
                         [](const auto& manner) { return manner.param == Manner::worked ? "worked" : "heaped"; });

} // namespace
} // namespace caprail
