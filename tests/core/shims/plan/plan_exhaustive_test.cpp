// SPDX-License-Identifier: GPL-3.0-or-later
// The planner against trying everything: every way to hand out a few shims to a few positions.
#include "plan_cases.h"
#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <shims/plan/stack_plan.h>
#include <tuple>

using namespace caprail;
using namespace caprail::plancases;

namespace {

using Rank = std::tuple<int, int, std::int64_t, std::int64_t>; ///< −in band, shims, largest or twist, sum

class Everything {
public:
    explicit Everything(const PlanRequest& r) : m_r(r) {
        for (const PlanPosition& p : r.positions) {
            m_caps = std::max(m_caps, p.cap);
        }
    }
    Rank best() {
        handOutInEveryWay(m_r, [this](const auto& residuals, const auto& sizes) { judge(residuals, sizes); });
        return m_best;
    }

private:
    void judge(const std::vector<Length>& residuals, const std::vector<int>& sizes) {
        int inBand = 0;
        int shims = 0;
        Length largest;
        Length sum;
        std::int64_t twist = 0;
        for (std::size_t p = 0; p < residuals.size(); ++p) {
            const bool allowed = m_r.largestStack == 0 || sizes[p] <= m_r.largestStack;
            if (!allowed || !m_r.band.contains(residuals[p])) {
                if (sizes[p] > 0) {
                    return; // the same without these shims is better
                }
                continue;
            }
            ++inBand;
            shims += sizes[p];
            largest = std::max(largest, residuals[p].magnitude());
            sum += residuals[p].magnitude();
            const PlanPosition& at = m_r.positions[p];
            twist += (2 * (at.cap - 1) - (m_caps - 1)) * at.side * residuals[p].value();
        }
        const std::int64_t third = m_r.objective == Objective::leastTwist ? std::abs(twist) : largest.value();
        m_best = std::min(m_best, Rank(-inBand, shims, third, sum.value()));
    }

    const PlanRequest& m_r;
    int m_caps = 1;
    Rank m_best{1, 0, 0, 0};
};

/// Lengths of whole ten-thousandths of an inch, or (`fine`) of odd nanometres, so that the planner's tables are coarse.
PlanRequest smallCase(std::mt19937& random, bool fine) {
    const auto between = [&random](int lo, int hi) {
        return lo + static_cast<int>(random() % static_cast<unsigned>(hi - lo + 1));
    };
    const auto length = [&](int lo, int hi) {
        return fine ? Length(tenths(between(lo, hi)).value() + between(0, 2539)) : tenths(between(lo, hi));
    };
    PlanRequest r;
    const int width = between(0, 8);
    const int lo = between(-5, 2);
    r.band = Band::between(tenths(lo), tenths(lo + width)).value();
    r.largestStack = between(0, 3);
    r.objective = between(0, 1) == 0 ? Objective::smallestResidual : Objective::leastTwist;
    const int positions = between(1, 4);
    const int shims = positions == 4 ? between(0, 6) : between(0, 8 - positions / 3);
    const int most = between(10, 60);
    const bool fewSizes = between(0, 2) == 0;
    for (int i = 0; i < positions; ++i) {
        r.positions.push_back({std::to_string(i), i / 2 + 1, i % 2 == 0 ? -1 : 1, length(-5, 2 * most), std::nullopt});
    }
    const Length some[] = {length(5, most), length(5, most)};
    for (int i = 0; i < shims; ++i) {
        r.shims.push_back({"S" + std::to_string(i), fewSizes ? some[between(0, 1)] : length(5, most)});
    }
    return r;
}

void compare(unsigned seed, int cases, bool fine) {
    std::mt19937 random(seed);
    for (int i = 0; i < cases; ++i) {
        const PlanRequest r = smallCase(random, fine);
        const auto plan = planStacks(r);
        ASSERT_TRUE(plan) << plan.error().sentence;
        const Rank planned(-plan->inBand, plan->shims,
                           r.objective == Objective::leastTwist ? plan->twistSum : plan->largestResidual.value(),
                           plan->sumResidual.value());
        ASSERT_EQ(planned, Everything(r).best()) << "case " << i << " of seed " << seed;
        ASSERT_TRUE(plan->proven) << "case " << i << " of seed " << seed;
    }
}

} // namespace

TEST(StackPlanAgainstEverything, agrees_on_thousands_of_small_cases) {
    compare(20'240'501, 4000, false);
}

TEST(StackPlanAgainstEverything, agrees_where_lengths_are_fine_to_the_nanometre) {
    compare(20'240'502, 1500, true);
}
