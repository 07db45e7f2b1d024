// SPDX-License-Identifier: GPL-3.0-or-later
/// That the generated long records are such as the window makes; what they cost is measured in tests/bench.
#include "../../bench/large_record.h"

#include <assessment/admission.h>
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

INSTANTIATE_TEST_SUITE_P(Manners, LargeRecord, testing::Values(Manner::worked, Manner::heaped),
                         [](const auto& manner) { return manner.param == Manner::worked ? "worked" : "heaped"; });

} // namespace
} // namespace caprail
