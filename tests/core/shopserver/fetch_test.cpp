// SPDX-License-Identifier: GPL-3.0-or-later
#include "publishing.h"

#include <ledger/entry_json.h>

namespace {

using namespace caprail;
using testing::HasSubstr;

class Fetching : public servertest::Publishing {
protected:
    void SetUp() override {
        servertest::Publishing::SetUp();
        if (IsSkipped()) {
            return;
        }
        path = recordWithPhotos("vale.caprail");
        Connection bench = as("bench_1");
        published(bench, path);
        identity = toHex(sealOf(path, 1));
    }
    /// Alters what the server holds, as somebody who owns the machine could.
    void alter(const std::string& sql) {
        Connection owner = as("postgres");
        done(owner.run("SET session_replication_role = replica")); // no trigger hinders
        done(owner.run(sql));
    }
    /// What a refusal to fetch says; and that it left nothing.
    std::string refusal() {
        Connection reader = as("reader_1");
        const auto fetched = fetchRecord(reader, identity, folder / "back.caprail");
        EXPECT_FALSE(fetched);
        EXPECT_FALSE(std::filesystem::exists(folder / "back.caprail"));
        const auto verified = verifyHeld(reader, identity);
        EXPECT_FALSE(verified) << "who only verifies finds it too";
        return fetched ? std::string() : fetched.error().sentence;
    }
    static std::string textOf(const std::string& record) {
        const auto file = RecordFile::open(record, OpenMode::readOnly);
        EXPECT_TRUE(file);
        std::string text;
        for (const Entry& entry : file->ledger().entries()) {
            text += toJsonLine(entry) + "\n";
            if (const auto* photo = entry.body.as<AttachmentAdded>()) {
                text += file->attachmentBytes(photo->sha256).value_or("missing");
            }
        }
        return text;
    }
    std::string path, identity;
};

TEST_F(Fetching, makes_the_record_again_with_the_same_ledger_seals_and_photos) {
    Connection reader = as("reader_1");
    const auto fetched = fetchRecord(reader, identity, folder / "back.caprail");
    ASSERT_TRUE(fetched) << fetched.error().sentence;
    EXPECT_EQ(fetched->entries, sizeOf(path));
    EXPECT_EQ(fetched->photos, 2);
    EXPECT_EQ(fetched->seal, sealOf(path));
    EXPECT_EQ(textOf(folder / "back.caprail"), textOf(path));
    const auto verified = verifyHeld(reader, identity);
    ASSERT_TRUE(verified) << verified.error().sentence;
    EXPECT_EQ(verified->photos, 2);
}

TEST_F(Fetching, never_writes_over_a_file) {
    const std::string before = shoptest::bytesOf(path);
    Connection reader = as("reader_1");
    const auto fetched = fetchRecord(reader, identity, path);
    ASSERT_FALSE(fetched);
    EXPECT_THAT(fetched.error().sentence, HasSubstr("exists already"));
    EXPECT_EQ(shoptest::bytesOf(path), before);
}

TEST_F(Fetching, refuses_an_entry_that_was_altered_on_the_server) {
    alter("UPDATE entry SET line = replace(line, 'long shelf', 'short shelf')");
    EXPECT_THAT(refusal(), HasSubstr("does not verify, and no file was made"));
}

TEST_F(Fetching, refuses_a_record_whose_last_entries_were_removed_on_the_server) {
    alter("DELETE FROM entry WHERE number = " + std::to_string(sizeOf(path)));
    EXPECT_THAT(refusal(), HasSubstr("rows were removed or altered there"));
}

TEST_F(Fetching, refuses_a_record_of_which_an_entry_in_the_middle_was_removed) {
    alter("DELETE FROM entry WHERE number = 4");
    EXPECT_THAT(refusal(), HasSubstr("has entry 5 of this record where entry 4 must be"));
}

TEST_F(Fetching, refuses_a_photo_whose_bytes_were_altered_on_the_server) {
    alter("UPDATE attachment_piece SET bytes = 'large picture' WHERE bytes = 'small picture'");
    EXPECT_THAT(refusal(), HasSubstr("do not fit"));
}

TEST_F(Fetching, names_a_photo_whose_bytes_were_removed_on_the_server) {
    for (const char* damage :
         {"DELETE FROM attachment_piece WHERE bytes = 'small picture'",
          "DELETE FROM record_attachment WHERE sha256 = sha256('small picture')", "DELETE FROM record_attachment"}) {
        alter(damage);
        EXPECT_THAT(refusal(), HasSubstr("lacks the bytes of the photo or file “cap.jpg” of entry ")) << damage;
    }
}

TEST_F(Fetching, refuses_a_photo_of_which_a_piece_was_removed_or_added_on_the_server) {
    alter("DELETE FROM attachment_piece WHERE piece = 1");
    EXPECT_THAT(refusal(), HasSubstr("do not fit their hash"));
    alter("INSERT INTO attachment_piece SELECT sha256('small picture'), n, repeat('x', 1000000)::bytea FROM "
          "generate_series(1, 3) AS n");
    EXPECT_THAT(refusal(), HasSubstr("do not fit their hash"));
}

TEST_F(Fetching, takes_no_photo_that_no_entry_names) {
    alter("INSERT INTO attachment VALUES (sha256('more'), 4)");
    alter("INSERT INTO attachment_piece VALUES (sha256('more'), 0, 'more')");
    alter("INSERT INTO record_attachment SELECT id, sha256('more') FROM record");
    Connection reader = as("reader_1");
    const auto fetched = fetchRecord(reader, identity, folder / "back.caprail");
    ASSERT_TRUE(fetched) << fetched.error().sentence;
    EXPECT_EQ(fetched->photos, 2);
}

TEST_F(Fetching, refuses_lines_in_a_line) {
    // As a server that lies could: with a seal that fits. What stands before the line feed would come in without one.
    alter("UPDATE entry SET line = replace(line, '}', E'}\n}')");
    EXPECT_THAT(refusal(), HasSubstr("rows were removed or altered there"));
}

TEST_F(Fetching, finds_a_record_by_any_seal_of_a_sheet_and_by_the_serial_number) {
    Connection reader = as("reader_1");
    for (const std::string& meant : {identity, toHex(sealOf(path)), shortForm(sealOf(path)), shortForm(sealOf(path, 3)),
                                     std::string("KL-1"), std::string("kl-1")}) {
        const auto found = recordMeantBy(reader, meant);
        ASSERT_TRUE(found) << meant << ": " << found.error().sentence;
        EXPECT_EQ(found->identity, identity) << meant;
    }
    const auto none = recordMeantBy(reader, "KL-2");
    ASSERT_FALSE(none);
    EXPECT_THAT(none.error().sentence, HasSubstr("holds no record with the seal or serial number “KL-2”"));
}

TEST_F(Fetching, asks_which_one_when_several_engines_have_the_serial_number) {
    shoptest::Maker other("Tomas Reed");
    other.begin("Ada Quell", "3.0 six");
    shoptest::write(folder / "quell.caprail", other.ledger);
    Connection bench = as("bench_1");
    published(bench, folder / "quell.caprail");
    Connection reader = as("reader_1");
    const auto several = recordMeantBy(reader, "KL-1");
    ASSERT_FALSE(several);
    EXPECT_THAT(several.error().sentence, HasSubstr("Orrin Vale, 6.2 V8, serial KL-1 (first seal "));
    EXPECT_THAT(several.error().sentence, HasSubstr("; Ada Quell, 3.0 six"));
}

} // namespace
