// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <assessment/fastener_groups.h>
#include <work/block_load.h>
#include <work/stack_planning.h>

namespace caprail {
namespace {

LayoutSet withPlate() {
    LayoutSet layout = drafts::threeMains();
    layout.plateThickness = inches(0.25);
    layout.plateMetal = PlateMetal::steel;
    return layout;
}

TEST(BlockLoad, asks_for_the_plate_that_nobody_described) {
    WorkBench bench;
    GirdleModelKeeper keeper;
    EXPECT_EQ(keeper.of(bench.facts), nullptr);
    EXPECT_EQ(keeper.problem(), "The load in the block needs the girdle's thickness and metal: enter them with the "
                                "layout under Engine.");
    bench.make(withPlate());
    ASSERT_NE(keeper.of(bench.facts), nullptr);
    EXPECT_TRUE(keeper.problem().empty());
    EXPECT_EQ(keeper.of(bench.facts), keeper.of(bench.facts)) << "condensed once";
}

TEST(BlockLoad, is_not_known_anywhere_while_a_residual_is_missing) {
    WorkBench bench;
    bench.make(withPlate());
    for (const Position p : bench.positions()) {
        if (p != Position{2, Side::left}) {
            bench.twoPasses(p, 50);
        }
    }
    GirdleModelKeeper keeper;
    const BlockLoad load = blockLoad(*keeper.of(bench.facts), bench.facts, bench.assessment);
    ASSERT_EQ(load.missing, (std::vector<Position>{{2, Side::left}}));
    EXPECT_FALSE(load.held);
    EXPECT_FALSE(load.largest());
    EXPECT_FALSE(load.places.front().force);
    EXPECT_NE(load.assumptions.front().find("cap 2 left"), std::string::npos);
    WorkBench empty;
    empty.make(withPlate());
    const BlockLoad none = blockLoad(*keeper.of(empty.facts), empty.facts, empty.assessment);
    EXPECT_EQ(none.missing.size(), 6U);
    EXPECT_FALSE(none.held);
}

TEST(BlockLoad, follows_the_stacks_with_the_uncertainty_of_their_residuals) {
    WorkBench bench;
    bench.make(withPlate());
    bench.survey();
    bench.kit();
    bench.build();
    GirdleModelKeeper keeper;
    const GirdleModel& model = *keeper.of(bench.facts);
    const BlockLoad flush = blockLoad(model, bench.facts, bench.assessment);
    ASSERT_TRUE(flush.held);
    EXPECT_EQ(*flush.largest(), Force()) << "every residual is nothing";
    ASSERT_TRUE(flush.places[0].forceUncertainty);
    EXPECT_GT(*flush.places[0].forceUncertainty, poundsForce(1));

    bench.make(ShimAdded{"low", {thou(48), ""}, ""});
    bench.make(ShimMeasured{"low", {thou(48), ""}, "MIC"});
    bench.make(ShimMeasured{"low", {thou(48), ""}, "MIC"});
    const std::string effect = effectOnCap(model, flush, {2, Side::left}, thou(2), inchUnits);
    EXPECT_EQ(effect.find("puts "), 0U) << effect;
    bench.make(StackBuilt{{2, Side::left}, {{"low"}}});
    const BlockLoad low = blockLoad(model, bench.facts, bench.assessment);
    const PlaceLoad& at = low.places[2];
    EXPECT_EQ(at.place, (Position{2, Side::left}));
    EXPECT_EQ(at.residual, thou(2));
    EXPECT_NEAR(inPoundsForce(*at.force), 2 * inPoundsPerThou(model.stiffness(Rail::held, 2, 2)), 0.1);
    ASSERT_TRUE(at.shareOfPreload) << "the main studs have a thread and a torque";
    EXPECT_LT(*at.shareOfPreload, 0.05);
    EXPECT_EQ(effectOnCap(model, low, {2, Side::left}, thou(-2), inchUnits).find("takes "), 0U);
}

TEST(BlockLoad, is_not_known_anywhere_while_a_stack_is_stale) {
    WorkBench bench;
    bench.make(withPlate());
    bench.survey();
    bench.kit();
    bench.build();
    GirdleModelKeeper keeper;
    ASSERT_TRUE(blockLoad(*keeper.of(bench.facts), bench.facts, bench.assessment).held);
    bench.make(ShimMeasured{"S-2L", {thou(51), ""}, "MIC"});
    const BlockLoad load = blockLoad(*keeper.of(bench.facts), bench.facts, bench.assessment);
    EXPECT_FALSE(load.held);
    EXPECT_EQ(load.missing, (std::vector<Position>{{2, Side::left}}));
    EXPECT_EQ(load.assumptions.front(),
              "No load is known yet: no gap is accepted, or the stack is stale, at cap 2 left.");
}

TEST(BlockLoad, takes_stud_and_cap_by_their_own_dimensions_where_the_group_gives_them) {
    WorkBench bench;
    bench.make(withPlate());
    EXPECT_EQ(girdleInputs(bench.facts)->springs, std::vector<std::optional<double>>(6)) << "nobody gave them";
    FastenerGroupSet mains = bench.facts.groups.at({FastenerKind::mainCap, {}}).what;
    mains.grip = Entered<Length>{inches(2.5), ""};
    mains.clamped = "cast iron";
    bench.make(mains);
    const auto springs = girdleInputs(bench.facts)->springs;
    ASSERT_TRUE(springs.front());
    const auto joint = jointStiffness(mains);
    EXPECT_NEAR(*springs.front() * 1e-3,
                (static_cast<double>(joint->fastener.value()) + static_cast<double>(joint->clamped.value())) * 1e-6,
                1e-6);
    GirdleModelKeeper keeper;
    EXPECT_TRUE(keeper.of(bench.facts)->springsNotKnown().empty());
}

TEST(BlockLoad, draws_the_plate_down_by_the_whole_gap_where_no_stack_is_built) {
    WorkBench bench;
    bench.make(withPlate());
    bench.survey();
    GirdleModelKeeper keeper;
    const BlockLoad load = blockLoad(*keeper.of(bench.facts), bench.facts, bench.assessment);
    ASSERT_TRUE(load.held);
    EXPECT_EQ(load.places[0].known, ResidualOf::bareGap);
    EXPECT_EQ(load.places[0].residual, thou(50));
    EXPECT_GT(*load.largest(), poundsForce(300));
}

TEST(BlockLoad, gives_the_plan_its_stiffness_and_says_when_least_load_cannot_be_aimed_at) {
    WorkBench bench;
    bench.survey();
    bench.kit();
    RulesSet rules = bench.facts.rules;
    rules.objective = Objective::leastLoad;
    bench.make(rules);
    const PlanTask without = planTaskFor(bench.facts, bench.assessment);
    EXPECT_EQ(without.request.objective, Objective::smallestResidual);
    EXPECT_NE(without.doubt.find("Least load cannot be aimed at"), std::string::npos);
    bench.make(withPlate());
    bench.survey();
    GirdleModelKeeper keeper;
    const GirdleModel* model = keeper.of(bench.facts);
    const PlanTask with = planTaskFor(bench.facts, bench.assessment, inchUnits, PlanScope::openPlaces, model);
    EXPECT_EQ(with.request.objective, Objective::leastLoad);
    ASSERT_EQ(with.request.stiffness.size(), 36U);
    EXPECT_EQ(with.request.stiffness[1], model->stiffness(Rail::held, 0, 1));
    const auto plan = planStacks(with.request);
    ASSERT_TRUE(plan) << plan.error().sentence;
    EXPECT_EQ(plan->loads.size(), 6U);
}

TEST(GirdlePlateOf, refuses_what_no_plate_can_be) {
    WorkBench bench;
    LayoutSet layout = withPlate();
    layout.plateThickness = inches(5);
    EXPECT_NE(bench.refusal(layout).find("it must be from 0.03 to 1.5 in"), std::string::npos);
    layout = withPlate();
    layout.plateModulus = 120'000;
    EXPECT_NE(bench.refusal(layout).find("both its elastic modulus and its Poisson's ratio"), std::string::npos);
    layout.platePoisson = 310;
    bench.make(layout);
    EXPECT_EQ(bench.facts.girdlePlate->poissonRatio, 0.31);
    layout.windowAlong = inches(4.3);
    layout.windowAcross = inches(5);
    EXPECT_NE(bench.refusal(layout).find("meets the next one"), std::string::npos);
}

} // namespace
} // namespace caprail
