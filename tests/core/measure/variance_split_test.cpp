// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <measure/statistics.h>
#include <measure/variance_split.h>
#include <random>

using namespace caprail;
using testing::HasSubstr;

namespace {

/// A study whose readings are whole nanometres: base + person + place + scatter.
std::vector<StudyReading> study(int people, int places, int passes, double personSd, double placeSd, double ownSd,
                                unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    std::vector<double> person(static_cast<std::size_t>(people));
    std::vector<double> place(static_cast<std::size_t>(places));
    for (double& x : person) {
        x = personSd * normal(random);
    }
    for (double& x : place) {
        x = placeSd * normal(random);
    }
    std::vector<StudyReading> readings;
    for (int i = 0; i < people; ++i) {
        for (int j = 0; j < places; ++j) {
            for (int k = 1; k <= passes; ++k) {
                const double value = 1.5e6 + person[static_cast<std::size_t>(i)] + place[static_cast<std::size_t>(j)] +
                                     ownSd * normal(random);
                readings.push_back(
                    {"P" + std::to_string(i), "place " + std::to_string(j), k, Length(toNearest(value))});
            }
        }
    }
    return readings;
}

} // namespace

TEST(OneWaySplit, of_equal_groups_finds_nothing_between) {
    const std::vector<std::vector<double>> groups{{1, 3}, {1, 3}, {3, 1}};
    const auto split = oneWaySplit(groups);
    ASSERT_TRUE(split);
    EXPECT_DOUBLE_EQ(split->betweenSquares, 0);
    EXPECT_DOUBLE_EQ(split->withinSquares, 6);
    EXPECT_TRUE(split->betweenIsZero);
    EXPECT_DOUBLE_EQ(split->betweenVariance, 0);
}

TEST(OneWaySplit, of_unequal_groups_agrees_with_hand_arithmetic) {
    // Means 2, 6 and 10 of sizes 2, 1 and 3; grand mean 40/6.
    const std::vector<std::vector<double>> groups{{1, 3}, {6}, {8, 10, 12}};
    const auto split = oneWaySplit(groups);
    ASSERT_TRUE(split);
    EXPECT_NEAR(split->betweenSquares, 4 + 36 + 300 - 1600.0 / 6 + 4, 1e-9);
    EXPECT_NEAR(split->withinSquares, 2 + 8, 1e-12);
    EXPECT_EQ(split->betweenFreedom, 2);
    EXPECT_EQ(split->withinFreedom, 3);
    const double n0 = (6 - 14.0 / 6) / 2;
    EXPECT_NEAR(split->betweenVariance, (split->betweenMeanSquare - split->withinMeanSquare) / n0, 1e-12);
}

TEST(OneWaySplit, without_scatter_within_has_an_infinite_ratio) {
    EXPECT_TRUE(std::isinf(oneWaySplit(std::vector<std::vector<double>>{{1, 1}, {2, 2}})->ratio));
}

TEST(OneWaySplit, refuses_what_cannot_be_split) {
    EXPECT_FALSE(oneWaySplit(std::vector<std::vector<double>>{{1, 2}}));
    EXPECT_FALSE(oneWaySplit(std::vector<std::vector<double>>{{1, 2}, {}}));
    EXPECT_FALSE(oneWaySplit(std::vector<std::vector<double>>{{1}, {2}}));
    EXPECT_FALSE(oneWaySplit(std::vector<std::vector<double>>{{1, std::numeric_limits<double>::quiet_NaN()}, {2}}));
}

TEST(RepeatabilityStudy, finds_the_scatter_that_was_put_in) {
    const auto result = repeatabilityStudy(study(12, 40, 3, 3'000, 20'000, 2'000, 1), {});
    ASSERT_TRUE(result);
    EXPECT_EQ(result->people, 12U);
    EXPECT_EQ(result->places, 40U);
    EXPECT_EQ(result->passes, 3U);
    EXPECT_NEAR(result->repeatability, 2'000, 100);
    EXPECT_NEAR(result->reproducibility, 3'000, 1'500);
    EXPECT_NEAR(result->placeToPlace, 20'000, 5'000);
    EXPECT_NEAR(result->total * result->total,
                std::pow(result->repeatability, 2) + std::pow(result->reproducibility, 2) +
                    std::pow(result->placeToPlace, 2),
                1);
}

TEST(RepeatabilityStudy, is_right_on_average_over_many_small_studies) {
    constexpr int studies = 400;
    double own = 0;
    double places = 0;
    for (int i = 0; i < studies; ++i) {
        const auto result =
            repeatabilityStudy(study(3, 10, 3, 2'000, 10'000, 500, 100U + static_cast<unsigned>(i)), {});
        ASSERT_TRUE(result);
        own += std::pow(result->repeatability, 2) / studies;
        places += std::pow(result->placeToPlace, 2) / studies;
    }
    EXPECT_NEAR(own, 500.0 * 500, 0.03 * 500 * 500);
    EXPECT_NEAR(places, 1e8, 0.1 * 1e8);
}

TEST(RepeatabilityStudy, of_one_person_has_nothing_to_say_about_people) {
    const auto result = repeatabilityStudy(study(1, 10, 2, 0, 10'000, 1'000, 2), {});
    ASSERT_TRUE(result);
    EXPECT_EQ(result->reproducibility, 0);
    EXPECT_EQ(result->repeatabilityFreedom, 10);
    EXPECT_THAT(result->sentence, testing::Not(HasSubstr("people")));
}

TEST(RepeatabilityStudy, of_one_person_repeats_as_the_pooled_deviation) {
    const auto readings = study(1, 6, 3, 0, 10'000, 1'000, 3);
    std::vector<Summary> places;
    for (std::size_t i = 0; i < readings.size(); i += 3) {
        places.push_back(summarise(std::vector{readings[i].value, readings[i + 1].value, readings[i + 2].value}));
    }
    EXPECT_NEAR(repeatabilityStudy(readings, {})->repeatability, pool(places)->standardDeviation, 1e-6);
}

TEST(RepeatabilityStudy, sees_a_person_who_reads_some_places_differently) {
    auto readings = study(3, 10, 3, 0, 10'000, 500, 4);
    for (auto& r : readings) {
        if (r.person == "P1" && r.place < "place 5") {
            r.value += thou(1);
        }
    }
    const auto result = repeatabilityStudy(readings, {});
    ASSERT_TRUE(result);
    EXPECT_FALSE(result->isPooled);
    EXPECT_NEAR(result->repeatability, 500, 200); // not blown up by the thou that one person is off
    EXPECT_GT(result->reproducibility, 5'000);
}

TEST(RepeatabilityStudy, names_the_reading_that_is_missing_or_doubled) {
    auto readings = study(2, 3, 2, 0, 1'000, 100, 5);
    const auto first = readings.front();
    readings.erase(readings.begin());
    const auto missing = repeatabilityStudy(readings, {});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().sentence,
              "The study lacks the reading of place 0 by P0 in pass 1: read it, or leave that pass out.");
    readings.push_back(first);
    readings.push_back(first);
    const auto doubled = repeatabilityStudy(readings, {});
    ASSERT_FALSE(doubled);
    EXPECT_THAT(doubled.error().sentence, HasSubstr("two readings of place 0 by P0 in pass 1"));
}

TEST(RepeatabilityStudy, refuses_too_few_places_or_passes) {
    EXPECT_FALSE(repeatabilityStudy({}, {}));
    EXPECT_FALSE(repeatabilityStudy(study(3, 1, 3, 0, 0, 100, 6), {}));
    EXPECT_FALSE(repeatabilityStudy(study(3, 4, 1, 0, 0, 100, 7), {}));
}
