// SPDX-License-Identifier: GPL-3.0-or-later
/// Lines as gauges send them, and what a person would have typed instead.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <units/parse.h>
#include <work/gauge_line.h>

namespace caprail {
namespace {

using testing::HasSubstr;

struct Sent {
    const char* line;
    GaugeLineForm form;
    const char* typed;
};

class GaugeLine : public testing::TestWithParam<Sent> {};

TEST_P(GaugeLine, is_read_as_a_person_would_have_typed_it) {
    const auto typed = readGaugeLine(GetParam().line, GetParam().form);
    ASSERT_TRUE(typed) << typed.error().sentence;
    EXPECT_EQ(*typed, GetParam().typed);
}

INSTANTIATE_TEST_SUITE_P(
    CommonForms, GaugeLine,
    testing::Values(Sent{"+00.5750", {"#", "in"}, "0.5750 in"}, Sent{"01A+0.0575", {"01A#", "in"}, "0.0575 in"},
                    Sent{"01A+00001.460\r\n", {"01A#", "mm"}, "1.460 mm"}, Sent{"  0,0575 in\r", {"#", ""}, "0.0575 in"},
                    Sent{"57.5", {"#", "thou"}, "57.5 thou"}, Sent{"DGTL 1.460 mm", {"DGTL #", ""}, "1.460 mm"},
                    Sent{"DGTL1.460MM", {"DGTL #", "in"}, "1.460 mm"}, Sent{"-.0005\"", {"#", "mm"}, "-0.0005 in"},
                    Sent{"- 0.0005", {"#", "in"}, "-0.0005 in"}, Sent{"−1.5", {"#", "thou"}, "-1.5 thou"},
                    Sent{"\x02" "1.460\x03", {"#", "mm"}, "1.460 mm"}, Sent{"17 +1.460 mm OK", {"*+# OK", ""}, "1.460 mm"},
                    Sent{"1;A;+0001.46;mm", {"1;A;#;*", "mm"}, "1.46 mm"}, Sent{"75.2 Nm", {"#", ""}, "75.2 N·m"},
                    Sent{"TQ  75.2ft-lb", {"TQ #", ""}, "75.2 lbf·ft"}, Sent{"5.", {"#", "mm"}, "5 mm"},
                    Sent{"000", {"#", "mm"}, "0 mm"}, Sent{"41.5°", {"#", ""}, "41.5 °"}));

TEST(GaugeLines, are_refused_when_there_is_more_in_them_than_the_pattern_says) {
    for (const char* line : {"01A+0.0575", "0.0575 in 0.0580 in", "Err 5", "5.75E-02", "1,234.5", "0.0575 kg", "", "mm", "+",
                             "1234567890123456"}) {
        const auto typed = readGaugeLine(line, {"#", "in"});
        ASSERT_FALSE(typed) << line << " was read as " << *typed;
        EXPECT_THAT(typed.error().sentence, HasSubstr("does not fit its pattern"));
    }
    EXPECT_FALSE(readGaugeLine("02A+0.0575", {"01A#", "in"})) << "another channel's line";
}

TEST(GaugeLines, have_at_most_the_digits_that_a_field_takes) {
    EXPECT_EQ(readGaugeLine("12345678.9012345", {"#", "mm"}).value(), "12345678.9012345 mm");
    EXPECT_FALSE(readGaugeLine("12345678.90123456", {"#", "mm"}));
}

TEST(GaugeLines, without_a_unit_are_refused_where_nobody_said_which_it_is) {
    const auto typed = readGaugeLine("0.0575", {"#", ""});
    ASSERT_FALSE(typed);
    EXPECT_THAT(typed.error().sentence, HasSubstr("without a unit"));
}

TEST(GaugeLines, end_in_units_that_a_field_takes) {
    const Units inch{LengthUnit::inch, TorqueUnit::poundFoot, '.'};
    for (const std::string& unit : gaugeUnits()) {
        const std::string typed = readGaugeLine("1.5 " + unit, {"#", ""}).value();
        EXPECT_EQ(typed, "1.5 " + unit);
        EXPECT_TRUE(parseLength(typed, inch, {"it", {}, {}}) || parseTorque(typed, inch, {"it", {}, {}}) ||
                    parseAngle(typed, inch, {"it", {}, {}}))
            << typed;
    }
}

TEST(GaugeLines, that_only_begin_are_told_from_those_that_cannot_be_ones) {
    const GaugeLineForm form{"01A#", "in"};
    for (const char* text : {"0", "01", "01A", "01A+", "01A+0", "01A+0.", "01A+0.0575", "01A+0.0575 i", "01A+0.0575 in"}) {
        EXPECT_TRUE(couldBeginGaugeLine(text, form)) << text;
    }
    for (const char* text : {"1", "02", "01B", "01Ax", "01A+0.0575 k"}) {
        EXPECT_FALSE(couldBeginGaugeLine(text, form)) << text;
    }
}

TEST(GaugePattern, is_proposed_from_a_line_and_fits_it) {
    for (const auto& [line, pattern] : {std::pair{"01A+0.0575", "01A#"}, std::pair{"DGTL 1.460 mm", "DGTL #"},
                                       std::pair{"  0,0575 in\r", "#"}, std::pair{"no value", "#"},
                                       std::pair{"#4 1.460;", "*4 #;"}}) {
        EXPECT_EQ(patternOfLine(line), pattern);
    }
    EXPECT_EQ(readGaugeLine("#4 1.460;", {patternOfLine("#4 1.460;"), "mm"}).value(), "1.460 mm");
}

TEST(GaugePattern, says_once_where_the_value_stands) {
    for (const char* pattern : {"", "01A", "##", "*#*#", "***#"}) {
        EXPECT_FALSE(checkGaugeForm({pattern, "in"})) << pattern;
    }
    EXPECT_TRUE(checkGaugeForm({"01A#*", ""}));
    EXPECT_TRUE(checkGaugeForm({"*#*", ""}));
    EXPECT_THAT(checkGaugeForm({"#", "furlong"}).error().sentence, HasSubstr("no unit"));
}

} // namespace
} // namespace caprail
