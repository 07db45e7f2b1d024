// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/new_file.h>

#include <QFile>
#include <QFileInfo>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <store/database.h>
#include <unistd.h>

namespace caprail {

namespace {

/// Removes what an unfinished attempt leaves, whatever way it ends.
class Leftovers {
public:
    explicit Leftovers(std::string path) : m_path(std::move(path)) {}
    Leftovers(const Leftovers&) = delete;
    Leftovers& operator=(const Leftovers&) = delete;
    ~Leftovers() {
        ::unlink(m_path.c_str());
        ::unlink((m_path + "-journal").c_str());
    }

private:
    std::string m_path;
};

std::string reason() {
    return std::strerror(errno);
}

} // namespace

std::string folderOf(const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).absolutePath().toStdString();
}

Result<void> syncToDisk(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) {
        return refuse(inQuotes(path) + " cannot be opened: " + reason() + ".");
    }
    const bool synced = ::fsync(file) == 0 || errno == EINVAL; // some file systems cannot sync a folder
    const std::string why = synced ? "" : reason();
    ::close(file);
    return synced ? Result<void>() : refuse(inQuotes(path) + " cannot be put safely on the disk: " + why + ".");
}

Result<void> makeNewFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill) {
    const QFileInfo target(QString::fromStdString(path));
    if (target.exists() || target.isSymLink()) {
        return refuse(inQuotes(path) + " exists already and is not overwritten: choose another name.");
    }
    const std::string folder = folderOf(path);
    if (!QFileInfo(QString::fromStdString(folder)).isDir()) {
        return refuse("There is no folder " + inQuotes(folder) + ": make it first.");
    }
    const std::string made =
        folder + "/." + target.fileName().toStdString() + "." + std::to_string(::getpid()) + ".new";
    ::unlink(made.c_str()); // left by a dead process of the same number
    const int file = ::open(made.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (file < 0) {
        return refuse(inQuotes(path) + " cannot be made: " + reason() + ".");
    }
    ::close(file);
    const Leftovers leftovers(made);
    if (auto filled = fill(made); !filled) {
        // The person knows the name that was asked for, not the one that it is made under.
        std::string sentence = filled.error().sentence;
        if (const auto at = sentence.find(made); at != std::string::npos) {
            sentence.replace(at, made.size(), path);
        }
        return refuse(sentence);
    }
    if (auto synced = syncToDisk(made); !synced) {
        return synced;
    }
    // QFile::rename never replaces a file that exists.
    QFile finished(QString::fromStdString(made));
    if (!finished.rename(target.absoluteFilePath())) {
        return refuse(inQuotes(path) + " cannot be made: " + finished.errorString().toStdString() + ".");
    }
    return syncToDisk(folder);
}

} // namespace caprail
