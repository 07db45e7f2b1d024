// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <chrono>
#include <cstdint>
#include <store/sqlite/database.h>

namespace caprail {

/// Stops a connection's statements once they have computed for too long: for reading files that someone else made.
/// What counts is the time that this thread itself computed (CLOCK_THREAD_CPUTIME_ID), so a slow disk, a stopped
/// program or a busy computer stops nothing. While it lives, SQLite asks it every some thousand steps
/// (sqlite.org/c3ref/progress_handler.html, from memory); a statement that is stopped is refused with a sentence that
/// says that reading was not finished. Once pages were found to hang together (quick_check), reading takes no longer
/// than the file is long; so a guard allows 5 s, and for large files as long as their size needs. Made and asked in one
/// thread.
class TimeGuard {
public:
    TimeGuard(Database& database, std::chrono::milliseconds allowed);
    TimeGuard(const TimeGuard&) = delete;
    TimeGuard& operator=(const TimeGuard&) = delete;
    ~TimeGuard();

    /// 5 s, and one more for each 20 MiB beyond 100 MiB.
    static std::chrono::milliseconds allowedFor(std::int64_t fileSize);

private:
    Database& m_database;
    std::chrono::nanoseconds m_end; ///< of this thread's computing time
};

} // namespace caprail
