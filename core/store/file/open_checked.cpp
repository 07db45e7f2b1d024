// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/open_checked.h>

#include <sqlite3.h>
#include <store/file/beside.h>
#include <store/file/cut_off.h>
#include <store/sqlite/defences.h>
#include <store/file/entry_loader.h>
#include <store/sqlite/schema.h>
#include <store/sqlite/time_guard.h>
#include <base/say.h>

namespace caprail {

namespace {

std::int64_t sizeOf(const Database& database) {
    return database.fileSize().value_or(0);
}

} // namespace

Result<void> inOneState(Database& database, const std::function<Result<void>()>& read) {
    const TimeGuard guard(database, TimeGuard::allowedFor(sizeOf(database)));
    if (auto begun = database.run("BEGIN"); !begun) {
        return begun;
    }
    Result<void> done = read();
    auto ended = database.run("ROLLBACK"); // nothing was written: this lets the read lock go
    return done ? ended : done;
}

Result<std::unique_ptr<Database>> openAsItIs(const std::string& path, Access access, const std::string& shownAs,
                                             int& sqliteCode) {
    auto database = Database::open(path, access, shownAs);
    if (!database) {
        sqliteCode = SQLITE_CANTOPEN;
        return database;
    }
    const TimeGuard guard(**database, TimeGuard::allowedFor(sizeOf(**database)));
    auto done = defend(**database);
    const auto readable = (*database)->integer("SELECT count(*) FROM sqlite_schema");
    sqliteCode = readable ? SQLITE_OK : (*database)->lastCode();
    if (!done || !readable) {
        return tl::unexpected(done ? readable.error() : done.error());
    }
    return database;
}

Result<void> readSound(Database& database, Ledger& ledger) {
    // The schema first: until it is known to be ours, a check of the pages could run expressions of someone else's.
    auto good = verifySchema(database);
    return good ? readSoundTables(database, ledger) : good;
}

Result<void> readSoundTables(Database& database, Ledger& ledger) {
    if (auto good = verifyPages(database); !good) {
        return good;
    }
    if (auto good = verifyStructure(database, "quick_check"); !good) {
        return good;
    }
    return readEntries(database, ledger);
}

Result<std::unique_ptr<Database>> openDefended(const std::string& path, Access access, int* sqliteCode) {
    int unasked = SQLITE_OK;
    int& why = sqliteCode == nullptr ? unasked : *sqliteCode;
    why = SQLITE_CANTOPEN;
    if (auto good = lookBeside(path); !good) {
        return tl::unexpected(good.error());
    }
    auto database = openAsItIs(path, access, path, why);
    if (database || why != SQLITE_READONLY_ROLLBACK) {
        return database;
    }
    return access == Access::readOnly ? openBeforeCutOff(path, why) : takeCutOffBack(path, why);
}

Result<std::unique_ptr<Database>> openChecked(const std::string& path, Access access, Ledger& ledger) {
    auto database = openDefended(path, access);
    if (!database) {
        return database;
    }
    if (auto read = inOneState(**database, [&] { return readSound(**database, ledger); }); !read) {
        return tl::unexpected(read.error());
    }
    return database;
}

Result<void> readTail(Database& database, Ledger& ledger) {
    return inOneState(database, [&]() -> Result<void> {
        if (!ledger.empty()) {
            auto row = database.prepare("SELECT seal FROM entry WHERE sequence = ?");
            if (!row) {
                return tl::unexpected(row.error());
            }
            row->bind(1, ledger.size());
            const auto found = row->step();
            if (!found) {
                return tl::unexpected(found.error());
            }
            const Seal seal = ledger.seal();
            if (!*found || row->bytes(0) !=
                               std::string_view(reinterpret_cast<const char*>(seal.bytes.data()), seal.bytes.size())) {
                return refuse(Core::say("%1 no longer holds the entries that were read from it: it was replaced. Save "
                                        "a copy of what is on screen elsewhere.",
                                        inQuotes(database.path())));
            }
        }
        return readEntries(database, ledger);
    });
}

Result<void> verifyStructure(Database& database, const std::string& pragma) {
    const auto finding = database.text("PRAGMA " + pragma + "(1)");
    if (!finding) {
        return tl::unexpected(finding.error());
    }
    if (*finding != "ok") {
        return refuse(
            Core::say("%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).",
                      inQuotes(database.path()), finding->substr(0, 200)));
    }
    return {};
}

Result<void> verifyPages(Database& database) {
    const auto unused = database.integer("PRAGMA freelist_count");
    const auto pages = unused ? database.integer("PRAGMA page_count") : unused;
    const auto bytes = pages ? database.integer("PRAGMA page_size") : pages;
    const auto size = bytes ? database.fileSize() : bytes;
    if (!size) {
        return tl::unexpected(size.error());
    }
    if (*unused != 0) {
        return refuse(Core::say("%1 is damaged: it calls %2 of its pages free, and a record has none; the next entry "
                                "would be written over others. Salvage what can be read into a new file.",
                                inQuotes(database.path()), *unused));
    }
    if (*pages * *bytes != *size) {
        return refuse(Core::say("%1 is damaged: its pages make %2 bytes, and the file has %3. Salvage what can be read "
                                "into a new file.",
                                inQuotes(database.path()), *pages * *bytes, *size));
    }
    return {};
}

Result<void> backUp(Database& database, const std::string& path) {
    auto copy = Database::open(path, Access::readWrite);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    sqlite3_backup* const backup = sqlite3_backup_init((*copy)->handle(), "main", database.handle(), "main");
    if (backup == nullptr) {
        return tl::unexpected((*copy)->problem());
    }
    const int step = sqlite3_backup_step(backup, -1);
    const int finish = sqlite3_backup_finish(backup);
    if (step != SQLITE_DONE || finish != SQLITE_OK) {
        return refuse(sentenceFor(step == SQLITE_DONE ? finish : step, path, sqlite3_errstr(step)));
    }
    return {};
}

} // namespace caprail
