// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <store/file/new_file.h>

namespace caprail {

/// What a file that the program writes out is, and what it may therefore replace.
enum class OutputSort {
    sheet, ///< PDF or PNG, told by its first bytes
    text,  ///< a table or a text: no file that begins with other bytes, as every record does
};

/// Whether an output may be written at `path`, which is said not to be free of other files: refuses a record (the one
/// at `record` by its device and inode, through whatever link), everything that is no file of that sort, a folder, a
/// pipe, a device, and a link that leads nowhere. A place where nothing stands is good.
Result<void> judgeOutputPath(const std::string& path, OutputSort sort, const std::string& record = {});

/// Writes an output: makes the file, or, where one stands and the person said that it `mayReplace`, replaces that one
/// (a link stays, and what it leads to is replaced). Refuses what `judgeOutputPath` refuses, and to replace otherwise.
Result<void> writeOutput(const std::string& path, OutputSort sort, bool mayReplace, const Fill& fill);
Result<void> writeOutput(const std::string& path, OutputSort sort, bool mayReplace, std::string_view bytes);

} // namespace caprail
