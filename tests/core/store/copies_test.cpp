// SPDX-License-Identifier: GPL-3.0-or-later
/// Copies, backups and what happens to a record while it is open.
#include "faulty_calls.h"
#include "faulty_vfs.h"
#include "samples.h"

#include <cstdlib>
#include <functional>
#include <gmock/gmock.h>
#include <store/care/check.h>
#include <store/care/copies.h>
#include <store/file/writer_lock.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

class Copies : public testing::Test {
protected:
    void SetUp() override { makeRecord(path, 3); }
    /// Entries in the record at a path; −1 when it is not sound.
    static std::int64_t entriesIn(const std::string& record) {
        const CheckReport report = checkFile(record);
        return report.verdict == CheckVerdict::sound ? report.entries : -1;
    }
    Folder folder;
    std::string path = folder / "smith.caprail";
    std::string copy = folder / "copy.caprail";
    std::string kept = folder / "kept.caprail-backup";
};

TEST_F(Copies, are_named_by_the_day_and_never_twice_the_same) {
    const Date day = *parseDate("2026-05-04");
    EXPECT_EQ(datedBackupName(path, day), folder / "smith 2026-05-04.caprail-backup");
    write(datedBackupName(path, day), "");
    EXPECT_EQ(datedBackupName(path, day), folder / "smith 2026-05-04 (2).caprail-backup");
    write(datedBackupName(path, day), "");
    EXPECT_EQ(datedBackupName(path, day), folder / "smith 2026-05-04 (3).caprail-backup");
}

TEST_F(Copies, are_compared_by_their_seals) {
    const auto ledgerOf = [&](std::initializer_list<std::int64_t> gaps) {
        Ledger ledger;
        for (const std::int64_t value : gaps) {
            ledger.append(morning, "Ann", gap(1, Side::left, value));
        }
        return ledger;
    };
    EXPECT_TRUE(compare(ledgerOf({1, 2}), ledgerOf({1, 2})).isSame());
    EXPECT_EQ(compare(ledgerOf({1, 2, 3}), ledgerOf({1})).onlyInFirst, 2);
    EXPECT_EQ(compare(ledgerOf({}), ledgerOf({1})).onlyInSecond, 1);
    const LedgerComparison parted = compare(ledgerOf({1, 2, 3}), ledgerOf({1, 9, 3}));
    EXPECT_TRUE(parted.haveParted());
    EXPECT_EQ(parted.common, 1) << "the last entries read alike, but stand on others";
}

TEST_F(Copies, are_restored_in_the_place_of_the_record_which_is_kept) {
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(copy));
    {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file && file->append(morning, "Ann", gap(1, Side::left, 570)));
    }
    const auto restored = restoreRecord(copy, path, kept);
    ASSERT_TRUE(restored) << restored.error().sentence;
    EXPECT_EQ(entriesIn(path), 3);
    EXPECT_EQ(entriesIn(kept), 4);
    EXPECT_EQ(entriesIn(copy), 3);
    EXPECT_EQ(folder.count(), 3);
}

TEST_F(Copies, are_restored_over_the_open_record_itself) {
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file && file->saveCopy(copy) && file->append(morning, "Ann", gap(1, Side::left, 570)));
    const auto restored = file->restoreFrom(copy, kept);
    ASSERT_TRUE(restored) << restored.error().sentence;
    EXPECT_EQ(file->ledger().size(), 3);
    EXPECT_EQ(*file->append(morning, "Ann", gap(1, Side::left, 580)), 4);
    EXPECT_EQ(entriesIn(path), 4);
    EXPECT_EQ(entriesIn(kept), 4);
    EXPECT_NE(checkFile(path).seal, checkFile(kept).seal);
    EXPECT_TRUE(RecordFile::open(path, OpenMode::readWrite)->isReadOnly()) << "its lock is still held";
}

TEST_F(Copies, are_restored_over_a_record_that_cannot_be_read_any_more) {
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(copy));
    write(path, "no record at all");
    write(path + "-journal", "what a crash left");
    ASSERT_TRUE(restoreRecord(copy, path, kept));
    EXPECT_EQ(entriesIn(path), 3);
    EXPECT_EQ(read(kept), "no record at all");
    EXPECT_EQ(read(kept + "-journal"), "what a crash left") << "it must not be played back into the restored record";
    EXPECT_FALSE(std::filesystem::exists(path + "-journal"));
}

TEST_F(Copies, that_are_unsound_or_the_record_itself_are_not_restored) {
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(copy));
    const std::string before = read(path);
    std::string damaged = read(copy);
    damaged.resize(damaged.size() - 5000);
    write(folder / "damaged.caprail", damaged);
    EXPECT_FALSE(restoreRecord(folder / "damaged.caprail", path, kept));
    EXPECT_FALSE(restoreRecord(folder / "absent.caprail", path, kept));
    EXPECT_FALSE(restoreRecord(path, path, kept));
    write(kept, "an earlier one");
    EXPECT_FALSE(restoreRecord(copy, path, kept));
    EXPECT_EQ(read(kept), "an earlier one");
    {
        const auto open = RecordFile::open(path, OpenMode::readWrite);
        const auto refused = restoreRecord(copy, path, folder / "other");
        ASSERT_FALSE(refused);
        EXPECT_THAT(refused.error().sentence, HasSubstr("is open in"));
    }
    EXPECT_TRUE(read(path) == before);
}

TEST_F(Copies, leave_everything_as_it_was_when_a_restore_fails_at_any_call) {
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(copy));
    FaultyVfs vfs;
    const int every = std::getenv("CAPRAIL_EVERY_FAULT") == nullptr ? 7 : 1;
    int points = 0;
    for (const std::string& present : {read(path), std::string("no record at all")}) {
        for (const bool inDatabase : {true, false}) {
            const int stride = inDatabase ? every : 1;
            int n = 1;
            for (bool failed = true; failed; n += stride, ++points) {
                std::filesystem::remove(kept);
                write(path, present);
                vfs.failAt(inDatabase ? n : 0, FaultyVfs::Mode::once);
                FaultyCalls::failAt(inDatabase ? 0 : n);
                const auto done = restoreRecord(copy, path, kept);
                failed = inDatabase ? vfs.hasFailed() : FaultyCalls::hasFailed();
                vfs.failAt(0, FaultyVfs::Mode::once);
                FaultyCalls::failAt(0);
                if (done) {
                    EXPECT_EQ(entriesIn(path), 3) << n;
                    EXPECT_TRUE(std::filesystem::exists(kept)) << n;
                } else {
                    EXPECT_TRUE(read(path) == present) << n;
                    EXPECT_FALSE(std::filesystem::exists(kept)) << n;
                }
                EXPECT_TRUE(failed || done) << n;
                ASSERT_FALSE(HasFailure());
            }
            --points; // the last run met none
        }
    }
    std::printf("%d points of failure\n", points);
    EXPECT_GT(points, 80);
}

TEST_F(Copies, can_be_saved_elsewhere_from_memory_when_the_disk_is_gone) {
    const std::string bytes(5'000, 'p');
    const AttachmentAdded photo{"", "p.jpg", "image/jpeg", "", sha256Hex(bytes), sha256Hex(bytes), 5'000};
    FaultyVfs vfs;
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file && file->appendWithAttachment(morning, "Ann", photo, bytes));
    auto all = file->saveElsewhere(copy);
    ASSERT_TRUE(all) << all.error().sentence;
    EXPECT_THAT(*all, testing::IsEmpty());
    EXPECT_EQ(entriesIn(copy), 4);
    EXPECT_EQ(checkFile(copy).seal, file->ledger().seal());
    EXPECT_FALSE(file->saveElsewhere(copy)) << "nothing is overwritten";
    // The record's own bytes do not come any more: the photo is named as missing, every entry is there.
    vfs.breakFile(path);
    all = file->saveElsewhere(folder / "second.caprail");
    vfs.breakFile({});
    ASSERT_TRUE(all) << all.error().sentence;
    EXPECT_THAT(*all, testing::ElementsAre(HasSubstr("p.jpg")));
    const auto second = RecordFile::open(folder / "second.caprail", OpenMode::readOnly);
    ASSERT_TRUE(second);
    EXPECT_EQ(second->ledger().entries(), file->ledger().entries());
}

TEST_F(Copies, moved_deleted_replaced_or_locked_away_records_take_no_entry) {
    const auto refusal = [&](const std::function<void()>& happen, const std::function<void()>& undo) {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        EXPECT_TRUE(file && !file->isReadOnly() && file->isStillThere());
        happen();
        const auto noticed = file->isStillThere();
        EXPECT_FALSE(noticed);
        const auto stored = file->append(morning, "Ann", gap(1, Side::left, 570));
        EXPECT_FALSE(stored);
        EXPECT_EQ(file->ledger().size(), 3);
        undo();
        EXPECT_TRUE(file->isStillThere()) << "as soon as it is back";
        return stored ? "stored" : stored.error().sentence;
    };
    const std::string aside = folder / "aside";
    const auto moveAway = [&] { std::filesystem::rename(path, aside); };
    const auto moveBack = [&] { std::filesystem::rename(aside, path); };
    EXPECT_THAT(refusal(moveAway, moveBack), HasSubstr("moved or deleted"));
    EXPECT_THAT(refusal(
                    [&] {
                        moveAway();
                        write(path, read(aside)); // the very same bytes, but another file
                    },
                    moveBack),
                HasSubstr("replaced by another file"));
    EXPECT_THAT(refusal([&] { std::filesystem::permissions(path, std::filesystem::perms(0444)); },
                        [&] { std::filesystem::permissions(path, std::filesystem::perms(0644)); }),
                HasSubstr("may only be read"));
    EXPECT_THAT(
        refusal([&] { std::filesystem::create_hard_link(path, aside); }, [&] { std::filesystem::remove(aside); }),
        HasSubstr("second name"));
    EXPECT_EQ(entriesIn(path), 3);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    std::filesystem::remove(path);
    EXPECT_THAT(file->refresh().error().sentence, HasSubstr("moved or deleted"));
    ASSERT_TRUE(file->saveElsewhere(copy));
    EXPECT_EQ(entriesIn(copy), 3) << "a deleted file's entries can still be saved";
}

class NetworkFolder : public Copies, public testing::WithParamInterface<std::pair<int, const char*>> {};

TEST_P(NetworkFolder, whose_locks_fail_is_told_in_a_sentence_and_takes_nothing) {
    const auto [code, words] = GetParam();
    const std::string before = read(path);
    FaultyVfs vfs;
    vfs.failLocks(code);
    const auto opened = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr(words));
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::notFinished) << "nothing was found damaged";
    vfs.failLocks(SQLITE_OK);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file && !file->isReadOnly());
    vfs.failLocks(code);
    const auto stored = file->append(morning, "Ann", gap(1, Side::left, 570));
    ASSERT_FALSE(stored);
    EXPECT_THAT(stored.error().sentence, HasSubstr(words));
    EXPECT_TRUE(read(path) == before);
    vfs.failLocks(SQLITE_OK);
    EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570))) << "once locks work again";
}

INSTANTIATE_TEST_SUITE_P(Locks, NetworkFolder,
                         testing::Values(std::pair(SQLITE_IOERR_LOCK, "does not lock files"),
                                         std::pair(SQLITE_NOLFS, "takes no file of this size"),
                                         std::pair(SQLITE_BUSY, "by another program")),
                         [](const auto& code) { return "code_" + std::to_string(code.param.first); });

TEST_F(Copies, never_have_a_write_ahead_file_beside_them) {
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file && file->append(morning, "Ann", gap(1, Side::left, 570)));
    EXPECT_EQ(shell(path, "PRAGMA journal_mode"), "delete");
    // Someone else cannot switch it either while it is open here, and what is switched later is not opened.
    EXPECT_EQ(read(path)[18], 1);
    EXPECT_FALSE(std::filesystem::exists(path + "-wal"));
    EXPECT_FALSE(std::filesystem::exists(path + "-shm"));
    EXPECT_EQ(folder.count(), 2) << "the record and the writer's lock";
}

} // namespace
} // namespace caprail
