// SPDX-License-Identifier: GPL-3.0-or-later
/// The list and the comparison of engines are asked by the same statements of an index and of a shop's database: both
/// give the same answers.
#include "publishing.h"

#include <shop/across.h>
#include <shop/list_columns.h>
#include <shop/listing_pages.h>
#include <shop/shop_index.h>

namespace caprail {
namespace {

using namespace servertest;
using shoptest::Maker;
using testing::ElementsAre;

/// Some records, published and in an index of a folder alike.
class BothLists : public Publishing {
protected:
    void SetUp() override {
        Publishing::SetUp();
        if (IsSkipped()) {
            return;
        }
        Connection bench = as("bench_1");
        RecordPublisher publisher(bench);
        const auto add = [&](int number, const std::string& customer, const std::string& templateName, bool isFar) {
            Maker maker(number % 2 == 0 ? "Mira" : "Jon", {shoptest::morning.milliseconds + number * 1000});
            maker.begin(customer, "V8", "KL-" + std::to_string(number), templateName);
            if (isFar) {
                maker.tightenAll();
                maker.bearings(2.4480, 2.4500 + 0.0001 * (number % 5));
                maker.round(number % 3 == 0 ? std::vector<std::string>{"main-2R"} : std::vector<std::string>{});
            }
            const std::string name = std::to_string(number) + ".caprail";
            shoptest::write(folder / name, maker.ledger);
            const auto sent = publisher.publish(folder / name);
            ASSERT_TRUE(sent) << sent.error().sentence;
            RecordDigest d = digest(maker.ledger);
            ShopRow row{0, {name, 1, 2, 3, 4}, FileReading::assessed, "", d.summary};
            ASSERT_TRUE(index.put(row, d.words, d.figures));
        };
        add(1, "José Müller", "Street", true);
        add(2, "Orrin Vale", "Street", true);
        add(10, "ada Okoro", "Race", true);
        add(9, "Ada Okoro", "Race", true);
        add(3, "", "", false);
        database.emplace(as("reader_1"));
    }
    std::vector<std::string> serials(Connection& connection, const ListingWish& wish) {
        std::vector<std::string> names;
        for (std::int64_t from = 0;; from += 2) {
            const auto page = ListingPages(connection).page(wish, from, 2);
            EXPECT_TRUE(page) << page.error().sentence;
            if (!page || page->empty()) {
                return names;
            }
            for (const ShopRow& row : *page) {
                names.push_back(row.summary.serial);
            }
        }
    }
    void expectAlike(const ListingWish& wish, std::size_t count) {
        auto here = serials(index.connection(), wish);
        auto there = serials(*database, wish);
        EXPECT_EQ(there.size(), count) << wish.search << wish.order;
        EXPECT_EQ(*ListingPages(*database).count(wish), static_cast<std::int64_t>(count));
        std::ranges::sort(here);
        std::ranges::sort(there);
        EXPECT_EQ(here, there) << wish.search << wish.order;
    }

    ShopIndex index = *ShopIndex::inMemory("/srv/engines");
    std::optional<Connection> database;
};

TEST_F(BothLists, find_the_same_records_by_words_and_filters) {
    const auto wish = [](const std::string& search, ListFilter filter = {}) {
        return ListingWish{.search = search, .filter = std::move(filter), .now = shoptest::morning};
    };
    expectAlike(wish(""), 5);
    expectAlike(wish("jose mull"), 1);
    expectAlike(wish("JOSÉ"), 1);
    expectAlike(wish("okoro kl"), 2);
    expectAlike(wish("okoro vale"), 0);
    expectAlike(wish("'); DROP TABLE listing; --"), 0);
    expectAlike(wish("\""), 0);
    expectAlike(wish("okoro \xCC\x81"), 2);
    expectAlike(wish("okoro \"&' \xEF\xB1\x9E"), 2);
    expectAlike(wish("\xCC\x81"), 0);
    expectAlike(wish(std::string(5000, 'x')), 0);
    expectAlike(wish("", {.person = "Jon"}), 3);
    expectAlike(wish("", {.state = ListFilter::State::needsAttention}), 1);
    expectAlike(wish("", {.state = ListFilter::State::signedOff}), 0);
    expectAlike(wish("", {.state = ListFilter::State::unreadable}), 0);
    expectAlike(wish("", {.due = ListFilter::Due::soon}), 5);
    expectAlike(wish("", {.due = ListFilter::Due::overdue}), 0);
    for (const auto& column : listColumns()) {
        ListingWish ordered = wish("");
        ordered.order = column.name;
        expectAlike(ordered, 5);
    }
}

TEST_F(BothLists, stand_in_the_order_of_a_column_and_a_database_knows_numbers_in_names) {
    ListingWish wish{.order = "engine", .isDescending = false, .now = shoptest::morning};
    EXPECT_THAT(serials(*database, wish), ElementsAre("KL-1", "KL-2", "KL-3", "KL-9", "KL-10"));
    wish.isDescending = true;
    EXPECT_THAT(serials(*database, wish), ElementsAre("KL-10", "KL-9", "KL-3", "KL-2", "KL-1"));
    wish.order = "calibration_due";
    Connection owner = as("postgres");
    for (Connection* connection : {&owner, &index.connection()}) {
        ASSERT_TRUE(connection->run("UPDATE listing SET calibration_due = NULL WHERE serial = 'KL-2'"));
    }
    EXPECT_EQ(serials(*database, wish).front(), "KL-2") << "no day is later than any";
    EXPECT_EQ(serials(index.connection(), wish).front(), "KL-2");
    wish.order = "last_entry";
    EXPECT_EQ(serials(*database, wish), serials(index.connection(), wish));
}

TEST_F(BothLists, have_the_same_groups_people_and_rows) {
    ListingWish wish{.grouping = ListingWish::Grouping::state, .now = shoptest::morning};
    const auto groups = ListingPages(*database).groups(wish);
    ASSERT_TRUE(groups) << groups.error().sentence;
    EXPECT_EQ(groups->size(), ListingPages(index.connection()).groups(wish)->size());
    wish.grouping = ListingWish::Grouping::customer;
    const auto customers = ListingPages(*database).groups(wish);
    ASSERT_TRUE(customers) << customers.error().sentence;
    std::int64_t all = 0;
    for (const ListingGroup& group : *customers) {
        all += group.records;
    }
    EXPECT_EQ(all, 5);
    EXPECT_THAT(*ListingPages(*database).people(), ElementsAre("Jon", "Mira"));
    EXPECT_THAT(*ListingPages(index.connection()).people(), ElementsAre("Jon", "Mira"));
    std::map<std::string, RecordSummary> here;
    ASSERT_TRUE(ListingPages(index.connection()).each({}, [&](const ShopRow& row) -> Result<void> {
        here[row.summary.serial] = row.summary;
        return {};
    }));
    int count = 0;
    ASSERT_TRUE(ListingPages(*database).each({}, [&](const ShopRow& row) -> Result<void> {
        EXPECT_EQ(row.summary, here[row.summary.serial]) << row.summary.serial;
        ++count;
        return {};
    }));
    EXPECT_EQ(count, 5);
}

TEST_F(BothLists, compare_engines_alike) {
    for (const AcrossOf& of : {AcrossOf(), AcrossOf{"Street", ""}}) {
        Across here(index.connection(), of);
        Across there(*database, of);
        ASSERT_TRUE(there.records()) << there.records().error().sentence;
        EXPECT_EQ(*there.records(), *here.records());
        EXPECT_EQ(*there.pulls(), *here.pulls());
        ASSERT_TRUE(there.bands()) << there.bands().error().sentence;
        EXPECT_EQ(*there.bands(), *here.bands());
        const std::vector<std::string> bands = *here.bands();
        for (const std::string& band : bands) {
            const auto a = here.spreads(band);
            const auto b = there.spreads(band);
            ASSERT_TRUE(b) << b.error().sentence;
            EXPECT_EQ(b->values, a->values);
            EXPECT_EQ(b->band, a->band);
            ASSERT_EQ(b->places.size(), a->places.size());
            for (std::size_t i = 0; i < a->places.size(); ++i) {
                EXPECT_EQ(b->places[i].place, a->places[i].place);
                EXPECT_EQ(b->places[i].median, a->places[i].median);
                EXPECT_EQ(b->places[i].out, a->places[i].out);
                EXPECT_EQ(b->places[i].largest, a->places[i].largest);
            }
            std::int64_t values = 0;
            ASSERT_TRUE(there.eachValue(band, [&](const AcrossValue&) { ++values; }));
            EXPECT_EQ(values, b->values);
        }
        for (const MovementBy by : {MovementBy::fastener, MovementBy::wrench, MovementBy::person}) {
            EXPECT_EQ(*there.movements(by), *here.movements(by));
        }
        EXPECT_EQ(there.instruments()->size(), here.instruments()->size());
        EXPECT_EQ(there.instruments()->front().due, here.instruments()->front().due);
        EXPECT_EQ(there.templates()->size(), 2U);
    }
}

TEST_F(BothLists, order_what_is_alike_alike_and_part_no_group) {
    Connection owner = as("postgres");
    for (Connection* connection : {&owner, &index.connection()}) {
        done(connection->run("UPDATE listing SET customer = 'ada Okoro', template = 'street' WHERE serial = 'KL-2'"));
        done(connection->run("DELETE FROM instrument"));
        done(connection->run("UPDATE banded SET value_nm = 1"));
        for (const int kind : {7, 2, 9, 0, 10, 4, 1, 8, 3, 6, 5}) {
            done(connection->run("INSERT INTO instrument SELECT max(id), 'M', " + std::to_string(kind) +
                                 ", '1', NULL, NULL, 0, NULL FROM listing"));
        }
    }
    const ListingWish wish{.grouping = ListingWish::Grouping::customer, .now = shoptest::morning};
    std::vector<std::vector<std::string>> said;
    for (Connection* connection : {&*database, &index.connection()}) {
        std::vector<std::string> groups, heads, all;
        const std::vector<ListingGroup> asked = *ListingPages(*connection).groups(wish);
        for (const ListingGroup& group : asked) {
            groups.push_back(group.customer);
        }
        const auto page = ListingPages(*connection).page(wish, 0, 100);
        ASSERT_TRUE(page) << page.error().sentence;
        for (const ShopRow& row : *page) {
            if (heads.empty() || heads.back() != row.summary.customer) {
                heads.push_back(row.summary.customer);
            }
        }
        EXPECT_EQ(heads, groups) << "the records of a group stand together, under its head";
        Across across(*connection);
        const std::vector<AcrossInstrument> instruments = *across.instruments();
        for (const AcrossInstrument& one : instruments) {
            all.emplace_back(word(one.type));
        }
        const std::vector<AcrossGroup> templates = *across.templates();
        for (const AcrossGroup& one : templates) {
            all.push_back(one.name);
        }
        const std::vector<std::string> bands = *across.bands();
        ASSERT_FALSE(bands.empty());
        done(across.eachValue(bands.front(), [&](const AcrossValue& value) { all.push_back(value.label); }));
        said.push_back(all);
    }
    EXPECT_EQ(said[0], said[1]);
    EXPECT_GT(said[0].size(), 18U);
}

TEST_F(BothLists, are_asked_again_after_the_server_was_lost) {
    cutOff("reader_1");
    const auto lost = ListingPages(*database).count({});
    ASSERT_FALSE(lost);
    EXPECT_TRUE(database->isOffline());
    EXPECT_FALSE(database->isOpen());
    ASSERT_TRUE(database->open());
    EXPECT_EQ(*ListingPages(*database).count({}), 5);
    ASSERT_TRUE(database->limitTo(std::chrono::milliseconds(50)));
    EXPECT_FALSE(database->run("SELECT pg_sleep(5)"));
    EXPECT_EQ(database->lastCode(), "57014");
    EXPECT_TRUE(database->isOffline()) << "it may be faster later";
    EXPECT_TRUE(database->isOpen());
}

} // namespace
} // namespace caprail
