// SPDX-License-Identifier: GPL-3.0-or-later
#include "publishing.h"

namespace {

using namespace caprail;
using servertest::publishRecord;

class Roles : public servertest::Publishing {
protected:
    void SetUp() override {
        Publishing::SetUp();
        if (IsSkipped()) {
            return;
        }
        Connection owner = as("postgres");
        ledger = shoptest::shortLedger("Orrin Vale", "6.2 V8");
        shoptest::write(folder / "vale.caprail", ledger);
        Connection bench = as("bench_1");
        published(bench, folder / "vale.caprail");
        auto rows = owner.prepare("SELECT relname, CAST(relkind AS text) FROM pg_class WHERE relnamespace = "
                                  "'caprail'::regnamespace AND relkind IN ('r', 'v') ORDER BY relname");
        ASSERT_TRUE(rows);
        for (auto more = rows->step(); more && *more; more = rows->step()) {
            (rows->text(1) == "r" ? tables : views).push_back(rows->text(0));
        }
        ASSERT_GT(tables.size(), 10U);
        ASSERT_GT(views.size(), 7U);
    }
    /// Whether the server forbids a statement to a login.
    static void isForbidden(Connection& login, const std::string& sql, const std::string& code = "42501") {
        EXPECT_FALSE(login.run(sql)) << sql;
        EXPECT_EQ(login.lastCode(), code) << sql;
    }
    Ledger ledger;
    std::vector<std::string> tables, views;
};

TEST_F(Roles, a_bench_changes_and_takes_away_nothing_and_writes_into_no_table_itself) {
    Connection bench = as("bench_1");
    for (const std::string& table : tables) {
        isForbidden(bench, "DELETE FROM " + table);
        isForbidden(bench, "INSERT INTO " + table + " DEFAULT VALUES");
        isForbidden(bench, "TRUNCATE " + table);
        if (table != "migration") {
            isForbidden(bench, "SELECT * FROM " + table);
        }
    }
    for (const std::string& view : views) {
        isForbidden(bench, "SELECT * FROM " + view);
    }
    isForbidden(bench, "UPDATE entry SET line = ''");
    isForbidden(bench, "UPDATE record SET entries = 0");
    isForbidden(bench, "UPDATE listing SET customer = ''");
    isForbidden(bench, "DROP TABLE entry");
    isForbidden(bench, "SELECT take_away('\\x00')");
    isForbidden(bench, "CREATE TABLE caprail.own (x bigint)");
    isForbidden(bench, "SET ROLE caprail_keeper");
}

TEST_F(Roles, a_reader_reads_every_table_and_view_and_adds_nothing) {
    Connection reader = as("reader_1");
    for (const std::vector<std::string>& names : {tables, views}) {
        for (const std::string& name : names) {
            const auto read = reader.run("SELECT * FROM " + name);
            EXPECT_TRUE(read) << name << ": " << read.error().sentence;
        }
    }
    for (const std::string& table : tables) {
        isForbidden(reader, "DELETE FROM " + table);
        isForbidden(reader, "INSERT INTO " + table + " DEFAULT VALUES");
    }
    isForbidden(reader, "SELECT hold_record('\\x00')");
    isForbidden(reader, "SELECT publish(1, 0, '{}', '', '{}')");
    const auto published = publishRecord(reader, folder / "vale.caprail");
    EXPECT_TRUE(published) << "all of it is there: a reader may ask";
    shoptest::write(folder / "other.caprail", shoptest::shortLedger("Ada Quell", "3.0 six"));
    EXPECT_FALSE(publishRecord(reader, folder / "other.caprail"));
    EXPECT_EQ(reader.lastCode(), "42501");
}

TEST_F(Roles, not_even_the_keeper_changes_an_entry_or_who_published_it) {
    Connection keeper = as("keeper_1");
    isForbidden(keeper, "UPDATE entry SET person = 'somebody'", "CPR09");
    isForbidden(keeper, "UPDATE publication SET publisher = 'somebody'", "CPR09");
    isForbidden(keeper, "TRUNCATE entry", "CPR09");
}

TEST_F(Roles, the_keeper_takes_a_whole_record_away_and_what_only_it_had) {
    Connection keeper = as("keeper_1");
    const std::string seal = toHex(ledger.at(1).seal);
    EXPECT_EQ(keeper.integer("SELECT CAST(take_away(decode('" + seal + "', 'hex')) AS integer)"), 1);
    EXPECT_EQ(keeper.integer("SELECT CAST(take_away(decode('" + seal + "', 'hex')) AS integer)"), 0)
        << "it was there once";
    for (const char* name : {"record", "entry", "listing", "found", "banded", "publication"}) {
        EXPECT_EQ(keeper.integer(std::string("SELECT count(*) FROM ") + name), 0) << name;
    }
}

TEST_F(Roles, a_bench_leaves_no_photo_that_is_not_whole_and_adds_nothing_to_one_that_is) {
    Connection bench = as("bench_1");
    const std::string record = "(SELECT id FROM known(decode('" + toHex(ledger.at(1).seal) + "', 'hex'), 0))";
    const auto begin = [&](const std::string& bytes, std::int64_t size) {
        return "SELECT begin_attachment(" + record + ", sha256(" + bytes + "), " + std::to_string(size) + ")";
    };
    const auto piece = [](const std::string& of, int at, const std::string& bytes) {
        return "SELECT add_piece(sha256(" + of + "), " + std::to_string(at) + ", " + bytes + ", true)";
    };
    const auto tried = [&](const std::vector<std::string>& statements) {
        const auto kept = bench.together([&]() -> Result<void> {
            for (const std::string& sql : statements) {
                if (auto ran = bench.run(sql); !ran) {
                    return ran;
                }
            }
            return {};
        });
        return kept ? std::string("kept") : bench.lastCode();
    };
    const std::string cap = "'cap'";
    const std::string mebibyte = "convert_to(repeat('p', 1048576), 'UTF8')";
    EXPECT_EQ(tried({begin(cap, 3)}), "CPR03") << "no bytes";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'cup'")}), "CPR03") << "others";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'ca'")}), "CPR03") << "too few";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'caps'")}), "CPR03") << "too many";
    EXPECT_EQ(tried({begin(cap, 4), piece(cap, 0, "'cap'")}), "CPR03") << "a size that is not theirs";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'c'"), piece(cap, 1, "'ap'")}), "CPR03") << "in crumbs";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 1, "'cap'")}), "CPR03") << "from the middle";
    EXPECT_EQ(tried({begin(cap, 100'000'000)}), "23514") << "larger than any photo of a record";
    EXPECT_EQ(tried({piece(cap, 0, "'cap'")}), "23503") << "of no record";
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'cap'")}), "kept");
    EXPECT_EQ(tried({begin(cap, 3), piece(cap, 0, "'cap'")}), "CPR03") << "it is there";
    EXPECT_EQ(tried({piece(cap, 1, "''")}), "CPR03");
    EXPECT_EQ(tried({piece(cap, 1, "'s'")}), "CPR03");
    EXPECT_EQ(tried({begin(mebibyte, 1048576), piece(mebibyte, 0, mebibyte), "SET CONSTRAINTS ALL IMMEDIATE",
                     piece(mebibyte, 1, "'s'")}),
              "CPR03")
        << "nor after it was judged";
    EXPECT_EQ(bench.integer("SELECT count(*) FROM lacking(" + record + ", sha256('cap'))"), 0);
}

TEST_F(Roles, a_bench_cannot_bring_an_entry_that_does_not_fit_its_seal) {
    Connection bench = as("bench_1");
    Ledger longer = ledger;
    const Entry entry = longer.append(shoptest::morning, "Mira Solheim", NoteAdded{"", "oil is clean"});
    const auto add = [&](const std::string& line, const Seal& seal, std::int64_t number) {
        auto query = bench.prepare("SELECT add_entries((SELECT id FROM known(?, 0)), ?, ?, ?)");
        EXPECT_TRUE(query);
        query->bindBytes(1, {reinterpret_cast<const char*>(ledger.at(1).seal.bytes.data()), 32});
        query->bind(2, number);
        query->bind(3, line);
        query->bindBytes(4, {reinterpret_cast<const char*>(seal.bytes.data()), 32});
        const auto added = query->run();
        return added ? std::string("added") : bench.lastCode();
    };
    const std::string line = canonicalText(entry);
    std::string altered = line;
    altered.replace(altered.find("clean"), 5, "dirty");
    EXPECT_EQ(add(altered, entry.seal, entry.sequence), "CPR02");
    EXPECT_EQ(add(line, entry.seal, entry.sequence + 1), "CPR01");
    EXPECT_EQ(add(line, entry.seal, 1), "CPR01") << "what is there stays there";
    EXPECT_EQ(add(line, entry.seal, entry.sequence), "added");
}

} // namespace
