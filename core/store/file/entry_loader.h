// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>
#include <store/sqlite/database.h>
#include <store/file/entry_rows.h>

namespace caprail {

/// Appends to `ledger` all entries of the file that follow its last one, and checks that numbers follow and that each
/// seal fits. Rows are stepped through once; their seals are checked on other cores meanwhile, which works because a
/// seal needs only the text of its own entry and the seal stored before it.
Result<void> readEntries(Database& database, Ledger& ledger);

/// Checks the seal of one row against the one stored before it, over the very cells of the table, and turns it into an
/// entry.
Result<Entry> verifiedEntry(const EntryRow& row, const Seal& before);

} // namespace caprail
