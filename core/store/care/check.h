// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry.h>
#include <optional>
#include <string>
#include <vector>

namespace caprail {

/// What a file was found to be; the exit codes of `caprail check` are 0, 1, 2 and 2.
enum class CheckVerdict {
    sound,
    damagedOrAltered,
    notARecord,
    /// The check could not be finished, and nothing that was read was found damaged: the disk does not answer, another
    /// program is writing, it took too much computing, or something lies beside the file that must be moved away first.
    notFinished
};

struct CheckReport {
    CheckVerdict verdict = CheckVerdict::notARecord;
    std::vector<std::string> findings; ///< a sentence each; none when it is sound
    std::vector<std::string> remarks;  ///< a sentence each, about a file that may be sound: that a write was cut off
    std::int64_t entries = 0;          ///< that were read
    std::int64_t attachments = 0;      ///< whose bytes were read
    Seal seal;                         ///< of the last entry read
    /// When a seal was asked for: the entry that has it, 0 when none has. Short of `entries`, what follows was added
    /// after that seal was taken down.
    std::optional<std::int64_t> sealedEntry;
};

/// A seal as a person reads it off a sheet: its short form (five groups of four digits, with or without the dashes) or
/// all of it, in either case of letters. Gives the digits in small letters; refuses anything else.
Result<std::string> readShortForm(const std::string& typed);

/// Checks everything there is to a file without changing it: header, schema, pages, SQLite's integrity_check and
/// foreign_key_check, the number and seal of every entry, the hash of every attachment. Each altered entry is named by
/// itself, because a seal is checked against the one stored before it. At most 100 findings. Where a write was cut off,
/// the record is checked as it was before that write, in a private copy (store/cut_off.h), and a remark says so.
/// What it proves: that the file is as this program wrote it, or had its last entries removed, or was rewritten
/// throughout with new seals: a chain says nothing about its own end. What tells is a seal that was taken down
/// elsewhere, as on a printed sheet. Given its digits (`readShortForm`), the entry that has it is looked for; when no
/// entry has it, that is a finding, since then the file is not, and does not go on from, the ledger of that sheet.
CheckReport checkFile(const std::string& path, const std::string& sealDigits = {});

} // namespace caprail
