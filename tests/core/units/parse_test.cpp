// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/date.h>
#include <chrono>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <units/parse.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Units inchUnits;
const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};
const Units metricComma{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','};
const Expected<Length> gap{"the gap at cap 3 right", thou(-20), thou(250)};
const Expected<Length> anyLength{"the length", {}, {}};

Length lengthOf(const char* text, const Units& units = inchUnits, const Expected<Length>& expected = gap) {
    const auto read = parseLength(text, units, expected);
    EXPECT_TRUE(read.has_value()) << text << ": " << (read ? "" : read.error().sentence);
    return read ? read->value : Length(-1);
}

std::string refusal(const char* text, const Units& units = inchUnits, const Expected<Length>& expected = gap) {
    const auto read = parseLength(text, units, expected);
    EXPECT_FALSE(read.has_value()) << text << " was read as " << (read ? format(read->value, units) : "");
    return read ? std::string() : read.error().sentence;
}

} // namespace

TEST(ParseLength, reads_what_is_typed_at_the_bench) {
    EXPECT_EQ(lengthOf("0.0575"), nanometres(1'460'500));
    EXPECT_EQ(lengthOf(".0575"), thou(57.5));
    EXPECT_EQ(lengthOf("57.5 thou"), thou(57.5));
    EXPECT_EQ(lengthOf("57.5thou"), thou(57.5));
    EXPECT_EQ(lengthOf("1.46 mm"), microns(1'460));
    EXPECT_EQ(lengthOf(" 0.0575 in "), thou(57.5));
    EXPECT_EQ(lengthOf("0.0575\""), thou(57.5));
    EXPECT_EQ(lengthOf("1/4", inchUnits, anyLength), inches(0.25));
    EXPECT_EQ(lengthOf("2 1/4 in", inchUnits, anyLength), inches(2.25));
    EXPECT_EQ(lengthOf("0"), Length());
    EXPECT_EQ(lengthOf("-0.5 thou"), thou(-0.5));
    EXPECT_EQ(lengthOf("−0.5 thou"), thou(-0.5));
    EXPECT_EQ(lengthOf("1.46", metric), microns(1'460));
    EXPECT_EQ(lengthOf("1,46", metricComma), microns(1'460));
    EXPECT_EQ(lengthOf("1460 µm", metric), microns(1'460));
}

TEST(ParseLength, sums_the_feeler_leaves_of_one_slot) {
    EXPECT_EQ(lengthOf("22+23+12.5 thou"), thou(57.5));
    // Common practice, no source: leaves of 22, 23 and 24 thou in one slot make a 69 thou gap.
    EXPECT_EQ(lengthOf("22+23+24"), thou(69));
    EXPECT_EQ(lengthOf("0.022 + 0.023"), thou(45));
    EXPECT_EQ(lengthOf("0.30+0.45", metric), microns(750));
    EXPECT_EQ(lengthOf("0,30+0,45", metricComma), microns(750));
    EXPECT_EQ(lengthOf("0.022 in + 1 mm"), thou(22) + millimetres(1));
}

TEST(ParseLength, keeps_the_text_as_it_was_typed) {
    EXPECT_EQ(parseLength("  22+23+12.5 thou ", inchUnits, gap)->typed, "22+23+12.5 thou");
    EXPECT_EQ(parseLength("0.9!", inchUnits, gap)->typed, "0.9!") << "that it was insisted on is kept";
}

TEST(ParseLength, refuses_a_bare_number_that_could_be_inches_or_thousandths) {
    EXPECT_THAT(refusal("57"), HasSubstr("57 inches or 57 thousandths"));
    EXPECT_THAT(refusal("57"), HasSubstr("the gap at cap 3 right"));
    // A pan is inches deep: there a bare 7 is clear.
    EXPECT_EQ(lengthOf("7", inchUnits, {"the pan depth", inches(1), inches(16)}), inches(7));
}

TEST(ParseLength, gives_an_example_of_the_field_s_own_size) {
    EXPECT_THAT(refusal("big", inchUnits, {"the diameter", inches(0.75), inches(8)}), HasSubstr("like 2.4500 in"));
    EXPECT_THAT(refusal("big", metric, {"the diameter", inches(0.75), inches(8)}), HasSubstr("like 62.000 mm"));
    EXPECT_THAT(refusal("big"), HasSubstr("0.0575 or 57.5 thou"));
}

TEST(ParseLength, refuses_a_bare_fraction_where_millimetres_are_expected) {
    EXPECT_THAT(refusal("1/4", metric, anyLength), HasSubstr("type its unit"));
    EXPECT_EQ(lengthOf("1/4 in", metric, anyLength), inches(0.25));
}

TEST(ParseLength, asks_back_what_is_far_out_of_range_and_takes_it_when_insisted) {
    EXPECT_THAT(refusal("0.575"), HasSubstr("was read as 0.5750 in"));
    EXPECT_EQ(lengthOf("0.575!"), thou(575));
}

TEST(ParseLength, refuses_what_can_be_read_in_two_ways) {
    EXPECT_THAT(refusal("1,234.5", metricComma, anyLength), HasSubstr("two ways"));
    EXPECT_THAT(refusal("1,46"), HasSubstr("decimal mark here is a point"));
}

TEST(ParseLength, refuses_nonsense_with_an_example) {
    for (const char* text : {"", "   ", "abc", "1..2", "1.2.3", "57 tho", "1/0", "1/", "/4", "+", "1++2", "0x10", "1e3",
                             "!", "--1", "2 3", "1/4/2", "𝟓"}) {
        EXPECT_THAT(refusal(text), HasSubstr("the gap at cap 3 right")) << text;
    }
}

TEST(ParseLength, refuses_numbers_too_large_for_any_engine_without_running_over) {
    EXPECT_FALSE(parseLength("999999999999999 in", inchUnits, anyLength));
    EXPECT_FALSE(parseLength("99999999999999999999999 in", inchUnits, anyLength));
    EXPECT_FALSE(parseLength("999999999999999!", inchUnits, anyLength));
    std::string sum = "1";
    for (int i = 0; i < 100; ++i) {
        sum += "+1";
    }
    EXPECT_THAT(parseLength(sum, inchUnits, anyLength).error().sentence, HasSubstr("20 terms"));
}

TEST(ParseTorque, reads_both_systems_and_their_common_spellings) {
    const Expected<Torque> any{"the torque", {}, {}};
    const auto torqueOf = [&](const char* text, const Units& units = inchUnits) {
        const auto read = parseTorque(text, units, any);
        EXPECT_TRUE(read) << text;
        return read ? read->value : Torque();
    };
    EXPECT_EQ(torqueOf("75"), poundFeet(75));
    EXPECT_EQ(torqueOf("75 lbf·ft"), poundFeet(75));
    EXPECT_EQ(torqueOf("75 ft-lb"), poundFeet(75));
    EXPECT_EQ(torqueOf("900 in-lb"), poundInches(900));
    EXPECT_EQ(torqueOf("101.7 Nm"), newtonMetres(101.7));
    EXPECT_EQ(torqueOf("100", metric), newtonMetres(100));
    EXPECT_EQ(poundInches(900), poundFeet(75));
}

TEST(ParseTorque, asks_back_the_absurd) {
    const Expected<Torque> range{"the torque at main 3 right", newtonMetres(1), newtonMetres(1000)};
    EXPECT_THAT(parseTorque("9000", inchUnits, range).error().sentence, HasSubstr("main 3 right"));
    EXPECT_THAT(parseTorque("-20", inchUnits, range).error().sentence, HasSubstr("was read as"));
}

TEST(ParseTemperature, knows_both_scales) {
    const Expected<Temperature> any{"the temperature", {}, {}};
    EXPECT_EQ(parseTemperature("21", inchUnits, any)->value, celsius(21));
    EXPECT_EQ(parseTemperature("70 °F", inchUnits, any)->value, fahrenheit(70));
    EXPECT_EQ(parseTemperature("-40 °F", inchUnits, any)->value, celsius(-40));
    EXPECT_EQ(parseTemperature("-40 C", inchUnits, any)->value, celsius(-40));
    EXPECT_FALSE(parseTemperature("-300", inchUnits, any));
}

TEST(ParseForce, reads_pounds_and_newtons_and_a_bare_number_by_the_units_of_length) {
    const Expected<Force> load{"the load", newtons(1), newtons(1e6)};
    EXPECT_EQ(parseForce("40", inchUnits, load)->value, poundsForce(40));
    EXPECT_EQ(parseForce("40 lbf", metric, load)->value, poundsForce(40));
    EXPECT_EQ(parseForce("0.2", metric, load)->value, newtons(200));
    EXPECT_EQ(parseForce("200 N", inchUnits, load)->value, newtons(200));
    EXPECT_EQ(parseForce("3 kN", inchUnits, load)->value, newtons(3000));
    EXPECT_EQ(parseForce("40", inchUnits, load)->typed, "40");
    for (const char* text : {"", "much", "0", "-5", "40 kg", "1e9", "9000000 lbf"}) {
        const auto force = parseForce(text, inchUnits, load);
        ASSERT_FALSE(force) << text;
        EXPECT_THAT(force.error().sentence, HasSubstr("the load")) << text;
    }
}

TEST(ParseCount, takes_whole_numbers_in_range_only) {
    EXPECT_EQ(parseCount(" 7 ", "caps", 3, 9).value(), 7);
    for (const char* text : {"2", "10", "7.5", "", "seven", "7x"}) {
        EXPECT_THAT(parseCount(text, "the number of caps", 3, 9).error().sentence, HasSubstr("3 to 9")) << text;
    }
}

TEST(Date, reads_and_writes_iso_8601_days) {
    EXPECT_EQ(format(*parseDate("2024-02-29")), "2024-02-29");
    for (const char* text : {"2023-02-29", "2024-13-01", "24-01-01", "2024-1-1", "2024-01-01x", ""}) {
        EXPECT_FALSE(parseDate(text)) << text;
    }
    const std::chrono::sys_days early{std::chrono::year(999) / 12 / 31};
    EXPECT_EQ(format(Date{early.time_since_epoch().count()}), "0999-12-31");
    EXPECT_EQ(format(*parseDate("9999-12-31")), "9999-12-31");
    EXPECT_EQ(format(Date{parseDate("9999-12-31")->days + 1}), "10000-01-01") << "no record holds it, a sentence may";
    // Unix time 1 000 000 000 was 2001-09-09T01:46:40Z (well known; from memory).
    EXPECT_EQ(format(UtcTime{1'000'000'000'000}), "2001-09-09T01:46:40.000Z");
    EXPECT_EQ(parseUtcTime("2001-09-09T01:46:40Z")->milliseconds, 1'000'000'000'000);
    EXPECT_EQ(parseUtcTime("2001-09-09T01:46:40.123Z")->milliseconds, 1'000'000'000'123);
    for (const char* text :
         {"2001-09-09 01:46:40Z", "2001-09-09T24:00:00Z", "2001-09-09T01:46:40", "2001-09-09T01:46:40.1Z"}) {
        EXPECT_FALSE(parseUtcTime(text)) << text;
    }
}

TEST(Date, of_a_cameras_clock_has_no_zone) {
    EXPECT_EQ(format(*parseClockTime("2026-05-04T09:30:07")), "2026-05-04T09:30:07");
    EXPECT_EQ(shown(*parseClockTime("2026-05-04T09:30:07")), "2026-05-04 09:30");
    for (const char* text : {"0000-00-00T00:00:00", "2026-02-30T09:30:00", "2026-05-04T09:30:00Z", "2026-05-04T09:30",
                             "", "2026-05-04T24:00:00", "2026-05-04 09:30:00"}) {
        EXPECT_FALSE(parseClockTime(text)) << text;
    }
}

TEST(ParseLength, refuses_a_fraction_that_no_number_holds) {
    for (const char* text : {"469854928555853/47 in", "999999999999999/1 in", "469854928555853/47 mm"}) {
        EXPECT_THAT(refusal(text, inchUnits, anyLength), HasSubstr("larger than anything")) << text;
    }
}
