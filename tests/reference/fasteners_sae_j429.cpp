// SPDX-License-Identifier: GPL-3.0-or-later
// Source: SAE J429, «Mechanical and material requirements for externally threaded fasteners», table 1 (proof stress)
// and its table of proof loads. The standard itself was not seen; proof stresses were seen in china-bolts.com, «SAE
// J429 mechanical and physical property», the loads in a scanned reproduction of the table (lfportal.everettwa.gov,
// document 454746, page 13; entries that the scan garbles are left out).
#include <fasteners/grade.h>
#include <gtest/gtest.h>

using namespace caprail;

TEST(SaeJ429, states_the_proof_stresses_of_grades_5_and_8) {
    const auto proof = [](StandardGrade grade, const char* name) {
        return inPsi(*Grade::of(grade).proofStress(*parseThread(name)));
    };
    EXPECT_NEAR(proof(StandardGrade::sae5, "1/4-20"), 85'000, 0.1);
    EXPECT_NEAR(proof(StandardGrade::sae5, "1-8"), 85'000, 0.1);
    EXPECT_NEAR(proof(StandardGrade::sae5, "1 1/8-7"), 74'000, 0.1);
    EXPECT_NEAR(proof(StandardGrade::sae5, "1 1/2-6"), 74'000, 0.1);
    EXPECT_NEAR(proof(StandardGrade::sae8, "1/4-20"), 120'000, 0.1);
    EXPECT_NEAR(proof(StandardGrade::sae8, "1 1/2-6"), 120'000, 0.1);
}

TEST(SaeJ429, tabulates_the_proof_loads_of_grades_5_and_8) {
    struct Row {
        const char* name;
        double grade5;
        double grade8; ///< lbf, as printed
    };
    constexpr Row rows[] = {
        {"1/4-20", 2'700, 3'800},      {"5/16-18", 4'450, 6'300},   {"3/8-16", 6'600, 9'300},
        {"7/16-14", 9'050, 12'800},    {"5/8-11", 19'200, 27'100},  {"3/4-10", 28'400, 40'100},
        {"7/8-9", 39'300, 55'400},     {"1 1/8-7", 56'500, 91'600}, {"1 1/4-7", 71'700, 116'300},
        {"1 1/2-6", 104'000, 168'600}, {"1/4-28", 3'100, 4'350},    {"3/8-24", 7'450, 10'500},
    };
    for (const Row& row : rows) {
        const Thread thread = *parseThread(row.name);
        const auto load = [&](StandardGrade grade) { return inPoundsForce(*proofLoad(thread, Grade::of(grade))); };
        // Printed to the nearest 50 lbf up to 10 000 and to the nearest 100 above, from an area of three or four
        // figures.
        const auto step = [](double printed) { return (printed < 10'000 ? 25.0 : 50.0) + 0.002 * printed; };
        EXPECT_NEAR(load(StandardGrade::sae5), row.grade5, step(row.grade5)) << row.name;
        EXPECT_NEAR(load(StandardGrade::sae8), row.grade8, step(row.grade8)) << row.name;
    }
}
