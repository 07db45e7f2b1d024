// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit of what may be typed, from both sides.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <units/parse.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Units inchesHere;
const Units metricHere{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'};

template <class T> std::string answer(const Result<T>& read) { return read ? std::string("taken") : read.error().sentence; }

std::string lengthAnswer(const std::string& text, const Units& units, std::optional<Length> lo = {},
                         std::optional<Length> hi = {}) {
    return answer(parseLength(text, units, {"the length", lo, hi}));
}

} // namespace

TEST(TypedLimits, of_a_sum_are_twenty_terms) {
    std::string sum = "1";
    for (int i = 1; i < 20; ++i) {
        sum += "+1";
    }
    EXPECT_EQ(lengthAnswer(sum + " mm", metricHere), "taken");
    EXPECT_THAT(lengthAnswer(sum + "+1 mm", metricHere), HasSubstr("more than 20 terms"));
}

TEST(TypedLimits, of_any_amount_are_what_stands_on_an_engine_stand) {
    EXPECT_EQ(lengthAnswer("100000 mm", metricHere), "taken");
    EXPECT_THAT(lengthAnswer("100000.000001 mm", metricHere), HasSubstr("larger than anything"));
    EXPECT_EQ(answer(parseTorque("100000000 Nm", metricHere, {"the torque", {}, {}})), "taken");
    EXPECT_THAT(answer(parseTorque("100000000.001 Nm", metricHere, {"the torque", {}, {}})), HasSubstr("larger than anything"));
}

TEST(TypedLimits, of_a_fraction_are_1024_parts) {
    EXPECT_EQ(parseLength("1/1024 in", inchesHere, {"the length", {}, {}})->value, Length(24'805));
    EXPECT_THAT(lengthAnswer("1/1025 in", inchesHere), HasSubstr("cannot be read"));
    EXPECT_EQ(lengthAnswer("1/1 in", inchesHere), "taken");
    EXPECT_THAT(lengthAnswer("1/0 in", inchesHere), HasSubstr("cannot be read"));
}

TEST(TypedLimits, of_what_is_expected_are_taken_themselves_and_asked_back_beyond) {
    const Length lo = millimetres(1), hi = millimetres(2);
    EXPECT_EQ(lengthAnswer("1 mm", metricHere, lo, hi), "taken");
    EXPECT_EQ(lengthAnswer("2 mm", metricHere, lo, hi), "taken");
    EXPECT_THAT(lengthAnswer("0.999999 mm", metricHere, lo, hi), HasSubstr("1.000 mm to 2.000 mm"));
    EXPECT_THAT(lengthAnswer("2.000001 mm", metricHere, lo, hi), HasSubstr("1.000 mm to 2.000 mm"));
    EXPECT_THAT(lengthAnswer("0.9 mm", metricHere, lo), HasSubstr("at least 1.000 mm"));
    EXPECT_EQ(lengthAnswer("9 mm", metricHere, lo), "taken");
    EXPECT_THAT(lengthAnswer("2.1 mm", metricHere, {}, hi), HasSubstr("at most 2.000 mm"));
    EXPECT_EQ(lengthAnswer("-9 mm", metricHere, {}, hi), "taken");
    EXPECT_EQ(lengthAnswer("2.1 mm !", metricHere, lo, hi), "taken");
}

TEST(TypedLimits, of_a_bare_whole_number_in_inches_are_those_of_its_field) {
    const Length lo = inches(3), hi = inches(7);
    EXPECT_EQ(lengthAnswer("3", inchesHere, lo, hi), "taken");
    EXPECT_EQ(lengthAnswer("7", inchesHere, lo, hi), "taken");
    EXPECT_THAT(lengthAnswer("2", inchesHere, lo, hi), HasSubstr("2 inches or 2 thousandths"));
    EXPECT_THAT(lengthAnswer("8", inchesHere, lo, hi), HasSubstr("8 inches or 8 thousandths"));
}

TEST(TypedLimits, of_a_temperature_are_absolute_zero_and_ten_thousand_degrees) {
    const auto of = [](const char* text) { return answer(parseTemperature(text, inchesHere, {"the temperature", {}, {}})); };
    EXPECT_EQ(of("-273.15"), "taken");
    EXPECT_THAT(of("-273.151"), HasSubstr("cannot be the temperature of an engine"));
    EXPECT_EQ(of("10000"), "taken");
    EXPECT_THAT(of("10000.001"), HasSubstr("cannot be the temperature of an engine"));
    EXPECT_THAT(of("20+1"), HasSubstr("is a sum"));
}

TEST(TypedLimits, of_a_count_are_both_taken) {
    EXPECT_EQ(parseCount("3", "caps", 3, 9).value_or(0), 3);
    EXPECT_EQ(parseCount("9", "caps", 3, 9).value_or(0), 9);
    EXPECT_FALSE(parseCount("2", "caps", 3, 9));
    EXPECT_FALSE(parseCount("10", "caps", 3, 9));
}
