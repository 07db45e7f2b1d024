// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/new_file.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <store/sqlite/database.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>

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

/// Makes a file under a hidden name in the folder of `path`, fills and syncs it, and has it put in its place.
Result<void> makeBeside(const std::string& path, const std::function<Result<void>(const std::string&)>& fill,
                        const std::function<Result<void>(const std::string&)>& putInPlace) {
    const std::string folder = folderOf(path);
    if (!QFileInfo(QString::fromStdString(folder)).isDir()) {
        return refuse(Core::say("There is no folder %1: make it first.", inQuotes(folder)));
    }
    const std::string name = QFileInfo(QString::fromStdString(path)).fileName().toStdString();
    const std::string made = folder + "/." + name + "." + std::to_string(::getpid()) + ".new";
    ::unlink(made.c_str()); // left by a dead process of the same number
    const int file = ::open(made.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (file < 0) {
        return refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), reason()));
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
    return putInPlace(made);
}

} // namespace

std::string folderOf(const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).absolutePath().toStdString();
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

Result<void> makeNewFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill) {
    const QFileInfo target(QString::fromStdString(path));
    if (target.exists() || target.isSymLink()) {
        return refuse(Core::say("%1 exists already and is not overwritten: choose another name.", inQuotes(path)));
    }
    return makeBeside(path, fill, [&](const std::string& made) -> Result<void> {
        // QFile::rename never replaces a file that exists.
        QFile finished(QString::fromStdString(made));
        if (!finished.rename(target.absoluteFilePath())) {
            return refuse(Core::say("%1 cannot be made: %2.", inQuotes(path), finished.errorString().toStdString()));
        }
        auto synced = syncToDisk(folderOf(path));
        if (!synced) {
            ::unlink(path.c_str()); // it might be gone after a power cut, so it is not there now either
        }
        return synced;
    });
}

Result<void> replaceFile(const std::string& path, const std::function<Result<void>(const std::string&)>& fill) {
    struct stat old {};
    if (::lstat(path.c_str(), &old) != 0 || !S_ISREG(old.st_mode)) {
        return refuse(Core::say("%1 is no file that could be replaced: choose another name.", inQuotes(path)));
    }
    return makeBeside(path, fill, [&](const std::string& made) -> Result<void> {
        if (::chmod(made.c_str(), old.st_mode & 07777) != 0 || ::rename(made.c_str(), path.c_str()) != 0) {
            return refuse(Core::say("%1 cannot be replaced: %2.", inQuotes(path), reason()));
        }
        // Both the old and the new file are whole: where the folder cannot be synced, a power cut may bring back the
        // old one, and that is all.
        (void)syncToDisk(folderOf(path));
        return {};
    });
}

void removeUnfinished(const std::string& path) {
    const QString name = QFileInfo(QString::fromStdString(path)).fileName();
    const QRegularExpression unfinished(
        QStringLiteral("^\\.%1\\.[0-9]+\\.new(-journal)?$").arg(QRegularExpression::escape(name)));
    QDir folder(QString::fromStdString(folderOf(path)));
    for (const QString& file : folder.entryList(QDir::Files | QDir::Hidden)) {
        if (unfinished.match(file).hasMatch()) {
            folder.remove(file);
        }
    }
}

} // namespace caprail
