// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <shop/entry_text.h>

namespace caprail {
namespace {

TEST(SafeName, neither_begins_nor_ends_with_what_a_file_system_would_take_amiss) {
    const auto of = [](const char* text) { return safeName(text, "record"); };
    EXPECT_EQ(of("Orrin Vale Jr."), "Orrin Vale Jr");
    EXPECT_EQ(of("6.2 V8..."), "6.2 V8");
    EXPECT_EQ(of("6.2 V8. . "), "6.2 V8");
    EXPECT_EQ(of("...hidden"), "hidden");
    EXPECT_EQ(of(" - .x"), "x");
    EXPECT_EQ(of("--force"), "force");
    EXPECT_EQ(of("V8-"), "V8-") << "a dash may end it";
    EXPECT_EQ(of("a/b\\c:d"), "a-b-c-d");
    EXPECT_EQ(of("main_3 (left)"), "main_3 -left-");
}

TEST(SafeName, without_a_letter_or_a_digit_is_the_other_one) {
    for (const char* text : {"", "...", " . ", "---", "___", "///"}) {
        EXPECT_EQ(safeName(text, "record"), "record") << text;
    }
}

TEST(SafeName, is_cut_after_80_bytes_and_never_within_a_letter) {
    const std::string most(80, 'a');
    EXPECT_EQ(safeName(most, "x"), most);
    EXPECT_EQ(safeName(most + "b", "x"), most);
    std::string letters;
    for (int i = 0; i < 40; ++i) {
        letters += "é";
    }
    EXPECT_EQ(safeName(letters + "é", "x"), letters);
    EXPECT_EQ(safeName("a" + letters, "x"), "a" + letters.substr(0, 78));
    EXPECT_EQ(safeName(std::string(79, 'a') + ".b", "x"), std::string(79, 'a')) << "what the cut left at the end goes too";
}

} // namespace
} // namespace caprail
