// SPDX-License-Identifier: GPL-3.0-or-later
#include "faulty_calls.h"

#include <cerrno>
#include <cstdarg>
#include <sys/types.h>

namespace {

int failingCall = 0;
int calls = 0;
bool failed = false;

bool fails() {
    ++calls;
    if (failingCall == 0 || calls != failingCall) {
        return false;
    }
    failed = true;
    errno = EIO;
    return true;
}

} // namespace

extern "C" {
int __real_open(const char* path, int flags, ...);
int __real_fsync(int file);
int __real_chmod(const char* path, mode_t mode);
int __real_rename(const char* from, const char* to);
int __real_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags);
int __real_link(const char* from, const char* to);

int __wrap_open(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const auto mode = va_arg(rest, mode_t);
    va_end(rest);
    return fails() ? -1 : __real_open(path, flags, mode);
}
// No power fails here, so nothing need be synced: that makes many runs bearable.
int __wrap_fsync(int) {
    return fails() ? -1 : 0;
}
int __wrap_chmod(const char* path, mode_t mode) {
    return fails() ? -1 : __real_chmod(path, mode);
}
int __wrap_rename(const char* from, const char* to) {
    return fails() ? -1 : __real_rename(from, to);
}
int __wrap_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) {
    return fails() ? -1 : __real_renameat2(fromFolder, from, toFolder, to, flags);
}
int __wrap_link(const char* from, const char* to) {
    return fails() ? -1 : __real_link(from, to);
}
}

namespace caprail::samples {

void FaultyCalls::failAt(int n) {
    failingCall = n;
    calls = 0;
    failed = false;
}

bool FaultyCalls::hasFailed() {
    return failed;
}

} // namespace caprail::samples
