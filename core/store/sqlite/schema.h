// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/kinds.h>
#include <store/sqlite/database.h>
#include <store/sqlite/header.h>
#include <vector>

namespace caprail {

/// One table, index, trigger or view of a record, as it stands in the file's own schema.
struct SchemaItem {
    std::string type; ///< "table", "index", "trigger", "view"
    std::string name;
    std::string table; ///< that it belongs to; of a table or view, its own name
    std::string sql;
    friend auto operator<=>(const SchemaItem&, const SchemaItem&) = default;
};

/// Everything that a record of the present version holds, in the order in which it is made: made from the descriptions
/// of the entry kinds. Tables: `entry`, one per kind keyed by `sequence`, `attachment`. Triggers let entries be added
/// in order and nothing be changed or removed. Views show the present state to anyone with the sqlite3 shell
/// (schema_views.cpp).
const std::vector<SchemaItem>& schemaItems();
/// The same of any version from 1 to `schemaVersion`. Earlier ones stand as text in core/store/versions and are never
/// changed again: the files that hold them are not either.
const std::vector<SchemaItem>& schemaItems(std::uint32_t version);
/// Reads such a text: statements that end in ";" before an empty line. Only what stands in versions/ is given to it.
std::vector<SchemaItem> itemsFromText(std::string_view sql);
/// The views alone: `history`, `struck_entries`, and `present_<kind>` for each kind.
std::vector<SchemaItem> schemaViews();

/// A name as SQL wants it: in quotes when it is one of its words ("check").
std::string sqlName(std::string_view name);

/// Makes the tables in an empty file. Runs outside a transaction of the caller.
Result<void> createSchema(Database&, std::uint32_t version = schemaVersion);
/// The version that the file's header gives; refuses what is none of those known.
Result<std::uint32_t> versionOf(Database&);
/// Refuses a file whose schema is not, to the letter, the one that its version has: what was added or changed could
/// show or do something that is not in the ledger.
Result<void> verifySchema(Database&);

/// What to select for each entry kind, in the order of allKinds(): `sequence`, then one value per column of the kind,
/// NULL where this file's version has no such column. Empty where it has no such table: no entry is of that kind.
Result<std::vector<std::string>> detailSelects(Database&);

} // namespace caprail
