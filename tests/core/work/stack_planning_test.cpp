// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <ledger/band_names.h>
#include <work/stack_planning.h>
#include <work/take_over.h>

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
    for (const PlanPosition& position : task.request.positions) {
        ASSERT_TRUE(position.band) << position.id;
        EXPECT_GT(position.band->lo(), tenths(-5));
        EXPECT_LT(position.band->hi(), tenths(5));
    }
}

/// Six stacks of one shim each, rechecked: crosswise, so that a plan from bare washers would have them otherwise.
WorkBench crosswise() {
    WorkBench bench;
    bench.survey();
    bench.kit();
    std::vector<Position> reversed = bench.positions();
    std::ranges::reverse(reversed);
    for (std::size_t i = 0; i < reversed.size(); ++i) {
        bench.make(StackBuilt{bench.positions()[i], {{"S-" + code(reversed[i])}}});
    }
    bench.recheck();
    return bench;
}

TEST(StackPlanning, keeps_what_stands_and_plans_it_anew_only_when_asked) {
    const WorkBench bench = crosswise();
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_EQ(task.stays.size(), 6U);
    const auto kept = planForVerdicts(task);
    ASSERT_TRUE(kept) << kept.error().sentence;
    EXPECT_EQ(kept->plan.inBand, 6);
    for (const PlannedStack& stack : kept->plan.stacks) {
        EXPECT_EQ(stack.shims, bench.facts.stacks.at(*parsePosition(stack.position)).shims) << stack.position;
    }
    EXPECT_TRUE(takeOver(kept->plan, bench.facts, bench.assessment).empty());
    const PlanTask anew = planTaskFor(bench.facts, bench.assessment, {}, PlanScope::anew);
    EXPECT_TRUE(anew.stays.empty());
    EXPECT_NE(planForVerdicts(anew)->plan.stacks.front().shims, kept->plan.stacks.front().shims);
}

TEST(StackPlanning, plans_only_the_place_whose_stack_the_straightedge_speaks_against) {
    WorkBench bench = crosswise();
    bench.make(RecheckMade{{2, Side::left}, Feel::rocks, "EDGE"});
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_EQ(task.stays.size(), 5U);
    EXPECT_FALSE(task.stays.contains("2L"));
    for (const PlanPosition& position : task.request.positions) {
        EXPECT_EQ(position.pinned.has_value(), position.id != "2L") << position.id;
    }
}

TEST(StackPlanning, does_not_keep_what_no_plan_may_hold) {
    WorkBench bench = crosswise();
    bench.make(StackPinned{{1, Side::left}, true, {{"S-1L"}}}); // which lies at 3R
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_FALSE(task.stays.contains("3R"));
    EXPECT_EQ(task.stays.size(), 4U);
    EXPECT_TRUE(planForVerdicts(task)) << "or the plan would be refused: one shim twice";
}

TEST(StackPlanning, calls_in_band_only_what_will_be_judged_good_with_so_many_shims) {
    WorkBench bench;
    const Position p{1, Side::left};
    InstrumentAdded leaves = drafts::instrument("LEAVES", InstrumentType::feelerGauge, 0.1);
    leaves.step = Entered<Length>{thou(0.1), ""};
    bench.make(leaves);
    bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 0.1));
    bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 0.3));
    for (int pass = 1; pass <= 4; ++pass) {
        bench.gapAt(p, 50, pass);
    }
    RulesSet rules = bench.facts.rules;
    rules.decision = DecisionRule::guarded;
    rules.coverage = Coverage::two;
    bench.make(rules);
    const auto shim = [&](const std::string& name, Length thickness) {
        bench.make(ShimAdded{name, {thickness, ""}, ""});
        bench.make(ShimMeasured{name, {thickness, ""}, "MIC"});
        bench.make(ShimMeasured{name, {thickness, ""}, "MIC"});
    };
    for (int i = 1; i <= 5; ++i) {
        shim("B" + std::to_string(i), thou(10));
    }
    const auto aim = [&](std::size_t shims) { return PlanAims(bench.facts, {}).at(p, shims)->band.hi(); };
    ASSERT_TRUE(PlanAims(bench.facts, {}).at(p, 5)->canBeProven) << PlanAims(bench.facts, {}).at(p, 5)->sentence;
    ASSERT_LT(aim(4), aim(3)) << "each shim has its own error";
    // Four shims leave what would pass with one shim, or with three, and is too close to call with four.
    const Length residual((aim(4).value() + aim(3).value()) / 2);
    for (int i = 1; i <= 4; ++i) {
        shim("A" + std::to_string(i), Length((thou(50) - residual).value() / 4));
    }
    const auto answer = planForVerdicts(planTaskFor(bench.facts, bench.assessment));
    ASSERT_TRUE(answer) << answer.error().sentence;
    ASSERT_EQ(answer->plan.inBand, 1);
    EXPECT_TRUE(answer->doubt.empty()) << answer->doubt;
    EXPECT_EQ(answer->plan.stacks.front().shims.size(), 5U) << "four would be fewer, and not proven";
    for (const Body& body : takeOver(answer->plan, bench.facts, bench.assessment)) {
        bench.make(body);
    }
    EXPECT_EQ(bench.stateOf("stack:1L"), CheckState::good);
    EXPECT_TRUE(planTaskFor(bench.facts, bench.assessment).stays.contains("1L")) << "nothing is planned anew";
}

TEST(StackPlanning, has_nothing_to_take_over_once_the_build_is_closed) {
    WorkBench bench;
    bench.readyToClose();
    bench.close();
    bench.make(SignedOff{"Closed and right."});
    const PlanTask task = planTaskFor(bench.facts, bench.assessment);
    EXPECT_TRUE(task.isClosed);
    EXPECT_TRUE(task.request.positions.empty());
    StackPlan other;
    other.stacks.push_back({"1L", {"S-2R"}, Length(), true, false});
    EXPECT_TRUE(takeOver(other, bench.facts, bench.assessment).empty());
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
