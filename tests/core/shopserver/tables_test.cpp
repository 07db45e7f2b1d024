// SPDX-License-Identifier: GPL-3.0-or-later
#include "test_database.h"

#include <gmock/gmock.h>
#include <ledger/entry_words.h>
#include <shop/record_reader.h>
#include <shopserver/tables.h>

namespace {

using namespace caprail;
using testing::HasSubstr;

class TheTablesOfAShop : public servertest::OnAServer {};

TEST_F(TheTablesOfAShop, are_made_once_and_then_left_as_they_are) {
    Connection owner = as("postgres");
    const auto made = makeTables(owner);
    ASSERT_TRUE(made) << made.error().sentence;
    EXPECT_EQ(made->before, 0);
    EXPECT_EQ(made->now, newestTables());
    done(owner.run("CREATE TEMPORARY TABLE before AS SELECT number, hash, applied FROM migration"));
    const auto again = makeTables(owner);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(again->before, newestTables());
    EXPECT_EQ(owner.integer("SELECT count(*) FROM migration JOIN before USING (number, hash, applied)"),
              newestTables());
    done(checkTables(owner));
}

TEST_F(TheTablesOfAShop, lie_on_a_server_whose_notices_reach_no_terminal) {
    Connection owner = as("postgres");
    testing::internal::CaptureStderr();
    done(owner.run("DO $$ BEGIN RAISE WARNING E'\\x1b]0;steered\\x07'; END $$"));
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

TEST_F(TheTablesOfAShop, are_missed_with_the_sentence_that_says_who_makes_them) {
    Connection owner = as("postgres");
    const auto checked = checkTables(owner);
    ASSERT_FALSE(checked);
    EXPECT_THAT(checked.error().sentence, HasSubstr("its keeper makes them with “caprail database make”"));
}

TEST_F(TheTablesOfAShop, are_refused_when_a_newer_program_made_them) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    done(owner.run("INSERT INTO migration (number, name, hash) VALUES (" + std::to_string(newestTables() + 1) +
                   ", 'later', 'x')"));
    const auto checked = checkTables(owner);
    ASSERT_FALSE(checked);
    EXPECT_THAT(checked.error().sentence, HasSubstr("is of a newer version of this program"));
    EXPECT_FALSE(makeTables(owner)) << "and nobody takes it back";
}

TEST_F(TheTablesOfAShop, are_refused_when_another_edition_made_them) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    done(owner.run("UPDATE migration SET hash = 'another' WHERE number = 1"));
    const auto made = makeTables(owner);
    ASSERT_FALSE(made);
    EXPECT_THAT(made.error().sentence, HasSubstr("made by another edition of this program (1)"));
}

TEST_F(TheTablesOfAShop, are_refused_when_what_is_noted_of_them_cannot_be) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    for (const char* change : {"UPDATE migration SET number = 0 WHERE number = 1",
                               "UPDATE migration SET number = -9223372036854775808 WHERE number = 1",
                               "DELETE FROM migration WHERE number = 2"}) {
        const auto undone = owner.together([&]() -> Result<void> {
            done(owner.run(change));
            const auto checked = checkTables(owner);
            EXPECT_FALSE(checked) << change;
            EXPECT_THAT(checked ? "" : checked.error().sentence, HasSubstr("made by another edition")) << change;
            return refuse("undone");
        });
        EXPECT_FALSE(undone);
    }
    done(checkTables(owner));
}

TEST_F(TheTablesOfAShop, are_made_whole_or_not_at_all) {
    Connection owner = as("postgres");
    // The second migration finds a name taken that it wants.
    done(owner.run("DO $$ BEGIN CREATE SCHEMA caprail; CREATE TABLE caprail.banded (x bigint); END $$"));
    EXPECT_FALSE(makeTables(owner));
    EXPECT_EQ(owner.integer("SELECT count(*) FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace WHERE "
                            "n.nspname = 'caprail' AND c.relkind = 'r'"),
              1);
}

TEST_F(TheTablesOfAShop, have_a_column_for_every_field_of_a_list) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    eachSummaryField([&](const auto& field) {
        EXPECT_EQ(
            owner.integer("SELECT count(*) FROM pg_attribute WHERE attrelid = 'listing'::regclass AND attname = '" +
                          std::string(field.name) + "'"),
            1)
            << field.name << ": a new field of the summary needs a migration that adds its column";
    });
}

/// What a view says for each number of an enumeration.
template <class E> void hasTheWordsOf(Connection& owner, const std::string& said) {
    for (const auto& one : allWords<E>()) {
        const auto text = owner.text("SELECT " + said + " FROM (SELECT " +
                                     std::to_string(static_cast<std::int64_t>(one.value)) + "::bigint AS n) AS x");
        ASSERT_TRUE(text) << text.error().sentence;
        EXPECT_EQ(*text, word(one.value));
    }
}

/// The words that a view takes from a list in brackets, in its definition.
std::string listIn(Connection& owner, const std::string& view, const std::string& column) {
    const auto text =
        owner.text("SELECT substring(pg_get_viewdef('" + view +
                   "'::regclass) FROM '(\\(ARRAY\\[[^]]*\\]\\))\\[\\(\\w+\\." + column + " \\+ 1\\)\\]')");
    EXPECT_TRUE(text && !text->empty()) << view << " " << column;
    return text.value_or("") + "[n + 1]";
}

TEST_F(TheTablesOfAShop, say_states_and_kinds_in_the_words_of_the_program) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    hasTheWordsOf<CheckState>(owner, "check_word(n)");
    hasTheWordsOf<JobState>(owner, listIn(owner, "records", "state"));
    hasTheWordsOf<RoundResult>(owner, listIn(owner, "records", "round_result"));
    hasTheWordsOf<InstrumentType>(owner, listIn(owner, "instruments_due", "kind"));
}

TEST_F(TheTablesOfAShop, sort_texts_with_the_numbers_in_them_by_their_value) {
    Connection owner = as("postgres");
    ASSERT_TRUE(makeTables(owner));
    EXPECT_EQ(
        owner.text(
            "SELECT string_agg(x, ' ' ORDER BY x COLLATE natural_order) FROM (VALUES ('b10'), ('B2'), ('a')) AS v(x)"),
        "a B2 b10");
}

} // namespace
