// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>

namespace caprail {

/// Writes tables for a spreadsheet into a folder (made if need be): `entries.csv` with every entry, and one file per
/// kind that occurs, `<kind>.csv`, with its fields, as base/csv.h writes tables. An empty field is one that was left
/// out. Refuses, before anything is written, when one of the files exists already.
Result<void> exportCsv(const Ledger& ledger, const std::string& folder);

} // namespace caprail
