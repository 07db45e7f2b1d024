// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <base/problem.h>
#include <cstdint>
#include <string>

namespace caprail {

/// Size and time of the last change of a file: another mark, other bytes.
struct FileMark {
    std::int64_t bytes = -1;
    std::int64_t seconds = 0;
    std::int64_t nanoseconds = 0;
    bool operator==(const FileMark&) const = default;
};

/// Which file a path led to when a record was opened: to notice that it was moved, deleted, replaced, made read-only or
/// unplugged while it is open, when an entry written through the open handle would go to a file that nobody finds
/// again. The numbers are the same that SQLite compares before a write (fileHasMoved in its os_unix.c, from memory).
class RecordLocation {
public:
    /// Refuses a path that leads nowhere.
    static Result<RecordLocation> of(const std::string& path);
    /// Refuses when the path leads to no file any more, or to another one.
    [[nodiscard]] Result<void> isStillThere() const;
    /// The same, and by what the file tells that somebody wrote to it. May be asked on any thread.
    [[nodiscard]] Result<FileMark> mark() const;
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    RecordLocation(std::string path, std::uint64_t device, std::uint64_t inode)
        : m_path(std::move(path)), m_device(device), m_inode(inode) {}
    std::string m_path;
    std::uint64_t m_device;
    std::uint64_t m_inode;
};

/// Refuses, with the reason, a record that may not be written: by its permissions, its folder's, or because it has a
/// second name (hard link). Permission bits are honoured for the superuser too: a record made read-only is meant to be.
Result<void> mayWrite(const std::string& path);

} // namespace caprail
