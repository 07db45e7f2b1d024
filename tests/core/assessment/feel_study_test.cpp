// SPDX-License-Identifier: GPL-3.0-or-later
/// The feel of a person, tried like an instrument.
#include "bench.h"

#include <assessment/bracket.h>
#include <assessment/feel_study.h>
#include <gmock/gmock.h>
#include <set>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Position feltPlace{2, Side::right};

/// A person who feels a step when it is more than `threshold`, shifted by an error that the answers walk through.
void answer(Bench& bench, double thresholdThou, std::size_t answers, const std::vector<double>& stepsThou) {
    std::vector<Length> heights;
    for (const double step : stepsThou) {
        heights.push_back(thou(step));
    }
    std::size_t n = 0;
    for (const Length height : feelOrder(heights, answers, 7)) {
        const double error = 0.13 * (static_cast<double>(n++ * 7 % 13) - 6) / 6;
        const double felt = inThou(height) + error;
        bench.make(FeelAnswer{1,
                              {height, ""},
                              {},
                              felt > thresholdThou    ? Feel::rocks
                              : felt < -thresholdThou ? Feel::loose
                                                      : Feel::drags});
    }
}

const std::vector<double> steps{-0.5, -0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4, 0.5};

} // namespace

TEST(FeelStudy, concludes_with_the_step_that_is_felt_rightly_95_times_of_100) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "gauge blocks on the surface plate"});
    answer(bench, 0.2, 66, steps);
    const FeelConclusion c = concludeFeel(bench.facts.feelStudies.at(1));
    EXPECT_EQ(c.answers, 66U);
    ASSERT_TRUE(c.delta) << c.missing;
    EXPECT_GT(*c.delta, thou(0.2)) << "more than where she turns half the time";
    EXPECT_LT(*c.delta, thou(0.6));
    ASSERT_TRUE(c.rocksFit);
    EXPECT_NEAR(c.rocksFit->middle() / 25'400, 0.2, 0.05);
}

TEST(FeelStudy, needs_25_answers_in_random_order) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    answer(bench, 0.2, 24, steps);
    EXPECT_THAT(concludeFeel(bench.facts.feelStudies.at(1)).missing, HasSubstr("24 of 25"));
    Bench inOrder;
    inOrder.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    for (int i = 0; i < 30; ++i) {
        const double height = -0.5 + i / 30.0;
        inOrder.make(FeelAnswer{1, {thou(height), ""}, {}, height > 0.2 ? Feel::rocks : height < -0.2 ? Feel::loose : Feel::drags});
    }
    EXPECT_FALSE(concludeFeel(inOrder.facts.feelStudies.at(1)).delta);
    EXPECT_THAT(concludeFeel(inOrder.facts.feelStudies.at(1)).missing, HasSubstr("random order"));
}

TEST(FeelStudy, of_answers_that_one_step_parts_still_bounds_the_feel_but_not_better_than_the_steps_tried) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    answer(bench, 0.2, 44, {-0.8, -0.4, 0, 0.4, 0.8});
    const FeelConclusion c = concludeFeel(bench.facts.feelStudies.at(1));
    EXPECT_FALSE(c.rocksFit) << "no spread can be fitted";
    ASSERT_TRUE(c.delta) << c.missing;
    EXPECT_GT(*c.delta, thou(0.3));
}

TEST(FeelStudy, puts_no_bound_where_the_person_guesses) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    int n = 0;
    for (const Length height : feelOrder({-thou(0.4), -thou(0.2), Length(), thou(0.2), thou(0.4)}, 30, 3)) {
        bench.make(FeelAnswer{1, {height, ""}, {}, static_cast<Feel>(n++ % 3)});
    }
    EXPECT_FALSE(concludeFeel(bench.facts.feelStudies.at(1)).delta);
}

TEST(FeelStudy, carries_a_stack_only_for_that_person_with_that_straightedge_within_the_year_and_after_it) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    bench.survey();
    bench.kit();
    bench.build();
    Seen<RecheckMade> recheck{bench.facts.lastEntry + 1, {1'700'000'100'000}, "Mira", {feltPlace, Feel::drags, "EDGE"}};
    EXPECT_FALSE(byFeel(bench.facts, recheck)) << "the study has no answers yet";
    answer(bench, 0.2, 66, steps);
    EXPECT_FALSE(byFeel(bench.facts, recheck)) << "the recheck came before the answers";
    recheck.entry = bench.facts.lastEntry + 1;
    const auto felt = byFeel(bench.facts, recheck);
    ASSERT_TRUE(felt);
    EXPECT_EQ(felt->residual, Length());
    EXPECT_GT(*felt->uncertainty.expanded(), 0.2 * 25'400);
    recheck.person = "Arlo";
    EXPECT_FALSE(byFeel(bench.facts, recheck));
    recheck.person = "Mira";
    recheck.time.milliseconds += 367LL * 86'400'000;
    EXPECT_FALSE(byFeel(bench.facts, recheck)) << "due yearly";
}

TEST(FeelStudy, of_an_older_and_better_one_nothing_stands_against_a_newer_that_puts_no_bound) {
    Bench bench;
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    answer(bench, 0.2, 66, steps);
    const UtcTime now{1'700'000'900'000};
    ASSERT_TRUE(feelLimitAt(bench.facts, "Mira", "EDGE", bench.facts.lastEntry, now));
    bench.make(FeelStudyBegun{2, "Mira", "EDGE", "flat"});
    EXPECT_TRUE(feelLimitAt(bench.facts, "Mira", "EDGE", bench.facts.lastEntry, now)) << "it has no answers yet";
    int n = 0;
    for (const Length height : feelOrder({-thou(0.4), -thou(0.2), Length(), thou(0.2), thou(0.4)}, 30, 3)) {
        bench.make(FeelAnswer{2, {height, ""}, {}, static_cast<Feel>(n++ % 3)});
    }
    EXPECT_FALSE(feelLimitAt(bench.facts, "Mira", "EDGE", bench.facts.lastEntry, now));
    EXPECT_EQ(feelStandingOf(bench.facts, "Mira", "EDGE")->study, 2);
    EXPECT_FALSE(feelStandingOf(bench.facts, "Mira", "EDGE")->stands(now));
}

TEST(FeelStudy, is_kept_with_person_and_straightedge_and_is_due_a_year_later) {
    Bench bench;
    EXPECT_FALSE(feelStandingOf(bench.facts, "Mira", "EDGE"));
    bench.make(FeelStudyBegun{1, "Mira", "EDGE", "flat"});
    EXPECT_FALSE(feelStandingOf(bench.facts, "Mira", "EDGE")->due()) << "nothing is concluded yet";
    answer(bench, 0.2, 66, steps);
    const auto standing = feelStandingOf(bench.facts, "Mira", "EDGE");
    ASSERT_TRUE(standing && standing->due());
    const UtcTime last = standing->conclusion.last;
    EXPECT_EQ(standing->due()->days, dateOf(last).days + 365);
    EXPECT_TRUE(standing->stands(last));
    EXPECT_TRUE(standing->stands({last.milliseconds + 365LL * 86'400'000}));
    EXPECT_FALSE(standing->stands({last.milliseconds + 366LL * 86'400'000}));
    EXPECT_EQ(feelStandings(bench.facts).size(), 1U);
}

TEST(FeelStudy, tries_the_steps_in_an_order_that_the_seed_fixes) {
    const std::vector<Length> heights{-thou(1), Length(), thou(1)};
    const auto order = feelOrder(heights, 30, 1);
    EXPECT_EQ(order.size(), 30U);
    EXPECT_EQ(order, feelOrder(heights, 30, 1));
    EXPECT_NE(order, feelOrder(heights, 30, 2));
    for (const Length height : heights) {
        EXPECT_EQ(std::ranges::count(order, height), 10);
    }
    EXPECT_TRUE(feelOrder({}, 30, 1).empty());
}
