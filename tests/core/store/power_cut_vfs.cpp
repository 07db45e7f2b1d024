// SPDX-License-Identifier: GPL-3.0-or-later
#include "power_cut_vfs.h"

#include <algorithm>
#include <cstring>

namespace caprail::samples {

namespace {

PowerCutDisk* disk = nullptr;
sqlite3_vfs layer{};

struct OpenFile {
    sqlite3_file base;
    PowerCutDisk::File* file;
    int flags;
};

PowerCutDisk::File& fileOf(sqlite3_file* file) {
    return *reinterpret_cast<OpenFile*>(file)->file;
}

void applyChange(std::string& content, const PowerCutDisk::Change& change) {
    const auto at = static_cast<std::size_t>(change.at);
    if (change.isTruncation) {
        content.resize(std::min(content.size(), at));
        return;
    }
    content.resize(std::max(content.size(), at + change.bytes.size()));
    content.replace(at, change.bytes.size(), change.bytes);
}

int closeFile(sqlite3_file*) {
    return SQLITE_OK;
}
int readFile(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    const std::string& now = fileOf(file).now;
    const auto from = std::min(static_cast<std::size_t>(at), now.size());
    const auto count = std::min(static_cast<std::size_t>(amount), now.size() - from);
    std::memcpy(to, now.data() + from, count);
    std::memset(static_cast<char*>(to) + count, 0, static_cast<std::size_t>(amount) - count);
    return count == static_cast<std::size_t>(amount) ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}
int changeFile(sqlite3_file* file, PowerCutDisk::Change change) {
    // What is asked for at the very moment of the cut may still reach the disk, whole or torn.
    const bool hasPower = disk->change();
    applyChange(fileOf(file).now, change);
    fileOf(file).pending.push_back(std::move(change));
    return hasPower ? SQLITE_OK : SQLITE_IOERR_WRITE;
}
int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    if (disk->isCut()) {
        return SQLITE_IOERR_WRITE;
    }
    return changeFile(file, {at, std::string(static_cast<const char*>(from), static_cast<std::size_t>(amount)), false});
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    return disk->isCut() ? SQLITE_IOERR_TRUNCATE : changeFile(file, {size, {}, true});
}
int syncFile(sqlite3_file* file, int) {
    if (!disk->change()) {
        return SQLITE_IOERR_FSYNC;
    }
    PowerCutDisk::File& f = fileOf(file);
    f.durable = f.now;
    f.pending.clear();
    f.durablyExists = true; // the real layer syncs the folder with a new file's first sync
    return SQLITE_OK;
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    *size = static_cast<sqlite3_int64>(fileOf(file).now.size());
    return SQLITE_OK;
}
int lockFile(sqlite3_file*, int) {
    return SQLITE_OK;
}
int checkReservedLock(sqlite3_file*, int* result) {
    *result = 0;
    return SQLITE_OK;
}
int fileControl(sqlite3_file*, int, void*) {
    return SQLITE_NOTFOUND;
}
int sectorSize(sqlite3_file*) {
    return 512;
}
int deviceCharacteristics(sqlite3_file*) {
    return 0; // the worst: nothing is atomic, nothing stays in order
}

const sqlite3_io_methods methods{
    1,        closeFile,         readFile,    writeFile,  truncateFile,          syncFile, fileSize, lockFile,
    lockFile, checkReservedLock, fileControl, sectorSize, deviceCharacteristics, nullptr,  nullptr,  nullptr,
    nullptr,  nullptr,           nullptr};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    file->pMethods = nullptr;
    PowerCutDisk::File& f = disk->files[name];
    if (!f.exists && (flags & SQLITE_OPEN_CREATE) == 0) {
        return SQLITE_CANTOPEN;
    }
    if (!f.exists) {
        if (!disk->change()) {
            return SQLITE_CANTOPEN;
        }
        // Under a name whose removal is not certain yet, the old content may come back instead of the new.
        f.exists = true;
        f.now.clear();
        f.pending.push_back({0, {}, true});
    }
    auto* open = reinterpret_cast<OpenFile*>(file);
    open->file = &f;
    open->flags = flags;
    file->pMethods = &methods;
    if (outFlags != nullptr) {
        *outFlags = flags;
    }
    return SQLITE_OK;
}
int deleteFile(sqlite3_vfs*, const char* name, int syncFolder) {
    if (!disk->change()) {
        return SQLITE_IOERR_DELETE;
    }
    PowerCutDisk::File& f = disk->files[name];
    if (!f.exists) {
        return SQLITE_IOERR_DELETE_NOENT;
    }
    f.exists = false;
    if (syncFolder != 0) {
        f.durablyExists = false;
        f.durable.clear();
        f.pending.clear();
    }
    return SQLITE_OK;
}
int accessFile(sqlite3_vfs*, const char* name, int, int* result) {
    const auto at = disk->files.find(name);
    *result = at != disk->files.end() && at->second.exists ? 1 : 0;
    return SQLITE_OK;
}
int fullPathname(sqlite3_vfs*, const char* name, int size, char* out) {
    sqlite3_snprintf(size, out, "%s", name);
    return SQLITE_OK;
}

} // namespace

PowerCutDisk::PowerCutDisk() {
    disk = this;
    real = sqlite3_vfs_find(nullptr);
    layer = *real;
    layer.zName = "power-cut";
    layer.pNext = nullptr;
    layer.szOsFile = sizeof(OpenFile);
    layer.xOpen = openFile;
    layer.xDelete = deleteFile;
    layer.xAccess = accessFile;
    layer.xFullPathname = fullPathname;
    sqlite3_vfs_register(&layer, 1);
}

PowerCutDisk::~PowerCutDisk() {
    sqlite3_vfs_unregister(&layer);
    sqlite3_vfs_register(real, 1);
    disk = nullptr;
}

void PowerCutDisk::put(const std::string& path, std::string bytes) {
    File& file = files[path];
    file = File{bytes, std::move(bytes), {}, true, true};
}

bool PowerCutDisk::change() {
    ++m_calls;
    return !isCut();
}

std::optional<std::string> PowerCutDisk::afterCut(const std::string& path, std::mt19937& chance) const {
    const auto at = files.find(path);
    if (at == files.end()) {
        return {};
    }
    const File& file = at->second;
    // A name that was made or removed since the folder's last sync may be there or not.
    const bool isThere = file.exists == file.durablyExists ? file.exists : chance() % 2 == 0;
    if (!isThere) {
        return {};
    }
    std::string content = file.durable;
    for (const Change& change : file.pending) {
        if (change.isTruncation) {
            if (chance() % 2 == 0) {
                applyChange(content, change);
            }
            continue;
        }
        for (std::size_t sector = 0; sector < change.bytes.size(); sector += 512) {
            if (chance() % 2 == 0) {
                applyChange(content,
                            {change.at + static_cast<sqlite3_int64>(sector), change.bytes.substr(sector, 512), false});
            }
        }
    }
    return content;
}

void PowerCutDisk::start(const std::map<std::string, std::string>& content) {
    files.clear();
    for (const auto& [path, bytes] : content) {
        put(path, bytes);
    }
    cutAt(0);
}

} // namespace caprail::samples
