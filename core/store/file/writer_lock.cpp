// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/writer_lock.h>

#include <QFile>
#include <QLockFile>
#include <base/say.h>
#include <chrono>
#include <store/file/beside.h>
#include <store/file/hidden_name.h>
#include <store/file/record_location.h>
#include <store/sqlite/database.h>
#include <sys/stat.h>
#include <thread>

namespace caprail {

std::string lockPath(const std::string& path) {
    const OutputLocation location = outputLocation(path);
    return location.folder + "/." + location.name + ".lock";
}

Result<WriterLock> WriterLock::take(const std::string& path) {
    if (auto allowed = mayWrite(path); !allowed) {
        return tl::unexpected(allowed.error());
    }
    if (!isPlainUtf8(path)) {
        // The lock's name would be another one than the file's.
        return refuse(
            Core::say("%1 can only be read: its name or its folder's holds bytes that are not text (not UTF-8). Rename "
                      "it to write to it.",
                      inQuotes(path)));
    }
    if (auto plain = lookAtLock(lockPath(path)); !plain) { // QLockFile opens and reads whatever lies there
        return tl::unexpected(plain.error());
    }
    auto lock = std::make_unique<QLockFile>(QString::fromStdString(lockPath(path)));
    lock->setStaleLockTime(0); // never by age: a build goes on for hours. A dead holder is known by its process.
    qint64 process = 0;
    QString host;
    QString program;
    // A lock names its holder within microseconds of being made. One that goes on naming nobody was left by a program
    // that was killed in between, and nobody holds it.
    constexpr int looks = 5;
    for (int look = 0; look <= looks; ++look) {
        if (lock->tryLock(0)) {
            return WriterLock(std::move(lock), lockPath(path));
        }
        if (lock->error() != QLockFile::LockFailedError || lock->getLockInfo(&process, &host, &program)) {
            break;
        }
        if (look + 1 == looks) {
            QFile::remove(QString::fromStdString(lockPath(path)));
        } else {
            std::this_thread::sleep_for(std::chrono::milliseconds(40));
        }
    }
    if (lock->error() == QLockFile::LockFailedError && lock->getLockInfo(&process, &host, &program)) {
        return refuse(Core::say("%1 is open in %2 (process %3 on %4): it can be read here, and written when it is "
                                "closed there. If that computer is off, remove %5.",
                                inQuotes(path), inQuotes(program.toStdString()), process, host.toStdString(),
                                inQuotes(lockPath(path))));
    }
    return refuse(
        Core::say("%1 can only be read: its lock %2 cannot be taken. Check the folder, or save a copy elsewhere.",
                  inQuotes(path), inQuotes(lockPath(path))));
}

namespace {

std::pair<std::uint64_t, std::uint64_t> identityOf(const std::string& file) {
    struct stat seen {};
    if (::lstat(file.c_str(), &seen) != 0) {
        return {};
    }
    // A file system gives the number of a removed file to the next one: its time tells them apart.
    constexpr std::uint64_t nanoseconds = 1'000'000'000;
    return {seen.st_ino, static_cast<std::uint64_t>(seen.st_mtim.tv_sec) * nanoseconds +
                             static_cast<std::uint64_t>(seen.st_mtim.tv_nsec)};
}

} // namespace

WriterLock::WriterLock(std::unique_ptr<QLockFile> lock, std::string file)
    : m_lock(std::move(lock)), m_file(std::move(file)), m_identity(identityOf(m_file)) {}
WriterLock::WriterLock(WriterLock&&) noexcept = default;
WriterLock& WriterLock::operator=(WriterLock&&) noexcept = default;

WriterLock::~WriterLock() {
    if (m_lock && !isHeld()) {
        // QLockFile removes a file by its name when it goes: that would be the lock of whoever took the record over.
        static_cast<void>(m_lock.release());
    }
}

bool WriterLock::isHeld() const {
    // A lock that somebody removed by hand is nobody else's.
    const auto now = identityOf(m_file);
    return now == m_identity || now == std::pair<std::uint64_t, std::uint64_t>();
}

bool isLockHeld(const std::string& path) {
    return identityOf(lockPath(path)) != std::pair<std::uint64_t, std::uint64_t>();
}

Result<void> takeLockOver(const std::string& path) {
    const std::string file = lockPath(path);
    if (auto plain = lookAtLock(file); !plain) {
        return plain;
    }
    if (isLockHeld(path) && !QFile::remove(QString::fromStdString(file))) {
        return refuse(Core::say("%1 cannot be taken over: its lock %2 cannot be removed. Check the folder's permissions.",
                                inQuotes(path), inQuotes(file)));
    }
    return {};
}

} // namespace caprail
