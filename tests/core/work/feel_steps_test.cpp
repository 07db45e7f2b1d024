// SPDX-License-Identifier: GPL-3.0-or-later
/// The steps that a feel is tried with.
#include "work_bench.h"

#include <gmock/gmock.h>
#include <work/feel_steps.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

void kitOf(Bench& bench, std::initializer_list<double> thicknesses) {
    int n = 0;
    for (const double thickness : thicknesses) {
        const std::string name = "S" + std::to_string(++n);
        bench.make(ShimAdded{name, {thou(thickness), ""}, ""});
        bench.make(ShimMeasured{name, {thou(thickness), ""}, "MIC"});
    }
}

} // namespace

TEST(FeelSteps, are_laid_out_of_measured_shims_between_the_two_most_alike) {
    Bench bench;
    kitOf(bench, {10, 10, 9.6, 9.8, 10.1, 10.2, 10.4, 5, 4.7});
    bench.make(ShimAdded{"UNMEASURED", {thou(10.3), ""}, ""});
    const FeelSteps proposal = proposeFeelSteps(bench.facts);
    EXPECT_EQ(proposal.rests, (std::vector<std::string>{"S1", "S2"}));
    EXPECT_EQ(proposal.rest, thou(10));
    std::vector<Length> heights;
    for (const FeelStep& step : proposal.steps) {
        heights.push_back(step.height);
        for (const std::string& shim : step.shims) {
            EXPECT_NE(shim, "S1");
            EXPECT_NE(shim, "UNMEASURED");
        }
    }
    EXPECT_EQ(heights, (std::vector<Length>{-thou(0.4), -thou(0.3), -thou(0.2), thou(0.1), thou(0.2), thou(0.4)}));
    EXPECT_EQ(proposal.steps[1].shims, (std::vector<std::string>{"S9", "S8"})) << "4.7 + 5.0";
}

TEST(FeelSteps, have_no_proposal_from_a_kit_without_two_shims_alike) {
    Bench bench;
    kitOf(bench, {10, 10.2, 10.4});
    EXPECT_TRUE(proposeFeelSteps(bench.facts).steps.empty());
}

TEST(FeelSteps, are_read_as_shims_and_as_heights) {
    Bench bench;
    kitOf(bench, {10, 10, 10.2, 5, 4.7});
    const auto rest = parseFeelRest("S1 S2", {}, bench.facts);
    ASSERT_TRUE(rest);
    EXPECT_EQ(*rest, thou(10));
    EXPECT_EQ(*parseFeelRest("10 thou", {}, bench.facts), thou(10));
    EXPECT_FALSE(parseFeelRest("S1 NONE", {}, bench.facts));
    const auto steps = parseFeelSteps("S3; S4 + S5, -0.1 thou; 0.5 thou", {}, bench.facts, *rest);
    ASSERT_TRUE(steps) << steps.error().sentence;
    ASSERT_EQ(steps->size(), 4U);
    EXPECT_EQ(steps->front().height, -thou(0.3));
    EXPECT_EQ(steps->front().shims, (std::vector<std::string>{"S4", "S5"}));
    EXPECT_EQ(steps->at(1).height, -thou(0.1));
    EXPECT_EQ(steps->at(2).height, thou(0.2));
    const auto again = parseFeelSteps(feelStepsText(*steps, {}), {}, bench.facts, *rest);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(again->size(), 4U) << "what is written is read again";
}

TEST(FeelSteps, that_mean_nothing_are_refused_with_what_would_do) {
    Bench bench;
    kitOf(bench, {10, 10.2});
    bench.make(ShimAdded{"RAW", {thou(10), ""}, ""});
    const auto refusal = [&](const char* text) {
        const auto steps = parseFeelSteps(text, {}, bench.facts, thou(10));
        return steps ? std::string() : steps.error().sentence;
    };
    EXPECT_THAT(refusal("S1; RAW"), HasSubstr("never measured"));
    EXPECT_THAT(refusal("S1 + NONE; S2"), HasSubstr("NONE"));
    EXPECT_THAT(refusal("S1+S1; S2"), HasSubstr("twice"));
    EXPECT_THAT(refusal("S1"), HasSubstr("two steps"));
    EXPECT_THAT(refusal("0.5; 0.1 thou"), HasSubstr("0.5")) << "half an inch is no step";
}

TEST(FeelSteps, come_equally_often_and_go_on_where_the_study_was_left) {
    const std::vector<FeelStep> steps{{-thou(0.2), {}}, {Length(), {}}, {thou(0.2), {}}};
    FeelStudyFact study;
    const auto all = stepsToCome(steps, &study, 25, 3);
    EXPECT_EQ(all.size(), 27U);
    for (const FeelStep& step : steps) {
        EXPECT_EQ(std::ranges::count(all, step.height, &FeelStep::height), 9);
    }
    const auto other = stepsToCome(steps, &study, 25, 4);
    EXPECT_FALSE(std::ranges::equal(all, other, {}, &FeelStep::height, &FeelStep::height)) << "nobody can guess it";
    for (int i = 0; i < 5; ++i) {
        study.answers.push_back({i, {}, "Mira", {1, {thou(0.2), ""}, {}, Feel::rocks}});
    }
    const auto left = stepsToCome(steps, &study, 25, 3);
    EXPECT_EQ(left.size(), 22U);
    EXPECT_EQ(std::ranges::count(left, thou(0.2), &FeelStep::height), 4);
    for (int i = 0; i < 40; ++i) {
        study.answers.push_back({i, {}, "Mira", {1, {steps[static_cast<std::size_t>(i % 3)].height, ""}, {}, Feel::drags}});
    }
    EXPECT_FALSE(stepsToCome(steps, &study, 25, 3).empty()) << "who wants to, goes on";
    EXPECT_TRUE(stepsToCome({}, &study, 25, 3).empty());
    const auto answered = stepsAnswered(study);
    ASSERT_EQ(answered.size(), 3U);
    EXPECT_EQ(answered.front().height, -thou(0.2));
}
