// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/sqlite/schema.h>

#include <algorithm>
#include <sqlite3.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::string_view neverChanged = "A record is only added to: strike the entry with a later one.";
constexpr std::string_view notInOrder =
    "An entry follows the last one, with its details, in one transaction.";

std::string columnSql(const Column& column) {
    std::string sql = sqlName(column.name) + (column.type == Column::Type::integer ? " INTEGER" : " TEXT");
    if (!column.optional) {
        sql += " NOT NULL";
    }
    if (!column.words.empty()) {
        std::string words;
        for (const auto allowed : column.words) {
            std::string escaped(allowed);
            for (std::size_t at = 0; (at = escaped.find('\'', at)) != std::string::npos; at += 2) {
                escaped.insert(at, 1, '\'');
            }
            words += (words.empty() ? "'" : ", '") + escaped + "'";
        }
        sql += " CHECK(" + sqlName(column.name) + " IN (" + words + "))";
    }
    return sql;
}

SchemaItem kindTable(const KindInfo& info) {
    const std::string name(info.kind);
    std::string sql = "CREATE TABLE " + name + "(\n  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence)";
    for (const Column& column : info.columns) {
        sql += ",\n  " + columnSql(column);
    }
    return {"table", name, name, sql + "\n) STRICT"};
}

SchemaItem trigger(const std::string& table, const std::string& name, const std::string& when,
                   std::string_view sentence) {
    return {"trigger", table + name, table,
            "CREATE TRIGGER " + table + name + " BEFORE " + when + " BEGIN\n  SELECT RAISE(ABORT, '" +
                std::string(sentence) + "');\nEND"};
}

void addGuards(std::vector<SchemaItem>& items, const std::string& table, const std::string& refusedInsert) {
    items.push_back(trigger(table, "_is_never_updated", "UPDATE ON " + table, neverChanged));
    items.push_back(trigger(table, "_is_never_deleted", "DELETE ON " + table, neverChanged));
    // INSERT OR REPLACE would remove a row without a delete trigger: so the insert itself is guarded.
    items.push_back(trigger(table, "_is_only_added_to", "INSERT ON " + table + "\nWHEN " + refusedInsert, notInOrder));
}

std::vector<SchemaItem> makeItems() {
    std::vector<SchemaItem> items;
    items.push_back({"table", "entry", "entry",
                     "CREATE TABLE entry(\n  sequence INTEGER PRIMARY KEY,\n  time TEXT NOT NULL,\n"
                     "  person TEXT NOT NULL,\n  kind TEXT NOT NULL,\n"
                     "  seal BLOB NOT NULL CHECK(length(seal) = 32)\n) STRICT"});
    for (const KindInfo& info : allKinds()) {
        items.push_back(kindTable(info));
    }
    items.push_back({"table", "attachment", "attachment",
                     "CREATE TABLE attachment(\n  sha256 TEXT PRIMARY KEY NOT NULL CHECK(length(sha256) = 64),\n"
                     "  bytes BLOB NOT NULL\n) STRICT"});

    // The views ask of every entry whether it is struck.
    items.push_back({"index", "struck_by_entry", "struck", "CREATE INDEX struck_by_entry ON struck(entry)"});

    addGuards(items, "entry", "NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM entry)");
    for (const KindInfo& info : allKinds()) {
        const std::string kind(info.kind);
        addGuards(items, kind,
                  "NEW.sequence IS NOT (SELECT max(sequence) FROM entry)\n"
                  "  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT '" +
                      kind + "'\n  OR EXISTS (SELECT 1 FROM " + kind + " WHERE sequence = NEW.sequence)");
    }
    addGuards(items, "attachment", "EXISTS (SELECT 1 FROM attachment WHERE sha256 = NEW.sha256)");
    for (auto& view : schemaViews()) {
        items.push_back(std::move(view));
    }
    return items;
}

/// What the schema of the file holds beside the expected, or what it lacks, as the end of a sentence.
std::string difference(const std::vector<SchemaItem>& expected, const std::vector<SchemaItem>& found) {
    for (const SchemaItem& item : found) {
        const auto same = std::ranges::find(expected, item.name, &SchemaItem::name);
        if (same == expected.end()) {
            return Core::say("holds a %1 “%2” that no build record has", item.type.substr(0, 20),
                             item.name.substr(0, 80));
        }
        if (*same != item) {
            return Core::say("has another %1 “%2” than a build record has", item.type.substr(0, 20),
                             item.name.substr(0, 80));
        }
    }
    for (const SchemaItem& item : expected) {
        if (std::ranges::find(found, item.name, &SchemaItem::name) == found.end()) {
            return Core::say("lacks the %1 “%2”", item.type, item.name);
        }
    }
    return Core::say("holds something twice");
}

} // namespace

const std::vector<SchemaItem>& schemaItems() {
    static const std::vector<SchemaItem> items = makeItems();
    return items;
}

std::string sqlName(std::string_view name) {
    const bool isWord = sqlite3_keyword_check(name.data(), static_cast<int>(name.size())) != 0;
    return isWord ? "\"" + std::string(name) + "\"" : std::string(name);
}

Result<void> createSchema(Database& database, std::uint32_t version) {
    // Fixed, so that the first pages of all records are alike: salvage leans on it when they are damaged.
    std::string sql = "PRAGMA page_size = 4096; PRAGMA auto_vacuum = NONE; PRAGMA encoding = 'UTF-8'; "
                      "BEGIN IMMEDIATE; PRAGMA application_id = " +
                      std::to_string(applicationId) + "; PRAGMA user_version = " + std::to_string(version) + ";";
    for (const SchemaItem& item : schemaItems(version)) {
        sql += item.sql + ";";
    }
    return database.run(sql + "COMMIT");
}

Result<std::uint32_t> versionOf(Database& database) {
    const auto version = database.integer("PRAGMA user_version");
    if (!version) {
        return tl::unexpected(version.error());
    }
    if (*version < 1 || *version > static_cast<std::int64_t>(schemaVersion)) {
        return refuse(Core::say("%1 has tables of version %2, which this program does not know.",
                                inQuotes(database.path()), *version));
    }
    return static_cast<std::uint32_t>(*version);
}

Result<void> verifySchema(Database& database) {
    const auto version = versionOf(database);
    if (!version) {
        return tl::unexpected(version.error());
    }
    auto rows = database.prepare("SELECT type, name, tbl_name, sql FROM sqlite_schema "
                                 "WHERE NOT (name = 'sqlite_autoindex_attachment_1' AND type = 'index' AND sql IS NULL)"
                                 " LIMIT 1000");
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    std::vector<SchemaItem> found;
    for (auto more = rows->step();; more = rows->step()) {
        if (!more) {
            return tl::unexpected(more.error());
        }
        if (!*more) {
            break;
        }
        const auto text = [&](int column) { return std::string(rows->text(column)); };
        found.push_back({text(0), text(1), text(2), text(3)});
    }
    std::vector<SchemaItem> expected = schemaItems(*version);
    std::ranges::sort(expected);
    std::ranges::sort(found);
    if (found != expected) {
        return refuse(Core::say("%1 %2: it was altered outside this program. Salvage its entries into a new file.",
                                inQuotes(database.path()), difference(expected, found)));
    }
    return {};
}

} // namespace caprail
