// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/care/damaged_copy.h>

#include <QFile>
#include <algorithm>
#include <base/say.h>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <optional>
#include <set>
#include <sqlite3.h>
#include <store/file/beside.h>
#include <store/file/entry_loader.h>
#include <store/file/entry_rows.h>
#include <store/file/journal.h>
#include <store/sqlite/defences.h>
#include <store/sqlite/schema.h>

namespace caprail {

namespace {

constexpr qint64 pageSize = 4096; // as createSchema sets it

Result<std::unique_ptr<Database>> openTolerantly(const std::string& copy) {
    auto database = Database::open(copy, Access::ownFile);
    if (!database) {
        return database;
    }
    if (auto done = defend(**database); !done) {
        return tl::unexpected(done.error());
    }
    // Lets SQLite read a file that is shorter than its header says; nothing is written with it.
    sqlite3_db_config((*database)->handle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    sqlite3_db_config((*database)->handle(), SQLITE_DBCONFIG_WRITABLE_SCHEMA, 1, nullptr);
    return database;
}

/// True when every table of a record is there to the letter. Views and triggers do not matter to one who only reads
/// tables, with views switched off.
bool hasOurTables(Database& database, std::uint32_t version) {
    auto row = database.prepare("SELECT count(*), min(sql) FROM sqlite_schema WHERE name = ? AND type = 'table'");
    return row && std::ranges::all_of(schemaItems(version), [&](const SchemaItem& item) {
               if (item.type != "table") {
                   return true;
               }
               row->bind(1, std::string_view(item.name));
               const auto found = row->step();
               const bool same = found && *found && row->integer(0) == 1 && row->text(1) == item.sql;
               row->reset();
               return same;
           });
}

/// The pages of a fresh record that hold its schema: all but the roots of tables and indexes.
Result<std::set<std::int64_t>> schemaPages(Database& fresh) {
    auto count = fresh.integer("PRAGMA page_count");
    if (!count) {
        return tl::unexpected(count.error());
    }
    std::set<std::int64_t> pages;
    for (std::int64_t page = 1; page <= *count; ++page) {
        pages.insert(page);
    }
    auto roots = fresh.prepare("SELECT rootpage FROM sqlite_schema");
    if (!roots) {
        return tl::unexpected(roots.error());
    }
    for (auto more = roots->step();; more = roots->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return pages;
        }
        pages.erase(roots->integer(0));
    }
}

void putBigEndian(QByteArray& page, qsizetype at, std::uint32_t value) {
    for (qsizetype i = 0; i < 4; ++i) {
        page[at + i] = static_cast<char>(value >> (24 - 8 * i));
    }
}

/// Names the version in the copy's header (“user version”, 4 bytes from the 60th on): what reads it goes by that.
Result<void> putVersion(const std::string& copy, std::uint32_t version) {
    constexpr qsizetype place = 60;
    QFile target(QString::fromStdString(copy));
    QByteArray bytes(4, '\0');
    putBigEndian(bytes, 0, version);
    if (!target.open(QIODevice::ReadWrite) || !target.seek(place) || target.write(bytes) != bytes.size() ||
        !target.flush()) {
        return refuse(Core::say("The copy to salvage from cannot be written: %1.", target.errorString().toStdString()));
    }
    return {};
}

/// Lays the schema of a fresh record of a version over the copy; gives the number of pages that it covers.
Result<std::size_t> graftSchema(const std::string& copy, std::uint32_t version) {
    const std::string freshPath = copy + ".fresh";
    QFile::remove(QString::fromStdString(freshPath));
    QFile fresh(QString::fromStdString(freshPath));
    QFile target(QString::fromStdString(copy));
    if (!fresh.open(QIODevice::ReadWrite) || !target.open(QIODevice::ReadWrite)) {
        return refuse(Core::say("The copy to salvage from cannot be written: %1.", target.errorString().toStdString()));
    }
    auto database = Database::open(freshPath, Access::readWrite);
    auto made = database ? createSchema(**database, version) : tl::unexpected(database.error());
    auto pages = made ? schemaPages(**database) : tl::unexpected(made.error());
    if (!pages) {
        return tl::unexpected(pages.error());
    }
    for (const std::int64_t number : *pages) {
        fresh.seek((number - 1) * pageSize);
        QByteArray page = fresh.read(pageSize);
        if (number == 1) {
            putBigEndian(page, 28, static_cast<std::uint32_t>(target.size() / pageSize)); // pages in the file
            putBigEndian(page, 32, 0);                                                    // no list of free pages
            putBigEndian(page, 36, 0);
        }
        target.seek((number - 1) * pageSize);
        if (page.size() != pageSize || target.write(page) != pageSize) {
            return refuse(
                Core::say("The copy to salvage from cannot be written: %1.", target.errorString().toStdString()));
        }
    }
    return target.flush() ? Result<std::size_t>(pages->size())
                          : refuse(Core::say("The copy to salvage from cannot be written."));
}

/// The version in the header of a file whose header looks whole.
std::optional<std::uint32_t> versionTold(const std::string& copy) {
    const auto header = readHeader(copy);
    return header && header->kind == FileKind::record ? std::optional(header->version) : std::nullopt;
}

/// What a schema shows of the first entries: one for each that can be read whole, and one more where its seal fits,
/// which it does not under a schema that hides a column.
int entriesShown(Database& database) {
    EntryLookup lookup(database);
    EntryRow row;
    Seal before;
    int shown = 0;
    for (std::int64_t number = 1; number <= 1'000; ++number) {
        if (lookup.read(number, row)) {
            shown += verifiedEntry(row, before) ? 2 : 1;
            before = row.seal;
        }
    }
    return shown;
}

/// Copies block by block; counts those that the disk does not give, which are taken as zeros.
Result<void> copyBlocks(const std::string& damaged, const std::string& copy, std::int64_t& unreadable) {
    QFile from; // opened by its bytes: its name may be no text
    QFile to(QString::fromStdString(copy));
    FILE* const opened = std::fopen(damaged.c_str(), "rb");
    if (opened == nullptr || !from.open(opened, QIODevice::ReadOnly, QFileDevice::AutoCloseHandle) ||
        !to.open(QIODevice::WriteOnly)) {
        return refuse(Core::say("%1 cannot be read: %2.", inQuotes(damaged), std::strerror(errno)));
    }
    for (qint64 at = 0; at < from.size(); at += pageSize) {
        const qint64 wanted = std::min(pageSize, from.size() - at);
        QByteArray block = from.seek(at) ? from.read(wanted) : QByteArray();
        if (block.size() != wanted) {
            ++unreadable;
            block = QByteArray(wanted, '\0');
        }
        if (to.write(block) != wanted) {
            return refuse(Core::say("There is no room to work on a copy of %1: %2.", inQuotes(damaged),
                                    to.errorString().toStdString()));
        }
    }
    return to.flush() ? Result<void>()
                      : refuse(Core::say("There is no room to work on a copy of %1.", inQuotes(damaged)));
}

std::uint32_t transactionsIn(const std::string& copy) {
    QFile file(QString::fromStdString(copy));
    const QByteArray header = file.open(QIODevice::ReadOnly) ? file.read(100) : QByteArray();
    return changeCounter({header.constData(), static_cast<std::size_t>(header.size())});
}

/// Plays the journal beside the copy back; true when what comes out is at most one write older than the copy was.
bool takesBackOneWrite(const std::string& copy) {
    const std::uint32_t found = transactionsIn(copy);
    if (auto database = openTolerantly(copy)) {
        // Only so that SQLite looks for the journal; what came of it is read from the copy below.
        (void)(*database)->integer("SELECT count(*) FROM sqlite_schema");
    }
    const std::uint32_t before = transactionsIn(copy);
    return found == before || found == before + 1;
}

} // namespace

Result<void> copyDamaged(const std::string& damaged, const std::string& copy, std::vector<std::string>& sentences) {
    std::int64_t unreadable = 0;
    if (auto copied = copyBlocks(damaged, copy, unreadable); !copied) {
        return copied;
    }
    if (unreadable != 0) {
        sentences.push_back(Core::say("The disk does not give %1 blocks of the file.", unreadable));
    }
    const QString journal = QString::fromStdString(damaged + "-journal");
    const auto beside = lookBeside(damaged);
    if (!beside) {
        sentences.push_back(Core::say("What lies beside the file was not used: %1", beside.error().sentence));
        return {};
    }
    if (QFile(journal).size() == 0 || !QFile::copy(journal, QString::fromStdString(copy + "-journal"))) {
        return {};
    }
    if (takesBackOneWrite(copy)) {
        sentences.emplace_back(Core::say("A write that was cut off is taken back first."));
        return {};
    }
    sentences.emplace_back(
        Core::say("The journal beside the file is that of a write to another one, and was not used."));
    QFile::remove(QString::fromStdString(copy + "-journal"));
    return copyBlocks(damaged, copy, unreadable);
}

Result<std::unique_ptr<Database>> openDamaged(const std::string& copy, std::vector<std::string>& sentences) {
    auto database = openTolerantly(copy);
    // The tables say themselves of which version they are; the number in the header may be what was damaged.
    for (std::uint32_t version = schemaVersion; database && version >= 1; --version) {
        if (!hasOurTables(**database, version)) {
            continue;
        }
        if (const auto named = versionOf(**database); named && *named == version) {
            return database;
        }
        database = refuse("closed");
        const auto put = putVersion(copy, version);
        return put ? openTolerantly(copy) : tl::unexpected(put.error());
    }
    database = refuse("closed"); // let go of the file before its pages are changed
    QFile::remove(QString::fromStdString(copy + "-journal"));
    const QString file = QString::fromStdString(copy);
    const QString before = file + QStringLiteral(".before");
    if (!QFile::copy(file, before)) {
        return refuse(Core::say("There is no room to work on a copy of the damaged record."));
    }
    // It is the schema under which most entries show; of several alike the one that the header names, if that looks
    // whole, else the one whose fewer pages cover less of what follows them, and of these the newer: a column that an
    // older record has not is empty in it.
    const auto told = versionTold(copy);
    std::uint32_t best = 0;
    int most = -1;
    std::size_t pages = 0; // of the schema that was laid over last
    std::size_t fewest = 0;
    const auto graft = [&](std::uint32_t version) -> Result<std::unique_ptr<Database>> {
        QFile::remove(file);
        if (!QFile::copy(before, file)) {
            return refuse(Core::say("There is no room to work on a copy of the damaged record."));
        }
        const auto grafted = graftSchema(copy, version);
        if (!grafted) {
            return tl::unexpected(grafted.error());
        }
        pages = *grafted;
        return openTolerantly(copy);
    };
    for (std::uint32_t version = 1; version <= schemaVersion; ++version) {
        auto tried = graft(version);
        if (!tried) {
            return tried;
        }
        const int entries = entriesShown(**tried);
        const bool isPreferred = told == version || (told != best && pages <= fewest);
        if ((entries > most || (entries == most && isPreferred)) && hasOurTables(**tried, version)) {
            most = entries;
            fewest = pages;
            best = version;
        }
    }
    if (best == 0) {
        return refuse(Core::say("The tables of the record cannot be found any more: look for a copy of it."));
    }
    sentences.emplace_back(
        Core::say("The header or the list of tables was damaged or altered and is taken from a fresh record."));
    return graft(best);
}

} // namespace caprail
