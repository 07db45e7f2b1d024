// SPDX-License-Identifier: GPL-3.0-or-later
// The planner against GLPK 5.0 (GNU Linear Programming Kit, reference manual; the programme is written out in
// plan_glpk.cpp), on cases too large for trying everything and small enough for GLPK to finish.
#include "plan_glpk.h"
#include <gtest/gtest.h>
#include <random>

using namespace caprail;
using plancases::planWithGlpk;

namespace {

/// Cases of up to so many positions and shims.
PlanRequest mediumCase(std::mt19937& random, int mostPositions, int mostShims) {
    const auto between = [&random](int lo, int hi) {
        return lo + static_cast<int>(random() % static_cast<unsigned>(hi - lo + 1));
    };
    PlanRequest r;
    const int width = between(0, 5);
    r.band = Band::between(tenths(-width), tenths(width)).value();
    r.largestStack = between(2, 5);
    const int positions = between(3, mostPositions);
    const int shims = between(8, mostShims);
    const bool sizes = between(0, 1) == 0;
    for (int i = 0; i < shims; ++i) {
        r.shims.push_back({"S" + std::to_string(i), tenths(sizes ? between(1, 12) * 10 : between(10, 120))});
    }
    for (int i = 0; i < positions; ++i) {
        r.positions.push_back(
            {std::to_string(i), i / 2 + 1, i % 2 == 0 ? -1 : 1, tenths(between(20, 260)), std::nullopt});
    }
    return r;
}

/// How many of the cases GLPK finished, each of which must agree.
int compare(unsigned seed, int cases, int mostPositions, int mostShims, double seconds) {
    std::mt19937 random(seed);
    int compared = 0;
    for (int i = 0; i < cases; ++i) {
        const PlanRequest r = mediumCase(random, mostPositions, mostShims);
        const auto plan = planStacks(r);
        EXPECT_TRUE(plan && plan->proven) << "case " << i;
        const auto other = planWithGlpk(r, seconds);
        if (!plan || !other) {
            continue; // GLPK ran out of time
        }
        ++compared;
        EXPECT_EQ(plan->inBand, other->inBand) << "case " << i;
        EXPECT_EQ(plan->shims, other->shims) << "case " << i;
    }
    return compared;
}

} // namespace

TEST(StackPlanAgainstGlpk, serves_as_many_positions_with_as_few_shims) {
    EXPECT_GE(compare(20'240'503, 400, 5, 16, 0.3), 350);
}

TEST(StackPlanAgainstGlpk, agrees_on_larger_cases_that_glpk_finishes) {
    EXPECT_GE(compare(20'240'504, 150, 6, 22, 0.3), 50);
}
