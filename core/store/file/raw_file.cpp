// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/raw_file.h>

#include <chrono>
#include <cstddef>
#include <sqlite3.h>
#include <store/sqlite/database.h>
#include <thread>
#include <vector>

namespace caprail {

struct RawFile::Handle {
    struct FreeName {
        void operator()(const char* text) const { sqlite3_free_filename(const_cast<char*>(text)); }
    };
    std::string path; ///< as sentences name it
    std::unique_ptr<const char, FreeName> name;
    std::vector<std::max_align_t> room;
    sqlite3_file* file = nullptr;

    Handle() = default;
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() {
        if (file != nullptr && file->pMethods != nullptr) {
            file->pMethods->xClose(file); // which lets its locks go, too
        }
    }
};

RawFile::RawFile(std::unique_ptr<Handle> handle) : m_handle(std::move(handle)) {}
RawFile::RawFile(RawFile&&) noexcept = default;
RawFile& RawFile::operator=(RawFile&&) noexcept = default;
RawFile::~RawFile() = default;

Result<RawFile> RawFile::open(const std::string& path, Which which) {
    sqlite3_vfs* const vfs = sqlite3_vfs_find(nullptr);
    auto handle = std::make_unique<Handle>();
    handle->name.reset(
        sqlite3_create_filename(path.c_str(), (path + "-journal").c_str(), (path + "-wal").c_str(), 0, nullptr));
    if (!handle->name) {
        return refuse(sentenceFor(SQLITE_NOMEM, path, {}));
    }
    const bool isRecord = which == Which::record;
    const char* const name = isRecord ? handle->name.get() : sqlite3_filename_journal(handle->name.get());
    handle->path = isRecord ? path : path + "-journal";
    handle->room.resize(static_cast<std::size_t>(vfs->szOsFile) / sizeof(std::max_align_t) + 1);
    handle->file = reinterpret_cast<sqlite3_file*>(handle->room.data());
    const int flags =
        SQLITE_OPEN_READONLY | SQLITE_OPEN_NOFOLLOW | (isRecord ? SQLITE_OPEN_MAIN_DB : SQLITE_OPEN_MAIN_JOURNAL);
    if (const int sqliteCode = vfs->xOpen(vfs, name, handle->file, flags, nullptr); sqliteCode != SQLITE_OK) {
        return refuse(sentenceFor(sqliteCode, handle->path, sqlite3_errstr(sqliteCode)));
    }
    return RawFile(std::move(handle));
}

Result<std::int64_t> RawFile::size() const {
    sqlite3_int64 size = 0;
    const int sqliteCode = m_handle->file->pMethods->xFileSize(m_handle->file, &size);
    return sqliteCode == SQLITE_OK ? Result<std::int64_t>(size)
                                   : refuse(sentenceFor(sqliteCode, m_handle->path, sqlite3_errstr(sqliteCode)));
}

Result<std::string> RawFile::read(std::int64_t at, std::int64_t length) const {
    std::string bytes(static_cast<std::size_t>(length), '\0');
    const int sqliteCode = m_handle->file->pMethods->xRead(m_handle->file, bytes.data(), static_cast<int>(length), at);
    return sqliteCode == SQLITE_OK ? Result<std::string>(std::move(bytes))
                                   : refuse(sentenceFor(sqliteCode, m_handle->path, sqlite3_errstr(sqliteCode)));
}

Result<void> RawFile::lockOutWriters() const {
    int sqliteCode = SQLITE_BUSY;
    for (int tries = 0; sqliteCode == SQLITE_BUSY && tries < 60; ++tries) {
        if (tries != 0) {
            std::this_thread::sleep_for(std::chrono::milliseconds(50));
        }
        sqliteCode = m_handle->file->pMethods->xLock(m_handle->file, SQLITE_LOCK_SHARED);
    }
    return sqliteCode == SQLITE_OK ? Result<void>()
                                   : refuse(sentenceFor(sqliteCode, m_handle->path, sqlite3_errstr(sqliteCode)));
}

Result<bool> RawFile::isBeingWritten() const {
    int isReserved = 0;
    const int sqliteCode = m_handle->file->pMethods->xCheckReservedLock(m_handle->file, &isReserved);
    return sqliteCode == SQLITE_OK ? Result<bool>(isReserved != 0)
                                   : refuse(sentenceFor(sqliteCode, m_handle->path, sqlite3_errstr(sqliteCode)));
}

} // namespace caprail
