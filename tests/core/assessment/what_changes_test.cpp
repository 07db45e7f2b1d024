// SPDX-License-Identifier: GPL-3.0-or-later
/// What an entry does to the facts that others rest on.
#include "bench.h"

#include <assessment/review.h>
#include <assessment/work_order.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Position p2R{2, Side::right};

/// The bench with one shim, read once, under cap 2 right.
Bench withOneReading(double thouRead) {
    Bench bench;
    bench.survey();
    bench.make(ShimAdded{"S1", {thou(50), ""}, ""});
    bench.make(ShimMeasured{"S1", {thou(thouRead), ""}, "MIC"});
    bench.make(StackBuilt{p2R, {{"S1"}}});
    return bench;
}

std::int64_t thicknessChangedAt(const Bench& bench) {
    return bench.facts.changeOf(Topic::shimThickness, std::string("S1")).entry;
}

} // namespace

TEST(NewBuild, finds_every_shim_out_of_its_stack_and_free_for_another) {
    Bench bench;
    bench.readyToClose();
    ASSERT_EQ(bench.facts.shims.at("S-2R").inStackAt, p2R);
    bench.close();
    bench.make(SignedOff{"done"});
    bench.make(BuildBegun{2, "spun a rod bearing"});
    for (const auto& [name, shim] : bench.facts.shims) {
        EXPECT_FALSE(shim.inStackAt) << name;
        EXPECT_EQ(shim.measured(), thou(50)) << name << " keeps its readings";
    }
    bench.make(ShimSetAside{"S-1L", true, "burred"});
    bench.make(StackBuilt{p2R, {{"S-3L"}}});
}

TEST(ShimReading, a_second_that_differs_makes_its_stack_stale) {
    Bench bench = withOneReading(50);
    ASSERT_NE(bench.stateOf("stack:2R"), CheckState::stale);
    const auto second = bench.make(ShimMeasured{"S1", {thou(50.4), ""}, "MIC"});
    EXPECT_EQ(thicknessChangedAt(bench), second);
    EXPECT_EQ(bench.stateOf("stack:2R"), CheckState::stale);
    EXPECT_EQ(bench.assessment.find("stack:2R")->staleBecause.entry, second);
}

TEST(ShimReading, a_second_that_says_the_same_changes_nothing) {
    Bench bench = withOneReading(50);
    const auto before = thicknessChangedAt(bench);
    bench.make(ShimMeasured{"S1", {thou(50), ""}, "MIC"});
    EXPECT_EQ(thicknessChangedAt(bench), before);
    EXPECT_NE(bench.stateOf("stack:2R"), CheckState::stale);
}

TEST(ShimReading, the_first_is_a_change_even_where_it_says_what_was_marked) {
    Bench bench;
    bench.make(ShimAdded{"S1", {thou(50), ""}, ""});
    EXPECT_EQ(thicknessChangedAt(bench), 0);
    const auto first = bench.make(ShimMeasured{"S1", {thou(50), ""}, "MIC"});
    EXPECT_EQ(thicknessChangedAt(bench), first) << "marked is not measured";
}

TEST(Strike, of_itself_or_of_what_comes_after_it_is_refused_wherever_it_was_made) {
    Bench bench;
    const auto size = bench.ledger.size();
    EXPECT_THAT(bench.refusal(Struck{size + 1, "itself"}), HasSubstr("no entry " + std::to_string(size + 1)));
    EXPECT_THAT(bench.refusal(Struck{0, "nothing"}), HasSubstr("no entry 0"));
    EXPECT_TRUE(mayBeStruck(bench.ledger, 1, size));
    EXPECT_TRUE(mayBeStruck(bench.ledger, size, size));

    Ledger forged = bench.ledger;
    forged.append({1'700'000'999'000}, "Mira", Struck{size + 1, "itself"});
    const auto review = reviewLedger(forged);
    ASSERT_TRUE(review.first);
    EXPECT_EQ(review.first->entry, size + 1);
    EXPECT_THAT(review.first->why, HasSubstr("no entry " + std::to_string(size + 1)));
}

TEST(GroupAtTorque, is_not_reached_by_a_stretch_alone) {
    Bench bench;
    for (const FastenerId f : bench.facts.layout->verifiedFasteners()) {
        bench.make(FastenerTightened{f, {}, {}, Entered<Length>{thou(5), ""}, ""});
    }
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::out);
    EXPECT_EQ(bench.assessment.find("fasteners:main")->sentence,
              "main 2 left and 5 others are not at their specified value.");
}

TEST(GirdleWay, set_to_the_same_again_is_no_change) {
    Bench bench;
    bench.make(GirdleWaySet{});
    bench.make(GirdleWaySet{});
    EXPECT_EQ(bench.facts.changeOf(Topic::girdleWay).entry, 0);
    GirdleWaySet turned;
    turned.cutoutSide = Side::left;
    const auto at = bench.make(turned);
    EXPECT_EQ(bench.facts.changeOf(Topic::girdleWay).entry, at);
}

TEST(Instrument, counts_every_pull_that_names_it) {
    Bench bench;
    bench.tightenAll();
    EXPECT_EQ(bench.facts.wrenchPulls.at("W1"), 10);
    bench.round();
    EXPECT_EQ(bench.facts.wrenchPulls.at("W1"), 20);
}
