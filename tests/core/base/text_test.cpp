// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/text.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::ElementsAre;

TEST(Text, loses_the_white_space_around_it_and_nothing_else) {
    EXPECT_EQ(trimmed(" \ta b\r\n"), "a b");
    EXPECT_EQ(trimmed("  "), "");
}

TEST(Text, is_put_in_small_and_capital_letters) {
    EXPECT_EQ(lowered("SAE J429"), "sae j429");
    EXPECT_EQ(capitalLetters("s014 ü7 é÷ß"), "S014 Ü7 É÷ß");
}

TEST(Text, quoted_back_is_cut_between_two_characters) {
    EXPECT_EQ(quotedText("7/16-21"), "“7/16-21”");
    EXPECT_EQ(quotedText(std::string(39, 'x') + "ü and more"), "“" + std::string(39, 'x') + "…”");
}

TEST(Text, is_parted_at_white_space_and_at_marks) {
    EXPECT_THAT(partsOf(" 1L,2R → 3L;;", {",", ";", "→"}), ElementsAre("1L", "2R", "3L"));
    EXPECT_TRUE(partsOf(" , ", {","}).empty());
    EXPECT_EQ(headAndRest("  S014   .0098 in ").head, "S014");
    EXPECT_EQ(headAndRest("  S014   .0098 in ").rest, ".0098 in");
    EXPECT_EQ(headAndRest("S014").rest, "");
}

TEST(DecimalNumber, is_read_with_point_or_comma_and_as_a_whole_or_not_at_all) {
    EXPECT_EQ(decimalNumber("10,9"), 10.9);
    EXPECT_EQ(decimalNumber(".4375"), 0.4375);
    EXPECT_EQ(decimalNumber("8.8"), 8.8);
    for (const char* text : {"", ".", "1.2.3", "1e3", "-1", "1 ", "1234567890123456"}) {
        EXPECT_FALSE(decimalNumber(text)) << text;
    }
    EXPECT_EQ(wholeNumber("007"), 7);
    for (const char* text : {"", "-1", "+1", "1.", "1234567"}) {
        EXPECT_FALSE(wholeNumber(text)) << text;
    }
}
