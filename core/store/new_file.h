// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <string>
#include <units/problem.h>

namespace caprail {

/// Makes a new file so that it appears under its name whole or not at all: `fill` is given the path of an empty file in
/// the same folder; when it succeeds, that file is synced and takes the name `path`. Refuses when `path` exists (and
/// never overwrites it, even when it appears meanwhile). After any refusal nothing is left behind.
Result<void> makeNewFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill);

/// Puts a file's or folder's content safely on the disk.
Result<void> syncToDisk(const std::string& path);
/// The folder that a path lies in.
std::string folderOf(const std::string& path);

} // namespace caprail
