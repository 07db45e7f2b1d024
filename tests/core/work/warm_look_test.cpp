// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <work/warm_look.h>

namespace caprail {
namespace {

FilmQuestion under(double pounds) {
    FilmQuestion question = usualFilmQuestion();
    question.load = poundsForce(pounds);
    return question;
}

Result<std::vector<BearingFilm>> filmsOf(const WorkBench& bench, const Warming& warming, const FilmQuestion& question) {
    return bearingFilms(warmClearances(bench.facts, bench.assessment, warming), warming.blockNow, question, inchUnits);
}

TEST(WarmLook, sees_each_measured_clearance_at_the_temperatures_named) {
    WorkBench bench;
    bench.tightenAll();
    EXPECT_TRUE(warmClearances(bench.facts, bench.assessment, usualWarming()).empty());
    bench.bearings();
    Warming warming = usualWarming();
    warming.block = millionthsPerKelvin(22.3);
    const auto list = warmClearances(bench.facts, bench.assessment, warming);
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list[0].bearing, (JournalId{JournalKind::main, 1}));
    ASSERT_TRUE(list[0].warm);
    // By hand: the journal × (22.3·70 − 12.3·70)·10⁻⁶ on top of what was measured.
    EXPECT_NEAR(inInches(*list[0].warm - list[0].asMeasured), inInches(list[0].journal) * 10.0 * 70 * 1e-6, 1e-7);
    warming.blockNow = celsius(900);
    EXPECT_FALSE(warmClearances(bench.facts, bench.assessment, warming)[0].warm);
    const auto films = filmsOf(bench, warming, under(3000));
    ASSERT_FALSE(films);
    EXPECT_NE(films.error().sentence.find("200 °C"), std::string::npos) << films.error().sentence;
}

TEST(WarmLook, tells_no_film_until_somebody_names_a_load_and_something_is_measured) {
    WorkBench bench;
    bench.tightenAll();
    const auto unmeasured = filmsOf(bench, usualWarming(), under(3000));
    ASSERT_FALSE(unmeasured);
    EXPECT_EQ(unmeasured.error().sentence,
              "No clearance is measured with a micrometer yet: measure journals and bores first.");
    bench.bearings();
    const auto unloaded = filmsOf(bench, usualWarming(), usualFilmQuestion());
    ASSERT_FALSE(unloaded);
    EXPECT_NE(unloaded.error().sentence.find("mPa·s. No load is named"), std::string::npos);
}

TEST(WarmLook, tells_the_film_of_each_bearing_as_measured_and_warm) {
    WorkBench bench;
    bench.tightenAll();
    bench.bearings();
    Warming warming = usualWarming();
    warming.block = millionthsPerKelvin(21.5);
    const auto films = filmsOf(bench, warming, under(3000));
    ASSERT_TRUE(films) << films.error().sentence;
    ASSERT_EQ(films->size(), 3U);
    const BearingFilm& first = films->front();
    ASSERT_TRUE(first.asMeasured && first.warm);
    EXPECT_GT(first.running.clearance, *bench.assessment.clearances.at(first.bearing).clearance);
    EXPECT_EQ(first.warm->least, oilFilm(first.running)->least);
    EXPECT_LT(first.warm->sommerfeld, first.asMeasured->sommerfeld) << "more room, the same oil";
    EXPECT_EQ(first.warm->unitLoad, first.asMeasured->unitLoad);
}

TEST(WarmLook, says_of_one_bearing_why_it_has_no_film_and_tells_the_others) {
    WorkBench bench;
    bench.tightenAll();
    bench.bearings();
    // A crank so hot that its clearance is gone.
    Warming warming = usualWarming();
    warming.crankNow = celsius(300);
    warming.crank = millionthsPerKelvin(30);
    const auto films = filmsOf(bench, warming, under(3000));
    ASSERT_TRUE(films) << films.error().sentence;
    EXPECT_TRUE(films->front().asMeasured);
    ASSERT_FALSE(films->front().warm);
    EXPECT_FALSE(films->front().warm.error().sentence.empty());
}

TEST(WarmLook, reads_coefficients_and_viscosities_as_they_are_printed) {
    EXPECT_EQ(*parseExpansion("11,4", "the block"), millionthsPerKelvin(11.4));
    EXPECT_EQ(*parseExpansion(" steel 4340 ", "the crank"), millionthsPerKelvin(12.3));
    EXPECT_EQ(parseExpansion("iron", "the block").error().sentence,
              "“iron” is not a coefficient for the block: type millionths per kelvin, 11.4 for grey cast iron.");
    EXPECT_EQ(*parseViscosity("18,5", "100 °C"), 18.5);
    for (const char* text : {"", "0", "-3", "thick", "1e3"}) {
        const auto read = parseViscosity(text, "40 °C");
        ASSERT_FALSE(read) << text;
        EXPECT_NE(read.error().sentence.find("at 40 °C: type mm²/s"), std::string::npos) << read.error().sentence;
    }
}

} // namespace
} // namespace caprail
