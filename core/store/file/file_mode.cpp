// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/file_mode.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <store/sqlite/database.h>
#include <store/file/new_file.h>
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The names under which Linux keeps access lists (acl(5), from memory).
constexpr const char* accessListName = "system.posix_acl_access";
constexpr const char* defaultListName = "system.posix_acl_default";

bool handsAnAccessListDown(const std::string& folder) {
    return ::getxattr(folder.c_str(), defaultListName, nullptr, 0) > 0;
}

/// A disk without permissions refuses in one of these ways, and there is nothing to be done about it.
bool isWithoutPermissions(int error) {
    return error == EPERM || error == ENOTSUP || error == ENOSYS || error == EINVAL;
}

/// Makes the access list of `path` this one, or none. False when it cannot.
bool giveAccessList(const std::string& path, const std::string& list) {
    if (!list.empty()) {
        return ::setxattr(path.c_str(), accessListName, list.data(), list.size(), 0) == 0;
    }
    return ::removexattr(path.c_str(), accessListName) == 0 || errno == ENODATA || isWithoutPermissions(errno);
}

} // namespace

FileMode FileMode::ofNew(const std::string& path) {
    FileMode mode;
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0) {
        const bool isSaid = handsAnAccessListDown(folderOf(path));
        mode.m_mode = status.st_mode & static_cast<mode_t>(isSaid ? 07777 : 07770);
    }
    return mode;
}

Result<FileMode> FileMode::like(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        return refuse(Core::say("%1 cannot be looked at: %2.", inQuotes(path), std::strerror(errno)));
    }
    FileMode mode;
    mode.m_isCopy = true;
    mode.m_mode = (status.st_mode & 0777) | 0600; // whoever makes it may use it
    mode.m_group = status.st_gid;
    std::array<char, 4096> list{};
    const ssize_t length = ::getxattr(path.c_str(), accessListName, list.data(), list.size());
    mode.m_accessList.assign(list.data(), static_cast<std::size_t>(std::max<ssize_t>(length, 0)));
    return mode;
}

void FileMode::hide(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0) {
        (void)::chmod(path.c_str(), status.st_mode & 0700);
    }
}

Result<void> FileMode::giveTo(const std::string& path) const {
    mode_t mode = m_mode;
    if (m_isCopy) {
        struct stat status {};
        const bool isItsGroup = (::stat(path.c_str(), &status) == 0 && status.st_gid == m_group) ||
                                ::chown(path.c_str(), static_cast<uid_t>(-1), m_group) == 0;
        // The mode's middle digit stands for the whole list where there is one.
        if (!giveAccessList(path, m_accessList) || !isItsGroup) {
            (void)giveAccessList(path, {}); // where it cannot be emptied either, the mode keeps its names out
            mode &= ~static_cast<mode_t>(S_IRWXG);
        }
    }
    if (::chmod(path.c_str(), mode) != 0 && !isWithoutPermissions(errno)) {
        return refuse(Core::say("%1 cannot be given its permissions: %2.", inQuotes(path), std::strerror(errno)));
    }
    return {};
}

} // namespace caprail
