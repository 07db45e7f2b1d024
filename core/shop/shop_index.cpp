// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/shop_index.h>

#include <QList>
#include <QString>
#include <algorithm>
#include <array>
#include <climits>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sqlite3.h>
#include <units/say.h>
#include <utility>

namespace caprail {

namespace {

/// Raised with every change of the tables or of what is worked out from a record.
constexpr std::int64_t indexVersion = 2;

constexpr const char* schemaSql =
    "CREATE TABLE about(root BLOB NOT NULL) STRICT;"
    "CREATE TABLE record(id INTEGER PRIMARY KEY, path BLOB NOT NULL UNIQUE, size INTEGER, modified INTEGER,"
    " changed INTEGER, inode INTEGER, reading INTEGER, sentence TEXT, customer TEXT, engine TEXT, serial TEXT,"
    " last_entry_ms INTEGER, who TEXT, entries INTEGER, state INTEGER, build INTEGER, round_result INTEGER,"
    " round INTEGER, pulled INTEGER, moved INTEGER, out INTEGER, stale INTEGER, template TEXT, layout TEXT,"
    " people TEXT, due_days INTEGER) STRICT;"
    "CREATE TABLE figures(id INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT;"
    // No positions are kept: every word typed is looked for by itself, as a prefix.
    "CREATE VIRTUAL TABLE search USING fts5(words, detail=none, prefix='1 2 3',"
    " tokenize='unicode61 remove_diacritics 2');";

constexpr const char* rowColumns = "id, path, size, modified, changed, inode, reading, sentence, customer, engine, "
                                   "serial, last_entry_ms, who, entries, state, build, round_result, round, pulled, "
                                   "moved, out, stale, template, layout, people, due_days";

template <class E> std::optional<E> enumAt(const Statement& row, int column) {
    const std::int64_t value = row.integer(column);
    return value >= 0 && value < static_cast<std::int64_t>(allWords<E>().size())
               ? std::optional<E>(static_cast<E>(value))
               : std::nullopt;
}

Result<ShopRow> rowFrom(const Statement& row) {
    const auto text = [&](int column) { return std::string(row.text(column)); };
    const auto reading = enumAt<FileReading>(row, 6);
    const auto state = enumAt<JobState>(row, 14);
    const auto round = enumAt<RoundResult>(row, 16);
    if (!reading || !state || !round) {
        return refuse(Core::say("The index of the folder is damaged: it is made anew."));
    }
    ShopRow r;
    r.id = row.integer(0);
    r.file = {std::string(row.bytes(1)), row.integer(2), row.integer(3), row.integer(4), row.integer(5)};
    r.reading = *reading;
    r.sentence = text(7);
    RecordSummary& s = r.summary;
    s.customer = text(8);
    s.engine = text(9);
    s.serial = text(10);
    s.lastEntry = {row.integer(11)};
    s.who = text(12);
    s.entries = row.integer(13);
    s.state = *state;
    s.build = row.integer(15);
    s.roundResult = *round;
    s.round = row.integer(17);
    s.pulled = row.integer(18);
    s.moved = row.integer(19);
    s.out = row.integer(20);
    s.stale = row.integer(21);
    s.templateName = text(22);
    s.layout = text(23);
    s.people = text(24);
    if (row.type(25) == Statement::Type::integer) {
        s.due = Date{row.integer(25)};
    }
    return r;
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
    auto database = Database::open(path, Access::readWrite);
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
    if (!version || *version != indexVersion || !about) {
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
    auto made = database.run(schemaSql);
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
        made = database.run("PRAGMA user_version = " + std::to_string(indexVersion) + "; COMMIT");
    }
    if (!made) {
        (void)database.run("ROLLBACK");
    }
    return made;
}

/// Words as the tokenizer of the index parts them: runs of letters, digits and marks.
std::vector<std::string> wordsIn(std::string_view typed) {
    std::vector<std::string> words;
    QString word;
    const QString text = QString::fromUtf8(typed.data(), static_cast<qsizetype>(typed.size()));
    const auto finish = [&] {
        if (!word.isEmpty()) {
            words.push_back(word.toStdString());
            word.clear();
        }
    };
    for (const char32_t c : text.toUcs4()) {
        const auto category = QChar::category(c);
        const bool isPart =
            QChar::isLetterOrNumber(c) || category == QChar::Mark_NonSpacing || category == QChar::Other_PrivateUse;
        if (isPart) {
            word += QString::fromUcs4(&c, 1);
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
    /// The rows that hold a word that begins with this one, in ascending order.
    Result<std::vector<std::int64_t>> idsWith(const std::string& word);
};

ShopIndex::ShopIndex(std::unique_ptr<State> state) : m_state(std::move(state)) {}
ShopIndex::ShopIndex(ShopIndex&&) noexcept = default;
ShopIndex& ShopIndex::operator=(ShopIndex&&) noexcept = default;
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
    auto statement = m_state->database->prepare(std::string("SELECT ") + rowColumns + " FROM record");
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
    auto statement = m_state->ready(m_state->find, std::string("SELECT ") + rowColumns + " FROM record WHERE path = ?");
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
        (void)m_state->database->run("ROLLBACK");
        m_state->found.clear();
    }
    return done;
}

Result<void> ShopIndex::put(ShopRow& row, const std::string& words, const RecordFigures& figures) {
    State& s = *m_state;
    s.found.clear();
    auto ready = s.ready(
        s.put,
        "INSERT INTO record VALUES((SELECT id FROM record WHERE path = ?1),?1,?2,?3,?4,?5,?6,?7,?8,?9,?10,?11,?12,?13,"
        "?14,?15,?16,?17,?18,?19,?20,?21,?22,?23,?24,?25) ON CONFLICT(id) DO UPDATE SET size=?2, modified=?3,"
        "changed=?4, inode=?5, reading=?6, sentence=?7, customer=?8, engine=?9, serial=?10, last_entry_ms=?11,"
        "who=?12, entries=?13, state=?14, build=?15, round_result=?16, round=?17, pulled=?18, moved=?19, out=?20,"
        "stale=?21, template=?22, layout=?23, people=?24, due_days=?25 RETURNING id");
    if (!ready) {
        return tl::unexpected(ready.error());
    }
    Statement& put = **ready;
    const RecordSummary& m = row.summary;
    put.bindBytes(1, row.file.path);
    int at = 2;
    for (const std::int64_t n :
         {row.file.size, row.file.modified, row.file.changed, row.file.inode, static_cast<std::int64_t>(row.reading)}) {
        put.bind(at++, n);
    }
    for (const std::string* text : {&std::as_const(row.sentence), &m.customer, &m.engine, &m.serial}) {
        put.bind(at++, std::string_view(*text));
    }
    put.bind(at++, m.lastEntry.milliseconds);
    put.bind(at++, std::string_view(m.who));
    for (const std::int64_t n :
         {m.entries, static_cast<std::int64_t>(m.state), m.build, static_cast<std::int64_t>(m.roundResult), m.round,
          m.pulled, m.moved, m.out, m.stale}) {
        put.bind(at++, n);
    }
    for (const std::string* text : {&m.templateName, &m.layout, &m.people}) {
        put.bind(at++, std::string_view(*text));
    }
    if (m.due) {
        put.bind(at, m.due->days);
    } else {
        put.bindNull(at);
    }
    const auto stepped = put.step();
    row.id = stepped && *stepped ? put.integer(0) : 0;
    put.reset();
    if (!stepped) {
        return tl::unexpected(stepped.error());
    }
    auto done = s.runWithId(s.dropWords, "DELETE FROM search WHERE rowid = ?", row.id);
    const std::string all = plainLine(row.file.path) + "\n" + words + "\n" + row.sentence;
    if (auto insert = s.ready(s.putWords, "INSERT INTO search(rowid, words) VALUES(?, ?)"); done && insert) {
        (*insert)->bind(1, row.id);
        (*insert)->bind(2, std::string_view(all));
        done = (*insert)->run();
    }
    const std::string bytes = toBytes(figures);
    if (auto insert = s.ready(s.putFigures, "INSERT OR REPLACE INTO figures VALUES(?, ?)"); done && insert) {
        (*insert)->bind(1, row.id);
        (*insert)->bindBytes(2, bytes);
        done = (*insert)->run();
    }
    return done;
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

Result<std::vector<std::int64_t>> ShopIndex::State::idsWith(const std::string& word) {
    auto statement = ready(search, "SELECT rowid FROM search WHERE search MATCH ?");
    if (!statement) {
        return tl::unexpected(statement.error());
    }
    const std::string match = "\"" + word + "\"*";
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
    for (const std::string& word : wordsIn(typed)) {
        if (const auto known = s.found.find(word); known != s.found.end()) {
            now.insert(s.found.extract(known));
        } else if (!now.contains(word)) {
            auto ids = s.idsWith(word);
            if (!ids) {
                return ids;
            }
            now.emplace(word, std::move(*ids));
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
