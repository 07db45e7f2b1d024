// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/across.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::ElementsAre;
using testing::HasSubstr;

AcrossRecord record(const std::string& label, double bore, const std::vector<std::string>& moving,
                    const std::string& person) {
    Maker maker(person);
    maker.begin(label, "V8");
    maker.tightenAll();
    maker.bearings(2.4480, bore);
    maker.round(moving);
    return {label, 1, figuresOf(maker.ledger)};
}

class Across : public testing::Test {
protected:
    const std::vector<AcrossRecord> records{record("Vale", 2.4500, {"main-2R", "rod-1L"}, "Mira"),
                                            record("Roth", 2.4503, {"main-2R"}, "Jon"),
                                            record("Lund", 2.4509, {}, "Jon")};
};

TEST_F(Across, gives_range_and_median_of_a_banded_quantity_place_by_place) {
    EXPECT_THAT(bandsIn(records), ElementsAre("main clearance"));
    const auto values = valuesOf(records, "main clearance");
    ASSERT_EQ(values.size(), 9U);
    EXPECT_EQ(values.front().label, "Vale");
    const auto spreads = spreadsOf(values);
    ASSERT_EQ(spreads.size(), 3U);
    EXPECT_EQ(spreads[1].place, "main-2");
    EXPECT_EQ(spreads[1].count, 3U);
    EXPECT_EQ(spreads[1].smallest, inches(0.0020));
    EXPECT_EQ(spreads[1].median, inches(0.0023));
    EXPECT_EQ(spreads[1].largest, inches(0.0029));
    EXPECT_EQ(spreads[1].out, 1U) << "0.0029 in lies above the band of 0.0018 to 0.0025 in";
}

TEST_F(Across, counts_movements_out_of_how_many_pulls_and_claims_no_more) {
    const auto byFastener = movementsBy(records, MovementBy::fastener);
    EXPECT_EQ(byFastener.front(), (MovementCount{"main-2R", 3, 2, degrees(4)}));
    EXPECT_EQ(byFastener[1], (MovementCount{"rod-1L", 3, 1, degrees(4)}));
    const auto byPerson = movementsBy(records, MovementBy::person);
    EXPECT_THAT(byPerson,
                ElementsAre(MovementCount{"Mira", 10, 2, degrees(4)}, MovementCount{"Jon", 20, 1, degrees(4)}));
    EXPECT_THAT(movementsBy(records, MovementBy::wrench), ElementsAre(MovementCount{"W1", 30, 3, degrees(4)}));
}

TEST_F(Across, lists_instruments_by_the_day_that_they_fall_due) {
    const auto due = instrumentsDue(records);
    ASSERT_EQ(due.size(), 6U) << "those that nobody gave a date come last";
    EXPECT_EQ(due[0].name, "MIC-1");
    EXPECT_EQ(due[0].due, Date{20'600});
    EXPECT_EQ(due[0].records, 3U);
    EXPECT_EQ(due[1].name, "W1");
    EXPECT_EQ(format(*due[1].due), "2027-02-16") << "a wrench without a date of its own: a year after 2026-02-16";
    EXPECT_EQ(due[1].dueCycles, 5000);
    EXPECT_EQ(due[1].cycles, 20) << "ten fasteners tightened and pulled again, in one record";
}

TEST_F(Across, writes_tables_that_a_spreadsheet_reads) {
    const std::string values = valuesCsv(valuesOf(records, "main clearance"), "main clearance", {});
    EXPECT_THAT(values, HasSubstr("quantity,place,record,build,value_in,state\r\n"));
    EXPECT_THAT(values, HasSubstr("main clearance,main-1,Lund,1,0.0029,out\r\n"));
    EXPECT_THAT(movementsCsv(movementsBy(records, MovementBy::person), MovementBy::person),
                HasSubstr("person,pulled,moved,largest_deg\r\nMira,10,2,4.0\r\n"));
    EXPECT_THAT(instrumentsCsv(instrumentsDue(records)), HasSubstr("MIC-1,,micrometer,,2026-05-27,3,0,\r\n"));
}

TEST(AcrossPlaces, stand_in_the_engines_order) {
    std::vector<AcrossRecord> records(1);
    for (const char* place : {"main-10", "main-2", "10L", "2R", "2L"}) {
        records[0].figures.banded.push_back({1, "x", place, thou(1), CheckState::good});
    }
    std::vector<std::string> places;
    for (const auto& spread : spreadsOf(valuesOf(records, "x"))) {
        places.push_back(spread.place);
    }
    EXPECT_THAT(places, ElementsAre("2L", "2R", "10L", "main-2", "main-10"));
}

TEST(AcrossBand, is_drawn_only_where_all_values_were_judged_by_the_same) {
    std::vector<AcrossRecord> records(2);
    const Band usual = *Band::between(thou(1.8), thou(2.5));
    records[0].figures.banded.push_back({1, "x", "main-1", thou(2), CheckState::good, usual});
    records[1].figures.banded.push_back({1, "x", "main-1", thou(2.2), CheckState::good, usual});
    EXPECT_EQ(commonBand(valuesOf(records, "x")), usual);
    records[1].figures.banded[0].limits = *Band::between(thou(2), thou(3));
    EXPECT_FALSE(commonBand(valuesOf(records, "x")));
    records[1].figures.banded[0].limits.reset();
    EXPECT_FALSE(commonBand(valuesOf(records, "x"))) << "one of them was judged by none";
    EXPECT_FALSE(commonBand({}));
    EXPECT_EQ(figuresFrom(toBytes(records[0].figures))->banded, records[0].figures.banded) << "kept in the index";
}

} // namespace
} // namespace caprail
