// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <ledger/remarks.h>
#include <shop/record_reader.h>
#include <shop/shop_scan.h>
#include <sqlite3.h>
#include <sys/stat.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::HasSubstr;

TEST(RecordReader, says_at_a_glance_whose_engine_it_is_and_who_was_last_at_it) {
    const Folder folder;
    write(folder / "a.caprail", shortLedger("Orrin Vale", "6.2 V8"));
    const FileFinding finding = readSummary(folder / "a.caprail");
    ASSERT_EQ(finding.reading, FileReading::summarised) << finding.sentence;
    EXPECT_EQ(finding.digest.summary.customer, "Orrin Vale");
    EXPECT_EQ(finding.digest.summary.engine, "6.2 V8");
    EXPECT_EQ(finding.digest.summary.who, "Mira Solheim");
    EXPECT_EQ(finding.digest.summary.entries, 18);
    EXPECT_EQ(format(finding.digest.summary.lastEntry), "2026-05-04T09:30:17.000Z");
}

TEST(RecordReader, tells_state_round_and_counts_from_the_whole_ledger) {
    const Folder folder;
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    maker.readyToClose();
    write(folder / "ready.caprail", maker.ledger);
    const FileFinding ready = readWhole(folder / "ready.caprail");
    ASSERT_EQ(ready.reading, FileReading::assessed) << ready.sentence;
    EXPECT_EQ(ready.digest.summary.state, JobState::closingOpen);
    EXPECT_EQ(ready.digest.summary.roundResult, RoundResult::held);
    EXPECT_EQ(ready.digest.summary.round, 1);
    EXPECT_EQ(ready.digest.summary.pulled, 10);
    EXPECT_EQ(ready.digest.summary.templateName, "Three mains");
    EXPECT_EQ(ready.digest.summary.layout, "3 mains of 2, 2 rods, 2 throws");
    EXPECT_EQ(ready.digest.summary.due, Date{20'600}) << "the micrometer falls due before the wrench's year is over";

    maker.round({"main-2R"});
    write(folder / "moved.caprail", maker.ledger);
    const RecordSummary moved = readWhole(folder / "moved.caprail").digest.summary;
    EXPECT_EQ(moved.state, JobState::locked);
    EXPECT_EQ(moved.roundResult, RoundResult::moved);
    EXPECT_EQ(moved.moved, 1);
    EXPECT_GT(moved.stale, 0);
    // The same as the assessment itself says.
    EXPECT_EQ(moved.stale, std::ranges::count(maker.assessment.checks, CheckState::stale, &Check::state));
    EXPECT_EQ(moved.out, std::ranges::count(maker.assessment.checks, CheckState::out, &Check::state));
}

TEST(RecordReader, leaves_bytes_times_and_folder_as_they_were) {
    const Folder folder;
    write(folder / "a.caprail", shortLedger("Orrin Vale", "V8"));
    write(folder / "old.caprail", shortLedger("Ines Roth", "V8"));
    std::ofstream(folder / "letter.caprail") << "Dear sir, the crank is ready.";
    const std::filesystem::perms readOnly = std::filesystem::perms::owner_read;
    std::filesystem::permissions(folder / "old.caprail", readOnly);
    const auto before = traceOf(folder.path());
    for (const char* name : {"a.caprail", "old.caprail", "letter.caprail", "none.caprail"}) {
        (void)readSummary(folder / name);
        (void)readWhole(folder / name);
    }
    EXPECT_EQ(traceOf(folder.path()), before);
}

TEST(RecordReader, does_not_drop_the_lock_of_a_window_that_has_the_record_open) {
    const Folder folder;
    write(folder / "a.caprail", shortLedger("Orrin Vale", "V8"));
    auto open = RecordFile::open(folder / "a.caprail", OpenMode::readWrite);
    ASSERT_TRUE(open);
    ASSERT_FALSE(open->isReadOnly());
    EXPECT_EQ(readWhole(folder / "a.caprail").reading, FileReading::assessed);
    ASSERT_TRUE(open->append(morning, "Mira Solheim", NoteAdded{"", "seen"}));
    EXPECT_EQ(readSummary(folder / "a.caprail").digest.summary.entries, 19);
}

TEST(RecordReader, calls_a_file_in_the_middle_of_a_write_by_that_name_and_does_not_take_the_write_back) {
    const Folder folder;
    const std::string path = folder / "a.caprail";
    write(path, shortLedger("Orrin Vale", "V8"));
    std::ofstream(path + "-journal") << std::string(512, 'x');
    const auto before = traceOf(folder.path());
    const FileFinding finding = readWhole(path);
    EXPECT_EQ(finding.reading, FileReading::beingWritten);
    EXPECT_THAT(finding.sentence, HasSubstr("is being written, or a write was cut off"));
    EXPECT_EQ(traceOf(folder.path()), before);
}

TEST(RecordReader, waits_for_no_pipe_under_a_journal_s_name_and_plays_back_none_that_names_another_file) {
    const Folder folder;
    const std::string path = folder / "a.caprail";
    write(path, shortLedger("Orrin Vale", "V8"));
    ASSERT_EQ(::mkfifo((path + "-journal").c_str(), 0600), 0);
    for (const auto look : {&readSummary, &readWhole}) {
        const FileFinding finding = look(path);
        EXPECT_EQ(finding.reading, FileReading::unreadable);
        EXPECT_THAT(finding.sentence, HasSubstr("not a plain file"));
    }
    std::filesystem::remove(path + "-journal");
    std::ofstream(path + "-journal") << std::string(512, 'x') << "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7";
    EXPECT_THAT(readSummary(path).sentence, HasSubstr("names another file"));
}

TEST(RecordReader, believes_no_file_that_calls_pages_free_which_are_not) {
    const Folder folder;
    const std::string path = folder / "a.caprail";
    write(path, shortLedger("Orrin Vale", "V8"));
    {
        std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
        file.seekp(32);
        file.write("\0\0\0\7\0\0\0\1", 8);
    }
    const FileFinding finding = readWhole(path);
    EXPECT_EQ(finding.reading, FileReading::damaged);
    EXPECT_THAT(finding.sentence, HasSubstr("of its pages free"));
}

TEST(RecordReader, tells_foreign_newer_damaged_and_unreachable_files_apart_each_with_a_sentence) {
    const Folder folder;
    const auto expect = [&](const char* name, FileReading reading, const char* words) {
        for (const auto look : {&readSummary, &readWhole}) {
            const FileFinding finding = look(folder / name);
            EXPECT_EQ(word(finding.reading), word(reading)) << name << ": " << finding.sentence;
            EXPECT_THAT(finding.sentence, HasSubstr(words)) << name;
        }
    };
    std::ofstream(folder / "letter.caprail") << "Dear sir, the crank is ready. " << std::string(200, '.');
    expect("letter.caprail", FileReading::foreign, "not a build record");
    std::ofstream(folder / "empty.caprail").flush();
    expect("empty.caprail", FileReading::foreign, "is empty");
    expect("none.caprail", FileReading::unreadable, "is gone");

    write(folder / "newer.caprail", shortLedger("a", "b"));
    {
        std::fstream file(folder / "newer.caprail", std::ios::in | std::ios::out | std::ios::binary);
        file.seekp(63);
        file.put(static_cast<char>(99));
    }
    expect("newer.caprail", FileReading::newer, "newer version");

    write(folder / "torn.caprail", shortLedger("a", "b"));
    std::filesystem::resize_file(folder / "torn.caprail", 3000);
    expect("torn.caprail", FileReading::damaged, "damaged");

    const std::string deep = std::string(250, 'd') + "/" + std::string(250, 'e');
    write(folder / "b.caprail", shortLedger("a", "b"));
    std::filesystem::create_directories(folder / deep);
    std::filesystem::copy_file(folder / "b.caprail", folder / (deep + "/b.caprail"));
    expect((deep + "/b.caprail").c_str(), FileReading::unreadable, "path too long");
}

TEST(RecordReader, believes_no_altered_entry) {
    const Folder folder;
    const std::string path = folder / "a.caprail";
    write(path, shortLedger("Orrin Vale", "V8"));
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &db), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(db,
                           "CREATE TEMP TABLE keep AS SELECT sql FROM sqlite_schema WHERE name = "
                           "'engine_described_is_never_updated'; DROP TRIGGER engine_described_is_never_updated;"
                           "UPDATE engine_described SET customer = 'Someone else'",
                           nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(db);
    EXPECT_EQ(readWhole(path).reading, FileReading::damaged);
    EXPECT_TRUE(readWhole(path).digest.summary.customer.empty());
}

TEST(RecordReader, calls_a_last_entry_after_now_future_only_when_the_clocks_must_differ) {
    EXPECT_FALSE(isInFuture(morning, morning));
    EXPECT_FALSE(isInFuture({morning.milliseconds + 9 * 60'000}, morning));
    EXPECT_TRUE(isInFuture({morning.milliseconds + 11 * 60'000}, morning));
}

/// The same of both: what a fresh connection finds, and what one finds that read other files before.
void expectAsFresh(RecordReader& reader, const std::string& path) {
    for (const bool isWhole : {false, true}) {
        const FileFinding led = isWhole ? reader.readWhole(path) : reader.readSummary(path);
        const FileFinding fresh = isWhole ? readWhole(path) : readSummary(path);
        EXPECT_EQ(led.reading, fresh.reading) << path << ": " << led.sentence;
        EXPECT_EQ(led.sentence, fresh.sentence);
        EXPECT_EQ(led.digest.summary, fresh.digest.summary) << path;
        EXPECT_EQ(led.digest.words, fresh.digest.words);
    }
}

TEST(RecordReader, led_from_file_to_file_finds_in_each_what_a_fresh_one_finds) {
    const Folder folder;
    std::vector<std::string> paths;
    for (const char* customer : {"Orrin Vale", "Ines Roth", "Jon Abel"}) {
        paths.push_back(folder / (std::string(customer) + ".caprail"));
        write(paths.back(), shortLedger(customer, "V8")); // as many entries each: the headers count the same
    }
    Maker maker;
    maker.begin("Petra Lund", "V6");
    maker.readyToClose();
    paths.push_back(folder / "ready.caprail");
    write(paths.back(), maker.ledger);
    paths.push_back(folder / "letter.caprail");
    std::ofstream(paths.back()) << "Dear sir, the crank is ready.";
    paths.push_back(folder / "none.caprail");
    paths.push_back(folder / "cut.caprail");
    std::filesystem::copy_file(paths[0], paths.back());
    std::filesystem::resize_file(paths.back(), 3 * 4096);
    paths.push_back(folder / "journal.caprail");
    std::filesystem::copy_file(paths[1], paths.back());
    std::ofstream(paths.back() + "-journal") << std::string(600, 'j');
    RecordReader reader;
    for (int turn = 0; turn < 2; ++turn) {
        for (const std::string& path : paths) {
            expectAsFresh(reader, path);
            expectAsFresh(reader, paths[static_cast<std::size_t>(turn)]);
        }
    }
    EXPECT_EQ(reader.readSummary(paths[0]).digest.summary.customer, "Orrin Vale");
    EXPECT_EQ(reader.readSummary(paths[1]).digest.summary.customer, "Ines Roth");
}

/// Writes to the file's schema behind its back, and sets its schema counter back, so that only its rows tell.
void alterSchema(const std::string& path, const std::string& sql) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &db), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(db, ("PRAGMA writable_schema = ON; " + sql).c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
        << sqlite3_errmsg(db);
    sqlite3_close(db);
}

TEST(RecordReader, led_to_a_file_whose_tables_lie_on_other_pages_does_not_read_them_as_those_before) {
    const Folder folder;
    write(folder / "a.caprail", shortLedger("Orrin Vale", "V8"));
    write(folder / "b.caprail", shortLedger("Ines Roth", "V8"));
    // Two tables change places, and everything that the header counts stays as it was.
    alterSchema(folder / "b.caprail",
                "UPDATE sqlite_schema SET rootpage = (SELECT sum(rootpage) FROM sqlite_schema WHERE type = 'table' AND "
                "name IN ('note_added', 'engine_described')) - rootpage WHERE type = 'table' AND name IN "
                "('note_added', 'engine_described')");
    write(folder / "c.caprail", shortLedger("Jon Abel", "V8"));
    alterSchema(folder / "c.caprail",
                "UPDATE sqlite_schema SET sql = replace(sql, 'never', 'often') WHERE name = 'entry_is_never_updated'");
    RecordReader reader;
    for (const char* name : {"a.caprail", "b.caprail", "a.caprail", "c.caprail", "a.caprail"}) {
        expectAsFresh(reader, folder / name);
    }
    EXPECT_EQ(reader.readWhole(folder / "a.caprail").reading, FileReading::assessed);
    EXPECT_EQ(reader.readWhole(folder / "c.caprail").reading, FileReading::damaged);
}

} // namespace
} // namespace caprail
