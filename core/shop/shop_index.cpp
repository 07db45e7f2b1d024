// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/shop_index.h>

#include <base/say.h>
#include <shop/figure_rows.h>
#include <shop/index_file.h>
#include <shop/listing_columns.h>
#include <shop/listing_line.h>
#include <shop/word_search.h>
#include <utility>

namespace caprail {

namespace {

/// The row of a query for id and line.
Result<ShopRow> rowFrom(const Query& query) {
    auto row = unpacked(query.integer(0), query.bytes(1));
    return row ? Result<ShopRow>(std::move(*row))
               : refuse(Core::say("The index of the folder is damaged: it is made again."));
}

} // namespace

struct ShopIndex::State {
    Connection connection;
    FigureWriter figures{connection};
    WordSearch search{connection};
    std::optional<Query> put, putWords, dropWords, dropRow, find;

    explicit State(Connection opened) : connection(std::move(opened)) {}

    /// Runs a statement whose only parameter is an id.
    Result<void> runWithId(std::optional<Query>& query, std::string_view sql, std::int64_t id) {
        auto ready = connection.ready(query, sql);
        if (!ready) {
            return tl::unexpected(ready.error());
        }
        (*ready)->bind(1, id);
        return (*ready)->run();
    }
    Result<void> removeWords(std::int64_t id) { return runWithId(dropWords, "DELETE FROM found WHERE rowid = ?", id); }
    Result<std::int64_t> putRow(const ShopRow& row);
    Result<void> putWordsOf(std::int64_t id, const std::string& words);
};

ShopIndex::ShopIndex(std::unique_ptr<State> state) : m_state(std::move(state)) {}
ShopIndex::ShopIndex(ShopIndex&&) noexcept = default;
ShopIndex::~ShopIndex() = default;

void ShopIndex::discard(const std::string& cacheFolder, const std::string& root) {
    discardIndex(cacheFolder, root);
}

Result<ShopIndex> ShopIndex::inMemory(const std::string& root) {
    auto connection = openIndexInMemory(root);
    return connection ? Result<ShopIndex>(ShopIndex(std::make_unique<State>(std::move(*connection))))
                      : tl::unexpected(connection.error());
}

Result<ShopIndex> ShopIndex::open(const std::string& cacheFolder, const std::string& root) {
    auto connection = openIndex(cacheFolder, root);
    return connection ? Result<ShopIndex>(ShopIndex(std::make_unique<State>(std::move(*connection))))
                      : tl::unexpected(connection.error());
}

Connection& ShopIndex::connection() {
    return m_state->connection;
}

Result<std::vector<ShopRow>> ShopIndex::rows() {
    Connection& connection = m_state->connection;
    auto query = connection.prepare("SELECT id, line FROM listing");
    if (!query) {
        return tl::unexpected(query.error());
    }
    std::vector<ShopRow> rows;
    rows.reserve(static_cast<std::size_t>(connection.integer("SELECT count(*) FROM listing").value_or(0)));
    const auto read = query->each([&](const Query& line) -> Result<void> {
        auto row = rowFrom(line);
        if (!row) {
            return tl::unexpected(row.error());
        }
        rows.push_back(std::move(*row));
        return {};
    });
    return read ? Result<std::vector<ShopRow>>(std::move(rows)) : tl::unexpected(read.error());
}

Result<std::optional<ShopRow>> ShopIndex::find(const std::string& path) {
    auto query = m_state->connection.ready(m_state->find, "SELECT id, line FROM listing WHERE path = ?");
    if (!query) {
        return tl::unexpected(query.error());
    }
    (*query)->bindBytes(1, path);
    const auto more = (*query)->step();
    Result<std::optional<ShopRow>> found = std::optional<ShopRow>();
    if (!more) {
        found = tl::unexpected(more.error());
    } else if (*more) {
        found = rowFrom(**query).map([](ShopRow row) { return std::optional<ShopRow>(std::move(row)); });
    }
    (*query)->reset();
    return found;
}

Result<void> ShopIndex::verify() {
    const auto answer = m_state->connection.text("PRAGMA quick_check(1)");
    if (!answer) {
        return tl::unexpected(answer.error());
    }
    return *answer == "ok" ? Result<void>()
                           : Result<void>(refuse(Core::say("The index of the folder is damaged: %1", *answer)));
}

Result<void> ShopIndex::together(const std::function<Result<void>()>& change) {
    auto done = m_state->connection.together(change);
    if (!done) {
        m_state->search.forget();
    }
    return done;
}

Result<std::int64_t> ShopIndex::State::putRow(const ShopRow& row) {
    static const std::string putting = listingPut();
    auto query = connection.ready(put, putting);
    if (!query) {
        return tl::unexpected(query.error());
    }
    bindListing(**query, row);
    const auto stepped = (*query)->step();
    if (!stepped) {
        return tl::unexpected(stepped.error());
    }
    if (!*stepped) {
        return refuse(Core::say("The index of the folder is damaged: it is made again."));
    }
    const std::int64_t id = (*query)->integer(0);
    const auto done = (*query)->run(); // to its end, where it may still fail
    return done ? Result<std::int64_t>(id) : tl::unexpected(done.error());
}

Result<void> ShopIndex::State::putWordsOf(std::int64_t id, const std::string& words) {
    if (auto dropped = removeWords(id); !dropped) {
        return dropped;
    }
    auto insert = connection.ready(putWords, "INSERT INTO found(rowid, words) VALUES(?, ?)");
    if (!insert) {
        return tl::unexpected(insert.error());
    }
    (*insert)->bind(1, id);
    (*insert)->bind(2, std::string_view(words));
    return (*insert)->run();
}

Result<void> ShopIndex::put(ShopRow& row, const std::string& words, const RecordFigures& figures) {
    State& s = *m_state;
    s.search.forget();
    const auto id = s.putRow(row);
    if (!id) {
        return tl::unexpected(id.error());
    }
    row.id = *id;
    const auto done = s.putWordsOf(row.id, plainLine(row.file.path) + "\n" + words + "\n" + row.sentence);
    return done ? s.figures.put(row.id, figures) : done;
}

Result<void> ShopIndex::remove(std::int64_t id) {
    State& s = *m_state;
    s.search.forget();
    auto done = s.runWithId(s.dropRow, "DELETE FROM listing WHERE id = ?", id);
    done = done ? s.removeWords(id) : done;
    return done ? s.figures.remove(id) : done;
}

bool ShopIndex::hasWords(std::string_view typed) {
    return !wordsIn(typed).empty();
}

Result<std::vector<std::int64_t>> ShopIndex::search(std::string_view typed) {
    return m_state->search.ids(typed);
}

} // namespace caprail
