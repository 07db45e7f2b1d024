// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <string>
#include <base/problem.h>

namespace caprail {

/// Makes a new file so that it appears under its name whole or not at all: `fill` is given the path of an empty file in
/// the same folder; when it succeeds, that file is synced and takes the name `path`. Refuses when `path` exists (and
/// never overwrites it, even when it appears meanwhile). After any refusal nothing is left behind.
Result<void> makeNewFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill);

/// Replaces the file at `path` in one step: `fill` is given an empty file in the same folder; when it succeeds, that
/// file is synced, gets the permissions of the old one, and takes its name, which at every moment leads to one of the
/// two, whole. After any refusal the old file is as it was and nothing else is left. Whoever has the old file open
/// keeps it.
Result<void> replaceFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill);

/// Removes the hidden files that killed programs left beside `path` when they had begun to make it with one of the
/// above. Only for one who holds the writer's lock of `path`: nobody else is making it then.
void removeUnfinished(const std::string& path);

/// Puts a file's or folder's content safely on the disk.
Result<void> syncToDisk(const std::string& path);
/// The folder that a path lies in.
std::string folderOf(const std::string& path);

} // namespace caprail
