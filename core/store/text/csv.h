// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>

namespace caprail {

/// Makes a folder of tables for a spreadsheet: `entries.csv` with every entry, and one file per kind that occurs,
/// `<kind>.csv`, with its fields, as base/csv.h writes tables; an empty field is one that was left out. The folder
/// appears whole or not at all. Refuses one that exists, unless it is empty.
Result<void> exportCsv(const Ledger& ledger, const std::string& folder);

} // namespace caprail
