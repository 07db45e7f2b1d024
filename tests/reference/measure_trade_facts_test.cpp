// SPDX-License-Identifier: GPL-3.0-or-later
/// Facts of the trade: common practice, no source.
#include <array>
#include <bearings/clearance.h>
#include <clearances/pickup.h>
#include <clearances/trial_fit.h>
#include <gmock/gmock.h>
#include <measure/statistics.h>
#include <units/parse.h>

using namespace caprail;

TEST(CommonPractice, feeler_leaves_of_22_23_and_24_thou_make_a_69_thou_gap) {
    const Expected<Length> gap{"the gap at cap 3 right", thou(0), thou(250)};
    const auto typed = parseLength("22+23+24", Units{}, gap);
    ASSERT_TRUE(typed);
    EXPECT_EQ(typed->value, thou(69));
    EXPECT_EQ(parseLength("22+23+24 thou", Units{}, gap)->value, thou(69));
}

TEST(CommonPractice, survey_from_39_to_75_thou_has_a_spread_of_36) {
    EXPECT_EQ(spread(std::array{thou(57), thou(75), thou(39), thou(62)}), thou(36));
}

TEST(CommonPractice, two_and_a_half_inch_main_runs_with_some_two_thou) {
    // 0.00075 to 0.0010 in per inch of journal diameter.
    const auto band = defaultClearanceBand(inches(2.5));
    EXPECT_EQ(band->lo(), thou(1.875));
    EXPECT_EQ(band->hi(), thou(2.5));
}

TEST(CommonPractice, pickup_stands_a_quarter_to_three_eighths_off_the_floor) {
    EXPECT_EQ(defaultPickupBand(), Band::between(inches(0.25), inches(0.375)));
}

TEST(CommonPractice, closest_counterweight_clears_by_sixty_thou) {
    EXPECT_EQ(defaultCounterweightClearance(), inches(0.060));
}
