// SPDX-License-Identifier: GPL-3.0-or-later
/// What is known of earlier versions of the file.
#include <store/sqlite/schema.h>

#include <algorithm>
#include <array>
#include <set>
#include <store/schema_texts.h>

namespace caprail {

namespace {

/// The word that follows `at` in an SQL text, up to a blank or a bracket.
std::string_view wordFrom(std::string_view sql, std::size_t at) {
    const std::size_t begin = sql.find_first_not_of(" \n", at);
    return sql.substr(begin, sql.find_first_of(" \n(", begin) - begin);
}

SchemaItem itemFrom(std::string_view sql) {
    // CREATE TABLE name(…, CREATE INDEX name ON table(…, CREATE TRIGGER name BEFORE … ON table …, CREATE VIEW name AS …
    const std::string_view type = wordFrom(sql, 6);
    const std::string_view name = wordFrom(sql, 7 + type.size());
    const bool belongs = type == "TRIGGER" || type == "INDEX";
    const std::string_view table = belongs ? wordFrom(sql, sql.find(" ON ") + 4) : name;
    std::string lower(type);
    std::ranges::transform(lower, lower.begin(), [](char c) { return static_cast<char>(c - 'A' + 'a'); });
    return {lower, std::string(name), std::string(table), std::string(sql)};
}

/// The columns that a table of the file has.
Result<std::set<std::string, std::less<>>> columnsOf(Database& database, std::string_view table) {
    auto rows = database.prepare("SELECT name FROM pragma_table_info(?)");
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    rows->bind(1, table);
    std::set<std::string, std::less<>> columns;
    for (auto more = rows->step();; more = rows->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            return columns;
        }
        columns.emplace(rows->text(0));
    }
}

std::string selectOf(const KindInfo& info, const std::set<std::string, std::less<>>* present) {
    std::string sql = "SELECT sequence";
    for (const Column& column : info.columns) {
        sql += present == nullptr || present->contains(column.name) ? ", " + sqlName(column.name) : ", NULL";
    }
    return sql + " FROM " + std::string(info.kind);
}

} // namespace

std::vector<SchemaItem> itemsFromText(std::string_view sql) {
    std::vector<SchemaItem> items;
    constexpr std::string_view end = ";\n\n";
    for (std::size_t at = sql.find("CREATE"); at < sql.size();) {
        const std::size_t stop = std::min(sql.find(end, at), sql.find_last_of(';'));
        items.push_back(itemFrom(sql.substr(at, stop - at)));
        at = sql.find("CREATE", stop);
    }
    return items;
}

const std::vector<SchemaItem>& schemaItems(std::uint32_t version) {
    static const auto earlier = [] {
        std::array<std::vector<SchemaItem>, schemaVersion - 1> all;
        std::ranges::transform(schemaTexts, all.begin(), itemsFromText);
        return all;
    }();
    static_assert(std::size(schemaTexts) == schemaVersion - 1, "the version before this one belongs into versions/");
    return version < schemaVersion ? earlier.at(version - 1) : schemaItems();
}

Result<std::vector<std::string>> detailSelects(Database& database) {
    const auto version = versionOf(database);
    if (!version) {
        return tl::unexpected(version.error());
    }
    std::vector<std::string> selects;
    for (const KindInfo& info : allKinds()) {
        if (*version == schemaVersion) {
            selects.push_back(selectOf(info, nullptr));
            continue;
        }
        const auto present = columnsOf(database, info.kind);
        if (!present) {
            return tl::unexpected(present.error());
        }
        selects.push_back(present->empty() ? std::string() : selectOf(info, &*present));
    }
    return selects;
}

} // namespace caprail
