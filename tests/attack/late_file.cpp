// SPDX-License-Identifier: GPL-3.0-or-later
/// To be preloaded (ld.so(8)): in the very last moment before a rename or a link, someone else's file appears under the
/// name CAPRAIL_LATE.
#include <cstdlib>
#include <dlfcn.h>
#include <fcntl.h>
#include <unistd.h>

namespace {

void appear() {
    const char* const late = std::getenv("CAPRAIL_LATE");
    const int file = late == nullptr ? -1 : ::open(late, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (file >= 0) {
        (void)!::write(file, "someone else's", 14);
        ::close(file);
    }
}

template <class Function> Function below(const char* name) {
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {
int rename(const char* from, const char* to) {
    appear();
    return below<int (*)(const char*, const char*)>("rename")(from, to);
}
int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) {
    appear();
    return below<int (*)(int, const char*, int, const char*, unsigned)>("renameat2")(fromFolder, from, toFolder, to,
                                                                                     flags);
}
int link(const char* from, const char* to) {
    appear();
    return below<int (*)(const char*, const char*)>("link")(from, to);
}
}
