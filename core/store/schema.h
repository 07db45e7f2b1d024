// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/kinds.h>
#include <store/database.h>
#include <vector>

namespace caprail {

/// One table, trigger or view of a record, as it stands in the file's own schema.
struct SchemaItem {
    std::string type; ///< "table", "trigger", "view"
    std::string name;
    std::string table; ///< that it belongs to; of a table or view, its own name
    std::string sql;
    friend auto operator<=>(const SchemaItem&, const SchemaItem&) = default;
};

/// Everything that a record holds, in the order in which it is made: made from the descriptions of the entry kinds.
/// Tables: `entry`, one per kind keyed by `sequence`, `attachment`. Triggers let entries be added in order and nothing
/// be changed or removed. Views show the present state to anyone with the sqlite3 shell (schema_views.cpp).
const std::vector<SchemaItem>& schemaItems();
/// The views alone: `history`, `struck_entries`, and `present_<kind>` for each kind.
std::vector<SchemaItem> schemaViews();

/// A name as SQL wants it: in quotes when it is one of its words ("check").
std::string sqlName(std::string_view name);

/// Makes the tables in an empty file. Runs outside a transaction of the caller.
Result<void> createSchema(Database&);
/// Refuses a file whose schema is not, to the letter, the one that this program makes: what was added or changed could
/// show or do something that is not in the ledger.
Result<void> verifySchema(Database&);

} // namespace caprail
