// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

#include <gmock/gmock.h>
#include <store/care/check.h>
#include <store/file/path_text.h>
#include <store/file/read_file.h>
#include <store/text/text_form.h>

namespace caprail {
namespace {

using namespace samples;
using testing::HasSubstr;

TEST(PathText, brings_back_every_byte_whether_it_is_text_or_not) {
    for (const std::string& path :
         {std::string("/a/plain.caprail"), std::string("/ü/𝄞 und.caprail"), std::string("/latin \xE9t\xE9.caprail"),
          std::string("\xFF\xFE\x80"), std::string("cut off \xF0\x9D\x84"), std::string("\xED\xB2\x80 held by itself"),
          std::string("\xC3")}) {
        EXPECT_EQ(pathBytes(qtPath(path)), path);
    }
    std::string all;
    for (int byte = 1; byte < 256; ++byte) {
        all += static_cast<char>(byte);
    }
    EXPECT_EQ(pathBytes(qtPath(all)), all);
    EXPECT_EQ(qtPath("/ü/𝄞"), QStringLiteral("/ü/𝄞"));
}

TEST(PathText, lets_a_record_whose_name_is_no_text_be_made_read_and_copied_under_that_very_name) {
    const Folder folder;
    const std::string name = "caf\xE9.caprail";
    const auto made = importLedger(SAMPLE_BUILDS "/mid-survey.jsonl", folder / name);
    ASSERT_TRUE(made) << made.error().sentence;
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        names.push_back(entry.path().filename().string());
    }
    EXPECT_THAT(names, testing::ElementsAre(name));
    EXPECT_EQ(checkFile(folder / name).verdict, CheckVerdict::sound);
    const auto file = RecordFile::open(folder / name, OpenMode::readOnly);
    ASSERT_TRUE(file) << file.error().sentence;
    EXPECT_TRUE(file->saveCopy(folder / "copy\xFF.caprail"));
    EXPECT_TRUE(exportLedger(*file, folder / "text\xFF.jsonl"));
    EXPECT_EQ(checkFile(folder / "copy\xFF.caprail").verdict, CheckVerdict::sound);
}

TEST(PathText, whose_path_is_too_long_is_said_so) {
    const Folder folder;
    std::string deep = folder.path();
    for (int i = 0; i < 3; ++i) {
        deep += "/" + std::string(160, 'd');
    }
    std::filesystem::create_directories(deep);
    const std::string record = deep + "/a.caprail";
    EXPECT_THAT(RecordFile::create(record).error().sentence, HasSubstr("more than 512 bytes"));
    makeRecord(folder / "a.caprail", 1);
    std::filesystem::copy_file(folder / "a.caprail", record);
    EXPECT_THAT(RecordFile::open(record, OpenMode::readOnly).error().sentence, HasSubstr("more than 512 bytes"));
    EXPECT_THAT(checkFile(record).findings.front(), HasSubstr("more than 512 bytes"));
}

TEST(ReadFile, ends_at_the_limit_also_where_nothing_else_does) {
    EXPECT_THAT(readWholeFile("/dev/zero", 1024 * 1024).error().sentence, HasSubstr("larger than 1 MiB"));
    EXPECT_THAT(readWholeFile("/", 1024).error().sentence, HasSubstr("is a folder"));
    auto endless = LineReader::open("/dev/zero", 1000, 1'000'000'000);
    ASSERT_TRUE(endless);
    std::string_view line;
    EXPECT_THAT(endless->next(line).error().sentence, HasSubstr("too long"));
    const Folder folder;
    write(folder / "text", "one\n\n\nlast without an end");
    auto text = LineReader::open(folder / "text", 100, 1000);
    std::vector<std::string> lines;
    for (auto more = text->next(line); more && *more; more = text->next(line)) {
        lines.emplace_back(line);
    }
    EXPECT_THAT(lines, testing::ElementsAre("one", "", "", "last without an end"));
    auto tooMuch = LineReader::open(folder / "text", 100, 10);
    EXPECT_THAT(tooMuch->next(line).error().sentence, HasSubstr("longer than a record could hold"));
}

} // namespace
} // namespace caprail
