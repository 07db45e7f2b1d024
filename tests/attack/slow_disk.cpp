// SPDX-License-Identifier: GPL-3.0-or-later
/// To be preloaded (ld.so(8)): the disk of records stalls once, for as many seconds as CAPRAIL_STALL says, at the
/// CAPRAIL_STALL_AT-th time that something is read from a file that ends in ".caprail".
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <unistd.h>

namespace {

void stallAtRecords(int file) {
    static int reads = 0;
    char link[64];
    char name[4096];
    std::snprintf(link, sizeof(link), "/proc/self/fd/%d", file);
    const ssize_t length = ::readlink(link, name, sizeof(name) - 1);
    const char* const ending = ".caprail";
    const auto wanted = static_cast<ssize_t>(std::strlen(ending));
    if (length < wanted || std::memcmp(name + length - wanted, ending, static_cast<std::size_t>(wanted)) != 0) {
        return;
    }
    const char* const at = std::getenv("CAPRAIL_STALL_AT");
    const char* const seconds = std::getenv("CAPRAIL_STALL");
    if (++reads == (at == nullptr ? 0 : std::atoi(at)) && seconds != nullptr) {
        ::sleep(static_cast<unsigned>(std::atoi(seconds)));
    }
}

template <class Function> Function below(const char* name) {
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {
ssize_t pread64(int file, void* bytes, size_t length, off64_t at) {
    stallAtRecords(file);
    return below<ssize_t (*)(int, void*, size_t, off64_t)>("pread64")(file, bytes, length, at);
}
ssize_t pread(int file, void* bytes, size_t length, off_t at) {
    stallAtRecords(file);
    return below<ssize_t (*)(int, void*, size_t, off_t)>("pread")(file, bytes, length, at);
}
}
