// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/hidden_name.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <filesystem>
#include <ledger/entry.h>
#include <string_view>
#include <unistd.h>
#include <vector>

namespace caprail {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view ending = ".new";
constexpr std::string_view journalEnding = ".new-journal";
constexpr std::size_t longestKept = 180; ///< bytes; with the rest it stays below the 255 of a directory entry

/// A few digits that tell computers apart which share a folder: a process number means nothing on another one.
const std::string& thisComputer() {
    static const std::string tag = [] {
        std::array<char, 256> name{};
        (void)::gethostname(name.data(), name.size() - 1);
        return sha256Hex(name.data()).substr(0, 6);
    }();
    return tag;
}

std::string hiddenBeginning(const OutputLocation& location) {
    const bool isLong = location.name.size() > longestKept;
    return "." +
           (isLong ? location.name.substr(0, longestKept) + "~" + sha256Hex(location.name).substr(0, 12)
                   : location.name) +
           ".";
}

/// The file that a process runs; empty when it is dead (also when nobody has collected it yet).
std::string programOf(pid_t process, bool& mayTell) {
    std::array<char, 4096> program{};
    const auto length =
        ::readlink(("/proc/" + std::to_string(process) + "/exe").c_str(), program.data(), program.size() - 1);
    mayTell = length >= 0 || errno == ENOENT;
    std::string path(program.data(), length < 0 ? 0 : static_cast<std::size_t>(length));
    constexpr std::string_view deleted = " (deleted)"; // said by the kernel of a program that was updated meanwhile
    if (path.ends_with(deleted)) {
        path.erase(path.size() - deleted.size());
    }
    return path.substr(path.rfind('/') + 1);
}

/// False when the process that made a hidden file is dead, or its number went to another program since.
bool isAtWork(pid_t process) {
    if (::kill(process, 0) != 0 && errno == ESRCH) {
        return false;
    }
    bool mayTell = false;
    bool mayTellOwn = false;
    const std::string program = programOf(process, mayTell);
    return !mayTell || program == programOf(::getpid(), mayTellOwn);
}

/// Whether a name is one that a maker of the place hides under, and that maker is one of those meant.
bool isLeft(std::string_view name, std::string_view begins, LeftBy whom) {
    for (const std::string_view end : {ending, journalEnding}) {
        if (!name.starts_with(begins) || !name.ends_with(end) || name.size() <= begins.size() + end.size()) {
            continue;
        }
        const std::string_view maker = name.substr(begins.size(), name.size() - begins.size() - end.size());
        pid_t process = 0;
        const auto [rest, error] = std::from_chars(maker.data(), maker.data() + maker.size(), process);
        if (error != std::errc() || process <= 0) {
            continue;
        }
        const std::string_view computer(rest, static_cast<std::size_t>(maker.data() + maker.size() - rest));
        const bool isHere = computer == "-" + thisComputer();
        const bool isTagged = computer.size() == 7 && computer[0] == '-' &&
                              computer.substr(1).find_first_not_of("0123456789abcdef") == std::string_view::npos;
        if (isTagged && (whom == LeftBy::anyone || (isHere && (process == ::getpid() || !isAtWork(process))))) {
            return true;
        }
    }
    return false;
}

} // namespace

OutputLocation outputLocation(const std::string& path) {
    std::error_code error;
    fs::path whole = fs::absolute(path, error);
    if (!whole.has_filename()) {
        whole = whole.parent_path();
    }
    return {whole.parent_path().string(), whole.filename().string()};
}

std::string hiddenPath(const OutputLocation& location) {
    return location.folder + (location.folder.ends_with('/') ? "" : "/") + hiddenBeginning(location) +
           std::to_string(::getpid()) + "-" + thisComputer() + std::string(ending);
}

void removeLeft(const OutputLocation& location, LeftBy whom) {
    const std::string begins = hiddenBeginning(location);
    std::error_code error;
    std::vector<fs::path> left;
    for (fs::directory_iterator entry(location.folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        if (isLeft(entry->path().filename().string(), begins, whom)) {
            left.push_back(entry->path());
        }
    }
    for (const fs::path& one : left) {
        fs::remove_all(one, error); // follows no link
    }
}

} // namespace caprail
