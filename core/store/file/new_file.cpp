// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/new_file.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <store/sqlite/database.h>
#include <store/file/hidden_name.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

namespace fs = std::filesystem;

/// Removes what an unfinished attempt leaves, whatever way it ends.
class Leftovers {
public:
    explicit Leftovers(std::string path) : m_path(std::move(path)) {}
    Leftovers(const Leftovers&) = delete;
    Leftovers& operator=(const Leftovers&) = delete;
    ~Leftovers() {
        std::error_code ignored;
        fs::remove_all(m_path, ignored);
        fs::remove(m_path + "-journal", ignored);
    }

private:
    std::string m_path;
};

std::string reason() {
    return std::strerror(errno);
}

tl::unexpected<Problem> existsAlready(const std::string& path) {
    return refuse(Core::say("%1 exists already and is not overwritten: choose another name.", inQuotes(path)));
}

bool stands(const std::string& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0;
}

/// The person knows the name that was asked for, not the one that it is made under.
tl::unexpected<Problem> refusedFor(const std::string& path, const std::string& made, std::string sentence) {
    for (auto at = sentence.find(made); at != std::string::npos; at = sentence.find(made, at + path.size())) {
        sentence.replace(at, made.size(), path);
    }
    return refuse(std::move(sentence));
}

Result<void> writeAll(int file, const std::string& path, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written < 0) {
            return refuse(Core::say("%1 cannot be written: %2.", inQuotes(path), reason()));
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return {};
}

/// Writes bytes into the file that `flags` open or make, and closes it: a network folder may refuse only then.
Result<void> writeInto(const std::string& path, int flags, std::string_view bytes) {
    const int file = ::open(path.c_str(), O_WRONLY | O_NOFOLLOW | O_CLOEXEC | flags, 0666);
    if (file < 0) {
        return refuse(Core::say("%1 cannot be written: %2.", inQuotes(path), reason()));
    }
    auto done = writeAll(file, path, bytes);
    if (::close(file) != 0 && done) {
        done = refuse(Core::say("%1 cannot be written: %2.", inQuotes(path), reason()));
    }
    return done;
}

/// Renames to a name that is free; sets errno to EEXIST when it is not. A file system without that kind of rename has
/// links; one without links either (some memory cards) gets the name reserved first.
bool renameToNew(const std::string& from, const std::string& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) {
        return true;
    }
    if (errno != EINVAL && errno != ENOSYS && errno != EOPNOTSUPP) {
        return false;
    }
    std::error_code error;
    if (fs::is_directory(from, error)) {
        // A folder's rename never takes the place of a file, nor of a folder that holds anything.
        return ::rename(from.c_str(), to.c_str()) == 0;
    }
    if (::link(from.c_str(), to.c_str()) == 0) {
        ::unlink(from.c_str());
        return true;
    }
    if (errno == EEXIST) {
        return false;
    }
    const int reserved = ::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (reserved < 0) {
        return false;
    }
    ::close(reserved);
    if (::rename(from.c_str(), to.c_str()) != 0) {
        const int why = errno;
        ::unlink(to.c_str());
        errno = why;
        return false;
    }
    return true;
}

/// Fills what was just made under a hidden name, which only its owner may use meanwhile, and gives it its mode: that of
/// a new one when there is no other.
Result<void> fillHidden(const std::string& path, const std::string& made, const FileMode* mode, const Fill& fill) {
    const FileMode ofNew = FileMode::ofNew(made);
    FileMode::hide(made);
    if (auto done = fill(made); !done) {
        return refusedFor(path, made, done.error().sentence);
    }
    auto given = (mode == nullptr ? ofNew : *mode).giveTo(made);
    return given ? given : refusedFor(path, made, given.error().sentence);
}

/// Makes a file under a hidden name in the folder of `path`, fills and syncs it, and has it put in its place.
Result<void> makeBeside(const std::string& path, const FileMode* mode, const Fill& fill, const Fill& putInPlace) {
    const OutputLocation location = outputLocation(path);
    std::error_code error;
    if (!fs::is_directory(location.folder, error)) {
        return refuse(Core::say("There is no folder %1: make it first.", inQuotes(location.folder)));
    }
    removeLeft(location, LeftBy::deadOrUs);
    const std::string made = hiddenPath(location);
    const int file = ::open(made.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (file < 0) {
        return refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), reason()));
    }
    ::close(file);
    const Leftovers leftovers(made);
    auto done = fillHidden(path, made, mode, fill);
    if (done) {
        done = syncToDisk(made);
    }
    return done ? putInPlace(made) : done;
}

/// Syncs everything in a folder and the folder itself.
Result<void> syncTree(const std::string& folder) {
    std::error_code error;
    for (fs::recursive_directory_iterator entry(folder, error); !error && entry != fs::recursive_directory_iterator();
         entry.increment(error)) {
        if (auto synced = syncToDisk(entry->path().string()); !synced) {
            return synced;
        }
    }
    return error ? refuse(Core::say("%1 cannot be read back: %2.", inQuotes(folder), error.message()))
                 : syncToDisk(folder);
}

Result<void> putFolderInPlace(const std::string& made, const std::string& path, const std::string& whole) {
    // Over an empty folder a plain rename is right: the system refuses it when something has come into it meanwhile.
    if (!renameToNew(made, whole) && (errno != EEXIST || ::rename(made.c_str(), whole.c_str()) != 0)) {
        return errno == EEXIST || errno == ENOTEMPTY || errno == ENOTDIR
                   ? Result<void>(existsAlready(path))
                   : refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), reason()));
    }
    auto synced = syncToDisk(folderOf(whole));
    if (!synced) {
        (void)::rename(whole.c_str(), made.c_str()); // it might be gone after a power cut, so it is taken back
    }
    return synced;
}

} // namespace

std::string folderOf(const std::string& path) {
    return outputLocation(path).folder;
}

Result<void> syncToDisk(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) {
        return refuse(Core::say("%1 cannot be opened: %2.", inQuotes(path), reason()));
    }
    const bool synced = ::fsync(file) == 0 || errno == EINVAL; // some file systems cannot sync a folder
    const std::string why = synced ? "" : reason();
    ::close(file);
    return synced ? Result<void>() : refuse(Core::say("%1 cannot be put safely on the disk: %2.", inQuotes(path), why));
}

Result<void> moveToNewName(const std::string& from, const std::string& to) {
    if (renameToNew(from, to)) {
        return {};
    }
    return errno == EEXIST ? Result<void>(existsAlready(to))
                           : refuse(Core::say("%1 cannot be kept as %2: %3.", inQuotes(from), inQuotes(to), reason()));
}

namespace {

Result<void> makeNew(const std::string& path, const FileMode* mode, const Fill& fill) {
    if (stands(path)) {
        removeLeft(outputLocation(path), LeftBy::deadOrUs);
        return existsAlready(path);
    }
    return makeBeside(path, mode, fill, [&](const std::string& made) -> Result<void> {
        if (!renameToNew(made, path)) {
            return errno == EEXIST ? Result<void>(existsAlready(path))
                                   : refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), reason()));
        }
        auto synced = syncToDisk(folderOf(path));
        if (!synced) {
            ::unlink(path.c_str()); // it might be gone after a power cut, so it is not there now either
        }
        return synced;
    });
}

} // namespace

Result<void> makeNewFile(const std::string& path, const Fill& fill) {
    return makeNew(path, nullptr, fill);
}

Result<void> makeNewFileLike(const std::string& existing, const std::string& path, const Fill& fill) {
    const auto mode = FileMode::like(existing);
    return mode ? makeNew(path, &*mode, fill) : tl::unexpected(mode.error());
}

Result<void> makeNewFileLike(const FileMode& mode, const std::string& path, const Fill& fill) {
    return makeNew(path, &mode, fill);
}

Result<void> makeNewFile(const std::string& path, std::string_view bytes) {
    return makeNewFile(path, [&](const std::string& unfinished) { return fillWith(unfinished, bytes); });
}

Result<void> makeNewFolder(const std::string& path, const Fill& fill) {
    const OutputLocation location = outputLocation(path);
    const std::string whole = (fs::path(location.folder) / location.name).string();
    std::error_code error;
    fs::create_directories(location.folder, error);
    if (error) {
        return refuse(Core::say("The folder %1 cannot be made (%2): check its name and the rights to it.",
                                inQuotes(location.folder), error.message()));
    }
    removeLeft(location, LeftBy::deadOrUs);
    if (stands(whole) && !(fs::is_directory(fs::symlink_status(whole, error)) && fs::is_empty(whole, error))) {
        return refuse(Core::say("%1 exists already and is not empty: choose another folder.", inQuotes(path)));
    }
    const std::string made = hiddenPath(location);
    if (::mkdir(made.c_str(), 0777) != 0) {
        return refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), reason()));
    }
    const Leftovers leftovers(made);
    auto done = fillHidden(path, made, nullptr, fill);
    if (done) {
        done = syncTree(made);
    }
    return done ? putFolderInPlace(made, path, whole) : done;
}

Result<void> writeInside(const std::string& path, std::string_view bytes) {
    auto done = writeInto(path, O_CREAT | O_EXCL, bytes);
    return done ? FileMode::ofNew(path).giveTo(path) : done;
}

Result<void> fillWith(const std::string& unfinished, std::string_view bytes) {
    return writeInto(unfinished, O_TRUNC, bytes);
}

Result<void> addTo(const std::string& unfinished, std::string_view bytes) {
    return writeInto(unfinished, O_APPEND, bytes);
}

Result<void> replaceFile(const std::string& path, const Fill& fill) {
    struct stat old {};
    if (::lstat(path.c_str(), &old) != 0 || !S_ISREG(old.st_mode)) {
        return refuse(Core::say("%1 is not a file that can be replaced: choose another name.", inQuotes(path)));
    }
    const auto mode = FileMode::like(path);
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    return makeBeside(path, &*mode, fill, [&](const std::string& made) -> Result<void> {
        if (::rename(made.c_str(), path.c_str()) != 0) {
            return refuse(Core::say("%1 cannot be replaced: %2.", inQuotes(path), reason()));
        }
        // Both the old and the new file are whole: where the folder cannot be synced, a power cut may bring back the
        // old one, and that is all.
        (void)syncToDisk(folderOf(path));
        return {};
    });
}

void removeUnfinished(const std::string& path) {
    removeLeft(outputLocation(path), LeftBy::anyone);
}

} // namespace caprail
