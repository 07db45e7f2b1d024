// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/shop_scan.h>
#include <thread>

namespace caprail {
namespace {

using namespace shoptest;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::UnorderedElementsAre;

/// A folder of records with its index, and the list as a window would keep it.
class Scan : public testing::Test {
protected:
    Scan() : index(*ShopIndex::open(cache.path(), shop.path())), scan(index, shop.path()) {}
    ScanReport run(const std::stop_token& stop = {}) {
        auto report = scan.run(stop, events());
        EXPECT_TRUE(report) << (report ? "" : report.error().sentence);
        return report ? *report : ScanReport{};
    }
    ScanEvents events() {
        return {[this](std::vector<ShopRow> rows) {
                    for (ShopRow& row : rows) {
                        list.insert_or_assign(row.id, std::move(row));
                    }
                },
                [this](const std::vector<std::int64_t>& ids) {
                    for (const auto id : ids) {
                        list.erase(id);
                    }
                },
                {}};
    }
    std::vector<std::string> paths() const {
        std::vector<std::string> names;
        for (const auto& [id, row] : list) {
            names.push_back(row.file.path);
        }
        return names;
    }
    const ShopRow& at(const std::string& path) const {
        for (const auto& [id, row] : list) {
            if (row.file.path == path) {
                return row;
            }
        }
        throw std::out_of_range(path);
    }
    bool isRoot() const { return ::geteuid() == 0; }

    Folder shop, cache;
    ShopIndex index;
    ShopScan scan;
    std::map<std::int64_t, ShopRow> list;
};

TEST_F(Scan, lists_the_records_of_a_folder_and_its_subfolders_without_a_trace) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    write(shop / "2024/b.CAPRAIL", shortLedger("Ines Roth", "six"));
    write(shop / "2024/old/c.caprail", shortLedger("Bea Lund", "four", "burr on rail"));
    std::ofstream(shop / "2024/list.txt") << "no record";
    std::ofstream(shop / "2024/letter.caprail") << "Dear sir";
    write(shop / ".trash/gone.caprail", shortLedger("x", "y"));
    const auto before = traceOf(shop.path());
    const ScanReport report = run();
    EXPECT_EQ(traceOf(shop.path()), before);
    EXPECT_TRUE(report.isWhole);
    EXPECT_THAT(paths(),
                UnorderedElementsAre("a.caprail", "2024/b.CAPRAIL", "2024/old/c.caprail", "2024/letter.caprail"));
    EXPECT_EQ(at("2024/old/c.caprail").reading, FileReading::assessed);
    EXPECT_EQ(at("2024/letter.caprail").reading, FileReading::foreign);
    EXPECT_THAT(at("2024/letter.caprail").sentence, HasSubstr("not a build record"));
    EXPECT_THAT(*index.search("burr lund"), ElementsAre(at("2024/old/c.caprail").id)) << "notes are found";
    EXPECT_THAT(*index.search("letter"), ElementsAre(at("2024/letter.caprail").id));
}

TEST_F(Scan, reads_again_only_what_has_changed) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    write(shop / "b.caprail", shortLedger("Ines Roth", "six"));
    EXPECT_EQ(run().assessed, 2U);
    EXPECT_EQ(run().summarised, 0U);
    {
        auto file = RecordFile::open(shop / "a.caprail", OpenMode::readWrite);
        ASSERT_TRUE(file->append({morning.milliseconds + 60'000}, "Jon", NoteAdded{"", "oil hole chamfered"}));
    }
    const ScanReport second = run();
    EXPECT_EQ(second.summarised, 1U);
    EXPECT_EQ(second.assessed, 1U);
    EXPECT_EQ(at("a.caprail").summary.who, "Jon");
    EXPECT_THAT(*index.search("chamf"), ElementsAre(at("a.caprail").id));
}

TEST_F(Scan, begins_with_what_the_index_knows) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    run();
    list.clear();
    ShopIndex again = *ShopIndex::open(cache.path(), shop.path());
    ShopScan next(again, shop.path());
    ASSERT_TRUE(next.load(events()));
    EXPECT_EQ(list.size(), 1U);
    const auto report = next.run({}, events());
    ASSERT_TRUE(report);
    EXPECT_EQ(report->summarised, 0U);
}

TEST_F(Scan, drops_what_is_gone_and_follows_what_is_renamed) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    write(shop / "b.caprail", shortLedger("Ines Roth", "six"));
    run();
    std::filesystem::rename(shop / "a.caprail", shop / "vale.caprail");
    std::filesystem::remove(shop / "b.caprail");
    run();
    EXPECT_THAT(paths(), ElementsAre("vale.caprail"));
    EXPECT_TRUE(index.search("ines")->empty());
}

TEST_F(Scan, keeps_the_list_of_a_share_that_vanished_and_says_so) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    run();
    std::filesystem::rename(shop.path(), cache / "away");
    const ScanReport report = run();
    EXPECT_THAT(report.rootProblem, HasSubstr("is not there"));
    EXPECT_THAT(paths(), ElementsAre("a.caprail"));
    EXPECT_EQ(index.rows()->size(), 1U);
    std::filesystem::rename(cache / "away", shop.path());
    EXPECT_TRUE(run().rootProblem.empty());
    EXPECT_EQ(list.size(), 1U);
}

TEST_F(Scan, keeps_what_it_knows_of_a_folder_that_may_not_be_read) {
    if (isRoot()) {
        // Rights do not bind root: a folder too deep is the other way to one that is not read.
        std::string deep = "d";
        for (int i = 0; i < 70; ++i) {
            deep += "/d";
        }
        std::filesystem::create_directories(shop / deep);
        const ScanReport report = run();
        ASSERT_EQ(report.unread.size(), 1U);
        EXPECT_THAT(report.unread.front().sentence, HasSubstr("does not answer"));
        return;
    }
    write(shop / "locked/a.caprail", shortLedger("Orrin Vale", "V8"));
    write(shop / "b.caprail", shortLedger("Ines Roth", "six"));
    run();
    std::filesystem::permissions(shop / "locked", std::filesystem::perms::none);
    const ScanReport report = run();
    ASSERT_EQ(report.unread.size(), 1U);
    EXPECT_THAT(report.unread.front().sentence, HasSubstr("may not be read"));
    EXPECT_EQ(list.size(), 2U);
}

TEST_F(Scan, gathers_the_records_that_a_file_or_a_folder_means_and_says_what_it_could_not_read) {
    write(shop / "b/two.caprail", shortLedger("Ines Roth", "six"));
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    std::string deep = "d";
    for (int i = 0; i < 70; ++i) {
        deep += "/d";
    }
    std::filesystem::create_directories(shop / deep);
    for (const char* end : {"", "/"}) {
        const auto records = recordsAt(shop.path() + end);
        ASSERT_TRUE(records) << records.error().sentence;
        EXPECT_TRUE(records->isFolder);
        EXPECT_THAT(records->paths, ElementsAre(shop / "a.caprail", shop / "b/two.caprail"));
        ASSERT_EQ(records->unread.size(), 1U);
    }
    EXPECT_THAT(recordsAt(shop / "nowhere")->paths, ElementsAre(shop / "nowhere")) << "who opens it says what it is";
    std::filesystem::create_directories(shop / "none");
    const auto none = recordsAt(shop / "none");
    ASSERT_FALSE(none);
    EXPECT_THAT(none.error().sentence, HasSubstr("holds no record"));
}

TEST_F(Scan, lists_names_of_any_bytes_on_one_line_and_loses_none) {
    const std::vector<std::string> names = {"two\nlines.caprail",
                                            "right \xD7\xA2\xD7\x91\xD7\xA8\xD7\x99\xD7\xAA.caprail",
                                            "turned \xE2\x80\xAE"
                                            "liarpac.caprail",
                                            "wrench \xF0\x9F\x94\xA7.caprail",
                                            "it's \"quoted\" %41?x#y&.caprail",
                                            "bad \xFF\xFE bytes.caprail",
                                            std::string(247, 'n') + ".caprail",
                                            "-rf.caprail"};
    for (const auto& name : names) {
        write(shop / "plain", shortLedger("Orrin Vale", "V8"));
        std::filesystem::rename(shop / "plain", shop / name);
    }
    run();
    ASSERT_EQ(list.size(), names.size());
    for (const auto& name : names) {
        EXPECT_EQ(at(name).reading, FileReading::assessed) << plainLine(name) << ": " << at(name).sentence;
        const std::string line = plainLine(name);
        EXPECT_EQ(line.find('\n'), std::string::npos);
        EXPECT_EQ(line.find("\xE2\x80\xAE"), std::string::npos) << "no mark turns the rest of the line";
        EXPECT_TRUE(isPlainUtf8(line));
    }
    EXPECT_EQ(plainLine("two\nlines"), "two↵lines");
}

TEST_F(Scan, does_not_follow_links_to_folders_but_reads_a_link_to_a_record) {
    write(cache / "elsewhere/a.caprail", shortLedger("Orrin Vale", "V8"));
    std::filesystem::create_directory_symlink(shop.path(), shop / "loop");
    std::filesystem::create_symlink(cache / "elsewhere/a.caprail", shop / "link.caprail");
    std::filesystem::create_symlink(cache / "nothing", shop / "broken.caprail");
    run();
    EXPECT_THAT(paths(), UnorderedElementsAre("link.caprail", "broken.caprail"));
    EXPECT_EQ(at("link.caprail").reading, FileReading::assessed);
    EXPECT_EQ(at("broken.caprail").reading, FileReading::unreadable);
}

TEST_F(Scan, stops_when_it_is_told_to_and_goes_on_later) {
    for (int i = 0; i < 40; ++i) {
        write(shop / (std::to_string(i) + ".caprail"), shortLedger("Orrin Vale", "V8"));
    }
    std::stop_source stop;
    auto told = events();
    const auto rows = told.rows;
    told.rows = [&](std::vector<ShopRow> some) {
        rows(std::move(some));
        stop.request_stop();
    };
    const auto report = scan.run(stop.get_token(), told);
    ASSERT_TRUE(report);
    EXPECT_FALSE(report->isWhole);
    EXPECT_EQ(report->assessed, 0U);
    EXPECT_EQ(run().assessed, 40U);
}

TEST_F(Scan, takes_over_what_another_window_has_read_already) {
    write(shop / "a.caprail", shortLedger("Orrin Vale", "V8"));
    ShopIndex otherIndex = *ShopIndex::open(cache.path(), shop.path());
    ShopScan other(otherIndex, shop.path());
    ASSERT_EQ(other.run({}, {})->assessed, 1U);
    const ScanReport report = run();
    EXPECT_EQ(report.summarised, 0U);
    EXPECT_EQ(report.assessed, 0U);
    EXPECT_EQ(at("a.caprail").reading, FileReading::assessed);
}

TEST_F(Scan, of_two_windows_at_the_same_moment_ends_with_the_same_list) {
    for (int i = 0; i < 30; ++i) {
        write(shop / (std::to_string(i) + ".caprail"), shortLedger("Orrin Vale", "V8"));
    }
    Result<ScanReport> theirs = refuse("not run");
    std::thread other([&] {
        auto otherIndex = ShopIndex::open(cache.path(), shop.path());
        ShopScan otherScan(*otherIndex, shop.path());
        theirs = otherScan.run({}, {});
    });
    const ScanReport mine = run();
    other.join();
    ASSERT_TRUE(theirs) << theirs.error().sentence;
    EXPECT_TRUE(mine.isWhole);
    EXPECT_EQ(list.size(), 30U);
    EXPECT_EQ(index.rows()->size(), 30U);
}

TEST_F(Scan, lists_for_the_command_line_the_newest_first_and_searches) {
    Ledger old = shortLedger("Orrin Vale", "V8");
    Maker maker("Jon Berg", {morning.milliseconds + 1'000'000});
    maker.begin("Ines Roth", "six");
    write(shop / "a.caprail", old);
    write(shop / "b.caprail", maker.ledger);
    const auto all = listShop(cache / "other", shop.path());
    ASSERT_TRUE(all) << all.error().sentence;
    ASSERT_EQ(all->rows.size(), 2U);
    EXPECT_EQ(all->rows.front().summary.customer, "Ines Roth");
    const auto found = listShop(cache / "other", shop.path(), "berg");
    ASSERT_TRUE(found);
    ASSERT_EQ(found->rows.size(), 1U);
    EXPECT_EQ(found->rows.front().file.path, "b.caprail");
    EXPECT_THAT(listShop(cache / "other", shop / "none").error().sentence, HasSubstr("not a folder that can be read"));
}

} // namespace
} // namespace caprail
