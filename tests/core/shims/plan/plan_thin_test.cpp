// SPDX-License-Identifier: GPL-3.0-or-later
// Plans that are good long before they are proven: thin leaves in any number, where there are more stacks than could
// ever be listed. Time is counted in askings of `stop`, so that the same holds on any machine; some 10 000 a second.
#include "plan_cases.h"
#include <gtest/gtest.h>
#include <tuple>

using namespace caprail;
using caprail::plancases::Family;
using caprail::plancases::makeCase;
using caprail::plancases::PlanCase;
using caprail::plancases::readCases;

namespace {

using Worth = std::tuple<int, int, std::int64_t, std::int64_t>; ///< less is better
Worth worthOf(const PlanRequest& r, const StackPlan& plan) {
    return {-plan.inBand, plan.shims,
            r.objective == Objective::leastTwist ? plan.twistSum : plan.largestResidual.value(),
            plan.sumResidual.value()};
}

StackPlan stoppedAfter(const PlanRequest& request, int askings, int* asked = nullptr) {
    int count = 0;
    PlanOptions options;
    options.stop = [&count, askings] { return ++count > askings; };
    StackPlan plan = planStacks(request, options).value();
    if (asked != nullptr) {
        *asked = count;
    }
    return plan;
}

constexpr int aFrame = 120; // askings in some 16 ms or less

} // namespace

TEST(ThinLeaves, are_planned_as_well_as_is_known_within_a_frame) {
    const auto cases = readCases(std::string(TEST_DATA) + "/plan-thin");
    ASSERT_EQ(cases.size(), 8U);
    for (const PlanCase& c : cases) {
        SCOPED_TRACE(c.name);
        const StackPlan plan = stoppedAfter(c.request, aFrame);
        // Those of the files are the best that a local search found in five seconds.
        EXPECT_GE(plan.inBand, c.best->inBand);
        EXPECT_LE(plan.shims, c.best->shims);
        EXPECT_EQ(plan.bound.inBand, plan.inBand) << "the kit is not thick enough for more";
    }
}

TEST(ThinLeaves, are_served_within_a_frame_as_well_as_ever) {
    for (const Family family : {Family::thin, Family::thinLimited}) {
        int served = 0;
        int later = 0;
        for (unsigned seed = 1; seed <= 12; ++seed) {
            const PlanCase c = makeCase(family, seed);
            served += stoppedAfter(c.request, aFrame).inBand;
            later += stoppedAfter(c.request, 20 * aFrame).inBand;
        }
        const int oneInAHundred = (later + 99) / 100; // in whole places
        EXPECT_GE(served + oneInAHundred, later) << nameOf(family);
        EXPECT_GT(later, 100) << nameOf(family);
    }
}

TEST(ThinLeaves, leave_the_planner_at_work_until_it_is_stopped) {
    int asked = 0;
    const StackPlan plan = stoppedAfter(readCases(std::string(TEST_DATA) + "/plan-thin").front().request, 5000, &asked);
    EXPECT_TRUE(plan.proven || asked > 5000) << "it gave up after " << asked << " askings";
}

TEST(StackPlanIncumbent, is_never_worse_for_more_time) {
    for (const Family family : {Family::thin, Family::thinLimited, Family::noLimitAny, Family::tight, Family::scarce,
                                Family::unmet, Family::large}) {
        for (unsigned seed = 40; seed < 43; ++seed) {
            PlanCase c = makeCase(family, seed);
            for (const Objective objective : {Objective::smallestResidual, Objective::leastTwist}) {
                SCOPED_TRACE(c.name + (objective == Objective::leastTwist ? ", least twist" : ""));
                c.request.objective = objective;
                Worth before{99, 0, 0, 0};
                for (const int askings : {0, 1, 2, 5, 10, 20, 50, 100, 300, 1000}) {
                    const Worth now = worthOf(c.request, stoppedAfter(c.request, askings));
                    EXPECT_LE(now, before) << askings << " askings";
                    before = now;
                }
            }
        }
    }
}

TEST(StackPlanIncumbent, is_told_of_as_it_gets_better) {
    const PlanCase c = makeCase(Family::thin, 5);
    std::vector<Worth> told;
    int asked = 0;
    PlanOptions options;
    options.stop = [&asked] { return ++asked > 400; };
    options.better = [&](const std::function<StackPlan()>& plan) {
        if (asked % 2 == 0) { // now and then one is not due
            told.push_back(worthOf(c.request, plan()));
        }
    };
    const StackPlan plan = planStacks(c.request, options).value();
    ASSERT_GE(told.size(), 2U);
    for (std::size_t i = 1; i < told.size(); ++i) {
        EXPECT_LT(told[i], told[i - 1]);
    }
    EXPECT_LE(worthOf(c.request, plan), told.back());
}

TEST(StackPlanIncumbent, says_which_share_of_the_bound_it_has) {
    using Figure = PlanFigure;
    StackPlan plan;
    plan.inBand = plan.bound.inBand = 4;
    plan.shims = plan.bound.shims = 10;
    EXPECT_EQ(shareOfBound(plan, Objective::smallestResidual).figure, Figure::none);
    EXPECT_EQ(shareOfBound(plan, Objective::smallestResidual).share, 1);
    plan.twistSum = 400;
    plan.bound.twistSum = 100;
    EXPECT_EQ(shareOfBound(plan, Objective::smallestResidual).figure, Figure::none) << "twist is not its aim";
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).figure, Figure::twistSum);
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).share, 0.25);
    plan.bound.shims = 8;
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).figure, Figure::shims) << "the first that differs";
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).share, 0.8);
    plan.bound.inBand = 5;
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).figure, Figure::inBand);
    EXPECT_EQ(shareOfBound(plan, Objective::leastTwist).share, 0.8);
}
