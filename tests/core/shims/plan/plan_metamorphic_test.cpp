// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold between two plans, whatever the plans are.
#include "plan_cases.h"
#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <tuple>

using namespace caprail;
using caprail::plancases::Family;
using caprail::plancases::makeCase;

namespace {

const Family families[] = {Family::plentiful, Family::measured40, Family::measured80, Family::measured120,
                           Family::scarce,    Family::exact,      Family::unmet,      Family::parity,
                           Family::triples,   Family::noLimit,    Family::twins,      Family::twinsAny,
                           Family::tiny,      Family::large};

using Rank = std::tuple<int, int, std::int64_t, std::int64_t>;
Rank rankOf(const PlanRequest& r, const StackPlan& plan) {
    return {-plan.inBand, plan.shims,
            r.objective == Objective::leastTwist ? plan.twistSum : plan.largestResidual.value(),
            plan.sumResidual.value()};
}

/// A plan made within so many askings of the solver (a count, not a time: the same on every machine).
StackPlan planOf(const PlanRequest& r) {
    int asked = 0;
    return planStacks(r, {[&asked] { return ++asked > 20'000; }}).value();
}

/// A few cases of each family under both objectives: those that are proven in time, which must be all but one in fifty.
/// `check(request, plan)` compares with a changed request, and says whether that one was proven too.
template <class F> void forCases(unsigned seeds, F check) {
    int cases = 0;
    int compared = 0;
    for (Family family : families) {
        for (unsigned seed = 100; seed < 100 + seeds; ++seed) {
            plancases::PlanCase c = makeCase(family, seed);
            for (Objective objective : {Objective::smallestResidual, Objective::leastTwist}) {
                SCOPED_TRACE(c.name + (objective == Objective::leastTwist ? ", least twist" : ""));
                c.request.objective = objective;
                ++cases;
                const StackPlan plan = planOf(c.request);
                compared += plan.proven && check(c.request, plan) ? 1 : 0;
            }
        }
    }
    ::testing::Test::RecordProperty("compared", compared);
    ::testing::Test::RecordProperty("cases", cases);
    EXPECT_GE(compared, cases * 98 / 100);
}

/// Thicknesses by position id, which is all that is left when shims lose their names.
std::map<std::string, std::vector<Length>> thicknesses(const PlanRequest& r, const StackPlan& plan) {
    std::map<std::string, Length> kit;
    for (const PlanShim& s : r.shims) {
        kit[s.id] = s.thickness;
    }
    std::map<std::string, std::vector<Length>> out;
    for (const PlannedStack& stack : plan.stacks) {
        for (const std::string& id : stack.shims) {
            out[stack.position].push_back(kit[id]);
        }
    }
    return out;
}

} // namespace

TEST(StackPlanRelations, one_more_shim_never_makes_the_plan_worse) {
    forCases(4, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest more = r;
        more.shims.push_back({"extra", tenths(137)});
        more.shims.push_back({"another", r.shims.front().thickness});
        const StackPlan better = planOf(more);
        if (!better.proven) {
            return false;
        }
        EXPECT_LE(rankOf(more, better), rankOf(r, plan));
        return true;
    });
}

TEST(StackPlanRelations, shuffling_the_request_changes_nothing) {
    forCases(4, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest shuffled = r;
        std::mt19937 random(7);
        std::shuffle(shuffled.shims.begin(), shuffled.shims.end(), random);
        std::shuffle(shuffled.positions.begin(), shuffled.positions.end(), random);
        const StackPlan again = planOf(shuffled);
        if (!again.proven) {
            return false;
        }
        std::map<std::string, std::vector<std::string>> before;
        std::map<std::string, std::vector<std::string>> after;
        for (const PlannedStack& s : plan.stacks) {
            before[s.position] = s.shims;
        }
        for (const PlannedStack& s : again.stacks) {
            after[s.position] = s.shims;
        }
        EXPECT_EQ(before, after);
        return true;
    });
}

TEST(StackPlanRelations, new_names_change_nothing_but_names) {
    forCases(3, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest renamed = r;
        int n = 1000;
        for (PlanShim& s : renamed.shims) {
            s.id = "leaf " + std::to_string(--n);
        }
        const StackPlan again = planOf(renamed);
        if (!again.proven) {
            return false;
        }
        EXPECT_EQ(thicknesses(r, plan), thicknesses(renamed, again));
        return true;
    });
}

TEST(StackPlanRelations, a_wider_band_serves_no_fewer_and_takes_no_more_shims) {
    forCases(4, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest wider = r;
        wider.band = Band::between(r.band.lo() - tenths(1), r.band.hi() + tenths(1)).value();
        const StackPlan better = planOf(wider);
        if (!better.proven) {
            return false;
        }
        EXPECT_LE(std::make_pair(-better.inBand, better.shims), std::make_pair(-plan.inBand, plan.shims));
        return true;
    });
}

TEST(StackPlanRelations, pinning_what_the_plan_says_gives_the_same_plan) {
    forCases(3, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest pinned = r;
        for (std::size_t i = 0; i < pinned.positions.size(); i += 2) {
            if (plan.stacks[i].inBand) {
                pinned.positions[i].pinned = plan.stacks[i].shims;
            }
        }
        const StackPlan again = planOf(pinned);
        if (!again.proven) {
            return false;
        }
        EXPECT_EQ(rankOf(pinned, again), rankOf(r, plan));
        return true;
    });
}

TEST(StackPlanRelations, the_unit_of_length_does_not_matter) {
    forCases(2, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest scaled = r; // the same figures in microns
        const auto inMicrons = [](Length l) { return microns(l.value() / 2540); };
        scaled.band = Band::between(inMicrons(r.band.lo()), inMicrons(r.band.hi())).value();
        for (PlanShim& s : scaled.shims) {
            s.thickness = inMicrons(s.thickness);
        }
        for (PlanPosition& p : scaled.positions) {
            p.gap = inMicrons(p.gap);
        }
        const StackPlan again = planOf(scaled);
        if (!again.proven) {
            return false;
        }
        EXPECT_EQ(again.inBand, plan.inBand);
        EXPECT_EQ(again.shims, plan.shims);
        EXPECT_EQ(again.largestResidual, inMicrons(plan.largestResidual));
        EXPECT_EQ(again.sumResidual, inMicrons(plan.sumResidual));
        return true;
    });
}

TEST(StackPlanRelations, setting_aside_what_the_plan_leaves_free_changes_no_figure) {
    forCases(2, [](const PlanRequest& r, const StackPlan& plan) {
        PlanRequest fewer = r;
        std::erase_if(fewer.shims, [&plan](const PlanShim& s) {
            return std::none_of(plan.stacks.begin(), plan.stacks.end(), [&s](const PlannedStack& stack) {
                return std::find(stack.shims.begin(), stack.shims.end(), s.id) != stack.shims.end();
            });
        });
        const StackPlan again = planOf(fewer);
        if (!again.proven) {
            return false;
        }
        EXPECT_EQ(rankOf(fewer, again), rankOf(r, plan));
        return true;
    });
}

TEST(StackPlanRelations, stopped_early_it_never_claims_more_than_is_true) {
    for (Family family : {Family::scarce, Family::tight, Family::unmet, Family::noLimit, Family::twins}) {
        for (unsigned seed = 300; seed < 304; ++seed) {
            plancases::PlanCase c = makeCase(family, seed);
            for (Objective objective : {Objective::smallestResidual, Objective::leastTwist}) {
                SCOPED_TRACE(c.name + (objective == Objective::leastTwist ? ", least twist" : ""));
                c.request.objective = objective;
                const StackPlan best = planOf(c.request);
                if (!best.proven) {
                    continue;
                }
                for (const int askings : {0, 1, 3, 10, 30, 100, 300, 1000}) {
                    int asked = 0;
                    const StackPlan early =
                        planStacks(c.request, {[&asked, askings] { return ++asked > askings; }}).value();
                    EXPECT_GE(rankOf(c.request, early), rankOf(c.request, best));
                    EXPECT_TRUE(!early.proven || rankOf(c.request, early) == rankOf(c.request, best));
                    EXPECT_GE(early.bound.inBand, best.inBand);
                    if (early.bound.inBand > best.inBand) {
                        continue; // the other bounds are for a plan that serves more
                    }
                    EXPECT_LE(early.bound.shims, best.shims);
                    if (early.bound.shims < best.shims) {
                        continue;
                    }
                    if (objective == Objective::leastTwist) {
                        EXPECT_LE(early.bound.twistSum, best.twistSum);
                    } else {
                        EXPECT_LE(early.bound.largestResidual, best.largestResidual);
                    }
                }
            }
        }
    }
}
