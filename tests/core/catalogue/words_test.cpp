// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/dialect.h>
#include <gmock/gmock.h>

namespace caprail {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Words, are_runs_of_letters_digits_and_marks) {
    EXPECT_THAT(wordsIn("Orrin's 6.2-V8, Müller"), ElementsAre("Orrin", "s", "6", "2", "V8", "Müller"));
    EXPECT_THAT(wordsIn(" '\"&|!():* "), IsEmpty());
    EXPECT_THAT(wordsIn("\xCC\x81 \xCC\x81\xCC\x88"), IsEmpty()) << "accents over nothing";
    EXPECT_THAT(wordsIn("vale \xCC\x81"), ElementsAre("vale"));
}

TEST(Words, are_folded_to_small_letters_without_accents_for_a_database_that_does_not) {
    EXPECT_EQ(foldedWord("JOSÉ"), "jose");
    EXPECT_EQ(foldedWord("Mu\xCC\x88ller"), "muller");
    EXPECT_EQ(foldedWord("\xEF\xAC\x81lter"), "filter") << "a ligature is its letters";
    EXPECT_EQ(foldedWord("\xE2\x91\xB4\xC2\xBD"), "112") << "and a digit in brackets the digit, a fraction its digits";
    EXPECT_EQ(foldedWord("\xEF\xB1\x9E"), "") << "a sign of a space and marks is nothing";
    EXPECT_EQ(foldedWord(std::string(300, 'a')), std::string(200, 'a'));
}

TEST(Words, end_nothing_that_they_are_written_into) {
    for (const std::string& word : wordsIn("a' & b:* \\ \"c\" -- d")) {
        const std::string term = dialectOf(DatabasePlace::Kind::postgres).foundTerm(word);
        EXPECT_EQ(term, "'" + word + "':*");
    }
}

} // namespace
} // namespace caprail
