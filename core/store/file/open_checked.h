// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <ledger/ledger.h>
#include <store/sqlite/database.h>

namespace caprail {

/// Opens a file whose header was found to be a record's and defends the connection (defences.h). Takes back a write
/// that was cut off by a crash, also when asked to open read-only, if the folder allows it: that is no change of the
/// record.
Result<std::unique_ptr<Database>> openDefended(const std::string& path, Access access);

/// Opens as above and reads in one transaction: schema, structure (quick_check), entries with their seals into `ledger`
/// (empty before).
Result<std::unique_ptr<Database>> openChecked(const std::string& path, Access access, Ledger& ledger);

/// Runs `read` in one read transaction, so that it sees one state of the file.
Result<void> inOneState(Database& database, const std::function<Result<void>()>& read);

/// Reads what follows the last entry of `ledger`, after checking that the file still holds that very entry.
Result<void> readTail(Database& database, Ledger& ledger);

/// Refuses a file whose pages do not hang together; `pragma` is "quick_check" or the slower "integrity_check".
Result<void> verifyStructure(Database& database, const std::string& pragma);

/// Copies the whole file, as committed, over the empty file at `path`.
Result<void> backUp(Database& database, const std::string& path);

} // namespace caprail
