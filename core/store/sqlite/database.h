// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A thin owner of one SQLite connection and of its statements, over the C API: what QtSql leaves out (defensive
/// settings, limits, backup) is what an untrusted file needs. Every failure comes back as a sentence about the file.
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <base/problem.h>

struct sqlite3;
struct sqlite3_stmt;

namespace caprail {

class Database;

/// A prepared statement. It must not outlive its database's connection.
class Statement {
public:
    void bind(int at, std::int64_t value);
    /// The text is not copied: it must live until the next reset.
    void bind(int at, std::string_view text);
    void bindBytes(int at, std::string_view bytes);
    void bindNull(int at);

    /// Runs up to the next row: true when there is one, false when it is done.
    Result<bool> step();
    /// Runs to the end and resets: for statements that give no rows.
    Result<void> run();
    void reset();

    enum class Type { null, integer, real, text, blob };
    [[nodiscard]] std::int64_t integer(int column) const;
    /// Text or bytes of a column, valid until the next step or reset.
    [[nodiscard]] std::string_view text(int column) const;
    [[nodiscard]] std::string_view bytes(int column) const;
    /// A column with its type, asked for in one go: what a whole ledger is read by.
    struct Value {
        Type type = Type::null;
        std::int64_t integer = 0;
        std::string_view text; ///< of a text or bytes; valid until the next step or reset
    };
    [[nodiscard]] Value value(int column) const;

private:
    friend class Database;
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    Statement(Database& database, sqlite3_stmt* statement) : m_database(&database), m_statement(statement) {}
    Database* m_database;
    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
};

/// All but the last go through the layers of guarded_vfs.h.
enum class Access {
    readOnly,   ///< a journal of a write that was cut off is never played back: reading fails then
    readWrite,  ///< neither is it here
    takingBack, ///< it is; for a journal that was judged before (cut_off.h)
    /// Reads the bytes as they lie there: no lock is taken and nothing is made beside the file. It is for files that
    /// are only listed (connection_for_many.h); the caller finds out whether someone wrote meanwhile.
    untouched,
    ownFile ///< of ours in a folder that nobody else may enter, a private copy or an index: as SQLite does it
};

/// A connection. It is not movable, because statements and writers point at it.
class Database {
public:
    /// Opens an existing file (never creates one, never follows a symbolic link in the last part of a resolved path).
    /// Sentences name it `shownAs` when that is given: the record that a private copy was made of.
    static Result<std::unique_ptr<Database>> open(const std::string& path, Access access,
                                                  const std::string& shownAs = {});
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    Result<Statement> prepare(std::string_view sql);
    /// Runs statements that give no rows.
    Result<void> run(const std::string& sql);
    /// The first column of the first row; refuses when there is none.
    Result<std::int64_t> integer(std::string_view sql);
    Result<std::string> text(std::string_view sql);

    /// The last failure as a sentence that names the file and what to do.
    [[nodiscard]] Problem problem() const;
    /// The last failure's extended result code of SQLite.
    [[nodiscard]] int lastCode() const;
    [[nodiscard]] bool inTransaction() const;
    /// As sentences name it.
    [[nodiscard]] const std::string& path() const { return m_path; }
    /// Bytes of the open file, wherever its name leads by now.
    [[nodiscard]] Result<std::int64_t> fileSize() const;
    /// What a person should know of how it was opened (cut_off.h); empty mostly.
    [[nodiscard]] const std::string& remark() const { return m_remark; }
    void setRemark(std::string remark) { m_remark = std::move(remark); }
    /// For a connection that is led to another file (connection_for_many.h), so that sentences name that one.
    void isNowAt(std::string path) { m_path = std::move(path); }
    [[nodiscard]] sqlite3* handle() const { return m_connection; }

private:
    Database(std::string path, sqlite3* connection) : m_path(std::move(path)), m_connection(connection) {}
    std::string m_path;
    std::string m_remark;
    sqlite3* m_connection;
};

/// Whether a result code of SQLite says that reading could not be finished (no memory, a lock, a disk that does not
/// answer, too much computing), and not that what was read is damaged.
bool isUnfinished(int code);
/// The sentence for a result code of SQLite, about the file at `path`. `detail` is SQLite's own message.
std::string sentenceFor(int code, const std::string& path, const std::string& detail);
/// Text that is UTF-8 throughout and holds no NUL character.
bool isPlainUtf8(std::string_view text);
/// “path”, as sentences name a file.
std::string inQuotes(const std::string& path);

} // namespace caprail
