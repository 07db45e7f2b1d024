// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/database.h>

#include <QUtf8StringView>
#include <sqlite3.h>
#include <store/sqlite/connection_for_many.h>
#include <store/sqlite/guarded_vfs.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::size_t longestPath = 504; ///< SQLite's 512 bytes, less the ending of a journal's name

} // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

void Statement::bind(int at, std::int64_t value) {
    sqlite3_bind_int64(m_statement.get(), at, value);
}

void Statement::bind(int at, std::string_view text) {
    // An empty view may have no address, which SQLite would take for NULL.
    sqlite3_bind_text64(m_statement.get(), at, text.empty() ? "" : text.data(), text.size(), SQLITE_STATIC,
                        SQLITE_UTF8);
}

void Statement::bindBytes(int at, std::string_view bytes) {
    sqlite3_bind_blob64(m_statement.get(), at, bytes.empty() ? "" : bytes.data(), bytes.size(), SQLITE_STATIC);
}

void Statement::bindNull(int at) {
    sqlite3_bind_null(m_statement.get(), at);
}

Result<bool> Statement::step() {
    const int sqliteCode = sqlite3_step(m_statement.get());
    if (sqliteCode == SQLITE_ROW) {
        return true;
    }
    if (sqliteCode == SQLITE_DONE) {
        return false;
    }
    return tl::unexpected(m_database->problem());
}

Result<void> Statement::run() {
    auto more = step();
    while (more && *more) {
        more = step();
    }
    reset();
    return more ? Result<void>() : tl::unexpected(more.error());
}

void Statement::reset() {
    sqlite3_reset(m_statement.get()); // its result repeats that of the last step, which was looked at there
}

std::int64_t Statement::integer(int column) const {
    return sqlite3_column_int64(m_statement.get(), column);
}

std::string_view Statement::text(int column) const {
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_statement.get(), column));
    return {text == nullptr ? "" : text, static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column))};
}

std::string_view Statement::bytes(int column) const {
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement.get(), column));
    return {bytes == nullptr ? "" : bytes, static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column))};
}

Statement::Value Statement::value(int column) const {
    sqlite3_value* const held = sqlite3_column_value(m_statement.get(), column);
    switch (sqlite3_value_type(held)) {
    case SQLITE_INTEGER:
        return {Type::integer, sqlite3_value_int64(held), {}};
    case SQLITE_FLOAT:
        return {Type::real, 0, {}};
    case SQLITE_TEXT: {
        const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(held));
        return {
            Type::text,
            0,
            {text == nullptr ? "" : text, static_cast<std::size_t>(text == nullptr ? 0 : sqlite3_value_bytes(held))}};
    }
    case SQLITE_BLOB: {
        const auto* bytes = static_cast<const char*>(sqlite3_value_blob(held));
        return {Type::blob,
                0,
                {bytes == nullptr ? "" : bytes,
                 static_cast<std::size_t>(bytes == nullptr ? 0 : sqlite3_value_bytes(held))}};
    }
    default:
        return {};
    }
}

Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access, const std::string& shownAs) {
    if (path.size() > longestPath) {
        return refuse(Core::say("%1 has a path too long to be opened: with what a record needs beside it, it would have "
                                "more than 512 bytes. Choose a folder less deep.",
                                inQuotes(shownAs.empty() ? path : shownAs)));
    }
    sqlite3* connection = nullptr;
    const bool mayWrite = access == Access::readWrite || access == Access::takingBack || access == Access::ownFile;
    const int flags = SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_NOFOLLOW | SQLITE_OPEN_EXRESCODE |
                      (mayWrite ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY);
    const char* const layer = access == Access::ownFile      ? "unix"
                              : access == Access::untouched  ? layerForMany()
                              : access == Access::takingBack ? recoveringVfs()
                                                             : guardedVfs();
    const std::string& named = shownAs.empty() ? path : shownAs;
    if (layer == nullptr) {
        return refuse(sentenceFor(SQLITE_NOMEM, named, {}));
    }
    const int sqliteCode = sqlite3_open_v2(path.c_str(), &connection, flags, layer);
    std::unique_ptr<Database> database(new Database(named, connection));
    if (sqliteCode != SQLITE_OK) {
        return refuse(sentenceFor(sqliteCode, named, connection == nullptr ? "" : sqlite3_errmsg(connection)));
    }
    return database;
}

Database::~Database() {
    sqlite3_close_v2(m_connection); // waits for statements that are still alive
}

Result<Statement> Database::prepare(std::string_view sql) {
    sqlite3_stmt* statement = nullptr;
    const int sqliteCode = sqlite3_prepare_v3(m_connection, sql.data(), static_cast<int>(sql.size()),
                                              SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
    if (sqliteCode != SQLITE_OK) {
        return tl::unexpected(problem());
    }
    return Statement(*this, statement);
}

Result<void> Database::run(const std::string& sql) {
    if (sqlite3_exec(m_connection, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) {
        return tl::unexpected(problem());
    }
    return {};
}

Result<std::int64_t> Database::integer(std::string_view sql) {
    auto statement = prepare(sql);
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    const auto row = statement->step();
    if (!row) {
        return tl::unexpected(row.error());
    }
    if (!*row) {
        return refuse(Core::say("%1 gives no answer to “%2”.", inQuotes(m_path), sql));
    }
    return statement->integer(0);
}

Result<std::string> Database::text(std::string_view sql) {
    auto statement = prepare(sql);
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    const auto row = statement->step();
    if (!row) {
        return tl::unexpected(row.error());
    }
    if (!*row) {
        return refuse(Core::say("%1 gives no answer to “%2”.", inQuotes(m_path), sql));
    }
    return std::string(statement->text(0));
}

Problem Database::problem() const {
    return {sentenceFor(lastCode(), m_path, sqlite3_errmsg(m_connection))};
}

Result<std::int64_t> Database::fileSize() const {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(m_connection, "main", SQLITE_FCNTL_FILE_POINTER, static_cast<void*>(&file));
    sqlite3_int64 size = 0;
    const int sqliteCode =
        file == nullptr || file->pMethods == nullptr ? SQLITE_CANTOPEN : file->pMethods->xFileSize(file, &size);
    return sqliteCode == SQLITE_OK ? Result<std::int64_t>(size)
                                   : refuse(sentenceFor(sqliteCode, m_path, sqlite3_errstr(sqliteCode)));
}

int Database::lastCode() const {
    return sqlite3_extended_errcode(m_connection);
}

bool Database::inTransaction() const {
    return sqlite3_get_autocommit(m_connection) == 0;
}

bool isUnfinished(int sqliteCode) {
    if (sqliteCode == SQLITE_IOERR_SHORT_READ || sqliteCode == SQLITE_IOERR_CORRUPTFS) {
        return false; // the file ends where a page should be
    }
    switch (sqliteCode & 0xff) {
    case SQLITE_INTERRUPT:
    case SQLITE_NOMEM:
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_READONLY:
    case SQLITE_PROTOCOL:
    case SQLITE_NOLFS:
        return true;
    default:
        return false;
    }
}

std::string sentenceFor(int sqliteCode, const std::string& path, const std::string& detail) {
    const std::string file = inQuotes(path);
    if (sqliteCode == SQLITE_READONLY_DBMOVED) {
        return Core::say("%1 was moved or deleted while it was open: save a copy elsewhere, then open that.", file);
    }
    if (sqliteCode == SQLITE_READONLY_ROLLBACK) {
        return Core::say("A write to %1 was cut off while it was open here: open it again, so that the write is taken "
                         "back.",
                         file);
    }
    if (sqliteCode == SQLITE_IOERR_LOCK || sqliteCode == SQLITE_IOERR_UNLOCK || sqliteCode == SQLITE_IOERR_RDLOCK ||
        sqliteCode == SQLITE_IOERR_CHECKRESERVEDLOCK) {
        return Core::say("The folder of %1 does not lock files, as some network folders do not: have locks switched on "
                         "there, or save a copy on a disk of this computer.",
                         file);
    }
    switch (sqliteCode & 0xff) {
    case SQLITE_NOLFS:
        return Core::say("The disk of %1 takes no file of this size: save a copy on another one.", file);
    case SQLITE_INTERRUPT:
        return Core::say("%1 takes longer to read than a record does, and was not read to its end: nothing is said of "
                         "it. It was not changed; try again, or look for a copy of it.",
                         file);
    case SQLITE_FULL:
        return Core::say("There is no room on the disk of %1: free some, then store again.", file);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Core::say("%1 is being written by another program: try again in a moment.", file);
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return Core::say("%1 may not be written: ask for the right to, or save a copy elsewhere.", file);
    case SQLITE_CANTOPEN:
        return Core::say("%1 cannot be opened: check that it exists and that it and its folder may be used.", file);
    case SQLITE_IOERR:
        return Core::say(
            "The disk of %1 does not answer as it should (%2): check it, then try again or save a copy elsewhere.",
            file, detail);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return Core::say("%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).",
                         file, detail);
    case SQLITE_NOMEM:
        return Core::say("There is not enough memory for %1: close other programs, then try again.", file);
    case SQLITE_TOOBIG:
        return Core::say("%1 would hold or holds something larger than a record may: the limit is 64 MiB.", file);
    default:
        return file + ": " + detail + ".";
    }
}

bool isPlainUtf8(std::string_view text) {
    // Plain ASCII, which nearly every text is, in a loop that the compiler takes many at a time of.
    unsigned other = 0;
    for (const char c : text) {
        other |= static_cast<unsigned>(c <= 0); // above ASCII, characters are negative
    }
    if (other == 0) {
        return true;
    }
    return text.find('\0') == std::string_view::npos &&
           QUtf8StringView(text.data(), static_cast<qsizetype>(text.size())).isValidUtf8();
}

std::string inQuotes(const std::string& path) {
    return "“" + path + "”";
}

} // namespace caprail
