// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/guarded_vfs.h>

#include <algorithm>
#include <mutex>
#include <sqlite3.h>
#include <sys/stat.h>

namespace caprail {

namespace {

/// The layer that does the work: SQLite's default, which tests replace.
sqlite3_vfs* layerBelow() {
    return sqlite3_vfs_find(nullptr);
}

bool isThereAndNoPlainFile(const char* path) {
    struct stat status {};
    return ::lstat(path, &status) == 0 && !S_ISREG(status.st_mode);
}

int openFile(sqlite3_vfs* guarded, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    file->pMethods = nullptr; // nothing to be closed when it is refused here
    if ((flags & (SQLITE_OPEN_SUPER_JOURNAL | SQLITE_OPEN_WAL)) != 0) {
        return SQLITE_CANTOPEN;
    }
    if ((flags & SQLITE_OPEN_MAIN_JOURNAL) != 0) {
        if (isThereAndNoPlainFile(name)) {
            return SQLITE_CANTOPEN;
        }
        // A journal of one's own is created; one that is opened to be written and not created is to be played back
        // (sqlite3PagerSharedLock in pager.c, from memory).
        const bool isPlayback = (flags & SQLITE_OPEN_READWRITE) != 0 && (flags & SQLITE_OPEN_CREATE) == 0;
        if (isPlayback && guarded->pAppData == nullptr) {
            return SQLITE_READONLY_ROLLBACK;
        }
    }
    return layerBelow()->xOpen(layerBelow(), name, file, flags, outFlags);
}

int deleteFile(sqlite3_vfs*, const char* name, int syncDirectory) {
    return layerBelow()->xDelete(layerBelow(), name, syncDirectory);
}
int accessFile(sqlite3_vfs*, const char* name, int flags, int* result) {
    return layerBelow()->xAccess(layerBelow(), name, flags, result);
}
int fullPathname(sqlite3_vfs*, const char* name, int length, char* out) {
    return layerBelow()->xFullPathname(layerBelow(), name, length, out);
}
int randomness(sqlite3_vfs*, int length, char* out) {
    return layerBelow()->xRandomness(layerBelow(), length, out);
}
int sleepFor(sqlite3_vfs*, int microseconds) {
    return layerBelow()->xSleep(layerBelow(), microseconds);
}
int currentTime(sqlite3_vfs*, double* now) {
    return layerBelow()->xCurrentTime(layerBelow(), now);
}
int lastVfsError(sqlite3_vfs*, int length, char* out) {
    return layerBelow()->xGetLastError == nullptr ? 0 : layerBelow()->xGetLastError(layerBelow(), length, out);
}

/// Registers a layer, and makes it fit the default one as it is now.
const char* registered(sqlite3_vfs& layer, const char* name, bool playsBack) {
    static std::mutex mutex;
    const std::lock_guard lock(mutex);
    sqlite3_vfs* const below = layerBelow();
    if (layer.zName == nullptr) {
        layer.iVersion = 1;
        layer.zName = name;
        layer.pAppData = playsBack ? &layer : nullptr;
        layer.szOsFile = below->szOsFile;
        layer.mxPathname = below->mxPathname;
        layer.xOpen = openFile;
        layer.xDelete = deleteFile;
        layer.xAccess = accessFile;
        layer.xFullPathname = fullPathname;
        layer.xRandomness = randomness;
        layer.xSleep = sleepFor;
        layer.xCurrentTime = currentTime;
        layer.xGetLastError = lastVfsError;
        sqlite3_vfs_register(&layer, 0);
    }
    // Room for the files of whatever layer is the default now; room is never taken away from under an open file.
    layer.szOsFile = std::max(layer.szOsFile, below->szOsFile);
    return name;
}

sqlite3_vfs guarded{};
sqlite3_vfs recovering{};

} // namespace

const char* guardedVfs() {
    return registered(guarded, "caprail-guarded", false);
}
const char* recoveringVfs() {
    return registered(recovering, "caprail-recovering", true);
}

} // namespace caprail
