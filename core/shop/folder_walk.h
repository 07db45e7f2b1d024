// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <functional>
#include <stop_token>
#include <string>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// A file as its folder shows it. Paths are bytes as the system has them: they need not be UTF-8. What differs in any
/// of the numbers is another file or another state of it; the numbers are only compared for equality, so a wrong clock
/// does no harm.
struct FoundFile {
    std::string path; ///< below the root, without a leading slash
    std::int64_t size = 0;
    std::int64_t modified = 0; ///< nanoseconds since 1970-01-01, as the file system says
    std::int64_t changed = 0;  ///< of its status, likewise; no program can set it
    std::int64_t inode = 0;
    friend bool operator==(const FoundFile&, const FoundFile&) = default;
};

/// A folder below the root that could not be read; what is known of its files stays known.
struct UnreadFolder {
    std::string path; ///< below the root
    std::string sentence;
};

struct FolderWalk {
    std::vector<FoundFile> files;     ///< sorted by path
    std::vector<std::string> folders; ///< that were read, the root as "" first
    std::vector<UnreadFolder> unread;
    bool isWhole = true; ///< false: it was stopped
};

/// Finds the files that end in ".caprail" (in any letter case) in a folder and the folders in it. Names that begin with
/// a dot are passed over, links to folders are not followed. `progress` is told the count of files found so far.
/// Refuses, with a sentence that names it, a root that cannot be read.
Result<FolderWalk> walkFolder(const std::string& root, const std::stop_token& stop = {},
                              const std::function<void(std::size_t)>& progress = {});

/// The records that a person means by a file or a folder.
struct RecordsAt {
    std::vector<std::string> paths; ///< of a folder: of the folders in it too, in order
    bool isFolder = false;
    std::vector<UnreadFolder> unread; ///< whose records are not among them: to be said
};
/// Refuses a folder that cannot be read, and one without a record. A file is not looked at.
Result<RecordsAt> recordsAt(const std::string& fileOrFolder, const std::stop_token& stop = {});

/// One file's present numbers; refuses when it cannot be looked at.
Result<FoundFile> lookAt(const std::string& root, const std::string& path);

/// A name or path as one line of plain text, as `visibly` (base/plain_text.h) shows it. Never empty for a name that is
/// not empty.
std::string plainLine(std::string_view bytes);

} // namespace caprail
