// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <base/date.h>
#include <base/plain_text.h>
#include <base/say.h>

using namespace caprail;

TEST(PlainText, a_name_may_be_written_in_any_language) {
    for (const char* name : {"Mira Solheim", "Żółć-Łęcki", "Иван", "山田 太郎", "עברית", "می\u200cخواهم", "क्\u200dष",
                             "O'Brien & Söhne <GmbH>", "🔧", "57.5 thou · ± °"}) {
        EXPECT_FALSE(hiddenIn(name, TextShape::line)) << name;
        EXPECT_EQ(visibly(name), name);
    }
}

TEST(PlainText, a_name_may_hide_nothing) {
    for (const char* hidden :
         {"\x1b",   "\n",     "\r",     "\t",     "\x7f",   "\u0085", "\u009b", "\u2028", "\u2029",
          "\u202a", "\u202b", "\u202c", "\u202d", "\u202e", "\u2066", "\u2067", "\u2068", "\u2069",
          "\u200b", "\u200e", "\u200f", "\u061c", "\u2060", "\ufeff", "\u00ad", "\u200d", "\U000e0041"}) {
        const std::string name = std::string("Mi") + hidden + "ra";
        EXPECT_TRUE(hiddenIn(name, TextShape::line)) << visibly(name);
        EXPECT_EQ(visibly(name).find(hidden), std::string::npos) << visibly(name);
        EXPECT_TRUE(hiddenIn(name, TextShape::line) && !hiddenIn(visibly(name), TextShape::line)) << visibly(name);
    }
}

TEST(PlainText, a_note_may_have_lines_and_nothing_that_breaks_or_turns_them) {
    EXPECT_FALSE(hiddenIn("one\ntwo\tthree \u200e\u00ad", TextShape::lines));
    for (const char* hidden : {"\x1b[2J", "\r", "\u2028", "\u202e", "\u2066", "\u009b"}) {
        EXPECT_TRUE(hiddenIn(hidden, TextShape::lines)) << visibly(hidden);
    }
}

TEST(PlainText, shows_what_is_hidden_by_its_picture_or_number) {
    EXPECT_EQ(visibly("a\nb\r\nc\rd"), "a↵b↵c↵d");
    EXPECT_EQ(visibly("\x1b[31mred\x7f"), "␛[31mred␡");
    EXPECT_EQ(visibly("x\u202egnp.exe"), "x⟨U+202E⟩gnp.exe");
    EXPECT_EQ(visibly("bad \xff bytes"), "bad \ufffd bytes");
    EXPECT_EQ(visibleLines("a\nb\r\nc\x1b\rd"), "a\nb\r\nc␛↵d");
    EXPECT_EQ(visibleJson("{\n\"a\": \"\u202e\u009b\U000e0041é\"}"), "{\n\"a\": \"\\u202e\\u009b\\udb40\\udc41é\"}");
}

TEST(PlainText, reads_utf8_as_rfc_3629_has_it) {
    EXPECT_EQ(firstCharacter("é").code, 0xe9U);
    EXPECT_EQ(firstCharacter("\U0010ffff").code, 0x10ffffU);
    for (const char* bad :
         {"\xc0\x80", "\xe0\x80\x80", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\xf8", "\x80", "\xe2\x82", "\xc3("}) {
        EXPECT_FALSE(firstCharacter(bad).isGood);
        EXPECT_EQ(firstCharacter(bad).size, 1U);
    }
    for (char32_t code = 1; code <= 0x10ffff; code += code < 0x3000 ? 1 : 251) {
        if (code < 0xd800 || code > 0xdfff) {
            std::string text;
            appendCharacter(text, code);
            EXPECT_EQ(firstCharacter(text).code, code);
            EXPECT_EQ(firstCharacter(text).size, text.size());
        }
    }
}

TEST(Say, shows_what_stands_in_a_sentence_on_one_line) {
    EXPECT_EQ(Core::say("There is no shim %1.", "S1\nAll is well.\x1b[8m"), "There is no shim S1↵All is well.␛[8m.");
}

TEST(Time, before_1970_is_written_like_any_other) {
    EXPECT_EQ(format(UtcTime{-1}), "1969-12-31T23:59:59.999Z");
    EXPECT_EQ(format(UtcTime{-86'400'000}), "1969-12-31T00:00:00.000Z");
    EXPECT_EQ(format(UtcTime{-86'400'001}), "1969-12-30T23:59:59.999Z");
    EXPECT_EQ(format(dateOf(UtcTime{-1})), "1969-12-31");
    EXPECT_EQ(format(UtcTime{0}), "1970-01-01T00:00:00.000Z");
}
