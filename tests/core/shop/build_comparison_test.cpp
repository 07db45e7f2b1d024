// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/build_comparison.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::HasSubstr;

/// An engine built, run, torn down and measured again: journals a little smaller, bores a little larger.
class Rebuild : public testing::Test {
protected:
    Rebuild() {
        maker.begin("Orrin Vale", "V8");
        maker.readyToClose(50);
        maker.close();
        maker.at({morning.milliseconds + 400LL * 86'400'000});
        maker.make(BuildBegun{2, "a season of racing"});
        maker.group(FastenerKind::mainCap, 6, "7/16-20", 72);
        maker.tightenAll(72);
        maker.bearings(2.4475, 2.4504);
        maker.survey(51.5);
    }
    Maker maker;
};

TEST_F(Rebuild, tells_wear_clearances_gaps_and_torques_then_and_now) {
    const auto c = compareLastBuilds(maker.ledger);
    ASSERT_TRUE(c) << c.error().sentence;
    EXPECT_EQ(c->then.number, 1);
    EXPECT_EQ(c->now.number, 2);
    EXPECT_EQ(c->now.why, "a season of racing");
    EXPECT_TRUE(c->then.isSignedOff);
    EXPECT_FALSE(c->now.isSignedOff);
    ASSERT_EQ(c->bearings.size(), 3U);
    const BearingThenNow& main1 = c->bearings.front();
    EXPECT_EQ(code(main1.journal), "main-1");
    EXPECT_EQ(main1.journalWear(), inches(0.0005));
    EXPECT_EQ(main1.boreWear(), inches(0.0002));
    EXPECT_EQ(main1.clearance.then, inches(0.0022));
    EXPECT_EQ(main1.clearance.now, inches(0.0029));
    EXPECT_EQ(main1.clearance.difference(), inches(0.0007));
    ASSERT_EQ(c->gaps.size(), 6U);
    EXPECT_EQ(c->gaps.front().gap.difference(), thou(1.5));
    EXPECT_EQ(c->gaps.front().stackThen, thou(50));
    EXPECT_FALSE(c->gaps.front().stackNow);
    const auto fastener = std::ranges::find(c->fasteners, "main-1L", [](const auto& f) { return code(f.fastener); });
    ASSERT_NE(fastener, c->fasteners.end());
    EXPECT_EQ(fastener->then, poundFeet(70));
    EXPECT_EQ(fastener->now, poundFeet(72));
    EXPECT_EQ(c->roundsThen.pulls, 10);
    EXPECT_EQ(c->roundsNow.rounds, 0);
}

TEST_F(Rebuild, leaves_the_earlier_build_as_it_was_signed_off) {
    Maker before;
    before.begin("Orrin Vale", "V8");
    before.readyToClose(50);
    before.close();
    const auto c = compareLastBuilds(maker.ledger);
    ASSERT_TRUE(c);
    for (const BearingThenNow& bearing : c->bearings) {
        EXPECT_EQ(bearing.clearance.then, before.assessment.clearances.at(bearing.journal).clearance);
    }
    for (const GapThenNow& gap : c->gaps) {
        EXPECT_EQ(gap.gap.then, before.assessment.gaps.at(gap.position).accepted);
    }
}

TEST_F(Rebuild, refuses_a_build_that_is_not_there_and_a_build_with_itself) {
    EXPECT_THAT(compareBuilds(maker.ledger, 1, 3).error().sentence, HasSubstr("no build 3"));
    EXPECT_THAT(compareBuilds(maker.ledger, 2, 2).error().sentence, HasSubstr("another one"));
    EXPECT_THAT(compareLastBuilds(shortLedger("a", "b")).error().sentence, HasSubstr("one build only"));
    EXPECT_FALSE(compareLastBuilds(Ledger()));
}

TEST(ThenNow, calls_a_difference_a_change_only_beyond_the_uncertainty_of_both) {
    ThenNow value{thou(50), thou(51), 3'000, 4'000};
    EXPECT_DOUBLE_EQ(*value.uncertainty(), 5'000); // √(3² + 4²)
    EXPECT_TRUE(value.isChange());                // 25 400 nm
    value.now = thou(50) + nanometres(5'000);
    EXPECT_FALSE(value.isChange());
    value.now = thou(60);
    value.uncertaintyThen.reset();
    EXPECT_FALSE(value.isChange()) << "without an uncertainty nothing is said of a change";
    EXPECT_FALSE(value.isJudged());
    value.now.reset();
    EXPECT_FALSE(value.difference());
    EXPECT_FALSE(value.isChange());
}

} // namespace
} // namespace caprail
