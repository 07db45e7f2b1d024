// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/across.h>

#include <algorithm>
#include <base/say.h>
#include <shop/figure_rows.h>
#include <shop/numbered.h>
#include <shop/record_reader.h>
#include <tuple>

namespace caprail {

namespace {

const std::string wholeOnes = "reading = " + std::to_string(static_cast<int>(FileReading::assessed));

std::optional<std::int64_t> numberAt(const Query& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(row.integer(column));
}
std::optional<Date> dayAt(const Query& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(Date{row.integer(column)});
}

/// The limits of all rows so far, place by place: the same everywhere, or none.
struct CommonLimits {
    std::int64_t values = 0, withLimits = 0;
    std::int64_t lowest = 0, highestLower = 0, lowestUpper = 0, highest = 0;

    /// Of one place: its count of values, of values with limits, and the ranges of these (columns from `at`).
    void add(std::int64_t count, const Query& row, int at) {
        const bool isFirst = withLimits == 0;
        values += count;
        withLimits += row.integer(at);
        if (row.integer(at) == 0) {
            return;
        }
        lowest = isFirst ? row.integer(at + 1) : std::min(lowest, row.integer(at + 1));
        highestLower = isFirst ? row.integer(at + 2) : std::max(highestLower, row.integer(at + 2));
        lowestUpper = isFirst ? row.integer(at + 3) : std::min(lowestUpper, row.integer(at + 3));
        highest = isFirst ? row.integer(at + 4) : std::max(highest, row.integer(at + 4));
    }
    [[nodiscard]] std::optional<Band> band() const {
        if (values == 0 || withLimits != values || lowest != highestLower || lowestUpper != highest) {
            return std::nullopt;
        }
        const auto common = Band::between(Length(lowest), Length(highest));
        return common ? std::optional(*common) : std::nullopt;
    }
};

} // namespace

/// «AND …» for a table of figures, with one parameter where not all records are compared.
std::string Across::within(std::string_view table) const {
    if (isOfAll()) {
        return {};
    }
    return " AND " + std::string(table) + ".listing IN (SELECT id FROM listing WHERE " +
           (m_of.templateName.empty() ? "layout" : "template") + " = ?)";
}

/// A statement with its first parameter, if it has one, and that of `within` behind it.
Result<Query> Across::asked(const std::string& sql, std::string_view first) {
    auto query = m_connection->prepare(sql);
    if (query) {
        int at = 1;
        if (!first.empty()) {
            query->bind(at++, first);
        }
        if (!isOfAll()) {
            query->bind(at, m_of.templateName.empty() ? m_of.layout : m_of.templateName);
        }
    }
    return query;
}

Result<std::int64_t> Across::records() {
    auto query =
        asked("SELECT count(*) FROM listing WHERE " + wholeOnes +
              (isOfAll() ? "" : std::string(" AND ") + (m_of.templateName.empty() ? "layout" : "template") + " = ?"));
    const auto row = query ? query->step() : tl::unexpected(query.error());
    return row ? Result<std::int64_t>(query->integer(0)) : tl::unexpected(row.error());
}

Result<std::int64_t> Across::pulls() {
    auto query = asked("SELECT CAST(coalesce(sum(pulled), 0) AS bigint) FROM movement WHERE true" + within("movement"));
    const auto row = query ? query->step() : tl::unexpected(query.error());
    return row ? Result<std::int64_t>(query->integer(0)) : tl::unexpected(row.error());
}

Result<std::vector<AcrossGroup>> Across::groupsBy(std::string_view column) {
    const std::string name(column);
    const Dialect& d = m_connection->dialect();
    auto query =
        m_connection->prepare("SELECT " + name + ", count(*) FROM listing WHERE " + wholeOnes + " AND " + name +
                              " <> '' GROUP BY " + name + " ORDER BY " + d.naturally(name) + ", " + d.bytewise(name));
    if (!query) {
        return tl::unexpected(query.error());
    }
    std::vector<AcrossGroup> groups;
    const auto read = query->each([&](const Query& row) -> Result<void> {
        groups.push_back({row.text(0), row.integer(1)});
        return {};
    });
    return read ? Result<std::vector<AcrossGroup>>(std::move(groups)) : tl::unexpected(read.error());
}

Result<std::vector<AcrossGroup>> Across::templates() {
    return groupsBy("template");
}
Result<std::vector<AcrossGroup>> Across::layouts() {
    return groupsBy("layout");
}

Result<std::vector<std::string>> Across::bands() {
    // From one name to the next in the index: a few steps, however many values there are.
    auto query = isOfAll()
                     ? asked("WITH RECURSIVE name(band) AS (SELECT min(band) FROM banded UNION ALL SELECT (SELECT "
                             "min(banded.band) FROM banded WHERE banded.band > name.band) FROM name WHERE name.band "
                             "IS NOT NULL) SELECT band FROM name WHERE band IS NOT NULL")
                     : asked("SELECT DISTINCT band FROM banded WHERE true" + within("banded"));
    if (!query) {
        return tl::unexpected(query.error());
    }
    std::vector<std::string> names;
    const auto read = query->each([&](const Query& row) -> Result<void> {
        names.push_back(row.text(0));
        return {};
    });
    std::ranges::sort(names);
    return read ? Result<std::vector<std::string>>(std::move(names)) : tl::unexpected(read.error());
}

Result<AcrossSpreads> Across::spreads(std::string_view band) {
    const std::string out = std::to_string(static_cast<int>(CheckState::out));
    auto query = asked("SELECT place_order, min(" + m_connection->dialect().bytewise("place") +
                           "), count(*), count(*) FILTER (WHERE state = " + out +
                           "), min(value_nm), max(value_nm), count(lower_nm), min(lower_nm), max(lower_nm), "
                           "min(upper_nm), max(upper_nm) FROM banded WHERE band = ?" +
                           within("banded") + " GROUP BY place_order ORDER BY place_order",
                       band);
    if (!query) {
        return tl::unexpected(query.error());
    }
    AcrossSpreads spreads;
    CommonLimits limits;
    std::vector<std::string> orders;
    const auto read = query->each([&](const Query& row) -> Result<void> {
        orders.push_back(row.text(0));
        spreads.places.push_back(
            {row.text(1), row.integer(2), row.integer(3), Length(row.integer(4)), {}, Length(row.integer(5))});
        spreads.values += row.integer(2);
        limits.add(row.integer(2), row, 6);
        return {};
    });
    const auto added = read ? addMedians(band, spreads, orders) : read;
    if (!added) {
        return tl::unexpected(added.error());
    }
    spreads.band = limits.band();
    return spreads;
}

/// The value in the middle of each place: as far along the index as half its values, which sorts none of them.
Result<void> Across::addMedians(std::string_view band, AcrossSpreads& spreads, const std::vector<std::string>& orders) {
    auto query = asked("SELECT value_nm FROM banded WHERE band = ?" + within("banded") +
                           " AND place_order = ? ORDER BY value_nm LIMIT 1 OFFSET CAST(? AS bigint)",
                       band);
    if (!query) {
        return tl::unexpected(query.error());
    }
    const int at = isOfAll() ? 2 : 3;
    for (std::size_t i = 0; i < orders.size(); ++i) {
        query->bind(at, orders[i]);
        query->bind(at + 1, (spreads.places[i].count - 1) / 2);
        const auto row = query->step();
        if (!row) {
            return tl::unexpected(row.error());
        }
        if (!*row) { // a record went since they were counted
            spreads.places[i].median = spreads.places[i].largest;
            continue;
        }
        spreads.places[i].median = Length(query->integer(0));
        query->reset();
    }
    return {};
}

Result<void> Across::eachValue(std::string_view band, const std::function<void(AcrossValue value)>& take) {
    const Dialect& d = m_connection->dialect();
    auto query =
        asked("SELECT banded.place, banded.listing, banded.build, banded.value_nm, banded.state, " +
                  d.asText("listing.customer") + ", " + d.asText("listing.engine") + ", " + d.asText("listing.serial") +
                  " FROM banded JOIN listing ON listing.id = banded.listing WHERE banded.band = ?" + within("banded") +
                  " ORDER BY banded.place_order, banded.value_nm, " + d.bytewise("banded.place") + ", " +
                  d.bytewise("listing.customer") + ", " + d.bytewise("listing.engine") + ", " +
                  d.bytewise("listing.serial") + ", banded.build, banded.listing",
              band);
    if (!query) {
        return tl::unexpected(query.error());
    }
    return query->each([&](const Query& row) -> Result<void> {
        const auto state = numbered<CheckState>(row.integer(4));
        if (!state) {
            return strangeRow();
        }
        std::string label = row.text(5);
        for (const int part : {6, 7}) {
            const std::string text = row.text(part);
            label += (label.empty() || text.empty() ? "" : ", ") + text;
        }
        take({std::move(label), row.text(0), row.integer(1), row.integer(2), Length(row.integer(3)), *state});
        return {};
    });
}

Result<std::vector<MovementCount>> Across::movements(MovementBy by) {
    const std::string column = by == MovementBy::fastener ? "fastener" : by == MovementBy::wrench ? "wrench" : "person";
    auto query =
        asked("SELECT " + column +
              ", CAST(sum(pulled) AS bigint), CAST(sum(moved) AS bigint), max(largest_mdeg) FROM movement "
              "WHERE true" +
              within("movement") + " GROUP BY " + column + " ORDER BY " + m_connection->dialect().bytewise(column));
    if (!query) {
        return tl::unexpected(query.error());
    }
    std::vector<MovementCount> list;
    const auto read = query->each([&](const Query& row) -> Result<void> {
        const std::string what = row.text(0);
        list.push_back(
            {what.empty() ? Core::say("not named") : what, row.integer(1), row.integer(2), Angle(row.integer(3))});
        return {};
    });
    if (!read) {
        return tl::unexpected(read.error());
    }
    std::ranges::stable_sort(list, [](const MovementCount& a, const MovementCount& b) {
        return std::tuple(-a.moved, -a.share(), placeOrder(a.what)) <
               std::tuple(-b.moved, -b.share(), placeOrder(b.what));
    });
    return list;
}

Result<std::vector<AcrossInstrument>> Across::instruments() {
    auto query =
        asked("SELECT name, serial, kind, max(calibrated), max(due), count(*), max(due_cycles), max(cycles) FROM "
              "instrument WHERE true" +
              within("instrument") + " GROUP BY name, serial, kind");
    if (!query) {
        return tl::unexpected(query.error());
    }
    std::vector<AcrossInstrument> list;
    const auto read = query->each([&](const Query& row) -> Result<void> {
        const auto type = numbered<InstrumentType>(row.integer(2));
        if (!type) {
            return strangeRow();
        }
        list.push_back({row.text(0), row.text(1), *type, dayAt(row, 3), dayAt(row, 4), row.integer(5), numberAt(row, 6),
                        row.integer(7)});
        return {};
    });
    if (!read) {
        return tl::unexpected(read.error());
    }
    std::ranges::sort(list, [](const AcrossInstrument& a, const AcrossInstrument& b) {
        return std::tuple(!a.due, a.due, a.name, a.serial, a.type) <
               std::tuple(!b.due, b.due, b.name, b.serial, b.type);
    });
    return list;
}

} // namespace caprail
