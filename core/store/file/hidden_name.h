// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

namespace caprail {

/// Where something is made: its folder, and the name that it is to get there.
struct MakingPlace {
    std::string folder; ///< absolute
    std::string name;
};
/// A trailing slash is passed over: "out/" names "out".
MakingPlace makingPlace(const std::string& path);

/// Under which name this process makes it: ".NAME.PROCESS-COMPUTER.new" in the same folder. A long name is shortened so
/// that the whole still fits a directory entry.
std::string hiddenPath(const MakingPlace& place);

/// Whose leavings go.
enum class LeftBy {
    deadOrUs, ///< processes of this computer that are dead, or this one's earlier attempts
    anyone,
};
/// Removes hidden files and folders that were left beside a place by makers of the same.
void removeLeft(const MakingPlace& place, LeftBy whom);

} // namespace caprail
