// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/listing_pages.h>

#include <algorithm>
#include <base/say.h>
#include <set>
#include <shop/listing_columns.h>
#include <shop/numbered.h>

namespace caprail {

namespace {

Result<void> eachListing(Result<Query>& query, const std::function<Result<void>(ShopRow row)>& take) {
    return !query ? tl::unexpected(query.error()) : query->each([&](const Query& at) {
        auto row = listingFrom(at);
        return row ? take(std::move(*row)) : Result<void>(tl::unexpected(row.error()));
    });
}

} // namespace

/// A condition of SQL with its parameters, and what goes before the statement.
struct ListingPages::Asked {
    std::string with;
    std::string sql = " WHERE true";
    std::vector<std::string> texts;
};

/// What the full text is searched for; empty where nothing that was typed is a word.
std::string ListingPages::termsOf(const ListingWish& wish) const {
    const Dialect& d = m_connection->dialect();
    std::string terms;
    for (const std::string& word : wordsIn(wish.search)) {
        terms += (terms.empty() ? "" : std::string(d.foundAnd)) + d.foundTerm(word);
    }
    return terms;
}

/// Whether so few records hold what is searched for that all of them are best found first. Else the list is walked in
/// its order until a page is full. A database guesses badly which of the two it is by a word's beginning.
Result<bool> ListingPages::isRare(const ListingWish& wish) {
    constexpr std::int64_t few = 10'000;
    const std::string terms = termsOf(wish);
    if (terms.empty()) {
        return false;
    }
    auto query =
        m_connection->prepare("SELECT count(*) FROM (SELECT 1 FROM (" + std::string(m_connection->dialect().found) +
                              ") AS hit LIMIT " + std::to_string(few) + ") AS few");
    if (query) {
        query->bind(1, terms);
    }
    const auto row = query ? query->step() : tl::unexpected(query.error());
    return row ? Result<bool>(query->integer(0) < few) : tl::unexpected(row.error());
}

ListingPages::Asked ListingPages::whereOf(const ListingWish& wish, bool isRare) const {
    const Dialect& d = m_connection->dialect();
    const std::string terms = termsOf(wish);
    Asked where;
    if (isRare) {
        where.with = "WITH hit(id) AS MATERIALIZED (" + std::string(d.found) + ") ";
        where.texts.push_back(terms);
        where.sql += " AND listing.id IN (SELECT id FROM hit)";
    }
    where.sql += conditionsOf(wish.filter, wish.now, d.position, where.texts);
    if (!terms.empty() && !isRare) {
        where.sql += " AND listing.id IN (" + std::string(d.found) + ")";
        where.texts.push_back(terms);
    } else if (terms.empty() &&
               !wish.search.empty()) { // signs that are no words are looked for in the lines themselves
        where.sql += " AND " + std::string(d.position) +
                     "(listing.customer || ' ' || listing.engine || ' ' || listing.serial || ' ' || listing.people || "
                     "' ' || CAST(listing.path AS text), ?) > 0";
        where.texts.push_back(wish.search);
    }
    return where;
}

std::string ListingPages::orderOf(const ListingWish& wish) const {
    const Dialect& d = m_connection->dialect();
    const std::string direction = wish.isDescending ? " DESC" : " ASC";
    std::vector<std::string> keys;
    const auto text = [&](std::string_view column) { keys.push_back(d.naturally("listing." + std::string(column))); };
    // To the byte behind it, as groups are: those of one are not parted by those of another that differs in letter
    // case.
    const std::string group = wish.grouping == ListingWish::Grouping::customer
                                  ? d.naturally("listing.customer") + ", " + d.bytewise("listing.customer") + ", "
                              : wish.grouping == ListingWish::Grouping::state ? "listing.state, "
                                                                              : "";
    if (wish.order == "customer" || wish.order == "who") {
        text(wish.order);
    } else if (wish.order == "engine") {
        text("engine");
        text("serial");
        keys.emplace_back("listing.build");
    } else if (wish.order == "file") {
        text("path");
    } else if (wish.order == "round") {
        keys = {"listing.round", "listing.round_result"};
    } else if (wish.order == "state" || wish.order == "out" || wish.order == "stale" ||
               wish.order == "calibration_due") {
        keys = {"listing." + wish.order};
    } else {
        keys = {"listing.last_entry"};
    }
    keys.emplace_back("listing.id"); // so that no row is on two pages
    std::string order = " ORDER BY " + group;
    for (const std::string& key : keys) {
        order += (order.ends_with("BY " + group) ? "" : ", ") + key + direction;
        if (key == "listing.calibration_due") { // no day is later than any
            order += wish.isDescending ? " NULLS FIRST" : " NULLS LAST";
        }
    }
    return order;
}

Result<Query> ListingPages::asked(const std::string& sql, const Asked& where) {
    auto query = m_connection->prepare(sql);
    if (query) {
        int at = 1;
        for (const std::string& text : where.texts) {
            query->bind(at++, std::string_view(text));
        }
    }
    return query;
}

Result<std::int64_t> ListingPages::count(const ListingWish& wish) {
    const Asked where = whereOf(wish);
    auto query = asked("SELECT count(*) FROM listing" + where.sql, where);
    const auto row = query ? query->step() : tl::unexpected(query.error());
    return row ? Result<std::int64_t>(query->integer(0)) : tl::unexpected(row.error());
}

Result<std::vector<ShopRow>> ListingPages::page(const ListingWish& wish, std::int64_t from, std::int64_t count) {
    const auto rare = isRare(wish);
    if (!rare) {
        return tl::unexpected(rare.error());
    }
    const Asked where = whereOf(wish, *rare);
    const std::string order = orderOf(wish);
    // What is passed over is counted in the index alone, and only the page's rows are read.
    auto query =
        asked(where.with + "SELECT " + listingSelected(m_connection->dialect()) +
                  " FROM (SELECT listing.id FROM listing" + where.sql + order + " LIMIT " + std::to_string(count) +
                  " OFFSET " + std::to_string(from) + ") AS page JOIN listing ON listing.id = page.id" + order,
              where);
    std::vector<ShopRow> rows;
    const auto read = eachListing(query, [&](ShopRow row) -> Result<void> {
        rows.push_back(std::move(row));
        return {};
    });
    return read ? Result<std::vector<ShopRow>>(std::move(rows)) : tl::unexpected(read.error());
}

Result<void> ListingPages::each(const ListingWish& wish, const std::function<Result<void>(ShopRow row)>& take) {
    const Asked where = whereOf(wish);
    auto query = asked(
        "SELECT " + listingSelected(m_connection->dialect()) + " FROM listing" + where.sql + orderOf(wish), where);
    return eachListing(query, take);
}

Result<std::vector<ListingGroup>> ListingPages::groups(const ListingWish& wish) {
    std::vector<ListingGroup> groups;
    if (wish.grouping == ListingWish::Grouping::none) {
        return groups;
    }
    const bool isByCustomer = wish.grouping == ListingWish::Grouping::customer;
    const std::string column = isByCustomer ? "listing.customer" : "listing.state";
    const Dialect& d = m_connection->dialect();
    const Asked where = whereOf(wish);
    auto query = asked("SELECT " + column + ", count(*) FROM listing" + where.sql + " GROUP BY " + column +
                           " ORDER BY " + (isByCustomer ? d.naturally(column) + ", " + d.bytewise(column) : column),
                       where);
    const auto read = !query ? tl::unexpected(query.error()) : query->each([&](const Query& row) -> Result<void> {
        const auto state = isByCustomer ? JobState::unknown : numbered<JobState>(row.integer(0));
        if (!state) {
            return strangeRow();
        }
        groups.push_back({isByCustomer ? row.text(0) : std::string(), *state, row.integer(1)});
        return {};
    });
    return read ? Result<std::vector<ListingGroup>>(std::move(groups)) : tl::unexpected(read.error());
}

Result<std::vector<std::string>> ListingPages::people() {
    std::set<std::string> names;
    auto query = m_connection->prepare("SELECT DISTINCT people FROM listing UNION SELECT DISTINCT who FROM listing");
    const auto read = !query ? tl::unexpected(query.error()) : query->each([&](const Query& row) -> Result<void> {
        const std::string lines = row.text(0);
        std::string_view rest = lines;
        while (!rest.empty()) {
            const auto end = rest.find('\n');
            if (end != 0) {
                names.emplace(rest.substr(0, end));
            }
            rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + 1);
        }
        return {};
    });
    return read ? Result<std::vector<std::string>>(std::vector<std::string>(names.begin(), names.end()))
                : tl::unexpected(read.error());
}

} // namespace caprail
