// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/ledger.h>

namespace caprail {

/// Makes a folder of tables for a spreadsheet: `entries.csv` with every entry, and one file per kind that occurs,
/// `<kind>.csv`, with its fields. RFC 4180: commas, CRLF, quotes doubled; UTF-8; an empty field is
/// one that was left out. The folder appears whole or not at all. Refuses one that exists, unless it is empty.
Result<void> exportCsv(const Ledger& ledger, const std::string& folder);

/// One field as RFC 4180 wants it (section 2, rules 5 to 7), harmless to whoever opens it: a text that a spreadsheet
/// would take for a formula gets an apostrophe in front (typed numbers such as "-0.5 thou" stay as they are), and what
/// cannot be seen is made visible (units/plain_text.h).
std::string csvField(std::string_view text);

} // namespace caprail
