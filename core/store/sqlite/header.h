// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <string>
#include <base/problem.h>

namespace caprail {

/// The mark of a build record in the header of an SQLite file: "CpRl" in ASCII.
inline constexpr std::uint32_t applicationId = 0x4370526c;
/// The version of the tables that this program writes. Files of the versions from 1 on are read as they are, and
/// written after an upgrade (store/upgrade.h).
inline constexpr std::uint32_t schemaVersion = 3;

/// What the first 100 bytes of a file say (sqlite.org/fileformat2.html, section 1.3).
enum class FileKind { record, newerRecord, damagedRecord, notARecord };
struct HeaderFinding {
    FileKind kind = FileKind::notARecord;
    std::string sentence;      ///< why it is not a record that can be opened; empty for `record`
    std::uint32_t version = 0; ///< of a record
};

/// Looks at the header before SQLite touches the file; nothing is written. Refuses what is no readable plain file.
Result<HeaderFinding> readHeader(const std::string& path);
/// Judges the first bytes of a file of `size` bytes (`header` may be shorter than 100). `path` is for the sentence.
HeaderFinding judgeHeader(std::string_view header, std::uint64_t size, const std::string& path);

/// The one path by which a record is locked, opened and journalled, whatever links lead to it: absolute, links
/// resolved. Refuses what does not exist or is no plain file (a folder, a pipe).
Result<std::string> resolveRecord(const std::string& path);

} // namespace caprail
