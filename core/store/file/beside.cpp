// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/beside.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <store/sqlite/database.h>
#include <store/file/journal.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr off_t spareForJournal = off_t{1024} * 1024;
constexpr off_t largestLock = off_t{16} * 1024;

Result<void> refuseSpecial(const std::string& path) {
    return refuse(Core::say("%1 is not a plain file (it is a link, a folder, a pipe, a socket or a device), and a "
                            "record needs that name: move it away, then try again.",
                            inQuotes(path)));
}

/// The last eight bytes of a file; empty when it is shorter. Opening waits for nobody.
Result<std::string> endOf(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);
    if (file < 0) {
        return refuse(Core::say("%1 cannot be read: %2.", inQuotes(path), std::strerror(errno)));
    }
    struct stat status {};
    std::array<char, 8> bytes{};
    ssize_t length = 0;
    const bool isPlain = ::fstat(file, &status) == 0 && S_ISREG(status.st_mode);
    if (isPlain && status.st_size >= static_cast<off_t>(bytes.size())) {
        length = ::pread(file, bytes.data(), bytes.size(), status.st_size - static_cast<off_t>(bytes.size()));
    }
    const std::string why = length < 0 ? std::strerror(errno) : "";
    ::close(file);
    if (!isPlain) {
        return tl::unexpected(refuseSpecial(path).error());
    }
    return length < 0 ? Result<std::string>(refuse(Core::say("%1 cannot be read: %2.", inQuotes(path), why)))
                      : std::string(bytes.data(), static_cast<std::size_t>(length));
}

/// Whether whoever made the journal could have written the record as well.
bool mayHaveWritten(const struct stat& journal, const struct stat& record) {
    const bool isOpenToOthers = (record.st_mode & (S_IWGRP | S_IWOTH)) != 0;
    return journal.st_uid == record.st_uid || journal.st_uid == 0 || journal.st_uid == ::geteuid() || isOpenToOthers;
}

Result<void> lookAtJournal(const std::string& path, const std::string& journal, const struct stat& status) {
    struct stat record {};
    if (::stat(path.c_str(), &record) != 0) {
        return refuse(Core::say("%1 cannot be found: %2.", inQuotes(path), std::strerror(errno)));
    }
    if (!mayHaveWritten(status, record)) {
        return refuse(Core::say("%1 belongs to someone who may not write %2: move it away, then try again.",
                                inQuotes(journal), inQuotes(path)));
    }
    if (status.st_size > 2 * record.st_size + spareForJournal) {
        return refuse(Core::say("%1 is larger than the journal of a write to %2 can be: move it away, then try again.",
                                inQuotes(journal), inQuotes(path)));
    }
    const auto end = endOf(journal);
    if (!end) {
        return tl::unexpected(end.error());
    }
    return namesAnotherFile(*end) ? refuseSuperJournal(journal) : Result<void>();
}

} // namespace

Result<void> lookBeside(const std::string& path) {
    for (const char* const ending : {"-journal", "-wal", "-shm"}) {
        const std::string name = path + ending;
        struct stat status {};
        if (::lstat(name.c_str(), &status) != 0) {
            continue; // not there, or not to be reached by SQLite either
        }
        if (!S_ISREG(status.st_mode)) {
            return refuseSpecial(name);
        }
        const bool isJournal = std::strcmp(ending, "-journal") == 0;
        if (!isJournal) {
            return refuse(
                Core::say("No build record has a file such as %1: another program put it there, or the record "
                          "was open in one. Move it away, then try again.",
                          inQuotes(name)));
        }
        if (isJournal && status.st_size != 0) {
            if (auto good = lookAtJournal(path, name, status); !good) {
                return good;
            }
        }
    }
    return {};
}

Result<void> lookAtLock(const std::string& lock) {
    struct stat status {};
    if (::lstat(lock.c_str(), &status) != 0) {
        return {};
    }
    if (!S_ISREG(status.st_mode)) {
        return refuseSpecial(lock);
    }
    if (status.st_size > largestLock) {
        return refuse(
            Core::say("%1 is larger than a lock is: it was not made by this program. Move it away, then try again.",
                      inQuotes(lock)));
    }
    return {};
}

} // namespace caprail
