// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/defences.h>

#include <sqlite3.h>

namespace caprail {

Result<void> defend(Database& database) {
    sqlite3* const connection = database.handle();
    const auto set = [&](int setting, int value) { sqlite3_db_config(connection, setting, value, nullptr); };
    set(SQLITE_DBCONFIG_DEFENSIVE, 1);             // no statement may damage the file by design: shadow tables, schema
    set(SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);        // a schema may not call functions that have side effects
    set(SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0);       // a broken schema is an error, not a warning
    set(SQLITE_DBCONFIG_ENABLE_VIEW, 0);           // the views are for the sqlite3 shell: this program reads tables
    set(SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0); // no code from libraries
    set(SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0); // no pointers from SQL
    set(SQLITE_DBCONFIG_DQS_DDL, 0);               // a misspelt column is an error, not a text
    set(SQLITE_DBCONFIG_DQS_DML, 0);

    // What no record needs cannot be used to eat memory or time.
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

    sqlite3_busy_timeout(connection, 3'000); // another program's append takes a moment
    // cell_size_check: damaged pages are noticed early. mmap_size: a disk error is a result code, not a signal.
    // temp_store: nothing of the record is written anywhere else.
    return database.run("PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0; PRAGMA temp_store = MEMORY");
}

Result<void> prepareForWriting(Database& database) {
    // EXTRA: the folder is synced too after the journal is gone (sqlite.org/pragma.html#pragma_synchronous, from
    // memory). FULL is not enough: power_cut_test.cpp then loses entries that were acknowledged.
    auto done = database.run("PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA; PRAGMA fullfsync = ON; "
                             "PRAGMA foreign_keys = ON");
    if (done && sqlite3_db_readonly(database.handle(), "main") != 0) {
        return refuse(sentenceFor(SQLITE_READONLY, database.path(), {}));
    }
    return done;
}

} // namespace caprail
