// SPDX-License-Identifier: GPL-3.0-or-later
// How soon a plan is proven. Time is counted in askings of `stop`, so that the same holds on any machine; here some 30
// of them take a millisecond.
#include "plan_cases.h"
#include <algorithm>
#include <functional>
#include <gtest/gtest.h>

using namespace caprail;
using caprail::plancases::Family;
using caprail::plancases::makeCase;

namespace {

/// The askings that all but one in a hundred of 200 kits of the family are proven with.
int askingsForNearlyAll(Family family, Objective objective) {
    std::vector<int> askings;
    for (unsigned seed = 1000; seed < 1200; ++seed) {
        PlanRequest request = makeCase(family, seed).request;
        request.objective = objective;
        int asked = 0;
        const StackPlan plan = planStacks(request, {[&asked] { return ++asked > 5000; }}).value();
        askings.push_back(plan.proven ? asked : 5000);
    }
    std::sort(askings.begin(), askings.end(), std::greater<>());
    return askings.at(2);
}

} // namespace

TEST(StackPlanPace, proves_scarce_kits_within_a_frame) {
    EXPECT_LE(askingsForNearlyAll(Family::scarce, Objective::smallestResidual), 500); // some 16 ms
}

TEST(StackPlanPace, proves_scarce_kits_with_least_twist_within_three_frames) {
    EXPECT_LE(askingsForNearlyAll(Family::scarce, Objective::leastTwist), 1500); // some 50 ms
}
