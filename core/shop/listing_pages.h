// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <functional>
#include <shop/list_filter.h>

namespace caprail {

/// Which records are listed, and in which order.
struct ListingWish {
    enum class Grouping { none, customer, state };
    std::string search = {}; ///< words, each of which a record holds, or one that begins with it; empty: any record
    ListFilter filter = {};
    std::string order = "last_entry"; ///< the name of a column of the list (list_columns.h)
    bool isDescending = true;
    Grouping grouping = Grouping::none; ///< sorted by it before `order`
    UtcTime now = {};                   ///< by which days are judged
    friend bool operator==(const ListingWish&, const ListingWish&) = default;
};

/// The head of a group, and how many records are in it.
struct ListingGroup {
    std::string customer;
    JobState state = JobState::unknown;
    std::int64_t records = 0;
};

/// A list of records read page by page from the database that holds it, an index of a folder or a shop's database:
/// never all of it at once. The connection must outlive it.
class ListingPages {
public:
    explicit ListingPages(Connection& connection) : m_connection(&connection) {}

    Result<std::int64_t> count(const ListingWish& wish);
    /// So many rows from this one on, which is counted from 0; fewer at the end.
    Result<std::vector<ShopRow>> page(const ListingWish& wish, std::int64_t from, std::int64_t count);
    /// All rows, one after another; ends early where `take` refuses.
    Result<void> each(const ListingWish& wish, const std::function<Result<void>(ShopRow row)>& take);
    /// The groups in the order of the pages; none without a grouping.
    Result<std::vector<ListingGroup>> groups(const ListingWish& wish);
    /// Everybody who made the last entry of a record or another, sorted.
    Result<std::vector<std::string>> people();

private:
    struct Asked;
    [[nodiscard]] Asked whereOf(const ListingWish& wish, bool isRare = false) const;
    [[nodiscard]] std::string termsOf(const ListingWish& wish) const;
    Result<bool> isRare(const ListingWish& wish);
    [[nodiscard]] std::string orderOf(const ListingWish& wish) const;
    Result<Query> asked(const std::string& sql, const Asked& where);

    Connection* m_connection;
};

} // namespace caprail
