// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <base/problem.h>

namespace caprail {

/// The version of a record whose tables are older than this program's; none for a present one. Refuses what is no
/// record that can be opened. Nothing is written.
Result<std::optional<std::uint32_t>> olderVersion(const std::string& path);

/// Brings a record of an earlier version to the present one, copy first. In this order, each step only when the one
/// before succeeded:
/// 1. the writer's lock is taken, and a lock of SQLite's that keeps every other program from writing;
/// 2. the old record is read whole, with structure and all seals;
/// 3. it is saved as `keptAs` by SQLite's backup, which is then checked as `caprail check` does (not overwritten);
/// 4. a new file beside it gets the present tables and all rows with their seals, and is read whole;
/// 5. the new file takes the old one's name in one step of the file system.
/// So at every moment the name leads to a whole record of one version or the other. When any step fails, or the program
/// is killed, the original is as it was, and nothing but (after a kill) the saved copy or a hidden unfinished file lies
/// beside it; the next upgrade clears the latter away. A record of the present version is left alone, and `keptAs` is
/// then not made.
Result<void> upgradeRecord(const std::string& path, const std::string& keptAs);

} // namespace caprail
