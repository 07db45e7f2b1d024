// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/defences.h>

#include <sqlite3.h>
#include <base/say.h>

namespace caprail {

Result<void> defend(Database& database) {
    sqlite3* const connection = database.handle();
    const auto set = [&](int setting, int value) { sqlite3_db_config(connection, setting, value, nullptr); };
    set(SQLITE_DBCONFIG_DEFENSIVE, 1);
    set(SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    set(SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0);
    set(SQLITE_DBCONFIG_ENABLE_VIEW, 0);
    set(SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0);
    set(SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0);
    set(SQLITE_DBCONFIG_DQS_DDL, 0);
    set(SQLITE_DBCONFIG_DQS_DML, 0);

    sqlite3_limit(connection, SQLITE_LIMIT_LENGTH, 64 * 1024 * 1024);
    sqlite3_limit(connection, SQLITE_LIMIT_SQL_LENGTH, 256 * 1024);
    sqlite3_limit(connection, SQLITE_LIMIT_COLUMN, 100);
    sqlite3_limit(connection, SQLITE_LIMIT_EXPR_DEPTH, 150);
    sqlite3_limit(connection, SQLITE_LIMIT_COMPOUND_SELECT, 3);
    sqlite3_limit(connection, SQLITE_LIMIT_VDBE_OP, 25'000);
    sqlite3_limit(connection, SQLITE_LIMIT_FUNCTION_ARG, 8);
    sqlite3_limit(connection, SQLITE_LIMIT_ATTACHED, 0);
    sqlite3_limit(connection, SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50);
    sqlite3_limit(connection, SQLITE_LIMIT_VARIABLE_NUMBER, 64);
    sqlite3_limit(connection, SQLITE_LIMIT_TRIGGER_DEPTH, 4);
    sqlite3_limit(connection, SQLITE_LIMIT_WORKER_THREADS, 0);

    sqlite3_hard_heap_limit64(largestHeap);

    sqlite3_busy_timeout(connection, 3'000); // another program's append takes a moment
    return database.run("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0; "
                        "PRAGMA temp_store = MEMORY");
}

Result<void> prepareForWriting(Database& database) {
    // EXTRA: the folder is synced too after the journal is gone (sqlite.org/pragma.html#pragma_synchronous, from
    // memory). FULL is not enough: power_cut_test.cpp then loses entries that were acknowledged.
    const auto journal = database.text("PRAGMA journal_mode = DELETE");
    if (!journal) {
        return tl::unexpected(journal.error());
    }
    if (*journal != "delete") {
        return refuse(Core::say("%1 keeps its journal in another way (%2) than a record does: salvage its entries into "
                                "a new file (caprail salvage FILE OUT).",
                                inQuotes(database.path()), *journal));
    }
    auto done = database.run("PRAGMA synchronous = EXTRA; PRAGMA fullfsync = ON; "
                             "PRAGMA foreign_keys = ON");
    if (done && sqlite3_db_readonly(database.handle(), "main") != 0) {
        return refuse(sentenceFor(SQLITE_READONLY, database.path(), {}));
    }
    return done;
}

} // namespace caprail
