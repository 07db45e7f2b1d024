// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <store/database.h>

namespace caprail {

/// Bytes that one attachment may have. A phone's photo has a tenth of it.
inline constexpr std::int64_t largestAttachment = 60LL * 1024 * 1024;
/// Bytes that one text of an entry may have: a page of notes has a hundredth of it.
inline constexpr std::size_t largestText = 256UL * 1024;
/// Bytes that the entries of one record may take in memory: a hundred times a long build.
inline constexpr std::size_t largestLedger = 320UL * 1024 * 1024;

/// Makes a fresh connection safe for a file that someone else made. The settings are those that SQLite recommends for
/// untrusted files ("Defense Against The Dark Arts", sqlite.org/security.html, read from memory); each stands with its
/// reason in defences.cpp.
Result<void> defend(Database&);
/// The further settings of a connection that appends: rollback journal (no write-ahead file is left beside the record)
/// and the strongest durability.
Result<void> prepareForWriting(Database&);

} // namespace caprail
