// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <units/band.h>
#include <units/format.h>
#include <units/parse.h>

using namespace caprail;

TEST(Length, holds_ten_thousandths_and_microns_exactly) {
    EXPECT_EQ(tenths(575), inches(0.0575));
    EXPECT_EQ(thou(57.5), tenths(575));
    EXPECT_EQ(millimetres(1.46), microns(1'460));
    EXPECT_EQ(inches(1), millimetres(25.4));
    // Three stacks of 0.1 in are 0.3 in, which no binary fraction of an inch would say.
    EXPECT_EQ(inches(0.1) + inches(0.1) + inches(0.1), inches(0.3));
}

TEST(Format, writes_lengths_with_unit_and_fixed_digits) {
    const Units inch;
    const Units comma{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','};
    EXPECT_EQ(format(thou(57.5), inch), "0.0575 in");
    EXPECT_EQ(format(thou(57.5), comma), "1,461 mm"); // 1.4605 rounds half away from zero
    EXPECT_EQ(format(-thou(57.5), comma), "−1,461 mm");
    EXPECT_EQ(formatSigned(tenths(5), inch), "+0.0005 in");
    EXPECT_EQ(formatSigned(tenths(-5), inch), "−0.0005 in");
    EXPECT_EQ(formatSigned(nanometres(-100), inch), "0.0000 in");
    EXPECT_EQ(formatShort(thou(57.5), inch), "57.5");
    EXPECT_EQ(formatShort(thou(60), inch), "60");
    EXPECT_EQ(formatShort(Length(), inch), "0");
    EXPECT_EQ(formatShort(microns(1'460), comma), "1,46");
    EXPECT_EQ(formatSpread(3'048, inch), "0.00012 in");
}

TEST(Format, writes_the_other_quantities) {
    const Units inch;
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    EXPECT_EQ(format(poundFeet(75), inch), "75.0 lbf·ft");
    EXPECT_EQ(format(poundFeet(75), metric), "101.7 N·m");
    EXPECT_EQ(format(newtons(46'700), metric), "46.7 kN");
    EXPECT_EQ(format(newtons(11.4), metric), "11 N") << "a load that is small is not nothing";
    EXPECT_EQ(format(newtons(1000), metric), "1.0 kN");
    EXPECT_EQ(format(psi(120'000), inch), "120000 psi");
    EXPECT_EQ(format(megapascals(830), metric), "830 MPa");
    EXPECT_EQ(format(megapascals(8.84), metric, 1), "8.8 MPa");
    EXPECT_EQ(format(poundsPerThou(98.26), inch), "98.3 lbf/thou");
    EXPECT_EQ(format(poundsPerThou(98.26), metric), "17.2 kN/mm");
    EXPECT_EQ(format(poundsPerThou(10'000), inch), "10000 lbf/thou");
    EXPECT_EQ(formatFilm(nanometres(2'110), inch), "0.083 thou");
    EXPECT_EQ(formatFilm(nanometres(2'110), metric), "2.1 µm");
    EXPECT_EQ(formatPercent(0.754, inch), "75 %");
    EXPECT_EQ(formatPercent(0.0054, {LengthUnit::millimetre, TorqueUnit::newtonMetre, ','}, 1), "0,5 %");
    EXPECT_EQ(format(degrees(3.5), inch), "3.5°");
    EXPECT_EQ(formatNumber(-0.001, 2), "0.00");
    EXPECT_EQ(format(*Band::between(tenths(-5), tenths(5)), inch), "−0.0005 to 0.0005 in");
}

TEST(FormatUp, never_writes_a_force_smaller_than_it_is) {
    const Units inch;
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
    EXPECT_EQ(formatUp(poundsForce(0.2), inch), "1 lbf");
    EXPECT_EQ(formatUp(poundsForce(4.1), inch), "5 lbf");
    for (int pounds = 0; pounds < 2'000; ++pounds) {
        EXPECT_EQ(formatUp(poundsForce(pounds), inch), format(poundsForce(pounds), inch));
    }
    EXPECT_EQ(formatUp(newtons(17.2), metric), "18 N");
    EXPECT_EQ(formatUp(newtons(1'201), metric), "1.3 kN");
    EXPECT_EQ(formatFineDown(inches(0.000279), inch), "0.00027 in");
    EXPECT_EQ(formatFineDown(inches(0.00028), inch), "0.00028 in");
    EXPECT_EQ(formatFineDown(millimetres(0.00799), metric), "0.0079 mm");
    EXPECT_TRUE(isWrittenAsNothing(-poundsForce(0.4), inch));
    EXPECT_FALSE(isWrittenAsNothing(-poundsForce(0.4), metric));
    EXPECT_TRUE(isWrittenAsNothing(nanometres(-1'200), inch));
}

TEST(Band, cannot_be_built_the_wrong_way_round) {
    const auto band = Band::between(tenths(5), tenths(-5));
    ASSERT_FALSE(band);
    EXPECT_EQ(band.error().sentence.find("smaller one first") != std::string::npos, true);
    EXPECT_TRUE(Band::between(tenths(5), tenths(5))->contains(tenths(5)));
}

TEST(FormatExact, shows_as_many_digits_as_read_back_as_the_same_length) {
    Units inch, metric;
    metric.length = LengthUnit::millimetre;
    EXPECT_EQ(formatExact(tenths(1), inch), "0.0001 in");
    EXPECT_EQ(formatExact(tenths(1), metric), "0.00254 mm") << "a limit of error is not rounded";
    EXPECT_EQ(formatExact(nanometres(1'270), inch), "0.00005 in");
    EXPECT_EQ(formatExact(tenths(1), inch, 1), "0.00010 in");
    EXPECT_EQ(formatExact(microns(1), inch), "0.00003937 in");
    for (const std::int64_t n : {1, 999, 2'541, 25'400'001, 123'456'789}) {
        EXPECT_EQ(parseLength(formatExact(nanometres(n), inch), inch, {})->value, nanometres(n)) << n;
        EXPECT_EQ(parseLength(formatExact(nanometres(-n), metric), metric, {})->value, nanometres(-n)) << n;
    }
}
