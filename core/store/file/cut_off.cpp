// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/cut_off.h>

#include <QFile>
#include <sqlite3.h>
#include <store/care/copies.h>
#include <store/file/journal.h>
#include <store/file/new_file.h>
#include <store/file/open_checked.h>
#include <store/file/private_copy.h>
#include <sys/stat.h>
#include <unistd.h>
#include <base/say.h>

namespace caprail {

namespace {

Result<std::unique_ptr<Database>> refuseForeign(const std::string& path) {
    return refuse(Core::say("%1 is the journal of a write to another file, as when a copy was put in the place of a "
                            "record: with it %2 would be harmed, so neither was touched. Move the journal to another "
                            "folder, then try again.",
                            inQuotes(path + "-journal"), inQuotes(path)));
}

QByteArray firstBytes(const std::string& path, qint64 length) {
    QFile file(QString::fromStdString(path));
    return file.open(QIODevice::ReadOnly) ? file.read(length) : QByteArray();
}

std::string_view viewOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

qint64 sizeOnDisk(const std::string& path) {
    return QFile(QString::fromStdString(path)).size();
}

bool isSameFile(const std::string& first, const std::string& second) {
    QFile a(QString::fromStdString(first));
    QFile b(QString::fromStdString(second));
    if (!a.open(QIODevice::ReadOnly) || !b.open(QIODevice::ReadOnly) || a.size() != b.size()) {
        return false;
    }
    while (!a.atEnd()) {
        const QByteArray block = a.read(1 << 20);
        if (block.isEmpty() || block != b.read(block.size())) {
            return false;
        }
    }
    return true;
}

/// Reads a private copy whole; refuses what is not sound.
Result<std::unique_ptr<Database>> readCopy(const std::string& copy, const std::string& path, Ledger& ledger) {
    int sqliteCode = SQLITE_OK;
    auto database = openAsItIs(copy, Access::ownFile, path, sqliteCode);
    if (!database) {
        return database;
    }
    if (auto read = inOneState(**database, [&] { return readSound(**database, ledger); }); !read) {
        return tl::unexpected(read.error());
    }
    return database;
}

/// Whether the journal's header fits the file as found. A journal that does not begin as one does plays nothing back.
bool fits(const PrivateCopy& copy) {
    const auto journal = readJournalHeader(viewOf(firstBytes(copy.journal(), 28)));
    if (!journal) {
        return true;
    }
    const QByteArray header = firstBytes(copy.asFound(), 100);
    const std::uint32_t pageSize = header.size() < 100 ? 0 : bigEndian(viewOf(header), 16) >> 16U;
    return journal->pageSize == pageSize && journal->pagesBefore != 0 &&
           std::int64_t{journal->pagesBefore} * pageSize <= sizeOnDisk(copy.asFound());
}

/// A copy whose journal was judged.
struct Judged {
    std::string playedBack;   ///< the record before the write
    Result<void> soundness;   ///< of that
    bool isForeign = false;   ///< the journal is another file's
    bool isUnchanged = false; ///< the write had not reached the record
};

Result<Judged> judge(PrivateCopy& copy, const std::string& path) {
    Judged judged;
    if (!fits(copy)) {
        judged.isForeign = true;
        return judged;
    }
    auto playedBack = copy.playedBack();
    if (!playedBack) {
        return tl::unexpected(playedBack.error());
    }
    judged.playedBack = std::move(*playedBack);
    judged.isUnchanged = isSameFile(judged.playedBack, copy.asFound());
    const std::uint32_t before = changeCounter(viewOf(firstBytes(judged.playedBack, 100)));
    const std::uint32_t found = changeCounter(viewOf(firstBytes(copy.asFound(), 100)));
    Ledger ledger;
    const auto sound = readCopy(judged.playedBack, path, ledger);
    judged.soundness = sound ? Result<void>() : tl::unexpected(sound.error());
    Ledger asFound;
    const bool isSoundAsFound =
        judged.isUnchanged ? sound.has_value() : readCopy(copy.asFound(), path, asFound).has_value();
    judged.isForeign =
        (found != before && found != before + 1) ||
        (isSoundAsFound && !judged.isUnchanged && (!sound || compare(asFound, ledger).onlyInSecond != 0));
    return judged;
}

/// The day on which the journal was last written: when the write was cut off.
Date dayOf(const std::string& file) {
    struct stat status {};
    const bool isThere = ::stat(file.c_str(), &status) == 0;
    return dateOf(UtcTime{isThere ? static_cast<std::int64_t>(status.st_mtime) * 1000 : 0});
}

Result<void> keepAs(const std::string& kept, const std::string& bytesOf, const std::string& record) {
    return makeNewFileLike(record, kept, [&](const std::string& unfinished) -> Result<void> {
        QFile from(QString::fromStdString(bytesOf));
        QFile to(QString::fromStdString(unfinished));
        bool good = from.open(QIODevice::ReadOnly) && to.open(QIODevice::WriteOnly);
        while (good && !from.atEnd()) {
            const QByteArray block = from.read(1 << 20);
            good = !block.isEmpty() && to.write(block) == block.size();
        }
        return good && to.flush()
                   ? Result<void>()
                   : refuse(Core::say("%1 cannot be written: %2.", inQuotes(kept), to.errorString().toStdString()));
    });
}

/// Keeps record and journal as they were found; gives the record's new name.
Result<std::string> keepBoth(const PrivateCopy& copy, const std::string& path) {
    const std::string kept = cutOffBackupName(path, dayOf(path + "-journal"));
    // The journal first: a half-written record without it would pass for a damaged one.
    if (auto done = keepAs(kept + "-journal", copy.journal(), path); !done) {
        return tl::unexpected(done.error());
    }
    if (auto done = keepAs(kept, copy.asFound(), path); !done) {
        ::unlink((kept + "-journal").c_str());
        return tl::unexpected(done.error());
    }
    return kept;
}

} // namespace

Result<std::unique_ptr<Database>> openBeforeCutOff(const std::string& path, int& sqliteCode) {
    sqliteCode = SQLITE_READONLY_ROLLBACK;
    auto copy = PrivateCopy::of(path);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    if (!copy->isCutOff()) {
        return openAsItIs(path, Access::readOnly, path, sqliteCode);
    }
    const auto judged = judge(*copy, path);
    if (!judged) {
        return tl::unexpected(judged.error());
    }
    if (judged->isForeign) {
        return refuseForeign(path);
    }
    auto database = openAsItIs(judged->playedBack, Access::ownFile, path, sqliteCode);
    if (database) {
        (*database)->setRemark(Core::say("A write to %1 was cut off: it is shown as it was before that write, and was "
                                         "not touched. The write is taken back when it is next opened to be written.",
                                         inQuotes(path)));
    }
    return database;
}

Result<std::unique_ptr<Database>> takeCutOffBack(const std::string& path, int& sqliteCode) {
    sqliteCode = SQLITE_READONLY_ROLLBACK;
    auto copy = PrivateCopy::of(path);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    std::string remark;
    if (copy->isCutOff()) {
        const auto judged = judge(*copy, path);
        if (!judged) {
            return tl::unexpected(judged.error());
        }
        if (judged->isForeign) {
            return refuseForeign(path);
        }
        if (!judged->soundness) {
            return tl::unexpected(judged->soundness.error());
        }
        const bool isJournal = readJournalHeader(viewOf(firstBytes(copy->journal(), 28))).has_value();
        if (judged->isUnchanged && isJournal) {
            remark =
                Core::say("A write to %1 was cut off before it reached the record: nothing that was stored is lost.",
                          inQuotes(path));
        } else {
            const auto kept = keepBoth(*copy, path);
            if (!kept) {
                return tl::unexpected(kept.error());
            }
            remark = Core::say("A write to %1 was cut off and was taken back: nothing that was stored is lost. Record "
                               "and journal as they were found are kept as %2 and %3.",
                               inQuotes(path), inQuotes(*kept), inQuotes(*kept + "-journal"));
        }
    }
    auto database = openAsItIs(path, Access::takingBack, path, sqliteCode);
    if (!database) {
        return database;
    }
    // To go on, a connection that plays nothing back.
    database->reset();
    database = openAsItIs(path, Access::readWrite, path, sqliteCode);
    if (database) {
        (*database)->setRemark(std::move(remark));
    }
    return database;
}

} // namespace caprail
