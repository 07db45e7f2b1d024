// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/header.h>

#include <QFileInfo>
#include <algorithm>
#include <array>
#include <cstddef>
#include <memory>
#include <sqlite3.h>
#include <store/sqlite/database.h>
#include <base/say.h>
#include <vector>

namespace caprail {

namespace {

constexpr std::size_t headerSize = 100;

std::uint32_t bigEndian(std::string_view bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        value = value << 8 | static_cast<unsigned char>(bytes[at + i]);
    }
    return value;
}

} // namespace

HeaderFinding judgeHeader(std::string_view header, std::uint64_t size, const std::string& path) {
    const std::string file = inQuotes(path);
    constexpr std::string_view magic("SQLite format 3\0", 16);
    if (header.empty()) {
        return {FileKind::notARecord, Core::say("%1 is empty: it is no build record.", file), 0};
    }
    if (header.size() < headerSize) {
        const bool begins = header.size() >= magic.size() && header.starts_with(magic);
        return {begins ? FileKind::damagedRecord : FileKind::notARecord,
                begins ? Core::say("%1 breaks off within its first 100 bytes: look for a copy of it.", file)
                       : Core::say("%1 is no build record: choose a file that ends in .caprail.", file),
                0};
    }
    const bool ours = bigEndian(header, 68) == applicationId;
    if (!header.starts_with(magic)) {
        return {ours ? FileKind::damagedRecord : FileKind::notARecord,
                ours ? Core::say("%1 is damaged in its first bytes: salvage what can be read into a new file.", file)
                     : Core::say("%1 is no build record: choose a file that ends in .caprail.", file),
                0};
    }
    if (!ours) {
        return {
            FileKind::notARecord,
            Core::say("%1 is a database of another program, not a build record: choose a file that ends in .caprail.",
                      file),
            0};
    }
    const std::uint32_t version = bigEndian(header, 60);
    if (version > schemaVersion && version < 10'000) {
        return {FileKind::newerRecord,
                Core::say("%1 was written by a newer version of this program (its tables are of version %2, this "
                          "program knows up to %3): open it with that one; it was not touched.",
                          file, version, schemaVersion),
                version};
    }
    const auto damaged = [&](const std::string& what) {
        return HeaderFinding{FileKind::damagedRecord,
                             Core::say("%1 is damaged: %2. Salvage what can be read into a new file.", file, what), 0};
    };
    if (version == 0 || version > schemaVersion) {
        return damaged(Core::say("its version number is %1", version));
    }
    if (header[18] == 2 || header[19] == 2) {
        return damaged(
            Core::say("it was switched to write-ahead mode, which leaves parts of a record beside the file"));
    }
    // SQLite would still read a file whose write version it does not know, and never write to it.
    if (header[18] != 1 || header[19] != 1) {
        return damaged(Core::say("its file format is %1/%2, that of a record is 1/1",
                                 static_cast<unsigned char>(header[18]), static_cast<unsigned char>(header[19])));
    }
    const std::uint32_t rawSize = static_cast<std::uint32_t>(static_cast<unsigned char>(header[16])) << 8 |
                                  static_cast<unsigned char>(header[17]);
    const std::uint64_t pageSize = rawSize == 1 ? 65'536 : rawSize;
    if (pageSize < 512 || (pageSize & (pageSize - 1)) != 0) {
        return damaged(Core::say("its page size is %1", pageSize));
    }
    if (size < pageSize) {
        return damaged(Core::say("it breaks off within its first page"));
    }
    return {FileKind::record, {}, version};
}

Result<HeaderFinding> readHeader(const std::string& path) {
    // Read through SQLite's own file system layer: closing a file descriptor of our own would drop the locks that
    // another connection of this process holds on the file (sqlite.org/howtocorrupt.html, section 2.2).
    sqlite3_vfs* const vfs = sqlite3_vfs_find(nullptr);
    const std::unique_ptr<const char, void (*)(const char*)> name(
        sqlite3_create_filename(path.c_str(), (path + "-journal").c_str(), (path + "-wal").c_str(), 0, nullptr),
        [](const char* text) { sqlite3_free_filename(const_cast<char*>(text)); });
    if (!name) {
        return refuse(sentenceFor(SQLITE_NOMEM, path, {}));
    }
    std::vector<std::max_align_t> room(static_cast<std::size_t>(vfs->szOsFile) / sizeof(std::max_align_t) + 1);
    auto* const file = reinterpret_cast<sqlite3_file*>(room.data());
    int code =
        vfs->xOpen(vfs, name.get(), file, SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_NOFOLLOW, nullptr);
    std::array<char, headerSize> bytes{};
    sqlite3_int64 size = 0;
    if (code == SQLITE_OK) {
        code = file->pMethods->xFileSize(file, &size);
        if (code == SQLITE_OK && size > 0) {
            code = file->pMethods->xRead(file, bytes.data(), static_cast<int>(headerSize), 0);
        }
    }
    if (file->pMethods != nullptr) {
        file->pMethods->xClose(file);
    }
    if (code != SQLITE_OK && code != SQLITE_IOERR_SHORT_READ) {
        return refuse(sentenceFor(code, path, sqlite3_errstr(code)));
    }
    const auto length = std::min(static_cast<std::uint64_t>(size), std::uint64_t{headerSize});
    return judgeHeader({bytes.data(), static_cast<std::size_t>(length)}, static_cast<std::uint64_t>(size), path);
}

Result<std::string> resolveRecord(const std::string& path) {
    const QFileInfo info(QString::fromStdString(path));
    if (!info.exists()) {
        return refuse(Core::say("There is no file %1: check its name and folder.", inQuotes(path)));
    }
    if (!info.isFile()) {
        return refuse(Core::say("%1 is no plain file: choose a file that ends in .caprail.", inQuotes(path)));
    }
    return info.canonicalFilePath().toStdString();
}

} // namespace caprail
