// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/header.h>

#include <algorithm>
#include <array>
#include <climits>
#include <cstddef>
#include <cstdlib>
#include <filesystem>
#include <store/sqlite/database.h>
#include <store/file/journal.h>
#include <store/file/raw_file.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t headerSize = 100;

/// What is no record by its first bytes; one that is named like one was perhaps a record once.
std::string noRecord(const std::string& path) {
    return path.ends_with(".caprail")
               ? Core::say("%1 is not a build record, although it is named like one: look for a copy of it.", inQuotes(path))
               : Core::say("%1 is not a build record: choose a file that ends in .caprail.", inQuotes(path));
}

} // namespace

HeaderFinding judgeHeader(std::string_view header, std::uint64_t size, const std::string& path) {
    const std::string file = inQuotes(path);
    constexpr std::string_view magic("SQLite format 3\0", 16);
    if (header.empty()) {
        return {FileKind::notARecord, Core::say("%1 is empty: it is not a build record.", file), 0};
    }
    if (header.size() < headerSize) {
        const bool begins = header.size() >= magic.size() && header.starts_with(magic);
        return {begins ? FileKind::damagedRecord : FileKind::notARecord,
                begins ? Core::say("%1 breaks off within its first 100 bytes: look for a copy of it.", file)
                       : noRecord(path),
                0};
    }
    const bool ours = bigEndian(header, 68) == applicationId;
    if (!header.starts_with(magic)) {
        return {ours ? FileKind::damagedRecord : FileKind::notARecord,
                ours ? Core::say("%1 is damaged in its first bytes: salvage what can be read into a new file (caprail "
                                 "salvage FILE OUT).",
                                 file)
                     : noRecord(path),
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
    const auto file = RawFile::open(path, RawFile::Which::record);
    if (!file) {
        return tl::unexpected(file.error());
    }
    const auto size = file->size();
    if (!size) {
        return tl::unexpected(size.error());
    }
    const auto bytes = file->read(0, std::min<std::int64_t>(*size, headerSize));
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    return judgeHeader(*bytes, static_cast<std::uint64_t>(*size), path);
}

Result<std::string> resolveRecord(const std::string& path) {
    std::array<char, PATH_MAX> real{};
    if (::realpath(path.c_str(), real.data()) == nullptr) {
        return refuse(Core::say("There is no file %1: check its name and folder.", inQuotes(path)));
    }
    std::error_code error;
    if (!std::filesystem::is_regular_file(real.data(), error)) {
        return refuse(Core::say("%1 is not a plain file: choose a file that ends in .caprail.", inQuotes(path)));
    }
    return std::string(real.data());
}

} // namespace caprail
