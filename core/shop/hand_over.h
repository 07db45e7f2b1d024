// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <ledger/history_line.h>
#include <store/file/record_file.h>

namespace caprail {

struct HandOverOptions {
    Units units;
    bool withTables = false; ///< entries and results as CSV tables too (shop/table_export.h)
    /// Writes the build sheet into a new file; the window's and the command line's part, because it needs painting.
    std::function<Result<void>(const std::string& pdfPath)> writeSheet;
};

/// Makes the folder that a customer gets: `README.txt` (what each file is, how to check the seal without this program, and
/// at its head whether the build is unfinished), `build-sheet.pdf`, `history.txt` (every entry in one line, struck ones
/// marked), `ledger.jsonl` (the same for another program, with seals), `photos/` with every attachment under a safe
/// name, `tables/` where asked, `signature/` where one holds (statement, key and signature, as other programs take them), and `SHA256SUMS`, which `sha256sum -c` accepts. The folder appears whole or not at all.
/// Refuses one that exists, unless it is empty; an attachment that is missing or damaged; and what cannot be written.
Result<void> handOver(const RecordFile& record, const std::string& folder, const HandOverOptions& options);

/// The ledger for people: one line per entry with number, time (UTC), person and what was done.
std::string historyText(const Ledger& ledger, const Units& units);

} // namespace caprail
