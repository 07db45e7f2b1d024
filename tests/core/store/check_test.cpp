// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <gmock/gmock.h>
#include <store/care/check.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

class Check : public testing::Test {
protected:
    void SetUp() override {
        ledger = makeFullRecord(path);
        sound = read(path);
    }
    /// The first finding after an alteration of the sound record; "sound" when nothing is found. RecordFile must
    /// refuse to open whatever is found here.
    std::string findingAfter(const std::string& sql) {
        write(path, sound);
        alter(path, sql);
        return finding();
    }
    std::string finding() {
        const std::string before = read(path);
        const CheckReport report = checkFile(path);
        EXPECT_EQ(read(path), before);
        EXPECT_EQ(report.findings.empty(), report.verdict == CheckVerdict::sound);
        return report.findings.empty() ? "sound" : report.findings.front();
    }
    Folder folder;
    std::string path = folder / "smith.caprail";
    std::string sound;
    Ledger ledger;
};

TEST_F(Check, finds_a_record_as_it_was_written_sound) {
    const CheckReport report = checkFile(path);
    EXPECT_EQ(report.verdict, CheckVerdict::sound) << report.findings.front();
    EXPECT_EQ(report.entries, ledger.size());
    EXPECT_EQ(report.attachments, 1);
    EXPECT_EQ(report.seal, ledger.seal());
}

TEST_F(Check, names_an_entry_whose_typed_text_is_not_what_is_stored_though_every_seal_fits) {
    {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file) << file.error().sentence;
        ASSERT_TRUE(file->append(morning, "Ann", GapReading{{1, Side::left}, 1, {thou(46.2), "99.9 thou"}, ""}));
    }
    EXPECT_THAT(finding(), HasSubstr("“gap” was typed as “99.9 thou”, but 0.04620 in is stored with it"));
}

TEST_F(Check, finds_a_change_in_every_column_of_every_kind) {
    int columns = 0;
    for (std::size_t kind = 0; kind < allKinds().size(); ++kind) {
        const KindInfo& info = allKinds()[kind];
        for (const Column& column : info.columns) {
            const std::string name = sqlName(column.name);
            std::string value = name + " || 'x'";
            if (column.type == Column::Type::integer) {
                value = name + " + 1";
            } else if (!column.words.empty()) {
                value = "'" + std::string(column.words.front()) + "'";
                if (column.words.size() < 2) {
                    continue; // only one word is possible
                }
                // The sample holds the last word; an apostrophe is doubled in SQL.
                for (std::size_t at = 1; (at = value.find('\'', at)) < value.size() - 1; at += 2) {
                    value.insert(at, 1, '\'');
                }
            }
            const std::string found = findingAfter("UPDATE " + std::string(info.kind) + " SET " + name + " = " + value +
                                                   " WHERE sequence = " + std::to_string(kind + 1));
            // Refused by the kind itself ("3Rx" is no position) or by the seal: either way the entry is named.
            EXPECT_THAT(found, testing::ContainsRegex("[Ee]ntry " + std::to_string(kind + 1) + "\\b"))
                << info.kind << "." << column.name;
            if (column.name == "sha256") {
                EXPECT_NE(found, "sound");
            }
            ++columns;
        }
    }
    RecordProperty("columns_altered", columns);
    EXPECT_GT(columns, 130);
}

TEST_F(Check, finds_an_optional_field_that_was_emptied_or_half_emptied) {
    EXPECT_THAT(findingAfter("UPDATE round_outcome SET angle_mdeg = NULL, angle_typed = NULL"),
                HasSubstr("seal of entry"));
    // A typed text beside no value says nothing in the entry, but it is not what was sealed.
    EXPECT_THAT(findingAfter("UPDATE round_outcome SET angle_mdeg = NULL"), HasSubstr("seal of entry"));
}

TEST_F(Check, finds_a_change_in_every_column_that_all_entries_have) {
    EXPECT_THAT(findingAfter("UPDATE entry SET person = 'Eve' WHERE sequence = 4"), HasSubstr("seal of entry 4"));
    EXPECT_THAT(findingAfter("UPDATE entry SET time = '2026-05-04T09:30:00.001Z' WHERE sequence = 4"),
                HasSubstr("seal of entry 4"));
    EXPECT_THAT(findingAfter("UPDATE entry SET time = '2026-05-04T09:30:00Z' WHERE sequence = 4"),
                HasSubstr("Entry 4"));
    EXPECT_THAT(findingAfter("UPDATE entry SET seal = zeroblob(32) WHERE sequence = 4"), HasSubstr("seal of entry 4"));
    EXPECT_THAT(findingAfter("UPDATE entry SET kind = 'struck' WHERE sequence = 4"), HasSubstr("lacks the details"));
    EXPECT_THAT(findingAfter("UPDATE entry SET kind = 'unheard_of' WHERE sequence = 4"), HasSubstr("unheard_of"));
}

TEST_F(Check, names_the_altered_entry_alone) {
    alter(path, "UPDATE entry SET person = 'Eve' WHERE sequence = 4");
    const CheckReport report = checkFile(path);
    ASSERT_EQ(report.findings.size(), 1U);
    EXPECT_EQ(report.entries, ledger.size());
    const auto opened = RecordFile::open(path, OpenMode::readOnly);
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("seal of entry 4"));
}

TEST_F(Check, finds_removed_inserted_and_swapped_entries) {
    const std::string last = std::to_string(ledger.size());
    EXPECT_THAT(findingAfter("DELETE FROM gap_reading WHERE sequence = " + last), HasSubstr("lacks the details"));
    EXPECT_NE(findingAfter("DELETE FROM entry WHERE sequence = " + last), "sound"); // its details are left
    EXPECT_NE(findingAfter("DELETE FROM entry WHERE sequence = 1; DELETE FROM engine_described"), "sound");
    EXPECT_NE(findingAfter("DELETE FROM entry WHERE sequence = 5; DELETE FROM fastener_group_set;"
                           "UPDATE entry SET sequence = sequence - 1 WHERE sequence > 5"),
              "sound");
    EXPECT_NE(
        findingAfter(
            "INSERT INTO entry SELECT sequence + 1, time, person, kind, seal FROM entry WHERE sequence = " + last +
            "; INSERT INTO gap_reading SELECT sequence + 1, position, pass, gap_nm, gap_typed, "
            "instrument, does_not_go_nm, does_not_go_typed, straightedge FROM gap_reading WHERE sequence = " +
            last),
        "sound");
    EXPECT_NE(findingAfter("UPDATE entry SET sequence = -1 WHERE sequence = 2;"
                           "UPDATE entry SET sequence = 2 WHERE sequence = 3;"
                           "UPDATE entry SET sequence = 3 WHERE sequence = -1;"
                           "UPDATE layout_set SET sequence = 3; UPDATE band_set SET sequence = 2"),
              "sound");
    EXPECT_NE(findingAfter("INSERT INTO note_added VALUES (1, '', 'second details of entry 1')"), "sound");
}

TEST_F(Check, shows_a_cut_off_end_only_by_another_seal) {
    // What remains is a whole ledger; only the printed short form tells that there was more.
    const std::string last = std::to_string(ledger.size());
    EXPECT_EQ(findingAfter("DELETE FROM gap_reading WHERE sequence = " + last +
                           "; DELETE FROM entry WHERE sequence = " + last),
              "sound");
    EXPECT_NE(shortForm(checkFile(path).seal), shortForm(ledger.seal()));
}

TEST_F(Check, tells_by_the_seal_of_a_sheet_whether_the_end_was_cut_off) {
    const std::string printed = shortForm(ledger.seal());
    const auto check = [&](const std::string& typed) { return checkFile(path, *readShortForm(typed)); };
    EXPECT_EQ(check(printed).verdict, CheckVerdict::sound);
    EXPECT_EQ(check(printed).sealedEntry, ledger.size());
    EXPECT_EQ(check(shortForm(ledger.at(5).seal)).sealedEntry, 5) << "what came after was added later";
    EXPECT_EQ(check(toHex(ledger.at(5).seal)).sealedEntry, 5);
    EXPECT_EQ(checkFile(path).sealedEntry, std::nullopt);
    const std::string last = std::to_string(ledger.size());
    alter(path, "DELETE FROM gap_reading WHERE sequence = " + last + "; DELETE FROM entry WHERE sequence = " + last);
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound) << "by itself it is whole";
    const CheckReport cut = check(printed);
    EXPECT_EQ(cut.verdict, CheckVerdict::damagedOrAltered);
    EXPECT_EQ(cut.sealedEntry, 0);
    EXPECT_THAT(cut.findings, testing::ElementsAre(HasSubstr("its end was removed")));
}

TEST_F(Check, reads_a_seal_as_people_type_it_and_refuses_what_is_none) {
    EXPECT_EQ(*readShortForm("3f2a-91c0-77de-0b15-a4c2"), "3f2a91c077de0b15a4c2");
    EXPECT_EQ(*readShortForm(" 3F2A 91C0 77DE 0B15 A4C2"), "3f2a91c077de0b15a4c2");
    for (const std::string wrong :
         {"", "3f2a", "3f2a-91c0-77de-0b15-a4cg", "3f2a-91c0-77de-0b15-a4c2-11", "3f2a-91c0-77de-0b15-a4c2x"}) {
        const auto read = readShortForm(wrong);
        ASSERT_FALSE(read) << wrong;
        EXPECT_THAT(read.error().sentence, HasSubstr("five groups of four digits"));
    }
}

TEST_F(Check, finds_an_entry_of_any_kind_removed_inserted_or_reordered) {
    int tried = 0;
    for (std::size_t kind = 0; kind < allKinds().size(); ++kind) {
        const std::string table(allKinds()[kind].kind);
        const std::string number = std::to_string(kind + 1);
        const std::string next = std::to_string(kind + 2);
        // Its details alone, the entry alone, both, both with what follows closed up, a row of details that no entry
        // has, a second entry with the same words, two entries that change places.
        for (const std::string& sql : {
                 "DELETE FROM " + table + " WHERE sequence = " + number,
                 "DELETE FROM entry WHERE sequence = " + number,
                 "DELETE FROM " + table + " WHERE sequence = " + number +
                     "; DELETE FROM entry WHERE sequence = " + number,
                 "UPDATE " + table + " SET sequence = 900 WHERE sequence = " + number,
                 "UPDATE " + table + " SET sequence = 900 WHERE sequence = " + number +
                     "; UPDATE entry SET sequence = 900 WHERE sequence = " + number,
                 "UPDATE entry SET sequence = -sequence WHERE sequence IN (" + number + ", " + next +
                     "); UPDATE entry SET sequence = iif(sequence = -" + number + ", " + next + ", " + number +
                     ") WHERE sequence < 0",
             }) {
            EXPECT_NE(findingAfter(sql), "sound") << sql;
            EXPECT_FALSE(RecordFile::open(path, OpenMode::readOnly)) << sql;
            ++tried;
        }
    }
    std::printf("%d alterations\n", tried);
    EXPECT_EQ(tried, 6 * static_cast<int>(allKinds().size()));
}

TEST_F(Check, finds_another_version_or_mark_in_the_header) {
    for (const std::string sql : {"PRAGMA user_version = 1", "PRAGMA user_version = 0", "PRAGMA user_version = 77",
                                  "PRAGMA application_id = 1"}) {
        write(path, sound);
        ASSERT_EQ(shell(path, sql), "");
        EXPECT_NE(finding(), "sound") << sql;
        EXPECT_FALSE(RecordFile::open(path, OpenMode::readOnly)) << sql;
    }
}

TEST_F(Check, calls_no_file_sound_that_sqlite_would_not_write_to) {
    for (const std::size_t at : {18U, 19U}) { // the file format versions (sqlite.org/fileformat2.html, section 1.3.3)
        for (const char version : {'\0', '\2', 'n'}) {
            std::string bytes = sound;
            bytes[at] = version;
            write(path, bytes);
            EXPECT_NE(finding(), "sound") << at << ": " << int{version};
            EXPECT_FALSE(RecordFile::open(path, OpenMode::readWrite)) << at << ": " << int{version};
        }
    }
}

TEST_F(Check, finds_altered_removed_and_planted_attachments) {
    EXPECT_THAT(findingAfter("UPDATE attachment SET bytes = x'79'"), HasSubstr("do not fit their hash"));
    EXPECT_THAT(findingAfter("DELETE FROM attachment"), HasSubstr("missing"));
    EXPECT_THAT(findingAfter("INSERT INTO attachment VALUES ('" + sha256Hex("y") + "', x'79')"),
                HasSubstr("No entry tells"));
    EXPECT_NE(findingAfter("UPDATE attachment SET sha256 = '" + sha256Hex("y") + "', bytes = x'79'"), "sound");
}

TEST_F(Check, finds_whatever_was_planted_in_the_schema) {
    for (const std::string sql :
         {"CREATE TRIGGER lie AFTER INSERT ON entry BEGIN SELECT 1; END", "CREATE VIEW lie AS SELECT * FROM entry",
          "CREATE TABLE lie (x)", "CREATE INDEX lie ON entry (person)", "CREATE INDEX lie ON gap_reading (abs(gap_nm))",
          "DROP TRIGGER entry_is_never_updated", "DROP VIEW history; CREATE VIEW history AS SELECT * FROM entry",
          "DROP TABLE note_added", "ALTER TABLE entry ADD COLUMN mood TEXT",
          "ALTER TABLE gap_reading RENAME COLUMN pass TO passes",
          "CREATE VIEW lie AS WITH RECURSIVE r(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM r) SELECT n FROM r",
          "CREATE TABLE lie (x CHECK (length(hex(zeroblob(100000000))) > x))",
          "CREATE TABLE lie (x, y AS (hex(zeroblob(x))))", "ANALYZE"}) {
        write(path, sound);
        ASSERT_EQ(shell(path, sql), "") << sql;
        const std::string found = finding();
        EXPECT_THAT(found, testing::ContainsRegex("no build record has|than a build record has|lacks the")) << sql;
        const auto opened = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_FALSE(opened) << sql;
        EXPECT_EQ(opened.error().sentence, found);
    }
}

TEST_F(Check, tells_what_is_no_record_apart_from_what_is_damaged) {
    write(folder / "letter", "Dear sir");
    write(folder / "empty", "");
    shell(folder / "foreign", "CREATE TABLE t (x); PRAGMA application_id = 77");
    write(folder / "magic", sound.substr(0, 50));
    std::string newer = sound;
    newer[63] = static_cast<char>(schemaVersion + 1);
    write(folder / "newer", newer);
    std::string garbled = sound;
    garbled[3] = 'x';
    write(folder / "garbled", garbled);
    std::string walMode = sound;
    walMode[18] = walMode[19] = 2;
    write(folder / "wal", walMode);
    const auto verdict = [&](const std::string& name) { return checkFile(folder / name).verdict; };
    EXPECT_EQ(verdict("letter"), CheckVerdict::notARecord);
    EXPECT_EQ(verdict("empty"), CheckVerdict::notARecord);
    EXPECT_EQ(verdict("foreign"), CheckVerdict::notARecord);
    EXPECT_EQ(verdict("newer"), CheckVerdict::notARecord);
    EXPECT_EQ(verdict("absent"), CheckVerdict::notARecord);
    EXPECT_EQ(verdict("magic"), CheckVerdict::damagedOrAltered);
    EXPECT_EQ(verdict("garbled"), CheckVerdict::damagedOrAltered);
    EXPECT_EQ(verdict("wal"), CheckVerdict::damagedOrAltered);
    const auto opened = RecordFile::open(folder / "newer", OpenMode::readWrite);
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("newer version"));
    EXPECT_EQ(read(folder / "newer"), newer);
    for (const std::string name : {"letter", "empty", "foreign", "magic", "garbled", "wal"}) {
        EXPECT_FALSE(RecordFile::open(folder / name, OpenMode::readWrite)) << name;
    }
    EXPECT_FALSE(std::filesystem::exists(folder / "wal-shm"));
}

} // namespace
} // namespace caprail
