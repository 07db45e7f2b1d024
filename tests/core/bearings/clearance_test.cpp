// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <bearings/clearance.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

/// A journal of 2.4480 in with 0.0001 in of taper and 0.0002 in out of round.
const std::array fullSet{DiameterReading{1, 1, tenths(24'480)}, DiameterReading{1, 2, tenths(24'482)},
                         DiameterReading{2, 1, tenths(24'479)}, DiameterReading{2, 2, tenths(24'481)}};

} // namespace

TEST(JournalShape, tells_taper_from_out_of_round) {
    const auto shape = journalShape(fullSet);
    ASSERT_TRUE(shape);
    EXPECT_EQ(shape->taper, tenths(1));
    EXPECT_EQ(shape->outOfRound, tenths(2));
    EXPECT_EQ(shape->mean, nanometres(24'480 * 2'540 + 1'270));
    EXPECT_EQ(shape->smallest, tenths(24'479));
    EXPECT_EQ(shape->largest, tenths(24'482));
    EXPECT_EQ(shape->verticalMean, nanometres(24'479 * 2'540 + 1'270));
    EXPECT_TRUE(shape->isComplete());
}

TEST(JournalShape, does_not_call_the_scatter_of_repeated_readings_taper) {
    const std::array readings{DiameterReading{1, 1, tenths(24'480)}, DiameterReading{1, 1, tenths(24'484)},
                              DiameterReading{2, 1, tenths(24'482)}};
    const auto shape = journalShape(readings);
    EXPECT_EQ(shape->taper, Length());
    EXPECT_EQ(shape->outOfRound, Length());
}

TEST(JournalShape, says_which_reading_is_still_missing) {
    EXPECT_THAT(journalShape(std::span(fullSet).first(1))->missing, HasSubstr("second station"));
    EXPECT_THAT(journalShape(std::array{fullSet[0], fullSet[2]})->missing, HasSubstr("second direction"));
    EXPECT_EQ(journalShape(std::span(fullSet).first(3))->missing, "Read station 2 in direction 2 too.");
}

TEST(JournalShape, refuses_nothing_and_impossible_readings) {
    EXPECT_FALSE(journalShape({}));
    EXPECT_FALSE(journalShape(std::array{DiameterReading{0, 1, thou(1)}}));
    const auto zero = journalShape(std::array{DiameterReading{3, 1, Length()}});
    ASSERT_FALSE(zero);
    EXPECT_THAT(zero.error().sentence, HasSubstr("station 3"));
}

TEST(BearingClearance, is_judged_at_its_worst_places) {
    const auto shape = journalShape(fullSet);
    const std::array bores{StationReading{1, tenths(24'504)}, StationReading{2, tenths(24'505)}};
    const auto clearance = clearanceFromBore(bores, *shape);
    ASSERT_TRUE(clearance);
    EXPECT_EQ(clearance->smallest, tenths(24'504) - shape->largest) << "a journal turns: its largest diameter counts";
    EXPECT_EQ(clearance->largest, tenths(24'505) - shape->smallest);
    EXPECT_EQ(clearance->mean, tenths(25)) << "of the vertical ones at the same station";
    EXPECT_EQ(clearance->stations[0].value, tenths(24));
    EXPECT_EQ(clearance->stations[1].value, tenths(26));
}

TEST(BearingClearance, of_an_oval_journal_is_as_small_as_its_largest_diameter_makes_it) {
    // Bore 2.6431 in, journal 2.6410 and 2.6422 in: 0.0009 in at the least, whatever stands upright.
    const auto shape = journalShape(std::array{DiameterReading{1, 1, tenths(26'410)}, DiameterReading{1, 2, tenths(26'422)},
                                               DiameterReading{2, 1, tenths(26'410)}, DiameterReading{2, 2, tenths(26'422)}});
    const auto clearance = clearanceFromBore(std::array{StationReading{1, tenths(26'431)}}, *shape);
    EXPECT_EQ(clearance->smallest, tenths(9));
    EXPECT_EQ(clearance->largest, tenths(21));
    EXPECT_EQ(describe(*clearance, {}), "0.0009 to 0.0021 in, mean 0.0021 in over 1 stations.");
}

TEST(BearingClearance, keeps_the_bores_as_they_were_read) {
    const std::array bores{StationReading{1, tenths(26'431)}, StationReading{1, tenths(26'433)},
                           StationReading{2, tenths(26'430)}};
    const auto clearance = clearanceFromBore(bores, *journalShape(fullSet));
    ASSERT_EQ(clearance->bores.size(), 2U);
    EXPECT_EQ(clearance->bores[0].value, tenths(26'432)) << "repeats of one station are averaged";
    EXPECT_EQ(clearance->bores[1].value, tenths(26'430));
    EXPECT_TRUE(clearanceFromStrip(std::array{StationReading{1, tenths(20)}})->bores.empty()) << "no bore was read";
}

TEST(BearingClearance, uses_the_vertical_mean_where_the_journal_was_not_read) {
    const auto clearance = clearanceFromBore(std::array{StationReading{7, tenths(24'505)}}, *journalShape(fullSet));
    EXPECT_EQ(clearance->mean, tenths(24'505) - *journalShape(fullSet)->verticalMean);
}

TEST(BearingClearance, from_housing_takes_off_both_shells) {
    const auto shape = journalShape(fullSet);
    const auto clearance =
        clearanceFromHousing(std::array{StationReading{1, tenths(26'410)}}, tenths(953), tenths(952), *shape);
    ASSERT_TRUE(clearance);
    EXPECT_EQ(clearance->mean, tenths(26'410 - 953 - 952 - 24'480));
    EXPECT_FALSE(clearanceFromHousing(std::array{StationReading{1, tenths(26'410)}}, Length(), tenths(952), *shape));
}

TEST(BearingClearance, below_zero_is_shown_not_hidden) {
    EXPECT_LT(clearanceFromBore(std::array{StationReading{1, tenths(24'470)}}, *journalShape(fullSet))->mean, Length());
}

TEST(BearingClearance, by_strip_is_what_the_strip_says) {
    EXPECT_EQ(clearanceFromStrip(std::array{StationReading{1, tenths(20)}, StationReading{2, tenths(25)}})->range(),
              tenths(5));
    EXPECT_FALSE(clearanceFromStrip({}));
    EXPECT_FALSE(clearanceFromStrip(std::array{StationReading{1, Length()}}));
}

TEST(BearingClearance, refuses_to_do_without_bore_or_vertical_journal) {
    EXPECT_FALSE(clearanceFromBore({}, *journalShape(fullSet)));
    EXPECT_FALSE(clearanceFromBore(std::array{StationReading{1, Length()}}, *journalShape(fullSet)));
    const auto horizontal = journalShape(std::array{DiameterReading{1, 2, tenths(24'480)}});
    const auto clearance = clearanceFromBore(std::array{StationReading{1, tenths(24'505)}}, *horizontal);
    ASSERT_FALSE(clearance);
    EXPECT_THAT(clearance.error().sentence, HasSubstr("square to the parting line"));
}

TEST(DefaultClearanceBand, grows_with_the_journal) {
    // Common practice, no source: 0.00075 to 0.0010 in per inch of journal diameter.
    const auto band = defaultClearanceBand(inches(2.0));
    ASSERT_TRUE(band);
    EXPECT_EQ(band->lo(), tenths(15));
    EXPECT_EQ(band->hi(), tenths(20));
    EXPECT_FALSE(defaultClearanceBand(Length()));
}

TEST(JournalShape, is_described_with_what_is_missing) {
    EXPECT_EQ(describe(*journalShape(fullSet), {}), "Diameter 2.4481 in, taper 0.0001 in, out-of-round 0.0002 in.");
    EXPECT_THAT(describe(*journalShape(std::span(fullSet).first(3)), {}), HasSubstr("Read station 2"));
}
