// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <string>
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
    WriterLock(WriterLock&&) noexcept;
    WriterLock& operator=(WriterLock&&) noexcept;
    ~WriterLock();

private:
    explicit WriterLock(std::unique_ptr<QLockFile> lock);
    std::unique_ptr<QLockFile> m_lock;
};

/// The lock's file for a record: ".smith.caprail.lock" in the same folder.
std::string lockPath(const std::string& path);

} // namespace caprail
