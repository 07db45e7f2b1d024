// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <functional>
#include <memory>
#include <shop/shop_row.h>

namespace caprail {

/// What is known of the records of one folder, kept in a file of the user's cache so that the next start need not read
/// them: SQLite with a full-text table (FTS5) and each record's figures as rows. It holds nothing that cannot be read
/// from the records again, and is made anew when it is of another version, of another folder or damaged. Several
/// windows and programs may use one at a time; an object belongs to one thread.
class ShopIndex {
public:
    /// Opens the index of a folder, or makes it. `cacheFolder` is made if need be, for its user alone; `root` is the
    /// folder's real path. Refuses when the cache cannot be written.
    static Result<ShopIndex> open(const std::string& cacheFolder, const std::string& root);
    /// An index that is kept nowhere, for one listing where no cache can be written.
    static Result<ShopIndex> inMemory(const std::string& root);
    /// Takes an index away, so that the next `open` begins anew.
    static void discard(const std::string& cacheFolder, const std::string& root);
    ShopIndex(ShopIndex&&) noexcept;
    ~ShopIndex();

    /// All rows, in no order.
    Result<std::vector<ShopRow>> rows();
    /// The row of a path, if there is one.
    Result<std::optional<ShopRow>> find(const std::string& path);
    /// Looks through the whole file for damage: slow, for a thread of its own.
    Result<void> verify();

    /// Runs `change` in one transaction; undone when it refuses.
    Result<void> together(const std::function<Result<void>()>& change);
    /// Adds or replaces the row of its path, and gives it its id. `words` is what a search finds it by.
    Result<void> put(ShopRow& row, const std::string& words, const RecordFigures& figures);
    Result<void> remove(std::int64_t id);

    /// Ids of the rows that hold every word of `typed`, or one that begins with it, in any letter case and with or
    /// without accents; none when `typed` has no letter and no digit (`hasWords`).
    Result<std::vector<std::int64_t>> search(std::string_view typed);
    static bool hasWords(std::string_view typed);

    /// For what compares its records (across.h): the tables of listing_columns.h and figure_rows.h.
    Connection& connection();

private:
    struct State;
    explicit ShopIndex(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

} // namespace caprail
