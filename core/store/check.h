// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <string>
#include <vector>

namespace caprail {

/// What a file was found to be. The values are the exit codes of `caprail check`.
enum class CheckVerdict { sound = 0, damagedOrAltered = 1, notARecord = 2 };

struct CheckReport {
    CheckVerdict verdict = CheckVerdict::notARecord;
    std::vector<std::string> findings; ///< a sentence each; none when it is sound
    std::int64_t entries = 0;          ///< that were read
    std::int64_t attachments = 0;      ///< whose bytes were read
    Seal seal;                         ///< of the last entry read
};

/// Checks everything there is to a file without changing it: header, schema, SQLite's integrity_check and
/// foreign_key_check, the number and seal of every entry, the hash of every attachment. Each altered entry is named by
/// itself, because a seal is checked against the one stored before it. At most 100 findings.
/// What it proves: that the file is as this program wrote it, or was rewritten throughout with new seals. Compare the
/// seal's short form with the one on a printed sheet to know that it is the same ledger.
CheckReport checkFile(const std::string& path);

} // namespace caprail
