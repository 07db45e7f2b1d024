// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <assessment/judged_before.h>
#include <clearances/turning.h>
#include <gmock/gmock.h>
#include <work/deviations.h>
#include <work/sittings.h>

namespace caprail {
namespace {

using testing::HasSubstr;
using testing::Not;

BandSet wider(std::string why = {}) {
    BandSet band = drafts::band(bands::residual, -100, 100);
    if (!why.empty()) {
        band.why = std::move(why);
    }
    return band;
}

std::vector<std::string> sentences(const WorkBench& bench) {
    std::vector<std::string> list;
    for (const Deviation& one : deviationsOf(bench.ledger, bench.facts)) {
        list.push_back(describe(one.what, {}));
    }
    return list;
}

TEST(Deviations, of_a_build_in_which_nothing_was_changed_are_none_and_that_is_said) {
    WorkBench bench;
    bench.readyToClose();
    const auto deviations = deviationsOf(bench.ledger, bench.facts);
    EXPECT_TRUE(deviations.empty()) << sentences(bench).front();
    EXPECT_EQ(deviationsLine(deviations), "Nothing was changed after something had been judged by it.");
}

TEST(Deviations, a_band_widened_after_its_readings_needs_a_reason_and_is_told_with_it) {
    WorkBench bench;
    bench.survey();
    EXPECT_THAT(bench.refusal(wider()), HasSubstr("a reason is required"));
    EXPECT_THAT(bench.refusal(wider("   ")), HasSubstr("a reason is required"));
    bench.make(wider("the customer wants it so"));
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("widened from −0.0005 to 0.0005 in to −0.1000 to 0.1000 in"));
    EXPECT_THAT(sentences(bench).front(), HasSubstr("the customer wants it so"));
    EXPECT_THAT(deviationsLine(deviationsOf(bench.ledger, bench.facts)), HasSubstr("limits or rules: 1"));
}

TEST(Deviations, a_band_set_before_anything_was_read_is_none_and_needs_no_reason) {
    WorkBench bench;
    EXPECT_TRUE(bench.tryTo(wider()));
    EXPECT_TRUE(sentences(bench).empty());
    bench.survey();
    EXPECT_TRUE(bench.tryTo(wider())) << "the same again";
    EXPECT_TRUE(sentences(bench).empty());
}

TEST(Deviations, loosened_rules_say_which_value_from_what_to_what_and_why) {
    WorkBench bench;
    bench.survey();
    RulesSet rules = bench.facts.rules;
    rules.repeatLimit = thou(5);
    EXPECT_THAT(bench.refusal(rules), HasSubstr("a reason is required"));
    rules.why = "old leaves";
    bench.make(rules);
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("the repeat limit of gap readings from 0.0010 in to 0.0050 in"));
    EXPECT_THAT(sentences(bench).front(), HasSubstr("old leaves"));
    EXPECT_FALSE(bench.facts.rules.why) << "it is the reason of this change, not of the next";
}

TEST(Deviations, rules_changed_by_less_than_is_printed_are_changed) {
    // Two figures that print alike are not the same: what lies between them is judged otherwise.
    WorkBench bench;
    bench.survey();
    RulesSet rules = bench.facts.rules;
    rules.repeatLimit += Length{500};
    EXPECT_THAT(bench.refusal(rules), HasSubstr("a reason is required"));
    rules.why = "typed in millimetres";
    bench.make(rules);
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("the repeat limit of gap readings from 0.0010 in to 0.0010197 in"));
    rules = bench.facts.rules;
    rules.turningRise = Torque{usualTurningRise().value() + 1};
    rules.why = "another wrench";
    bench.make(rules);
    EXPECT_THAT(sentences(bench).back(),
                HasSubstr("the largest rise of the turning torque by less than its last digit"));
}

TEST(Deviations, a_struck_moved_is_told_with_who_entered_it_again_as_held_and_how_long_after) {
    WorkBench bench;
    bench.readyToClose();
    bench.make(RoundBegun{2, "W1"});
    const FastenerId f = bench.facts.layout->mainFasteners().front();
    const std::int64_t moved = bench.outcome(f, Outcome::moved, 4);
    bench.comesFromOutside(Struck{moved, "typing error"}, 60);
    bench.facts = fold(bench.ledger);
    bench.comesFromOutside(drafts::held(2, f), 116 * 24 * 60);
    const auto deviations = deviationsOf(bench.ledger, bench.facts);
    ASSERT_EQ(deviations.size(), 1U);
    EXPECT_EQ(sortOf(deviations.front().what), DeviationSort::moved);
    const std::string said = describe(deviations.front().what, {});
    EXPECT_THAT(said, HasSubstr("typing error"));
    EXPECT_THAT(said, HasSubstr("116 days later"));
    EXPECT_THAT(said, HasSubstr("by Mira"));
    EXPECT_THAT(said, HasSubstr("held"));
    EXPECT_THAT(deviationsLine(deviations), HasSubstr("“moved” struck: 1"));
}

TEST(Deviations, a_struck_reading_is_told_and_a_slip_of_a_band_before_any_reading_is_not) {
    WorkBench bench;
    const std::int64_t slip = bench.make(wider());
    bench.make(Struck{slip, "wrong figure"});
    EXPECT_TRUE(sentences(bench).empty());
    const std::int64_t gap = bench.gapAt({1, Side::left}, 50);
    bench.make(Struck{gap, "leaf was dirty"});
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(deviationsLine(deviationsOf(bench.ledger, bench.facts)), HasSubstr("reading struck: 1"));
}

TEST(Deviations, a_band_that_was_struck_after_something_was_read_is_told) {
    WorkBench bench;
    const std::int64_t set = bench.make(wider());
    bench.survey();
    bench.make(Struck{set, "too wide"});
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("too wide"));
}

TEST(Deviations, washers_parts_and_loosened_fasteners_count_once_a_gap_was_read_there) {
    WorkBench bench;
    bench.tightenAll();
    bench.layIn();
    const Position p{1, Side::left};
    const FastenerId f{FastenerKind::mainCap, 1, Side::left};
    EXPECT_TRUE(bench.tryTo(WasherWorked{p, WasherWork::turned, {}})) << "nothing was read yet: no reason is asked";
    EXPECT_TRUE(bench.tryTo(FastenerLoosened{f, {}}));
    bench.make(FastenerTightened{f, Entered<Torque>{poundFeet(70), ""}, {}, {}, "W1"});
    EXPECT_TRUE(sentences(bench).empty());
    bench.twoPasses(p, 50);
    EXPECT_THAT(bench.refusal(WasherWorked{p, WasherWork::dressed, {}}), HasSubstr("a reason is required"));
    EXPECT_THAT(bench.refusal(PartChanged{Part::nutAndWasher, code(p), {}}), HasSubstr("a reason is required"));
    EXPECT_THAT(bench.refusal(FastenerLoosened{f, {}}), HasSubstr("a reason is required"));
    bench.make(WasherWorked{p, WasherWork::dressed, "a burr"});
    bench.make(FastenerLoosened{f, "thread looked at"});
    const auto deviations = deviationsOf(bench.ledger, bench.facts);
    ASSERT_EQ(deviations.size(), 2U);
    EXPECT_THAT(describe(deviations[0].what, {}), HasSubstr("dressed after the reading of entry"));
    EXPECT_THAT(describe(deviations[0].what, {}), HasSubstr("a burr"));
    EXPECT_EQ(sortOf(deviations[1].what), DeviationSort::fastener);
}

TEST(Deviations, a_fastener_that_moved_in_a_round_is_told) {
    WorkBench bench;
    bench.readyToClose();
    bench.make(RoundBegun{2, "W1"});
    bench.outcome(bench.facts.layout->mainFasteners().front(), Outcome::moved, 3);
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("In verify round 2, main 1 left moved 3.0°"));
}

TEST(Deviations, another_specification_after_the_tightening_is_told_from_what_to_what) {
    WorkBench bench;
    bench.tightenAll();
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 6, "7/16-20", 60);
    EXPECT_THAT(bench.refusal(group), HasSubstr("a reason is required"));
    group.why = "the maker's new sheet";
    bench.make(group);
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("from 70.0 lbf·ft to 60.0 lbf·ft"));
    EXPECT_THAT(sentences(bench).front(), HasSubstr("the maker's new sheet"));
}

TEST(Deviations, a_narrower_group_that_asks_for_less_at_a_tightened_place_is_told) {
    WorkBench bench;
    bench.tightenAll();
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 2, "7/16-20", 50);
    group.name = "rear cap";
    group.places = NameList{{"main-3L", "main-3R"}};
    EXPECT_THAT(bench.refusal(group), HasSubstr("a reason is required"));
    group.why = "bolts there";
    bench.make(group);
    ASSERT_EQ(sentences(bench).size(), 1U);
    EXPECT_THAT(sentences(bench).front(), HasSubstr("from 70.0 lbf·ft to 50.0 lbf·ft"));
}

TEST(Deviations, of_an_earlier_build_stay_with_that_build) {
    WorkBench bench;
    bench.readyToClose();
    bench.make(wider("asked for"));
    EXPECT_FALSE(sentences(bench).empty());
    bench.comesFromOutside(BuildBegun{2, "a second life"}, 1);
    EXPECT_TRUE(sentences(bench).empty());
}

TEST(Reasons, are_put_where_the_kind_has_its_place_for_one) {
    for (const Body& body : {Body(BandSet{}), Body(RulesSet{}), Body(FastenerGroupSet{}), Body(OwnCheckSet{}),
                             Body(ShellsFitted{}), Body(PartChanged{}), Body(WasherWorked{}), Body(FastenerLoosened{})}) {
        const Body said = withReason(body, "because");
        ASSERT_NE(reasonOf(said), nullptr) << kindOf(body).kind;
        EXPECT_EQ(*reasonOf(said), "because") << kindOf(body).kind;
    }
    EXPECT_EQ(reasonOf(withReason(NoteAdded{"", "x"}, "because")), nullptr);
}

Ledger at(std::initializer_list<std::int64_t> minutes) {
    Ledger ledger;
    for (const std::int64_t minute : minutes) {
        ledger.append({minute * 60'000}, "Mira", NoteAdded{"", "x"});
    }
    return ledger;
}

TEST(Sittings, part_where_more_than_an_hour_passed_or_the_clock_went_back) {
    const auto sittings = sittingsOf(at({0, 60, 121, 130, 100}));
    ASSERT_EQ(sittings.size(), 3U);
    EXPECT_EQ(sittings[0].minutes(), 60);
    EXPECT_EQ(sittings[0].entries, 2U);
    EXPECT_EQ(sittings[1].minutes(), 9);
    EXPECT_EQ(sittings[2].minutes(), 0);
    EXPECT_EQ(describeWork(sittings), "3 sittings, 1.2 hours in all");
    EXPECT_TRUE(sittingsOf(Ledger{}).empty());
    EXPECT_EQ(sittingsOf(at({0, 60, 121}), 3).size(), 1U);
}

} // namespace
} // namespace caprail
