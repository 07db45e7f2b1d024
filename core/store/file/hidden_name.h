// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

namespace caprail {

/// Where something is made: its folder, and the name that it is to get there.
struct OutputLocation {
    std::string folder; ///< absolute
    std::string name;
};
/// A trailing slash is passed over: "out/" names "out".
OutputLocation outputLocation(const std::string& path);

/// Under which name this process makes it: ".NAME.PROCESS-COMPUTER.new" in the same folder. A long name is shortened so
/// that the whole still fits a directory entry.
std::string hiddenPath(const OutputLocation& location);

/// Whose leavings go.
enum class LeftBy {
    deadOrUs, ///< processes of this computer that are dead, or this one's earlier attempts
    anyone,
};
/// Removes hidden files and folders that were left beside a place by makers of the same.
void removeLeft(const OutputLocation& location, LeftBy whom);

} // namespace caprail
