// SPDX-License-Identifier: GPL-3.0-or-later
#include "faulty_vfs.h"

#include <cstddef>

namespace caprail::samples {

namespace {

struct State {
    int at = 0;
    int calls = 0;
    bool failed = false;
    FaultyVfs::Mode mode = FaultyVfs::Mode::once;
    sqlite3_vfs* real = nullptr;
    sqlite3_vfs shim{};
    int lockCode = SQLITE_OK;
    std::string broken;
};
State state;

/// Our file: the head that SQLite knows, then the real layer's file.
struct File {
    sqlite3_file base;
    const char* name;
    std::max_align_t* real() { return reinterpret_cast<std::max_align_t*>(this) + 1; }
};
static_assert(sizeof(File) <= sizeof(std::max_align_t));

sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<sqlite3_file*>(reinterpret_cast<File*>(file)->real());
}

bool isBroken(sqlite3_file* file) {
    const char* name = reinterpret_cast<File*>(file)->name;
    return !state.broken.empty() && name != nullptr && state.broken == name;
}

/// Counts a call that can fail; true when this one does.
bool fails(bool isWrite) {
    if (state.mode == FaultyVfs::Mode::diskFull && !isWrite) {
        return false;
    }
    ++state.calls;
    const bool now =
        state.at != 0 && (state.mode == FaultyVfs::Mode::once ? state.calls == state.at : state.calls >= state.at);
    state.failed = state.failed || now;
    return now;
}

int closeFile(sqlite3_file* file) {
    return realOf(file)->pMethods->xClose(realOf(file));
}
int readFile(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    return fails(false) || isBroken(file) ? SQLITE_IOERR_READ
                                          : realOf(file)->pMethods->xRead(realOf(file), to, amount, at);
}
int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    if (!fails(true)) {
        return realOf(file)->pMethods->xWrite(realOf(file), from, amount, at);
    }
    if (state.mode == FaultyVfs::Mode::diskFull) {
        return SQLITE_FULL;
    }
    // Half of it reaches the disk, as happens.
    realOf(file)->pMethods->xWrite(realOf(file), from, amount / 2, at);
    return SQLITE_IOERR_WRITE;
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    return fails(false) ? SQLITE_IOERR_TRUNCATE : realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int syncFile(sqlite3_file*, int) {
    // The disk need not really be synced where no power fails: that makes a thousand runs bearable.
    return fails(false) ? SQLITE_IOERR_FSYNC : SQLITE_OK;
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return fails(false) ? SQLITE_IOERR_FSTAT : realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    if (state.lockCode != SQLITE_OK) {
        return state.lockCode;
    }
    return fails(false) ? SQLITE_IOERR_LOCK : realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkReservedLock(sqlite3_file* file, int* result) {
    return fails(false) ? SQLITE_IOERR_CHECKRESERVEDLOCK
                        : realOf(file)->pMethods->xCheckReservedLock(realOf(file), result);
}
int fileControl(sqlite3_file* file, int operation, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int deviceCharacteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

const sqlite3_io_methods methods{
    1,          closeFile,         readFile,    writeFile,  truncateFile,          syncFile, fileSize, lockFile,
    unlockFile, checkReservedLock, fileControl, sectorSize, deviceCharacteristics, nullptr,  nullptr,  nullptr,
    nullptr,    nullptr,           nullptr};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    file->pMethods = nullptr;
    reinterpret_cast<File*>(file)->name =
        name; // SQLite keeps it as long as the file is open (sqlite.org/c3ref/vfs.html)
    if (fails(false)) {
        return SQLITE_CANTOPEN;
    }
    const int code = state.real->xOpen(state.real, name, realOf(file), flags, outFlags);
    if (realOf(file)->pMethods != nullptr) {
        file->pMethods = &methods;
    }
    return code;
}
int deleteFile(sqlite3_vfs*, const char* name, int syncDirectory) {
    if (!fails(false)) {
        return state.real->xDelete(state.real, name, syncDirectory);
    }
    if (state.calls % 2 == 0) { // sometimes the file goes and only the folder's sync fails
        state.real->xDelete(state.real, name, 0);
        return SQLITE_IOERR_DIR_FSYNC;
    }
    return SQLITE_IOERR_DELETE;
}
int accessFile(sqlite3_vfs*, const char* name, int flags, int* result) {
    return fails(false) ? SQLITE_IOERR_ACCESS : state.real->xAccess(state.real, name, flags, result);
}
int fullPathname(sqlite3_vfs*, const char* name, int size, char* out) {
    return state.real->xFullPathname(state.real, name, size, out);
}

} // namespace

FaultyVfs::FaultyVfs() {
    state = State{};
    state.real = sqlite3_vfs_find(nullptr);
    state.shim = *state.real; // randomness, sleep and time are the real ones
    state.shim.zName = "faulty";
    state.shim.pNext = nullptr;
    state.shim.szOsFile = static_cast<int>(sizeof(std::max_align_t)) + state.real->szOsFile;
    state.shim.xOpen = openFile;
    state.shim.xDelete = deleteFile;
    state.shim.xAccess = accessFile;
    state.shim.xFullPathname = fullPathname;
    sqlite3_vfs_register(&state.shim, 1);
}

FaultyVfs::~FaultyVfs() {
    sqlite3_vfs_unregister(&state.shim);
    sqlite3_vfs_register(state.real, 1);
}

void FaultyVfs::failAt(int n, Mode mode) {
    state.at = n;
    state.mode = mode;
    state.calls = 0;
    state.failed = false;
}

void FaultyVfs::failLocks(int code) {
    state.lockCode = code;
}

void FaultyVfs::breakFile(const std::string& path) {
    state.broken = path;
}

int FaultyVfs::calls() const {
    return state.calls;
}

bool FaultyVfs::hasFailed() const {
    return state.failed;
}

} // namespace caprail::samples
