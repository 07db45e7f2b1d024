// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The one way in which files and folders are made: under a hidden name beside the place, complete, synced, and then
/// put in their place by one rename that never overwrites. Paths are bytes, whatever text they are or are not.
#include <functional>
#include <store/file/file_mode.h>
#include <string>
#include <string_view>
#include <base/problem.h>

namespace caprail {

/// Fills what is being made; it is given the path of an empty file or folder. What it refuses is refused with its own
/// sentence, in which the path asked for stands in the place of the hidden one.
using Fill = std::function<Result<void>(const std::string& unfinished)>;

/// Makes a new file so that it appears under its name whole or not at all: `fill` is given the path of an empty file in
/// the same folder; when it succeeds, that file is synced and takes the name `path`. Refuses when `path` exists (and
/// never overwrites it, even when it appears meanwhile). After any refusal nothing is left behind; what a killed
/// program leaves is removed by the next one that makes the same. Who may use it is said in store/file_mode.h.
Result<void> makeNewFile(const std::string& path, const Fill& fill);
/// The same for a file that holds `bytes`.
Result<void> makeNewFile(const std::string& path, std::string_view bytes);
/// The same for a copy: it gets mode and group of the file at `existing`.
Result<void> makeNewFileLike(const std::string& existing, const std::string& path, const Fill& fill);
Result<void> makeNewFileLike(const FileMode& mode, const std::string& path, const Fill& fill);

/// Makes a new folder likewise: `fill` fills an empty hidden one, everything in it is synced, and it takes its name in
/// one step. Folders above it are made if need be. Refuses when `path` exists, unless it is an empty folder.
Result<void> makeNewFolder(const std::string& path, const Fill& fill);
/// Writes a new file into a folder that `makeNewFolder` is making, which will sync it. Refuses when it exists.
Result<void> writeInside(const std::string& path, std::string_view bytes);

/// Replaces the file at `path` in one step: `fill` is given an empty file in the same folder; when it succeeds, that
/// file is synced, gets mode and group of the old one, and takes its name, which at every moment leads to one of the
/// two, whole. After any refusal the old file is as it was and nothing else is left. Whoever has the old file open
/// keeps it.
Result<void> replaceFile(const std::string& path, const Fill& fill);
/// Fills the file that a `Fill` was given with `bytes`; refuses with what the disk says.
Result<void> fillWith(const std::string& unfinished, std::string_view bytes);
/// Adds to the end of it instead.
Result<void> addTo(const std::string& unfinished, std::string_view bytes);

/// Gives a file a name that is free, in one step and never over another file; refuses when it is taken.
Result<void> moveToNewName(const std::string& from, const std::string& to);

/// Removes the hidden files that killed programs, of whatever computer, left beside `path` when they had begun to make
/// it with one of the above. Only for one who holds the writer's lock of `path`: nobody else is making it then.
void removeUnfinished(const std::string& path);

/// Puts a file's or folder's content safely on the disk.
Result<void> syncToDisk(const std::string& path);
/// The folder that a path lies in, absolute; links in it are left as they are.
std::string folderOf(const std::string& path);

} // namespace caprail
