// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <memory>
#include <string>
#include <base/problem.h>

namespace caprail {

/// A record or its journal, read byte by byte through SQLite's own file system layer and without SQLite making anything
/// of them: closing a file descriptor of our own would drop the locks that another connection of this process holds on
/// the record (sqlite.org/howtocorrupt.html, section 2.2). The last part of the path is never followed when it is a
/// symbolic link.
class RawFile {
public:
    enum class Which { record, journal };
    /// Opens the record at `path`, or the journal of the record at `path`. Refuses what cannot be opened. It must have
    /// been looked at before (store/beside.h): opening a pipe waits.
    static Result<RawFile> open(const std::string& path, Which which);
    RawFile(RawFile&&) noexcept;
    RawFile& operator=(RawFile&&) noexcept;
    ~RawFile();

    [[nodiscard]] Result<std::int64_t> size() const;
    /// Exactly `length` bytes from `at`; refuses when there are fewer, or the disk does not give them.
    [[nodiscard]] Result<std::string> read(std::int64_t at, std::int64_t length) const;

    /// Keeps every other program from writing to this record (from putting pages in place) until this file is closed.
    /// Refuses after three seconds when one is doing so.
    [[nodiscard]] Result<void> lockOutWriters() const;
    /// True when another connection is in the middle of a write: its journal is its own business.
    [[nodiscard]] Result<bool> isBeingWritten() const;

private:
    struct Handle;
    explicit RawFile(std::unique_ptr<Handle> handle);
    std::unique_ptr<Handle> m_handle;
};

} // namespace caprail
