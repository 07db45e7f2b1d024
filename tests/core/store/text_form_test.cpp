// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <chrono>
#include <fcntl.h>
#include <gmock/gmock.h>
#include <ledger/entry_json.h>
#include <store/care/check.h>
#include <store/text/csv.h>
#include <store/text/kept_photos.h>
#include <store/text/text_form.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>
#include <sys/resource.h>

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

/// The lines of a ledger as somebody types them: without numbers and seals.
std::string bareText(const Ledger& ledger) {
    std::string bare;
    for (const Entry& entry : ledger.entries()) {
        std::string line = canonicalText(entry);
        const std::string number = "\"sequence\":" + std::to_string(entry.sequence) + ",";
        line.erase(line.find(number), number.size());
        bare += line + "\r\n\n";
    }
    return bare;
}

TEST_F(TextForm, without_seals_comes_in_under_a_first_entry_that_says_so) {
    write(text, bareText(ledger));
    const auto done = importLedger(text, folder / "new.caprail", UtcTime{4'000'000'000'000});
    ASSERT_TRUE(done) << done.error().sentence;
    EXPECT_EQ(done->outside, ledger.size());
    EXPECT_EQ(done->entries, ledger.size() + 1);
    const auto file = RecordFile::open(folder / "new.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file) << file.error().sentence;
    const auto* brought = file->ledger().at(1).body.as<BroughtIn>();
    ASSERT_NE(brought, nullptr);
    EXPECT_EQ(brought->fileName, "smith.jsonl");
    EXPECT_EQ(brought->count, ledger.size());
    EXPECT_EQ(brought->date, dateOf({4'000'000'000'000}));
    for (const Entry& entry : ledger.entries()) {
        const Entry& now = file->ledger().at(entry.sequence + 1);
        EXPECT_EQ(now.time, entry.time);
        EXPECT_EQ(now.person, entry.person);
        if (const auto* strike = entry.body.as<Struck>()) {
            EXPECT_EQ(now.body.get<Struck>().entry, strike->entry + 1) << "it strikes the same entry";
        } else {
            EXPECT_EQ(cellsOf(now.body), cellsOf(entry.body));
        }
    }
    EXPECT_EQ(checkFile(folder / "new.caprail").verdict, CheckVerdict::sound);
}

TEST_F(TextForm, with_lines_added_by_hand_says_of_those_alone_that_they_came_from_outside) {
    write(text, read(text) + R"({"kind":"note_added","person":"Ann","time":"2036-05-04T09:30:00Z","text":"x"})" + "\n");
    const auto done = importLedger(text, folder / "new.caprail");
    ASSERT_TRUE(done) << done.error().sentence;
    const auto file = RecordFile::open(folder / "new.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file);
    ASSERT_EQ(file->ledger().size(), ledger.size() + 2);
    EXPECT_EQ(file->ledger().at(ledger.size()).seal, ledger.seal());
    EXPECT_EQ(file->ledger().at(ledger.size() + 1).body.get<BroughtIn>().count, 1);
}

TEST_F(TextForm, with_a_seal_behind_a_line_without_one_is_refused) {
    const std::string good =
        "{\"kind\":\"note_added\",\"person\":\"Ann\",\"time\":\"2020-05-04T09:30:00Z\",\"text\":\"x\"}\n";
    EXPECT_THAT(refusal(good + toJsonLine(ledger.at(1)) + "\n"), HasSubstr("line 2"));
}

TEST_F(TextForm, without_seals_and_with_times_out_of_order_or_in_the_future_is_refused) {
    const auto line = [](const char* time) {
        return std::string(R"({"kind":"note_added","person":"Ann","time":")") + time + R"(","text":"x"})" + "\n";
    };
    EXPECT_THAT(refusal(line("2026-05-04T09:30:00Z") + line("2026-05-04T09:29:59Z")),
                testing::AllOf(HasSubstr("line 2"), HasSubstr("is before that of the line above it")));
    write(text, line("2026-05-04T09:30:00Z"));
    const auto early = importLedger(text, folder / "new.caprail", *parseUtcTime("2026-05-04T08:00:00Z"));
    ASSERT_FALSE(early);
    EXPECT_THAT(early.error().sentence, HasSubstr("lies in the future"));
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
        HasSubstr("U+0000"));
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

TEST_F(TextForm, without_one_entry_is_refused) {
    EXPECT_THAT(refusal(""), HasSubstr("does not hold a single entry"));
    EXPECT_THAT(refusal("\n \r\n\n"), HasSubstr("does not hold a single entry"));
    EXPECT_THAT(refusal(std::string(1'000'001, '\n')), HasSubstr("empty lines"));
}

TEST_F(TextForm, through_a_pipe_that_is_filled_bit_by_bit_is_read_to_its_end) {
    const std::string pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const std::string all = read(text);
    std::filesystem::rename(attachmentsFolder(text), attachmentsFolder(pipe));
    std::thread writer([&] {
        const int out = ::open(pipe.c_str(), O_WRONLY | O_CLOEXEC);
        for (std::size_t at = 0; at < all.size();) {
            const ssize_t count = ::write(out, all.data() + at, std::min<std::size_t>(700, all.size() - at));
            ASSERT_GT(count, 0);
            at += static_cast<std::size_t>(count);
            std::this_thread::sleep_for(std::chrono::microseconds(200));
        }
        ::close(out);
    });
    const auto done = importLedger(pipe, folder / "new.caprail");
    writer.join();
    ASSERT_TRUE(done) << done.error().sentence;
    EXPECT_EQ(done->entries, ledger.size());
    EXPECT_EQ(done->attachments, 1);
    EXPECT_EQ(done->seal, ledger.seal());
    EXPECT_EQ(checkFile(folder / "new.caprail").seal, ledger.seal());
}

TEST_F(TextForm, that_was_cut_at_the_end_of_a_line_is_told_by_its_count_and_seal_or_by_the_sums_beside_it) {
    const std::string sound = read(text);
    const std::string cut = sound.substr(0, sound.rfind('\n', sound.size() - 2) + 1);
    write(text, cut);
    const auto done = importLedger(text, folder / "cut.caprail");
    ASSERT_TRUE(done);
    EXPECT_EQ(done->entries, ledger.size() - 1);
    EXPECT_NE(done->seal, ledger.seal());
    write(folder / "SHA256SUMS", sha256Hex("x") + "  other.txt\n" + sha256Hex(sound) + "  smith.jsonl\n");
    EXPECT_THAT(refusal(cut), HasSubstr("does not fit its sum"));
    write(text, sound);
    EXPECT_TRUE(importLedger(text, folder / "new.caprail"));
}

TEST_F(TextForm, whose_export_was_killed_after_its_photos_is_written_by_the_next_one) {
    const std::string sound = read(text);
    std::filesystem::remove(text); // as a kill between the two leaves it
    auto file = RecordFile::open(record, OpenMode::readOnly);
    ASSERT_TRUE(file);
    const auto again = exportLedger(*file, text);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(read(text), sound);
    std::filesystem::remove(text);
    std::filesystem::remove(attachmentsFolder(text) + "/" + sha256Hex("x")); // of an earlier state of the record
    ASSERT_TRUE(exportLedger(*file, text));
    EXPECT_EQ(read(attachmentsFolder(text) + "/" + sha256Hex("x")), "x");
    std::filesystem::remove(text);
    write(attachmentsFolder(text) + "/holiday.jpg", "someone's");
    EXPECT_THAT(exportLedger(*file, text).error().sentence, HasSubstr("other files"));
    EXPECT_EQ(read(attachmentsFolder(text) + "/holiday.jpg"), "someone's");
    EXPECT_FALSE(std::filesystem::exists(text));
}

TEST(KeptPhotos, are_each_hashed_once_however_many_of_one_size_there_are) {
    for (const bool areNamedByNumber : {true, false}) {
        const Folder folder;
        std::filesystem::create_directory(folder / "photos");
        constexpr int count = 2'000;
        std::vector<AttachmentAdded> photos;
        for (int i = 0; i < count; ++i) {
            std::string bytes(200, 'p');
            bytes.replace(0, 6, std::to_string(100'000 + i));
            AttachmentAdded photo;
            photo.sha256 = sha256Hex(bytes);
            photo.size = 200;
            photos.push_back(photo);
            write(folder / "photos" + "/" +
                      (areNamedByNumber ? std::to_string(i + 1) + "-a.jpg" : "IMG" + photo.sha256),
                  bytes);
        }
        KeptPhotos kept(folder / "ledger.jsonl");
        for (int i = 0; i < count; ++i) {
            const auto bytes = kept.bytesOf(i + 1, photos[static_cast<std::size_t>(i)]);
            ASSERT_TRUE(bytes) << bytes.error().sentence;
            EXPECT_EQ(sha256Hex(*bytes), photos[static_cast<std::size_t>(i)].sha256);
        }
        // Found by another name, a file is hashed once to be known and once more when it is taken.
        EXPECT_LE(kept.hashed(), areNamedByNumber ? count : 2 * count);
        AttachmentAdded absent;
        absent.sha256 = sha256Hex("absent");
        absent.size = 200;
        EXPECT_THAT(kept.bytesOf(7, absent).error().sentence, HasSubstr("put them there"));
        EXPECT_LE(kept.hashed(), 2 * count);
    }
}

TEST(Csv, has_one_table_per_kind_that_occurs_and_one_of_all_entries) {
    Ledger ledger;
    ledger.append(morning, "Ann", gap(1, Side::right, 575));
    ledger.append(morning, "Ann, the second", Struck{1, "slipped"});
    const auto tables = csvTablesOf(ledger);
    ASSERT_EQ(tables.size(), 3U);
    EXPECT_EQ(tables.at("gap_reading"),
              "sequence,time,person,struck_by,position,pass,gap_nm,gap_typed,instrument,does_not_go_nm,"
              "does_not_go_typed,straightedge\r\n"
              "1,2026-05-04T09:30:00.000Z,Ann,2,1R,1,1460500,575e-4,FEELER-1,,,\r\n");
    EXPECT_EQ(tables.at("entries"), "sequence,time,person,struck_by,kind,seal\r\n"
                                    "1,2026-05-04T09:30:00.000Z,Ann,2,gap_reading," +
                                        toHex(ledger.at(1).seal) +
                                        "\r\n2,2026-05-04T09:30:00.000Z,\"Ann, the second\",,struck," +
                                        toHex(ledger.at(2).seal) + "\r\n");
}

TEST_F(TextForm, with_a_name_that_hides_something_is_refused) {
    Ledger hidden;
    hidden.append(morning, "Ann", PersonAdded{"Eve\u202e", ""});
    std::string line = toJsonLine(hidden.at(1)) + "\n";
    EXPECT_THAT(refusal(line), HasSubstr("U+202E"));
    hidden = {};
    hidden.append(morning, "Ann", NoteAdded{"3R\n43  2026-05-04  Ann  Signed off", "x"});
    EXPECT_THAT(refusal(toJsonLine(hidden.at(1)) + "\n"), HasSubstr("“place”"));
}

TEST_F(TextForm, with_a_member_given_twice_is_refused) {
    EXPECT_THAT(
        refusal(R"({"kind":"note_added","person":"Ann","text":"held","text":"moved","time":"2026-05-04T09:30:00Z"})"),
        HasSubstr("given twice"));
}

TEST_F(TextForm, of_many_lines_takes_no_new_memory_for_each_of_them) {
    std::string lines;
    constexpr int count = 4000;
    for (int i = 0; i < count; ++i) {
        lines += "{\"kind\":\"note_added\",\"person\":\"Ann\",\"time\":\"2026-05-04T09:30:00Z\",\"text\":\"n\"}\n";
    }
    write(text, lines);
    rusage before{};
    rusage after{};
    ::getrusage(RUSAGE_SELF, &before);
    const auto done = importLedger(text, folder / "many.caprail");
    ::getrusage(RUSAGE_SELF, &after);
    ASSERT_TRUE(done) << (done ? "" : done.error().sentence);
    EXPECT_LT(after.ru_minflt - before.ru_minflt, count / 2) << "pages of memory that were not there before";
}

} // namespace
} // namespace caprail
