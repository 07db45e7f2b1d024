// SPDX-License-Identifier: GPL-3.0-or-later
#include "alter.h"

#include <gmock/gmock.h>
#include <ledger/remarks.h>
#include <random>
#include <store/care/check.h>
#include <store/care/salvage.h>
#include <store/sqlite/header.h>

namespace caprail {
namespace {

using namespace samples;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

class SalvageTest : public testing::Test {
protected:
    void SetUp() override {
        ledger = makeFullRecord(path);
        sound = read(path);
    }
    /// Salvages the file as it is now into a new one, which must be sound; the damaged one stays as it is.
    Result<SalvageReport> salvaged() {
        std::filesystem::remove(fresh);
        const std::string before = read(path);
        auto report = salvage(path, fresh, morning);
        EXPECT_EQ(read(path), before);
        EXPECT_EQ(std::filesystem::exists(fresh), report.has_value());
        if (report) {
            const CheckReport check = checkFile(fresh);
            EXPECT_EQ(check.verdict, CheckVerdict::sound) << check.findings.front();
            EXPECT_EQ(check.entries, report->kept + report->added);
            for (const std::string& sentence : report->sentences) {
                EXPECT_THAT(sentence, Not(HasSubstr("/copy"))) << "the record is told of, not what was worked on";
            }
        }
        return report;
    }
    /// Of the last entry that was carried over.
    Seal keptSeal() {
        const auto file = RecordFile::open(fresh, OpenMode::readOnly);
        EXPECT_TRUE(file);
        for (auto entry = file->ledger().entries().rbegin(); entry != file->ledger().entries().rend(); ++entry) {
            if (!entry->body.is<Salvaged>() || entry->person != salvager) {
                return entry->seal;
            }
        }
        return {};
    }
    /// What the new record says of itself.
    Salvaged told() {
        const auto file = RecordFile::open(fresh, OpenMode::readOnly);
        EXPECT_TRUE(file);
        const Entry& last = file->ledger().entries().back();
        EXPECT_EQ(last.person, salvager);
        EXPECT_EQ(last.time, morning);
        const auto* salvaged = last.body.as<Salvaged>();
        EXPECT_NE(salvaged, nullptr);
        return salvaged == nullptr ? Salvaged() : *salvaged;
    }
    Folder folder;
    std::string path = folder / "smith.caprail";
    std::string fresh = folder / "salvaged.caprail";
    std::string sound;
    Ledger ledger;
};

TEST_F(SalvageTest, of_a_sound_record_gives_the_same_record) {
    const auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_TRUE(report->isWhole());
    EXPECT_EQ(report->kept, ledger.size());
    EXPECT_EQ(keptSeal(), ledger.seal());
}

TEST_F(SalvageTest, says_for_ever_from_what_it_was_made) {
    ASSERT_TRUE(salvaged());
    const Salvaged whole = told();
    EXPECT_EQ(whole.fileName, "smith.caprail");
    EXPECT_EQ(whole.size, static_cast<std::int64_t>(sound.size()));
    EXPECT_EQ(whole.sha256, sha256Hex(sound));
    EXPECT_EQ(whole.lastSeal, shortForm(ledger.seal()));
    EXPECT_TRUE(whole.unsealed.names.empty() && whole.lost.names.empty());
    alter(path, "UPDATE entry SET person = 'Eve' WHERE sequence IN (4, 5, 6, 9); DELETE FROM entry WHERE sequence = 2");
    ASSERT_TRUE(salvaged());
    EXPECT_THAT(told().unsealed.names, ElementsAre("3-6", "9"));
    EXPECT_THAT(told().lost.names, ElementsAre("2"));
    EXPECT_EQ(told().sha256, sha256Hex(read(path)));
    // Salvaged again, it says both.
    std::filesystem::rename(fresh, folder / "once.caprail");
    ASSERT_TRUE(salvage(folder / "once.caprail", fresh, morning));
    const auto file = RecordFile::open(fresh, OpenMode::readOnly);
    EXPECT_EQ(salvageRemarks(file->ledger()).size(), 3U) << "two salvages, and the one that every kind stands once in";
}

TEST_F(SalvageTest, leaves_out_what_was_planted_in_the_schema) {
    ASSERT_EQ(shell(path, "CREATE VIEW lie AS SELECT 1; CREATE TABLE lies (x); DROP TRIGGER entry_is_never_updated"),
              "");
    const auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_TRUE(report->isWhole());
    EXPECT_EQ(keptSeal(), ledger.seal());
}

TEST_F(SalvageTest, mends_a_broken_header_and_a_broken_list_of_tables) {
    std::string broken = sound;
    broken.replace(0, 60, 60, 'x');
    write(path, broken);
    auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_EQ(keptSeal(), ledger.seal());
    EXPECT_THAT(report->sentences, testing::Contains(HasSubstr("fresh record")));

    broken = sound;
    broken.replace(100, 3996, 3996, '\0'); // the root of the list of tables
    write(path, broken);
    report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_EQ(keptSeal(), ledger.seal());
}

TEST_F(SalvageTest, goes_by_the_tables_and_not_by_the_version_in_the_header) {
    for (char named = 1; named <= static_cast<char>(schemaVersion); ++named) {
        for (const bool isListBroken : {false, true}) {
            std::string altered = sound;
            altered[63] = named;
            if (isListBroken) {
                altered.replace(100, 3996, 3996, '\0');
            }
            write(path, altered);
            const auto report = salvaged();
            ASSERT_TRUE(report) << report.error().sentence;
            EXPECT_TRUE(report->isWhole()) << static_cast<int>(named) << ": " << report->sentences.back();
            EXPECT_EQ(keptSeal(), ledger.seal()) << static_cast<int>(named);
        }
    }
}

TEST_F(SalvageTest, keeps_altered_entries_and_says_which) {
    alter(path, "UPDATE entry SET person = 'Eve' WHERE sequence = 4");
    const auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_THAT(report->unsealed, ElementsAre(4));
    EXPECT_THAT(report->lost, ElementsAre());
    EXPECT_EQ(report->kept, ledger.size());
}

TEST_F(SalvageTest, closes_up_over_lost_entries_and_moves_strikes_along) {
    std::filesystem::remove(path);
    {
        auto file = RecordFile::create(path);
        ASSERT_TRUE(file);
        for (const Body& body :
             std::vector<Body>{NoteAdded{"", "one"}, gap(1, Side::left, 570), gap(1, Side::right, 575),
                               Struck{1, "lost with what it strikes"}, Struck{3, "slipped"}}) {
            ASSERT_TRUE(file->append(morning, "Ann", body));
        }
    }
    alter(path, "DELETE FROM note_added");
    const auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_THAT(report->lost, ElementsAre(1, 4));
    const auto file = RecordFile::open(fresh, OpenMode::readOnly);
    ASSERT_TRUE(file) << file.error().sentence;
    ASSERT_EQ(file->ledger().size(), 4);
    EXPECT_FALSE(file->ledger().isStruck(1));
    EXPECT_EQ(file->ledger().struckBy(2), 3);
    const Entry moved{2, morning, "Ann", gap(1, Side::right, 575), {}};
    EXPECT_EQ(canonicalText(file->ledger().at(2)), canonicalText(moved));
}

TEST_F(SalvageTest, leaves_out_an_entry_whose_attachment_is_broken) {
    alter(path, "UPDATE attachment SET bytes = x'79'");
    const auto report = salvaged();
    ASSERT_TRUE(report) << report.error().sentence;
    EXPECT_EQ(report->lost.size(), 1U);
    EXPECT_THAT(report->sentences, testing::Contains(HasSubstr("attachment")));
}

TEST_F(SalvageTest, refuses_what_holds_nothing_of_a_record_and_never_overwrites) {
    write(path, "Dear sir");
    EXPECT_FALSE(salvaged());
    write(path, std::string(100'000, '\xaa'));
    EXPECT_FALSE(salvaged());
    write(path, "");
    EXPECT_FALSE(salvaged());
    std::string newer = sound;
    newer[63] = 9;
    write(path, newer);
    const auto refused = salvaged();
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("newer version"));
    write(path, sound);
    write(fresh, "a letter");
    EXPECT_FALSE(salvage(path, fresh, morning));
    EXPECT_EQ(read(fresh), "a letter");
}

TEST(Salvage, saves_most_of_a_record_whatever_page_is_lost_or_wherever_it_is_cut) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const std::string fresh = folder / "fresh.caprail";
    constexpr int entries = 300;
    makeRecord(path, entries);
    const std::string sound = read(path);
    const std::size_t pages = sound.size() / 4096;
    std::mt19937 random(11);
    int refused = 0;
    std::int64_t worst = entries;
    for (std::size_t page = 0; page < pages; ++page) {
        std::string damaged = sound;
        for (std::size_t i = 0; i < 4096; ++i) {
            damaged[page * 4096 + i] = static_cast<char>(random());
        }
        write(path, damaged);
        const auto report = salvage(path, fresh, morning);
        if (report) {
            EXPECT_EQ(checkFile(fresh).verdict, CheckVerdict::sound);
            EXPECT_EQ(report->kept + static_cast<std::int64_t>(report->lost.size()), entries) << page;
            worst = std::min(worst, report->kept);
            std::filesystem::remove(fresh);
        } else {
            ++refused; // the root of a table with all the readings
        }
    }
    RecordProperty("pages", static_cast<int>(pages));
    RecordProperty("refused", refused);
    RecordProperty("fewest_kept", static_cast<int>(worst));
    EXPECT_LE(refused, 2);
    EXPECT_GE(worst, entries / 2);
    for (std::size_t page = 1; page < pages; page += 3) {
        write(path, sound.substr(0, page * 4096 + 1000));
        const auto report = salvage(path, fresh, morning);
        if (report) {
            EXPECT_EQ(checkFile(fresh).verdict, CheckVerdict::sound);
            std::filesystem::remove(fresh);
        }
    }
}

} // namespace
} // namespace caprail
