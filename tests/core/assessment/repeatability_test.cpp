// SPDX-License-Identifier: GPL-3.0-or-later
/// Whose readings scatter how much: pooled over places that were read twice or more while nothing changed there.
#include "bench.h"

#include <assessment/repeatability.h>
#include <cmath>
#include <ledger/band_names.h>

namespace caprail {
namespace {

/// All that a ledger holds, collected in small pieces.
ReadingsByPerson readingsOf(const Ledger& ledger) {
    ReadingsGathering gathering;
    while (!gathering.takeMore(ledger, 7)) {
    }
    return gathering.readings();
}

const Position first{1, Side::left};
const Position second{2, Side::right};

std::optional<PersonalRepeatability> of(const Bench& bench, MeasuredQuantity quantity) {
    for (const auto& one : readingsOf(bench.ledger).pooled()) {
        if (one.quantity == quantity) {
            return one;
        }
    }
    return {};
}

TEST(PersonalRepeatability, pools_the_scatter_over_places_read_twice) {
    Bench bench;
    bench.layIn();
    for (const double thousandths : {50.0, 51.0}) {
        bench.make(GapReading{first, thousandths > 50 ? 2 : 1, {thou(thousandths), ""}, ""});
    }
    for (const double thousandths : {60.0, 62.0}) {
        bench.make(GapReading{second, thousandths > 60 ? 2 : 1, {thou(thousandths), ""}, ""});
    }
    const auto gaps = of(bench, MeasuredQuantity::gap);
    ASSERT_TRUE(gaps && gaps->scatter);
    EXPECT_EQ(gaps->person, "Mira");
    EXPECT_EQ(gaps->readings, 4U);
    EXPECT_EQ(gaps->places, 2U);
    EXPECT_DOUBLE_EQ(gaps->scatter->degreesOfFreedom, 2);
    // By hand: s1² = 0.5, s2² = 2 (thou²), one degree of freedom each; s = sqrt(1.25) thou.
    EXPECT_NEAR(gaps->scatter->standardDeviation, std::sqrt(1.25) * 25'400, 1e-6);
}

TEST(PersonalRepeatability, keeps_readings_before_and_after_a_movement_apart) {
    Bench bench;
    bench.layIn();
    bench.tightenAll();
    bench.make(GapReading{first, 1, {thou(50), ""}, ""});
    bench.make(FastenerTightened{
        {FastenerKind::mainCap, 1, Side::left, Ring::inner}, Entered<Torque>{poundFeet(70), ""}, {}, {}, "W1"});
    bench.make(GapReading{first, 1, {thou(53), ""}, ""});
    const auto gaps = of(bench, MeasuredQuantity::gap);
    ASSERT_TRUE(gaps);
    EXPECT_EQ(gaps->readings, 2U);
    EXPECT_EQ(gaps->places, 0U) << "the cap moved between them";
    EXPECT_FALSE(gaps->scatter);
}

TEST(PersonalRepeatability, leaves_struck_readings_out) {
    Bench bench;
    bench.layIn();
    bench.make(GapReading{first, 1, {thou(50), ""}, ""});
    const auto wrong = bench.make(GapReading{first, 2, {thou(55), ""}, ""});
    bench.make(Struck{wrong, "misread"});
    bench.make(GapReading{first, 2, {thou(50), ""}, ""});
    const auto gaps = of(bench, MeasuredQuantity::gap);
    ASSERT_TRUE(gaps && gaps->scatter);
    EXPECT_EQ(gaps->readings, 2U);
    EXPECT_EQ(gaps->scatter->standardDeviation, 0);
}

TEST(PersonalRepeatability, tells_instruments_apart) {
    Bench bench;
    bench.layIn();
    bench.make(InstrumentAdded{"F1", InstrumentType::feelerGauge, "", "", {}, {}, {}, {}, {}, {}, {}});
    bench.make(InstrumentAdded{"F2", InstrumentType::feelerGauge, "", "", {}, {}, {}, {}, {}, {}, {}});
    for (const char* with : {"F1", "F2"}) {
        bench.make(GapReading{first, 1, {thou(50), ""}, with});
    }
    const auto all = readingsOf(bench.ledger).pooled();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].instrument, "F1");
    EXPECT_EQ(all[1].instrument, "F2");
    EXPECT_FALSE(all[0].scatter) << "one reading each scatters not";
}

TEST(CrossedReadings, are_the_largest_study_that_the_record_holds) {
    Bench bench;
    bench.layIn();
    bench.make(PersonAdded{"Arlo", "assembler"});
    const auto read = [&](const char* person, Position p, int pass, double thousandths) {
        const Entry& entry = bench.ledger.append({1'700'000'000'000 + bench.ledger.size() * 1000}, person,
                                                 GapReading{p, pass, {thou(thousandths), ""}, ""});
        apply(bench.facts, entry);
    };
    int n = 0;
    for (const Position p : bench.facts.layout->positions()) {
        for (int pass = 1; pass <= 2; ++pass) {
            read("Mira", p, pass, 50 + n + 0.1 * pass);
            read("Arlo", p, pass + 2, 50.5 + n + 0.1 * pass);
        }
        n += 2;
    }
    read("Mira", first, 5, 50); // one reading more does not make a third pass
    const auto crossed = readingsOf(bench.ledger).crossed(MeasuredQuantity::gap);
    EXPECT_EQ(crossed.people, (std::vector<std::string>{"Arlo", "Mira"}));
    EXPECT_EQ(crossed.places.size(), 6U);
    EXPECT_EQ(crossed.passes, 2);
    ASSERT_EQ(crossed.readings.size(), 24U);
    EXPECT_EQ(crossed.counts.at("1L").at("Mira"), 3);
    const auto study = repeatabilityStudy(crossed.readings, Units{});
    ASSERT_TRUE(study) << study.error().sentence;
    // By hand: within each cell the readings differ by 0.1 thou, so s = 0.1/√2; the people differ by 0.5 thou, so their
    // standard deviation is √(0.5²/2 − s²/12) with the interaction, which is nil, pooled into repeatability.
    EXPECT_NEAR(study->reproducibility, 0.5 / std::sqrt(2.0) * 25'400, 0.01 * 25'400);
    EXPECT_LT(study->repeatability, 0.08 * 25'400);
    EXPECT_GT(study->placeToPlace, 2 * 25'400);
}

TEST(CrossedReadings, hold_nothing_while_no_two_places_were_read_twice) {
    Bench bench;
    bench.layIn();
    bench.make(GapReading{first, 1, {thou(50), ""}, ""});
    bench.make(GapReading{first, 2, {thou(50), ""}, ""});
    bench.make(GapReading{second, 1, {thou(60), ""}, ""});
    const auto crossed = readingsOf(bench.ledger).crossed(MeasuredQuantity::gap);
    EXPECT_TRUE(crossed.people.empty());
    EXPECT_TRUE(crossed.readings.empty());
    EXPECT_EQ(crossed.counts.at("2R").at("Mira"), 1) << "what is missing can be seen";
}

TEST(Repeatability, collected_while_the_ledger_grows_is_what_it_is_when_collected_at_the_end) {
    Ledger ledger;
    const auto read = [&](int pass, int tenth) {
        ledger.append({pass}, "Ann", GapReading{{1, Side::right}, pass, {tenths(500 + tenth), ""}, "FEEL-1"});
    };
    const auto readings = [](const ReadingsGathering& gathering) {
        const auto all = gathering.readings().pooled();
        return all.empty() ? std::size_t{0} : all.front().readings;
    };
    ReadingsGathering gathering;
    EXPECT_TRUE(gathering.takeMore(ledger, 1)) << "of an empty ledger there is nothing to take";
    read(1, 0);
    read(2, 3);
    EXPECT_FALSE(gathering.takeMore(ledger, 1));
    EXPECT_TRUE(gathering.takeMore(ledger, 5));
    EXPECT_EQ(readings(gathering), 2U);
    ledger.append({3}, "Ann", Struck{1, "read at another place"});
    while (!gathering.takeMore(ledger, 1)) {
    }
    EXPECT_EQ(readings(gathering), 1U) << "as if the struck one had never been made";
    read(3, 4);
    EXPECT_TRUE(gathering.takeMore(ledger, 1)) << "only what is new";
    EXPECT_EQ(readings(gathering), 2U);
    Ledger other;
    other.append({1}, "Ben", GapReading{{1, Side::right}, 1, {tenths(500), ""}, "FEEL-1"});
    while (!gathering.takeMore(other, 1)) {
    }
    EXPECT_EQ(readings(gathering), 1U);
    EXPECT_EQ(gathering.readings().pooled().front().person, "Ben");
}

TEST(StudyBand, is_the_one_that_the_readings_serve) {
    Bench bench;
    CrossedReadings crossed;
    crossed.quantity = MeasuredQuantity::gap;
    EXPECT_EQ(bandOfStudy(bench.facts, crossed)->band, Band::between(-thou(0.5), thou(0.5)).value());
    crossed.quantity = MeasuredQuantity::journal;
    crossed.places = {"main-1, station 1, direction 1"};
    EXPECT_EQ(bandOfStudy(bench.facts, crossed)->name, bands::mainClearance);
    crossed.places.emplace_back("rod-1, station 1, direction 1");
    bench.band(bands::rodClearance, 1.6, 2.0);
    EXPECT_EQ(bandOfStudy(bench.facts, crossed)->name, bands::rodClearance) << "the narrower of the two";
    crossed.quantity = MeasuredQuantity::fit;
    crossed.places = {"ring gap, place 1", "ring gap, place 2"};
    EXPECT_FALSE(bandOfStudy(bench.facts, crossed)) << "no band is set";
    bench.band("ring gap", 16, 20);
    EXPECT_EQ(bandOfStudy(bench.facts, crossed)->name, "ring gap");
    bench.band("other gap", 1, 2);
    crossed.places.emplace_back("other gap, place 1");
    EXPECT_FALSE(bandOfStudy(bench.facts, crossed)) << "no one band goes with both";
    crossed.quantity = MeasuredQuantity::pickup;
    EXPECT_EQ(bandOfStudy(bench.facts, crossed)->name, bands::pickupClearance);
}

} // namespace
} // namespace caprail
