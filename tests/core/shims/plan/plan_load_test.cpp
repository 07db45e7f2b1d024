// SPDX-License-Identifier: GPL-3.0-or-later
// The aim of least load: known best plans, and every way to hand out a few shims.
#include "plan_cases.h"
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <tuple>

namespace {

using namespace caprail;
using namespace caprail::plancases;

struct LoadFigures {
    int inBand = 0;
    int shims = 0;
    double largest = 0;
    double squares = 0;
};

/// Less is better; loads are told apart to one part in a million.
bool isBetter(const LoadFigures& a, const LoadFigures& b) {
    const auto close = [](double x, double y) { return std::abs(x - y) <= 1e-6 * std::max(1.0, std::max(x, y)); };
    if (a.inBand != b.inBand || a.shims != b.shims) {
        return std::make_tuple(-a.inBand, a.shims) < std::make_tuple(-b.inBand, b.shims);
    }
    return close(a.largest, b.largest) ? !close(a.squares, b.squares) && a.squares < b.squares : a.largest < b.largest;
}

LoadFigures figuresOf(const StackPlan& plan) {
    return {plan.inBand, plan.shims, plan.largestLoad, plan.sumSquareLoad};
}

/// Every hand-out of the shims, judged by its loads.
class EveryLoad {
public:
    explicit EveryLoad(const PlanRequest& r) : m_r(r) {}
    LoadFigures best() {
        handOutInEveryWay(m_r, [this](const auto& residuals, const auto& sizes) { judge(residuals, sizes); });
        return m_best;
    }

private:
    void judge(const std::vector<Length>& residuals, const std::vector<int>& sizes) {
        const std::size_t n = residuals.size();
        LoadFigures f;
        std::vector<double> r(n, 0);
        for (std::size_t p = 0; p < n; ++p) {
            const bool allowed = m_r.largestStack == 0 || sizes[p] <= m_r.largestStack;
            if (allowed && m_r.band.contains(residuals[p])) {
                ++f.inBand;
                f.shims += sizes[p];
                r[p] = inMillimetres(residuals[p]);
            } else if (sizes[p] > 0) {
                return; // the same without these shims is better
            }
        }
        for (std::size_t i = 0; i < n; ++i) {
            double force = 0;
            for (std::size_t j = 0; j < n; ++j) {
                force += m_r.stiffness[i * n + j] * r[j];
            }
            f.largest = std::max(f.largest, std::abs(force));
            f.squares += force * force;
        }
        if (m_best.inBand < 0 || isBetter(f, m_best)) {
            m_best = f;
        }
    }

    const PlanRequest& m_r;
    LoadFigures m_best{-1, 0, 0, 0};
};

PlanRequest smallCase(std::mt19937& random) {
    const auto between = [&random](int lo, int hi) {
        return lo + static_cast<int>(random() % static_cast<unsigned>(hi - lo + 1));
    };
    PlanRequest r;
    r.objective = Objective::leastLoad;
    const int lo = between(-12, 2);
    r.band = Band::between(tenths(lo), tenths(lo + between(0, 20))).value();
    r.largestStack = between(0, 3);
    const int positions = between(1, 4);
    for (int i = 0; i < positions; ++i) {
        r.positions.push_back(
            {std::to_string(i), i / 2 + 1, i % 2 == 0 ? -1 : 1, tenths(between(-5, 90)), std::nullopt});
    }
    const int shims = positions == 4 ? between(0, 6) : between(0, 8 - positions / 3);
    for (int i = 0; i < shims; ++i) {
        r.shims.push_back({"S" + std::to_string(i), tenths(between(5, 50))});
    }
    r.stiffness.assign(r.positions.size() * r.positions.size(), 0);
    if (between(0, 1) == 0) { // as a metric micrometer converts: no common unit but the nanometre
        for (PlanPosition& p : r.positions) {
            p.gap += Length(between(-900, 900));
        }
        for (PlanShim& shim : r.shims) {
            shim.thickness += Length(between(-900, 900));
        }
    }
    for (std::size_t i = 0; i < r.positions.size(); ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            const double k = i == j ? between(3000, 5000) : between(-1500, 1500);
            r.stiffness[i * r.positions.size() + j] = k;
            r.stiffness[j * r.positions.size() + i] = k;
        }
    }
    return r;
}

} // namespace

TEST(LeastLoadPlan, reaches_the_known_best_of_every_case_file_and_proves_it) {
    for (PlanCase c : readCases(std::string(TEST_DATA) + "/load")) {
        SCOPED_TRACE(c.name);
        c.request.objective = Objective::leastLoad;
        const auto plan = planStacks(c.request);
        ASSERT_TRUE(plan) << plan.error().sentence;
        EXPECT_TRUE(plan->proven);
        EXPECT_EQ(plan->inBand, c.best->inBand);
        EXPECT_EQ(plan->shims, c.best->shims);
        EXPECT_NEAR(plan->largestLoad, *c.best->leastLargestLoad, 1e-6);
        EXPECT_NEAR(plan->sumSquareLoad, c.best->leastSumSquareLoad, 1e-6 * c.best->leastSumSquareLoad);
        EXPECT_EQ(plan->bound.largestLoad, plan->largestLoad);
        EXPECT_EQ(plan->loads.size(), c.request.positions.size());
    }
}

TEST(LeastLoadPlan, agrees_with_trying_everything_on_hundreds_of_small_cases) {
    std::mt19937 random(20);
    for (int i = 0; i < 500; ++i) {
        const PlanRequest r = smallCase(random);
        const auto plan = planStacks(r);
        ASSERT_TRUE(plan) << plan.error().sentence;
        EXPECT_TRUE(plan->proven) << "case " << i;
        const LoadFigures best = EveryLoad(r).best();
        const LoadFigures found = figuresOf(*plan);
        ASSERT_FALSE(isBetter(best, found))
            << "case " << i << ": " << best.inBand << " " << best.shims << " " << best.largest << " against "
            << found.inBand << " " << found.shims << " " << found.largest;
        ASSERT_FALSE(isBetter(found, best)) << "case " << i;
    }
}

TEST(LeastLoadPlan, is_never_worse_than_the_other_aims_and_never_better_than_its_bound) {
    for (unsigned seed = 1; seed <= 6; ++seed) {
        PlanRequest r = makeCase(Family::measured40, seed).request;
        const std::size_t n = r.positions.size();
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j < n; ++j) {
                const double far = static_cast<double>(i > j ? i - j : j - i);
                r.stiffness.push_back(4000 * std::cos(far) * std::exp(-far));
            }
        }
        const auto other = planStacks(r);
        r.objective = Objective::leastLoad;
        int looks = 0;
        const auto plan = planStacks(r, {[&] { return ++looks > 8000; }});
        ASSERT_TRUE(plan) << plan.error().sentence;
        EXPECT_EQ(plan->shims, other->shims);
        EXPECT_LE(plan->largestLoad, other->largestLoad * (1 + 1e-9));
        EXPECT_LE(plan->bound.largestLoad, plan->largestLoad);
        EXPECT_LE(plan->bound.sumSquareLoad, plan->sumSquareLoad);
    }
}

TEST(LeastLoadPlan, counts_the_stacks_that_are_pinned) {
    PlanRequest r;
    r.objective = Objective::leastLoad;
    r.band = Band::between(tenths(-5), tenths(5)).value();
    r.positions = {{"A", 1, -1, tenths(100), std::vector<std::string>{"P"}}, {"B", 1, 1, tenths(100), std::nullopt}};
    r.shims = {{"P", tenths(96)}, {"low", tenths(98)}, {"high", tenths(102)}};
    // What stands at A pulls B up as well; a proud stack at B lets go of it.
    r.stiffness = {4000, 1500, 1500, 4000};
    EXPECT_EQ(planStacks(r)->stacks[1].shims, std::vector<std::string>{"high"});
    r.stiffness = {4000, -1500, -1500, 4000};
    EXPECT_EQ(planStacks(r)->stacks[1].shims, std::vector<std::string>{"low"});
}

TEST(LeastLoadPlan, counts_a_stack_that_stands_by_the_band_of_its_own_place) {
    PlanRequest r;
    r.objective = Objective::leastLoad;
    r.band = Band::between(tenths(-5), tenths(5)).value();
    r.positions = {{"A", 1, -1, tenths(100), std::vector<std::string>{"P"}}, {"B", 1, 1, tenths(100), std::nullopt}};
    r.positions[0].band = Band::between(tenths(-5), tenths(8)).value();
    r.shims = {{"P", tenths(92)}, {"low", tenths(98)}, {"high", tenths(102)}};
    for (const auto& [coupling, best] : {std::pair(1500.0, "high"), std::pair(-1500.0, "low")}) {
        r.stiffness = {4000, coupling, coupling, 4000};
        const auto plan = planStacks(r);
        EXPECT_EQ(plan->stacks[1].shims, std::vector<std::string>{best});
        EXPECT_GT(plan->loads[0], 0) << "what stands there pulls";
        const auto same = compareWithBest(r, *plan, {{"A", {"P"}}, {"B", {best}}});
        ASSERT_TRUE(same) << same.error().sentence;
        EXPECT_TRUE(same->isAsGood()) << same->largerLoad;
        const auto other = compareWithBest(r, *plan, {{"A", {"P"}}, {"B", {coupling > 0 ? "low" : "high"}}});
        EXPECT_EQ(other->decides, PlanFigure::largestLoad);
        EXPECT_FALSE(other->isBetter);
    }
}

TEST(LeastLoadPlan, refuses_a_stiffness_that_cannot_be) {
    PlanRequest r;
    r.objective = Objective::leastLoad;
    r.band = Band::between(tenths(-5), tenths(5)).value();
    r.positions = {{"A", 1, -1, tenths(100), std::nullopt}, {"B", 1, 1, tenths(100), std::nullopt}};
    EXPECT_EQ(planStacks(r).error().sentence,
              "Least load needs the stiffness of the girdle: describe its plate first.");
    r.stiffness = {1, 2, 3};
    EXPECT_EQ(planStacks(r).error().sentence,
              "The stiffness must have one row and one column for each of the 2 positions.");
    r.stiffness = {4, 1, 2, 4};
    EXPECT_NE(planStacks(r).error().sentence.find("not symmetric"), std::string::npos);
}
