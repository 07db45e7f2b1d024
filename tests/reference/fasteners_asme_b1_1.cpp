// SPDX-License-Identifier: GPL-3.0-or-later
// Source: ASME B1.1, «Unified inch screw threads», tensile stress areas of the UNC and UNF series, and the basic pitch
// diameters of UNF. The standard itself was not seen; the figures were seen in tables that reproduce it:
//   UNF: boltport.com/threads/unf (columns pitch diameter, tensile stress area);
//   UNC: engineersedge.com, «ANSI inch size thread stress and shear areas», and formulafactory.tools, «Unified thread
//   dimensions», which agree. (The former misprints 7/16-14; the latter has 0.1063.)
#include <fasteners/thread.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

struct Row {
    const char* name;
    double squareInches;
    double lastDigit; ///< one step of the last digit that the table prints
};

} // namespace

TEST(AsmeB1_1, tabulates_the_stress_areas_that_the_formula_gives) {
    constexpr Row rows[] = {
        // UNC
        {"#8-32", 0.0140, 1e-4},
        {"#10-24", 0.0175, 1e-4},
        {"1/4-20", 0.0318, 1e-4},
        {"5/16-18", 0.0524, 1e-4},
        {"3/8-16", 0.0775, 1e-4},
        {"7/16-14", 0.1063, 1e-4},
        {"1/2-13", 0.1419, 1e-4},
        {"9/16-12", 0.182, 1e-3},
        {"5/8-11", 0.226, 1e-3},
        {"3/4-10", 0.334, 1e-3},
        {"7/8-9", 0.462, 1e-3},
        {"1-8", 0.606, 1e-3},
        // UNF
        {"#10-32", 0.0200, 1e-4},
        {"1/4-28", 0.0364, 1e-4},
        {"5/16-24", 0.058, 1e-3},
        {"3/8-24", 0.0878, 1e-4},
        {"7/16-20", 0.1187, 1e-4},
        {"1/2-20", 0.1599, 1e-4},
        {"9/16-18", 0.203, 1e-3},
        {"5/8-18", 0.256, 1e-3},
        {"3/4-16", 0.373, 1e-3},
        {"7/8-14", 0.509, 1e-3},
        {"1-12", 0.663, 1e-3},
        {"1 1/2-12", 1.581, 1e-3},
    };
    for (const Row& row : rows) {
        const auto thread = parseThread(row.name);
        ASSERT_TRUE(thread) << row.name;
        // Half of the last digit, and a little for an area that falls on the edge between two.
        EXPECT_NEAR(inSquareInches(thread->stressArea()), row.squareInches, 0.6 * row.lastDigit) << row.name;
    }
}

TEST(AsmeB1_1, tabulates_the_basic_pitch_diameters_and_unr_minor_diameters) {
    struct Diameters {
        const char* name;
        double pitch;
        double minor;
    };
    constexpr Diameters rows[] = {
        {"1/4-28", 0.2268, 0.2074},  {"5/16-24", 0.2854, 0.2629}, {"3/8-24", 0.3479, 0.3254},
        {"7/16-20", 0.4050, 0.3780}, {"1/2-20", 0.4675, 0.4405},  {"9/16-18", 0.5264, 0.4964},
        {"5/8-18", 0.5889, 0.5589},  {"7/8-14", 0.8286, 0.7900},
    };
    for (const Diameters& row : rows) {
        const auto thread = parseThread(row.name);
        ASSERT_TRUE(thread) << row.name;
        EXPECT_NEAR(inInches(thread->pitchDiameter()), row.pitch, 0.6e-4) << row.name;
        EXPECT_NEAR(inInches(thread->minorDiameter()), row.minor, 1e-4) << row.name; // some are cut off, not rounded
    }
}
