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

/// Three mains with a plate; surveyed, and with a flush stack built at each place.
class BuiltBench : public WorkBench {
public:
    BuiltBench() {
        make(withPlate());
        survey();
        kit();
        build();
    }
    [[nodiscard]] BlockLoad load(const Units& units = inchUnits) const {
        return blockLoad(*girdleModel(facts), facts, assessment, units);
    }
};

bool says(const BlockLoad& load, const std::string& words) {
    return std::ranges::any_of(load.assumptions,
                               [&](const std::string& s) { return s.find(words) != std::string::npos; });
}

TEST(BlockLoad, asks_for_the_plate_that_nobody_described) {
    WorkBench bench;
    const auto none = girdleModel(bench.facts);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().sentence,
              "The load in the block needs the girdle's thickness and metal: enter them with the "
              "layout under Engine.");
    bench.make(withPlate());
    EXPECT_TRUE(girdleModel(bench.facts));
}

TEST(BlockLoad, is_not_known_anywhere_while_a_residual_is_missing) {
    WorkBench bench;
    bench.make(withPlate());
    for (const Position p : bench.positions()) {
        if (p != Position{2, Side::left}) {
            bench.twoPasses(p, 50);
        }
    }
    const BlockLoad load = blockLoad(*girdleModel(bench.facts), bench.facts, bench.assessment, inchUnits);
    ASSERT_EQ(load.missing, (std::vector<Position>{{2, Side::left}}));
    ASSERT_FALSE(load.known);
    EXPECT_NE(load.known.error().sentence.find("cap 2 left"), std::string::npos);
    WorkBench empty;
    empty.make(withPlate());
    const BlockLoad none = blockLoad(*girdleModel(empty.facts), empty.facts, empty.assessment, inchUnits);
    EXPECT_EQ(none.missing.size(), 6U);
    EXPECT_FALSE(none.known);
}

TEST(BlockLoad, follows_the_stacks_with_the_uncertainty_of_their_residuals) {
    BuiltBench bench;
    const GirdleModel model = *girdleModel(bench.facts);
    const BlockLoad flush = blockLoad(model, bench.facts, bench.assessment, inchUnits);
    ASSERT_TRUE(flush.known);
    EXPECT_EQ(flush.known->held.force, std::vector<Force>(6)) << "every residual is nothing";
    ASSERT_TRUE(flush.known->uncertainty);
    EXPECT_GT(flush.known->uncertainty->front(), poundsForce(1));

    bench.make(ShimAdded{"low", {thou(48), ""}, ""});
    bench.make(ShimMeasured{"low", {thou(48), ""}, "MIC"});
    bench.make(ShimMeasured{"low", {thou(48), ""}, "MIC"});
    const std::string effect = effectOnCap(model, flush, {2, Side::left}, thou(2), inchUnits);
    EXPECT_EQ(effect.find("puts "), 0U) << effect;
    bench.make(StackBuilt{{2, Side::left}, {{"low"}}});
    const BlockLoad low = blockLoad(model, bench.facts, bench.assessment, inchUnits);
    const PlaceResidual& at = low.places[2];
    EXPECT_EQ(at.place, (Position{2, Side::left}));
    EXPECT_EQ(at.residual, thou(2));
    ASSERT_TRUE(low.known);
    EXPECT_NEAR(inPoundsForce(low.known->held.force[2]), 2 * inPoundsPerThou(model.stiffness(Rail::held, 2, 2)), 0.1);
    ASSERT_TRUE(low.known->shareOfPreload[2]) << "the main studs have a thread and a torque";
    EXPECT_LT(*low.known->shareOfPreload[2], 0.05);
    EXPECT_EQ(effectOnCap(model, low, {2, Side::left}, thou(-2), inchUnits).find("takes "), 0U);
}

TEST(BlockLoad, tells_no_change_that_would_be_written_as_nothing) {
    BuiltBench bench;
    bench.shim("low", 48, 48);
    bench.make(StackBuilt{{2, Side::left}, {{"low"}}});
    const GirdleModel model = *girdleModel(bench.facts);
    const BlockLoad low = bench.load();
    const auto effectOf = [&](Force change, const Units& units) {
        const double rate = inNewtonsPerMillimetre(model.stiffness(Rail::held, 2, 2));
        return effectOnCap(model, low, {2, Side::left}, millimetres(inNewtons(change) / rate), units);
    };
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    EXPECT_EQ(effectOf(-poundsForce(0.4), inchUnits), "leaves the load on the cap as it is") << "not: 0 lbf";
    EXPECT_EQ(effectOf(-poundsForce(0.4), metric), "takes 2 N off the cap");
    EXPECT_EQ(effectOf(-poundsForce(3), inchUnits), "takes 3 lbf off the cap");
    ASSERT_TRUE(low.known);
    const Force all = low.known->held.force[2];
    EXPECT_EQ(effectOf(-(all + all), inchUnits),
              "turns the load on the cap round, to " + format(all, inchUnits) + " down")
        << "as large as it was, and not as it was";
    EXPECT_EQ(pullOf(poundsForce(0.4), inchUnits), Pull::none);
    EXPECT_EQ(pullOf(-poundsForce(0.6), inchUnits), Pull::down);
}

TEST(BlockLoad, is_not_known_anywhere_while_a_stack_is_stale) {
    BuiltBench bench;
    ASSERT_TRUE(bench.load().known);
    bench.make(ShimMeasured{"S-2L", {thou(51), ""}, "MIC"});
    const BlockLoad load = bench.load();
    ASSERT_FALSE(load.known);
    EXPECT_EQ(load.places[2].known, ResidualOf::stale) << "its gap is accepted";
    EXPECT_EQ(load.missing, (std::vector<Position>{{2, Side::left}}));
    EXPECT_EQ(load.known.error().sentence,
              "No load is known yet: no gap is accepted, or the stack is stale, at cap 2 left.");
}

TEST(BlockLoad, takes_stud_and_cap_by_their_own_dimensions_where_the_group_gives_them) {
    WorkBench bench;
    bench.make(withPlate());
    EXPECT_EQ(springsUnder(bench.facts), Springs(6)) << "nobody gave them";
    const GirdleInputs before = *girdleInputs(bench.facts);
    FastenerGroupSet mains = bench.facts.groups.at({FastenerKind::mainCap, {}}).what;
    mains.grip = Entered<Length>{inches(2.5), ""};
    mains.clamped = "cast iron";
    bench.make(mains);
    const Springs springs = springsUnder(bench.facts);
    ASSERT_TRUE(springs.front());
    const auto joint = jointStiffness(mains);
    EXPECT_EQ(*springs.front(), joint->fastener + joint->clamped);
    EXPECT_TRUE(girdleModel(bench.facts)->springsNotKnown().empty());
    EXPECT_EQ(*girdleInputs(bench.facts), before) << "the plate need not be solved anew for its studs";
}

TEST(BlockLoad, says_in_the_units_shown_what_stands_for_a_stud_that_nobody_described) {
    BuiltBench bench;
    EXPECT_TRUE(says(bench.load(), "taken for a spring of 10000 lbf/thou"));
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    EXPECT_TRUE(says(bench.load(metric), "taken for a spring of 1751 kN/mm"));
    EXPECT_TRUE(says(bench.load(), "at every place, stud and cap"));
    // A stretch beside the torque is enough, and what is taken for granted with it is said.
    FastenerGroupSet mains = bench.facts.groups.at({FastenerKind::mainCap, {}}).what;
    mains.stretch = Entered<Length>{thou(6), ""};
    bench.make(mains);
    EXPECT_FALSE(says(bench.load(), "taken for a spring of"));
    EXPECT_TRUE(says(bench.load(), "Where only the stretch of a main fastener is known"));
}

TEST(BlockLoad, says_of_windows_that_somebody_measured_nothing_is_assumed) {
    BuiltBench bench;
    EXPECT_TRUE(says(bench.load(), "windows and overhang is in fair proportion to the layout"));
    LayoutSet measured = withPlate();
    measured.windowAlong = inches(2.2);
    measured.windowAcross = inches(2.0);
    measured.plateOverhang = inches(1.5);
    bench.make(measured);
    EXPECT_FALSE(says(bench.load(), "windows and overhang is in fair proportion to the layout"));
    EXPECT_TRUE(says(bench.load(), "cutout at the oil pump's pickup is in fair proportion to the layout"));
}

TEST(BlockLoad, knows_the_place_of_the_largest_load_for_each_way_the_girdle_is_held) {
    BuiltBench bench;
    bench.shim("low", 48, 48);
    bench.make(StackBuilt{{2, Side::left}, {{"low"}}});
    const BlockLoad load = bench.load();
    ASSERT_TRUE(load.known);
    const std::size_t held = load.known->largestAt(Rail::held);
    EXPECT_EQ(load.places[held].place, (Position{2, Side::left}));
    EXPECT_EQ(pullOf(load.known->under(Rail::held).force[held], inchUnits), Pull::up);
    const std::size_t free = load.known->largestAt(Rail::free);
    EXPECT_LT(load.known->under(Rail::free).force[free].magnitude(), load.known->held.force[held].magnitude());
}

TEST(BlockLoad, draws_the_plate_down_by_the_whole_gap_where_no_stack_is_built) {
    WorkBench bench;
    bench.make(withPlate());
    bench.survey();
    const BlockLoad load = blockLoad(*girdleModel(bench.facts), bench.facts, bench.assessment, inchUnits);
    ASSERT_TRUE(load.known);
    EXPECT_EQ(load.places[0].known, ResidualOf::bareGap);
    EXPECT_EQ(load.places[0].residual, thou(50));
    EXPECT_GT(load.known->held.force[load.known->largestAt(Rail::held)], poundsForce(300));
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
    const auto model = girdleModel(bench.facts);
    ASSERT_TRUE(model) << model.error().sentence;
    const PlanTask with = planTaskFor(bench.facts, bench.assessment, inchUnits, PlanScope::openPlaces, &*model);
    EXPECT_EQ(with.request.objective, Objective::leastLoad);
    ASSERT_EQ(with.request.stiffness.size(), 36U);
    EXPECT_EQ(with.request.stiffness[1], model->stiffness(Rail::held)[1]);
    const auto plan = planStacks(with.request);
    ASSERT_TRUE(plan) << plan.error().sentence;
    EXPECT_EQ(plan->loads.size(), 6U);
}

TEST(DescribedGirdle, refuses_what_no_plate_can_be) {
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
