// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit of what a record and its readers take, from both sides; and an export that fails.
#include "alter.h"

#include <csignal>
#include <gmock/gmock.h>
#include <store/file/read_file.h>
#include <store/sqlite/defences.h>
#include <store/text/text_form.h>
#include <sys/resource.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

template <class T> std::string answer(const Result<T>& result) {
    return result ? std::string("taken") : result.error().sentence;
}

TEST(StoreLimits, of_an_attachment_are_60_MiB) {
    const Folder folder;
    auto file = RecordFile::create(folder / "a.caprail");
    ASSERT_TRUE(file);
    AttachmentAdded photo{"", "p.tiff", "image/tiff", "", sha256Hex("x"), sha256Hex("x"), 60LL * 1024 * 1024};
    EXPECT_EQ(answer(file->canKeep(morning, "Ann", photo)), "taken");
    ++photo.size;
    EXPECT_THAT(answer(file->canKeep(morning, "Ann", photo)), HasSubstr("larger than a record takes (60 MiB)"));
    EXPECT_THAT(answer(file->appendWithAttachment(morning, "Ann", photo, "x")), HasSubstr("larger than a record takes"));
}

TEST(StoreLimits, of_an_attachment_are_the_size_and_hash_that_its_entry_gives) {
    const Folder folder;
    auto file = RecordFile::create(folder / "a.caprail");
    ASSERT_TRUE(file);
    const AttachmentAdded photo{"", "p.png", "image/png", "", sha256Hex("xy"), "", 2};
    EXPECT_THAT(answer(file->appendWithAttachment(morning, "Ann", photo, "xz")), HasSubstr("do not fit"));
    AttachmentAdded longer = photo;
    longer.size = 3;
    EXPECT_THAT(answer(file->appendWithAttachment(morning, "Ann", longer, "xy")), HasSubstr("do not fit"));
    EXPECT_EQ(answer(file->appendWithAttachment(morning, "Ann", photo, "xy")), "taken");
}

TEST(StoreLimits, of_a_text_are_256_KiB) {
    const Folder folder;
    auto file = RecordFile::create(folder / "a.caprail");
    ASSERT_TRUE(file);
    const std::string most(256UL * 1024, 'n');
    EXPECT_EQ(answer(file->append(morning, "Ann", NoteAdded{"", most})), "taken");
    EXPECT_THAT(answer(file->append(morning, "Ann", NoteAdded{"", most + "n"})), HasSubstr("longer than 256 KiB"));
    EXPECT_THAT(answer(file->append(morning, most + "n", NoteAdded{"", "x"})), HasSubstr("longer than 256 KiB"));
}

TEST(StoreLimits, of_a_file_that_is_read_whole_are_those_of_who_asks) {
    const Folder folder;
    write(folder / "text", std::string(1024 * 1024, 'x'));
    EXPECT_EQ(answer(readWholeFile(folder / "text", 1024 * 1024)), "taken");
    EXPECT_THAT(answer(readWholeFile(folder / "text", 1024 * 1024 - 1)), HasSubstr("is larger than"));
}

TEST(StoreLimits, of_lines_and_of_the_text_that_they_make_are_those_of_who_asks) {
    const Folder folder;
    write(folder / "text", "12345\n1234567890\n");
    const auto all = [&](std::size_t longestLine, std::int64_t largest) {
        auto text = LineReader::open(folder / "text", longestLine, largest);
        std::string_view line;
        for (;;) {
            const auto more = text->next(line);
            if (!more) {
                return more.error().sentence;
            }
            if (!*more) {
                return std::string("taken");
            }
        }
    };
    EXPECT_EQ(all(10, 17), "taken");
    EXPECT_THAT(all(9, 17), HasSubstr("too long"));
    EXPECT_THAT(all(10, 16), HasSubstr("longer than a record could hold"));
}

/// No file may grow beyond so many bytes while it lives.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        m_signal = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;
    ~FullDisk() {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_signal);
    }

private:
    rlimit m_before{};
    void (*m_signal)(int) = nullptr;
};

TEST(Export, that_fails_at_its_text_takes_its_photos_away_again) {
    const Folder folder;
    const Ledger ledger = makeFullRecord(folder / "a.caprail");
    const auto file = RecordFile::open(folder / "a.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file);
    const auto files = folder.count();
    {
        const FullDisk disk(1000); // room for the photo, which is one byte, and not for the text
        EXPECT_NE(answer(exportLedger(*file, folder / "out.jsonl")), "taken");
    }
    EXPECT_EQ(folder.count(), files) << "neither text nor photos are left";
    EXPECT_EQ(answer(exportLedger(*file, folder / "out.jsonl")), "taken");
    EXPECT_EQ(folder.count(), files + 2);
}

TEST(Export, that_fails_keeps_the_photos_that_an_earlier_one_left) {
    const Folder folder;
    const Ledger ledger = makeFullRecord(folder / "a.caprail");
    const auto file = RecordFile::open(folder / "a.caprail", OpenMode::readOnly);
    ASSERT_TRUE(file);
    const std::string photos = attachmentsFolder(folder / "out.jsonl");
    std::filesystem::create_directory(photos);
    write(photos + "/" + sha256Hex("x"), "x");
    {
        const FullDisk disk(1000);
        EXPECT_NE(answer(exportLedger(*file, folder / "out.jsonl")), "taken");
    }
    EXPECT_TRUE(std::filesystem::exists(photos + "/" + sha256Hex("x")));
    EXPECT_FALSE(std::filesystem::exists(folder / "out.jsonl"));
}

} // namespace
} // namespace caprail
