// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/private_copy.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <store/file/beside.h>
#include <store/sqlite/defences.h>
#include <store/file/journal.h>
#include <store/file/raw_file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::int64_t copiedAtOnce = std::int64_t{1024} * 1024;

/// A new file that only this user may read.
class PrivateFile {
public:
    explicit PrivateFile(const std::string& path)
        : m_file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0600)) {}
    PrivateFile(const PrivateFile&) = delete;
    PrivateFile& operator=(const PrivateFile&) = delete;
    ~PrivateFile() {
        if (m_file >= 0) {
            ::close(m_file);
        }
    }
    /// False, with `errno`, when there is no room.
    [[nodiscard]] bool put(std::string_view bytes) const {
        while (m_file >= 0 && !bytes.empty()) {
            const ssize_t written = ::write(m_file, bytes.data(), bytes.size());
            if (written < 0 && errno != EINTR) {
                return false;
            }
            bytes.remove_prefix(static_cast<std::size_t>(std::max<ssize_t>(written, 0)));
        }
        return m_file >= 0;
    }

private:
    int m_file;
};

Result<void> noRoom(const std::string& path) {
    return refuse(
        Core::say("There is no room for a private copy of %1 to look at: %2.", inQuotes(path), std::strerror(errno)));
}

Result<void> copyAll(const RawFile& file, const std::string& to, const std::string& shownAs) {
    const auto size = file.size();
    if (!size) {
        return tl::unexpected(size.error());
    }
    const PrivateFile out(to);
    if (!out.put({})) {
        return noRoom(shownAs);
    }
    for (std::int64_t at = 0; at < *size; at += copiedAtOnce) {
        const auto bytes = file.read(at, std::min(copiedAtOnce, *size - at));
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        if (!out.put(*bytes)) {
            return noRoom(shownAs);
        }
    }
    return {};
}

bool isThere(const std::string& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0;
}

} // namespace

PrivateCopy::PrivateCopy(std::string path) : m_path(std::move(path)), m_folder(std::make_unique<QTemporaryDir>()) {}
PrivateCopy::PrivateCopy(PrivateCopy&&) noexcept = default;
PrivateCopy& PrivateCopy::operator=(PrivateCopy&&) noexcept = default;
PrivateCopy::~PrivateCopy() = default;

std::string PrivateCopy::asFound() const {
    return m_folder->filePath(QStringLiteral("found")).toStdString();
}
std::string PrivateCopy::journal() const {
    return m_folder->filePath(QStringLiteral("journal")).toStdString();
}

Result<PrivateCopy> PrivateCopy::of(const std::string& path) {
    if (auto good = lookBeside(path); !good) {
        return tl::unexpected(good.error());
    }
    PrivateCopy copy(path);
    if (!copy.m_folder->isValid()) {
        return tl::unexpected(noRoom(path).error());
    }
    if (auto filled = copy.fill(); !filled) {
        return tl::unexpected(filled.error());
    }
    return copy;
}

Result<void> PrivateCopy::fill() {
    const auto record = RawFile::open(m_path, RawFile::Which::record);
    if (!record) {
        return tl::unexpected(record.error());
    }
    if (auto locked = record->lockOutWriters(); !locked) {
        return locked;
    }
    const auto isBeingWritten = record->isBeingWritten();
    if (!isBeingWritten) {
        return tl::unexpected(isBeingWritten.error());
    }
    if (auto copied = copyAll(*record, asFound(), m_path); !copied || *isBeingWritten) {
        return copied;
    }
    // Without the journal, or when another program has taken the write back meanwhile, there is nothing to play back.
    const auto found = RawFile::open(m_path, RawFile::Which::journal);
    if (!found) {
        return isThere(m_path + "-journal") ? tl::unexpected(found.error()) : Result<void>();
    }
    const auto size = found->size();
    if (!size || *size == 0) {
        return size ? Result<void>() : tl::unexpected(size.error());
    }
    const auto end = found->read(std::max<std::int64_t>(0, *size - 8), std::min<std::int64_t>(8, *size));
    if (!end) {
        return tl::unexpected(end.error());
    }
    if (namesAnotherFile(*end)) {
        return refuseSuperJournal(m_path + "-journal");
    }
    m_isCutOff = true;
    return copyAll(*found, journal(), m_path);
}

Result<std::string> PrivateCopy::playedBack() {
    const std::string path = m_folder->filePath(QStringLiteral("record")).toStdString();
    if (m_isPlayedBack) {
        return path;
    }
    const auto copied = [](const std::string& from, const std::string& to) {
        return QFile::copy(QString::fromStdString(from), QString::fromStdString(to));
    };
    // SQLite plays a journal back when the first table is read, and deletes it: it gets one to delete.
    if (!copied(asFound(), path) || (m_isCutOff && !copied(journal(), path + "-journal"))) {
        return tl::unexpected(noRoom(m_path).error());
    }
    if (const auto database = Database::open(path, Access::ownFile, m_path); database && defend(**database)) {
        // Where it cannot be read even so, whoever reads the copy will find that.
        (void)(*database)->integer("SELECT count(*) FROM sqlite_schema");
    }
    m_isPlayedBack = true;
    return path;
}

} // namespace caprail
