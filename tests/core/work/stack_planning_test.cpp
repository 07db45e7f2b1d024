// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <ledger/band_names.h>
#include <work/stack_planning.h>

namespace caprail {
namespace {

TEST(StraightedgeFeel, follows_the_residual) {
    const Band band = *Band::between(tenths(-5), tenths(5));
    EXPECT_EQ(expectedFeel(tenths(-6), band), Feel::rocks);
    EXPECT_EQ(expectedFeel(tenths(5), band), Feel::drags);
    EXPECT_EQ(expectedFeel(tenths(6), band), Feel::loose);
}

TEST(StackPlanning, says_that_nobody_set_the_band_which_it_plans_for) {
    WorkBench bench;
    EXPECT_TRUE(planTaskFor(bench.facts, bench.assessment).band.isSet);
    bench.facts.bands.erase(std::string(bands::residual));
    const PlanTask task = planTaskFor(bench.facts, assess(bench.facts));
    EXPECT_FALSE(task.band.isSet);
    EXPECT_EQ(task.band.band, *Band::between(tenths(-5), tenths(5)));
    EXPECT_EQ(task.request.band, task.band.band);
}

TEST(StackPlanning, asks_for_accepted_gaps_with_what_is_not_set_aside_and_the_pins) {
    WorkBench bench;
    bench.kit();
    bench.twoPasses({1, Side::left}, 50);
    bench.twoPasses({2, Side::right}, 52);
    bench.gapAt({3, Side::left}, 50); // once only: not accepted
    bench.make(ShimSetAside{"S-3R", true, "burr"});
    bench.make(StackPinned{{2, Side::right}, true, {{"S-2R"}}});
    const PlanRequest request = planTaskFor(bench.facts, bench.assessment).request;
    ASSERT_EQ(request.positions.size(), 2U);
    EXPECT_EQ(request.positions[1].id, "2R");
    EXPECT_EQ(request.positions[1].gap, thou(52));
    EXPECT_EQ(request.positions[1].pinned, std::optional(std::vector<std::string>{"S-2R"}));
    EXPECT_FALSE(request.positions[0].pinned);
    EXPECT_EQ(request.shims.size(), 5U);
    EXPECT_EQ(request.caps, 3);
}

TEST(StackPlanning, aims_within_the_guard_bands_so_that_no_stack_is_too_close_to_call) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    RulesSet rules = bench.facts.rules;
    rules.decision = DecisionRule::guarded;
    bench.make(rules);
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_EQ(task.band.band, *Band::between(tenths(-5), tenths(5)));
    EXPECT_GT(task.request.band.lo(), tenths(-5));
    EXPECT_LT(task.request.band.hi(), tenths(5));
}

TEST(StackPlanning, says_that_least_load_cannot_be_aimed_at_while_nobody_described_the_girdle) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    RulesSet rules = bench.facts.rules;
    rules.objective = Objective::leastLoad;
    bench.make(rules);
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_EQ(task.request.objective, Objective::smallestResidual);
    EXPECT_NE(task.doubt.find("Least load cannot be aimed at"), std::string::npos) << task.doubt;
    EXPECT_TRUE(planStacks(task.request));
}

} // namespace
} // namespace caprail
