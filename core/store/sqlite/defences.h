// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <store/sqlite/database.h>

namespace caprail {

/// Bytes that one attachment may have. A phone's photo has a tenth of it.
inline constexpr std::int64_t largestAttachment = 60LL * 1024 * 1024;
/// Bytes that one text of an entry may have: a page of notes has a hundredth of it.
inline constexpr std::size_t largestText = 256UL * 1024;
/// Bytes that the entries of one record may take in memory: a hundred times a long build.
inline constexpr std::size_t largestLedger = 320UL * 1024 * 1024;

/// Bytes that SQLite may take in this process, pages, sorting and texts together: room for the copies that it makes of
/// the largest attachment while it stores it. Reading a file takes far less; this is the last net.
inline constexpr std::int64_t largestHeap = 448LL * 1024 * 1024;

/// Makes a fresh connection safe for a file that someone else made. These are the settings that SQLite recommends for
/// untrusted files ("Defense Against The Dark Arts", sqlite.org/security.html, from memory) and what a record can do
/// without. Before all of them the header is judged (header.h), and after them, before any table is read, the schema
/// is compared with ours to the letter (verifySchema): so nothing that a file brings along is ever run.
///
/// | setting | reason |
/// | --- | --- |
/// | DBCONFIG_DEFENSIVE | no statement may damage the file by design: its schema, its journal mode, shadow tables |
/// | DBCONFIG_TRUSTED_SCHEMA off, PRAGMA trusted_schema | a schema may not call functions with side effects |
/// | DBCONFIG_WRITABLE_SCHEMA off | a broken schema is an error, not a warning |
/// | DBCONFIG_ENABLE_VIEW off | views are for the sqlite3 shell; a planted one is never expanded |
/// | DBCONFIG_ENABLE_LOAD_EXTENSION off | no code from libraries |
/// | DBCONFIG_ENABLE_FTS3_TOKENIZER off | no pointers from SQL |
/// | DBCONFIG_DQS_DDL, DQS_DML off | a misspelt column is an error, not a text |
/// | LIMIT_LENGTH 64 MiB | an oversized text or blob is refused before memory is taken for it |
/// | LIMIT_SQL_LENGTH, COLUMN, EXPR_DEPTH, COMPOUND_SELECT, VDBE_OP, FUNCTION_ARG, LIKE_PATTERN_LENGTH,
/// VARIABLE_NUMBER, TRIGGER_DEPTH | a planted schema is not parsed beyond what ours needs | | LIMIT_ATTACHED 0 | no
/// other file is reached through this one | | LIMIT_WORKER_THREADS 0 | no threads that nobody asked for | |
/// hard_heap_limit64 | what gets past all of the above runs out of memory by itself, not the computer | | PRAGMA
/// cell_size_check | damaged pages are noticed early | | PRAGMA mmap_size 0 | a disk error, or a file cut short
/// meanwhile, is a result code, not a signal | | PRAGMA temp_store MEMORY | nothing of the record is written anywhere
/// else | | TimeGuard (time_guard.h) while reading | no planted cycle holds the program up | | integrity: quick_check,
/// then numbers and seals | no entry of a file that does not hang together is shown |
Result<void> defend(Database&);
/// The further settings of a connection that appends: rollback journal (no write-ahead file is left beside the record,
/// and none is ever used: it does not work on a network folder) and the strongest durability. Refuses a file whose
/// journal cannot be so.
Result<void> prepareForWriting(Database&);

} // namespace caprail
