// SPDX-License-Identifier: GPL-3.0-or-later
/// Every call to the disk fails once, one after another, until a whole piece of work meets no failure any more; then
/// every call from there on; then the disk is full; then every allocation of SQLite's fails. Afterwards the record
/// opens, holds every acknowledged entry and no half one. Method: "How SQLite Is Tested", sections 3.1 and 3.2
/// (sqlite.org/testing.html, from memory).
#include "faulty_memory.h"
#include "faulty_vfs.h"
#include "samples.h"

#include <cstdlib>
#include <functional>
#include <store/care/check.h>
#include <store/text/text_form.h>

namespace caprail {
namespace {

using namespace samples;

/// The work that is disturbed: open a record, append entries with and without attachment, save a copy, close.
struct Work {
    std::int64_t acknowledged = 0;
    int refusals = 0;
    bool opened = false;

    void run(const std::string& path, const std::string& copy) {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        opened = file && !file->isReadOnly();
        if (!opened) {
            ++refusals;
            EXPECT_FALSE((file ? file->readOnlyReason() : file.error().sentence).empty());
            return;
        }
        acknowledged = file->ledger().size();
        const auto take = [&](const Result<std::int64_t>& stored) {
            if (stored) {
                EXPECT_EQ(*stored, acknowledged + 1);
                acknowledged = *stored;
            } else {
                ++refusals;
                EXPECT_FALSE(stored.error().sentence.empty());
            }
            EXPECT_EQ(file->ledger().size(), acknowledged);
        };
        const std::string bytes(9'000, 'p');
        const AttachmentAdded photo{"", "p.jpg", "image/jpeg", "", sha256Hex(bytes), sha256Hex(bytes), 9'000};
        take(file->append(morning, "Ann", gap(1, Side::left, 570)));
        take(file->appendWithAttachment(morning, "Ann", photo, bytes));
        take(file->append(morning, "Ann", gap(1, Side::right, 575)));
        if (!file->saveCopy(copy)) {
            ++refusals;
        }
    }
};

/// Runs the work with the n-th call failing, n = 1, 1 + stride, …, until no call is left to fail. Gives how many
/// failed.
int disturbEach(int stride, const std::function<void(int)>& failAt, const std::function<bool()>& hasFailed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const std::string copy = folder / "copy.caprail";
    makeRecord(path, 3);
    const std::string fresh = read(path);
    int failures = 0;
    for (int n = 1;; n += stride) {
        std::filesystem::remove(copy);
        std::filesystem::remove(path + "-journal");
        write(path, fresh);
        Work work;
        failAt(n);
        work.run(path, copy);
        const bool failed = hasFailed();
        failAt(0);
        const CheckReport report = checkFile(path);
        EXPECT_EQ(report.verdict, CheckVerdict::sound) << n << ": " << report.findings.front();
        EXPECT_GE(report.entries, std::max<std::int64_t>(work.acknowledged, 3)) << n;
        // An entry of which it was never known whether it reached the disk may be there, but no second one.
        EXPECT_LE(report.entries, (work.opened ? work.acknowledged : 3) + 1) << n;
        auto again = RecordFile::open(path, OpenMode::readWrite);
        EXPECT_TRUE(again && !again->isReadOnly()) << n;
        if (again) {
            EXPECT_TRUE(again->append(morning, "Ann", gap(2, Side::left, 1))) << n;
        }
        if (std::filesystem::exists(copy)) {
            EXPECT_EQ(checkFile(copy).verdict, CheckVerdict::sound) << n;
        }
        if (!failed) {
            EXPECT_EQ(work.refusals, 0);
            EXPECT_EQ(work.acknowledged, 6);
            return failures;
        }
        ++failures;
        if (testing::Test::HasFailure()) {
            return failures;
        }
    }
}

class Fault : public testing::TestWithParam<FaultyVfs::Mode> {};

TEST_P(Fault, of_any_call_to_the_disk_loses_nothing_that_was_acknowledged) {
    FaultyVfs vfs;
    const int points = disturbEach(
        1, [&](int n) { vfs.failAt(n, GetParam()); }, [&] { return vfs.hasFailed(); });
    std::printf("%d points of failure\n", points);
    EXPECT_GT(points, GetParam() == FaultyVfs::Mode::diskFull ? 30 : 150);
}

TEST_P(Fault, while_a_record_is_made_or_imported_leaves_nothing_behind) {
    FaultyVfs vfs;
    const Folder source;
    makeRecord(source / "a.caprail", 3);
    {
        auto file = RecordFile::open(source / "a.caprail", OpenMode::readOnly);
        ASSERT_TRUE(file);
        ASSERT_TRUE(exportLedger(*file, source / "a.jsonl"));
    }
    for (const bool import : {false, true}) {
        int n = 1;
        for (;; ++n) {
            const Folder folder;
            const std::string path = folder / "new.caprail";
            vfs.failAt(n, GetParam());
            bool made = false;
            if (import) {
                made = importLedger(source / "a.jsonl", path).has_value();
            } else {
                made = RecordFile::create(path).has_value();
            }
            const bool failed = vfs.hasFailed();
            vfs.failAt(0, GetParam());
            if (std::filesystem::exists(path)) { // made whole, even if opening it then failed
                EXPECT_EQ(checkFile(path).verdict, CheckVerdict::sound) << n;
                EXPECT_EQ(folder.count(), 1) << n;
            } else {
                EXPECT_FALSE(made);
                EXPECT_EQ(folder.count(), 0) << n;
            }
            if (!failed) {
                EXPECT_TRUE(made);
                break;
            }
            ASSERT_FALSE(HasFailure());
        }
        std::printf("%d points of failure\n", n - 1);
        EXPECT_GT(n, 20);
    }
}

INSTANTIATE_TEST_SUITE_P(Disk, Fault,
                         testing::Values(FaultyVfs::Mode::once, FaultyVfs::Mode::fromThere, FaultyVfs::Mode::diskFull),
                         [](const auto& mode) {
                             return mode.param == FaultyVfs::Mode::once        ? "once"
                                    : mode.param == FaultyVfs::Mode::fromThere ? "from_there"
                                                                               : "disk_full";
                         });

TEST(OutOfMemory, at_any_allocation_of_the_database_loses_nothing_that_was_acknowledged) {
    // There are thousands, most of them while the schema is parsed: the long run (tests/run) takes each.
    const int stride = std::getenv("CAPRAIL_EVERY_FAULT") == nullptr ? 23 : 1;
    int planned = 0;
    const int points = disturbEach(
        stride,
        [&](int n) {
            planned = n;
            FaultyMemory::failAt(n);
        },
        [&] { return FaultyMemory::calls >= planned; });
    std::printf("%d points of failure\n", points);
    EXPECT_GT(points, 4'000 / stride);
}

} // namespace
} // namespace caprail

int main(int argc, char** argv) {
    caprail::FaultyMemory::install();
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
