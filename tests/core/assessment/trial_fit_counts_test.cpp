// SPDX-License-Identifier: GPL-3.0-or-later
/// The trial fit with the girdle's nuts at torque, the turning torque, and what is asked back of the pickup's terms.
#include "bench.h"

#include <assessment/work_order.h>
#include <gmock/gmock.h>
#include <ledger/band_names.h>

using namespace caprail;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

TrialFitResult clear(TrialItem item, double clearanceThou, std::int64_t number = 0) {
    return {item, number, TrialResult::measured, Entered<Length>{thou(clearanceThou), ""}, ""};
}

} // namespace

// --- Trial fit -------------------------------------------------------------------------------------------------

TEST(TrialFitCounts, only_with_the_girdles_nuts_at_torque) {
    Bench bench;
    bench.upToTheFit();
    const TrialFitResult dipstick{TrialItem::dipstick, 0, TrialResult::pass, {}, ""};
    EXPECT_THAT(bench.refusal(dipstick), AllOf(HasSubstr("nuts at torque"), HasSubstr("girdle nut 1 left")));
    drafts::girdleToTorque(bench, bench.facts);
    bench.make(dipstick);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::good);
}

TEST(TrialFitCounts, one_that_came_from_outside_with_a_loose_nut_is_not_proven) {
    Bench bench;
    bench.upToTheFit();
    bench.comesFromOutside(TrialFitResult{TrialItem::keyway, 0, TrialResult::pass, {}, ""}, 1);
    EXPECT_EQ(bench.stateOf("trial-fit:keyway agrees at top dead centre"), CheckState::notProven);
    EXPECT_THAT(bench.assessment.find("trial-fit:keyway agrees at top dead centre")->sentence,
                HasSubstr("nuts were not at torque"));
}

TEST(TrialFitCounts, a_stack_that_is_lifted_off_loosens_the_nuts) {
    Bench bench;
    bench.upToTheFit();
    drafts::girdleToTorque(bench, bench.facts);
    EXPECT_FALSE(looseNut(bench.facts));
    bench.stacks(StackMove::takenOff);
    EXPECT_TRUE(looseNut(bench.facts)) << "the girdle was off";
    EXPECT_TRUE(isTightAsSpecified(bench.facts, {FastenerKind::mainCap, 2, Side::right, Ring::inner}))
        << "the caps were not";
}

TEST(TrialFitCounts, pickup_tube_and_dipstick_have_least_clearances_of_their_own) {
    Bench bench;
    bench.upToTheFit();
    drafts::girdleToTorque(bench, bench.facts);
    bench.make(clear(TrialItem::pickupTube, 0.5));
    bench.make(clear(TrialItem::dipstick, 0.5));
    EXPECT_EQ(bench.stateOf("trial-fit:pickup tube clear"), CheckState::out);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::out);
    bench.make(clear(TrialItem::pickupTube, 99));
    EXPECT_EQ(bench.stateOf("trial-fit:pickup tube clear"), CheckState::out) << "0.100 in asked";
    bench.make(clear(TrialItem::pickupTube, 100));
    bench.make(clear(TrialItem::dipstick, 60));
    EXPECT_EQ(bench.stateOf("trial-fit:pickup tube clear"), CheckState::good);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::good);
    RulesSet rules = bench.facts.rules;
    rules.pickupTubeMinimum = thou(120);
    rules.source = "the shop";
    bench.make(rules);
    EXPECT_EQ(bench.stateOf("trial-fit:pickup tube clear"), CheckState::out) << "the record's own rule counts";
    EXPECT_EQ(bench.facts.deviations.size(), 1U) << "and was changed after the clearance was read";
}

TEST(TrialFitCounts, a_pass_by_eye_is_said_and_counted) {
    Bench bench;
    bench.upToTheFit();
    bench.trialFit();
    bench.make(clear(TrialItem::dipstick, 80));
    const std::size_t before = bench.assessment.passedByEye;
    bench.make(TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""});
    EXPECT_EQ(bench.assessment.passedByEye, before + 1);
    EXPECT_THAT(bench.assessment.find("trial-fit:dipstick clear")->sentence, HasSubstr("by eye, not measured"));
    bench.make(clear(TrialItem::dipstick, 80));
    EXPECT_EQ(bench.assessment.passedByEye, before);
    bench.make(TrialFitResult{TrialItem::keyway, 0, TrialResult::pass, {}, ""});
    EXPECT_EQ(bench.assessment.passedByEye, before) << "there is nothing to measure in it";
}

TEST(TrialFitCounts, what_was_changed_at_one_throw_makes_the_two_turns_stale) {
    Bench bench;
    bench.upToTheFit();
    bench.trialFit();
    const std::string turns = "trial-fit:two turns by hand, nothing binds";
    EXPECT_EQ(bench.stateOf(turns), CheckState::good);
    const auto again = bench.make(clear(TrialItem::counterweights, 70, 2));
    EXPECT_EQ(bench.stateOf(turns), CheckState::stale);
    EXPECT_THAT(bench.assessment.find(turns)->sentence, AllOf(HasSubstr(std::to_string(again)), HasSubstr("throw 2")));
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("trial-fit:keyway agrees at top dead centre"), CheckState::good);
    bench.make(TrialFitResult{TrialItem::turnsFreely, 0, TrialResult::pass, {}, ""});
    EXPECT_EQ(bench.stateOf(turns), CheckState::good);
}

TEST(TrialFitCounts, another_value_specified_for_the_nuts_makes_it_stale) {
    Bench bench;
    bench.upToTheFit();
    bench.trialFit();
    bench.group(FastenerKind::girdleNut, 6, "3/8-24", 35);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::stale);
}

// --- Turning torque --------------------------------------------------------------------------------------------

TEST(TurningTorqueCheck, is_judged_by_its_largest_rise_and_shows_a_girdle_that_binds) {
    Bench bench;
    bench.upToTheFit();
    const std::string code = "turning-torque:girdle at torque";
    EXPECT_EQ(bench.stateOf("turning-torque:before the girdle"), CheckState::notDone);
    drafts::girdleToTorque(bench, bench.facts);
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 13.9, 9.9);
    EXPECT_EQ(bench.stateOf(code), CheckState::good) << "2 lbf·ft up, and no more";
    EXPECT_THAT(bench.assessment.find(code)->sentence, AllOf(HasSubstr("2"), HasSubstr("nobody confirmed it")));
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14, 10);
    EXPECT_EQ(bench.stateOf(code), CheckState::good) << "at the limit";
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14.1, 10);
    EXPECT_EQ(bench.stateOf(code), CheckState::out) << "just over it";
    RulesSet rules = bench.facts.rules;
    rules.decision = DecisionRule::guarded;
    bench.make(rules);
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14, 10);
    EXPECT_EQ(bench.stateOf(code), CheckState::tooCloseToCall) << "the wrench may be off by 4 %";
    EXPECT_THAT(bench.assessment.find(code)->remedy, HasSubstr("one wrench"));
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14, 10.2);
    EXPECT_EQ(bench.stateOf(code), CheckState::out);
    EXPECT_THAT(bench.assessment.find(code)->remedy, HasSubstr("The girdle binds"));
    rules.turningRise = poundFeet(3);
    bench.make(rules);
    EXPECT_EQ(bench.stateOf(code), CheckState::good);
    EXPECT_THAT(bench.assessment.find(code)->sentence, testing::Not(HasSubstr("confirmed")));
}

TEST(TurningTorqueCheck, proves_nothing_without_the_one_before_the_girdle_or_without_its_wrench) {
    Bench bench;
    bench.upToTheFit();
    drafts::tightenAsSpecified(bench, bench.facts, bench.facts.layout->girdleNuts());
    drafts::readTurning(bench, TurningStage::girdleAtTorque);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::notProven);
    EXPECT_THAT(bench.refusal(TurningTorqueRead{TurningStage::beforeGirdle, {poundFeet(12), ""}, {poundFeet(8), ""}, "W1"}),
                HasSubstr("girdle's nuts are at torque"));
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 12, 8, "");
    EXPECT_THAT(bench.assessment.find("turning-torque:girdle at torque")->sentence, HasSubstr("No wrench is named"));
}

TEST(TurningTorqueCheck, refuses_what_cannot_be) {
    Bench bench;
    bench.upToTheFit();
    const auto read = [](double breakaway, double running, const char* with) {
        return TurningTorqueRead{
            TurningStage::beforeGirdle, {poundFeet(breakaway), ""}, {poundFeet(running), ""}, with};
    };
    EXPECT_THAT(bench.refusal(read(8, 12, "W1")), HasSubstr("what starts it first"));
    EXPECT_THAT(bench.refusal(read(12, 8, "MIC")), HasSubstr("cannot do this"));
    EXPECT_THAT(bench.refusal(TurningTorqueRead{
                    TurningStage::girdleAtTorque, {poundFeet(12), ""}, {poundFeet(8), ""}, "W1"}),
                HasSubstr("nuts at torque"));
    EXPECT_THAT(bench.refusal(read(400, 8, "W1")), HasSubstr("not plausible"));
}

TEST(TurningTorqueCheck, proves_nothing_below_the_range_of_its_wrench) {
    Bench bench;
    bench.upToTheFit();
    bench.make(TurningTorqueRead{TurningStage::beforeGirdle, {poundFeet(12), ""}, {poundFeet(4), "4!"}, "W1"});
    EXPECT_EQ(bench.stateOf("turning-torque:before the girdle"), CheckState::notProven);
    EXPECT_THAT(bench.assessment.find("turning-torque:before the girdle")->sentence, HasSubstr("outside the range of W1"));
}

TEST(EndPlay, is_measured_with_every_main_cap_at_torque) {
    Bench bench;
    bench.upToTheFit();
    const FitReading fit{std::string(bands::crankEndPlay), 1, {thou(6), ""}, "DIAL"};
    bench.make(drafts::instrument("DIAL", InstrumentType::dialIndicator, 1));
    bench.band(bands::crankEndPlay, 5, 8);
    const FastenerId loose{FastenerKind::mainCap, 2, Side::right, Ring::inner};
    bench.make(FastenerLoosened{loose, "washer"});
    EXPECT_THAT(bench.refusal(fit), AllOf(HasSubstr("every main cap at torque"), HasSubstr("2 right")));
    drafts::tightenAsSpecified(bench, bench.facts, {loose});
    bench.make(fit);
}

TEST(TurningTorqueCheck, holds_closing_and_falls_with_a_fastener_that_moved) {
    Bench bench;
    bench.upToTheFit();
    bench.trialFit();
    bench.pickup();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("verify-round"));
    bench.stacks(StackMove::takenOff);
    bench.make(RoundBegun{1, "W1"});
    bench.outcome(FastenerId{FastenerKind::mainCap, 2, Side::right, Ring::inner}, Outcome::moved, 4);
    EXPECT_EQ(bench.stateOf("turning-torque:before the girdle"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::stale);
}

// --- Pickup ----------------------------------------------------------------------------------------------------

TEST(PickupAskedBack, a_value_that_no_such_part_can_have) {
    Bench bench;
    const auto read = [](PickupTerm term, double value, const char* typed = "") {
        return PickupReading{term, {inches(value), typed}, ""};
    };
    EXPECT_THAT(bench.refusal(read(PickupTerm::gasket, 7.5)), AllOf(HasSubstr("compressed gasket"), HasSubstr("7.5")));
    EXPECT_THAT(bench.refusal(read(PickupTerm::plate, 7.49)), HasSubstr("girdle plate"));
    EXPECT_THAT(bench.refusal(read(PickupTerm::panDepth, 0.25)), HasSubstr("pan depth"));
    EXPECT_THAT(bench.refusal(read(PickupTerm::pickupDepth, 0.061)), HasSubstr("pickup below rail"));
    bench.make(read(PickupTerm::gasket, 0.3, "0.3!"));
    bench.make(read(PickupTerm::panDepth, 7.5));
    EXPECT_THAT(bench.refusal(read(PickupTerm::panDepth, 7.4)), HasSubstr("far from the reading before it"));
    bench.make(PartChanged{Part::pan, "", "another pan"});
    bench.make(read(PickupTerm::panDepth, 7.4));
}

TEST(PickupBudget, one_depth_gauge_for_two_terms_has_a_zero_in_common) {
    Bench one;
    one.pickup();
    Bench two;
    two.make(drafts::instrument("DEPTH-B", InstrumentType::depthGauge, 0.4));
    for (int pass = 0; pass < 2; ++pass) {
        two.make(PickupReading{PickupTerm::panDepth, {inches(7.5), ""}, "DEPTH"});
        two.make(PickupReading{PickupTerm::gasket, {thou(60), ""}, "MIC"});
        two.make(PickupReading{PickupTerm::plate, {thou(250), ""}, "MIC"});
        two.make(PickupReading{PickupTerm::pickupDepth, {inches(7.5), ""}, "DEPTH-B"});
    }
    EXPECT_LT(*one.assessment.pickup.uncertainty.expanded(), *two.assessment.pickup.uncertainty.expanded())
        << "what is common drops out of the difference";
}
