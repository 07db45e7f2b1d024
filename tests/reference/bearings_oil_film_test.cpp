// SPDX-License-Identifier: GPL-3.0-or-later
/// The oil film.
/// - A. A. Raimondi, J. Boyd, ASLE Transactions 1 (1958), the charts of h0/c: L/D 1, S 0.13 gives 0.40 as read off a
///   chart (seen in a textbook's example); the tables of S from memory.
/// - F. W. Ocvirk, NACA TN 2808 (1952): the short bearing, from memory.
/// - ASTM D341, the viscosity-temperature line, from memory; the third point of a mineral oil (ISO VG 46:
///   46 mm²/s at 40 °C, 6.8 at 100 °C) is a range that data sheets give (common practice, no source).
#include <bearings/oil.h>
#include <bearings/oil_film.h>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace caprail;

TEST(OilFilm, agrees_with_the_chart_for_a_bearing_as_wide_as_its_journal) {
    EXPECT_NEAR(*filmByCharts(0.13, 1), 0.40, 0.025);
    EXPECT_NEAR(*filmByCharts(0.121, 1), 0.40, 1e-9) << "the table's own point";
    EXPECT_NEAR(*filmByCharts(0.319, 0.5), 0.40, 1e-9);
    EXPECT_NEAR(*filmByCharts(2.83, 0.25), 0.60, 1e-9);
}

TEST(OilFilm, comes_near_to_the_short_bearing_where_that_holds) {
    for (const double s : {0.3, 1.0, 3.0, 8.0}) {
        EXPECT_NEAR(filmOfShortBearing(s, 0.25) / *filmByCharts(s, 0.25), 1, 0.08) << s;
    }
    // The form itself, at a known eccentricity.
    const double e = 0.7;
    const double s =
        std::pow(1 - e * e, 2) /
        (std::numbers::pi * e * std::sqrt(std::numbers::pi * std::numbers::pi * (1 - e * e) + 16 * e * e)) /
        (0.3 * 0.3);
    EXPECT_NEAR(filmOfShortBearing(s, 0.3), 0.3, 1e-9);
}

TEST(OilFilm, of_a_short_bearing_has_an_answer_for_every_load_however_light_or_heavy) {
    using std::numbers::pi;
    EXPECT_NEAR((1 - filmOfShortBearing(1e6, 0.1)) * pi * pi * 1e4, 1, 1e-6) << "ε = 1/(π²·S(L/D)²)";
    EXPECT_NEAR((1 - filmOfShortBearing(1.0001e6, 0.1)) * pi * pi * 1.0001e4, 1, 1e-6) << "and no step on the way";
    EXPECT_GT(filmOfShortBearing(1e11, 0.1), 1 - 1e-9);
    EXPECT_NEAR(filmOfShortBearing(1e-10, 0.1), std::sqrt(pi * 1e-12), 1e-10);
    EXPECT_GT(filmOfShortBearing(1e-40, 0.1), 0);
    // One newton on a tight bearing full of cold, thick oil.
    const auto light = oilFilm({inches(2.75), inches(0.85), tenths(1), 100'000, newtons(1), 100'000});
    ASSERT_TRUE(light) << light.error().sentence;
    EXPECT_LT(light->share, 1);
    EXPECT_GT(light->share, 0.9999);
}

TEST(OilFilm, is_thicker_the_faster_the_wider_and_the_less_loaded) {
    double before = 0;
    for (double s = 0.01; s < 30; s *= 1.1) {
        for (const double l : {0.25, 0.4, 0.75, 1.0, 1.5}) {
            const auto share = filmByCharts(s, l);
            if (share && l == 0.75) {
                EXPECT_GT(*share, before);
                EXPECT_LT(*share, 1);
                before = *share;
            }
        }
    }
    EXPECT_LT(*filmByCharts(0.5, 0.3), *filmByCharts(0.5, 0.6));
    EXPECT_LT(*filmByCharts(0.5, 0.6), *filmByCharts(0.5, 1.2));
}

TEST(OilFilm, has_one_clearance_at_which_it_is_thickest_whatever_the_width) {
    for (const double width : {0.65, 0.85, 1.1, 1.6, 2.6, 4.0}) {
        RunningBearing bearing{inches(2.448), inches(width), {}, 6000, poundsForce(3000), 11.3};
        int turns = 0;
        bool isRising = true;
        Length before;
        for (int tenth = 1; tenth < 80; ++tenth) {
            bearing.clearance = tenths(tenth);
            const auto film = oilFilm(bearing);
            if (!film) {
                break; // too wide: the charts end
            }
            const bool rises = film->least >= before;
            turns += rises == isRising ? 0 : 1;
            isRising = rises;
            before = film->least;
        }
        EXPECT_LE(turns, 1) << width << " in wide";
        EXPECT_GT(before, Length());
    }
}

TEST(OilFilm, works_out_a_main_bearing_step_by_step) {
    // 2.75 in journal, 0.85 in wide, 0.0025 in, 6 000 rpm, 3 000 lbf, 10 mPa·s: P = 1 283 psi, r/c = 1 100,
    // S = 1 100² · 0.010 · 100 / 8.849e6 = 0.1367.
    const auto film = oilFilm({inches(2.75), inches(0.85), inches(0.0025), 6000, poundsForce(3000), 10});
    ASSERT_TRUE(film) << film.error().sentence;
    EXPECT_NEAR(inPsi(film->unitLoad), 1283.4, 0.5);
    EXPECT_NEAR(film->sommerfeld, 0.1367, 0.0002);
    ASSERT_TRUE(film->shortShare);
    EXPECT_NEAR(*film->shortShare / film->share, 1, 0.2);
    EXPECT_NEAR(inInches(film->least), film->share * 0.00125, 1e-7);
}

TEST(OilFilm, refuses_what_the_charts_do_not_hold_for) {
    EXPECT_FALSE(oilFilm({inches(2.75), inches(0.85), Length(), 6000, poundsForce(3000), 10}));
    EXPECT_FALSE(oilFilm({inches(2.75), inches(0.85), inches(0.0025), 6000, Force(), 10}));
    EXPECT_FALSE(oilFilm({inches(2.75), inches(0.1), inches(0.0025), 6000, poundsForce(3000), 10}));
    const auto touching = oilFilm({inches(2.75), inches(0.85), inches(0.0025), 30, poundsForce(9000), 2});
    ASSERT_FALSE(touching);
    EXPECT_NE(touching.error().sentence.find("the surfaces would touch"), std::string::npos);
}

Oil oilOf(const OilGrade& grade) {
    return {{celsius(40), grade.at40}, {celsius(100), grade.at100}};
}

TEST(OilViscosity, passes_through_both_published_points_and_falls_between_them) {
    const Oil oil = oilOf(commonGrades()[0]);
    EXPECT_NEAR(*kinematicViscosity(oil, celsius(40)), 64, 1e-9);
    EXPECT_NEAR(*kinematicViscosity(oil, celsius(100)), 11, 1e-9);
    EXPECT_GT(*kinematicViscosity(oil, celsius(70)), 20);
    EXPECT_LT(*kinematicViscosity(oil, celsius(70)), 28);
    EXPECT_LT(*kinematicViscosity(oil, celsius(130)), 7);
    EXPECT_NEAR(*dynamicViscosity(oil, celsius(100)), 11 * (0.870 - 0.00065 * 85), 1e-9);
}

TEST(OilViscosity, goes_on_to_a_third_point_of_a_mineral_oil) {
    // ISO VG 46 of index about 100: its sheets give some 130 to 160 mm²/s at 20 °C.
    const Oil oil{{celsius(40), 46}, {celsius(100), 6.8}};
    EXPECT_GT(*kinematicViscosity(oil, celsius(20)), 120);
    EXPECT_LT(*kinematicViscosity(oil, celsius(20)), 165);
}

TEST(OilViscosity, refuses_points_that_no_oil_has) {
    EXPECT_FALSE(kinematicViscosity({{celsius(40), 64}, {celsius(40), 11}}, celsius(70)));
    EXPECT_FALSE(kinematicViscosity({{celsius(40), 11}, {celsius(100), 64}}, celsius(70)));
    EXPECT_FALSE(kinematicViscosity({{celsius(40), 64}, {celsius(100), 0.5}}, celsius(70)));
    EXPECT_FALSE(kinematicViscosity(oilOf(commonGrades()[1]), celsius(400)));
}

} // namespace
