// SPDX-License-Identifier: GPL-3.0-or-later
/// Records of earlier versions: kept for ever in tests/data/records, each with its text form beside it. They are read
/// as they are, and upgraded copy first: whatever fails on the way, the original is as it was.
#include "faulty_calls.h"
#include "faulty_vfs.h"
#include "samples.h"

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <gmock/gmock.h>
#include <ledger/entry_json.h>
#include <map>
#include <random>
#include <store/care/check.h>
#include <store/care/copies.h>
#include <store/care/salvage.h>
#include <store/sqlite/schema.h>
#include <store/care/upgrade.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

std::string kept(std::uint32_t version, const std::string& ending) {
    return TEST_DATA "/records/version-" + std::to_string(version) + ending;
}

std::string textOf(const Ledger& ledger) {
    std::string text;
    for (const Entry& entry : ledger.entries()) {
        text += toJsonLine(entry) + "\n";
    }
    return text;
}

/// Every file in a folder with its bytes, hidden ones too.
std::map<std::string, std::string> filesIn(const Folder& folder) {
    std::map<std::string, std::string> files;
    for (const auto& file : std::filesystem::directory_iterator(folder.path())) {
        files[file.path().filename().string()] = read(file.path().string());
    }
    return files;
}

class EarlierVersion : public testing::TestWithParam<std::uint32_t> {
protected:
    void SetUp() override { write(path, original); }
    Folder folder;
    std::string path = folder / "old.caprail";
    std::string backup = folder / "old.caprail-backup";
    std::string original = read(kept(GetParam(), ".caprail"));
    std::string text = read(kept(GetParam(), ".jsonl"));
};

TEST_P(EarlierVersion, is_kept_as_a_record_of_its_own_version) {
    EXPECT_GT(text.size(), 20'000U);
    EXPECT_EQ(shell(path, "PRAGMA user_version"), std::to_string(GetParam()));
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound);
    EXPECT_GE(checkFile(path).attachments, 2);
}

TEST_P(EarlierVersion, is_read_as_it_is_without_being_touched) {
    for (const OpenMode mode : {OpenMode::readOnly, OpenMode::readWrite}) {
        auto file = RecordFile::open(path, mode);
        ASSERT_TRUE(file) << file.error().sentence;
        EXPECT_TRUE(file->isReadOnly());
        EXPECT_TRUE(textOf(file->ledger()) == text);
        const auto refused = file->append(morning, "Ann", gap(1, Side::left, 570));
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().sentence, file->readOnlyReason());
        for (const Entry& entry : file->ledger().entries()) {
            if (const auto* added = entry.body.as<AttachmentAdded>()) {
                EXPECT_TRUE(file->attachmentBytes(added->sha256));
            }
        }
    }
    EXPECT_TRUE(read(path) == original);
    EXPECT_EQ(folder.count(), 1);
}

TEST_P(EarlierVersion, is_upgraded_with_every_seal_and_kept_beside) {
    std::filesystem::permissions(path, std::filesystem::perms(0640));
    ASSERT_EQ(*olderVersion(path), GetParam());
    const auto upgraded = upgradeRecord(path, backup);
    ASSERT_TRUE(upgraded) << upgraded.error().sentence;
    EXPECT_EQ(*olderVersion(path), std::nullopt);
    EXPECT_EQ(std::filesystem::status(path).permissions(), std::filesystem::perms(0640));
    EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound);
    EXPECT_EQ(shell(path, "PRAGMA integrity_check"), "ok");
    EXPECT_EQ(folder.count(), 2);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file && !file->isReadOnly()) << (file ? file->readOnlyReason() : file.error().sentence);
    EXPECT_TRUE(textOf(file->ledger()) == text);
    EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570)));

    EXPECT_EQ(shell(backup, "PRAGMA user_version"), std::to_string(GetParam()));
    const auto before = RecordFile::open(backup, OpenMode::readOnly);
    ASSERT_TRUE(before) << before.error().sentence;
    EXPECT_TRUE(textOf(before->ledger()) == text);
}

TEST_P(EarlierVersion, upgraded_has_the_tables_of_a_fresh_record_page_for_page) {
    // Salvage leans on it: the pages of a damaged schema are taken from a fresh record.
    ASSERT_TRUE(upgradeRecord(path, backup));
    makeRecord(folder / "fresh.caprail", 0);
    const std::string roots = "SELECT group_concat(name || rootpage) FROM (SELECT * FROM sqlite_schema ORDER BY name)";
    EXPECT_EQ(shell(path, roots), shell(folder / "fresh.caprail", roots));
}

TEST_P(EarlierVersion, is_salvaged_when_it_is_damaged) {
    std::string damaged = original;
    std::fill_n(damaged.begin(), 4096, '\xff'); // header and root of the schema: not even the version is known
    write(path, damaged);
    const auto report = salvage(path, folder / "new.caprail", morning);
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_TRUE(report->isWhole()) << report->sentences.back();
    const auto file = RecordFile::open(folder / "new.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file);
    EXPECT_TRUE(textOf(file->ledger()).starts_with(text)) << "what follows says that it was salvaged";
    EXPECT_TRUE(file->ledger().entries().back().body.is<Salvaged>());
    EXPECT_TRUE(read(path) == damaged);
}

TEST_P(EarlierVersion, is_salvaged_whatever_version_its_header_names) {
    for (std::uint32_t named = 1; named <= schemaVersion; ++named) {
        for (const bool isListBroken : {false, true}) {
            std::string damaged = original;
            damaged[63] = static_cast<char>(named);
            if (isListBroken) {
                std::fill(damaged.begin() + 100, damaged.begin() + 4096, '\0'); // the root of the list of tables
            }
            write(path, damaged);
            std::filesystem::remove(folder / "new.caprail");
            const auto report = salvage(path, folder / "new.caprail", morning);
            ASSERT_TRUE(report) << named << ": " << report.error().sentence;
            EXPECT_TRUE(report->isWhole()) << named << ": " << report->sentences.back();
            const auto file = RecordFile::open(folder / "new.caprail", OpenMode::readOnly);
            ASSERT_TRUE(file);
            EXPECT_TRUE(textOf(file->ledger()).starts_with(text)) << named;
            EXPECT_EQ(isListBroken, !report->sentences.empty()) << named << ": only what was damaged is put in";
        }
    }
}

TEST_P(EarlierVersion, altered_in_its_schema_or_rows_is_not_upgraded) {
    for (const std::string sql : {"CREATE TABLE lie (x)", "DROP VIEW history"}) {
        write(path, original);
        ASSERT_EQ(shell(path, sql), "");
        const std::string before = read(path);
        const auto refused = upgradeRecord(path, backup);
        ASSERT_FALSE(refused) << sql;
        EXPECT_THAT(refused.error().sentence, HasSubstr("altered outside this program"));
        EXPECT_TRUE((filesIn(folder) == std::map<std::string, std::string>{{"old.caprail", before}}));
    }
}

TEST_P(EarlierVersion, is_not_upgraded_over_an_earlier_backup_nor_while_it_is_open_elsewhere) {
    write(backup, "something else");
    EXPECT_FALSE(upgradeRecord(path, backup));
    EXPECT_TRUE(read(path) == original);
    EXPECT_EQ(read(backup), "something else");
    // Someone writes in the sqlite3 shell: what would be written meanwhile must not be left behind.
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    const auto busy = upgradeRecord(path, folder / "another.caprail-backup");
    sqlite3_close(other);
    ASSERT_FALSE(busy);
    EXPECT_THAT(busy.error().sentence, HasSubstr("by another program"));
    EXPECT_TRUE(read(path) == original);
}

/// What is beside a record after an upgrade that failed: nothing. After one that was done: the copy.
void expectOldOrNew(const Folder& folder, const std::string& original, const std::string& text, bool isDone, int n) {
    const std::string path = folder / "old.caprail";
    const auto file = RecordFile::open(path, OpenMode::readOnly);
    ASSERT_TRUE(file) << n << ": " << file.error().sentence;
    EXPECT_TRUE(textOf(file->ledger()) == text) << n;
    if (isDone) {
        EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound) << n;
        EXPECT_EQ(checkFile(folder / "old.caprail-backup").verdict, CheckVerdict::sound) << n;
        EXPECT_EQ(folder.count(), 2) << n;
    } else {
        EXPECT_TRUE((filesIn(folder) == std::map<std::string, std::string>{{"old.caprail", original}})) << n;
    }
}

TEST_P(EarlierVersion, stays_as_it_was_when_any_call_to_the_disk_fails) {
    FaultyVfs vfs;
    const int stride = std::getenv("CAPRAIL_EVERY_FAULT") == nullptr ? 17 : 1; // each run reads the record six times
    for (const auto mode : {FaultyVfs::Mode::once, FaultyVfs::Mode::fromThere, FaultyVfs::Mode::diskFull}) {
        int n = 1 + static_cast<int>(mode);
        int points = -1;
        for (bool failed = true; failed; n += stride, ++points) {
            std::filesystem::remove(backup);
            write(path, original);
            vfs.failAt(n, mode);
            const auto done = upgradeRecord(path, backup);
            failed = vfs.hasFailed();
            vfs.failAt(0, mode);
            EXPECT_TRUE(done || !done.error().sentence.empty());
            EXPECT_TRUE(failed || done);
            expectOldOrNew(folder, original, text, done.has_value(), n);
            ASSERT_FALSE(HasFailure());
        }
        std::printf("%d of %d points of failure in the database's calls\n", points, n - stride - 1);
        EXPECT_GT(n, mode == FaultyVfs::Mode::diskFull ? 200 : 500);
    }
}

TEST_P(EarlierVersion, stays_as_it_was_when_any_of_our_own_calls_to_the_system_fails) {
    int n = 1;
    for (bool failed = true; failed; ++n) {
        std::filesystem::remove(backup);
        write(path, original);
        FaultyCalls::failAt(n);
        const auto done = upgradeRecord(path, backup);
        failed = FaultyCalls::hasFailed();
        FaultyCalls::failAt(0);
        EXPECT_TRUE(failed || done);
        expectOldOrNew(folder, original, text, done.has_value(), n);
        ASSERT_FALSE(HasFailure());
    }
    std::printf("%d points of failure in our own calls (open, fsync, chmod, rename)\n", n - 2);
    EXPECT_GE(n - 2, 6);
}

TEST_P(EarlierVersion, killed_in_the_middle_of_the_upgrade_leads_to_the_old_or_the_new_whole) {
    const char* wanted = std::getenv("CAPRAIL_KILLS");
    const int kills = wanted == nullptr ? 40 : std::min(std::atoi(wanted), 1'000);
    std::mt19937 random(static_cast<unsigned>(::getpid()));
    int old = 0;
    int unfinished = 0;
    const auto start = std::chrono::steady_clock::now();
    ASSERT_TRUE(upgradeRecord(path, backup));
    const auto whole =
        std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - start).count();
    for (int i = 0; i < kills; ++i) {
        for (const auto& file : filesIn(folder)) {
            std::filesystem::remove(folder / file.first);
        }
        write(path, original);
        const pid_t child = ::fork();
        if (child == 0) {
            ::_exit(upgradeRecord(path, backup) ? 0 : 1);
        }
        std::this_thread::sleep_for(std::chrono::microseconds(static_cast<std::int64_t>(random()) % (whole * 5 / 4)));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status) || WEXITSTATUS(status) == 0) << "the upgrade failed by itself";
        for (const auto& file : filesIn(folder)) {
            unfinished += file.first.starts_with(".old.caprail." + std::to_string(child)) ? 1 : 0;
        }
        const auto file = RecordFile::open(path, OpenMode::readOnly);
        ASSERT_TRUE(file) << file.error().sentence;
        ASSERT_TRUE(textOf(file->ledger()) == text);
        const auto older = olderVersion(path);
        ASSERT_TRUE(older);
        old += *older ? 1 : 0;
        if (std::filesystem::exists(backup)) {
            ASSERT_EQ(checkFile(backup).verdict, CheckVerdict::sound) << "the copy appears whole or not at all";
        }
        // The next one takes the dead one's lock over and clears away what it left.
        const std::string second = folder / "second.caprail-backup";
        const auto again = upgradeRecord(path, second);
        ASSERT_TRUE(again) << again.error().sentence;
        ASSERT_EQ(checkFile(path).verdict, CheckVerdict::sound);
        for (const auto& left : filesIn(folder)) {
            EXPECT_FALSE(left.first.starts_with(".old.caprail.") && left.first.find(".new") != std::string::npos)
                << left.first;
        }
    }
    std::printf("%d kills: %d before the swap, %d of them with an unfinished file\n", kills, old, unfinished);
    EXPECT_GT(unfinished, 0) << "no kill fell into the upgrade: the test is too gentle";
}

INSTANTIATE_TEST_SUITE_P(Kept, EarlierVersion, testing::Range(1U, schemaVersion),
                         [](const auto& version) { return "version_" + std::to_string(version.param); });

TEST(Upgrade, leaves_a_present_record_and_foreign_files_alone) {
    const Folder folder;
    makeRecord(folder / "a.caprail", 2);
    const std::string before = read(folder / "a.caprail");
    ASSERT_TRUE(upgradeRecord(folder / "a.caprail", folder / "b"));
    EXPECT_EQ(read(folder / "a.caprail"), before);
    EXPECT_EQ(folder.count(), 1);
    write(folder / "letter", "Dear sir");
    EXPECT_FALSE(upgradeRecord(folder / "letter", folder / "b"));
    std::string newer = before;
    newer[63] = static_cast<char>(schemaVersion + 1);
    write(folder / "newer.caprail", newer);
    const auto refused = upgradeRecord(folder / "newer.caprail", folder / "b");
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("newer version"));
    EXPECT_TRUE(read(folder / "newer.caprail") == newer);
}

TEST(Upgrade, knows_every_earlier_schema_to_the_letter) {
    // What SQLite itself says of the kept record, against the text that the program carries.
    for (std::uint32_t version = 1; version < schemaVersion; ++version) {
        const Folder folder;
        write(folder / "old.caprail", read(kept(version, ".caprail")));
        for (const SchemaItem& item : schemaItems(version)) {
            EXPECT_EQ(shell(folder / "old.caprail", "SELECT type || ' ' || tbl_name || ' ' || sql FROM sqlite_schema "
                                                    "WHERE name = '" +
                                                        item.name + "'"),
                      item.type + " " + item.table + " " + item.sql);
        }
        EXPECT_EQ(shell(folder / "old.caprail", "SELECT count(*) FROM sqlite_schema WHERE sql IS NOT NULL"),
                  std::to_string(schemaItems(version).size()));
    }
}

} // namespace
} // namespace caprail
