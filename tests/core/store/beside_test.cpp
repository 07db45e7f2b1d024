// SPDX-License-Identifier: GPL-3.0-or-later
/// What lies beside a record under the names that SQLite would take for its own: looked at first, and believed only
/// when it is the record's.
#include "alter.h"

#include <functional>
#include <gmock/gmock.h>
#include <store/file/beside.h>
#include <store/care/check.h>
#include <store/care/copies.h>
#include <store/care/salvage.h>
#include <store/care/upgrade.h>
#include <store/file/writer_lock.h>
#include <sys/stat.h>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

const std::string journalMagic("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8);

/// The end of a journal of a write over several files (sqlite.org/fileformat2.html, section 3, from memory).
std::string naming(const std::string& file) {
    const auto four = [](std::uint32_t value) {
        std::string bytes;
        for (int shift = 24; shift >= 0; shift -= 8) {
            bytes += static_cast<char>(value >> shift);
        }
        return bytes;
    };
    std::uint32_t sum = 0;
    for (const char c : file) {
        sum += static_cast<std::uint32_t>(static_cast<signed char>(c));
    }
    return four(0x40000000 / 4096 + 1) + file + four(static_cast<std::uint32_t>(file.size())) + four(sum) +
           journalMagic;
}

/// A record in the middle of a write, and its journal.
struct Pair {
    std::string record, journal;
};

/// `reached`: the first pages are in their place; else the journal is on the disk, and the record is as it was.
Pair cutOffWrite(const std::string& path, bool reached) {
    const std::string before = read(path);
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open_v2(path.c_str(), &db, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db,
                           "BEGIN IMMEDIATE; INSERT INTO entry SELECT sequence + 1, time, person, kind, seal FROM "
                           "entry ORDER BY sequence DESC LIMIT 1; INSERT INTO attachment VALUES "
                           "(lower(hex(zeroblob(32))), zeroblob(20000))",
                           nullptr, nullptr, nullptr),
              SQLITE_OK);
    EXPECT_EQ(sqlite3_db_cacheflush(db), SQLITE_OK);
    Pair pair{reached ? read(path) : before, read(path + "-journal")};
    sqlite3_exec(db, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(db);
    return pair;
}

class Beside : public testing::Test {
protected:
    void SetUp() override { makeRecord(path, 5); }
    void put(const Pair& pair) const {
        write(path, pair.record);
        write(path + "-journal", pair.journal);
    }
    [[nodiscard]] bool isUntouched(const Pair& pair) const {
        return read(path) == pair.record && read(path + "-journal") == pair.journal;
    }
    Folder folder;
    std::string path = folder / "smith.caprail";
};

TEST_F(Beside, a_record_nothing_is_a_matter_of_course) {
    EXPECT_TRUE(lookBeside(path));
    write(path + "-journal", ""); // what SQLite leaves in some modes, and takes no notice of
    EXPECT_TRUE(lookBeside(path));
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound);
    EXPECT_TRUE(checkFile(path).remarks.empty());
    EXPECT_FALSE(RecordFile::open(path, OpenMode::readWrite)->isReadOnly());
}

TEST_F(Beside, a_record_what_SQLite_would_wait_for_or_read_entries_from_is_refused_with_its_name) {
    const std::vector<std::pair<const char*, std::function<void(const std::string&)>>> things{
        {"a pipe", [](const std::string& at) { ASSERT_EQ(::mkfifo(at.c_str(), 0600), 0); }},
        {"a folder", [](const std::string& at) { ASSERT_EQ(::mkdir(at.c_str(), 0700), 0); }},
        {"a link", [](const std::string& at) { ASSERT_EQ(::symlink("/dev/zero", at.c_str()), 0); }}};
    for (const std::string ending : {"-journal", "-wal", "-shm"}) {
        for (const auto& [name, make] : things) {
            make(path + ending);
            const auto opened = RecordFile::open(path, OpenMode::readWrite);
            ASSERT_FALSE(opened) << name << ending;
            EXPECT_THAT(opened.error().sentence, testing::AllOf(HasSubstr(path + ending), HasSubstr("move it away")));
            const CheckReport report = checkFile(path);
            EXPECT_EQ(report.verdict, CheckVerdict::notFinished) << name << ending;
            EXPECT_EQ(report.findings.size(), 1U);
            std::filesystem::remove(path + ending);
        }
    }
    write(path + "-wal", "anything");
    EXPECT_THAT(RecordFile::open(path, OpenMode::readOnly).error().sentence, HasSubstr("No build record has"));
    std::filesystem::remove(path + "-wal");
    write(path + "-journal", "");
    ASSERT_EQ(::truncate((path + "-journal").c_str(), 3'000'000'000), 0);
    EXPECT_THAT(RecordFile::open(path, OpenMode::readOnly).error().sentence, HasSubstr("larger than the journal"));
}

TEST_F(Beside, a_record_something_that_is_no_lock_lets_it_be_read_only) {
    ASSERT_EQ(::mkfifo(lockPath(path).c_str(), 0600), 0);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file);
    EXPECT_THAT(file->readOnlyReason(), HasSubstr("not a plain file"));
    EXPECT_FALSE(upgradeRecord(path, folder / "kept"));
    EXPECT_FALSE(restoreRecord(path, path, folder / "kept"));
    std::filesystem::remove(lockPath(path));
    write(lockPath(path), std::string(20'000, '1'));
    EXPECT_THAT(RecordFile::open(path, OpenMode::readWrite)->readOnlyReason(), HasSubstr("larger than a lock"));
}

TEST_F(Beside, a_journal_of_someone_who_may_not_write_the_record_is_refused) {
    if (::geteuid() != 0) {
        GTEST_SKIP() << "only the superuser can give a file away";
    }
    const Pair pair = cutOffWrite(path, true);
    put(pair);
    ASSERT_EQ(::chmod(path.c_str(), 0600), 0);
    ASSERT_EQ(::chown((path + "-journal").c_str(), 12'345, static_cast<gid_t>(-1)), 0);
    EXPECT_THAT(RecordFile::open(path, OpenMode::readWrite).error().sentence, HasSubstr("belongs to someone"));
    EXPECT_TRUE(isUntouched(pair));
    ASSERT_EQ(::chmod(path.c_str(), 0660), 0); // a folder that a shop's people share
    EXPECT_TRUE(RecordFile::open(path, OpenMode::readWrite));
}

TEST_F(Beside, a_record_a_cut_off_write_is_read_around_without_a_byte_being_changed) {
    const Ledger before = RecordFile::open(path, OpenMode::readOnly)->ledger();
    for (const bool reached : {true, false}) {
        const Pair pair = cutOffWrite(path, reached);
        put(pair);
        const CheckReport report = checkFile(path);
        EXPECT_EQ(report.verdict, CheckVerdict::sound) << report.findings.front();
        EXPECT_EQ(report.entries, 5);
        ASSERT_EQ(report.remarks.size(), 1U);
        EXPECT_THAT(report.remarks.front(), HasSubstr("was cut off"));
        auto file = RecordFile::open(path, OpenMode::readOnly);
        ASSERT_TRUE(file) << file.error().sentence;
        EXPECT_EQ(file->ledger().entries(), before.entries());
        EXPECT_THAT(file->remark(), HasSubstr("was cut off"));
        const auto saved = file->saveCopy(folder / "copy.caprail");
        EXPECT_TRUE(saved);
        EXPECT_EQ(checkFile(folder / "copy.caprail").seal, before.seal());
        EXPECT_TRUE(isUntouched(pair));
        EXPECT_FALSE(*file->refresh());

        // Someone else takes the write back and goes on: what was read from the copy follows.
        {
            auto other = RecordFile::open(path, OpenMode::readWrite);
            ASSERT_TRUE(other && other->append(morning, "Bob", gap(1, Side::left, 570)));
        }
        const auto refreshed = file->refresh();
        ASSERT_TRUE(refreshed) << refreshed.error().sentence;
        EXPECT_TRUE(*refreshed);
        EXPECT_EQ(file->ledger().size(), 6);
        EXPECT_EQ(file->remark(), "");
        std::filesystem::remove_all(folder.path());
        std::filesystem::create_directory(folder.path());
        makeRecord(path, 5);
    }
}

TEST_F(Beside, a_record_an_own_cut_off_write_is_taken_back_when_it_is_opened_to_be_written_and_both_files_are_kept) {
    const Pair pair = cutOffWrite(path, true);
    put(pair);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_FALSE(file->isReadOnly());
    EXPECT_EQ(file->ledger().size(), 5);
    EXPECT_THAT(file->remark(), HasSubstr("taken back"));
    struct stat status {};
    ::stat((path).c_str(), &status);
    const std::string kept = cutOffBackupName(path, dateOf(UtcTime{std::int64_t{status.st_mtime} * 1000}));
    EXPECT_THAT(kept, HasSubstr(" cut off (2).caprail-backup"));
    const std::string first = kept.substr(0, kept.find(" (2)")) + ".caprail-backup";
    EXPECT_EQ(read(first), pair.record);
    EXPECT_EQ(read(first + "-journal"), pair.journal);
    EXPECT_FALSE(std::filesystem::exists(path + "-journal"));
    EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570)));
    EXPECT_EQ(checkFile(first).entries, 5) << "what was kept can be read as well";
}

TEST_F(Beside, a_copy_put_in_the_place_of_a_record_the_old_journal_harms_nothing) {
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(folder / "backup.caprail"));
    {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        for (int i = 0; i < 40; ++i) {
            ASSERT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570 + i)));
        }
    }
    const Pair pair{read(folder / "backup.caprail"), cutOffWrite(path, true).journal};
    put(pair);
    const CheckReport report = checkFile(path);
    EXPECT_EQ(report.verdict, CheckVerdict::notFinished);
    EXPECT_THAT(report.findings.front(), testing::AllOf(HasSubstr("write to another file"), HasSubstr("Move the")));
    EXPECT_FALSE(RecordFile::open(path, OpenMode::readOnly));
    const auto opened = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("write to another file"));
    EXPECT_TRUE(isUntouched(pair));
    std::filesystem::rename(path + "-journal", folder / "moved");
    EXPECT_EQ(checkFile(path).entries, 5) << "as the sentence says, it can be read then";
}

TEST_F(Beside, a_record_a_journal_that_names_another_file_deletes_it_neither_at_salvage_nor_while_the_record_is_open) {
    const std::string victim = folder / "thesis.txt";
    write(victim, "years of work");
    const std::string journal = std::string(600, '\0') + naming(victim);
    {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file);
        for (const std::string& planted :
             {journal, cutOffWrite(path, false).journal + naming(victim), std::string(600, 'x') + naming(victim)}) {
            write(path + "-journal", planted);
            (void)file->refresh();
            const auto stored = file->append(morning, "Ann", gap(1, Side::left, 570));
            ASSERT_FALSE(stored);
            EXPECT_THAT(stored.error().sentence, HasSubstr("names another file"));
            (void)file->refresh();
            EXPECT_EQ(read(path + "-journal"), planted);
            std::filesystem::remove(path + "-journal");
        }
        ASSERT_EQ(::mkfifo((path + "-journal").c_str(), 0600), 0);
        EXPECT_FALSE(file->refresh()) << "and it did not wait for the pipe";
        EXPECT_THAT(file->append(morning, "Ann", gap(1, Side::left, 570)).error().sentence,
                    HasSubstr("not a plain file"));
        std::filesystem::remove(path + "-journal");
        EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570))) << "once it is gone";
    }
    write(path, read(path).replace(0, 4, "torn"));
    for (const std::string& planted : {journal, std::string(600, 'x') + naming(victim)}) {
        write(path + "-journal", planted);
        const auto salvaged = salvage(path, folder / "new.caprail", UtcTime{});
        ASSERT_TRUE(salvaged) << salvaged.error().sentence;
        EXPECT_EQ(salvaged->kept, 6);
        EXPECT_THAT(salvaged->sentences, testing::Contains(HasSubstr("names another file")));
        std::filesystem::remove(folder / "new.caprail");
    }
    EXPECT_EQ(read(victim), "years of work");
}

TEST_F(Beside, a_record_that_is_open_a_cut_off_write_of_another_program_is_not_played_back_behind_its_back) {
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file);
    const Pair pair = cutOffWrite(path, false);
    write(path + "-journal", pair.journal);
    const auto refreshed = file->refresh();
    ASSERT_FALSE(refreshed);
    EXPECT_THAT(refreshed.error().sentence, HasSubstr("open it again"));
    EXPECT_FALSE(file->append(morning, "Ann", gap(1, Side::left, 570)));
    EXPECT_TRUE(isUntouched(pair));
}

TEST_F(Beside, a_damaged_record_the_journal_of_another_file_is_not_used_for_salvage) {
    makeRecord(folder / "other.caprail", 60);
    const std::string journal = cutOffWrite(folder / "other.caprail", true).journal;
    write(path, read(path).replace(0, 4, "torn"));
    write(path + "-journal", journal);
    const auto salvaged = salvage(path, folder / "new.caprail", UtcTime{});
    ASSERT_TRUE(salvaged) << salvaged.error().sentence;
    EXPECT_EQ(salvaged->kept, 5);
}

TEST_F(Beside, free_pages_and_missing_ones_are_damage) {
    const std::string sound = read(path);
    const auto refused = [&](const std::string& bytes, const char* words) {
        write(path, bytes);
        const CheckReport report = checkFile(path);
        EXPECT_EQ(report.verdict, CheckVerdict::damagedOrAltered);
        EXPECT_THAT(report.findings, testing::Contains(HasSubstr(words)));
        const auto opened = RecordFile::open(path, OpenMode::readWrite);
        EXPECT_FALSE(opened);
        EXPECT_EQ(read(path), bytes);
    };
    for (std::size_t page = 2; page <= sound.size() / 4096; page += 5) {
        std::string freed = sound;
        freed[35] = static_cast<char>(page);
        freed[34] = static_cast<char>(page >> 8U);
        freed[39] = 1;
        refused(freed, "calls 1 of its pages free");
    }
    refused(sound + std::string(4096, '\0'), "the file has");
    refused(sound + "x", "the file has");
    write(path, sound);
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound);
}

TEST_F(Beside, pages_that_are_called_free_while_a_record_is_open_take_no_entry) {
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file);
    std::fstream bytes(path, std::ios::in | std::ios::out | std::ios::binary);
    bytes.seekp(0, std::ios::end);
    bytes.write(std::string(4096, '\0').data(), 4096);
    bytes.close();
    const auto stored = file->append(morning, "Ann", gap(1, Side::left, 570));
    ASSERT_FALSE(stored);
    EXPECT_THAT(stored.error().sentence, HasSubstr("the file has"));
}

TEST(Pages, of_a_record_never_become_free_however_it_grows) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    auto file = RecordFile::create(path);
    ASSERT_TRUE(file);
    for (int i = 0; i < 120; ++i) { // hashes come in no order, texts and photos in all sizes
        const std::string bytes(static_cast<std::size_t>(i * i * 7 % 9'001), static_cast<char>(i));
        const AttachmentAdded photo{
            "", "p.jpg", "image/jpeg", "", sha256Hex(bytes), sha256Hex(bytes), static_cast<std::int64_t>(bytes.size())};
        ASSERT_TRUE(file->appendWithAttachment(morning, "Ann", photo, bytes));
        ASSERT_TRUE(
            file->append(morning, "Ann", NoteAdded{"", std::string(static_cast<std::size_t>(i * i % 5'003), 'n')}));
    }
    EXPECT_EQ(shell(path, "PRAGMA freelist_count"), "0");
}

} // namespace
} // namespace caprail
