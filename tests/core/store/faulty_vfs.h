// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A file system layer for SQLite that does what the real one does until told to fail: the n-th call of those that can
/// fail gives an error, once or from then on. Method: "How SQLite Is Tested", section 3.2 "I/O Error Testing"
/// (sqlite.org/testing.html, from memory).
#include <sqlite3.h>
#include <string>

namespace caprail::samples {

class FaultyVfs {
public:
    enum class Mode {
        once,      ///< one call fails, then all is well
        fromThere, ///< a stick that was pulled: nothing works any more
        diskFull   ///< writes fail with SQLITE_FULL from there on
    };
    /// Becomes SQLite's default layer for as long as it lives.
    FaultyVfs();
    ~FaultyVfs();
    FaultyVfs(const FaultyVfs&) = delete;
    FaultyVfs& operator=(const FaultyVfs&) = delete;

    /// The `n`-th call from now fails (from 1); 0: none does.
    void failAt(int n, Mode mode);
    /// Every lock fails with this code of SQLite's, as on some network folders; SQLITE_OK: locks work.
    void failLocks(int code);
    /// The file of this path gives and takes nothing any more, as a disk that was taken away; empty: none is broken.
    void breakFile(const std::string& path);
    /// Calls counted since `failAt`.
    [[nodiscard]] int calls() const;
    /// True when a failure was given since `failAt`.
    [[nodiscard]] bool hasFailed() const;
};

} // namespace caprail::samples
