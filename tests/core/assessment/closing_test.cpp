// SPDX-License-Identifier: GPL-3.0-or-later
/// The closing steps, each with its own evidence.
#include "bench.h"

#include <assessment/closing_steps.h>
#include <assessment/review.h>
#include <assessment/turning.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::AllOf;
using testing::HasSubstr;

namespace {

using enum ClosingStep;

constexpr Position girdle2R{2, Side::right};
constexpr FastenerId nut2R{FastenerKind::girdleNut, 2, Side::right, Ring::inner};

} // namespace

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

TEST(ClosingSteps, ask_for_every_fastener_of_the_pan_whichever_group_speaks_for_it) {
    Bench bench;
    FastenerGroupSet studs = drafts::group(FastenerKind::panRail, 2, "1/4-20", 6);
    studs.name = "corner studs";
    studs.places = NameList{{"pan-9", "pan-10"}};
    bench.make(studs);
    EXPECT_EQ(panFasteners(bench.facts).size(), 10U) << "eight of the common group, and two of their own";
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
    bench.comesFromOutside(ClosingStepDone{girdleLowered, {}, ""}, 602);
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
    bench.comesFromOutside(ClosingStepDone{girdleLowered, {}, ""}, 20);
    EXPECT_EQ(bench.assessment.closing.at(beadLaid).state, CheckState::good);
    late.comesFromOutside(ClosingStepDone{girdleLowered, {}, ""}, 21);
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

TEST(ClosingSteps, do_not_take_a_nut_for_tight_that_a_wrench_of_unknown_range_pulled) {
    Bench bench;
    bench.readyToClose();
    bench.close(girdleLowered);
    bench.make(InstrumentAdded{"W2", InstrumentType::torqueWrench, "", "", {}, {}, {}, {}, {}, {}, {}});
    drafts::tightenAsSpecified(bench, bench.facts, bench.facts.layout->girdleNuts());
    bench.make(FastenerTightened{nut2R, bench.facts.groupOf(nut2R)->what.torque, {}, {}, "W2"});
    EXPECT_THAT(bench.refusal(ClosingStepDone{nutsTightened, {}, ""}), HasSubstr("range of W2 is not known"));
    drafts::tightenAsSpecified(bench, bench.facts, {nut2R}, "W1");
    EXPECT_THAT(bench.refusal(ClosingStepDone{nutsTightened, {}, ""}), HasSubstr("range of W2")) << "it is at its value";
    bench.make(FastenerTightened{nut2R, bench.facts.groupOf(nut2R)->what.torque, {}, {}, "W1"});
    bench.make(ClosingStepDone{nutsTightened, {}, ""});
}

TEST(ClosingSteps, know_no_turning_torque_of_a_wrench_that_nobody_knows) {
    Bench bench;
    bench.readyToClose();
    Facts facts = bench.facts; // as an import leaves it
    TurningTorqueRead read = facts.turning.at(TurningStage::girdleAtTorque).what;
    EXPECT_EQ(turningOf(facts, TurningStage::girdleAtTorque, Units{}).state, CheckState::good);
    read.instrument = "W9";
    apply(facts, Entry{facts.lastEntry + 1, {}, "Mira", read, {}});
    EXPECT_EQ(turningOf(facts, TurningStage::girdleAtTorque, Units{}).state, CheckState::notProven);
    read.stage = TurningStage::beforeGirdle;
    apply(facts, Entry{facts.lastEntry + 1, {}, "Mira", read, {}});
    EXPECT_EQ(turningOf(facts, TurningStage::beforeGirdle, Units{}).state, CheckState::notProven);
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
