// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/output_file.h>

#include <algorithm>
#include <array>
#include <climits>
#include <cstdlib>
#include <store/sqlite/database.h>
#include <store/file/raw_file.h>
#include <sys/stat.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::int64_t looked = 4096;

/// How a plain file begins, read so that it does not matter if this process has it open as a record.
Result<std::string> firstBytesOf(const std::string& path) {
    const auto file = RawFile::open(path, RawFile::Which::record);
    const auto size = file ? file->size() : tl::unexpected(file.error());
    return size ? file->read(0, std::min(*size, looked)) : tl::unexpected(size.error());
}

bool isOfSort(std::string_view bytes, OutputSort sort) {
    using namespace std::string_view_literals;
    return sort == OutputSort::sheet ? bytes.starts_with("%PDF-"sv) || bytes.starts_with("\x89PNG\r\n\x1a\n"sv)
                                     : bytes.find('\0') == std::string_view::npos && !bytes.starts_with("%PDF-"sv);
}

bool isSameFile(const struct stat& one, const std::string& other) {
    struct stat status {};
    return !other.empty() && ::stat(other.c_str(), &status) == 0 && one.st_dev == status.st_dev &&
           one.st_ino == status.st_ino;
}

} // namespace

Result<void> judgeOutputPath(const std::string& path, OutputSort sort, const std::string& record) {
    struct stat status {};
    if (::lstat(path.c_str(), &status) != 0) {
        return {}; // nothing stands there, or the folder is away, which is said when the file is made
    }
    std::array<char, PATH_MAX> real{};
    if (::stat(path.c_str(), &status) != 0 || ::realpath(path.c_str(), real.data()) == nullptr) {
        return refuse(Core::say("%1 is a link that leads nowhere: choose another name.", inQuotes(path)));
    }
    if (isSameFile(status, record)) {
        return refuse(
            Core::say("%1 is the record itself, and is not written over: choose another name.", inQuotes(path)));
    }
    // Nothing but a plain file is opened: a pipe or a device would be waited for.
    const auto first = S_ISREG(status.st_mode) ? firstBytesOf(real.data()) : Result<std::string>(refuse(""));
    if (first && isOfSort(*first, sort)) {
        return {};
    }
    return refuse(sort == OutputSort::sheet
                      ? Core::say("At %1 there is something that is neither a PDF nor a PNG, and it is not written "
                                  "over: choose another name.",
                                  inQuotes(path))
                      : Core::say("At %1 there is something that is neither a table nor a text, and it is not written "
                                  "over: choose another name.",
                                  inQuotes(path)));
}

Result<void> writeOutput(const std::string& path, OutputSort sort, bool mayReplace, const Fill& fill) {
    if (auto good = judgeOutputPath(path, sort); !good) {
        return good;
    }
    struct stat status {};
    if (!mayReplace || ::lstat(path.c_str(), &status) != 0) {
        return makeNewFile(path, fill);
    }
    std::array<char, PATH_MAX> real{};
    if (::realpath(path.c_str(), real.data()) == nullptr) {
        return refuse(Core::say("%1 is a link that leads nowhere: choose another name.", inQuotes(path)));
    }
    // Judged again when the new file is whole: it takes a while, and another may stand there now.
    return replaceFile(real.data(), [&](const std::string& unfinished) {
        auto done = fill(unfinished);
        return done ? judgeOutputPath(real.data(), sort) : done;
    });
}

Result<void> writeOutput(const std::string& path, OutputSort sort, bool mayReplace, std::string_view bytes) {
    return writeOutput(path, sort, mayReplace,
                       [&](const std::string& unfinished) { return fillWith(unfinished, bytes); });
}

} // namespace caprail
