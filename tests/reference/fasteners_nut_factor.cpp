// SPDX-License-Identifier: GPL-3.0-or-later
// The short form T = K·D·F, asked for F.
//   Formula: NASA RP-1228, R. T. Barrett, «Fastener Design Manual» (1990), «Fastener torque», p. 15: from memory (its
//   contents page was seen, the page was not; no worked figure of it is claimed here).
//   Worked figures: «Mechanical fastening, joining, and assembly», p. 85 (five nut factors on one screw), seen;
//   coxhardware.com, «Torque values», table for SAE J429 grade 2 (dry, K = 0.20, clamp force 75 % of proof), seen;
//   its 5/16-18 line (11.5 lbf·ft for 2162 lbf) contradicts its own K and is left out.
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;

TEST(NutFactor, gives_the_preload_of_the_worked_example_for_a_number_ten_screw) {
    // D = 0.190 in, F = 1275 lbf; the printed values are lbf·in to a tenth.
    struct Row {
        double nutFactor;
        double inchPounds;
    };
    constexpr Row rows[] = {{0.30, 72.7}, {0.25, 60.6}, {0.20, 48.5}, {0.15, 36.3}, {0.10, 24.2}};
    const Thread screw = *parseThread("#10-32");
    for (const Row& row : rows) {
        const auto force = preloadShortForm(poundInches(row.inchPounds), screw, row.nutFactor, Units{});
        ASSERT_TRUE(force);
        EXPECT_NEAR(inPoundsForce(force->value), 1'275, 1'275 * 0.06 / row.inchPounds) << row.nutFactor;
    }
}

TEST(NutFactor, gives_the_published_dry_torques_and_clamp_forces_of_grade_2) {
    struct Row {
        const char* name;
        double footPounds;
        double clampPounds;
    };
    constexpr Row rows[] = {
        {"1/4-20", 5.4, 1'312},  {"5/16-24", 12.5, 2'397}, {"3/8-16", 20.0, 3'197},   {"7/16-14", 32.0, 4'385},
        {"1/2-13", 48.8, 5'853}, {"5/8-11", 97.1, 9'323},  {"3/8-24", 22.6, 3'622},   {"7/16-20", 35.7, 4'896},
        {"1/2-20", 55.0, 6'600}, {"9/16-18", 78.5, 8'374}, {"5/8-18", 110.0, 10'560}, {"3/4-16", 192.0, 15'366},
    };
    const Grade two = *Grade::ofProofStress(psi(55'000));
    for (const Row& row : rows) {
        const Thread thread = *parseThread(row.name);
        const auto force = preloadShortForm(poundFeet(row.footPounds), thread, 0.20, Units{});
        ASSERT_TRUE(force) << row.name;
        // As close as the last digit printed of the torque allows.
        EXPECT_NEAR(inPoundsForce(force->value), row.clampPounds, row.clampPounds * 0.1 / row.footPounds) << row.name;
        const auto share = shareOfProof(poundsForce(row.clampPounds), thread, two, usualScatter, Units{});
        ASSERT_TRUE(share) << row.name;
        EXPECT_NEAR(share->nominal, 0.75, 0.003) << row.name;
    }
}
