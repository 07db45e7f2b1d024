// SPDX-License-Identifier: GPL-3.0-or-later
/// That each setting which defences.h gives a reason for is in force on a record that was opened.
#include "alter.h"

#include <store/sqlite/defences.h>

namespace caprail {
namespace {

using namespace samples;

class Defended : public testing::Test {
protected:
    Defended() {
        makeFullRecord(folder / "a.caprail");
        auto opened = Database::open(folder / "a.caprail", Access::readOnly);
        EXPECT_TRUE(opened && defend(**opened));
        database = std::move(*opened);
    }
    Folder folder;
    std::unique_ptr<Database> database;
};

TEST_F(Defended, has_the_limits_that_keep_a_planted_schema_small) {
    const std::pair<int, int> limits[] = {
        {SQLITE_LIMIT_LENGTH, 64 * 1024 * 1024}, {SQLITE_LIMIT_SQL_LENGTH, 256 * 1024},
        {SQLITE_LIMIT_COLUMN, 100},              {SQLITE_LIMIT_EXPR_DEPTH, 150},
        {SQLITE_LIMIT_COMPOUND_SELECT, 3},       {SQLITE_LIMIT_VDBE_OP, 25'000},
        {SQLITE_LIMIT_FUNCTION_ARG, 8},          {SQLITE_LIMIT_ATTACHED, 0},
        {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50},  {SQLITE_LIMIT_VARIABLE_NUMBER, 64},
        {SQLITE_LIMIT_TRIGGER_DEPTH, 4},         {SQLITE_LIMIT_WORKER_THREADS, 0}};
    for (const auto& [limit, value] : limits) {
        EXPECT_EQ(sqlite3_limit(database->handle(), limit, -1), value) << limit;
    }
    EXPECT_EQ(sqlite3_hard_heap_limit64(-1), largestHeap);
}

TEST_F(Defended, has_the_switches_that_keep_a_file_from_running_anything) {
    const auto isSet = [&](int setting) {
        int value = -1;
        sqlite3_db_config(database->handle(), setting, -1, &value);
        return value;
    };
    EXPECT_EQ(isSet(SQLITE_DBCONFIG_DEFENSIVE), 1);
    for (const int off : {SQLITE_DBCONFIG_TRUSTED_SCHEMA, SQLITE_DBCONFIG_WRITABLE_SCHEMA, SQLITE_DBCONFIG_ENABLE_VIEW,
                          SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER,
                          SQLITE_DBCONFIG_DQS_DDL, SQLITE_DBCONFIG_DQS_DML}) {
        EXPECT_EQ(isSet(off), 0) << off;
    }
    EXPECT_EQ(database->integer("PRAGMA trusted_schema").value_or(-1), 0);
    EXPECT_EQ(database->integer("PRAGMA cell_size_check").value_or(-1), 1);
    EXPECT_EQ(database->integer("PRAGMA mmap_size").value_or(-1), 0);
    EXPECT_EQ(database->integer("PRAGMA temp_store").value_or(-1), 2);
}

} // namespace
} // namespace caprail
