// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/trial_answer.h>

namespace caprail {
namespace {

TEST(TrialAnswer, reads_pass_fail_with_a_remark_and_a_clearance) {
    const auto fail = parseTrialAnswer("f touches the nut", TrialItem::rodBolts, 2, inchUnits);
    ASSERT_TRUE(fail);
    EXPECT_EQ(fail->result, TrialResult::fail);
    EXPECT_EQ(fail->note, "touches the nut");
    EXPECT_EQ(parseTrialAnswer("P", TrialItem::dipstick, 0, inchUnits)->result, TrialResult::pass);
    const auto measured = parseTrialAnswer(".072", TrialItem::counterweights, 1, inchUnits);
    ASSERT_TRUE(measured);
    EXPECT_EQ(measured->clearance->value, thou(72));
    EXPECT_FALSE(parseTrialAnswer("maybe", TrialItem::dipstick, 0, inchUnits));
    EXPECT_FALSE(parseTrialAnswer("", TrialItem::dipstick, 0, inchUnits));
}

} // namespace
} // namespace caprail
