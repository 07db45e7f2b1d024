// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/record_location.h>

#include <base/say.h>
#include <cerrno>
#include <cstring>
#include <store/file/new_file.h>
#include <store/sqlite/database.h>
#include <sys/stat.h>
#include <unistd.h>

namespace caprail {

Result<RecordLocation> RecordLocation::of(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        return refuse(Core::say("%1 cannot be found: %2.", inQuotes(path), std::strerror(errno)));
    }
    return RecordLocation(path, status.st_dev, status.st_ino);
}

Result<FileMark> RecordLocation::mark() const {
    struct stat status {};
    if (::stat(m_path.c_str(), &status) != 0) {
        const bool isGone = errno == ENOENT || errno == ENOTDIR;
        return refuse(isGone
                          ? Core::say("%1 was moved or deleted while it was open, or its disk was taken away: put it "
                                      "back and try again, or save a copy elsewhere.",
                                      inQuotes(m_path))
                          : Core::say("%1 does not answer (%2): check its disk and try again, or save a copy "
                                      "elsewhere.",
                                      inQuotes(m_path), std::strerror(errno)));
    }
    if (status.st_dev != m_device || status.st_ino != m_inode) {
        return refuse(
            Core::say("%1 was replaced by another file while it was open: save a copy elsewhere, then look at both.",
                      inQuotes(m_path)));
    }
    return FileMark{status.st_size, status.st_mtim.tv_sec, status.st_mtim.tv_nsec};
}

Result<void> RecordLocation::isStillThere() const {
    return mark().map([](const FileMark&) {});
}

Result<void> mayWrite(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0 || (status.st_mode & 0222) == 0 || ::access(path.c_str(), W_OK) != 0) {
        return refuse(
            Core::say("%1 may only be read: change its permissions, or save a copy elsewhere.", inQuotes(path)));
    }
    if (status.st_nlink > 1) {
        // SQLite's journal goes by the name: after a crash another name would not find it
        // (sqlite.org/howtocorrupt.html, section 2.5), and the other name may be a backup.
        return refuse(Core::say("%1 has a second name on this disk (a hard link): save a copy and work in that.",
                                inQuotes(path)));
    }
    const std::string folder = folderOf(path);
    if (::stat(folder.c_str(), &status) != 0 || (status.st_mode & 0222) == 0 ||
        ::access(folder.c_str(), W_OK | X_OK) != 0) {
        return refuse(
            Core::say("The folder of %1 may only be read: save a copy elsewhere and work in that.", inQuotes(path)));
    }
    return {};
}

} // namespace caprail
