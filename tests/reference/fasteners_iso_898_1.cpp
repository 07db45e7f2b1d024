// SPDX-License-Identifier: GPL-3.0-or-later
// Source: ISO 898-1, «Mechanical properties of fasteners: bolts, screws and studs», tables of nominal stress areas and
// proof loads. The standard itself was not seen; the coarse figures were seen in reproductions of its tables:
//   optimas.com, «ISO metric pitch thread proof loads» (EN ISO 898-1, coarse, all classes), and
//   slsbearings.com, «Tensile strength» (ISO 898-1, coarse). Both agree.
// The stress areas of fine threads are from memory of the same standard.
#include <fasteners/grade.h>
#include <gtest/gtest.h>

using namespace caprail;

TEST(Iso898_1, tabulates_the_stress_areas_that_the_formula_gives) {
    struct Row {
        const char* name;
        double squareMillimetres;
        double lastDigit;
    };
    constexpr Row rows[] = {
        // coarse, seen
        {"M4", 8.78, 0.01},
        {"M5", 14.2, 0.1},
        {"M6", 20.1, 0.1},
        {"M7", 28.9, 0.1},
        {"M8", 36.6, 0.1},
        {"M10", 58.0, 0.1},
        {"M12", 84.3, 0.1},
        {"M14", 115, 1},
        {"M16", 157, 1},
        {"M18", 192, 1},
        {"M20", 245, 1},
        {"M22", 303, 1},
        {"M24", 353, 1},
        {"M30", 561, 1},
        {"M39", 976, 1},
        // fine, from memory
        {"M8x1", 39.2, 0.1},
        {"M10x1.25", 61.2, 0.1},
        {"M10x1", 64.5, 0.1},
        {"M12x1.5", 88.1, 0.1},
        {"M12x1.25", 92.1, 0.1},
        {"M14x1.5", 125, 1},
        {"M16x1.5", 167, 1},
    };
    for (const Row& row : rows) {
        const auto thread = parseThread(row.name);
        ASSERT_TRUE(thread) << row.name;
        EXPECT_NEAR(inSquareMillimetres(thread->stressArea()), row.squareMillimetres, 0.6 * row.lastDigit) << row.name;
    }
}

TEST(Iso898_1, tabulates_the_proof_loads_of_the_coarse_threads) {
    struct Row {
        const char* name;
        double class8_8;
        double class10_9;
        double class12_9; ///< all in N, as printed (three figures)
    };
    constexpr Row rows[] = {
        {"M6", 11'600, 16'700, 19'500},     {"M8", 21'200, 30'400, 35'500},     {"M10", 33'700, 48'100, 56'300},
        {"M12", 48'900, 70'000, 81'800},    {"M14", 66'700, 95'500, 112'000},   {"M16", 91'000, 130'000, 152'000},
        {"M18", 115'000, 159'000, 186'000}, {"M20", 147'000, 203'000, 238'000}, {"M24", 212'000, 293'000, 342'000},
    };
    for (const Row& row : rows) {
        const Thread thread = *parseThread(row.name);
        const auto load = [&](StandardGrade grade) { return inNewtons(*proofLoad(thread, Grade::of(grade))); };
        // The tables multiply areas rounded to three figures, and round or cut off to three again (M6 of 8.8: 20.1 ×
        // 580 = 11 658, printed 11 600): 0.7 % holds both.
        EXPECT_NEAR(load(StandardGrade::iso8_8), row.class8_8, 0.007 * row.class8_8) << row.name;
        EXPECT_NEAR(load(StandardGrade::iso10_9), row.class10_9, 0.007 * row.class10_9) << row.name;
        EXPECT_NEAR(load(StandardGrade::iso12_9), row.class12_9, 0.007 * row.class12_9) << row.name;
    }
}
