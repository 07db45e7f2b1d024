// SPDX-License-Identifier: GPL-3.0-or-later
/// What a record may claim from what was said in it: each of these came out better than it was.
#include "bench.h"

#include <assessment/beside_verdict.h>
#include <assessment/bracket.h>
#include <assessment/budget_of.h>
#include <assessment/gap_window.h>
#include <assessment/plan_aim.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;
using testing::Not;

namespace {

const Position secondCapRight{2, Side::right};
const Position secondCapLeft{2, Side::left};
const JournalId main1{JournalKind::main, 1};
const FastenerId nutThatMoves{FastenerKind::mainCap, 2, Side::right, Ring::inner};

void guarded(Bench& bench) {
    RulesSet rules;
    rules.decision = DecisionRule::guarded;
    bench.make(rules);
}

std::size_t goodOf(const Bench& bench, CheckKind kind) {
    return static_cast<std::size_t>(std::ranges::count_if(
        bench.assessment.checks, [&](const Check& c) { return c.kind == kind && c.isGood(); }));
}

/// A journal and its bore, read `times` times: diameters by station and direction in tenths of a thousandth.
void bearing(Bench& bench, const std::vector<std::array<int, 3>>& places, int boreTenths, int times) {
    for (int i = 0; i < times; ++i) {
        for (const auto& [station, direction, tenthsHere] : places) {
            bench.make(JournalReading{main1, station, direction, {tenths(tenthsHere), ""}, "MIC"});
        }
        for (const int station : {1, 2}) {
            bench.make(BoreReading{main1, BoreMethod::boreWithShells, station, {tenths(boreTenths), ""}, "BORE"});
        }
    }
}

} // namespace

TEST(Honest, without_any_limit_of_error_nothing_is_good_and_no_gate_opens) {
    Bench bench(false);
    for (const InstrumentAdded& tool : drafts::tools(0)) {
        bench.make(tool);
    }
    bench.tightenAll();
    bench.bearings();
    bench.survey();
    bench.kit();
    bench.build();
    bench.recheck();
    bench.make(GirdleWaySet{});
    bench.pickup();
    for (const CheckKind kind : {CheckKind::mainClearance, CheckKind::taper, CheckKind::outOfRound, CheckKind::stack,
                                 CheckKind::pickup}) {
        EXPECT_EQ(goodOf(bench, kind), 0U) << word(kind);
    }
    EXPECT_FALSE(bench.isOpen(GateKind::trialFit));
    EXPECT_FALSE(bench.isOpen(GateKind::closing));
    const Check& stack = *bench.assessment.find(CheckKind::stack, secondCapRight);
    EXPECT_EQ(stack.state, CheckState::notProven);
    EXPECT_THAT(stack.sentence, HasSubstr("± not known"));
    EXPECT_THAT(stack.sentence, Not(HasSubstr("± 0")));
    EXPECT_THAT(stack.remedy, HasSubstr("limit of error of LEAVES"));
}

TEST(Honest, without_a_named_instrument_nothing_is_good_either) {
    Bench bench;
    bench.tightenAll();
    bench.layIn();
    for (const Position p : bench.facts.layout->positions()) {
        for (int pass = 1; pass <= 2; ++pass) {
            bench.make(GapReading{p, pass, {thou(50), ""}, ""});
        }
    }
    bench.kit();
    bench.build();
    EXPECT_EQ(goodOf(bench, CheckKind::stack), 0U);
    EXPECT_THAT(bench.assessment.find(CheckKind::stack, secondCapRight)->remedy, HasSubstr("instrument"));
}

TEST(Honest, a_bearing_whose_stations_are_both_out_is_out_however_often_it_is_read) {
    for (const int times : {1, 6}) {
        Bench bench;
        guarded(bench);
        bench.tightenAll();
        // 2.6415 at station 1, 2.6405 at station 2, bore 2.6431: 0.0016 and 0.0026 in against 0.0018 to 0.0025 in.
        bearing(bench, {{1, 1, 26'415}, {1, 2, 26'415}, {2, 1, 26'405}, {2, 2, 26'405}}, 26'431, std::max(times, 2));
        EXPECT_EQ(bench.assessment.clearances.at(main1).smallest, tenths(16));
        EXPECT_EQ(bench.assessment.clearances.at(main1).largest, tenths(26));
        EXPECT_NE(bench.stateOf("main-clearance:main-1"), CheckState::good) << times;
        EXPECT_EQ(bench.stateOf("taper:main-1"), CheckState::out) << "0.0010 in: more readings cannot mend a shape";
        if (times == 6) {
            EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::out);
        }
    }
}

TEST(Honest, an_oval_journal_is_judged_by_its_largest_diameter_and_by_its_ovalness) {
    Bench bench;
    bench.tightenAll();
    bearing(bench, {{1, 1, 26'410}, {1, 2, 26'422}, {2, 1, 26'410}, {2, 2, 26'422}}, 26'431, 2);
    EXPECT_EQ(bench.assessment.clearances.at(main1).smallest, tenths(9));
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::out);
    EXPECT_EQ(bench.stateOf("out-of-round:main-1"), CheckState::out);
    EXPECT_EQ(bench.stateOf("taper:main-1"), CheckState::good);
}

TEST(Honest, the_bore_is_the_one_that_was_read) {
    Bench bench;
    bench.tightenAll();
    bearing(bench, {{1, 1, 26'410}, {1, 2, 26'414}, {2, 1, 26'410}, {2, 2, 26'414}}, 26'431, 1);
    EXPECT_EQ(bench.assessment.clearances.at(main1).boreMean, tenths(26'431));
    bench.make(InstrumentAdded{drafts::instrument("STRIP", InstrumentType::gaugingStrip, 5)});
    bench.make(BoreReading{main1, BoreMethod::strip, 1, {thou(2), ""}, "STRIP"});
    EXPECT_FALSE(bench.assessment.clearances.at(main1).boreMean) << "a strip reads no bore";
}

TEST(Honest, with_leaves_as_they_are_made_arithmetic_cannot_prove_a_stack_and_says_what_would) {
    Bench bench(false);
    bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 1));
    bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, 3.5));
    bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 2));
    guarded(bench);
    bench.layIn();
    for (const Position p : bench.facts.layout->positions()) {
        for (int pass = 1; pass <= 2; ++pass) {
            bench.make(GapReading{p, pass, {thou(50), "16+17+17 thou"}, "LEAVES", {}, "EDGE"});
        }
    }
    bench.kit();
    bench.build();
    const Check& stack = *bench.assessment.find(CheckKind::stack, secondCapRight);
    EXPECT_EQ(stack.state, CheckState::tooCloseToCall) << "residual 0.0000";
    EXPECT_THAT(stack.remedy, HasSubstr("No value could pass"));
    EXPECT_THAT(stack.remedy, HasSubstr("feeler leaf"));
    EXPECT_THAT(stack.remedy, HasSubstr("bracket"));
    ASSERT_TRUE(stack.judged.front().wouldDo);
    const auto aim = PlanAims(bench.facts, {}).at(secondCapRight, 1);
    ASSERT_TRUE(aim);
    EXPECT_FALSE(aim->canBeProven);
    EXPECT_EQ(aim->band, Band::between(-thou(0.25), thou(0.25)).value());
    EXPECT_THAT(aim->sentence, HasSubstr("middle of the band"));

    // Simple acceptance passes them, and says that they are weakly measured.
    RulesSet simple;
    simple.decision = DecisionRule::simple;
    bench.make(simple);
    const Check& accepted = *bench.assessment.find(CheckKind::stack, secondCapRight);
    EXPECT_EQ(accepted.state, CheckState::good);
    ASSERT_TRUE(accepted.judged.front().conformity);
    EXPECT_LT(accepted.judged.front().conformity->capability, 1);
    EXPECT_LT(accepted.judged.front().conformity->probability, 0.9);
    EXPECT_GE(bench.assessment.weaklyMeasured, 6U);
    EXPECT_TRUE(std::holds_alternative<RulesChanged>(bench.facts.deviations.back().what));
}

TEST(Honest, a_bracketed_recheck_proves_what_the_leaves_cannot) {
    Bench bench(false);
    bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 1));
    bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, 3.5));
    bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 2));
    guarded(bench);
    bench.layIn();
    bench.twoPasses(secondCapRight, 50);
    bench.kit();
    for (const auto& [name, thickness] : {std::pair{"A", 50.2}, {"B", 49.8}}) {
        bench.make(ShimAdded{name, {thou(50), ""}, ""});
        bench.make(ShimMeasured{name, {thou(thickness), ""}, "MIC"});
        bench.make(ShimMeasured{name, {thou(thickness), ""}, "MIC"});
    }
    bench.make(StackBuilt{secondCapRight, {{"S-2R"}}});
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::tooCloseToCall);

    const auto thicker = exchangeFor(bench.facts, secondCapRight, thou(0.2));
    const auto thinner = exchangeFor(bench.facts, secondCapRight, -thou(0.2));
    ASSERT_TRUE(thicker && thinner);
    EXPECT_EQ(thicker->in, std::vector<std::string>{"A"});
    EXPECT_EQ(thicker->out, std::vector<std::string>{"S-2R"});
    EXPECT_EQ(thicker->change, thou(0.2));
    EXPECT_EQ(thinner->in, std::vector<std::string>{"B"});
    RecheckMade recheck{secondCapRight, Feel::drags, "EDGE"};
    recheck.thickerOut = NameList{thicker->out};
    recheck.thickerIn = NameList{thicker->in};
    recheck.thickerFelt = Feel::rocks;
    recheck.thinnerOut = NameList{thinner->out};
    recheck.thinnerIn = NameList{thinner->in};
    recheck.thinnerFelt = Feel::loose;
    RecheckMade wrong = recheck;
    std::swap(wrong.thickerIn, wrong.thinnerIn);
    EXPECT_THAT(bench.refusal(wrong), HasSubstr("not thicker"));
    wrong = recheck;
    wrong.thickerIn = NameList{{"NONE"}};
    EXPECT_THAT(bench.refusal(wrong), HasSubstr("NONE"));
    bench.make(recheck);
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::good);
    const StackResult& stack = bench.assessment.stacks.at(secondCapRight);
    EXPECT_EQ(stack.carriedBy, ResidualBy::bracket);
    EXPECT_EQ(stack.carriedResidual, Length());
    EXPECT_LT(*stack.carriedUncertainty.expanded(), *stack.uncertainty.expanded());
    EXPECT_GT(*stack.carriedUncertainty.expanded(), 0.2 * 25'400) << "never less than the bracket itself";
    EXPECT_THAT(bench.assessment.find("stack:2R")->sentence, HasSubstr("bracketed"));

    // With another stack the bracket is of a stack that lies there no more.
    bench.make(StackBuilt{secondCapRight, {{"A"}}});
    EXPECT_EQ(bench.assessment.stacks.at(secondCapRight).carriedBy, ResidualBy::arithmetic);
}

TEST(Honest, a_bracket_wider_than_the_band_proves_nothing_under_either_rule) {
    for (const DecisionRule rule : {DecisionRule::simple, DecisionRule::guarded}) {
        Bench bench(false);
        bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 0.2));
        bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, 0)); // nobody knows what they are worth
        bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 0.2));
        RulesSet rules;
        rules.decision = rule;
        bench.make(rules);
        bench.layIn();
        bench.twoPasses(secondCapRight, 50.3);
        bench.kit();
        for (const auto& [name, thickness] : {std::pair{"A", 50.9}, {"B", 49.1}, {"C", 50.2}, {"D", 49.8}}) {
            drafts::measuredShim(bench, name, thickness);
        }
        bench.make(StackBuilt{secondCapRight, {{"S-2R"}}});
        bench.make(drafts::bracketed(secondCapRight, "EDGE", "S-2R", "A", "B"));
        EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::tooCloseToCall)
            << word(rule) << ": it lies somewhere within 0.0009 in either way, and the middle of that is no measurement";
        bench.make(drafts::bracketed(secondCapRight, "EDGE", "S-2R", "C", "D"));
        EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::good) << "within 0.0002 in either way";
    }
}

TEST(Honest, what_speaks_against_a_stack_is_not_silenced_by_leaving_out_its_limit_of_error) {
    for (const double limitTenths : {0.5, 0.0}) {
        Bench bench(false);
        bench.make(drafts::instrument("MIC", InstrumentType::micrometer, 0.2));
        bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, limitTenths));
        bench.make(drafts::instrument("EDGE", InstrumentType::straightedge, 0.2));
        bench.layIn();
        for (int pass = 1; pass <= 2; ++pass) {
            GapReading gap{secondCapRight, pass, {thou(52), ""}, "LEAVES", {}, "EDGE"};
            gap.doesNotGo = Entered<Length>{thou(52.05), ""};
            bench.make(gap);
        }
        bench.kit();
        for (const auto& [name, thickness] : {std::pair{"C", 50.3}, {"D", 49.7}}) {
            drafts::measuredShim(bench, name, thickness);
        }
        bench.make(StackBuilt{secondCapRight, {{"S-2R"}}});
        bench.make(drafts::bracketed(secondCapRight, "EDGE", "S-2R", "C", "D"));
        EXPECT_EQ(bench.stateOf("stack:2R"), limitTenths > 0 ? CheckState::out : CheckState::notProven)
            << "0.002 in of residual: " << bench.assessment.find("stack:2R")->sentence;
    }
}

TEST(Honest, an_exchange_felt_otherwise_is_no_bracket) {
    Bench bench;
    bench.survey();
    bench.kit();
    bench.make(StackBuilt{secondCapRight, {{"S-2R"}}});
    Seen<RecheckMade> recheck{bench.facts.lastEntry + 1, {}, "Mira", {secondCapRight, Feel::drags, "EDGE"}};
    recheck.what.thickerOut = recheck.what.thinnerOut = NameList{{"S-2R"}};
    recheck.what.thickerIn = NameList{{"S-1L", "S-1R"}};
    recheck.what.thinnerIn = NameList{};
    recheck.what.thickerFelt = Feel::rocks;
    recheck.what.thinnerFelt = Feel::loose;
    EXPECT_TRUE(bracketOf(bench.facts, recheck, shimScatter(bench.facts)));
    recheck.what.thinnerFelt = Feel::drags;
    EXPECT_FALSE(bracketOf(bench.facts, recheck, shimScatter(bench.facts)));
    recheck.what.thinnerFelt = Feel::loose;
    recheck.what.instrument.clear();
    EXPECT_FALSE(bracketOf(bench.facts, recheck, shimScatter(bench.facts))->uncertainty.isKnown())
        << "a straightedge that nobody named has no flatness";
}

TEST(Honest, an_instrument_restated_later_judges_only_later_readings) {
    Bench bench;
    bench.survey();
    const auto before = bench.assessment.gaps.at(secondCapRight).uncertainty.expanded();
    ASSERT_TRUE(before);
    bench.make(drafts::instrument("LEAVES", InstrumentType::feelerGauge, 0.1));
    EXPECT_EQ(bench.assessment.gaps.at(secondCapRight).uncertainty.expanded(), before);
    EXPECT_TRUE(bench.facts.deviations.empty());

    InstrumentAdded corrected = drafts::instrument("LEAVES", InstrumentType::feelerGauge, 5);
    corrected.corrects = "the certificate says 0.0005, it was entered a digit too small";
    bench.make(corrected);
    EXPECT_GT(*bench.assessment.gaps.at(secondCapRight).uncertainty.expanded(), *before);
    ASSERT_EQ(bench.facts.deviations.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<InstrumentCorrected>(bench.facts.deviations.front().what));
    EXPECT_EQ(bench.facts.deviations.front().person, "Mira");
    EXPECT_THAT(describe(bench.facts.deviations.front().what, {}), HasSubstr("a digit too small"));
}

TEST(Honest, what_was_typed_must_mean_what_is_stored) {
    Bench bench;
    bench.layIn();
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {thou(46.2), "99.9 thou"}, "LEAVES"}), HasSubstr("99.9 thou"));
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {nanometres(1), "57.5 thou"}, "LEAVES"}), HasSubstr("57.5 thou"));
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {thou(57.5), "about that"}, "LEAVES"}), HasSubstr("cannot be read"));
    InstrumentAdded i = drafts::instrument("EDGE", InstrumentType::straightedge, 1);
    i.limitOfError = Entered<Length>{nanometres(1'270), "0.0001"};
    EXPECT_THAT(bench.refusal(i), HasSubstr("0.00005 in"));
    for (const char* typed : {"57.5 thou", "0.0575", ".0575 in", "0,0575", "22+23+12.5 thou", "1.4605 mm", "57.5", ""}) {
        bench.make(GapReading{secondCapRight, 1, {thou(57.5), typed}, "LEAVES"});
    }
}

TEST(Honest, a_value_outside_what_is_plausible_is_asked_back_also_when_it_was_not_typed) {
    Bench bench;
    bench.layIn();
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {inches(0.9), ""}, "LEAVES"}), HasSubstr("not plausible"));
    bench.make(GapReading{secondCapRight, 1, {inches(0.9), "0.9!"}, "LEAVES"});
    ASSERT_FALSE(bench.facts.deviations.empty());
    EXPECT_TRUE(std::holds_alternative<InsistedOn>(bench.facts.deviations.back().what));
}

TEST(Honest, the_kind_of_instrument_must_fit) {
    Bench bench;
    EXPECT_THAT(bench.refusal(FastenerTightened{nutThatMoves, Entered<Torque>{poundFeet(70), ""}, {}, {}, "MIC"}),
                HasSubstr("MIC is a micrometer"));
    bench.tightenAll();
    EXPECT_THAT(bench.refusal(JournalReading{main1, 1, 1, {inches(2.448), ""}, "W1"}), HasSubstr("torque wrench"));
    InstrumentAdded wrench;
    wrench.instrument = "W2";
    wrench.type = InstrumentType::torqueWrench;
    wrench.smallestTorque = Entered<Torque>{poundFeet(80), ""};
    bench.make(wrench);
    EXPECT_THAT(bench.refusal(FastenerTightened{nutThatMoves, Entered<Torque>{poundFeet(70), ""}, {}, {}, "W2"}),
                HasSubstr("outside the range of W2"));
}

TEST(Honest, two_readings_agree_by_their_range) {
    Bench bench;
    bench.gapAt(secondCapRight, 46.0, 1);
    bench.gapAt(secondCapRight, 47.9, 2);
    EXPECT_NE(bench.stateOf("gap:2R"), CheckState::good) << "0.0019 in apart with a limit of 0.0010 in";
    bench.gapAt(secondCapRight, 46.5, 3);
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::good);
    EXPECT_EQ(bench.assessment.gaps.at(secondCapRight).accepted, thou(46.5));
}

TEST(Honest, a_pass_that_only_repeats_the_first_gains_nothing) {
    Bench once;
    Bench often;
    for (const Position p : once.facts.layout->positions()) {
        once.twoPasses(p, 50);
        for (int pass = 1; pass <= 5; ++pass) {
            often.gapAt(p, 50, pass);
        }
    }
    EXPECT_EQ(often.assessment.gaps.at(secondCapRight).uncertainty.expanded(), once.assessment.gaps.at(secondCapRight).uncertainty.expanded());
}

TEST(Honest, what_goes_and_what_does_not_give_the_middle_and_half_of_what_lies_between) {
    Bench bench;
    bench.layIn();
    for (int pass = 1; pass <= 2; ++pass) {
        GapReading gap{secondCapRight, pass, {thou(57), "22+23+12 thou"}, "LEAVES"};
        gap.doesNotGo = Entered<Length>{thou(58), "22+23+13 thou"};
        bench.make(gap);
    }
    EXPECT_EQ(bench.assessment.gaps.at(secondCapRight).accepted, thou(57.5));
    GapReading backwards{secondCapRight, 3, {thou(57), ""}, "LEAVES"};
    backwards.doesNotGo = Entered<Length>{thou(56), ""};
    EXPECT_THAT(bench.refusal(backwards), HasSubstr("must be more than what goes"));
}

TEST(Honest, the_window_after_a_second_movement_starts_from_the_gap_accepted_just_before_it) {
    Bench bench;
    bench.tightenAll();
    bench.gapAt(secondCapRight, 64.7, 1);
    bench.gapAt(secondCapRight, 64.9, 2);
    bench.make(RoundBegun{1, "W1"});
    bench.outcome(nutThatMoves, Outcome::moved, 20);
    bench.twoPasses(secondCapRight, 67.0);
    bench.make(RoundBegun{2, "W1"});
    bench.outcome(nutThatMoves, Outcome::moved, 3);
    const auto window = windowAfterMovement(bench.facts, secondCapRight);
    ASSERT_TRUE(window);
    // 0.0670 in to 0.0670 + 0.05 × 3/360 = 0.0674 in, wider at both ends by the U of the gap.
    const double wider = 67.0 - inThou(window->lo());
    EXPECT_GT(wider, 0.3);
    EXPECT_NEAR(inThou(window->hi()), 67.0 + 50.0 * 3 / 360 + wider, 0.001);
    EXPECT_THAT(bench.assessment.find("gap:2R")->sentence, HasSubstr("moved 3.0°"));

    // A new gap outside it is asked back.
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {thou(60), ""}, "LEAVES"}), HasSubstr("After the movement"));
    bench.make(GapReading{secondCapRight, 1, {thou(60), "60 thou!"}, "LEAVES"});
}

TEST(Honest, left_and_right_mixed_up_is_asked_back) {
    Bench bench;
    bench.gapAt(secondCapLeft, 50, 1);
    bench.gapAt(secondCapRight, 60, 1);
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 2, {thou(50), ""}, "LEAVES"}), HasSubstr("left and right were mixed up"));
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 2, {thou(70), ""}, "LEAVES"}), HasSubstr("far from the pass before"));
    bench.gapAt(secondCapRight, 60.5, 2);
}

TEST(Honest, the_order_of_the_work_is_kept) {
    Bench bench;
    EXPECT_THAT(bench.refusal(BoreReading{main1, BoreMethod::boreWithShells, 1, {inches(2.45), ""}, "BORE"}),
                HasSubstr("cap at full torque"));
    EXPECT_THAT(bench.refusal(GapReading{secondCapRight, 1, {thou(50), ""}, "LEAVES"}), HasSubstr("after the crank is laid in"));
    EXPECT_THAT(bench.refusal(RoundBegun{1, "W1"}), HasSubstr("after the crank is laid in"));
    bench.tightenAll();
    bench.bearings();
    bench.layIn();
    EXPECT_THAT(bench.refusal(JournalReading{main1, 1, 1, {inches(2.448), ""}, "MIC"}), HasSubstr("Lift it out"));
    EXPECT_THAT(bench.refusal(CrankLaidIn{}), HasSubstr("in already"));
    bench.survey();
    bench.make(CrankLaidIn{false, "to look at a bearing"});
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::stale);
    EXPECT_THAT(bench.assessment.find("gap:2R")->sentence, HasSubstr("lifted out"));
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::good);
}

TEST(Honest, a_band_widened_after_its_reading_is_a_deviation_that_says_so) {
    Bench bench;
    bench.band(bands::residual, -0.4, 0.4);
    EXPECT_TRUE(bench.facts.deviations.empty()) << "nothing was judged by it yet";
    bench.twoPasses(secondCapRight, 50);
    bench.band(bands::residual, -1, 1);
    ASSERT_EQ(bench.facts.deviations.size(), 1U);
    const auto& changed = std::get<BandChanged>(bench.facts.deviations.front().what);
    EXPECT_TRUE(changed.isWider);
    EXPECT_EQ(changed.from.hi(), thou(0.4));
    EXPECT_EQ(changed.to.hi(), thou(1));
    EXPECT_THAT(describe(bench.facts.deviations.front().what, Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'}),
                HasSubstr("0.025 mm"))
        << "said in the units of whoever reads it";
}

TEST(Honest, the_twist_is_judged_with_its_uncertainty) {
    Bench bench;
    guarded(bench);
    bench.band(bands::twist, -0.3, 0.3);
    bench.survey();
    bench.kit();
    bench.build();
    ASSERT_TRUE(bench.assessment.flushness.uncertaintyTwist.isKnown());
    EXPECT_GT(*bench.assessment.flushness.uncertaintyTwist.expanded(), 0.3 * 25'400);
    EXPECT_EQ(bench.stateOf("flushness"), CheckState::tooCloseToCall) << "no twist at all, but it is not known that well";
}

TEST(Honest, printed_numbers_add_up_and_u_is_rounded_up) {
    // Gap 0.05305, stack 0.0531 in: the residual is half a tenth, and is printed so.
    const Length gap = thou(53.05);
    const Length stack = thou(53.1);
    EXPECT_EQ(formatFine(gap, {}), "0.05305 in");
    EXPECT_EQ(formatFine(stack, {}), "0.05310 in");
    EXPECT_EQ(formatFineSigned(gap - stack, {}), "−0.00005 in");
    EXPECT_EQ(asPrinted(gap, {}) - asPrinted(stack, {}), -thou(0.05));
    EXPECT_EQ(formatUncertainty(254 * 5 + 1, {}), "0.00006 in") << "never printed smaller than it is";
    EXPECT_EQ(formatUncertainty(254 * 5, {}), "0.00005 in");
}

TEST(Honest, a_fit_has_one_result_that_all_use) {
    Bench bench;
    bench.band("oil pump", 5, 8);
    bench.make(FitReading{"oil pump", 1, {thou(2), ""}, "MIC"});
    bench.make(PartChanged{Part::crank, "", "another crank"});
    bench.make(FitReading{"oil pump", 1, {thou(6), ""}, "MIC"});
    const FitResult& fit = bench.assessment.fits.at({"oil pump", 1});
    EXPECT_EQ(fit.value, thou(6)) << "the reading of the crank before does not count";
    EXPECT_EQ(fit.readings, 1U);
    EXPECT_TRUE(fit.isCurrent);
}

TEST(Honest, a_new_build_keeps_what_was_decided_and_forgets_what_was_measured) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    bench.readyToClose();
    bench.close();
    bench.make(SignedOff{"done"});
    bench.make(BuildBegun{2, "spun a bearing"});
    EXPECT_TRUE(bench.facts.feelStudies.contains(1));
    EXPECT_EQ(bench.facts.instruments.at("MIC").statements.size(), 1U);
    EXPECT_FALSE(bench.facts.isCrankIn());
    EXPECT_TRUE(bench.facts.gaps.empty());
    EXPECT_TRUE(bench.facts.deviations.empty());
}

TEST(Honest, of_a_gap_that_names_no_straightedge_nothing_is_proven_however_many_the_record_lists) {
    Bench bench;
    bench.layIn();
    for (int pass = 1; pass <= 2; ++pass) {
        bench.make(GapReading{secondCapRight, pass, {thou(50), ""}, "LEAVES"});
        bench.make(GapReading{secondCapLeft, pass, {thou(50), ""}, "LEAVES", {}, "EDGE"});
    }
    bench.kit();
    bench.build();
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::notProven) << "the record lists one, and nobody said it was that";
    EXPECT_THAT(bench.assessment.find("stack:2R")->remedy, HasSubstr("which straightedge"));
    EXPECT_EQ(bench.stateOf("stack:2L"), CheckState::good);
    bench.make(drafts::instrument("FINE", InstrumentType::straightedge, 0.1));
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::notProven) << "a better one listed later changes nothing";
}

TEST(Honest, what_people_differ_by_goes_into_the_uncertainty_of_a_place_that_one_of_them_read) {
    Bench alone;
    Bench two;
    two.make(PersonAdded{"Tom", ""});
    for (Bench* bench : {&alone, &two}) {
        bench->survey();
    }
    const auto readAsTom = [&](Position p, double gapThou) {
        Entry entry;
        entry.sequence = two.facts.lastEntry + 1;
        entry.time = {1'700'000'000'000 + entry.sequence * 1000};
        entry.person = "Tom";
        entry.body = GapReading{p, 3, {thou(gapThou), ""}, "LEAVES", {}, "EDGE"};
        apply(two.facts, entry);
    };
    readAsTom({1, Side::left}, 50.4);
    readAsTom({1, Side::right}, 50.5);
    readAsTom({3, Side::left}, 50.4);
    two.assessment = assess(two.facts);
    const double before = *alone.assessment.gaps.at(secondCapRight).uncertainty.expanded();
    const double after = *two.assessment.gaps.at(secondCapRight).uncertainty.expanded();
    EXPECT_GT(after, before + 0.2 * 25'400) << "Tom reads some 0.0004 in more, and one of the two is wrong by it";
    const UncertaintyBudget budget = gapBudgetOf(two.facts, secondCapRight);
    EXPECT_TRUE(std::ranges::any_of(budget.terms, [](const UncertaintyTerm& term) {
        return term.name.ends_with("between people") && term.standardUncertainty > 0.2 * 25'400;
    }));
}

TEST(Honest, beside_a_verdict_stand_its_probability_and_its_capability_cut_down) {
    Bench bench;
    bench.survey();
    bench.kit();
    bench.build();
    const Check& stack = *bench.assessment.find("stack:2R");
    ASSERT_TRUE(stack.judged.front().conformity);
    const std::string beside = besideVerdict(stack, {});
    EXPECT_THAT(beside, HasSubstr("p "));
    EXPECT_THAT(beside, HasSubstr("%, C "));
    EXPECT_EQ(besideVerdict(*bench.assessment.find("gap:2R"), {}), "") << "no number was judged";
    Judged one = stack.judged.front();
    one.conformity = Conformity{0.99999, 0.99999};
    EXPECT_EQ(besideVerdict(one, {}), "p 99.9 %, C 0.99") << "never printed larger than it is";
    one.conformity->capability = 1e9;
    EXPECT_EQ(besideVerdict(one, {}), "p 99.9 %, C over 99");
    Check two = stack;
    two.judged = {one, one};
    two.judged.back().conformity = Conformity{0.5, 0.4};
    EXPECT_EQ(besideVerdict(two, {}), "p 50.0 %, C 0.40") << "of several the one that is likeliest to be out";
    one.conformity.reset();
    EXPECT_EQ(besideVerdict(one, {}), "");
    Assessment judged;
    EXPECT_THAT(besideAllVerdicts(judged), testing::IsEmpty());
    judged.weaklyMeasured = 1;
    EXPECT_THAT(besideAllVerdicts(judged), testing::ElementsAre(HasSubstr("1 verdict is weakly")));
    judged.weaklyMeasured = 3;
    judged.passedByEye = 1;
    EXPECT_THAT(besideAllVerdicts(judged), testing::ElementsAre(HasSubstr("3 verdicts are weakly"),
                                                                HasSubstr("1 clearance of the trial fit was passed by eye")));
}
