// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/index_file.h>

#include <array>
#include <base/say.h>
#include <climits>
#include <cstdlib>
#include <filesystem>
#include <ledger/entry.h>
#include <shop/figure_rows.h>
#include <shop/listing_columns.h>
#include <store/sqlite/database.h>

namespace caprail {

namespace {

/// Raised with every change of what is worked out from a record; a change of the tables tells by itself
/// (`tablesVersion`).
constexpr std::int64_t indexVersion = 5;

const Dialect& indexDialect() {
    return dialectOf(DatabasePlace::Kind::sqlite);
}

std::vector<std::string> tables() {
    const Dialect& d = indexDialect();
    std::vector<std::string> all{"CREATE TABLE about(root BLOB NOT NULL) STRICT",
                                 "CREATE TABLE listing(id " + std::string(d.id) + ", " + listingDeclared(d) +
                                     ", line BLOB NOT NULL)" + std::string(d.endOfTable),
                                 // No positions are kept: every word typed is looked for by itself, as a prefix.
                                 "CREATE VIRTUAL TABLE found USING fts5(words, detail=none, prefix='1 2 3',"
                                 " tokenize='unicode61 remove_diacritics 2')"};
    for (std::string& table : figureTables(d)) {
        all.push_back(std::move(table));
    }
    return all;
}

/// By which a file is known as an index of these tables and this `indexVersion`: a column more makes another.
std::int64_t tablesVersion() {
    static const std::int64_t version = [] {
        std::string all = std::to_string(indexVersion);
        for (const std::string& table : tables()) {
            all += table;
        }
        return std::stoll(sha256Hex(all).substr(0, 7), nullptr, 16);
    }();
    return version;
}

Result<std::string> madeFolder(const std::string& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    std::array<char, PATH_MAX> real{};
    if (error || ::realpath(folder.c_str(), real.data()) == nullptr) {
        return refuse(
            Core::say("The cache folder %1 cannot be made: check its rights and the disk.", inQuotes(folder)));
    }
    // What is in it names customers: it is for its user alone.
    std::filesystem::permissions(real.data(), std::filesystem::perms::owner_all, error);
    return std::string(real.data());
}

Result<void> runAll(Connection& connection, const std::vector<std::string>& statements) {
    for (const std::string& statement : statements) {
        if (auto done = connection.run(statement); !done) {
            return done;
        }
    }
    return {};
}

/// Whether the file is an index of this version for this folder.
bool isOurs(Connection& connection, const std::string& root) {
    const auto version = connection.integer("PRAGMA user_version");
    if (!version || *version != tablesVersion()) {
        return false;
    }
    const auto about = connection.text("SELECT root FROM about");
    return about && *about == root &&
           connection.integer("SELECT count(*) FROM sqlite_schema WHERE name IN ('listing', 'banded', 'found')") == 3;
}

Result<void> makeTables(Connection& connection, const std::string& root) {
    return connection.together([&]() -> Result<void> {
        if (isOurs(connection, root)) { // another program was faster
            return {};
        }
        if (auto made = runAll(connection, tables()); !made) {
            return made;
        }
        auto about = connection.prepare("INSERT INTO about VALUES(?)");
        if (!about) {
            return tl::unexpected(about.error());
        }
        about->bindBytes(1, root);
        const auto put = about->run();
        return put ? connection.run("PRAGMA user_version = " + std::to_string(tablesVersion())) : put;
    });
}

Result<Connection> opened(const std::string& path) {
    Connection connection(DatabasePlace::file(path));
    auto done = connection.open();
    done = done ? runAll(connection,
                         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = NORMAL", "PRAGMA temp_store = MEMORY",
                          "PRAGMA cache_size = -16000", "PRAGMA mmap_size = 268435456"})
                : done;
    return done ? Result<Connection>(std::move(connection)) : tl::unexpected(done.error());
}

} // namespace

std::string indexPath(const std::string& cacheFolder, const std::string& root) {
    return cacheFolder + "/" + sha256Hex(root).substr(0, 24) + ".index";
}

void discardIndex(const std::string& cacheFolder, const std::string& root) {
    const std::string path = indexPath(cacheFolder, root);
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm"}) {
        std::filesystem::remove(path + ending, ignored);
    }
}

Result<Connection> openIndexInMemory(const std::string& root) {
    Connection connection(DatabasePlace::inMemory());
    auto made = connection.open();
    made = made ? makeTables(connection, root) : made;
    return made ? Result<Connection>(std::move(connection)) : tl::unexpected(made.error());
}

Result<Connection> openIndex(const std::string& cacheFolder, const std::string& root) {
    const auto folder = madeFolder(cacheFolder);
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    const std::string path = indexPath(*folder, root);
    for (int attempt = 1;; ++attempt) {
        auto connection = opened(path);
        if (connection && !isOurs(*connection, root)) {
            const auto parts = connection->integer("SELECT count(*) FROM sqlite_schema");
            if (auto made = parts && *parts == 0 ? makeTables(*connection, root)
                                                 : Result<void>(refuse(Core::say("The index is of another version.")));
                !made) {
                connection = tl::unexpected(made.error());
            }
        }
        if (connection || attempt == 2) {
            return connection;
        }
        discardIndex(*folder, root);
    }
}

} // namespace caprail
