// SPDX-License-Identifier: GPL-3.0-or-later
/// To be preloaded (ld.so(8)): the disk is full once CAPRAIL_ROOM bytes have been written to plain files.
#include <cerrno>
#include <cstdlib>
#include <dlfcn.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {

bool isFull(int file, size_t length) {
    static long long written = 0;
    const char* const room = std::getenv("CAPRAIL_ROOM");
    struct stat status {};
    if (room == nullptr || file == STDERR_FILENO || ::fstat(file, &status) != 0 || !S_ISREG(status.st_mode)) {
        return false;
    }
    written += static_cast<long long>(length);
    if (written <= std::atoll(room)) {
        return false;
    }
    errno = ENOSPC;
    return true;
}

template <class Function> Function below(const char* name) {
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {
ssize_t write(int file, const void* bytes, size_t length) {
    return isFull(file, length) ? -1 : below<ssize_t (*)(int, const void*, size_t)>("write")(file, bytes, length);
}
ssize_t pwrite64(int file, const void* bytes, size_t length, off64_t at) {
    return isFull(file, length)
               ? -1
               : below<ssize_t (*)(int, const void*, size_t, off64_t)>("pwrite64")(file, bytes, length, at);
}
ssize_t pwrite(int file, const void* bytes, size_t length, off_t at) {
    return isFull(file, length)
               ? -1
               : below<ssize_t (*)(int, const void*, size_t, off_t)>("pwrite")(file, bytes, length, at);
}
}
