// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>
#include <shims/plan/stack_plan.h>
#include <tuple>

using namespace caprail;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

namespace {

PlanRequest positionsAndKit(std::vector<std::int64_t> gaps, std::vector<std::int64_t> thicknesses) {
    PlanRequest r;
    r.band = Band::between(tenths(-5), tenths(5)).value();
    r.largestStack = 4;
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        const int cap = static_cast<int>(i) / 2 + 1;
        r.positions.push_back(
            {std::to_string(cap) + (i % 2 == 0 ? "L" : "R"), cap, i % 2 == 0 ? -1 : 1, tenths(gaps[i]), std::nullopt});
    }
    for (std::size_t i = 0; i < thicknesses.size(); ++i) {
        r.shims.push_back({"S" + std::to_string(i + 1), tenths(thicknesses[i])});
    }
    return r;
}

std::vector<Remedy> remedies(const PlanRequest& r) {
    return whatWouldHelp(r, planStacks(r).value()).value();
}

} // namespace

TEST(WhatWouldHelp, has_nothing_to_say_when_every_position_is_met) {
    EXPECT_THAT(remedies(positionsAndKit({100, 50}, {100, 50})), IsEmpty());
}

TEST(WhatWouldHelp, names_the_thickness_to_buy_for_a_single_shim) {
    const auto r = remedies(positionsAndKit({300, 170}, {300}));
    ASSERT_EQ(r.size(), 1U);
    EXPECT_EQ(r[0].kind, Remedy::Kind::buy);
    EXPECT_EQ(r[0].position, "1R");
    EXPECT_EQ(r[0].thickness, tenths(170));
    EXPECT_EQ(r[0].plan.inBand, 2);
    EXPECT_EQ(r[0].plan.shims, 2);
    EXPECT_EQ(r[0].plan.largestResidual, Length());
}

TEST(WhatWouldHelp, buys_nothing_thicker_than_the_kit_has) {
    // 450 cannot be bought as one leaf of at most 300; with a 200 from the kit, 250 can.
    const auto r = remedies(positionsAndKit({450}, {300, 200}));
    ASSERT_FALSE(r.empty());
    EXPECT_EQ(r[0].kind, Remedy::Kind::buy);
    EXPECT_LE(r[0].thickness, tenths(300));
    EXPECT_EQ(r[0].plan.shims, 2);
    EXPECT_EQ(r[0].plan.inBand, 1);
    EXPECT_EQ(r[0].plan.largestResidual, Length());
}

TEST(WhatWouldHelp, buys_the_whole_gap_for_an_empty_kit) {
    const auto r = remedies(positionsAndKit({123}, {}));
    ASSERT_EQ(r.size(), 1U);
    EXPECT_EQ(r[0].thickness, tenths(123));
}

TEST(WhatWouldHelp, laps_a_shim_that_is_a_little_too_thick) {
    const auto r = remedies(positionsAndKit({200}, {212}));
    ASSERT_EQ(r.size(), 2U);
    EXPECT_EQ(r[1].kind, Remedy::Kind::lap);
    EXPECT_EQ(r[1].shim, "S1");
    EXPECT_EQ(r[1].from, tenths(212));
    EXPECT_EQ(r[1].thickness, tenths(200));
    EXPECT_EQ(r[1].plan.inBand, 1);
    EXPECT_EQ(r[1].plan.largestResidual, Length());
}

TEST(WhatWouldHelp, does_not_lap_more_than_can_be_lapped) {
    const auto r = remedies(positionsAndKit({200}, {240}));
    ASSERT_EQ(r.size(), 1U); // to buy, only: 0.0040 in is more than lapping takes off
    EXPECT_EQ(r[0].kind, Remedy::Kind::buy);
}

TEST(WhatWouldHelp, knows_no_remedy_for_a_rail_that_stands_proud) {
    EXPECT_THAT(remedies(positionsAndKit({-30}, {10, 20})), IsEmpty());
}

TEST(WhatWouldHelp, aims_at_the_end_of_the_band_that_is_nearest_to_nothing) {
    PlanRequest r = positionsAndKit({170}, {300});
    r.band = Band::between(tenths(2), tenths(6)).value();
    const auto found = remedies(r);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].thickness, tenths(168));
    EXPECT_EQ(found[0].plan.largestResidual, tenths(2));
}

TEST(WhatWouldHelp, names_no_position_that_its_plan_leaves_unmet) {
    // Whichever of the two is met first, the other is named: its own plan must meet it.
    PlanRequest r = positionsAndKit({54, 54}, {115, 10, 65});
    r.band = Band::between(tenths(-1), tenths(1)).value();
    r.largestStack = 1;
    const auto found = remedies(r);
    ASSERT_GE(found.size(), 2U);
    for (const Remedy& remedy : found) {
        SCOPED_TRACE(remedy.position);
        const auto at = std::find_if(remedy.plan.stacks.begin(), remedy.plan.stacks.end(),
                                     [&](const PlannedStack& s) { return s.position == remedy.position; });
        EXPECT_TRUE(at->inBand);
        EXPECT_FALSE(at->pinned) << "it is the plan's, not the assembler's";
    }
}

TEST(WhatWouldHelp, buys_what_can_be_had_where_the_exact_thickness_cannot) {
    // A shim of 46 would leave nothing, but the kit's thickest is 45; a second one of those leaves +1, in band.
    PlanRequest r = positionsAndKit({65, 107}, {16, 45});
    r.band = Band::between(tenths(-1), tenths(3)).value();
    const auto found = remedies(r);
    const auto buys = std::find_if(found.begin(), found.end(), [](const Remedy& one) {
        return one.kind == Remedy::Kind::buy && one.position == "1R" && one.thickness == tenths(45);
    });
    ASSERT_NE(buys, found.end());
    EXPECT_EQ(buys->plan.stacks[1].residual, tenths(1));
}

TEST(WhatWouldHelp, laps_no_leaf_to_next_to_nothing) {
    const auto found = remedies(positionsAndKit({8}, {35}));
    EXPECT_THAT(std::count_if(found.begin(), found.end(),
                              [](const Remedy& one) { return one.kind == Remedy::Kind::lap; }),
                0);
}

TEST(CompareWithBest, says_where_a_built_stack_has_more_shims_than_allowed) {
    PlanRequest r = positionsAndKit({100, 60}, {50, 50, 60});
    r.largestStack = 1;
    const StackPlan best = planStacks(r).value();
    EXPECT_EQ(best.inBand, 1);
    const auto c = compareWithBest(r, best, {{"1L", {"S1", "S2"}}, {"1R", {"S3"}}});
    ASSERT_TRUE(c) << c.error().sentence;
    EXPECT_THAT(c->tooLarge, ::testing::ElementsAre("1L"));
    EXPECT_TRUE(c->isBetter) << "than a plan that keeps to the largest stack";
    EXPECT_FALSE(c->isAsGood());
}

TEST(CompareWithBest, says_when_stacks_beat_a_plan_that_was_stopped) {
    const PlanRequest r = positionsAndKit({100, 60}, {100, 60});
    StackPlan unfinished = planStacks(r).value();
    unfinished.inBand = 1; // as if only one had been found
    unfinished.shims = 1;
    EXPECT_TRUE(compareWithBest(r, unfinished, {{"1L", {"S1"}}, {"1R", {"S2"}}})->isBetter);
}

TEST(CompareWithBest, says_how_far_hand_built_stacks_are_from_best) {
    const PlanRequest r = positionsAndKit({100, 60}, {100, 50, 52, 60, 30, 30});
    const StackPlan best = planStacks(r).value();
    EXPECT_EQ(best.shims, 2);
    const auto c = compareWithBest(r, best, {{"1L", {"S2", "S3"}}, {"1R", {"S5", "S6"}}});
    ASSERT_TRUE(c) << c.error().sentence;
    EXPECT_EQ(c->inBand, 2);
    EXPECT_EQ(c->fewerInBand, 0);
    EXPECT_EQ(c->moreShims, 2);
    EXPECT_EQ(c->largerResidual, tenths(2));
    EXPECT_EQ(c->decides, PlanFigure::shims) << "not the residual, which comes after";
}

TEST(CompareWithBest, finds_the_plan_itself_as_good) {
    const PlanRequest r = positionsAndKit({100, 60}, {100, 50, 52, 60, 30, 30});
    const StackPlan best = planStacks(r).value();
    std::vector<BuiltStack> built;
    for (const PlannedStack& s : best.stacks) {
        built.push_back({s.position, s.shims});
    }
    EXPECT_TRUE(compareWithBest(r, best, built)->isAsGood());
}

TEST(CompareWithBest, counts_a_position_without_a_stack_as_bare) {
    const PlanRequest r = positionsAndKit({100, 2}, {100});
    const auto c = compareWithBest(r, planStacks(r).value(), {});
    ASSERT_TRUE(c);
    EXPECT_EQ(c->inBand, 1);
    EXPECT_EQ(c->fewerInBand, 1);
}

TEST(CompareWithBest, refuses_stacks_that_cannot_be) {
    const PlanRequest r = positionsAndKit({100, 60}, {100, 60});
    const StackPlan best = planStacks(r).value();
    const auto sentence = [&](std::vector<BuiltStack> built) {
        const auto c = compareWithBest(r, best, built);
        return c ? std::string() : c.error().sentence;
    };
    EXPECT_THAT(sentence({{"9L", {}}}), HasSubstr("no position 9L"));
    EXPECT_THAT(sentence({{"1L", {"S7"}}}), HasSubstr("shim S7, which is not in the kit"));
    EXPECT_THAT(sentence({{"1L", {"S1"}}, {"1R", {"S1"}}}), HasSubstr("Shim S1 is built in twice"));
    EXPECT_THAT(sentence({{"1L", {"S1"}}, {"1L", {"S2"}}}), HasSubstr("given two built stacks"));
}

namespace {

/// Small cases of which most leave a position unmet.
PlanRequest shortOfShims(std::mt19937& random) {
    const auto between = [&random](int lo, int hi) {
        return lo + static_cast<int>(random() % static_cast<unsigned>(hi - lo + 1));
    };
    std::vector<std::int64_t> gaps;
    std::vector<std::int64_t> thicknesses;
    for (int i = between(2, 4); i > 0; --i) {
        gaps.push_back(between(40, 160));
    }
    for (int i = between(3, 7); i > 0; --i) {
        thicknesses.push_back(between(10, 120));
    }
    PlanRequest r = positionsAndKit(gaps, thicknesses);
    const int width = between(1, 5);
    r.band = Band::between(tenths(-width), tenths(width)).value();
    return r;
}

using RemedyRank = std::tuple<int, int, Length, Length>;
RemedyRank remedyRankOf(const StackPlan& plan) {
    return {-plan.inBand, plan.shims, plan.largestResidual, plan.sumResidual};
}

const PlannedStack& stackAt(const StackPlan& plan, const std::string& position) {
    return *std::find_if(plan.stacks.begin(), plan.stacks.end(),
                         [&](const PlannedStack& s) { return s.position == position; });
}

bool holds(const PlannedStack& stack, const std::string& shim) {
    return std::find(stack.shims.begin(), stack.shims.end(), shim) != stack.shims.end();
}

} // namespace

TEST(WhatWouldHelp, buys_as_good_a_thickness_as_any_that_fills_the_gap) {
    std::mt19937 random(20'240'601);
    int compared = 0;
    for (int i = 0; i < 120; ++i) {
        SCOPED_TRACE(i);
        const PlanRequest r = shortOfShims(random);
        const StackPlan plan = planStacks(r).value();
        const auto found = whatWouldHelp(r, plan).value();
        Length thickest;
        for (const PlanShim& s : r.shims) {
            thickest = std::max(thickest, s.thickness);
        }
        for (const UnmetPosition& unmet : plan.unmet) {
            const auto remedy = std::find_if(found.begin(), found.end(), [&](const Remedy& one) {
                return one.kind == Remedy::Kind::buy && one.position == unmet.position;
            });
            // Every thickness there is to buy, planned anew.
            for (Length t = tenths(1); t <= thickest; t += tenths(1)) {
                PlanRequest with = r;
                with.shims.push_back({boughtShimId, t});
                const StackPlan other = planStacks(with).value();
                const PlannedStack& stack = stackAt(other, unmet.position);
                if (other.inBand <= plan.inBand || stack.residual != Length() || !holds(stack, boughtShimId)) {
                    continue;
                }
                ASSERT_NE(remedy, found.end()) << "a shim of " << t.value() << " nm would help";
                EXPECT_LE(remedyRankOf(remedy->plan), remedyRankOf(other));
                ++compared;
            }
            if (remedy != found.end()) {
                PlanRequest with = r;
                with.shims.push_back({boughtShimId, remedy->thickness});
                EXPECT_LE(remedyRankOf(planStacks(with).value()), remedyRankOf(remedy->plan));
                EXPECT_GT(remedy->plan.inBand, plan.inBand);
                EXPECT_LE(remedy->thickness, thickest);
            }
        }
    }
    EXPECT_GE(compared, 200);
}

TEST(WhatWouldHelp, laps_as_good_a_shim_as_any_that_fills_the_gap) {
    std::mt19937 random(20'240'602);
    int compared = 0;
    for (int i = 0; i < 250; ++i) {
        SCOPED_TRACE(i);
        const PlanRequest r = shortOfShims(random);
        const StackPlan plan = planStacks(r).value();
        const auto found = whatWouldHelp(r, plan).value();
        for (const UnmetPosition& unmet : plan.unmet) {
            const auto remedy = std::find_if(found.begin(), found.end(), [&](const Remedy& one) {
                return one.kind == Remedy::Kind::lap && one.position == unmet.position;
            });
            // Every shim of the kit lapped by every amount, planned anew.
            for (std::size_t s = 0; s < r.shims.size(); ++s) {
                for (Length off = tenths(1); off <= mostToLap && r.shims[s].thickness - off >= thinnestLapped; off += tenths(1)) {
                    PlanRequest with = r;
                    with.shims[s].thickness -= off;
                    const StackPlan other = planStacks(with).value();
                    const PlannedStack& stack = stackAt(other, unmet.position);
                    if (other.inBand <= plan.inBand || stack.residual != Length() || !holds(stack, r.shims[s].id)) {
                        continue;
                    }
                    ASSERT_NE(remedy, found.end()) << r.shims[s].id << " lapped by " << off.value() << " nm would help";
                    EXPECT_LE(remedyRankOf(remedy->plan), remedyRankOf(other));
                    ++compared;
                }
            }
            if (remedy != found.end()) {
                EXPECT_LE(remedy->from - remedy->thickness, mostToLap);
                EXPECT_GT(remedy->plan.inBand, plan.inBand);
            }
        }
    }
    EXPECT_GE(compared, 100);
}

TEST(WhatWouldHelp, keeps_what_it_promises_when_the_remedy_is_applied) {
    std::mt19937 random(20'240'603);
    int applied = 0;
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        PlanRequest r = shortOfShims(random);
        r.largestStack = i % 4;
        if (i % 3 == 0) {
            r.band = Band::between(tenths(-1), tenths(3)).value();
        }
        const StackPlan plan = planStacks(r).value();
        Length thickest;
        for (const PlanShim& s : r.shims) {
            thickest = std::max(thickest, s.thickness);
        }
        const auto found = whatWouldHelp(r, plan).value();
        for (const Remedy& remedy : found) {
            SCOPED_TRACE(remedy.position);
            PlanRequest with = r;
            if (remedy.kind == Remedy::Kind::buy) {
                EXPECT_LE(remedy.thickness, thickest);
                with.shims.push_back({boughtShimId, remedy.thickness});
            } else {
                EXPECT_LE(remedy.from - remedy.thickness, mostToLap);
                EXPECT_GE(remedy.thickness, thinnestLapped);
                for (PlanShim& shim : with.shims) {
                    shim.thickness = shim.id == remedy.shim ? remedy.thickness : shim.thickness;
                }
            }
            EXPECT_TRUE(stackAt(remedy.plan, remedy.position).inBand);
            EXPECT_GT(remedy.plan.inBand, plan.inBand);
            const StackPlan again = planStacks(with).value();
            EXPECT_EQ(again.inBand, remedy.plan.inBand);
            EXPECT_LE(again.shims, remedy.plan.shims);
            // The stacks of the remedy, counted with the changed kit, are what its plan says.
            std::vector<BuiltStack> built;
            for (const PlannedStack& s : remedy.plan.stacks) {
                built.push_back({s.position, s.shims});
                EXPECT_TRUE(r.largestStack == 0 || static_cast<int>(s.shims.size()) <= r.largestStack);
            }
            const auto counted = compareWithBest(with, remedy.plan, built);
            ASSERT_TRUE(counted) << counted.error().sentence;
            EXPECT_TRUE(counted->isAsGood());
            ++applied;
        }
    }
    EXPECT_GE(applied, 200);
}
