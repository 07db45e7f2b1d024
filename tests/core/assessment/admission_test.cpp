// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench.h"

#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Position secondRight{2, Side::right};

} // namespace

TEST(Admission, refuses_unknown_places_by_name) {
    Bench bench;
    EXPECT_THAT(bench.refusal(GapReading{{4, Side::left}, 1, {thou(50), ""}, ""}), HasSubstr("caps 1 to 3"));
    EXPECT_THAT(bench.refusal(JournalReading{{JournalKind::rod, 9}, 1, 1, {inches(2), ""}, ""}), HasSubstr("rod 9"));
    EXPECT_THAT(
        bench.refusal(FastenerTightened{
            {FastenerKind::mainCap, 2, Side::left, Ring::outer}, Entered<Torque>{poundFeet(70), ""}, {}, {}, ""}),
        HasSubstr("main 2 left outer"));
    EXPECT_THAT(bench.refusal(GapReading{secondRight, 1, {thou(50), ""}, "NO-SUCH"}), HasSubstr("NO-SUCH"));
    EXPECT_THAT(bench.refusal(FitReading{"ring gap", 1, {thou(20), ""}, ""}), HasSubstr("set its band first"));
}

TEST(Admission, refuses_the_same_shim_in_two_stacks) {
    Bench bench;
    bench.kit();
    bench.make(StackBuilt{secondRight, {{"S-1L", "S-1R"}}});
    EXPECT_THAT(bench.refusal(StackBuilt{{3, Side::left}, {{"S-1R"}}}), HasSubstr("cap 2 right already"));
    EXPECT_THAT(bench.refusal(StackBuilt{{3, Side::left}, {{"S-2L", "S-2L"}}}), HasSubstr("twice"));
    EXPECT_THAT(bench.refusal(StackBuilt{{3, Side::left}, {{"S-99"}}}), HasSubstr("no shim S-99"));
    bench.make(StackMoved{secondRight, StackMove::takenApart});
    bench.make(StackBuilt{{3, Side::left}, {{"S-1R"}}});
    bench.make(ShimSetAside{"S-1L", true, "burred"});
    EXPECT_THAT(bench.refusal(StackBuilt{secondRight, {{"S-1L"}}}), HasSubstr("burred"));
    EXPECT_THAT(bench.refusal(ShimAdded{"S-1L", {thou(5), ""}, ""}), HasSubstr("already"));
}

TEST(Admission, refuses_a_closing_step_before_its_gate_and_out_of_order) {
    Bench bench;
    EXPECT_THAT(bench.refusal(ClosingStepDone{ClosingStep::stacksRefitted, {}, ""}), HasSubstr("Closing is locked"));
    bench.readyToClose();
    EXPECT_THAT(bench.refusal(ClosingStepDone{ClosingStep::girdleLowered, {}, ""}), HasSubstr("comes after"));
    EXPECT_THAT(bench.refusal(SignedOff{"done"}), HasSubstr("before"));
    bench.close(ClosingStep::stacksRefitted);
    EXPECT_THAT(bench.refusal(ClosingStepDone{ClosingStep::stacksRefitted, {}, ""}), HasSubstr("ticked already"));
}

TEST(Admission, says_why_a_gate_is_locked_where_nothing_is_known_yet) {
    const Facts facts;
    for (const Body& body : std::vector<Body>{SignedOff{"x"}, ClosingStepDone{ClosingStep::stacksRefitted, {}, ""},
                                              TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""}}) {
        EXPECT_THAT(mayAppend({}, facts, assess(facts), "Mira", body).error().sentence, HasSubstr("no engine layout"));
    }
}

TEST(Admission, a_round_needs_the_stacks_off_and_one_outcome_per_fastener) {
    Bench bench;
    bench.tightenAll();
    bench.survey();
    bench.kit();
    bench.build();
    EXPECT_THAT(bench.refusal(RoundBegun{1, "W1"}), HasSubstr("stacks off"));
    bench.stacks(StackMove::takenOff);
    EXPECT_THAT(bench.refusal(RoundBegun{2, "W1"}), HasSubstr("number 1"));
    bench.make(RoundBegun{1, "W1"});
    const FastenerId f{FastenerKind::mainCap, 1, Side::left, Ring::inner};
    bench.outcome(f);
    EXPECT_THAT(bench.refusal(RoundOutcome{1, f, Outcome::held, {}, {}, ""}), HasSubstr("already"));
    const FastenerId g{FastenerKind::mainCap, 1, Side::right, Ring::inner};
    EXPECT_THAT(bench.refusal(RoundOutcome{1, g, Outcome::moved, {}, {}, ""}), HasSubstr("what angle"));
    EXPECT_THAT(bench.refusal(RoundOutcome{1, g, Outcome::held, Entered<Angle>{degrees(3), ""}, {}, ""}),
                HasSubstr("held"));
    EXPECT_THAT(bench.refusal(
                    RoundOutcome{1, {FastenerKind::girdleNut, 1, Side::left, Ring::inner}, Outcome::held, {}, {}, ""}),
                HasSubstr("main-cap and rod"));
}

TEST(Admission, refuses_impossible_values) {
    Bench bench;
    EXPECT_THAT(bench.refusal(JournalReading{{JournalKind::main, 1}, 1, 1, {inches(-2), ""}, ""}),
                HasSubstr("more than zero"));
    EXPECT_THAT(bench.refusal(GapReading{secondRight, 1, {inches(500), ""}, ""}), HasSubstr("too large"));
    EXPECT_THAT(bench.refusal(GapReading{secondRight, 0, {thou(50), ""}, ""}), HasSubstr("Passes count"));
    EXPECT_THAT(
        bench.refusal(FastenerTightened{
            {FastenerKind::mainCap, 1, Side::left, Ring::inner}, Entered<Torque>{poundFeet(-5), ""}, {}, {}, ""}),
        HasSubstr("cannot be a torque"));
    EXPECT_THAT(bench.refusal(BandSet{"residual", {thou(1), ""}, {thou(-1), ""}, {}, ""}),
                HasSubstr("smaller one first"));
    EXPECT_THAT(bench.refusal(PersonAdded{" ", ""}), HasSubstr("person's name"));
    EXPECT_THAT(bench.refusal(ShimAdded{"two words", {thou(5), ""}, ""}), HasSubstr("without spaces"));
}

TEST(Admission, refuses_what_a_screen_would_refuse) {
    Bench bench;
    EXPECT_THAT(bench.refusal(drafts::group(FastenerKind::mainCap, 6, "9/99-3 banana", 70)), HasSubstr("banana"));
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 6, "7/16-20", 70);
    group.sequence.names = {"main-9R"};
    EXPECT_THAT(bench.refusal(group), HasSubstr("does not have it"));
    group.sequence.names = {"main-1R"};
    group.ring = Ring::outer;
    EXPECT_THAT(bench.refusal(group), HasSubstr("outer"));
    FastenerGroupSet turned = drafts::group(FastenerKind::rod, 4, "3/8-24", 40);
    turned.method = TighteningMethod::torqueAndAngle;
    turned.angle = Entered<Angle>{degrees(90), ""};
    bench.make(turned);
    EXPECT_THAT(bench.refusal(FastenerTightened{
                    {FastenerKind::rod, 1, Side::left, Ring::inner}, Entered<Torque>{poundFeet(40), ""}, {}, {}, ""}),
                HasSubstr("torque and angle"));
    InstrumentAdded worn{"W2", InstrumentType::torqueWrench, "", "", {}, {}, {}, {}, {}, {}, 2'000'000};
    EXPECT_THAT(bench.refusal(worn), HasSubstr("counts of pulls"));
}

TEST(Admission, refuses_texts_that_hide_something) {
    Bench bench;
    EXPECT_THAT(bench.refusal(PersonAdded{"Mira\u202e", ""}), HasSubstr("U+202E"));
    EXPECT_THAT(bench.refusal(EngineDescribed{"", "Orrin\nVale", "V8", "", ""}), HasSubstr("one line"));
    EXPECT_THAT(bench.refusal(NoteAdded{"", "\x1b[2Jgone"}), HasSubstr("U+001B"));
    bench.make(NoteAdded{"", "two\nlines"});
}

TEST(Admission, every_entry_needs_a_known_person) {
    Bench bench;
    EXPECT_THAT(mayAppend(bench.ledger, bench.facts, bench.assessment, "", NoteAdded{"", "x"}).error().sentence,
                HasSubstr("person's name"));
    EXPECT_THAT(mayAppend(bench.ledger, bench.facts, bench.assessment, "Nobody", NoteAdded{"", "x"}).error().sentence,
                HasSubstr("knows no person"));
}

TEST(Admission, a_strike_needs_a_reason_and_leaves_later_entries_standing) {
    Bench bench;
    bench.kit();
    const auto shim = bench.make(ShimAdded{"S1", {thou(50), ""}, ""});
    const auto stack = bench.make(StackBuilt{secondRight, {{"S1"}}});
    EXPECT_THAT(bench.refusal(Struck{shim, "wrong bag"}), HasSubstr("needs entry " + std::to_string(shim)));
    EXPECT_THAT(bench.refusal(Struck{stack, " "}), HasSubstr("why"));
    EXPECT_THAT(bench.refusal(Struck{9999, "x"}), HasSubstr("no entry 9999"));
    const auto strike = bench.make(Struck{stack, "wrong place"});
    EXPECT_THAT(bench.refusal(Struck{stack, "again"}), HasSubstr("struck already"));
    EXPECT_THAT(bench.refusal(Struck{strike, "undo"}), HasSubstr("itself a strike"));
    bench.make(Struck{shim, "wrong bag"});
}

TEST(Admission, a_layout_set_anew_may_not_lose_a_place_that_has_entries) {
    Bench bench;
    bench.gapAt({3, Side::left}, 50);
    LayoutSet smaller;
    static_cast<LayoutDescription&>(smaller) = bench.facts.layout->description();
    smaller.tiedLast = 2;
    EXPECT_THAT(bench.refusal(smaller), HasSubstr("cap 3 left"));
}
