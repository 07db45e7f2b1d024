// SPDX-License-Identifier: GPL-3.0-or-later
/// NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3.3 (the ANOVA table and tests of hypotheses about means): five
/// resistance readings at each of three levels. Data seen in a copy; the table's results from memory: sums of squares
/// 27.897 and 17.452 with 2 and 12 degrees of freedom, mean squares 13.949 and 1.454, F = 9.59.
#include <gmock/gmock.h>
#include <measure/variance_split.h>

using namespace caprail;

TEST(NistHandbook, resistance_at_three_levels) {
    const std::vector<std::vector<double>> levels{
        {6.9, 5.4, 5.8, 4.6, 4.0}, {8.3, 6.8, 7.8, 9.2, 6.5}, {8.0, 10.5, 8.1, 6.9, 9.3}};
    const auto split = oneWaySplit(levels);
    ASSERT_TRUE(split);
    EXPECT_NEAR(split->betweenSquares, 27.897, 0.0005);
    EXPECT_NEAR(split->withinSquares, 17.452, 0.0005);
    EXPECT_EQ(split->betweenFreedom, 2);
    EXPECT_EQ(split->withinFreedom, 12);
    EXPECT_NEAR(split->betweenMeanSquare, 13.949, 0.0005);
    EXPECT_NEAR(split->withinMeanSquare, 1.454, 0.0005);
    EXPECT_NEAR(split->ratio, 9.59, 0.005);
}
