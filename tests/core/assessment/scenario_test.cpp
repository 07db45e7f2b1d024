// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench.h"

#include <gmock/gmock.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::UnorderedElementsAre;

namespace {

const Position p2R{2, Side::right};
const Position p2L{2, Side::left};
const FastenerId main2R{FastenerKind::mainCap, 2, Side::right, Ring::inner};

} // namespace

TEST(Scenario, an_untouched_record_asks_for_the_first_thing) {
    Bench bench;
    EXPECT_FALSE(bench.isOpen(GateKind::trialFit));
    EXPECT_FALSE(bench.isOpen(GateKind::closing));
    EXPECT_FALSE(bench.assessment.next.sentence.empty());
}

TEST(Scenario, a_whole_job_in_order_opens_both_gates_and_closes) {
    Bench bench;
    bench.tightenAll();
    bench.bearings();
    EXPECT_EQ(bench.stateOf("main-clearance:main-2"), CheckState::good);
    bench.survey();
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
    bench.kit();
    bench.build();
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::good);
    EXPECT_FALSE(bench.isOpen(GateKind::trialFit));
    bench.recheck();
    bench.make(GirdleWaySet{});
    EXPECT_THAT(bench.holding(GateKind::trialFit), IsEmpty());
    EXPECT_TRUE(bench.isOpen(GateKind::trialFit));
    bench.trialFit();
    bench.pickup();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("verify-round"));
    bench.stacks(StackMove::takenOff);
    bench.round();
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
    ASSERT_TRUE(bench.isOpen(GateKind::closing));
    for (const auto& [step, name] : allWords<ClosingStep>()) {
        EXPECT_EQ(bench.assessment.nextClosingStep, step);
        drafts::doClosingStep(bench, bench.facts, step);
        EXPECT_TRUE(bench.isOpen(GateKind::closing)) << name;
    }
    EXPECT_TRUE(bench.assessment.isReadyToSign);
    bench.make(SignedOff{"Closed and right."});
    EXPECT_TRUE(bench.facts.isClosed());
}

TEST(Scenario, a_stack_that_there_is_no_shim_for_leads_to_the_kit_first) {
    Bench bench;
    bench.tightenAll();
    bench.bearings();
    bench.survey();
    const Check* stack = bench.assessment.find("stack:1L");
    ASSERT_NE(stack, nullptr);
    EXPECT_EQ(stack->destination, (Destination{Station::girdle, "shims"}));
    EXPECT_THAT(stack->remedy, HasSubstr("List the shims"));
    EXPECT_EQ(bench.assessment.next.destination, stack->destination) << bench.assessment.next.sentence;
    bench.kit();
    EXPECT_EQ(bench.assessment.find("stack:1L")->destination, (Destination{Station::girdle, "1L"}));
}

TEST(Scenario, a_fastener_that_moves_locks_the_gate_with_exactly_what_it_spoiled) {
    Bench bench;
    bench.tightenAll();
    bench.bearings();
    bench.survey();
    bench.kit();
    bench.build();
    bench.recheck();
    bench.trialFit();
    bench.pickup();
    bench.stacks(StackMove::takenOff);
    bench.make(RoundBegun{1, "W1"});
    std::int64_t movedAt = 0;
    for (const FastenerId f : bench.facts.layout->verifiedFasteners()) {
        const auto entry = bench.outcome(f, f == main2R ? Outcome::moved : Outcome::held, 4);
        movedAt = f == main2R ? entry : movedAt;
    }
    EXPECT_THAT(bench.holding(GateKind::closing),
                UnorderedElementsAre("main-clearance:main-2", "gap:2L", "gap:2R", "stack:2L", "stack:2R", "recheck:2L",
                                     "recheck:2R", "flushness", "turning-torque:before the girdle", "turning-torque:girdle at torque", "trial-fit:dipstick clear", "trial-fit:pickup tube clear",
                                     "trial-fit:counterweights clear:1", "trial-fit:counterweights clear:2",
                                     "trial-fit:rod bolts clear:1", "trial-fit:rod bolts clear:2",
                                     "trial-fit:two turns by hand, nothing binds",
                                     "trial-fit:keyway agrees at top dead centre", "verify-round"));
    for (const char* code : {"gap:2L", "gap:2R", "stack:2R", "recheck:2R", "flushness", "trial-fit:dipstick clear"}) {
        EXPECT_EQ(bench.stateOf(code), CheckState::stale) << code;
        EXPECT_EQ(bench.assessment.find(code)->staleBecause.entry, movedAt) << code;
        EXPECT_THAT(bench.assessment.find(code)->sentence, HasSubstr("main 2 right moved 4.0°")) << code;
        EXPECT_FALSE(bench.assessment.find(code)->remedy.empty()) << code;
    }
    EXPECT_EQ(bench.stateOf("verify-round"), CheckState::out);
    EXPECT_EQ(bench.stateOf("gap:1L"), CheckState::good);

    // The window of the new gap: 4° on a 7/16-20 thread is 0.05 in × 4/360 = 0.000556 in, wider by the U of the gap that
    // was accepted before. The nut on the other side did not turn.
    const auto window = bench.assessment.gaps.at(p2R).window();
    ASSERT_TRUE(window);
    const double wider = 50 - inThou(window->lo());
    EXPECT_GT(wider, 0.5);
    EXPECT_LT(wider, 1.0);
    EXPECT_NEAR(inThou(window->hi()), 50 + 50.0 * 4 / 360 + wider, 0.001);
    const auto other = bench.assessment.gaps.at(p2L).window();
    ASSERT_TRUE(other);
    EXPECT_NEAR(inThou(other->hi()), 50 + wider, 0.001);

    // The bearing had not the clamp that it should when its bore was read: a person answers for it, with a reason.
    EXPECT_EQ(bench.stateOf("main-clearance:main-2"), CheckState::stale);
    EXPECT_THAT(bench.refusal(JudgedAgain{"main-clearance:main-2", "  "}), HasSubstr("a reason is required"));
    bench.make(JudgedAgain{"main-clearance:main-2", "the predicted drop is less than the band leaves"});
    EXPECT_EQ(bench.stateOf("main-clearance:main-2"), CheckState::good);
    ASSERT_FALSE(bench.facts.deviations.empty());
    EXPECT_TRUE(std::holds_alternative<AcceptedAgain>(bench.facts.deviations.back().what));

    // Measuring again unlocks it in the right order: gap, stack, recheck, trial fit, round.
    bench.twoPasses(p2R, 50.4);
    bench.twoPasses(p2L, 50.0);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::stale);
    bench.make(JudgedAgain{"stack:2R", "0.0004 in loose, in band"});
    bench.make(StackBuilt{p2L, {{"S-2L"}}});
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::good);
    EXPECT_EQ(bench.stateOf("stack:2L"), CheckState::good);
    EXPECT_EQ(bench.stateOf("flushness"), CheckState::good);
    EXPECT_EQ(bench.stateOf("recheck:2R"), CheckState::stale);
    bench.make(StackMoved{p2R, StackMove::putBack});
    bench.make(RecheckMade{p2R, Feel::drags, "EDGE"});
    bench.make(RecheckMade{p2L, Feel::drags, "EDGE"});
    EXPECT_TRUE(bench.isOpen(GateKind::trialFit));
    EXPECT_EQ(bench.stateOf("trial-fit:dipstick clear"), CheckState::stale);
    bench.trialFit();
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("verify-round"));
    bench.make(StackMoved{p2R, StackMove::takenOff});
    bench.make(StackMoved{p2L, StackMove::takenOff});
    bench.round();
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
}

TEST(Scenario, a_round_older_than_the_trial_fit_does_not_count) {
    Bench bench;
    bench.readyToClose();
    drafts::girdleToTorque(bench, bench.facts);
    bench.make(TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""});
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("verify-round"));
    EXPECT_EQ(bench.stateOf("verify-round"), CheckState::stale);
}

TEST(Scenario, tightening_a_verified_fastener_after_the_round_voids_it_and_spoils_its_cap) {
    Bench bench;
    bench.readyToClose();
    bench.make(FastenerTightened{main2R, Entered<Torque>{poundFeet(70), ""}, {}, {}, "W1"});
    EXPECT_EQ(bench.stateOf("verify-round"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("gap:2L"), CheckState::stale) << "either fastener of a cap moves it";
    EXPECT_EQ(bench.stateOf("gap:1R"), CheckState::good);
    EXPECT_EQ(bench.stateOf("main-clearance:main-2"), CheckState::good) << "the same torque gives the same bore";
    bench.make(FastenerTightened{main2R, Entered<Torque>{poundFeet(75), ""}, {}, {}, "W1"});
    EXPECT_EQ(bench.stateOf("main-clearance:main-2"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::good);
}

TEST(Scenario, a_stack_laid_on_in_the_middle_of_a_round_voids_it) {
    Bench bench;
    bench.readyToClose();
    bench.make(RoundBegun{2, "W1"});
    bench.outcome(main2R);
    bench.make(StackMoved{p2R, StackMove::putBack});
    EXPECT_EQ(bench.stateOf("verify-round"), CheckState::stale);
    EXPECT_THAT(bench.assessment.find("verify-round")->sentence, HasSubstr("cap 2 right"));
}

TEST(Scenario, an_interrupted_round_is_continued_and_counts_only_when_complete) {
    Bench bench;
    bench.tightenAll();
    bench.layIn();
    bench.make(RoundBegun{1, "W1"});
    const auto fasteners = bench.facts.layout->verifiedFasteners();
    for (std::size_t i = 0; i < fasteners.size(); ++i) {
        EXPECT_EQ(bench.stateOf("verify-round"), CheckState::notDone) << i;
        bench.outcome(fasteners[i]);
    }
    EXPECT_EQ(bench.stateOf("verify-round"), CheckState::good);
}

TEST(Scenario, a_shim_measured_anew_makes_only_its_own_stack_stale) {
    Bench bench;
    bench.readyToClose();
    bench.make(ShimMeasured{"S-2R", {thou(50.2), ""}, "MIC"});
    EXPECT_THAT(bench.holding(GateKind::closing), UnorderedElementsAre("stack:2R", "flushness"));
    EXPECT_EQ(bench.stateOf("recheck:2R"), CheckState::good) << "the straightedge felt the same stack";
    bench.make(JudgedAgain{"stack:2R", "still in band"});
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
}

TEST(Scenario, a_changed_band_makes_stale_what_it_judged_and_nothing_else) {
    Bench bench;
    bench.readyToClose();
    bench.band(bands::mainClearance, 1.8, 2.4);
    EXPECT_THAT(bench.holding(GateKind::closing),
                UnorderedElementsAre("main-clearance:main-1", "main-clearance:main-2", "main-clearance:main-3"));
    for (const char* code : {"main-clearance:main-1", "main-clearance:main-2", "main-clearance:main-3"}) {
        bench.make(JudgedAgain{code, "inside the new band too"});
    }
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
    bench.band(bands::residual, -0.4, 0.4);
    EXPECT_THAT(bench.holding(GateKind::closing), UnorderedElementsAre("stack:1L", "stack:1R", "stack:2L", "stack:2R",
                                                                       "stack:3L", "stack:3R", "flushness"));
}

TEST(Scenario, setting_a_band_to_the_same_values_changes_nothing) {
    Bench bench;
    bench.readyToClose();
    bench.band(bands::residual, -0.5, 0.5);
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
}

TEST(Scenario, what_a_movement_spoiled_cannot_be_judged_again) {
    Bench bench;
    bench.readyToClose();
    bench.make(FastenerLoosened{main2R, "stud looked at"});
    EXPECT_THAT(bench.refusal(JudgedAgain{"gap:2R", "it looks fine"}), HasSubstr("Measure it again"));
    EXPECT_THAT(bench.refusal(JudgedAgain{"recheck:2R", "it looks fine"}), HasSubstr("Measure it again"));
    EXPECT_THAT(bench.refusal(JudgedAgain{"gap:1R", "it is good"}), HasSubstr("not a stale check"));
}

TEST(Scenario, another_limit_of_the_pickup_asks_for_a_look_and_a_reason) {
    Bench bench;
    bench.readyToClose();
    BandSet band{std::string(bands::pickupClearance), {inches(0.24), ""}, {inches(0.38), ""}, {}, "the pump's maker"};
    band.why = "its newer card";
    bench.make(band);
    EXPECT_EQ(bench.stateOf("pickup"), CheckState::stale);
    EXPECT_EQ(bench.assessment.find("pickup")->remedy,
              "Look at the clearance, and accept it by the new numbers with a reason.");
    bench.make(JudgedAgain{"pickup", "well inside"});
    EXPECT_EQ(bench.stateOf("pickup"), CheckState::good);
}

TEST(Scenario, another_part_makes_stale_what_was_measured_with_the_earlier_one) {
    Bench bench;
    bench.readyToClose();
    bench.make(PartChanged{Part::gasket, "", "thicker one"});
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("pickup"));
    EXPECT_EQ(bench.stateOf("pickup"), CheckState::stale);
    EXPECT_EQ(bench.assessment.find("pickup")->remedy, "Measure the compressed gasket, twice.");
    bench.make(PickupReading{PickupTerm::gasket, {thou(90), ""}, "MIC"});
    bench.make(PickupReading{PickupTerm::gasket, {thou(90), ""}, "MIC"});
    EXPECT_EQ(bench.stateOf("pickup"), CheckState::good);

    bench.make(PartChanged{Part::nutAndWasher, "3L", "washer was burred"});
    EXPECT_THAT(bench.holding(GateKind::closing), IsSupersetOf({"gap:3L", "stack:3L", "recheck:3L", "flushness"}));
    EXPECT_EQ(bench.stateOf("gap:3R"), CheckState::good);

    bench.make(PartChanged{Part::crank, "", "journal polished"});
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::stale);
    bench.make(PartChanged{Part::panRail, "", "dressed with a file"});
    EXPECT_EQ(bench.stateOf("gap:3R"), CheckState::stale);
}

TEST(Scenario, a_struck_entry_counts_as_never_made) {
    Bench bench;
    bench.tightenAll();
    bench.gapAt(p2R, 50, 1);
    bench.gapAt(p2R, 50, 2);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
    const auto wrong = bench.make(FastenerLoosened{main2R, "mistaken entry"});
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::stale);
    bench.make(Struck{wrong, "it was the next engine"});
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
}

TEST(Scenario, an_open_finding_holds_the_closing_gate) {
    Bench bench;
    bench.readyToClose();
    bench.make(FindingOpened{"F1", "2R", "burr on the washer"});
    EXPECT_THAT(bench.holding(GateKind::closing), ElementsAre("findings"));
    bench.make(FindingSettled{"F1", "stoned flat, gap unchanged"});
    EXPECT_THAT(bench.holding(GateKind::closing), IsEmpty());
}

TEST(Scenario, readings_that_disagree_ask_for_another_pass) {
    Bench bench;
    bench.gapAt(p2R, 50, 1);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::notDone) << "one pass is not enough";
    bench.gapAt(p2R, 54, 2);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::notDone);
    EXPECT_THAT(bench.assessment.find("gap:2R")->remedy, HasSubstr("pass"));
    bench.gapAt(p2R, 50.5, 3);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
    EXPECT_EQ(bench.assessment.gaps.at(p2R).accepted, thou(50.5)) << "the median";
}

TEST(Scenario, an_unmeasured_shim_keeps_its_stack_from_passing) {
    Bench bench;
    bench.survey();
    bench.make(ShimAdded{"S1", {thou(50), ""}, ""});
    bench.make(StackBuilt{p2R, {{"S1"}}});
    EXPECT_NE(bench.stateOf("stack:2R"), CheckState::good);
    EXPECT_THAT(bench.assessment.find("stack:2R")->remedy, HasSubstr("S1"));
}

TEST(Scenario, a_proud_stack_rocks_and_holds_the_trial_fit) {
    Bench bench;
    bench.survey();
    bench.kit();
    bench.build();
    bench.recheck();
    bench.make(RecheckMade{p2R, Feel::rocks, ""});
    EXPECT_EQ(bench.stateOf("recheck:2R"), CheckState::out);
    EXPECT_THAT(bench.refusal(TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""}),
                HasSubstr("cap 2 right"));
}

TEST(Scenario, the_pickup_clearance_is_pan_plus_gasket_plus_plate_minus_pickup) {
    Bench bench;
    bench.pickup();
    EXPECT_EQ(bench.assessment.pickup.clearance, thou(310));
    EXPECT_EQ(bench.stateOf("pickup"), CheckState::good);
}

TEST(Scenario, a_new_build_begins_empty_and_keeps_the_earlier_one_in_the_ledger) {
    Bench bench;
    bench.readyToClose();
    EXPECT_THAT(bench.refusal(BuildBegun{2, "rebuild"}), HasSubstr("signed off"));
    bench.close();
    bench.make(SignedOff{"done"});
    EXPECT_THAT(bench.refusal(GapReading{p2R, 3, {thou(50), ""}, ""}), HasSubstr("signed off"));
    bench.make(NoteAdded{"", "customer called"});
    bench.make(BuildBegun{2, "spun a rod bearing"});
    EXPECT_FALSE(bench.facts.isClosed());
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::notDone);
    EXPECT_EQ(bench.facts.shims.size(), 6U);
    bench.twoPasses(p2R, 51);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
}

TEST(Scenario, a_journal_read_at_one_place_only_is_not_enough) {
    Bench bench;
    bench.tightenAll();
    const JournalId j{JournalKind::main, 1};
    bench.make(JournalReading{j, 1, 1, {inches(2.4480), ""}, "MIC"});
    bench.make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.4502), ""}, "BORE"});
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::notDone);
    EXPECT_EQ(bench.assessment.clearances.at(j).clearance, thou(2.2)) << "shown all the same";
    bench.make(BoreReading{j, BoreMethod::boreWithShells, 2, {inches(2.4502), ""}, "BORE"});
    for (const auto& [station, direction] : {std::pair{1, 2}, {2, 1}, {2, 2}}) {
        bench.make(JournalReading{j, station, direction, {inches(2.4480), ""}, "MIC"});
    }
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::notProven) << "no place was read twice";
    EXPECT_THAT(bench.assessment.find("main-clearance:main-1")->remedy, HasSubstr("once more at one place"));
    bench.make(JournalReading{j, 1, 1, {inches(2.4480), ""}, "MIC"});
    bench.make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.4502), ""}, "BORE"});
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::good);
}
