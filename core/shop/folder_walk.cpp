// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/folder_walk.h>

#include <QString>
#include <algorithm>
#include <base/plain_text.h>
#include <base/say.h>
#include <cerrno>
#include <cstring>
#include <dirent.h>
#include <fcntl.h>
#include <filesystem>
#include <memory>
#include <store/sqlite/database.h>
#include <sys/stat.h>
#include <unistd.h>

namespace caprail {

namespace {

constexpr int deepest = 64; ///< folders in folders: deeper is a mistake

struct CloseFolder {
    void operator()(DIR* folder) const { ::closedir(folder); }
};
using OpenFolder = std::unique_ptr<DIR, CloseFolder>;

bool isRecordName(std::string_view name) {
    constexpr std::string_view ending = ".caprail";
    return name.size() > ending.size() &&
           std::ranges::equal(name.substr(name.size() - ending.size()), ending, [](char a, char b) {
               return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
           });
}

std::int64_t nanoseconds(const timespec& time) {
    return static_cast<std::int64_t>(time.tv_sec) * 1'000'000'000 + time.tv_nsec;
}

FoundFile numbersOf(const struct stat& info, std::string path) {
    return {std::move(path), static_cast<std::int64_t>(info.st_size), nanoseconds(info.st_mtim),
            nanoseconds(info.st_ctim), static_cast<std::int64_t>(info.st_ino)};
}

std::string whyUnread(const std::string& folder, int error) {
    const std::string name = inQuotes(plainLine(folder));
    switch (error) {
    case ENOENT:
    case ENOTDIR:
        return Core::say("%1 is not there: check its name, or whether its disk or share is connected.", name);
    case EACCES:
    case EPERM:
        return Core::say("%1 may not be read: ask for the right to.", name);
    default:
        return Core::say("%1 does not answer (%2): check its disk or share.", name, std::strerror(error));
    }
}

class Walker {
public:
    Walker(std::string root, const std::stop_token& stop, const std::function<void(std::size_t)>& progress)
        : m_root(std::move(root)), m_stop(stop), m_progress(progress) {}

    Result<FolderWalk> walk() {
        if (const int error = read("", 0); error != 0) {
            return refuse(whyUnread(m_root, error));
        }
        std::ranges::sort(m_walk.files, {}, &FoundFile::path);
        return std::move(m_walk);
    }

private:
    /// 0, or why the folder could not be read. Folders in it are read after it is closed: few handles at a time.
    int read(const std::string& below, int depth) { // NOLINT(misc-no-recursion): as deep as `deepest`
        const OpenFolder folder(::opendir((m_root + "/" + below).c_str()));
        if (!folder) {
            return errno;
        }
        m_walk.folders.push_back(below);
        std::vector<std::string> folders;
        for (;;) {
            if (m_stop.stop_requested()) {
                m_walk.isWhole = false;
                return 0;
            }
            errno = 0;
            const dirent* entry = ::readdir(folder.get());
            if (entry == nullptr) {
                break;
            }
            take(::dirfd(folder.get()), *entry, below, folders);
        }
        if (errno != 0) {
            return errno;
        }
        for (const std::string& path : folders) {
            const int error = depth < deepest ? read(path, depth + 1) : ELOOP;
            if (error != 0) {
                m_walk.unread.push_back({path, whyUnread(m_root + "/" + path, error)});
            }
        }
        return 0;
    }

    void take(int folder, const dirent& entry, const std::string& below, std::vector<std::string>& folders) {
        const std::string name = entry.d_name;
        if (name.starts_with('.')) {
            return;
        }
        const std::string path = below.empty() ? name : below + "/" + name;
        if (entry.d_type == DT_DIR) {
            folders.push_back(path);
            return;
        }
        const bool isNamed = isRecordName(name);
        if (!isNamed && entry.d_type != DT_UNKNOWN) {
            return;
        }
        struct stat info {};
        if (entry.d_type == DT_UNKNOWN && ::fstatat(folder, entry.d_name, &info, AT_SYMLINK_NOFOLLOW) == 0 &&
            S_ISDIR(info.st_mode)) {
            folders.push_back(path);
            return;
        }
        if (!isNamed) {
            return;
        }
        if (::fstatat(folder, entry.d_name, &info, 0) != 0) {
            m_walk.files.push_back({path, -1, 0, 0, 0}); // a link to nothing, or just gone: reading it will say so
        } else if (S_ISREG(info.st_mode)) {
            m_walk.files.push_back(numbersOf(info, path));
        }
        if (m_progress && m_walk.files.size() % 500 == 0) {
            m_progress(m_walk.files.size());
        }
    }

    std::string m_root;
    const std::stop_token& m_stop;
    const std::function<void(std::size_t)>& m_progress;
    FolderWalk m_walk;
};

} // namespace

Result<FolderWalk> walkFolder(const std::string& root, const std::stop_token& stop,
                              const std::function<void(std::size_t)>& progress) {
    return Walker(root, stop, progress).walk();
}

Result<RecordsAt> recordsAt(const std::string& fileOrFolder, const std::stop_token& stop) {
    std::error_code error;
    if (!std::filesystem::is_directory(fileOrFolder, error)) {
        return RecordsAt{{fileOrFolder}, false, {}};
    }
    auto walk = walkFolder(fileOrFolder, stop);
    if (!walk) {
        return tl::unexpected(walk.error());
    }
    if (walk->files.empty() && walk->unread.empty() && walk->isWhole) {
        return refuse(Core::say("%1 holds no record.", inQuotes(plainLine(fileOrFolder))));
    }
    RecordsAt records{{}, true, std::move(walk->unread)};
    for (const FoundFile& file : walk->files) {
        records.paths.push_back(fileOrFolder + (fileOrFolder.ends_with('/') ? "" : "/") + file.path);
    }
    return records;
}

std::string plainLine(std::string_view bytes) {
    return visibly(bytes);
}

} // namespace caprail
