// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/shop_index.h>

#include <QList>
#include <QString>
#include <algorithm>
#include <array>
#include <base/say.h>
#include <climits>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sqlite3.h>
#include <utility>

namespace caprail {

namespace {

/// Raised with every change of what is worked out from a record; a change of the tables tells by itself
/// (`tablesVersion`).
constexpr std::int64_t indexVersion = 4;

// What is known of the file itself; the fields of the summary follow (record_summary.h).
constexpr std::pair<const char*, const char*> fileColumns[] = {{"path", "BLOB NOT NULL UNIQUE"},
                                                               {"size", "INTEGER"},
                                                               {"modified", "INTEGER"},
                                                               {"changed", "INTEGER"},
                                                               {"inode", "INTEGER"},
                                                               {"reading", "INTEGER"},
                                                               {"sentence", "TEXT"}};
constexpr int firstField = 1 + static_cast<int>(std::size(fileColumns)); // behind the id

/// How a field of the summary is kept in a column.
constexpr const char* typeOf(const std::string*) {
    return "TEXT";
}
constexpr const char* typeOf(const void*) {
    return "INTEGER";
}

void bindField(Statement& put, int at, const std::string& value) {
    put.bind(at, std::string_view(value));
}
void bindField(Statement& put, int at, std::int64_t value) {
    put.bind(at, value);
}
void bindField(Statement& put, int at, UtcTime value) {
    put.bind(at, value.milliseconds);
}
void bindField(Statement& put, int at, const std::optional<Date>& value) {
    if (value) {
        put.bind(at, value->days);
    } else {
        put.bindNull(at);
    }
}
template <Worded E> void bindField(Statement& put, int at, E value) {
    put.bind(at, static_cast<std::int64_t>(value));
}

template <class E> std::optional<E> enumAt(const Statement& row, int column) {
    const std::int64_t value = row.integer(column);
    return value >= 0 && value < static_cast<std::int64_t>(allWords<E>().size())
               ? std::optional<E>(static_cast<E>(value))
               : std::nullopt;
}

/// Reads a field; false when it holds what nobody wrote there.
bool readField(const Statement& row, int column, std::string& value) {
    value = row.text(column);
    return true;
}
bool readField(const Statement& row, int column, std::int64_t& value) {
    value = row.integer(column);
    return true;
}
bool readField(const Statement& row, int column, UtcTime& value) {
    value = {row.integer(column)};
    return true;
}
bool readField(const Statement& row, int column, std::optional<Date>& value) {
    value = row.type(column) == Statement::Type::integer ? std::optional(Date{row.integer(column)}) : std::nullopt;
    return true;
}
template <Worded E> bool readField(const Statement& row, int column, E& value) {
    const auto read = enumAt<E>(row, column);
    value = read.value_or(value);
    return read.has_value();
}

/// Every column but the id, one after the other, each as `say(name, type)` writes it.
template <class Say> std::string eachColumn(Say say) {
    std::string text;
    const auto add = [&](std::string_view name, const char* type) {
        text += (text.empty() ? "" : ", ") + say(std::string(name), type);
    };
    for (const auto& [name, type] : fileColumns) {
        add(name, type);
    }
    eachSummaryField([&](const auto& column) {
        add(column.name,
            typeOf(static_cast<const std::remove_cvref_t<decltype(std::declval<RecordSummary>().*column.member)>*>(
                nullptr)));
    });
    return text;
}

std::string schemaSql() {
    return "CREATE TABLE about(root BLOB NOT NULL) STRICT;"
           "CREATE TABLE record(id INTEGER PRIMARY KEY, " +
           eachColumn([](const std::string& name, const char* type) { return name + " " + type; }) +
           ") STRICT;"
           "CREATE TABLE figures(id INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT;"
           // No positions are kept: every word typed is looked for by itself, as a prefix.
           "CREATE VIRTUAL TABLE search USING fts5(words, detail=none, prefix='1 2 3',"
           " tokenize='unicode61 remove_diacritics 2');";
}

/// By which a file is known as an index of these tables and this `indexVersion`: a column more makes another.
std::int64_t tablesVersion() {
    static const std::int64_t version =
        std::stoll(sha256Hex(schemaSql() + std::to_string(indexVersion)).substr(0, 7), nullptr, 16);
    return version;
}

std::string selectSql() {
    return "SELECT id, " + eachColumn([](const std::string& name, const char*) { return name; }) + " FROM record";
}

/// The path is parameter 1, and the others follow in the order of the columns.
std::string putSql() {
    int n = 0;
    const std::string values = eachColumn([&](const std::string&, const char*) { return "?" + std::to_string(++n); });
    n = 0;
    const std::string changes =
        eachColumn([&](const std::string& name, const char*) { return name + "=?" + std::to_string(++n); });
    return "INSERT INTO record VALUES((SELECT id FROM record WHERE path = ?1), " + values +
           ") ON CONFLICT(id) DO UPDATE SET " + changes + " RETURNING id";
}

Result<ShopRow> rowFrom(const Statement& row) {
    ShopRow r;
    r.id = row.integer(0);
    r.file = {std::string(row.bytes(1)), row.integer(2), row.integer(3), row.integer(4), row.integer(5)};
    bool isWhole = readField(row, 6, r.reading) && readField(row, 7, r.sentence);
    int column = firstField;
    eachSummaryField(
        [&](const auto& described) { isWhole = readField(row, column++, r.summary.*described.member) && isWhole; });
    return isWhole ? Result<ShopRow>(std::move(r))
                   : refuse(Core::say("The index of the folder is damaged: it is made again."));
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

Result<std::unique_ptr<Database>> opened(const std::string& path) {
    { const std::ofstream made(path, std::ios::app); }
    auto database = Database::open(path, Access::ownFile);
    if (!database) {
        return database;
    }
    sqlite3_busy_timeout((*database)->handle(), 5'000); // another window may be writing a batch
    if (auto set =
            (*database)->run("PRAGMA journal_mode = WAL; PRAGMA synchronous = NORMAL; PRAGMA temp_store = MEMORY;"
                             "PRAGMA cache_size = -16000; PRAGMA mmap_size = 268435456");
        !set) {
        return tl::unexpected(set.error());
    }
    return database;
}

/// Whether the file is an index of this version for this folder.
bool isOurs(Database& database, const std::string& root) {
    const auto version = database.integer("PRAGMA user_version");
    auto about = database.prepare("SELECT root FROM about");
    if (!version || *version != tablesVersion() || !about) {
        return false;
    }
    const auto row = about->step();
    return row && *row && about->bytes(0) == root &&
           database.integer("SELECT count(*) FROM sqlite_schema WHERE name IN ('record', 'figures', 'search')") == 3;
}

Result<void> makeTables(Database& database, const std::string& root) {
    if (auto begun = database.run("BEGIN IMMEDIATE"); !begun) {
        return begun;
    }
    if (isOurs(database, root)) { // another program was faster
        return database.run("ROLLBACK");
    }
    auto made = database.run(schemaSql());
    if (made) {
        auto about = database.prepare("INSERT INTO about VALUES(?)");
        if (!about) {
            made = tl::unexpected(about.error());
        } else {
            about->bindBytes(1, root);
            made = about->run();
        }
    }
    if (made) {
        made = database.run("PRAGMA user_version = " + std::to_string(tablesVersion()) + "; COMMIT");
    }
    if (!made) {
        (void)database.run("ROLLBACK"); // the transaction ends all the same, and `made` says what went wrong
    }
    return made;
}

/// Words as the tokenizer of the index parts them: runs of letters, digits and marks.
std::vector<std::string> wordsIn(std::string_view typed) {
    std::vector<std::string> words;
    QString term;
    const QString text = QString::fromUtf8(typed.data(), static_cast<qsizetype>(typed.size()));
    const auto finish = [&] {
        if (!term.isEmpty()) {
            words.push_back(term.toStdString());
            term.clear();
        }
    };
    for (const char32_t c : text.toUcs4()) {
        const auto category = QChar::category(c);
        const bool isPart =
            QChar::isLetterOrNumber(c) || category == QChar::Mark_NonSpacing || category == QChar::Other_PrivateUse;
        if (isPart) {
            term += QString::fromUcs4(&c, 1);
        } else {
            finish();
        }
    }
    finish();
    return words;
}

} // namespace

struct ShopIndex::State {
    std::unique_ptr<Database> database;
    std::optional<Statement> put, putWords, dropWords, putFigures, dropFigures, find, search;
    /// What each word of the last search found: who types another letter changes one word of it.
    std::map<std::string, std::vector<std::int64_t>> found;
    std::int64_t foundIn = 0; ///< SQLite's data_version at that time: another one when another program has written

    /// Prepares a statement the first time that it is needed.
    Result<Statement*> ready(std::optional<Statement>& statement, std::string_view sql) const {
        if (!statement) {
            auto made = database->prepare(sql);
            if (!made) {
                return tl::unexpected(made.error());
            }
            statement = std::move(*made);
        }
        return &*statement;
    }
    /// Runs a statement whose only parameter is an id.
    Result<void> runWithId(std::optional<Statement>& statement, std::string_view sql, std::int64_t id) const {
        auto ready_ = ready(statement, sql);
        if (!ready_) {
            return tl::unexpected(ready_.error());
        }
        (*ready_)->bind(1, id);
        return (*ready_)->run();
    }
    /// What belongs to a row that was just put: a row without it would never be found by a word, or compared.
    Result<void> putWordsAndFigures(const ShopRow& row, const std::string& words, const std::string& figures);
    /// The rows that hold a word that begins with this one, in ascending order.
    Result<std::vector<std::int64_t>> idsWith(const std::string& term);
};

ShopIndex::ShopIndex(std::unique_ptr<State> state) : m_state(std::move(state)) {}
ShopIndex::ShopIndex(ShopIndex&&) noexcept = default;
ShopIndex::~ShopIndex() = default;

std::string ShopIndex::pathFor(const std::string& cacheFolder, const std::string& root) {
    return cacheFolder + "/" + sha256Hex(root).substr(0, 24) + ".index";
}

void ShopIndex::discard(const std::string& cacheFolder, const std::string& root) {
    const std::string path = pathFor(cacheFolder, root);
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm"}) {
        std::filesystem::remove(path + ending, ignored);
    }
}

Result<ShopIndex> ShopIndex::inMemory(const std::string& root) {
    auto database = Database::open(":memory:", Access::ownFile);
    auto made = database ? makeTables(**database, root) : tl::unexpected(database.error());
    if (!made) {
        return tl::unexpected(made.error());
    }
    auto state = std::make_unique<State>();
    state->database = std::move(*database);
    return ShopIndex(std::move(state));
}

Result<ShopIndex> ShopIndex::open(const std::string& cacheFolder, const std::string& root) {
    const auto folder = madeFolder(cacheFolder);
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    const std::string path = pathFor(*folder, root);
    for (int attempt = 1;; ++attempt) {
        auto database = opened(path);
        if (database && !isOurs(**database, root)) {
            const auto empty = (*database)->integer("SELECT count(*) FROM sqlite_schema");
            if (auto made = empty && *empty == 0 ? makeTables(**database, root)
                                                 : Result<void>(refuse(Core::say("The index is of another version.")));
                !made) {
                database = tl::unexpected(made.error());
            }
        }
        if (database) {
            auto state = std::make_unique<State>();
            state->database = std::move(*database);
            return ShopIndex(std::move(state));
        }
        if (attempt == 2) {
            return tl::unexpected(database.error());
        }
        discard(*folder, root);
    }
}

Result<std::vector<ShopRow>> ShopIndex::rows() {
    auto statement = m_state->database->prepare(selectSql());
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    std::vector<ShopRow> rows;
    rows.reserve(static_cast<std::size_t>(m_state->database->integer("SELECT count(*) FROM record").value_or(0)));
    for (auto more = statement->step();; more = statement->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return rows;
        }
        auto row = rowFrom(*statement);
        if (!row) {
            return tl::unexpected(row.error());
        }
        rows.push_back(std::move(*row));
    }
}

Result<std::optional<ShopRow>> ShopIndex::find(const std::string& path) {
    static const std::string finding = selectSql() + " WHERE path = ?";
    auto statement = m_state->ready(m_state->find, finding);
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    (*statement)->bindBytes(1, path);
    const auto more = (*statement)->step();
    Result<std::optional<ShopRow>> found = std::optional<ShopRow>();
    if (!more) {
        found = tl::unexpected(more.error());
    } else if (*more) {
        found = rowFrom(**statement).map([](ShopRow row) { return std::optional<ShopRow>(std::move(row)); });
    }
    (*statement)->reset();
    return found;
}

Result<void> ShopIndex::verify() {
    const auto answer = m_state->database->text("PRAGMA quick_check(1)");
    if (!answer) {
        return tl::unexpected(answer.error());
    }
    return *answer == "ok" ? Result<void>()
                           : Result<void>(refuse(Core::say("The index of the folder is damaged: %1", *answer)));
}

Result<void> ShopIndex::together(const std::function<Result<void>()>& change) {
    if (auto begun = m_state->database->run("BEGIN IMMEDIATE"); !begun) {
        return begun;
    }
    auto done = change();
    if (done) {
        done = m_state->database->run("COMMIT");
    }
    if (!done && m_state->database->inTransaction()) {
        (void)m_state->database->run("ROLLBACK"); // the transaction ends all the same; `done` says what went wrong
        m_state->found.clear();
    }
    return done;
}

Result<void> ShopIndex::State::putWordsAndFigures(const ShopRow& row, const std::string& words,
                                                  const std::string& figures) {
    if (auto dropped = runWithId(dropWords, "DELETE FROM search WHERE rowid = ?", row.id); !dropped) {
        return dropped;
    }
    auto insertWords = ready(putWords, "INSERT INTO search(rowid, words) VALUES(?, ?)");
    if (!insertWords) {
        return tl::unexpected(insertWords.error());
    }
    (*insertWords)->bind(1, row.id);
    (*insertWords)->bind(2, std::string_view(words));
    if (auto done = (*insertWords)->run(); !done) {
        return done;
    }
    auto insertFigures = ready(putFigures, "INSERT OR REPLACE INTO figures VALUES(?, ?)");
    if (!insertFigures) {
        return tl::unexpected(insertFigures.error());
    }
    (*insertFigures)->bind(1, row.id);
    (*insertFigures)->bindBytes(2, figures);
    return (*insertFigures)->run();
}

Result<void> ShopIndex::put(ShopRow& row, const std::string& words, const RecordFigures& figures) {
    State& s = *m_state;
    s.found.clear();
    static const std::string putting = putSql();
    auto ready = s.ready(s.put, putting);
    if (!ready) {
        return tl::unexpected(ready.error());
    }
    Statement& put = **ready;
    put.bindBytes(1, row.file.path);
    int at = 2;
    for (const std::int64_t n : {row.file.size, row.file.modified, row.file.changed, row.file.inode}) {
        bindField(put, at++, n);
    }
    bindField(put, at++, row.reading);
    bindField(put, at++, row.sentence);
    eachSummaryField([&](const auto& column) { bindField(put, at++, row.summary.*column.member); });
    const auto stepped = put.step();
    row.id = stepped && *stepped ? put.integer(0) : 0;
    put.reset();
    if (!stepped) {
        return tl::unexpected(stepped.error());
    }
    if (!*stepped) {
        return refuse(Core::say("The index of the folder is damaged: it is made again."));
    }
    return s.putWordsAndFigures(row, plainLine(row.file.path) + "\n" + words + "\n" + row.sentence, toBytes(figures));
}

Result<void> ShopIndex::remove(std::int64_t id) {
    State& s = *m_state;
    s.found.clear();
    std::optional<Statement> dropRow;
    auto done = s.runWithId(dropRow, "DELETE FROM record WHERE id = ?", id);
    if (done) {
        done = s.runWithId(s.dropWords, "DELETE FROM search WHERE rowid = ?", id);
    }
    return done ? s.runWithId(s.dropFigures, "DELETE FROM figures WHERE id = ?", id) : done;
}

bool ShopIndex::hasWords(std::string_view typed) {
    return !wordsIn(typed).empty();
}

Result<std::vector<std::int64_t>> ShopIndex::State::idsWith(const std::string& term) {
    auto statement = ready(search, "SELECT rowid FROM search WHERE search MATCH ?");
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    const std::string match = "\"" + term + "\"*";
    (*statement)->bind(1, std::string_view(match));
    std::vector<std::int64_t> ids;
    auto more = (*statement)->step();
    while (more && *more) {
        ids.push_back((*statement)->integer(0));
        more = (*statement)->step();
    }
    (*statement)->reset();
    if (!more) {
        return tl::unexpected(more.error());
    }
    return ids; // FTS5 gives them in ascending order
}

Result<std::vector<std::int64_t>> ShopIndex::search(std::string_view typed) {
    State& s = *m_state;
    const auto version = s.database->integer("PRAGMA data_version");
    if (!version) {
        return tl::unexpected(version.error());
    }
    if (*version != s.foundIn) {
        s.found.clear();
        s.foundIn = *version;
    }
    std::map<std::string, std::vector<std::int64_t>> now;
    for (const std::string& term : wordsIn(typed)) {
        if (const auto known = s.found.find(term); known != s.found.end()) {
            now.insert(s.found.extract(known));
        } else if (!now.contains(term)) {
            auto ids = s.idsWith(term);
            if (!ids) {
                return ids;
            }
            now.emplace(term, std::move(*ids));
        }
    }
    s.found = std::move(now);
    std::vector<std::int64_t> all;
    for (auto hits = s.found.begin(); hits != s.found.end(); ++hits) {
        if (hits == s.found.begin()) {
            all = hits->second;
            continue;
        }
        std::vector<std::int64_t> both;
        std::ranges::set_intersection(all, hits->second, std::back_inserter(both));
        all = std::move(both);
    }
    return all;
}

Result<void> ShopIndex::eachFigures(const std::function<void(std::int64_t id, RecordFigures figures)>& take) {
    auto statement = m_state->database->prepare("SELECT id, bytes FROM figures");
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    for (auto more = statement->step();; more = statement->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return {};
        }
        auto figures = figuresFrom(statement->bytes(1));
        if (!figures) {
            return tl::unexpected(figures.error());
        }
        take(statement->integer(0), std::move(*figures));
    }
}

} // namespace caprail
