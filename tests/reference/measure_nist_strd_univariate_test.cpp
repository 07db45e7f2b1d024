// SPDX-License-Identifier: GPL-3.0-or-later
/// NIST Statistical Reference Datasets, univariate summary statistics, NumAcc1 to NumAcc4. The data are generated here
/// from their published description; certified means 10000002, 1.2, 1000000.2, 10000000.2 and standard deviations
/// 1, 0.1, 0.1, 0.1 (exact). Certified values of NumAcc3 and NumAcc4 seen in a mirror of the files; the others from
/// memory.
#include <cmath>
#include <gmock/gmock.h>
#include <measure/statistics.h>
#include <vector>

using namespace caprail;

namespace {

/// Base + 0.2, then 500 times the pair base + 0.1, base + 0.3: 1001 values.
std::vector<double> alternating(double base) {
    std::vector<double> values{base + 0.2};
    for (int i = 0; i < 500; ++i) {
        values.push_back(base + 0.1);
        values.push_back(base + 0.3);
    }
    return values;
}

/// Correct decimal digits, as NIST counts them: −log10 of the relative error.
double digits(double value, double certified) {
    return value == certified ? 15 : -std::log10(std::abs(value - certified) / std::abs(certified));
}

} // namespace

TEST(NistStrd, NumAcc1) {
    const Moments m = momentsOf(std::vector<double>{10'000'001, 10'000'003, 10'000'002});
    EXPECT_EQ(m.mean, 10'000'002);
    EXPECT_EQ(m.standardDeviation, 1);
}

TEST(NistStrd, NumAcc2) {
    const Moments m = momentsOf(alternating(1));
    EXPECT_EQ(m.count, 1001U);
    EXPECT_GE(digits(m.mean, 1.2), 14);
    EXPECT_GE(digits(m.standardDeviation, 0.1), 14);
}

// In NumAcc3 and 4 the data themselves are rounded to binary before any arithmetic: 0.1 beside 10⁶ keeps some 10
// digits, beside 10⁷ some 9. Nothing that reads doubles can do better.
TEST(NistStrd, NumAcc3) {
    const Moments m = momentsOf(alternating(1'000'000));
    EXPECT_GE(digits(m.mean, 1'000'000.2), 14);
    EXPECT_GE(digits(m.standardDeviation, 0.1), 9);
}

TEST(NistStrd, NumAcc4) {
    const Moments m = momentsOf(alternating(10'000'000));
    EXPECT_GE(digits(m.mean, 10'000'000.2), 14);
    EXPECT_GE(digits(m.standardDeviation, 0.1), 8);
}

TEST(NistStrd, NumAcc4_in_whole_nanometres_is_exact) {
    // The same data as lengths: what the program stores. 10 000 000.2 tenths of a micron.
    std::vector<Length> readings;
    for (const double x : alternating(10'000'000)) {
        readings.push_back(nanometres(std::llround(x * 10)));
    }
    const Summary s = summarise(readings);
    EXPECT_EQ(s.mean, 100'000'002.0);
    EXPECT_GE(digits(s.standardDeviation, 1.0), 15);
    EXPECT_EQ(s.median, nanometres(100'000'002));
    EXPECT_EQ(s.range, nanometres(2));
}
