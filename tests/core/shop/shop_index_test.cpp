// SPDX-License-Identifier: GPL-3.0-or-later
#include "figures_of.h"
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/index_file.h>
#include <shop/shop_index.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::ElementsAre;
using testing::IsEmpty;

ShopRow row(const std::string& path, const std::string& customer) {
    ShopRow r;
    r.file = {path, 4096, 7, 8, 9};
    r.reading = FileReading::assessed;
    // Every member has a value of its own: one that is lost on the way is seen.
    r.summary.customer = customer;
    r.summary.engine = "6.2 V8";
    r.summary.serial = "KL-2207";
    r.summary.who = "Jon";
    r.summary.entries = 412;
    r.summary.build = 4;
    r.summary.pulled = 26;
    r.summary.moved = 1;
    r.summary.templateName = "Inline six";
    r.summary.layout = "5 mains of 2";
    r.summary.state = JobState::closingOpen;
    r.summary.roundResult = RoundResult::moved;
    r.summary.round = 3;
    r.summary.out = 2;
    r.summary.stale = 5;
    r.summary.due = Date{20'000};
    r.summary.people = "Mira\nJon";
    r.summary.lastEntry = morning;
    return r;
}

class Index : public testing::Test {
protected:
    ShopIndex open(const std::string& root = "/srv/engines") {
        auto index = ShopIndex::open(folder / "cache", root);
        EXPECT_TRUE(index) << (index ? "" : index.error().sentence);
        return std::move(*index);
    }
    std::int64_t put(ShopIndex& index, ShopRow r, const std::string& words) {
        const auto done = index.put(r, words, {});
        EXPECT_TRUE(done) << (done ? "" : done.error().sentence);
        return r.id;
    }
    Folder folder;
};

TEST_F(Index, gives_back_every_field_of_a_row_at_the_next_start) {
    {
        ShopIndex index = open();
        put(index, row("sub/a.caprail", "Orrin Vale"), "words");
    }
    ShopIndex index = open();
    const auto rows = index.rows();
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 1U);
    const ShopRow expected = row("sub/a.caprail", "Orrin Vale");
    EXPECT_EQ(rows->front().file, expected.file);
    EXPECT_EQ(rows->front().summary, expected.summary);
    EXPECT_EQ(rows->front().reading, FileReading::assessed);
}

TEST_F(Index, finds_words_by_their_beginning_in_any_case_and_without_accents) {
    ShopIndex index = open();
    const auto a = put(index, row("a.caprail", "x"), "Orrin Vale\n6.2 V8\nspun a rod bearing");
    const auto b = put(index, row("b.caprail", "x"), "José Müller\nstraight six");
    const auto search = [&](const char* typed) { return *index.search(typed); };
    EXPECT_THAT(search("orr"), ElementsAre(a));
    EXPECT_THAT(search("VAL spu"), ElementsAre(a));
    EXPECT_THAT(search("6.2"), ElementsAre(a)) << "the point parts two words, as it does in the index";
    EXPECT_THAT(search("jose mull"), ElementsAre(b));
    EXPECT_THAT(search("caprail"), ElementsAre(a, b)) << "the file's name counts too";
    EXPECT_THAT(search("vale six"), IsEmpty()) << "every word must be there";
}

TEST_F(Index, a_word_that_was_typed_before_finds_what_was_written_since_here_or_by_another_window) {
    ShopIndex index = open();
    const auto a = put(index, row("a.caprail", "x"), "Orrin Vale");
    EXPECT_THAT(*index.search("vale or"), ElementsAre(a));
    const auto b = put(index, row("b.caprail", "x"), "Vale and Orchard");
    EXPECT_THAT(*index.search("vale or"), ElementsAre(a, b));
    EXPECT_THAT(*index.search("vale vale orc"), ElementsAre(b));
    ShopIndex other = open();
    const auto c = put(other, row("c.caprail", "x"), "the Orchid, Vale");
    EXPECT_THAT(*index.search("vale orc"), ElementsAre(b, c));
    ASSERT_TRUE(other.remove(b));
    EXPECT_THAT(*index.search("vale orc"), ElementsAre(c));
    EXPECT_FALSE(index.together([&]() -> Result<void> {
        put(index, row("d.caprail", "x"), "Orca Vale");
        EXPECT_EQ(index.search("vale orc")->size(), 2U);
        return refuse("no");
    }));
    EXPECT_THAT(*index.search("vale orc"), ElementsAre(c)) << "what was undone is not found";
}

TEST_F(Index, takes_what_is_typed_as_words_and_never_as_a_query) {
    ShopIndex index = open();
    put(index, row("a.caprail", "x"), "Orrin \"the wrench\" Vale");
    for (const char* typed :
         {"\"", "the\" OR x", "words:", "NEAR(", "orrin*", "-vale", "(", "'; DROP TABLE record", "^the"}) {
        EXPECT_TRUE(index.search(typed)) << typed;
    }
    EXPECT_EQ(index.search("\"wrench\" vale")->size(), 1U);
    EXPECT_FALSE(ShopIndex::hasWords("  —…\" "));
    EXPECT_TRUE(ShopIndex::hasWords("ß"));
}

TEST_F(Index, replaces_the_row_of_a_path_and_forgets_what_is_removed) {
    ShopIndex index = open();
    const auto id = put(index, row("a.caprail", "first"), "first");
    EXPECT_EQ(put(index, row("a.caprail", "second"), "second"), id);
    EXPECT_THAT(*index.search("first"), IsEmpty());
    EXPECT_THAT(*index.search("second"), ElementsAre(id));
    ASSERT_TRUE(index.remove(id));
    EXPECT_THAT(*index.search("second"), IsEmpty());
    EXPECT_THAT(*index.rows(), IsEmpty());
}

TEST_F(Index, undoes_a_batch_that_was_refused) {
    ShopIndex index = open();
    EXPECT_FALSE(index.together([&]() -> Result<void> {
        put(index, row("a.caprail", "x"), "x");
        return refuse("no");
    }));
    EXPECT_THAT(*index.rows(), IsEmpty());
}

TEST_F(Index, is_made_anew_when_it_is_damaged_or_of_another_version) {
    const std::string path = indexPath(folder / "cache", "/srv/engines");
    {
        ShopIndex index = open();
        put(index, row("a.caprail", "x"), "x");
    }
    {
        auto database = Database::open(path, Access::ownFile);
        ASSERT_TRUE((*database)->run("PRAGMA user_version = 999"));
    }
    EXPECT_THAT(*open().rows(), IsEmpty());
    std::ofstream(path, std::ios::trunc) << "no database at all, but long enough to be taken for one "
                                         << std::string(4000, 'x');
    EXPECT_THAT(*open().rows(), IsEmpty());
}

TEST_F(Index, of_another_folder_is_another_one) {
    ShopIndex one = open("/srv/one");
    put(one, row("a.caprail", "x"), "x");
    ShopIndex two = open("/srv/two");
    EXPECT_THAT(*two.rows(), IsEmpty());
}

TEST_F(Index, serves_two_windows_at_once) {
    ShopIndex one = open();
    ShopIndex two = open();
    for (int i = 0; i < 20; ++i) {
        put(i % 2 == 0 ? one : two, row(std::to_string(i) + ".caprail", "x"), "shared");
    }
    EXPECT_EQ(one.rows()->size(), 20U);
    EXPECT_EQ(two.search("shared")->size(), 20U);
}

TEST_F(Index, keeps_customers_names_from_other_users) {
    (void)open();
    struct stat info {};
    ASSERT_EQ(::stat((folder / "cache").c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0700U);
}

TEST_F(Index, refuses_a_cache_folder_that_cannot_be_made) {
    std::ofstream(folder / "file").flush();
    const auto index = ShopIndex::open(folder / "file/cache", "/srv");
    ASSERT_FALSE(index);
    EXPECT_NE(index.error().sentence.find("cannot be made"), std::string::npos);
}

TEST_F(Index, gives_figures_back_as_they_were_put) {
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    maker.readyToClose();
    maker.round({"main-1L"});
    const RecordFigures figures = figuresOf(maker.ledger);
    ASSERT_FALSE(figures.banded.empty());
    ASSERT_FALSE(figures.pulls.empty());
    ASSERT_EQ(figures.instruments.size(), 6U);
    ShopIndex index = open();
    ShopRow r = row("a.caprail", "x");
    ASSERT_TRUE(index.put(r, "x", {}));
    ASSERT_TRUE(index.put(r, "x", figures)) << "in place of none";
    ASSERT_TRUE(index.put(r, "x", figures)) << "and of themselves";
    EXPECT_EQ(figuresIn(index, r.id), figures);
    ASSERT_TRUE(index.remove(r.id));
    EXPECT_EQ(figuresIn(index, r.id), RecordFigures());
}

} // namespace
} // namespace caprail
