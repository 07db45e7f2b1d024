// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What someone with the sqlite3 shell and some skill would do to a record: change it and put its guards back.
#include "samples.h"

#include <store/sqlite/schema.h>

namespace caprail::samples {

/// Takes the triggers of the tables away that the SQL names, runs it, and puts them back to the letter.
inline void alter(const std::string& path, const std::string& sql) {
    std::string all = "PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF; BEGIN;";
    const auto guards = [&](const SchemaItem& item) {
        return item.type == "trigger" && sql.find(item.table) != std::string::npos;
    };
    for (const SchemaItem& item : schemaItems()) {
        if (guards(item)) {
            all += "DROP TRIGGER " + item.name + ";";
        }
    }
    all += sql + ";";
    for (const SchemaItem& item : schemaItems()) {
        if (guards(item)) {
            all += item.sql + ";";
        }
    }
    const std::string answer = shell(path, all + "COMMIT");
    ASSERT_EQ(answer, "") << sql;
}

/// A record with one entry of every kind and an attachment, and a second gap reading.
inline Ledger makeFullRecord(const std::string& path) {
    auto file = RecordFile::create(path);
    EXPECT_TRUE(file) << file.error().sentence;
    for (const Body& body : oneOfEach(true)) {
        const auto* added = body.as<AttachmentAdded>();
        const auto sequence = added != nullptr ? file->appendWithAttachment(morning, "Ann", *added, "x")
                                               : file->append(morning, "Ann", body);
        EXPECT_TRUE(sequence) << kindOf(body).kind << ": " << sequence.error().sentence;
    }
    EXPECT_TRUE(file->append(morning, "Bob", gap(2, Side::left, 575)));
    return file->ledger();
}

} // namespace caprail::samples
