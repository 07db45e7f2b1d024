// SPDX-License-Identifier: GPL-3.0-or-later
/// Who may use the files that are made: records, copies, backups.
#include "samples.h"

#include <array>
#include <store/care/check.h>
#include <store/care/copies.h>
#include <store/file/new_file.h>
#include <store/care/salvage.h>
#include <store/text/text_form.h>
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;

unsigned modeOf(const std::string& path) {
    struct stat status {};
    EXPECT_EQ(::stat(path.c_str(), &status), 0) << path;
    return status.st_mode & 0777;
}

class Mode : public testing::Test {
protected:
    void SetUp() override { m_before = ::umask(022); }
    void TearDown() override { ::umask(m_before); }
    Folder folder;
    std::string path = folder / "smith.caprail";

private:
    mode_t m_before = 0;
};

TEST_F(Mode, of_a_new_record_lets_owner_and_group_in_and_nobody_else) {
    makeRecord(path, 1);
    EXPECT_EQ(modeOf(path), 0640U);
    ::umask(0002); // a shop whose people share a group
    makeRecord(folder / "shared.caprail", 1);
    EXPECT_EQ(modeOf(folder / "shared.caprail"), 0660U);
    ::umask(0077);
    makeRecord(folder / "own.caprail", 1);
    EXPECT_EQ(modeOf(folder / "own.caprail"), 0600U);
}

TEST_F(Mode, of_a_new_record_is_what_the_folder_says_where_it_says_something) {
    // Version 2 of the attribute: owner rw, group r, others r (acl(5); linux/posix_acl_xattr.h, from memory).
    const std::array<unsigned char, 28> list{2, 0, 0,    0,    1,    0,    6,  0, 0xff, 0xff, 0xff, 0xff, 4,    0,
                                             4, 0, 0xff, 0xff, 0xff, 0xff, 32, 0, 4,    0,    0xff, 0xff, 0xff, 0xff};
    if (::setxattr(folder.path().c_str(), "system.posix_acl_default", list.data(), list.size(), 0) != 0) {
        GTEST_SKIP() << "this disk keeps no access lists";
    }
    ::umask(0077);
    makeRecord(path, 1);
    EXPECT_EQ(modeOf(path), 0644U);
}

TEST_F(Mode, of_a_new_record_s_group_is_the_folder_s_where_it_hands_it_down) {
    if (::geteuid() != 0) {
        GTEST_SKIP() << "only the superuser is in every group";
    }
    ASSERT_EQ(::chown(folder.path().c_str(), static_cast<uid_t>(-1), 2'345), 0);
    ASSERT_EQ(::chmod(folder.path().c_str(), 02770), 0);
    makeRecord(path, 1);
    struct stat status {};
    ASSERT_EQ(::stat(path.c_str(), &status), 0);
    EXPECT_EQ(status.st_gid, 2'345U);
}

TEST_F(Mode, while_a_file_is_unfinished_is_its_owner_s_alone) {
    unsigned unfinishedMode = 0;
    ASSERT_TRUE(makeNewFile(folder / "new", [&](const std::string& unfinished) -> Result<void> {
        unfinishedMode = modeOf(unfinished);
        return {};
    }));
    EXPECT_EQ(unfinishedMode, 0600U);
    EXPECT_EQ(modeOf(folder / "new"), 0640U);
}

TEST_F(Mode, of_every_copy_is_that_of_what_it_is_copied_from) {
    makeRecord(path, 3);
    const bool isRoot = ::geteuid() == 0;
    if (isRoot) {
        ASSERT_EQ(::chown(path.c_str(), static_cast<uid_t>(-1), 2'345), 0);
    }
    for (const unsigned mode : {0600U, 0640U, 0664U}) {
        ASSERT_EQ(::chmod(path.c_str(), mode), 0);
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file);
        ASSERT_TRUE(file->saveCopy(folder / "copy"));
        ASSERT_TRUE(file->saveElsewhere(folder / "elsewhere"));
        ASSERT_TRUE(file->restoreFrom(folder / "copy", folder / "kept"));
        file = refuse("closed");
        write(folder / "damaged", read(path).replace(0, 4, "torn"));
        ASSERT_EQ(::chmod((folder / "damaged").c_str(), mode), 0);
        ASSERT_TRUE(salvage(folder / "damaged", folder / "salvaged"));
        for (const char* name : {"copy", "elsewhere", "kept", "salvaged", "smith.caprail"}) {
            EXPECT_EQ(modeOf(folder / name), mode) << name;
            struct stat status {};
            ASSERT_EQ(::stat((folder / name).c_str(), &status), 0);
            if (isRoot && std::string(name) != "salvaged") {
                EXPECT_EQ(status.st_gid, 2'345U) << name;
            }
        }
        for (const char* name : {"copy", "elsewhere", "kept", "salvaged"}) {
            std::filesystem::remove(folder / name);
        }
    }
    ASSERT_EQ(::chmod(path.c_str(), 0440), 0);
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readOnly)->saveCopy(folder / "copy"));
    EXPECT_EQ(modeOf(folder / "copy"), 0640U) << "one may only read the record, and works in the copy";
}

} // namespace
} // namespace caprail
