// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/stack_planning.h>
#include <work/take_over.h>

namespace caprail {
namespace {

TEST(TakeOver, frees_shims_before_it_builds_with_them) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    // Built crosswise: each of two positions holds the shim that the plan wants at the other.
    bench.make(StackBuilt{{1, Side::left}, {{"S-1R"}}});
    bench.make(StackBuilt{{1, Side::right}, {{"S-1L"}}});
    const auto plan = planStacks(planTaskFor(bench.facts, bench.assessment, {}, PlanScope::anew).request);
    ASSERT_TRUE(plan) << plan.error().sentence;
    for (const Body& body : takeOver(*plan, bench.facts, bench.assessment)) {
        bench.make(body);
    }
    for (const PlannedStack& planned : plan->stacks) {
        const auto built = bench.facts.stacks.find(*parsePosition(planned.position));
        ASSERT_NE(built, bench.facts.stacks.end()) << planned.position;
        EXPECT_EQ(built->second.shims, planned.shims);
    }
    EXPECT_TRUE(takeOver(*plan, bench.facts, bench.assessment).empty()) << "nothing is left to do";
}

TEST(TakeOver, leaves_a_position_that_no_stack_meets) {
    WorkBench bench;
    bench.survey();
    bench.shim("S001", 50, 50);
    const auto plan = planStacks(planTaskFor(bench.facts, bench.assessment).request);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->unmet.size(), 5U);
    EXPECT_EQ(takeOver(*plan, bench.facts, bench.assessment).size(), 1U);
}

TEST(ConfirmedStack, is_judged_again_when_only_a_shim_was_measured_anew) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    bench.build();
    bench.make(ShimMeasured{"S-1L", {thou(50.2), ""}, "MIC"});
    ASSERT_EQ(bench.assessment.find("stack:1L")->state, CheckState::stale);
    const auto entry = confirmStack({1, Side::left}, bench.facts, bench.assessment);
    ASSERT_TRUE(entry);
    EXPECT_TRUE(entry->is<JudgedAgain>());
    bench.make(*entry);
    EXPECT_EQ(bench.assessment.find("stack:1L")->state, CheckState::good);
}

TEST(MoveAllStacks, lifts_those_that_lie_on_and_puts_back_those_that_are_off) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    bench.build();
    EXPECT_TRUE(moveAllStacks(bench.facts, StackMove::putBack).empty()) << "all lie on";
    bench.make(StackMoved{{1, Side::left}, StackMove::takenOff});
    EXPECT_EQ(moveAllStacks(bench.facts, StackMove::takenOff).size(), 5U);
    EXPECT_EQ(moveAllStacks(bench.facts, StackMove::putBack).size(), 1U);
}

} // namespace
} // namespace caprail
