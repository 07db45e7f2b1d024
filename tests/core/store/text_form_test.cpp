// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <gmock/gmock.h>
#include <ledger/entry_json.h>
#include <store/check.h>
#include <store/csv.h>
#include <store/text_form.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

class TextForm : public testing::Test {
protected:
    void SetUp() override {
        ledger = makeFullRecord(record);
        auto file = RecordFile::open(record, OpenMode::readOnly);
        ASSERT_TRUE(file) << file.error().sentence;
        const auto done = exportLedger(*file, text);
        ASSERT_TRUE(done) << done.error().sentence;
    }
    /// Imports a changed text: nothing may be left; gives the sentence.
    std::string refusal(const std::string& changed) {
        write(text, changed);
        const auto files = folder.count();
        const auto done = importLedger(text, folder / "new.caprail");
        EXPECT_FALSE(done);
        EXPECT_EQ(folder.count(), files);
        return done ? "" : done.error().sentence;
    }
    Folder folder;
    std::string record = folder / "smith.caprail";
    std::string text = folder / "smith.jsonl";
    Ledger ledger;
};

TEST_F(TextForm, read_back_gives_equal_seals_and_a_sound_record) {
    const auto done = importLedger(text, folder / "new.caprail");
    ASSERT_TRUE(done) << done.error().sentence;
    const auto file = RecordFile::open(folder / "new.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_EQ(file->ledger().entries(), ledger.entries());
    EXPECT_EQ(file->attachmentBytes(sha256Hex("x")).value_or(""), "x");
    EXPECT_EQ(checkFile(folder / "new.caprail").verdict, CheckVerdict::sound);
    ASSERT_TRUE(exportLedger(*file, folder / "again.jsonl"));
    EXPECT_EQ(read(folder / "again.jsonl"), read(text));
}

TEST_F(TextForm, is_refused_where_what_was_typed_is_not_what_is_stored) {
    write(text, R"({"kind":"gap_reading","person":"Ann","time":"2026-05-04T09:30:00Z","position":"1L","pass":1,)"
                R"("gap_nm":1173480,"gap_typed":"99.9 thou","instrument":""})"
                "\n");
    const auto done = importLedger(text, folder / "new.caprail");
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error().sentence, testing::HasSubstr("line 1: “gap” was typed as “99.9 thou”, but 0.04620 in"));
}

TEST_F(TextForm, without_seals_and_numbers_is_numbered_and_sealed_the_same) {
    std::string bare;
    for (const Entry& entry : ledger.entries()) {
        std::string line = canonicalText(entry);
        const std::string number = "\"sequence\":" + std::to_string(entry.sequence) + ",";
        line.erase(line.find(number), number.size());
        bare += line + "\r\n\n";
    }
    write(text, bare);
    const auto done = importLedger(text, folder / "new.caprail");
    ASSERT_TRUE(done) << done.error().sentence;
    EXPECT_EQ(checkFile(folder / "new.caprail").seal, ledger.seal());
}

TEST_F(TextForm, that_was_altered_is_refused_with_its_line) {
    const std::string sound = read(text);
    std::string altered = sound;
    altered.replace(altered.find("\"person\":\"Ann\""), 14, "\"person\":\"Eve\"");
    EXPECT_THAT(refusal(altered), testing::AllOf(HasSubstr("line 1"), HasSubstr("seal does not fit")));
    const std::size_t second = sound.find('\n') + 1;
    const std::size_t third = sound.find('\n', second) + 1;
    EXPECT_THAT(refusal(sound.substr(second)), testing::AllOf(HasSubstr("line 1"), HasSubstr("number 2")));
    EXPECT_THAT(refusal(sound.substr(0, second) + sound.substr(third)), HasSubstr("line 2"));
    EXPECT_THAT(refusal(sound.substr(0, sound.size() - 20)), HasSubstr("line " + std::to_string(ledger.size())));
}

TEST_F(TextForm, that_cannot_be_read_is_refused_with_its_line) {
    const std::string good =
        "{\"kind\":\"note_added\",\"person\":\"Ann\",\"time\":\"2026-05-04T09:30:00Z\",\"text\":\"x\"}\n";
    EXPECT_THAT(refusal(good + "nonsense"), HasSubstr("line 2"));
    EXPECT_THAT(refusal(good + "{\"kind\":\"note_added\",\"person\":\"Ann\"}"), HasSubstr("“time”"));
    EXPECT_THAT(refusal("{\"kind\":\"note_added\",\"time\":\"2026-05-04T09:30:00Z\"}"), HasSubstr("“person”"));
    EXPECT_THAT(refusal(std::string(9'000'000, ' ') + good), HasSubstr("too long"));
    EXPECT_THAT(refusal(std::string(100'000, '[')), HasSubstr("line 1"));
    EXPECT_THAT(
        refusal("{\"kind\":\"note_added\",\"person\":\"A\",\"time\":\"2026-05-04T09:30:00Z\",\"text\":\"\\u0000\"}"),
        HasSubstr("UTF-8"));
}

TEST_F(TextForm, without_the_bytes_of_an_attachment_is_refused) {
    const std::string file = attachmentsFolder(text) + "/" + sha256Hex("x");
    ASSERT_EQ(read(file), "x");
    write(file, "y");
    EXPECT_THAT(refusal(read(text)), HasSubstr("do not fit"));
    std::filesystem::remove(file);
    EXPECT_THAT(refusal(read(text)), HasSubstr("put them there"));
}

TEST_F(TextForm, never_overwrites) {
    const std::string before = read(record);
    EXPECT_FALSE(importLedger(text, record));
    EXPECT_EQ(read(record), before);
    const auto file = RecordFile::open(record, OpenMode::readOnly);
    ASSERT_TRUE(file);
    EXPECT_FALSE(exportLedger(*file, text));
    EXPECT_FALSE(exportLedger(ledger, record));
    EXPECT_EQ(read(record), before);
    EXPECT_FALSE(importLedger(folder / "absent.jsonl", folder / "new.caprail"));
}

TEST(Csv, quotes_as_rfc_4180_asks) {
    // RFC 4180, section 2, rules 5 to 7 (from memory): "b CRLF bb" and "b""bb" are its own examples.
    EXPECT_EQ(csvField("aaa"), "aaa");
    EXPECT_EQ(csvField("b\r\nbb"), "\"b\r\nbb\"");
    EXPECT_EQ(csvField("b\"bb"), "\"b\"\"bb\"");
    EXPECT_EQ(csvField("1,5"), "\"1,5\"");
    EXPECT_EQ(csvField(""), "");
}

TEST(Csv, writes_one_table_per_kind_that_occurs_and_never_overwrites) {
    const Folder folder;
    Ledger ledger;
    ledger.append(morning, "Ann", gap(1, Side::right, 575));
    ledger.append(morning, "Ann, the second", Struck{1, "slipped"});
    const auto done = exportCsv(ledger, folder / "csv");
    ASSERT_TRUE(done) << done.error().sentence;
    EXPECT_EQ(read(folder / "csv/gap_reading.csv"),
              "sequence,time,person,struck_by,position,pass,gap_nm,gap_typed,instrument,does_not_go_nm,"
              "does_not_go_typed,straightedge\r\n"
              "1,2026-05-04T09:30:00.000Z,Ann,2,1R,1,1460500,575e-4,FEELER-1,,,\r\n");
    EXPECT_EQ(read(folder / "csv/entries.csv"), "sequence,time,person,struck_by,kind,seal\r\n"
                                                "1,2026-05-04T09:30:00.000Z,Ann,2,gap_reading," +
                                                    toHex(ledger.at(1).seal) +
                                                    "\r\n2,2026-05-04T09:30:00.000Z,\"Ann, the second\",,struck," +
                                                    toHex(ledger.at(2).seal) + "\r\n");
    EXPECT_FALSE(std::filesystem::exists(folder / "csv/note_added.csv"));
    EXPECT_FALSE(exportCsv(ledger, folder / "csv"));
}

} // namespace
} // namespace caprail
