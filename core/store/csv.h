// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>

namespace caprail {

/// Makes a folder of tables for a spreadsheet: `entries.csv` with every entry, and one file per kind that occurs,
/// `<kind>.csv`, with its fields. RFC 4180: commas, CRLF, quotes doubled; UTF-8; an empty field is
/// one that was left out. The folder appears whole or not at all. Refuses one that exists, unless it is empty.
Result<void> exportCsv(const Ledger& ledger, const std::string& folder);

/// One field as RFC 4180 wants it (section 2, rules 5 to 7).
std::string csvField(std::string_view text);

} // namespace caprail
