// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <ledger/ledger.h>

using namespace caprail;

TEST(Strike, takes_back_an_entry_before_it_and_neither_itself_nor_a_later_one_nor_none) {
    for (const std::int64_t target : {1, 2, 3, 4, 0, -1}) {
        Ledger ledger;
        ledger.append({1'700'000'000'000}, "Ada", NoteAdded{"", "first"});
        ledger.append({1'700'000'000'000}, "Ada", NoteAdded{"", "second"});
        ledger.append({1'700'000'000'000}, "Ada", Struck{target, "a slip"});
        ledger.append({1'700'000'000'000}, "Ada", NoteAdded{"", "after it"});
        for (std::int64_t entry = 1; entry <= 4; ++entry) {
            EXPECT_EQ(ledger.isStruck(entry), entry == target && target < 3) << entry << " by a strike of " << target;
        }
    }
}
