// SPDX-License-Identifier: GPL-3.0-or-later
/// The views of a record: readable state for anyone with the sqlite3 shell. This program itself never reads them.
#include <store/sqlite/schema.h>

namespace caprail {

namespace {

SchemaItem view(const std::string& name, const std::string& select) {
    return {"view", name, name, "CREATE VIEW " + name + " AS\n" + select};
}

/// The entries of one kind that stand, each with its time and person.
SchemaItem presentView(const KindInfo& info) {
    const std::string kind(info.kind);
    std::string columns;
    for (const Column& column : info.columns) {
        columns += ", d." + sqlName(column.name);
    }
    return view("present_" + kind, "SELECT sequence, e.time, e.person" + columns + "\nFROM " + kind +
                                       " AS d JOIN entry AS e USING (sequence)\n"
                                       "WHERE sequence NOT IN (SELECT entry FROM struck)\nORDER BY sequence");
}

/// What an entry says: "position=3R pass=1 gap_nm=1460500 …", empty fields left out.
std::string saysCase(const KindInfo& info) {
    std::string text;
    for (const Column& column : info.columns) {
        const std::string name = sqlName(column.name);
        const std::string label = "' " + column.name + "='";
        text += text.empty() ? "" : " || ";
        text += column.optional                        ? "coalesce(" + label + " || " + name + ", '')"
                : column.type == Column::Type::integer ? label + " || " + name
                                                       : "iif(" + name + " = '', '', " + label + " || " + name + ")";
    }
    const std::string kind(info.kind);
    return "\n    WHEN '" + kind + "' THEN (SELECT " + text + " FROM " + kind + " AS d WHERE d.sequence = e.sequence)";
}

} // namespace

std::vector<SchemaItem> schemaViews() {
    std::vector<SchemaItem> views;
    std::string says;
    for (const KindInfo& info : allKinds()) {
        views.push_back(presentView(info));
        says += saysCase(info);
    }
    views.push_back(view("struck_entries", "SELECT e.sequence, e.time, e.person, e.kind, s.sequence AS struck_by,\n"
                                           "  by_entry.time AS struck_time, by_entry.person AS struck_person, s.why\n"
                                           "FROM struck AS s JOIN entry AS e ON e.sequence = s.entry\n"
                                           "  JOIN entry AS by_entry ON by_entry.sequence = s.sequence\n"
                                           "ORDER BY e.sequence"));
    views.push_back(view("history", "SELECT e.sequence, e.time, e.person, e.kind,\n  trim(CASE e.kind" + says +
                                        "\n  END) AS says,\n"
                                        "  (SELECT min(s.sequence) FROM struck AS s WHERE s.entry = e.sequence) AS "
                                        "struck_by,\n  lower(hex(e.seal)) AS seal\n"
                                        "FROM entry AS e\nORDER BY e.sequence"));
    return views;
}

} // namespace caprail
