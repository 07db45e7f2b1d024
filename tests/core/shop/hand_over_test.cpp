// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <shop/hand_over.h>
#include <store/care/check.h>
#include <store/text/text_form.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::ElementsAre;
using testing::HasSubstr;

class HandOver : public testing::Test {
protected:
    HandOver() {
        write(folder / "a.caprail", shortLedger("Orrin Vale", "V8"));
        auto file = RecordFile::open(folder / "a.caprail", OpenMode::readWrite);
        for (const char* name : {"../../main 3.jpg", "main 3.jpg", "", "a\\b.png"}) {
            AttachmentAdded photo;
            photo.fileName = name[0] == '\0' ? "." : name;
            photo.sha256 = sha256Hex("picture of " + std::string(name));
            photo.size = static_cast<std::int64_t>(("picture of " + std::string(name)).size());
            EXPECT_TRUE(file->appendWithAttachment(morning, "Mira Solheim", photo, "picture of " + std::string(name)));
        }
        EXPECT_TRUE(file->append(morning, "Mira Solheim", NoteAdded{"", "two\nlines"}));
        EXPECT_TRUE(file->append(morning, "Mira Solheim", Struck{12, "typed into the wrong record"}));
    }
    Result<void> handOverTo(const std::string& path, bool withTables = false) const {
        auto file = RecordFile::open(folder / "a.caprail", OpenMode::readOnly);
        HandOverOptions options;
        options.withTables = withTables;
        options.writeSheet = [](const std::string& pdf) -> Result<void> {
            std::ofstream(pdf) << "%PDF-1.4 stands in for the sheet";
            return {};
        };
        return handOver(*file, path, options);
    }
    Folder folder;
};

TEST_F(HandOver, is_a_folder_that_sha256sum_accepts) {
    const std::string out = folder / "out for Mr. Vale";
    const auto done = handOverTo(out, true);
    ASSERT_TRUE(done) << done.error().sentence;
    EXPECT_EQ(std::system(("cd '" + out + "' && sha256sum --strict --quiet -c SHA256SUMS").c_str()), 0);
    std::ofstream(out + "/history.txt", std::ios::app) << "x";
    EXPECT_NE(std::system(("cd '" + out + "' && sha256sum --status -c SHA256SUMS").c_str()), 0);
}

TEST_F(HandOver, holds_sheet_photos_and_the_ledger_for_people_and_programs) {
    const std::string out = folder / "out";
    ASSERT_TRUE(handOverTo(out));
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(out)) {
        names.insert(entry.path().lexically_relative(out).string());
    }
    EXPECT_THAT(names,
                ElementsAre("README.txt", "SHA256SUMS", "build-sheet.pdf", "history.txt", "ledger.jsonl", "photos",
                            "photos/19-main 3.jpg", "photos/20-main 3.jpg", "photos/21-photo", "photos/22-a-b.png"));
    EXPECT_EQ(bytesOf(out + "/photos/20-main 3.jpg"), "picture of main 3.jpg");
    const std::string history = bytesOf(out + "/history.txt");
    EXPECT_THAT(history, HasSubstr("12  2026-05-04T09:30:11.000Z  Mira Solheim  [struck by entry 24]"));
    EXPECT_THAT(history, HasSubstr("two↵lines"));
    EXPECT_EQ(std::ranges::count(history, '\n'), 24 + 2);
    EXPECT_EQ(std::ranges::count(bytesOf(out + "/ledger.jsonl"), '\n'), 24);
}

TEST_F(HandOver, is_read_back_as_the_record_that_it_was_made_from) {
    const std::string out = folder / "out";
    ASSERT_TRUE(handOverTo(out));
    const auto done = importLedger(out + "/ledger.jsonl", folder / "again.caprail");
    ASSERT_TRUE(done) << done.error().sentence;
    const CheckReport report = checkFile(folder / "again.caprail");
    EXPECT_EQ(report.verdict, CheckVerdict::sound);
    EXPECT_EQ(report.attachments, 4);
    EXPECT_EQ(RecordFile::open(folder / "again.caprail", OpenMode::readOnly)->ledger().seal(),
              RecordFile::open(folder / "a.caprail", OpenMode::readOnly)->ledger().seal());
    std::ofstream(out + "/photos/20-main 3.jpg") << "retouched";
    EXPECT_THAT(importLedger(out + "/ledger.jsonl", folder / "third.caprail").error().sentence,
                HasSubstr("ledger.jsonl”, line 20: The bytes of its attachment are neither"));
}

TEST_F(HandOver, appears_whole_or_not_at_all) {
    const std::string out = folder / "out";
    std::filesystem::create_directories(out);
    EXPECT_TRUE(handOverTo(out + "/")) << "an empty folder is as good as none";
    EXPECT_THAT(handOverTo(out).error().sentence, HasSubstr("not empty"));
    auto file = RecordFile::open(folder / "a.caprail", OpenMode::readOnly);
    HandOverOptions failing;
    failing.writeSheet = [](const std::string&) -> Result<void> { return refuse("no paper"); };
    EXPECT_EQ(handOver(*file, folder / "other", failing).error().sentence, "no paper");
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        EXPECT_THAT(entry.path().filename().string(), testing::AnyOf("a.caprail", "out"));
    }
}

} // namespace
} // namespace caprail
