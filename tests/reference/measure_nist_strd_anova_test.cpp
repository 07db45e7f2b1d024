// SPDX-License-Identifier: GPL-3.0-or-later
/// NIST Statistical Reference Datasets, one-way analysis of variance: SiRstv (resistivity of silicon wafers; Ehrstein
/// and Croarkin, lower level of difficulty) and AtmWtAg (atomic weight of silver; Powell, Murphy and Gramlich 1982,
/// average level of difficulty). Data and certified values seen, in a mirror of NIST's files SiRstv.dat and
/// AtmWtAg.dat.
#include <cmath>
#include <gmock/gmock.h>
#include <measure/variance_split.h>

using namespace caprail;

namespace {

double agreeingDigits(double value, double certified) {
    return value == certified ? 15 : -std::log10(std::abs(value - certified) / std::abs(certified));
}

} // namespace

TEST(NistStrdAnova, SiRstv) {
    const std::vector<std::vector<double>> instruments{{196.3052, 196.1240, 196.1890, 196.2569, 196.3403},
                                                       {196.3042, 196.3825, 196.1669, 196.3257, 196.0422},
                                                       {196.1303, 196.2005, 196.2889, 196.0343, 196.1811},
                                                       {196.2795, 196.1748, 196.1494, 196.1485, 195.9885},
                                                       {196.2119, 196.1051, 196.1850, 196.0052, 196.2090}};
    const auto split = oneWaySplit(instruments);
    ASSERT_TRUE(split);
    EXPECT_EQ(split->betweenFreedom, 4);
    EXPECT_EQ(split->withinFreedom, 20);
    EXPECT_GE(agreeingDigits(split->betweenSquares, 5.11462616000000E-02), 11);
    EXPECT_GE(agreeingDigits(split->withinSquares, 2.16636560000000E-01), 11);
    EXPECT_GE(agreeingDigits(split->betweenMeanSquare, 1.27865654000000E-02), 11);
    EXPECT_GE(agreeingDigits(split->withinMeanSquare, 1.08318280000000E-02), 11);
    EXPECT_GE(agreeingDigits(split->ratio, 1.18046237440255E+00), 11);
    EXPECT_GE(agreeingDigits(std::sqrt(split->withinVariance), 1.04076068334656E-01), 11);
}

TEST(NistStrdAnova, AtmWtAg) {
    const std::vector<std::vector<double>> instruments{
        {107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526, 107.8681494,
         107.8681616, 107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569, 107.8681508, 107.8681672,
         107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.8681360, 107.8681333, 107.8681610, 107.8681477},
        {107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365,
         107.8681151, 107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482, 107.8681334, 107.8681609,
         107.8681101, 107.8681512, 107.8681469, 107.8681360, 107.8681254, 107.8681261, 107.8681450, 107.8681368}};
    const auto split = oneWaySplit(instruments);
    ASSERT_TRUE(split);
    EXPECT_EQ(split->betweenFreedom, 1);
    EXPECT_EQ(split->withinFreedom, 46);
    // Seven constant leading digits: a double holds nine of the rest, and no more can come out.
    EXPECT_GE(agreeingDigits(split->betweenSquares, 3.63834187500000E-09), 8);
    EXPECT_GE(agreeingDigits(split->withinSquares, 1.04951729166667E-08), 8);
    EXPECT_GE(agreeingDigits(split->ratio, 1.59467335677930E+01), 8);
    EXPECT_GE(agreeingDigits(std::sqrt(split->withinVariance), 1.51048314446410E-05), 8);
}
