// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/tables.h>

#include <base/say.h>
#include <iterator>
#include <ledger/entry.h>
#include <optional>
#include <shopserver/migration_texts.h>

namespace caprail {

namespace {

/// Any number that no other program takes for its own locks.
constexpr std::int64_t migrationLock = 0x43617072'61696c31;
constexpr std::int64_t oldestServer = 140'000;

constexpr std::int64_t numberOf(const MigrationText& migration) {
    std::int64_t number = 0;
    for (const char digit : migration.name.substr(0, 3)) {
        number = 10 * number + (digit - '0');
    }
    return number;
}
static_assert(
    [] {
        std::int64_t before = 0;
        for (const MigrationText& migration : migrationTexts) {
            if (numberOf(migration) != ++before) {
                return false;
            }
        }
        return true;
    }(),
    "migrations are numbered from 001 on, without gaps");

/// As one statement: of several in one call, the driver tells only how the first went.
Result<void> runWhole(Connection& database, std::string_view sql) {
    return database.run("DO $caprail_do$ BEGIN EXECUTE $caprail_sql$" + std::string(sql) +
                        "$caprail_sql$; END $caprail_do$");
}

/// The number of the newest migration that was applied; 0 where there are no tables. Refuses others than this program
/// knows.
Result<std::int64_t> appliedTo(Connection& database) {
    auto isThere =
        database.integer("SELECT CAST(count(*) AS bigint) FROM pg_class AS c JOIN pg_namespace AS n ON n.oid "
                         "= c.relnamespace WHERE n.nspname = 'caprail' AND c.relname = 'migration'");
    if (!isThere || *isThere == 0) {
        return isThere;
    }
    auto rows = database.prepare("SELECT number, hash FROM caprail.migration ORDER BY number");
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    std::int64_t applied = 0;
    const auto read = rows->each([&](const Query& row) -> Result<void> {
        const std::int64_t number = row.integer(0);
        if (number > newestTables()) {
            return refuse(Core::say("The database %1 is of a newer version of this program: bring this one up to date.",
                                    database.place().shownAs));
        }
        // Whoever may write there can have written anything: each follows the one before it.
        if (number != applied + 1 || row.text(1) != sha256Hex(migrationTexts[static_cast<std::size_t>(applied)].sql)) {
            return refuse(Core::say("The tables of the database %1 were made by another edition of this program (%2): "
                                    "use that one.",
                                    database.place().shownAs, number));
        }
        applied = number;
        return {};
    });
    return read ? Result<std::int64_t>(applied) : tl::unexpected(read.error());
}

Result<void> mayHoldTables(Connection& database) {
    const auto version = database.integer("SELECT CAST(current_setting('server_version_num') AS bigint)");
    const auto encoding =
        version ? database.text("SELECT current_setting('server_encoding')") : tl::unexpected(version.error());
    if (!encoding) {
        return tl::unexpected(encoding.error());
    }
    if (*version < oldestServer) {
        return refuse(
            Core::say("The server of %1 is older than PostgreSQL 14: use a newer one.", database.place().shownAs));
    }
    if (*encoding != "UTF8") {
        return refuse(Core::say("The database %1 keeps texts in %2, which cannot hold every name: make one in UTF8.",
                                database.place().shownAs, *encoding));
    }
    return {};
}

Result<void> apply(Connection& database, const MigrationText& migration) {
    if (auto done = runWhole(database, migration.sql); !done) {
        return done;
    }
    auto note = database.prepare("INSERT INTO caprail.migration (number, name, hash) VALUES (?, ?, ?)");
    if (!note) {
        return tl::unexpected(note.error());
    }
    note->bind(1, numberOf(migration));
    note->bind(2, migration.name);
    note->bind(3, sha256Hex(migration.sql));
    return note->run();
}

/// Within a transaction.
Result<MadeTables> bringUpToDate(Connection& database) {
    const auto locked = database.run("SELECT pg_advisory_xact_lock(" + std::to_string(migrationLock) + ")");
    const auto before = locked ? appliedTo(database) : tl::unexpected(locked.error());
    if (!before) {
        return tl::unexpected(before.error());
    }
    MadeTables made{*before, newestTables()};
    if (made.before == made.now) {
        return made;
    }
    auto done = made.before == 0 ? runWhole(database, rolesText) : Result<void>();
    done = done ? database.run("SET LOCAL ROLE caprail_keeper") : done;
    if (made.before == 0) {
        done = done
                   ? database.run(
                         "CREATE TABLE IF NOT EXISTS caprail.migration (number bigint PRIMARY KEY, name text NOT NULL, "
                         "hash text NOT NULL, applied timestamptz NOT NULL DEFAULT now())")
                   : done;
    }
    for (const MigrationText& migration : migrationTexts) {
        if (done && numberOf(migration) > made.before) {
            done = apply(database, migration);
        }
    }
    return done ? Result<MadeTables>(made) : tl::unexpected(done.error());
}

} // namespace

std::int64_t newestTables() {
    return static_cast<std::int64_t>(std::size(migrationTexts));
}

Result<MadeTables> makeTables(Connection& database) {
    if (auto good = mayHoldTables(database); !good) {
        return tl::unexpected(good.error());
    }
    MadeTables made;
    auto done = database.together([&]() -> Result<void> {
        const auto up = bringUpToDate(database);
        made = up.value_or(made);
        return up ? Result<void>() : tl::unexpected(up.error());
    });
    return done ? Result<MadeTables>(made) : tl::unexpected(done.error());
}

Result<void> checkTables(Connection& database) {
    const auto applied = appliedTo(database);
    if (!applied) {
        return tl::unexpected(applied.error());
    }
    if (*applied == 0) {
        return refuse(
            Core::say("The database %1 has no tables for records: its keeper makes them with “caprail database "
                      "make”.",
                      database.place().shownAs));
    }
    if (*applied < newestTables()) {
        return refuse(
            Core::say("The database %1 is of an older version of this program: its keeper brings it up to date "
                      "with “caprail database make”.",
                      database.place().shownAs));
    }
    return {};
}

} // namespace caprail
