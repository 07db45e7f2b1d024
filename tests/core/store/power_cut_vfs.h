// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A disk in memory whose power can be cut, as a file system layer for SQLite: writes, truncations and removals reach
/// it for good only by a sync, of the file or of its folder. At the cut each write since then is kept, lost or torn at
/// a sector by chance, in any order. Method: "How SQLite Is Tested", section 3.3 "Crash Testing"
/// (sqlite.org/testing.html, from memory).
#include <map>
#include <optional>
#include <random>
#include <sqlite3.h>
#include <string>
#include <vector>

namespace caprail::samples {

class PowerCutDisk {
public:
    PowerCutDisk();
    ~PowerCutDisk();
    PowerCutDisk(const PowerCutDisk&) = delete;
    PowerCutDisk& operator=(const PowerCutDisk&) = delete;

    /// Puts a file on the disk, safely.
    void put(const std::string& path, std::string bytes);
    /// The power goes at the `n`-th call that changes something (from 1): it and all later ones fail.
    void cutAt(int n) {
        m_cutAt = n;
        m_calls = 0;
    }
    [[nodiscard]] bool isCut() const { return m_cutAt != 0 && m_calls >= m_cutAt; }
    /// What the disk holds after the cut, one of the many ways it may have gone: nothing for a file that is not there.
    std::optional<std::string> afterCut(const std::string& path, std::mt19937& chance) const;
    /// The power is back: the disk holds this and nothing else.
    void start(const std::map<std::string, std::string>& files);

    struct Change {
        sqlite3_int64 at = 0;
        std::string bytes;
        bool isTruncation = false;
    };
    struct File {
        std::string now;             ///< as programs see it
        std::string durable;         ///< as it is on the disk for certain
        std::vector<Change> pending; ///< since the last sync
        bool exists = false;         ///< as programs see it
        bool durablyExists = false;  ///< its name is in the folder for certain
    };
    /// Counts a call that changes the disk; false when the power is gone.
    bool change();
    std::map<std::string, File> files;
    sqlite3_vfs* real = nullptr;

private:
    int m_cutAt = 0;
    int m_calls = 0;
};

} // namespace caprail::samples
