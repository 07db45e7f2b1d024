// SPDX-License-Identifier: GPL-3.0-or-later
/// How files and folders are made: whole or not at all, never over another, and without leaving anything behind.
#include "samples.h"

#include <cerrno>
#include <csignal>
#include <gmock/gmock.h>
#include <store/file/hidden_name.h>
#include <store/file/output_file.h>
#include <sys/stat.h>
#include <sys/wait.h>

namespace {
int renameFails = 0;      ///< errno, as of file systems that lack renameat2 with flags; 0: it does not fail
bool lacksLinks = false;  ///< as memory cards do
} // namespace

extern "C" {
int __real_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags);
int __real_link(const char* from, const char* to);

int __wrap_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) {
    if (renameFails != 0) {
        errno = renameFails;
        return -1;
    }
    return __real_renameat2(fromFolder, from, toFolder, to, flags);
}
int __wrap_link(const char* from, const char* to) {
    if (lacksLinks) {
        errno = EPERM;
        return -1;
    }
    return __real_link(from, to);
}
}

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

/// A file system as it should be, or a poorer one.
struct FileSystem {
    const char* name;
    int renameFails = 0;
    bool lacksLinks = false;
};
class NewFile : public testing::TestWithParam<FileSystem> {
protected:
    void SetUp() override {
        renameFails = GetParam().renameFails;
        lacksLinks = GetParam().lacksLinks;
    }
    void TearDown() override {
        renameFails = 0;
        lacksLinks = false;
    }
    const Folder folder;
};

TEST_P(NewFile, never_takes_the_place_of_a_file_that_appears_in_the_last_moment) {
    const std::string path = folder / "a.txt";
    const auto made = makeNewFile(path, [&](const std::string& unfinished) {
        write(path, "someone else's");
        return fillWith(unfinished, "ours");
    });
    ASSERT_FALSE(made);
    EXPECT_THAT(made.error().sentence, HasSubstr("exists already"));
    EXPECT_EQ(read(path), "someone else's");
    EXPECT_EQ(folder.count(), 1) << "nothing of ours is left";
    std::filesystem::remove(path);
    ASSERT_TRUE(makeNewFile(path, "ours"));
    EXPECT_EQ(read(path), "ours");
    EXPECT_EQ(std::filesystem::hard_link_count(path), 1U);
    EXPECT_EQ(folder.count(), 1);
}

TEST_P(NewFile, nor_does_a_folder) {
    const std::string path = folder / "out";
    const auto withOne = [](const std::string& unfinished) { return writeInside(unfinished + "/one", "1"); };
    for (const bool asFolder : {false, true}) {
        const auto made = makeNewFolder(path, [&](const std::string& unfinished) {
            if (asFolder) {
                std::filesystem::create_directory(path);
                write(path + "/theirs", "x");
            } else {
                write(path, "someone else's");
            }
            return withOne(unfinished);
        });
        ASSERT_FALSE(made);
        EXPECT_THAT(made.error().sentence, HasSubstr("exists already"));
        EXPECT_FALSE(std::filesystem::exists(path + "/one"));
        EXPECT_EQ(folder.count(), 1);
        std::filesystem::remove_all(path);
    }
    std::filesystem::create_directory(path);
    ASSERT_TRUE(makeNewFolder(path + "/", withOne)) << "an empty folder is as good as none";
    EXPECT_EQ(read(path + "/one"), "1");
    EXPECT_EQ(folder.count(), 1);
}

TEST_P(NewFile, moves_only_to_a_name_that_is_free) {
    write(folder / "a", "a");
    write(folder / "b", "b");
    EXPECT_THAT(moveToNewName(folder / "a", folder / "b").error().sentence, HasSubstr("exists already"));
    EXPECT_EQ(read(folder / "b"), "b");
    ASSERT_TRUE(moveToNewName(folder / "a", folder / "c"));
    EXPECT_EQ(read(folder / "c"), "a");
    EXPECT_FALSE(std::filesystem::exists(folder / "a"));
}

INSTANTIATE_TEST_SUITE_P(On, NewFile,
                         testing::Values(FileSystem{"a_plain_disk"}, FileSystem{"a_share_with_links", EINVAL},
                                         FileSystem{"an_old_kernel", ENOSYS}, FileSystem{"another_share", EOPNOTSUPP},
                                         FileSystem{"a_card_without_links", EINVAL, true}),
                         [](const auto& one) { return one.param.name; });

TEST(NewFileThatMayNotBeRenamed, is_not_brought_there_another_way) {
    const Folder folder;
    write(folder / "a", "a");
    renameFails = EACCES;
    EXPECT_FALSE(moveToNewName(folder / "a", folder / "c"));
    renameFails = 0;
    EXPECT_TRUE(std::filesystem::exists(folder / "a"));
    EXPECT_FALSE(std::filesystem::exists(folder / "c"));
}

/// Lets a child begin to make something and die by a kill before it is done; gives its process number.
pid_t killedWhileMaking(const std::function<void(const Fill&)>& make) {
    const pid_t child = ::fork();
    if (child == 0) {
        make([](const std::string& unfinished) -> Result<void> {
            if (std::filesystem::is_directory(unfinished)) {
                write(unfinished + "/customer.txt", "half");
            }
            ::raise(SIGKILL);
            return {};
        });
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status));
    return child;
}

TEST(Leftovers, of_killed_makers_go_when_the_same_is_made_again) {
    const Folder folder;
    const std::string file = folder / "a.txt";
    const std::string out = folder / "out";
    killedWhileMaking([&](const Fill& fill) { (void)makeNewFile(file, fill); });
    killedWhileMaking([&](const Fill& fill) { (void)makeNewFolder(out, fill); });
    ASSERT_EQ(folder.count(), 2);
    ASSERT_TRUE(makeNewFile(file, "whole"));
    ASSERT_TRUE(makeNewFolder(out, [](const std::string&) { return Result<void>(); }));
    EXPECT_EQ(folder.count(), 2) << "the two that were asked for, and nothing hidden";
    EXPECT_EQ(read(file), "whole");
}

TEST(Leftovers, go_also_when_the_file_turns_out_to_exist) {
    const Folder folder;
    killedWhileMaking([&](const Fill& fill) { (void)makeNewFile(folder / "a.txt", fill); });
    write(folder / "a.txt", "by another way");
    EXPECT_FALSE(makeNewFile(folder / "a.txt", "x"));
    EXPECT_EQ(folder.count(), 1);
}

TEST(Leftovers, that_are_none_stay) {
    const Folder folder;
    const std::string own = hiddenPath(outputLocation(folder / "a.txt"));
    const std::string process = std::to_string(::getpid());
    std::string running = own; // this test's parent runs another program, so only a twin of this process counts
    const pid_t twin = ::fork();
    if (twin == 0) {
        ::pause();
        ::_exit(0);
    }
    running.replace(running.find("." + process + "-"), process.size() + 1, "." + std::to_string(twin));
    std::string elsewhere = own;
    elsewhere.replace(elsewhere.size() - 10, 6, "0a0a0a"); // another computer's
    for (const std::string& stays : {running, elsewhere, folder / ".a.txt.new", folder / ".a.txt.12.new",
                                     folder / ".b.txt.999999999-0a0a0a.new", folder / "a.txt.new"}) {
        write(stays, "x");
    }
    ASSERT_TRUE(makeNewFile(folder / "a.txt", "whole"));
    EXPECT_EQ(folder.count(), 7);
    removeUnfinished(folder / "a.txt");
    EXPECT_EQ(folder.count(), 5) << "who holds the lock clears away all makers'";
    ::kill(twin, SIGKILL);
    ::waitpid(twin, nullptr, 0);
}

TEST(Leftovers, of_a_name_as_long_as_a_folder_takes_go_too) {
    const Folder folder;
    const std::string name(255, 'n');
    killedWhileMaking([&](const Fill& fill) { (void)makeNewFile(folder / name, fill); });
    ASSERT_EQ(folder.count(), 1);
    const auto made = makeNewFile(folder / name, "whole");
    ASSERT_TRUE(made) << made.error().sentence;
    EXPECT_EQ(folder.count(), 1);
    EXPECT_EQ(read(folder / name), "whole");
}

TEST(NewFolder, names_what_was_asked_for_when_its_filling_is_refused) {
    const Folder folder;
    const auto made = makeNewFolder(
        folder / "out", [](const std::string& unfinished) { return writeInside(unfinished + "/no/such/folder", "x"); });
    EXPECT_THAT(made.error().sentence, HasSubstr("“" + folder / "out" + "/no/such/folder” cannot be written: No such"));
    EXPECT_EQ(folder.count(), 0);
}

class OutputPath : public testing::Test {
protected:
    void SetUp() override {
        makeRecord(record, 2);
        bytes = read(record);
    }
    void TearDown() override { EXPECT_EQ(read(record), bytes) << "the record is as it was"; }
    Result<void> sheetTo(const std::string& path) { return writeOutput(path, OutputSort::sheet, true, "%PDF-1.4 new"); }
    const Folder folder;
    const std::string record = folder / "a.caprail";
    std::string bytes;
};

TEST_F(OutputPath, is_never_that_of_a_record_by_whatever_way_it_is_named) {
    std::filesystem::create_symlink(record, folder / "link.pdf");
    std::filesystem::create_hard_link(record, folder / "second.pdf");
    for (const std::string& location : {record, folder / "link.pdf", folder / "second.pdf"}) {
        EXPECT_THAT(judgeOutputPath(location, OutputSort::sheet, record).error().sentence, HasSubstr("record itself"));
        EXPECT_THAT(sheetTo(location).error().sentence, HasSubstr("neither a PDF nor a PNG"));
        EXPECT_THAT(writeOutput(location, OutputSort::text, true, "a,b\n").error().sentence,
                    HasSubstr("neither a table"));
    }
}

TEST_F(OutputPath, is_not_that_of_anything_else_that_is_no_such_output) {
    write(folder / "letter.pdf", "Dear Mr. Vale");
    write(folder / "empty.pdf", "");
    std::filesystem::create_directory(folder / "folder.pdf");
    std::filesystem::create_symlink(folder / "nowhere", folder / "dangling.pdf");
    ASSERT_EQ(::mkfifo((folder / "pipe.pdf").c_str(), 0600), 0);
    for (const char* name : {"letter.pdf", "empty.pdf", "folder.pdf", "dangling.pdf", "pipe.pdf"}) {
        EXPECT_FALSE(sheetTo(folder / name)) << name;
    }
    EXPECT_EQ(read(folder / "letter.pdf"), "Dear Mr. Vale");
    EXPECT_EQ(folder.count(), 6);
}

TEST_F(OutputPath, takes_an_earlier_sheet_only_when_the_person_said_so_and_keeps_its_link) {
    write(folder / "old.pdf", "%PDF-1.4 old");
    std::filesystem::create_symlink(folder / "old.pdf", folder / "latest.pdf");
    EXPECT_THAT(writeOutput(folder / "latest.pdf", OutputSort::sheet, false, "%PDF-1.4 new").error().sentence,
                HasSubstr("exists already"));
    EXPECT_EQ(read(folder / "old.pdf"), "%PDF-1.4 old");
    ASSERT_TRUE(sheetTo(folder / "latest.pdf"));
    EXPECT_EQ(read(folder / "old.pdf"), "%PDF-1.4 new");
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "latest.pdf"));
}

TEST_F(OutputPath, is_looked_at_again_when_the_output_is_whole) {
    const std::string out = folder / "out.pdf";
    write(out, "%PDF-1.4 old");
    const auto written = writeOutput(out, OutputSort::sheet, true, [&](const std::string& unfinished) {
        std::filesystem::copy_file(record, out, std::filesystem::copy_options::overwrite_existing);
        return fillWith(unfinished, "%PDF-1.4 new");
    });
    EXPECT_FALSE(written);
    EXPECT_EQ(read(out), bytes);
}

TEST_F(OutputPath, is_looked_at_without_taking_the_locks_of_an_open_record_away) {
    auto file = RecordFile::open(record, OpenMode::readWrite);
    ASSERT_TRUE(file);
    EXPECT_FALSE(sheetTo(record));
    sqlite3* held = nullptr;
    ASSERT_EQ(sqlite3_open(record.c_str(), &held), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(held, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_FALSE(sheetTo(record));
    const pid_t child = ::fork(); // locks of a process do not hold against itself
    if (child == 0) {
        const std::string other = shell(record, "BEGIN IMMEDIATE");
        ::_exit(other.find("locked") != std::string::npos ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(WEXITSTATUS(status), 0) << "the lock is gone";
    sqlite3_close(held);
}

} // namespace
} // namespace caprail
