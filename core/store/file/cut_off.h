// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <store/sqlite/database.h>

namespace caprail {

/// Records beside which the journal of a write lies that a crash or a kill cut off. What the journal gives is found out
/// in a private copy (private_copy.h), and believed when it is this record's own: pages of the same size; not more of
/// them than the file has; the header counts the same transactions as the file as found, or one less; and, where the
/// file as found is sound by itself, what comes out is sound too and the beginning of the same ledger. Any other is the
/// journal of a write to another file, as when a copy was put in the place of a record whose write was cut off; it is
/// refused with a sentence that says what to do, and nothing is changed.

/// Opens the private copy to read, as the record was before that write. Not a byte of record or journal changes, and
/// the copy is gone by name when this returns. Where the write was taken back meanwhile, it is the record that is
/// opened. `code` is SQLite's for a refusal, SQLITE_READONLY_ROLLBACK when the journal is not taken.
Result<std::unique_ptr<Database>> openBeforeCutOff(const std::string& path, int& sqliteCode);

/// Plays the journal back on the record and opens it to write. For one who holds the writer's lock. Refuses, beside a
/// foreign journal, when what comes out is not sound. Where a byte of the record changes by it, both files as found are
/// kept beside it first: "smith 2026-05-04 cut off.caprail-backup" and the same with "-journal", dated by the day on
/// which the write was cut off.
Result<std::unique_ptr<Database>> takeCutOffBack(const std::string& path, int& sqliteCode);

} // namespace caprail
