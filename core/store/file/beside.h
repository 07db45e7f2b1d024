// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <base/problem.h>

namespace caprail {

/// Looks at what lies beside a record under the names that SQLite would take for its own: FILE-journal, FILE-wal and
/// FILE-shm. To be asked before SQLite sees the record. Three calls of lstat when nothing lies there; nothing is
/// opened that could wait, nothing is changed, no link is followed. Refused, with a sentence that says what to do:
///
/// | what | why |
/// | --- | --- |
/// | a pipe, device, socket, folder or link | SQLite opens it, and may wait for ever |
/// | any FILE-wal or FILE-shm | no record has one; SQLite would read entries from the first |
/// | a journal that names a second file at its end | a record never takes part in a transaction over several files, and
/// |   | SQLite deletes the file that is named ("The Rollback Journal", sqlite.org/fileformat2.html, from memory) |
/// | a journal more than twice as long as the record and 1 MiB | a write keeps each page of the record once |
/// | a journal of someone who could not have written the record | it would be written through us |
Result<void> lookBeside(const std::string& path);

/// The same for the writer's lock at `lock`: refuses what is there and is no plain file of at most 16 KiB, which a lock
/// never is.
Result<void> lookAtLock(const std::string& lock);

} // namespace caprail
