// SPDX-License-Identifier: GPL-3.0-or-later
// Source: ISO 6789-1:2017, «Assembly tools for screws and nuts: hand torque tools», range and recalibration. The
// standard was not seen. That the range starts at the lowest marked value (5.1.3) was seen in «Understanding ISO 6789»
// (norbar.com), the points 20 %, 60 % and 100 % of the largest value in utmetrology.com, «Torque wrench calibration:
// ASME vs ISO 6789»; 12 months or 5000 cycles without an interval of the shop's own is from memory.
#include <fasteners/wrench.h>
#include <gtest/gtest.h>

using namespace caprail;

TEST(Iso6789, has_an_unmarked_wrench_begin_at_a_fifth_of_its_largest_value) {
    const auto wrench = WrenchRange::upTo(newtonMetres(200));
    ASSERT_TRUE(wrench);
    EXPECT_EQ(wrench->smallest(), newtonMetres(40));
    EXPECT_EQ(rangeVerdict(newtonMetres(39.999), *wrench), RangeVerdict::below);
    EXPECT_EQ(rangeVerdict(newtonMetres(40), *wrench), RangeVerdict::within);
}

TEST(Iso6789, has_a_marked_wrench_begin_at_its_lowest_mark) {
    const auto wrench = WrenchRange::upTo(newtonMetres(100), newtonMetres(10));
    ASSERT_TRUE(wrench);
    EXPECT_EQ(rangeVerdict(newtonMetres(10), *wrench), RangeVerdict::within);
    EXPECT_EQ(rangeVerdict(newtonMetres(9.999), *wrench), RangeVerdict::below);
}

TEST(Iso6789, has_a_wrench_recalibrated_after_twelve_months_or_five_thousand_cycles) {
    const Calibration calibration{*parseDate("2025-07-01"), std::nullopt, std::nullopt};
    EXPECT_EQ(calibrationState(calibration, *parseDate("2026-07-01"), 5'000), CalibrationState::current);
    EXPECT_EQ(calibrationState(calibration, *parseDate("2026-07-02"), 5'000), CalibrationState::pastDate);
    EXPECT_EQ(calibrationState(calibration, *parseDate("2026-07-01"), 5'001), CalibrationState::pastCycles);
}
