// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/kit_line.h>

namespace caprail {
namespace {

constexpr Position at{2, Side::right};

TEST(KitLine, adds_one_shim_by_name_and_size) {
    const auto shims = parseKitLine("S001 10 thou", inchUnits, Facts{}, "A");
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 1U);
    EXPECT_EQ(shims->front().shim, "S001");
    EXPECT_EQ(shims->front().marked.value, thou(10));
    EXPECT_EQ(shims->front().bag, "A");
}

TEST(KitLine, names_a_counted_size_on_from_the_largest_number_of_the_kit) {
    WorkBench bench;
    bench.shim("S007", 10, {});
    const auto shims = parseKitLine("3 x 0.254 mm", inchUnits, bench.facts, "");
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 3U);
    EXPECT_EQ(shims->front().shim, "S008");
    EXPECT_EQ(shims->back().shim, "S010");
    EXPECT_EQ(shims->back().marked.value, thou(10));
}

TEST(KitLine, reads_a_run_of_names) {
    const auto shims = parseKitLine("A05-A08 5 thou", inchUnits, Facts{}, "");
    ASSERT_TRUE(shims);
    ASSERT_EQ(shims->size(), 4U);
    EXPECT_EQ(shims->at(1).shim, "A06");
}

TEST(KitLine, refuses_a_backward_run_a_known_name_and_a_missing_size) {
    WorkBench bench;
    bench.shim("S001", 10, {});
    EXPECT_FALSE(parseKitLine("S009-S002 5 thou", inchUnits, Facts{}, ""));
    EXPECT_FALSE(parseKitLine("S001 5 thou", inchUnits, bench.facts, ""));
    EXPECT_FALSE(parseKitLine("S002", inchUnits, Facts{}, ""));
    EXPECT_FALSE(parseKitLine("900 x 5 thou", inchUnits, Facts{}, ""));
    EXPECT_FALSE(parseKitLine("S002 10", inchUnits, Facts{}, "")); // 10 in? 10 thou?
}

TEST(ShimReading, takes_a_name_in_small_letters_and_else_the_selected_shim) {
    WorkBench bench;
    bench.shim("S014", 10, {});
    const auto named = parseShimReading("s014 .0098", inchUnits, bench.facts, "");
    ASSERT_TRUE(named);
    EXPECT_EQ(named->shim, "S014");
    EXPECT_EQ(named->thickness.value, tenths(98));
    EXPECT_TRUE(parseShimReading(".0098", inchUnits, bench.facts, "S014"));
    EXPECT_FALSE(parseShimReading(".0098", inchUnits, bench.facts, ""));
    EXPECT_FALSE(parseShimReading("S099 .0098", inchUnits, bench.facts, "S014"));
}

TEST(TypedStack, refuses_a_shim_named_twice_or_set_aside) {
    WorkBench bench;
    bench.shim("S001", 10, 10);
    bench.shim("S002", 10, 10);
    bench.make(ShimSetAside{"S002", true, "burr"});
    EXPECT_FALSE(parseStack("S001 S001", bench.facts, at));
    EXPECT_FALSE(parseStack("S001 S002", bench.facts, at));
    EXPECT_FALSE(parseStack("", bench.facts, at));
    EXPECT_TRUE(parseStack("-", bench.facts, at)->empty());
}

TEST(KitLine, tells_a_run_from_a_name_with_a_dash) {
    EXPECT_EQ(parseKitLine("A-05..07 5 thou", inchUnits, Facts{}, "")->back().shim, "A-07");
    EXPECT_EQ(parseKitLine("A-05–A-06 5 thou", inchUnits, Facts{}, "")->size(), 2U);
    EXPECT_EQ(parseKitLine("A-05 5 thou", inchUnits, Facts{}, "")->front().shim, "A-05");
    EXPECT_FALSE(parseKitLine("A05-B08 5 thou", inchUnits, Facts{}, "")) << "other letters at its end";
    EXPECT_FALSE(parseKitLine("S1-S99999999999999999999 5 thou", inchUnits, Facts{}, "")) << "no number of a shim";
}

TEST(KitLine, takes_every_sign_of_multiplication) {
    for (const char* typed : {"2x5 thou", "2 × 5 thou", "2* 5 thou"}) {
        const auto shims = parseKitLine(typed, inchUnits, Facts{}, "");
        ASSERT_TRUE(shims) << typed;
        EXPECT_EQ(shims->size(), 2U) << typed;
    }
    EXPECT_FALSE(parseKitLine("201 x 5 thou", inchUnits, Facts{}, ""));
    EXPECT_FALSE(parseKitLine("0 x 5 thou", inchUnits, Facts{}, ""));
}

TEST(TypedStack, takes_names_between_blanks_commas_and_pluses_in_small_letters_too) {
    WorkBench bench;
    bench.shim("S001", 10, 10);
    bench.shim("Ü2", 10, 10);
    EXPECT_EQ(*parseStack(" s001 + ü2 ", bench.facts, at), (std::vector<std::string>{"S001", "Ü2"}));
    EXPECT_EQ(*parseStack("S001,Ü2;", bench.facts, at), (std::vector<std::string>{"S001", "Ü2"}));
}

TEST(MarkedShim, is_off_its_marking_from_beyond_the_tolerance_of_the_kit_and_never_unmeasured) {
    WorkBench bench;
    RulesSet rules = bench.facts.rules;
    rules.kitTolerance = tenths(2);
    bench.make(rules);
    bench.shim("S001", 10, 10.2);
    bench.shim("S002", 10, 10.3);
    bench.shim("S003", 10, {});
    const auto isOff = [&](const char* shim) { return bench.facts.shims.at(shim).isOffMarking(bench.facts.rules); };
    EXPECT_FALSE(isOff("S001"));
    EXPECT_TRUE(isOff("S002"));
    EXPECT_FALSE(isOff("S003"));
    EXPECT_EQ(bench.facts.shims.at("S002").offMarking(), tenths(3));
    EXPECT_FALSE(bench.facts.shims.at("S003").offMarking());
}

} // namespace
} // namespace caprail
