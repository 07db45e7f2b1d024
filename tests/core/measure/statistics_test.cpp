// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <cmath>
#include <gmock/gmock.h>
#include <measure/statistics.h>

using namespace caprail;

TEST(Summary, of_an_odd_count_has_the_middle_reading_as_its_median) {
    const std::array readings{thou(59), thou(57), thou(58)};
    const Summary s = summarise(readings);
    EXPECT_EQ(s.median, thou(58));
    EXPECT_EQ(s.smallest, thou(57));
    EXPECT_EQ(s.largest, thou(59));
    EXPECT_EQ(s.range, thou(2));
    EXPECT_DOUBLE_EQ(s.mean, 58 * 25'400.0);
    EXPECT_DOUBLE_EQ(s.standardDeviation, 25'400.0);
}

TEST(Summary, of_an_even_count_rounds_the_median_half_away_from_zero) {
    EXPECT_EQ(summarise(std::array{nanometres(3), nanometres(4)}).median, nanometres(4));
    EXPECT_EQ(summarise(std::array{nanometres(-3), nanometres(-4)}).median, nanometres(-4));
    EXPECT_EQ(summarise(std::array{nanometres(-1), nanometres(1)}).median, nanometres(0));
    EXPECT_EQ(summarise(std::array{nanometres(4), nanometres(1), nanometres(9), nanometres(2)}).median, nanometres(3));
}

TEST(Summary, of_one_reading_has_no_scatter) {
    const Summary s = summarise(std::array{tenths(575)});
    EXPECT_EQ(s.count, 1U);
    EXPECT_EQ(s.median, tenths(575));
    EXPECT_EQ(s.standardDeviation, 0);
}

TEST(Summary, of_nothing_is_all_zero) {
    const Summary s = summarise({});
    EXPECT_EQ(s.count, 0U);
    EXPECT_EQ(s.range, Length());
    EXPECT_EQ(s.mean, 0);
}

TEST(PooledDeviation, weighs_each_place_by_its_degrees_of_freedom) {
    // s = 1 with 1 degree of freedom and s = 2 with 3: sqrt((1 + 3·4) / 4).
    const std::array places{Summary{2, 0, 1.0, {}, {}, {}, {}}, Summary{4, 0, 2.0, {}, {}, {}, {}}};
    const auto pooled = pool(places);
    ASSERT_TRUE(pooled);
    EXPECT_DOUBLE_EQ(pooled->standardDeviation, std::sqrt(13.0 / 4.0));
    EXPECT_DOUBLE_EQ(pooled->degreesOfFreedom, 4);
    EXPECT_DOUBLE_EQ(*pooledStandardDeviation(places), pooled->standardDeviation);
}

TEST(PooledDeviation, leaves_out_places_read_once) {
    const std::array places{Summary{1, 0, 0, {}, {}, {}, {}}, Summary{3, 0, 5.0, {}, {}, {}, {}}};
    EXPECT_DOUBLE_EQ(pool(places)->standardDeviation, 5.0);
    EXPECT_DOUBLE_EQ(pool(places)->degreesOfFreedom, 2);
}

TEST(PooledDeviation, is_unknown_while_no_place_was_read_twice) {
    const std::array places{Summary{1, 0, 0, {}, {}, {}, {}}};
    EXPECT_FALSE(pool(places));
    EXPECT_FALSE(pooledStandardDeviation(places));
}

TEST(Spread, is_largest_minus_smallest) {
    // Common practice, no source: a survey whose largest gap is 75 and smallest 39 thou has a spread of 36.
    EXPECT_EQ(spread(std::array{thou(52), thou(75), thou(39), thou(61)}), thou(36));
    EXPECT_FALSE(spread({}));
}

TEST(Moments, keep_their_digits_beside_a_large_mean) {
    const std::array values{1e9 + 1, 1e9 + 2, 1e9 + 3};
    const Moments m = momentsOf(values);
    EXPECT_DOUBLE_EQ(m.mean, 1e9 + 2);
    EXPECT_DOUBLE_EQ(m.standardDeviation, 1.0);
}
