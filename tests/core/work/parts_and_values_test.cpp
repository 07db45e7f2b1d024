// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <algorithm>
#include <assessment/unconfirmed.h>
#include <gmock/gmock.h>
#include <work/parts.h>
#include <work/zero_checks.h>

namespace caprail {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

ValueStanding value(const Facts& facts, const std::string& code) {
    const auto values = valuesOf(facts);
    const auto at = std::ranges::find(values, code, &ValueStanding::code);
    EXPECT_NE(at, values.end()) << code;
    return at == values.end() ? ValueStanding{} : *at;
}

BandSet common(double lo, double hi) {
    BandSet band = drafts::band(bands::residual, lo, hi);
    band.source = "Common practice, no source: the part maker's instructions come first";
    return band;
}

TEST(Values, of_a_template_are_unconfirmed_until_a_person_says_whose_they_are) {
    WorkBench bench;
    bench.make(common(-1, 1));
    EXPECT_FALSE(value(bench.facts, "band:residual").isConfirmed);
    const std::size_t before = countUnconfirmed(valuesOf(bench.facts));
    bench.make(ValueConfirmed{"band:residual", "kit maker's sheet 12"});
    EXPECT_TRUE(value(bench.facts, "band:residual").isConfirmed);
    EXPECT_EQ(value(bench.facts, "band:residual").source, "kit maker's sheet 12");
    EXPECT_EQ(value(bench.facts, "band:residual").by, "Mira");
    EXPECT_EQ(countUnconfirmed(valuesOf(bench.facts)), before - 1);
}

TEST(Values, are_unconfirmed_again_once_they_take_another_figure_and_only_those) {
    WorkBench bench;
    bench.make(common(-1, 1));
    bench.make(ValueConfirmed{"band:residual", "kit maker's sheet 12"});
    bench.make(ValueConfirmed{"rule:repeat_limit", "the shop"});
    bench.make(common(-1, 1)); // the same figure
    EXPECT_TRUE(value(bench.facts, "band:residual").isConfirmed);
    bench.make(common(-2, 2));
    EXPECT_FALSE(value(bench.facts, "band:residual").isConfirmed);
    RulesSet rules = bench.facts.rules;
    rules.minimumPasses = 3;
    bench.make(rules);
    EXPECT_TRUE(value(bench.facts, "rule:repeat_limit").isConfirmed);
    rules.repeatLimit = thou(2);
    bench.make(rules);
    EXPECT_FALSE(value(bench.facts, "rule:repeat_limit").isConfirmed);
}

TEST(Values, that_name_their_source_when_they_are_set_are_confirmed_by_that) {
    WorkBench bench;
    BandSet band = common(-1, 1);
    band.source = "kit maker's sheet 12";
    bench.make(band);
    EXPECT_TRUE(value(bench.facts, "band:residual").isConfirmed);
    EXPECT_FALSE(namesSomebody(""));
    EXPECT_FALSE(namesSomebody("  "));
    EXPECT_FALSE(namesSomebody("COMMON PRACTICE"));
    EXPECT_TRUE(namesSomebody("Orrin Vale, by telephone"));
}

TEST(Values, the_programs_own_starting_rules_are_nobodys) {
    const Facts empty;
    EXPECT_FALSE(value(empty, "rule:torque_scatter_percent").isConfirmed);
    EXPECT_THAT(unconfirmedSentence(valuesOf(empty)), HasSubstr("12 values of 12 were confirmed by nobody"));
}

TEST(Values, are_confirmed_only_where_there_is_such_a_value_and_by_somebodys_name) {
    WorkBench bench;
    EXPECT_THAT(bench.refusal(ValueConfirmed{"band:nothing", "me"}), HasSubstr("has no value “band:nothing”"));
    EXPECT_THAT(bench.refusal(ValueConfirmed{"band:residual", "common practice"}), HasSubstr("Say whose figure it is"));
}

TEST(Values, every_confirmed_value_leaves_nothing_to_say) {
    WorkBench bench;
    for (const ValueStanding& one : valuesOf(bench.facts)) {
        if (!one.isConfirmed) {
            bench.make(ValueConfirmed{one.code, "the shop's sheet 4"});
        }
    }
    EXPECT_EQ(unconfirmedSentence(valuesOf(bench.facts)), "");
}

PartEntered shells() {
    PartEntered part;
    part.sort = PartSort::mainShells;
    part.maker = "Norwood";
    part.number = "7312 P";
    part.lot = "7731";
    part.isNew = true;
    return part;
}

TEST(Parts, are_found_at_the_places_that_have_one_of_them) {
    WorkBench bench;
    bench.make(shells());
    ASSERT_EQ(partsAt(bench.facts, "main-2").size(), 1U);
    EXPECT_EQ(describe(partsAt(bench.facts, "main-2").front()->what), "main shells: Norwood 7312 P, lot 7731, new");
    EXPECT_THAT(partsAt(bench.facts, "rod-1"), IsEmpty());
    EXPECT_THAT(partsAt(bench.facts, ""), IsEmpty());
    PartEntered stud;
    stud.sort = PartSort::mainStuds;
    stud.place = "main-2L";
    bench.make(stud);
    EXPECT_EQ(partsAt(bench.facts, "main-2L").size(), 1U);
    EXPECT_THAT(partsAt(bench.facts, "main-2R"), IsEmpty());
}

TEST(Parts, entered_again_are_restated_and_keep_over_a_new_build) {
    WorkBench bench;
    bench.make(shells());
    PartEntered again = shells();
    again.lot = "7732";
    bench.make(again);
    ASSERT_EQ(bench.facts.parts.size(), 1U);
    EXPECT_EQ(bench.facts.parts.front().what.lot, "7732");
    bench.comesFromOutside(BuildBegun{2, "a second life"}, 1);
    EXPECT_EQ(bench.facts.parts.size(), 1U);
}

TEST(Parts, that_contradict_themselves_or_name_no_place_are_refused) {
    WorkBench bench;
    PartEntered part = shells();
    part.place = "somewhere";
    EXPECT_THAT(bench.refusal(part), HasSubstr("not a place of an engine"));
    part = shells();
    part.timesTightened = 2;
    EXPECT_THAT(bench.refusal(part), HasSubstr("A new fastener was not tightened before"));
    part = shells();
    part.photo = sha256Hex("x");
    EXPECT_THAT(bench.refusal(part), HasSubstr("add it first"));
    part = {};
    part.sort = PartSort::other;
    EXPECT_THAT(bench.refusal(part), HasSubstr("Say what the part is"));
}

ZeroChecked zero(const char* instrument, double readThou = 0) {
    return {instrument, "closed anvils", {Length(), ""}, {thou(readThou), ""}};
}

TEST(ZeroChecks, are_missed_on_each_day_on_which_an_instrument_measured_without_one) {
    WorkBench bench;
    bench.tightenAll();
    bench.bearings();
    auto standings = zeroStandings(bench.ledger, bench.facts);
    ASSERT_EQ(standings.size(), 2U);
    EXPECT_EQ(standings[0].instrument, "BORE");
    EXPECT_EQ(standings[0].untried(), 1U);
    EXPECT_THAT(untriedSince(bench.ledger, bench.facts, bench.ledger.at(1).time), ElementsAre("BORE", "MIC"));
    bench.make(zero("MIC", 0.1));
    standings = zeroStandings(bench.ledger, bench.facts);
    EXPECT_EQ(standings[1].untried(), 0U);
    EXPECT_EQ(errorOf(bench.facts.zeroChecks.at("MIC").back().what), thou(0.1));
    EXPECT_THAT(untriedSince(bench.ledger, bench.facts, bench.ledger.at(1).time), ElementsAre("BORE"));
    const UtcTime tomorrow{bench.ledger.entries().back().time.milliseconds + 86'400'000};
    EXPECT_THAT(untriedSince(bench.ledger, bench.facts, tomorrow), IsEmpty());
}

TEST(ZeroChecks, need_a_known_instrument_that_has_a_zero_and_a_standard) {
    WorkBench bench;
    EXPECT_THAT(bench.refusal(zero("NONE")), HasSubstr("knows no instrument NONE"));
    EXPECT_THAT(bench.refusal(zero("W1")), HasSubstr("W1 is a torque wrench"));
    ZeroChecked check = zero("MIC");
    check.standard.clear();
    EXPECT_THAT(bench.refusal(check), HasSubstr("the standard that MIC was tried on"));
}

} // namespace
} // namespace caprail
