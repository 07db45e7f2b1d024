// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <assessment/current_readings.h>
#include <work/shells.h>

namespace caprail {
namespace {

constexpr JournalId main1{JournalKind::main, 1};
constexpr JournalId main2{JournalKind::main, 2};

void shell(WorkBench& bench, const char* name, double thickness, bool isMarked) {
    bench.make(ShellMeasured{name, JournalKind::main, ShellHalf::either, {thou(thickness), ""}, isMarked, ""});
}

TEST(ShellThickness, is_the_mean_of_what_was_measured_and_else_as_marked) {
    WorkBench bench;
    shell(bench, "A", 95, true);
    EXPECT_EQ(shellThickness(bench.facts, "A"), thou(95));
    shell(bench, "A", 94.8, false);
    shell(bench, "A", 95.0, false);
    EXPECT_EQ(shellThickness(bench.facts, "A"), thou(94.9));
    EXPECT_FALSE(shellThickness(bench.facts, "B"));
}

TEST(Shells, that_trade_places_are_ordered_or_refused_by_name) {
    ShellSelection selection;
    selection.pairs = {{"main-1", "A", "B", {}, true, true}, {"main-2", "C", "D", {}, true, true}};
    Facts chain = WorkBench().facts;
    chain.shellsFitted[main1] = {1, {}, "", {main1, "C", "D"}};
    const auto order = fittingsFor(chain, selection);
    ASSERT_TRUE(order);
    EXPECT_EQ(order->front().journal, main1) << "C and D come free first";
    chain.shellsFitted[main2] = {2, {}, "", {main2, "A", "B"}};
    const auto circle = fittingsFor(chain, selection);
    ASSERT_FALSE(circle);
    EXPECT_NE(circle.error().sentence.find("main 2"), std::string::npos) << circle.error().sentence;
}

TEST(WarmShells, are_both_shells_of_the_bearing_in_steel_and_not_known_without_their_thickness) {
    WorkBench bench;
    shell(bench, "A", 95, true);
    shell(bench, "B", 94, true);
    EXPECT_FALSE(warmShells(bench.facts, main1)) << "none is fitted";
    bench.make(ShellsFitted{main1, "A", "B"});
    const auto warm = warmShells(bench.facts, main1);
    ASSERT_TRUE(warm);
    EXPECT_EQ(warm->both, thou(189));
    EXPECT_NEAR(inMillionthsPerKelvin(warm->coefficient), 11.3, 1.5) << "steel";
}

TEST(ShellRequest, takes_housings_as_read_or_from_bore_and_shells_and_says_what_it_leaves_out) {
    WorkBench bench;
    shell(bench, "A", 95, true);
    shell(bench, "B", 95, true);
    bench.tightenAll();
    bench.make(JournalReading{main1, 1, 1, {inches(2.4480), ""}, ""});
    bench.make(BoreReading{main1, BoreMethod::housing, 1, {inches(2.6402), ""}, ""});
    bench.make(JournalReading{main2, 1, 1, {inches(2.4480), ""}, ""});
    bench.make(ShellsFitted{main2, "A", "B"});
    bench.make(BoreReading{main2, BoreMethod::boreWithShells, 1, {inches(2.4502), ""}, ""});
    const ShellRequest request = shellRequestFor(bench.facts);
    ASSERT_EQ(request.bearings.size(), 2U);
    EXPECT_EQ(request.bearings[0].housing, inches(2.6402));
    EXPECT_EQ(request.bearings[1].housing, inches(2.6402)) << "2.4502 + 2 × 0.095";
    EXPECT_EQ(request.shelf.size(), 2U);
    ASSERT_EQ(request.leftOut.size(), 3U) << "main 3 and two rods";
    EXPECT_EQ(request.leftOut[0], "main 3: its journal is not measured");
    EXPECT_EQ(request.leftOut[1], "rod 1: its band is not set");
    EXPECT_EQ(whereFitted(bench.facts, "B"), main2);
    EXPECT_FALSE(whereFitted(bench.facts, "C"));
}

TEST(ShellRequest, leaves_out_readings_that_another_crank_made_fall) {
    WorkBench bench;
    bench.tightenAll();
    bench.make(JournalReading{main1, 1, 1, {inches(2.4480), ""}, ""});
    bench.make(BoreReading{main1, BoreMethod::housing, 1, {inches(2.6402), ""}, ""});
    ASSERT_EQ(shellRequestFor(bench.facts).bearings.size(), 1U);
    bench.make(PartChanged{Part::crank, "", "reground"});
    EXPECT_TRUE(shellRequestFor(bench.facts).bearings.empty());
}

} // namespace
} // namespace caprail
