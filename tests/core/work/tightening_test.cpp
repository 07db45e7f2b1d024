// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <set>
#include <assessment/admission.h>
#include <work/tightening.h>
#include <work/torque_working.h>

namespace caprail {
namespace {

FastenerGroupSet mains(const WorkBench& bench) {
    return bench.facts.groups.at({FastenerKind::mainCap, std::nullopt}).what;
}

TEST(TighteningOrder, of_ones_own_comes_before_the_usual_one) {
    WorkBench bench;
    FastenerGroupSet group = mains(bench);
    group.sequence.names = {"main-3R", "main-1L", "main-3R"};
    const auto order = tighteningOrder(bench.facts, FastenerKind::mainCap, {group});
    ASSERT_EQ(order.size(), 6U) << "what it leaves out comes last, and each comes once";
    EXPECT_EQ(code(order[0]), "main-3R");
    EXPECT_EQ(code(order[1]), "main-1L");
    EXPECT_EQ(order[2].number, 2) << "then from the centre outwards";
    EXPECT_TRUE(tighteningOrder(Facts{}, FastenerKind::mainCap).empty()) << "there is no layout";
}

TEST(TighteningOrder, of_a_row_counts_what_its_group_counts) {
    WorkBench bench;
    EXPECT_TRUE(tighteningOrder(bench.facts, FastenerKind::front).empty());
    bench.group(FastenerKind::front, 14, "1/4-20", 8);
    const auto order = tighteningOrder(bench.facts, FastenerKind::front);
    EXPECT_EQ(std::set(order.begin(), order.end()).size(), 14U);
    EXPECT_EQ(sequenceNumbers(order).at(order[4]), 5);
}

TEST(VerifyOrder, gives_every_verified_fastener_its_place) {
    WorkBench bench;
    const auto order = verifyOrder(bench.facts);
    const auto wanted = bench.facts.layout->verifiedFasteners();
    EXPECT_EQ(std::set(order.begin(), order.end()), std::set(wanted.begin(), wanted.end()));
    EXPECT_EQ(order.size(), wanted.size());
    EXPECT_EQ(sequenceNumbers(order).at({FastenerKind::rod, 1, Side::left, Ring::inner}), 1) << "rods by themselves";
}

TEST(RoundUnderWay, is_the_last_until_every_fastener_was_pulled_or_something_came_between) {
    WorkBench bench;
    bench.tightenAll();
    bench.layIn();
    EXPECT_EQ(roundUnderWay(bench.facts), nullptr);
    bench.make(RoundBegun{1, "W1"});
    ASSERT_NE(roundUnderWay(bench.facts), nullptr);
    bench.outcome(verifyOrder(bench.facts)[0]);
    EXPECT_EQ(stillToPull(bench.facts, *roundUnderWay(bench.facts)).front(), verifyOrder(bench.facts)[1]);
    for (const FastenerId f : stillToPull(bench.facts, *roundUnderWay(bench.facts))) {
        bench.outcome(f);
    }
    EXPECT_EQ(roundUnderWay(bench.facts), nullptr) << "it is complete";
    bench.make(RoundBegun{2, "W1"});
    bench.make(FastenerLoosened{verifyOrder(bench.facts)[0], "look"});
    EXPECT_EQ(roundUnderWay(bench.facts), nullptr) << "it no longer counts";
}

TEST(OutcomeAsTyped, needs_a_word_or_an_angle_of_its_own) {
    WorkBench bench;
    bench.tightenAll();
    bench.layIn();
    bench.make(RoundBegun{1, "W1"});
    const FastenerId f = verifyOrder(bench.facts).front();
    for (const char* nothing : {"", "  "}) {
        const auto empty = parseOutcome(bench.facts, f, nothing, "W1", inchUnits);
        ASSERT_FALSE(empty) << "Enter alone says nothing about a fastener";
        EXPECT_NE(empty.error().sentence.find("h if it held, or the angle"), std::string::npos) << empty.error().sentence;
        EXPECT_NE(empty.error().sentence.find(describe(f)), std::string::npos) << empty.error().sentence;
    }
    EXPECT_EQ(parseOutcome(bench.facts, f, "H", "W1", inchUnits)->outcome, Outcome::held);
    EXPECT_EQ(parseOutcome(bench.facts, f, "held", "W1", inchUnits)->outcome, Outcome::held);
    EXPECT_EQ(parseOutcome(bench.facts, f, "8", "W1", inchUnits)->angle->value, degrees(8));
    EXPECT_EQ(parseOutcome(bench.facts, f, "0", "W1", inchUnits)->outcome, Outcome::held) << "it moved by nothing";
    EXPECT_FALSE(parseOutcome(bench.facts, f, "hh", "W1", inchUnits));
}

TEST(Specified, is_what_the_method_of_the_group_asks_for) {
    WorkBench bench;
    const FastenerId f{FastenerKind::mainCap, 1, Side::left, Ring::inner};
    EXPECT_EQ(asSpecified(bench.facts, f, "W1")->torque->value, poundFeet(70));
    EXPECT_FALSE(isTightAsSpecified(bench.facts, f));
    bench.make(*asSpecified(bench.facts, f, "W1"));
    EXPECT_TRUE(isTightAsSpecified(bench.facts, f));
    FastenerGroupSet group = mains(bench);
    group.method = TighteningMethod::torqueAndAngle;
    group.angle = Entered<Angle>{degrees(90), ""};
    bench.make(group);
    EXPECT_EQ(asSpecified(bench.facts, f, "W1")->angle->value, degrees(90));
    EXPECT_FALSE(isTightAsSpecified(bench.facts, f)) << "the angle was never turned";
    const auto none = asSpecified(bench.facts, {FastenerKind::rear, 1, Side::left, Ring::inner}, "W1");
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().sentence.find("set its group first"), std::string::npos);
}

TEST(GroupSense, refuses_a_sequence_over_fasteners_that_the_engine_lacks_and_a_thread_that_does_not_exist) {
    WorkBench bench;
    FastenerGroupSet group = mains(bench);
    EXPECT_TRUE(makesSense(bench.facts, group));
    group.sequence.names = {"main-9R"};
    EXPECT_NE(makesSense(bench.facts, group).error().sentence.find("main-9R"), std::string::npos);
    group.sequence.names = {"main-1L"};
    group.ring = Ring::outer;
    EXPECT_NE(makesSense(bench.facts, group).error().sentence.find("outer"), std::string::npos);
    group.sequence.names = {};
    group.thread = "7/16-21";
    EXPECT_FALSE(makesSense(bench.facts, group));
}

TEST(GroupWorking, holds_steps_both_preloads_and_the_share_of_proof_or_says_what_is_missing) {
    WorkBench bench;
    FastenerGroupSet group = mains(bench);
    group.grade = "SAE 8";
    group.lubricant = "engine oil";
    group.steps = 2;
    const auto has = [](const std::vector<std::string>& lines, const char* begin) {
        return std::ranges::any_of(lines, [&](const std::string& line) { return line.starts_with(begin); });
    };
    const GroupWorking all = workingOf(group, 30, inchUnits);
    EXPECT_TRUE(has(all.lines, "Steps: 35.0 lbf·ft  →  70.0 lbf·ft"));
    EXPECT_TRUE(has(all.lines, "engine oil: K = 0.18"));
    EXPECT_TRUE(has(all.lines, "Preload, short form: "));
    EXPECT_TRUE(has(all.lines, "Preload, long form: "));
    EXPECT_TRUE(has(all.lines, "Share of proof load: 75 %"));
    EXPECT_EQ(all.warnings.size(), 1U) << "97 % at the lower friction";
    EXPECT_TRUE(all.missing.empty());
    group.lubricant = "butter";
    EXPECT_EQ(workingOf(group, 30, inchUnits).missing.size(), 1U);
    group.torque = {};
    EXPECT_TRUE(has(workingOf(group, 30, inchUnits).missing, "No torque is given"));
}

TEST(WrenchSettingAsTyped, names_the_field_that_cannot_be_read) {
    // 80 lbf·ft on 16 in with 4 in straight on: 80·16/20 = 64.
    const auto setting = settingAsTyped(poundFeet(80), "16 in", "4 in", "0", inchUnits);
    ASSERT_TRUE(setting) << setting.error().sentence;
    EXPECT_NEAR(inPoundFeet(setting->value), 64, 0.01);
    const auto refused = settingAsTyped(poundFeet(80), "16 in", "long", "0", inchUnits);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().sentence.find("the extension's length"), std::string::npos) << refused.error().sentence;
}

} // namespace
} // namespace caprail
