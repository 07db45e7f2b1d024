// SPDX-License-Identifier: GPL-3.0-or-later
/// Trial fit, turning torque and closing: each with its own evidence.
#include "bench.h"

#include <assessment/closing_steps.h>
#include <assessment/review.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

using enum ClosingStep;

constexpr Position girdle2R{2, Side::right};
constexpr FastenerId nut2R{FastenerKind::girdleNut, 2, Side::right, Ring::inner};
constexpr FastenerId cap2R{FastenerKind::mainCap, 2, Side::right, Ring::inner};

TrialFitResult clear(TrialItem item, double clearanceThou, std::int64_t number = 0) {
    return {item, number, TrialResult::measured, Entered<Length>{thou(clearanceThou), ""}, ""};
}

/// Up to the open gate of the trial fit, the girdle's nuts not yet tight.
void upToTheFit(Bench& bench) {
    bench.tightenAll();
    bench.bearings();
    bench.survey();
    bench.kit();
    bench.build();
    bench.recheck();
    bench.make(GirdleWaySet{});
}

/// One entry, made past every rule, `minutes` after the one before it.
void comesFromOutside(Bench& bench, Body body, int minutes) {
    const Entry& entry = bench.ledger.append(
        {bench.ledger.entries().back().time.milliseconds + minutes * 60'000LL}, "Mira", std::move(body));
    apply(bench.facts, entry);
    bench.assessment = assess(bench.facts);
}

} // namespace

// --- Trial fit -------------------------------------------------------------------------------------------------

TEST(TrialFitCounts, only_with_the_girdles_nuts_at_torque) {
    Bench bench;
    upToTheFit(bench);
    const TrialFitResult dipstick{TrialItem::dipstick, 0, TrialResult::pass, {}, ""};
    EXPECT_THAT(bench.refusal(dipstick), AllOf(HasSubstr("nuts at torque"), HasSubstr("girdle nut 1 left")));
    drafts::girdleToTorque(bench, bench.facts);
    bench.make(dipstick);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::good);
}

TEST(TrialFitCounts, one_that_came_from_outside_with_a_loose_nut_is_not_proven) {
    Bench bench;
    upToTheFit(bench);
    comesFromOutside(bench, TrialFitResult{TrialItem::keyway, 0, TrialResult::pass, {}, ""}, 1);
    EXPECT_EQ(bench.stateOf("trial-fit:keyway agrees at top dead centre"), CheckState::notProven);
    EXPECT_THAT(bench.assessment.find("trial-fit:keyway agrees at top dead centre")->sentence,
                HasSubstr("nuts were not at torque"));
}

TEST(TrialFitCounts, a_stack_that_is_lifted_off_loosens_the_nuts) {
    Bench bench;
    upToTheFit(bench);
    drafts::girdleToTorque(bench, bench.facts);
    EXPECT_FALSE(looseNut(bench.facts));
    bench.stacks(StackMove::takenOff);
    EXPECT_TRUE(looseNut(bench.facts)) << "the girdle was off";
    EXPECT_TRUE(isTightAsSpecified(bench.facts, cap2R)) << "the caps were not";
}

TEST(TrialFitCounts, pickup_tube_and_dipstick_have_least_clearances_of_their_own) {
    Bench bench;
    upToTheFit(bench);
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

TEST(TrialFitCounts, what_was_changed_at_one_throw_makes_the_two_turns_stale) {
    Bench bench;
    upToTheFit(bench);
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
    upToTheFit(bench);
    bench.trialFit();
    bench.group(FastenerKind::girdleNut, 6, "3/8-24", 35);
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::stale);
}

// --- Turning torque --------------------------------------------------------------------------------------------

TEST(TurningTorqueCheck, is_judged_by_its_largest_rise_and_shows_a_girdle_that_binds) {
    Bench bench;
    upToTheFit(bench);
    const std::string code = "turning-torque:girdle at torque";
    EXPECT_EQ(bench.stateOf("turning-torque:before the girdle"), CheckState::notDone);
    drafts::girdleToTorque(bench, bench.facts);
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14, 10);
    EXPECT_EQ(bench.stateOf(code), CheckState::good) << "2 lbf·ft up, and no more";
    EXPECT_THAT(bench.assessment.find(code)->sentence, AllOf(HasSubstr("2"), HasSubstr("nobody confirmed it")));
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 14, 10.1);
    EXPECT_EQ(bench.stateOf(code), CheckState::out);
    EXPECT_THAT(bench.assessment.find(code)->remedy, HasSubstr("The girdle binds"));
    RulesSet rules = bench.facts.rules;
    rules.turningRise = poundFeet(3);
    bench.make(rules);
    EXPECT_EQ(bench.stateOf(code), CheckState::good);
    EXPECT_THAT(bench.assessment.find(code)->sentence, testing::Not(HasSubstr("confirmed")));
}

TEST(TurningTorqueCheck, proves_nothing_without_the_one_before_the_girdle_or_without_its_wrench) {
    Bench bench;
    upToTheFit(bench);
    drafts::tightenAsSpecified(bench, bench.facts, bench.facts.layout->girdleNuts());
    drafts::readTurning(bench, TurningStage::girdleAtTorque);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::notProven);
    EXPECT_THAT(bench.refusal(TurningTorqueRead{TurningStage::beforeGirdle, {poundFeet(12), ""}, {poundFeet(8), ""}, "W1"}),
                HasSubstr("girdle's nuts are at torque"));
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 12, 8, "");
    EXPECT_THAT(bench.assessment.find("turning-torque:girdle at torque")->sentence, HasSubstr("what it was read with"));
}

TEST(TurningTorqueCheck, refuses_what_cannot_be) {
    Bench bench;
    upToTheFit(bench);
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

TEST(TurningTorqueCheck, holds_closing_and_falls_with_a_fastener_that_moved) {
    Bench bench;
    upToTheFit(bench);
    bench.trialFit();
    bench.pickup();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("verify-round"));
    bench.stacks(StackMove::takenOff);
    bench.make(RoundBegun{1, "W1"});
    bench.outcome(cap2R, Outcome::moved, 4);
    EXPECT_EQ(bench.stateOf("turning-torque:before the girdle"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("turning-torque:girdle at torque"), CheckState::stale);
}

// --- Closing ---------------------------------------------------------------------------------------------------

TEST(ClosingSteps, shims_are_counted_back_to_the_last_one) {
    Bench bench;
    bench.make(ShimAdded{"SPARE", {thou(20), ""}, ""});
    bench.make(ShimAdded{"BURRED", {thou(20), ""}, ""});
    bench.make(ShimSetAside{"BURRED", true, "burred"});
    bench.readyToClose();
    const auto counted = [](std::int64_t fitted, std::int64_t aside, std::int64_t left) {
        ClosingStepDone done{shimsCounted, {}, ""};
        done.fitted = fitted;
        done.aside = aside;
        done.leftOver = left;
        return done;
    };
    EXPECT_THAT(bench.refusal(ClosingStepDone{shimsCounted, {}, ""}), HasSubstr("three numbers"));
    EXPECT_THAT(bench.refusal(counted(6, 1, 0)),
                AllOf(HasSubstr("6 + 1 + 0 = 7"), HasSubstr("the kit has 8"), HasSubstr("find what is missing")));
    EXPECT_THAT(bench.refusal(counted(5, 1, 2)), HasSubstr("6 in the stacks, 1 set aside and 1 left over"));
    bench.make(counted(6, 1, 1));
    bench.make(ShimSetAside{"SPARE", true, "bent"});
    EXPECT_EQ(bench.assessment.closing.at(shimsCounted).state, CheckState::stale) << "the kit is not as counted";
    EXPECT_EQ(bench.assessment.nextClosingStep, shimsCounted);
    bench.make(counted(6, 2, 0));
    EXPECT_EQ(bench.assessment.nextClosingStep, stacksRefitted);
}

TEST(ClosingSteps, nothing_begins_while_girdle_or_pan_has_no_torque_specified) {
    Bench bench;
    bench.readyToClose();
    bench.facts.groups.erase({FastenerKind::panRail, std::nullopt});
    const auto step = drafts::closingStep(bench.facts, shimsCounted);
    EXPECT_THAT(bench.refusal(step), AllOf(HasSubstr("pan rail 1"), HasSubstr("before closing begins")));
}

TEST(ClosingSteps, every_stack_goes_back_by_its_label) {
    Bench bench;
    bench.readyToClose();
    bench.close(shimsCounted);
    EXPECT_THAT(bench.refusal(ClosingStepDone{stacksRefitted, {}, ""}), HasSubstr("cap 1 left is not back on"));
    bench.stacks(StackMove::putBack);
    bench.make(ClosingStepDone{stacksRefitted, {}, ""});
    EXPECT_EQ(bench.assessment.nextClosingStep, beadLaid);
}

TEST(ClosingSteps, a_bead_names_product_lot_and_open_time) {
    Bench bench;
    bench.readyToClose();
    bench.close(stacksRefitted);
    ClosingStepDone bead{beadLaid, 15, ""};
    EXPECT_THAT(bench.refusal(bead), HasSubstr("product and lot"));
    bead.product = "Grey sealant";
    bead.lot = " ";
    EXPECT_THAT(bench.refusal(bead), HasSubstr("product and lot"));
    bead.lot = "2231-A";
    bead.openMinutes = 2000;
    EXPECT_THAT(bench.refusal(bead), HasSubstr("1 to 1440"));
    bead.openMinutes = 15;
    bench.make(bead);
    EXPECT_EQ(beadOpenUntil(bench.facts)->milliseconds,
              bench.facts.closing.at(beadLaid).time.milliseconds + 15 * 60'000);
}

TEST(ClosingSteps, a_girdle_lowered_ten_hours_after_the_bead_is_out_and_the_bead_is_laid_again) {
    Bench bench;
    bench.readyToClose();
    bench.close(beadLaid);
    comesFromOutside(bench, ClosingStepDone{girdleLowered, {}, ""}, 602);
    EXPECT_EQ(bench.assessment.closing.at(beadLaid).state, CheckState::out);
    EXPECT_THAT(bench.assessment.closing.at(beadLaid).sentence, AllOf(HasSubstr("10 h 2 min"), HasSubstr("20 min")));
    EXPECT_THAT(bench.assessment.next.sentence, HasSubstr("clean the bead off"));
    EXPECT_THAT(bench.refusal(ClosingStepDone{nutsTightened, {}, ""}), HasSubstr("10 h 2 min"));
    bench.make(drafts::closingStep(bench.facts, beadLaid));
    EXPECT_EQ(bench.assessment.closing.at(girdleLowered).state, CheckState::stale) << "it lies on the bead before";
    EXPECT_EQ(bench.assessment.nextClosingStep, girdleLowered);
    bench.make(ClosingStepDone{girdleLowered, {}, ""});
    EXPECT_EQ(bench.assessment.closing.at(beadLaid).state, CheckState::good);
    EXPECT_EQ(bench.assessment.nextClosingStep, nutsTightened);
}

TEST(ClosingSteps, the_open_time_is_kept_to_the_second) {
    Bench bench;
    bench.readyToClose();
    bench.close(beadLaid);
    Bench late = bench;
    comesFromOutside(bench, ClosingStepDone{girdleLowered, {}, ""}, 20);
    EXPECT_EQ(bench.assessment.closing.at(beadLaid).state, CheckState::good);
    comesFromOutside(late, ClosingStepDone{girdleLowered, {}, ""}, 21);
    EXPECT_EQ(late.assessment.closing.at(beadLaid).state, CheckState::out);
}

TEST(ClosingSteps, a_bead_is_struck_and_laid_again_before_the_girdle_comes_down) {
    Bench bench;
    bench.readyToClose();
    bench.close(beadLaid);
    const auto first = bench.facts.closing.at(beadLaid).entry;
    bench.make(Struck{first, "skinned over"});
    EXPECT_EQ(bench.assessment.nextClosingStep, beadLaid);
    bench.close(girdleLowered);
    EXPECT_GT(bench.facts.closing.at(beadLaid).entry, first);
}

TEST(ClosingSteps, nuts_and_pan_are_done_when_each_fastener_is_at_its_value) {
    Bench bench;
    bench.readyToClose();
    bench.close(girdleLowered);
    EXPECT_THAT(bench.refusal(ClosingStepDone{nutsTightened, {}, ""}), HasSubstr("girdle nut 1 left"));
    drafts::tightenAsSpecified(bench, bench.facts, bench.facts.layout->girdleNuts());
    bench.make(FastenerTightened{nut2R, Entered<Torque>{poundFeet(20), ""}, {}, {}, "W1"});
    EXPECT_THAT(bench.refusal(ClosingStepDone{nutsTightened, {}, ""}), HasSubstr("girdle nut 2 right"))
        << "20 lbf·ft of 30";
    bench.close(crankTurned);
    EXPECT_THAT(bench.refusal(ClosingStepDone{panFastened, {}, ""}), HasSubstr("pan rail 1"));
    drafts::tightenAsSpecified(bench, bench.facts, panFasteners(bench.facts));
    EXPECT_THAT(bench.refusal(ClosingStepDone{panFastened, {}, ""}), HasSubstr("after the pan"));
    EXPECT_THAT(bench.refusal(SignedOff{"x"}), HasSubstr("pan fastened"));
    drafts::readTurning(bench, TurningStage::afterPan);
    bench.make(ClosingStepDone{panFastened, {}, ""});
    EXPECT_TRUE(bench.assessment.isReadyToSign);
}

TEST(ClosingSteps, the_crank_is_turned_after_the_nuts_are_finally_tight) {
    Bench bench;
    bench.readyToClose();
    bench.close(nutsTightened);
    EXPECT_THAT(bench.refusal(ClosingStepDone{crankTurned, {}, ""}), HasSubstr("was not read since"))
        << "that of the trial fit does not count";
    bench.close(crankTurned);
    bench.make(FastenerLoosened{nut2R, "to look"});
    EXPECT_EQ(bench.assessment.closing.at(nutsTightened).state, CheckState::stale);
    bench.make(FastenerTightened{nut2R, bench.facts.groupOf(nut2R)->what.torque, {}, {}, "W1"});
    EXPECT_EQ(bench.assessment.closing.at(nutsTightened).state, CheckState::good);
    EXPECT_EQ(bench.assessment.closing.at(crankTurned).state, CheckState::stale) << "turned before that nut was tight";
    drafts::readTurning(bench, TurningStage::girdleAtTorque);
    EXPECT_EQ(bench.assessment.closing.at(crankTurned).state, CheckState::good);
}

TEST(ClosingSteps, a_girdle_that_binds_when_it_is_closed_holds_everything_after) {
    Bench bench;
    bench.readyToClose();
    bench.close(nutsTightened);
    drafts::readTurning(bench, TurningStage::girdleAtTorque, 20, 15);
    EXPECT_FALSE(bench.isOpen(GateKind::closing));
    EXPECT_THAT(bench.refusal(ClosingStepDone{crankTurned, {}, ""}), HasSubstr("The girdle binds"));
}

TEST(ClosingSteps, a_stack_touched_after_the_bead_takes_back_every_step_from_the_stacks_on) {
    Bench bench;
    bench.readyToClose();
    bench.close();
    const auto off = bench.make(StackMoved{girdle2R, StackMove::takenOff});
    EXPECT_EQ(bench.assessment.nextClosingStep, stacksRefitted);
    for (const ClosingStep step : {stacksRefitted, beadLaid, girdleLowered, nutsTightened, panFastened}) {
        EXPECT_EQ(bench.assessment.closing.at(step).state, CheckState::stale) << word(step);
    }
    EXPECT_THAT(bench.assessment.closing.at(stacksRefitted).sentence, HasSubstr(std::to_string(off)));
    EXPECT_THAT(bench.refusal(SignedOff{"x"}), HasSubstr("stacks refitted"));
}

TEST(ClosingSteps, an_import_that_ticks_everything_without_evidence_closes_nothing) {
    Bench bench;
    bench.readyToClose();
    Ledger forged = bench.ledger;
    for (const auto& [step, name] : allWords<ClosingStep>()) {
        forged.append({forged.entries().back().time.milliseconds + 60'000}, "Mira", ClosingStepDone{step, {}, ""});
    }
    forged.append({forged.entries().back().time.milliseconds + 60'000}, "Mira", SignedOff{"x"});
    const Facts facts = fold(forged);
    EXPECT_FALSE(facts.isClosed());
    EXPECT_EQ(facts.neverValid.size(), 8U);
    EXPECT_THAT(reviewLedger(forged).first->why, HasSubstr("Count the shims by hand"));
}

// --- The shop's own checks -------------------------------------------------------------------------------------

namespace {

OwnCheckSet ownCheck(const char* name, const char* words, OwnCheckSort sort, OwnCheckHolds holds,
                     std::int64_t places = 1) {
    OwnCheckSet set;
    set.ownCheck = name;
    set.words = words;
    set.sort = sort;
    set.holds = holds;
    set.places = places;
    if (sort == OwnCheckSort::measured) {
        set.lo = Entered<Length>{thou(20), ""};
        set.hi = Entered<Length>{thou(40), ""};
    }
    if (holds == OwnCheckHolds::closingStep) {
        set.step = panFastened;
    }
    return set;
}

OwnCheckAnswered yes(const char* name, std::int64_t place = 1, YesNo answer = YesNo::yes) {
    OwnCheckAnswered answered;
    answered.ownCheck = name;
    answered.place = place;
    answered.answer = answer;
    return answered;
}

} // namespace

TEST(OwnChecks, each_holds_what_it_was_placed_before) {
    Bench bench;
    bench.make(ownCheck("tray", "windage tray clear of every throw", OwnCheckSort::yesNo, OwnCheckHolds::trialFit, 2));
    bench.make(ownCheck("seal", "rear main seal in", OwnCheckSort::yesNo, OwnCheckHolds::closing));
    bench.make(ownCheck("bolts", "pump and pickup bolts", OwnCheckSort::yesNo, OwnCheckHolds::closingStep));
    upToTheFit(bench);
    EXPECT_THAT(bench.holding(GateKind::trialFit), ElementsAre("own-check:tray:1", "own-check:tray:2"));
    bench.make(yes("tray"));
    bench.make(yes("tray", 2, YesNo::no));
    EXPECT_THAT(bench.holding(GateKind::trialFit), ElementsAre("own-check:tray:2"));
    EXPECT_EQ(bench.stateOf("own-check:tray:2"), CheckState::out);
    bench.make(yes("tray", 2));
    EXPECT_THAT(bench.holding(GateKind::trialFit), IsEmpty());
    bench.trialFit();
    bench.pickup();
    bench.stacks(StackMove::takenOff);
    bench.round();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("own-check:seal:1"));
    bench.make(yes("seal"));
    EXPECT_TRUE(bench.isOpen(GateKind::closing)) << "the bolts hold their step alone";
    bench.close(crankTurned);
    drafts::closingEvidence(bench, bench.facts, panFastened);
    EXPECT_THAT(bench.refusal(ClosingStepDone{panFastened, {}, ""}), HasSubstr("pump and pickup bolts"));
    bench.make(yes("bolts"));
    bench.make(ClosingStepDone{panFastened, {}, ""});
}

TEST(OwnChecks, a_measured_one_is_judged_with_its_instrument_or_not_proven) {
    Bench bench;
    bench.make(ownCheck("tube", "dipstick tube to counterweight", OwnCheckSort::measured, OwnCheckHolds::closing));
    OwnCheckAnswered read;
    read.ownCheck = "tube";
    read.value = Entered<Length>{thou(30), ""};
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::notProven) << "no instrument";
    read.instrument = "LEAVES";
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::good);
    read.value = Entered<Length>{thou(15), ""};
    bench.make(read);
    EXPECT_EQ(bench.stateOf("own-check:tube:1"), CheckState::out) << "the last reading is judged";
    EXPECT_THAT(bench.refusal(yes("tube")), HasSubstr("answered by measured"));
}

TEST(OwnChecks, a_photo_must_be_in_the_record) {
    Bench bench;
    bench.make(ownCheck("plugs", "oil-way plugs", OwnCheckSort::photo, OwnCheckHolds::closing));
    OwnCheckAnswered shown;
    shown.ownCheck = "plugs";
    shown.photo = std::string(64, 'a');
    EXPECT_THAT(bench.refusal(shown), HasSubstr("not in this record"));
    AttachmentAdded photo;
    photo.fileName = "plugs.jpg";
    photo.sha256 = std::string(64, 'a');
    photo.originalSha256 = photo.sha256;
    bench.make(photo);
    bench.make(shown);
    EXPECT_EQ(bench.stateOf("own-check:plugs:1"), CheckState::good);
}

TEST(OwnChecks, another_wording_makes_the_answers_stale_and_no_places_withdraw_it) {
    Bench bench;
    OwnCheckSet set = ownCheck("holes", "blind holes dry", OwnCheckSort::yesNo, OwnCheckHolds::closing);
    bench.make(set);
    bench.make(yes("holes"));
    set.words = "blind holes dry and chased";
    bench.make(set);
    EXPECT_EQ(bench.stateOf("own-check:holes:1"), CheckState::stale);
    set.places = 0;
    bench.make(set);
    EXPECT_EQ(bench.assessment.find("own-check:holes:1"), nullptr);
    set.sort = OwnCheckSort::measured;
    EXPECT_THAT(bench.refusal(set), HasSubstr("has a band"));
    set = ownCheck("x y", "z", OwnCheckSort::yesNo, OwnCheckHolds::closing);
    EXPECT_THAT(bench.refusal(set), HasSubstr("without spaces"));
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
