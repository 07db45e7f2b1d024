// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <csignal>
#include <fstream>
#include <gmock/gmock.h>
#include <store/care/check.h>
#include <store/sqlite/header.h>
#include <store/file/writer_lock.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

namespace beginnings {

Ledger beginning(int entries) {
    Ledger ledger;
    for (int i = 0; i < entries; ++i) {
        ledger.append(morning, "Ann", gap(1 + i % 5, Side::right, 500 + i));
    }
    return ledger;
}

} // namespace beginnings

TEST(RecordFile, begun_with_a_ledger_has_all_of_it_or_is_not_made) {
    const Folder folder;
    Ledger ledger = beginnings::beginning(40);
    {
        auto file = RecordFile::create(folder / "smith.caprail", ledger);
        ASSERT_TRUE(file) << file.error().sentence;
        EXPECT_EQ(file->ledger().entries(), ledger.entries());
        EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 570)));
    }
    EXPECT_EQ(checkFile(folder / "smith.caprail").verdict, CheckVerdict::sound);
    ledger.append(morning, "Ann", NoteAdded{"", std::string(2'000'000, 'x')});
    EXPECT_FALSE(RecordFile::create(folder / "long.caprail", ledger));
    ledger = beginnings::beginning(40);
    ledger.append(morning, "Ann", AttachmentAdded{"", "a.jpg", "image/jpeg", "", sha256Hex("x"), sha256Hex("x"), 1});
    EXPECT_FALSE(RecordFile::create(folder / "photo.caprail", ledger)) << "its bytes are nowhere";
    EXPECT_EQ(folder.count(), 1);
}

TEST(RecordFile, reads_back_thousands_of_entries_with_texts_of_every_length_between_them) {
    const Folder folder;
    Ledger ledger;
    for (int i = 0; i < 5'000; ++i) {
        if (i % 400 == 399) {
            const std::size_t length = i % 800 == 799 ? 250UL * 1024 : static_cast<std::size_t>(i);
            ledger.append(morning, "Ann", NoteAdded{"", std::string(length, 'a') + "é\n\"" + std::to_string(i)});
        } else if (i % 7 == 0) {
            ledger.append(morning, "", NoteAdded{"", ""});
        } else {
            ledger.append(morning, i % 2 == 0 ? "Ann" : "Jörg", gap(1 + i % 5, Side::right, 500 + i));
        }
    }
    ASSERT_TRUE(RecordFile::create(folder / "long.caprail", ledger));
    const auto file = RecordFile::open(folder / "long.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file) << file.error().sentence;
    ASSERT_EQ(file->ledger().size(), ledger.size());
    EXPECT_EQ(file->ledger().entries(), ledger.entries());
}

TEST(RecordFile, names_the_one_entry_of_thousands_that_was_altered) {
    const Folder folder;
    const std::string path = folder / "altered.caprail";
    ASSERT_TRUE(RecordFile::create(path, beginnings::beginning(3'000)));
    for (const int number : {1, 1'024, 1'025, 2'999, 3'000}) {
        const std::string copy = folder / (std::to_string(number) + ".caprail");
        std::filesystem::copy_file(path, copy);
        alter(copy, "UPDATE gap_reading SET gap_nm = gap_nm + 1 WHERE sequence = " + std::to_string(number));
        const auto opened = RecordFile::open(copy, OpenMode::readOnly);
        ASSERT_FALSE(opened) << number;
        EXPECT_THAT(opened.error().sentence,
                    HasSubstr("The seal of entry " + std::to_string(number) + " does not fit"));
    }
}

TEST(RecordFile, begun_with_a_ledger_and_killed_leaves_the_whole_beginning_or_nothing) {
    const Folder folder;
    constexpr int entries = 40;
    const Ledger ledger = beginnings::beginning(entries);
    int made = 0;
    for (int kill = 0; kill < 12; ++kill) {
        const std::string kept = folder / ("kill-" + std::to_string(kill));
        std::filesystem::create_directory(kept);
        const pid_t child = ::fork();
        if (child == 0) {
            for (int i = 0;; ++i) {
                if (!RecordFile::create(kept + "/" + std::to_string(i) + ".caprail", ledger)) {
                    ::_exit(1);
                }
            }
        }
        ::usleep(static_cast<useconds_t>(40'000 + 7'300 * kill));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        EXPECT_TRUE(WIFSIGNALED(status)) << "it was not killed, it failed";
        for (const auto& file : std::filesystem::directory_iterator(kept)) {
            const std::string name = file.path().filename().string();
            if (name.front() != '.' && name.ends_with(".caprail")) {
                const CheckReport report = checkFile(file.path().string());
                EXPECT_EQ(report.verdict, CheckVerdict::sound) << report.findings.front();
                EXPECT_EQ(report.entries, entries);
                ++made;
            }
        }
    }
    std::printf("12 kills, %d records left, each whole\n", made);
    EXPECT_GT(made, 0);
}

TEST(RecordFile, gives_back_one_entry_of_every_kind_as_it_was_stored) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    Ledger expected;
    {
        auto file = RecordFile::create(path);
        ASSERT_TRUE(file) << file.error().sentence;
        for (const bool filled : {true, false}) {
            for (const Body& body : oneOfEach(filled)) {
                const Entry& entry = expected.append(morning, "Ann", body);
                auto sequence = body.is<AttachmentAdded>()
                                    ? file->appendWithAttachment(morning, "Ann", body.get<AttachmentAdded>(), "x")
                                    : file->append(morning, "Ann", body);
                ASSERT_TRUE(sequence) << kindOf(body).kind << ": " << sequence.error().sentence;
                EXPECT_EQ(*sequence, entry.sequence);
            }
        }
        EXPECT_EQ(file->ledger().entries(), expected.entries());
    }
    ASSERT_EQ(expected.size(), 2 * static_cast<std::int64_t>(allKinds().size()));
    auto again = RecordFile::open(path, OpenMode::readOnly);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(again->ledger().entries(), expected.entries());
    EXPECT_EQ(again->ledger().seal(), expected.seal());
}

TEST(RecordFile, leaves_nothing_beside_the_file_when_it_is_closed) {
    const Folder folder;
    makeRecord(folder / "smith.caprail", 3);
    EXPECT_EQ(folder.count(), 1);
    { auto file = RecordFile::open(folder / "smith.caprail", OpenMode::readWrite); }
    EXPECT_EQ(folder.count(), 1);
}

TEST(RecordFile, refuses_to_overwrite_a_file_that_exists) {
    const Folder folder;
    write(folder / "letter.txt", "Dear sir");
    const auto file = RecordFile::create(folder / "letter.txt");
    ASSERT_FALSE(file);
    EXPECT_THAT(file.error().sentence, HasSubstr("exists already"));
    EXPECT_EQ(read(folder / "letter.txt"), "Dear sir");
    EXPECT_EQ(folder.count(), 1);
}

TEST(RecordFile, is_not_made_through_a_dangling_symbolic_link) {
    const Folder folder;
    ASSERT_EQ(::symlink((folder / "elsewhere").c_str(), (folder / "smith.caprail").c_str()), 0);
    EXPECT_FALSE(RecordFile::create(folder / "smith.caprail"));
    EXPECT_FALSE(std::filesystem::exists(folder / "elsewhere"));
}

TEST(RecordFile, is_not_made_in_a_folder_that_does_not_exist) {
    const Folder folder;
    const auto file = RecordFile::create(folder / "none/smith.caprail");
    ASSERT_FALSE(file);
    EXPECT_THAT(file.error().sentence, HasSubstr("There is no folder"));
}

TEST(RecordFile, tells_a_second_writer_who_has_it_open_and_lets_it_read) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 2);
    {
        auto first = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(first);
        EXPECT_FALSE(first->isReadOnly()) << first->readOnlyReason();
        auto second = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(second) << second.error().sentence;
        EXPECT_TRUE(second->isReadOnly());
        EXPECT_THAT(second->readOnlyReason(), HasSubstr("process " + std::to_string(::getpid())));
        const auto refused = second->append(morning, "Bob", gap(1, Side::left, 400));
        ASSERT_FALSE(refused);
        EXPECT_THAT(refused.error().sentence, HasSubstr("is open in"));

        ASSERT_TRUE(first->append(morning, "Ann", gap(2, Side::left, 410)));
        EXPECT_EQ(second->ledger().size(), 2);
        const auto news = second->refresh();
        ASSERT_TRUE(news) << news.error().sentence;
        EXPECT_TRUE(*news);
        EXPECT_EQ(second->ledger().entries(), first->ledger().entries());
        const auto noNews = second->refresh();
        ASSERT_TRUE(noNews);
        EXPECT_FALSE(*noNews);
    }
    auto third = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(third);
    EXPECT_FALSE(third->isReadOnly());
}

TEST(RecordFile, takes_over_a_lock_that_names_nobody_because_its_maker_was_killed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 3);
    std::ofstream(lockPath(path)).close();
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_FALSE(file->isReadOnly()) << file->readOnlyReason();
}

TEST(RecordFile, takes_over_the_lock_of_a_program_that_died) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 1);
    const pid_t child = ::fork();
    if (child == 0) {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ::_exit(file && !file->isReadOnly() ? 0 : 1); // without closing: the lock stays
    }
    int status = 1;
    ::waitpid(child, &status, 0);
    ASSERT_EQ(status, 0);
    ASSERT_TRUE(std::filesystem::exists(lockPath(path)));
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file);
    EXPECT_FALSE(file->isReadOnly()) << file->readOnlyReason();
}

TEST(RecordFile, that_was_taken_over_is_written_by_the_new_one_alone) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 1);
    std::optional<RecordFile> first(std::move(*RecordFile::open(path, OpenMode::readWrite)));
    ASSERT_TRUE(RecordFile::open(path, OpenMode::readWrite)->isReadOnly());
    EXPECT_TRUE(isLockHeld(path));
    ASSERT_TRUE(takeLockOver(path)); // a person said so
    std::optional<RecordFile> second(std::move(*RecordFile::open(path, OpenMode::readWrite)));
    ASSERT_FALSE(second->isReadOnly()) << second->readOnlyReason();
    const auto refused = first->append(morning, "Ann", gap(1, Side::left, 400));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("was taken over"));
    EXPECT_TRUE(first->isReadOnly()) << "and from then on it only reads";
    EXPECT_TRUE(second->append(morning, "Bob", gap(1, Side::left, 401)));
    first.reset();
    EXPECT_TRUE(isLockHeld(path)) << "what the first leaves behind is not the second's lock";
    EXPECT_TRUE(second->append(morning, "Bob", gap(1, Side::left, 402)));
    second.reset();
    EXPECT_FALSE(isLockHeld(path));
}

TEST(RecordFile, opens_a_write_protected_file_to_be_read_with_the_reason) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 2);
    ::chmod(path.c_str(), 0444);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_THAT(file->readOnlyReason(), HasSubstr("may only be read"));
    EXPECT_EQ(file->ledger().size(), 2);
    ::chmod(path.c_str(), 0644);
    ::chmod(folder.path().c_str(), 0555);
    file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_THAT(file->readOnlyReason(), HasSubstr("The folder of"));
    ::chmod(folder.path().c_str(), 0755);
}

TEST(RecordFile, opens_a_file_with_two_names_to_be_read_only) {
    const Folder folder;
    makeRecord(folder / "a.caprail", 1);
    std::filesystem::create_hard_link(folder / "a.caprail", folder / "b.caprail");
    auto file = RecordFile::open(folder / "b.caprail", OpenMode::readWrite);
    ASSERT_TRUE(file);
    EXPECT_THAT(file->readOnlyReason(), HasSubstr("second name"));
}

TEST(RecordFile, locks_the_same_record_whatever_link_leads_to_it) {
    const Folder folder;
    makeRecord(folder / "a.caprail", 1);
    ASSERT_EQ(::symlink((folder / "a.caprail").c_str(), (folder / "link.caprail").c_str()), 0);
    auto first = RecordFile::open(folder / "a.caprail", OpenMode::readWrite);
    auto second = RecordFile::open(folder / "link.caprail", OpenMode::readWrite);
    ASSERT_TRUE(first && second);
    EXPECT_FALSE(first->isReadOnly());
    EXPECT_TRUE(second->isReadOnly());
}

TEST(RecordFile, refuses_folders_and_pipes_at_once) {
    const Folder folder;
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0644), 0);
    for (const std::string& path : {folder / "pipe", folder.path(), folder / "nothing"}) {
        EXPECT_FALSE(RecordFile::open(path, OpenMode::readWrite)) << path;
    }
}

TEST(RecordFile, refuses_an_entry_that_would_not_read_back_the_same) {
    const Folder folder;
    auto file = RecordFile::create(folder / "smith.caprail");
    ASSERT_TRUE(file);
    const std::string nul("a\0b", 3);
    for (const Body& body : std::vector<Body>{NoteAdded{"", "bad \xff byte"}, NoteAdded{"", nul},
                                              NoteAdded{"", std::string(300 * 1024, 'x')}}) {
        EXPECT_FALSE(file->append(morning, "Ann", body)) << canonicalText(Entry{1, morning, "", body, {}});
    }
    EXPECT_FALSE(file->append(morning, "A\xff", NoteAdded{"", "x"}));
    EXPECT_FALSE(file->append(UtcTime{INT64_MAX / 2}, "Ann", NoteAdded{"", "x"}));
    EXPECT_TRUE(file->ledger().empty());
    EXPECT_TRUE(file->append(morning, "Ann", NoteAdded{"", "good"}));
}

TEST(RecordFile, shows_an_entry_as_the_disk_has_it) {
    const Folder folder;
    auto file = RecordFile::create(folder / "smith.caprail");
    ASSERT_TRUE(file);
    ASSERT_TRUE(file->append(morning, "Ann", StackBuilt{{1, Side::left}, NameList{std::vector<std::string>{"S 14"}}}));
    const auto& shown = file->ledger().at(1).body.get<StackBuilt>().shims;
    auto again = RecordFile::open(folder / "smith.caprail", OpenMode::readOnly);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(shown, again->ledger().at(1).body.get<StackBuilt>().shims);
}

TEST(RecordFile, keeps_an_attachment_once_and_gives_it_back) {
    const Folder folder;
    auto file = RecordFile::create(folder / "smith.caprail");
    ASSERT_TRUE(file);
    std::string bytes(100'000, '\0');
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        bytes[i] = static_cast<char>(i * 7);
    }
    AttachmentAdded photo{"3R", "cap.jpg", "image/jpeg", "scored", sha256Hex(bytes), sha256Hex(bytes), 100'000};
    EXPECT_FALSE(file->append(morning, "Ann", photo)) << "its bytes are not in the file";
    EXPECT_FALSE(file->appendWithAttachment(morning, "Ann", photo, "other bytes"));
    ASSERT_TRUE(file->appendWithAttachment(morning, "Ann", photo, bytes));
    ASSERT_TRUE(file->appendWithAttachment(morning, "Ann", photo, bytes));
    ASSERT_TRUE(file->append(morning, "Ann", photo));
    EXPECT_EQ(file->attachmentBytes(photo.sha256).value_or(""), bytes);
    EXPECT_FALSE(file->attachmentBytes(sha256Hex("none")));
    EXPECT_EQ(shell(folder / "smith.caprail", "SELECT count(*) FROM attachment"), "1");
}

TEST(RecordFile, saves_a_copy_that_opens_and_never_overwrites) {
    const Folder folder;
    makeRecord(folder / "a.caprail", 20);
    auto file = RecordFile::open(folder / "a.caprail", OpenMode::readWrite);
    ASSERT_TRUE(file);
    const auto saved = file->saveCopy(folder / "b.caprail");
    ASSERT_TRUE(saved) << saved.error().sentence;
    auto copy = RecordFile::open(folder / "b.caprail", OpenMode::readWrite);
    ASSERT_TRUE(copy) << copy.error().sentence;
    EXPECT_EQ(copy->ledger().entries(), file->ledger().entries());
    EXPECT_FALSE(file->saveCopy(folder / "b.caprail"));
    EXPECT_FALSE(file->saveCopy(folder / "a.caprail"));
}

TEST(RecordFile, says_so_when_it_was_moved_or_deleted_while_open) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 2);
    auto file = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(file);
    std::filesystem::rename(path, folder / "moved.caprail");
    const auto refused = file->append(morning, "Ann", gap(1, Side::left, 400));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("moved or deleted"));
    EXPECT_EQ(file->ledger().size(), 2);
    ASSERT_TRUE(file->saveCopy(folder / "copy.caprail"));
    std::filesystem::rename(folder / "moved.caprail", path);
    EXPECT_TRUE(file->append(morning, "Ann", gap(1, Side::left, 400)));
}

TEST(RecordFile, will_not_append_over_what_another_program_wrote) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 2);
    auto first = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(first);
    std::filesystem::remove(lockPath(path)); // as a file system without locks would have it
    auto second = RecordFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(second);
    ASSERT_FALSE(second->isReadOnly());
    std::filesystem::remove(lockPath(path));
    ASSERT_TRUE(second->append(morning, "Bob", gap(1, Side::left, 400)));
    const auto refused = first->append(morning, "Ann", gap(1, Side::left, 401));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("read it again"));
    ASSERT_TRUE(first->refresh());
    EXPECT_EQ(first->append(morning, "Ann", gap(1, Side::left, 401)).value_or(0), 4);
}

TEST(RecordFile, takes_and_gives_back_an_attachment_of_the_largest_size) {
    const Folder folder;
    const std::string bytes(60UL * 1024 * 1024, 'p');
    const AttachmentAdded photo{
        "", "p.tiff", "image/tiff", "", sha256Hex(bytes), sha256Hex(bytes), static_cast<std::int64_t>(bytes.size())};
    auto file = RecordFile::create(folder / "a.caprail");
    ASSERT_TRUE(file);
    const auto stored = file->appendWithAttachment(morning, "Ann", photo, bytes);
    ASSERT_TRUE(stored) << stored.error().sentence;
    EXPECT_TRUE(file->attachmentBytes(photo.sha256) == bytes);
    const auto saved = file->saveCopy(folder / "copy.caprail");
    ASSERT_TRUE(saved) << saved.error().sentence;
    EXPECT_EQ(checkFile(folder / "copy.caprail").verdict, CheckVerdict::sound);
}

} // namespace
} // namespace caprail
