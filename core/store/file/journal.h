// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <base/problem.h>

namespace caprail {

/// What the beginning of a rollback journal says: it keeps the pages of the record as they were before a write, and is
/// deleted when the write is done ("The Rollback Journal", sqlite.org/fileformat2.html, section 3, from memory).
struct JournalHeader {
    std::uint32_t pagesBefore = 0; ///< pages that the file had, and gets back
    std::uint32_t pageSize = 0;    ///< bytes
};
/// None when the bytes do not begin as a journal does: SQLite then finds nothing in it to play back.
std::optional<JournalHeader> readJournalHeader(std::string_view first28Bytes);

/// Whether these last eight bytes of a journal say that the name of another file stands before them (a super-journal).
bool namesAnotherFile(std::string_view last8Bytes);
Result<void> refuseSuperJournal(const std::string& journal);

/// The number of transactions as a database's header counts them (section 1.3.7), from the first 100 bytes; 0 when
/// there are fewer.
std::uint32_t changeCounter(std::string_view header);

/// Four bytes from `at`, the most significant first; they must be there.
std::uint32_t bigEndian(std::string_view bytes, std::size_t at);

} // namespace caprail
