// SPDX-License-Identifier: GPL-3.0-or-later
// Hooke's law over sections in series, δ = Σ F·L/(A·E), worked by hand; the law needs no source, the stress area of the
// threaded part is that of ASME B1.1 (0.0878 in² for 3/8-24, seen at boltport.com/threads/unf).
#include <fasteners/movement.h>
#include <fasteners/stretch.h>
#include <gtest/gtest.h>

using namespace caprail;

TEST(SteppedBolt, stretches_as_worked_by_hand_in_inches) {
    // Rod bolt, F = 9000 lbf, E = 30 000 000 psi:
    //   waist    0.3125 in × 1.200 in: A = 0.7853982·0.3125² = 0.0766990 in²; 9000·1.2/(0.0766990·30e6) = 0.00469373 in
    //   pilot    0.3750 in × 0.300 in: A = 0.1104466 in²; 9000·0.3/(0.1104466·30e6)                     = 0.00081487 in
    //   thread   3/8-24    × 0.400 in: A = 0.0878 in²;    9000·0.4/(0.0878·30e6)                        = 0.00136674 in
    //   sum 0.00687534 in
    const std::vector<BoltSection> bolt{*BoltSection::shank(inches(1.2), inches(0.3125)),
                                        *BoltSection::shank(inches(0.3), inches(0.375)),
                                        *BoltSection::threaded(inches(0.4), *parseThread("3/8-24"))};
    const auto stretch = stretchUnder(poundsForce(9'000), bolt, psi(30e6), Units{});
    ASSERT_TRUE(stretch);
    EXPECT_NEAR(inInches(stretch->value), 0.0068753, 1e-6);
    const auto force = forceFromStretch(inches(0.0068753), bolt, psi(30e6), Units{});
    ASSERT_TRUE(force);
    EXPECT_NEAR(inPoundsForce(force->value), 9'000, 2);
}

TEST(SteppedBolt, stretches_as_worked_by_hand_in_millimetres) {
    // Stud, F = 50 kN, E = 205 GPa: shank 10 mm × 80 mm, A = 78.5398 mm²: 50000·80/(78.5398·205000) = 0.248437 mm;
    // neck 8.5 mm × 40 mm, A = 56.7450 mm²: 50000·40/(56.7450·205000) = 0.171929 mm; sum 0.420366 mm.
    const std::vector<BoltSection> stud{*BoltSection::shank(millimetres(80), millimetres(10)),
                                        *BoltSection::shank(millimetres(40), millimetres(8.5))};
    const auto stretch = stretchUnder(newtons(50'000), stud, steelModulus, Units{});
    ASSERT_TRUE(stretch);
    EXPECT_NEAR(inMillimetres(stretch->value), 0.420366, 3e-6);
}

TEST(NutMovement, advances_as_worked_by_hand) {
    // A thread advances by its pitch in a turn. 7/16-20: P = 0.05 in; 10° is 0.05·10/360 = 0.00138889 in = 35 278 nm.
    EXPECT_EQ(axialAdvance(*parseThread("7/16-20"), degrees(10)), nanometres(35'278));
    // M12: 1.75 mm · 15/360 = 0.0729167 mm.
    EXPECT_EQ(axialAdvance(*parseThread("M12"), degrees(15)), nanometres(72'917));
}
