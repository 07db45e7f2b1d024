// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <base/problem.h>

class QLockFile;

namespace caprail {

/// The right to write to a record, held by one program at a time as a small file `.<name>.lock` beside it, which says
/// who holds it. What a program leaves behind when it dies is taken over by the next one on that computer.
class WriterLock {
public:
    /// Takes the lock for a resolved path; refuses with a sentence that says who has the record open, or why it may
    /// not be written: its permissions, its folder's, a second name (hard link) of the file, or something under the
    /// lock's name that is no lock (a pipe, a link, a huge file), which is not opened.
    static Result<WriterLock> take(const std::string& path);
    /// Whether it is this program's still: a person may have had another one take it over meanwhile (`takeLockOver`).
    [[nodiscard]] bool isHeld() const;
    WriterLock(WriterLock&&) noexcept;
    WriterLock& operator=(WriterLock&&) noexcept;
    ~WriterLock();

private:
    WriterLock(std::unique_ptr<QLockFile> lock, std::string file);
    std::unique_ptr<QLockFile> m_lock;
    std::string m_file;
    std::pair<std::uint64_t, std::uint64_t> m_identity; ///< of the lock's file: number and time
};

/// Whether a program holds the right to write to a record.
bool isLockHeld(const std::string& path);
/// Takes that right away from whoever holds it, because a person says so: the next `take` gets it, and the other program
/// finds out with its next entry, which it refuses. Refuses where something else than a lock lies there, or it cannot be
/// removed.
Result<void> takeLockOver(const std::string& path);

/// The lock's file for a record: ".smith.caprail.lock" in the same folder.
std::string lockPath(const std::string& path);

} // namespace caprail
