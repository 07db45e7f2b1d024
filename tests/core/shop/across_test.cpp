// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/across.h>
#include <shop/listing_pages.h>
#include <shop/shop_index.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::ElementsAre;
using testing::HasSubstr;

/// An index that holds the figures of some records.
class Compared {
public:
    Compared() : m_index(*ShopIndex::inMemory("/srv/engines")) {}
    void add(const std::string& customer, const RecordFigures& figures, const std::string& templateName = {}) {
        ShopRow row;
        row.file.path = std::to_string(++m_count) + ".caprail";
        row.reading = FileReading::assessed;
        row.summary.customer = customer;
        row.summary.engine = "V8";
        row.summary.templateName = templateName;
        ASSERT_TRUE(m_index.put(row, customer, figures));
    }
    Across across(AcrossOf of = {}) { return Across(m_index.connection(), std::move(of)); }
    Connection& connection() { return m_index.connection(); }
    std::vector<AcrossValue> values(const std::string& band) {
        std::vector<AcrossValue> all;
        EXPECT_TRUE(across().eachValue(band, [&](AcrossValue value) { all.push_back(std::move(value)); }));
        return all;
    }

private:
    ShopIndex m_index;
    int m_count = 0;
};

RecordFigures figuresWith(double bore, const std::vector<std::string>& moving, const std::string& person) {
    Maker maker(person);
    maker.begin("x", "V8");
    maker.tightenAll();
    maker.bearings(2.4480, bore);
    maker.round(moving);
    return figuresOf(maker.ledger);
}

BandedFigure figure(const std::string& place, double value, CheckState state = CheckState::good) {
    return {1, "x", place, thou(value), state};
}

class AcrossEngines : public testing::Test {
protected:
    AcrossEngines() {
        compared.add("Vale", figuresWith(2.4500, {"main-2R", "rod-1L"}, "Mira"), "Street");
        compared.add("Roth", figuresWith(2.4503, {"main-2R"}, "Jon"), "Street");
        compared.add("Lund", figuresWith(2.4509, {}, "Jon"), "Race");
    }
    Compared compared;
};

TEST_F(AcrossEngines, have_a_range_and_a_median_of_a_banded_quantity_at_each_place) {
    EXPECT_THAT(*compared.across().bands(), ElementsAre("main clearance"));
    const auto values = compared.values("main clearance");
    ASSERT_EQ(values.size(), 9U);
    EXPECT_EQ(values.front().label, "Vale, V8");
    const auto spreads = compared.across().spreads("main clearance");
    ASSERT_TRUE(spreads) << spreads.error().sentence;
    ASSERT_EQ(spreads->places.size(), 3U);
    EXPECT_EQ(spreads->values, 9);
    const AcrossSpread& second = spreads->places[1];
    EXPECT_EQ(second.place, "main-2");
    EXPECT_EQ(second.count, 3);
    EXPECT_EQ(second.smallest, inches(0.0020));
    EXPECT_EQ(second.median, inches(0.0023));
    EXPECT_EQ(second.largest, inches(0.0029));
    EXPECT_EQ(second.out, 1) << "0.0029 in lies above the band of 0.0018 to 0.0025 in";
}

TEST_F(AcrossEngines, of_one_template_are_compared_by_themselves) {
    EXPECT_EQ(*compared.across().records(), 3);
    EXPECT_EQ(*compared.across().pulls(), 30);
    const auto templates = compared.across().templates();
    ASSERT_TRUE(templates);
    ASSERT_EQ(templates->size(), 2U);
    EXPECT_EQ((*templates)[1].name, "Street");
    EXPECT_EQ((*templates)[1].records, 2);
    Across street = compared.across({"Street", ""});
    EXPECT_EQ(*street.records(), 2);
    EXPECT_EQ(*street.pulls(), 20);
    EXPECT_THAT(*street.bands(), ElementsAre("main clearance"));
    const auto spreads = street.spreads("main clearance");
    EXPECT_EQ(spreads->values, 6);
    EXPECT_EQ(spreads->places[1].median, inches(0.0020)) << "the lower of the two in the middle";
    EXPECT_EQ(spreads->places[1].largest, inches(0.0023));
    EXPECT_EQ(street.instruments()->front().records, 2);
    EXPECT_EQ(*compared.across({"Nobody's", ""}).records(), 0);
}

TEST_F(AcrossEngines, count_movements_out_of_how_many_pulls_and_claim_no_more) {
    const auto byFastener = *compared.across().movements(MovementBy::fastener);
    EXPECT_EQ(byFastener.front(), (MovementCount{"main-2R", 3, 2, degrees(4)}));
    EXPECT_EQ(byFastener[1], (MovementCount{"rod-1L", 3, 1, degrees(4)}));
    EXPECT_THAT(*compared.across().movements(MovementBy::person),
                ElementsAre(MovementCount{"Mira", 10, 2, degrees(4)}, MovementCount{"Jon", 20, 1, degrees(4)}));
    EXPECT_THAT(*compared.across().movements(MovementBy::wrench), ElementsAre(MovementCount{"W1", 30, 3, degrees(4)}));
}

TEST_F(AcrossEngines, list_instruments_by_the_day_that_they_fall_due) {
    const auto due = *compared.across().instruments();
    ASSERT_EQ(due.size(), 6U) << "those that nobody gave a date come last";
    EXPECT_EQ(due[0].name, "MIC-1");
    EXPECT_EQ(due[0].due, Date{20'600});
    EXPECT_EQ(due[0].records, 3);
    EXPECT_EQ(due[1].name, "W1");
    EXPECT_EQ(format(*due[1].due), "2027-02-16") << "a wrench without a date of its own: a year after 2026-02-16";
    EXPECT_EQ(due[1].dueCycles, 5000);
    EXPECT_EQ(due[1].cycles, 20) << "ten fasteners tightened and pulled again, in one record";
}

TEST_F(AcrossEngines, are_written_as_tables_that_a_spreadsheet_reads) {
    const Folder folder;
    Across across = compared.across();
    ASSERT_TRUE(writeValues(across, "main clearance", {}, folder / "spread.csv"));
    std::ifstream file(folder / "spread.csv", std::ios::binary);
    const std::string values((std::istreambuf_iterator<char>(file)), {});
    EXPECT_THAT(values, HasSubstr("quantity,place,record,build,value_in,state\r\n"));
    EXPECT_THAT(values, HasSubstr("main clearance,main-1,\"Lund, V8\",1,0.0029,out\r\n"));
    EXPECT_THAT(movementsCsv(*compared.across().movements(MovementBy::person), MovementBy::person),
                HasSubstr("person,pulled,moved,largest_deg\r\nMira,10,2,4.0\r\n"));
    EXPECT_THAT(instrumentsCsv(*compared.across().instruments()), HasSubstr("MIC-1,,micrometer,,2026-05-27,3,0,\r\n"));
}

TEST(AcrossPlaces, stand_in_the_engines_order) {
    Compared compared;
    RecordFigures figures;
    for (const char* place : {"main-10", "main-2", "10L", "2R", "2L", ""}) {
        figures.banded.push_back(figure(place, 1));
    }
    compared.add("Vale", figures);
    std::vector<std::string> places;
    const AcrossSpreads spreads = *compared.across().spreads("x");
    for (const AcrossSpread& spread : spreads.places) {
        places.push_back(spread.place);
    }
    EXPECT_THAT(places, ElementsAre("", "2L", "2R", "10L", "main-2", "main-10"));
}

TEST(AcrossBand, is_told_only_where_all_values_were_judged_by_the_same) {
    const Band usual = *Band::between(thou(1.8), thou(2.5));
    const auto commonOf = [&](std::optional<Band> second) {
        Compared compared;
        for (const std::optional<Band>& limits : {std::optional(usual), second}) {
            RecordFigures figures;
            figures.banded.push_back({1, "x", "main-1", thou(2), CheckState::good, limits});
            compared.add("Vale", figures);
        }
        return compared.across().spreads("x")->band;
    };
    EXPECT_EQ(commonOf(usual), usual);
    EXPECT_FALSE(commonOf(*Band::between(thou(2), thou(3))));
    EXPECT_FALSE(commonOf(std::nullopt)) << "one of them was judged by none";
    EXPECT_FALSE(Compared().across().spreads("x")->band);
}

TEST(AcrossOneEngine, with_a_state_that_nobody_wrote_is_no_comparison) {
    Compared compared;
    compared.add("Vale", {{figure("main-1", 1)}, {}, {}});
    EXPECT_EQ(compared.values("x").size(), 1U);
    ASSERT_TRUE(compared.connection().run("UPDATE banded SET state = 77"));
    const auto read = compared.across().eachValue("x", [](const AcrossValue&) {});
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().sentence, HasSubstr("no program of this version wrote"));
}

} // namespace
} // namespace caprail
