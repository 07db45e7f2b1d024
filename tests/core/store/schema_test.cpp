// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <gmock/gmock.h>
#include <store/sqlite/header.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

TEST(Schema, has_a_table_a_view_and_three_guards_for_every_kind) {
    const auto count = [](std::string_view type) {
        return std::ranges::count_if(schemaItems(), [&](const SchemaItem& item) { return item.type == type; });
    };
    const auto kinds = static_cast<std::ptrdiff_t>(allKinds().size());
    EXPECT_EQ(count("table"), kinds + 2);
    EXPECT_EQ(count("trigger"), 3 * (kinds + 2));
    EXPECT_EQ(count("view"), kinds + 2);
    EXPECT_EQ(count("index"), 1);
}

TEST(Schema, lets_nobody_change_remove_or_replace_a_row_with_the_shell) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeFullRecord(path);
    const std::string before = read(path);
    int statements = 0;
    for (const SchemaItem& item : schemaItems()) {
        if (item.type != "table") {
            continue;
        }
        const std::string key = item.name == "attachment" ? "sha256" : "sequence";
        for (const std::string& sql : {"UPDATE " + item.name + " SET " + key + " = " + key, "DELETE FROM " + item.name,
                                       "INSERT OR REPLACE INTO " + item.name + " SELECT * FROM " + item.name}) {
            EXPECT_THAT(shell(path, sql), testing::AnyOf(HasSubstr("only added to"), HasSubstr("An entry follows")))
                << sql;
            ++statements;
        }
    }
    EXPECT_EQ(statements, 3 * (static_cast<int>(allKinds().size()) + 2));
    EXPECT_THAT(shell(path, "INSERT INTO entry VALUES (77, '', '', '', zeroblob(32))"), HasSubstr("An entry follows"));
    EXPECT_EQ(read(path), before);
}

TEST(Schema, shows_the_present_state_in_views) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    {
        auto file = RecordFile::create(path);
        ASSERT_TRUE(file);
        ASSERT_TRUE(file->append(morning, "Ann", gap(1, Side::right, 575)));
        ASSERT_TRUE(file->append(morning, "Bob", gap(3, Side::left, 580)));
        ASSERT_TRUE(file->append(morning, "Cy", Struck{1, "slipped"}));
    }
    EXPECT_EQ(shell(path, "SELECT group_concat(sequence || person || position || gap_nm) FROM present_gap_reading"),
              "2Bob3L1473200");
    EXPECT_EQ(shell(path, "SELECT sequence || person || struck_by || struck_person || why FROM struck_entries"),
              "1Ann3Cyslipped");
    EXPECT_EQ(shell(path, "SELECT says FROM history WHERE struck_by = 3"),
              "position=1R pass=1 gap_nm=1460500 gap_typed=575e-4 instrument=FEELER-1");
    EXPECT_EQ(shell(path, "SELECT count(*) FROM history"), "3");
}

TEST(Schema, gives_every_view_an_answer_for_every_kind) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const Ledger ledger = makeFullRecord(path);
    for (const SchemaItem& view : schemaViews()) {
        EXPECT_THAT(shell(path, "SELECT count(*) FROM " + view.name), testing::MatchesRegex("[0-9]+")) << view.name;
    }
    EXPECT_EQ(shell(path, "SELECT count(*) FROM history WHERE says IS NULL OR says = ''"), "0");
    EXPECT_EQ(shell(path, "SELECT seal FROM history ORDER BY sequence DESC LIMIT 1"), toHex(ledger.seal()));
}

TEST(Schema, carries_its_own_mark_in_the_header) {
    const Folder folder;
    makeRecord(folder / "a.caprail", 0);
    EXPECT_EQ(read(folder / "a.caprail").substr(68, 4), "CpRl");
    EXPECT_EQ(shell(folder / "a.caprail", "PRAGMA user_version"), std::to_string(schemaVersion));
    EXPECT_EQ(shell(folder / "a.caprail", "PRAGMA application_id"), std::to_string(applicationId));
}

} // namespace
} // namespace caprail
