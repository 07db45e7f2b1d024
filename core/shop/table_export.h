// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>

namespace caprail {

struct TableOptions {
    /// Each file begins with a byte-order mark, by which some spreadsheets know that it is UTF-8.
    bool withByteOrderMark = false;
};

/// Makes a folder of tables for a spreadsheet (base/csv.h): `entries.csv` and one file per kind of entry that occurs,
/// one file per table of results (result_tables.h), and `dictionary.csv`, which tells every column of all of them: its
/// table, unit and meaning. The folder appears whole or not at all. Refuses one that exists, unless it is empty.
///
/// How a text cell is read back: where it begins with an apostrophe, that one is dropped. It stands before what a
/// spreadsheet would take for a formula, and before a text that begins with an apostrophe itself.
Result<void> exportTables(const Ledger& ledger, const Facts& facts, const Assessment& assessment,
                          const std::string& folder, const TableOptions& options = {});

} // namespace caprail
