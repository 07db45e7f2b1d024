// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <ledger/ledger.h>
#include <store/sqlite/database.h>

namespace caprail {

/// Opens a file whose header was found to be a record's and defends the connection (defences.h), after a look at what
/// lies beside it (beside.h). Where a write was cut off by a crash: to read, what is opened is a private copy in which
/// the write is taken back, and not a byte of the record or its journal changes; to write, which is for one who holds
/// the writer's lock, the write is taken back on the record itself (cut_off.h). Either is told by `remark()`. `code`,
/// when given, is SQLite's for a refusal; it says of a journal that is not taken that reading could not be finished
/// (isUnfinished).
Result<std::unique_ptr<Database>> openDefended(const std::string& path, Access access, int* sqliteCode = nullptr);

/// Opens as above and reads in one transaction what `readSound` reads.
Result<std::unique_ptr<Database>> openChecked(const std::string& path, Access access, Ledger& ledger);

/// Opens and defends the file at `path` as it is, whatever lies beside it; sentences name it `shownAs`. `code` is
/// SQLite's when its schema cannot be read.
Result<std::unique_ptr<Database>> openAsItIs(const std::string& path, Access access, const std::string& shownAs,
                                             int& sqliteCode);
/// Reads schema, pages, structure (quick_check) and entries with their seals into `ledger` (empty before); refuses what
/// is not sound.
Result<void> readSound(Database& database, Ledger& ledger);
/// The same of a file whose schema was verified already.
Result<void> readSoundTables(Database& database, Ledger& ledger);

/// Runs `read` in one read transaction, so that it sees one state of the file.
Result<void> inOneState(Database& database, const std::function<Result<void>()>& read);

/// Reads what follows the last entry of `ledger`, after checking that the file still holds that very entry.
Result<void> readTail(Database& database, Ledger& ledger);

/// Refuses a file whose pages do not hang together; `pragma` is "quick_check" or the slower "integrity_check".
Result<void> verifyStructure(Database& database, const std::string& pragma);

/// Refuses a file that has free pages, or another size than its pages make. A ledger only grows, so no page ever
/// becomes free; SQLite would put the next entry into a page that a false list calls free, over the entries that are
/// there.
Result<void> verifyPages(Database& database);

/// Copies the whole file, as committed, over the empty file at `path`.
Result<void> backUp(Database& database, const std::string& path);

} // namespace caprail
