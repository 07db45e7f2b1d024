// SPDX-License-Identifier: GPL-3.0-or-later
/// JCGM 100:2008 (the GUM), table G.2: t_p(ν) that encloses the fraction p. Seen in its identical reprint, NIST
/// Technical Note 1297, table B.1.
#include <array>
#include <gmock/gmock.h>
#include <measure/uncertainty.h>

using namespace caprail;

namespace {

struct Row {
    double freedom;
    std::array<double, 6> t; ///< 68.27, 90, 95, 95.45, 99, 99.73 %
};

constexpr std::array fractions{0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973};

constexpr std::array<Row, 22> table{
    {{1, {1.84, 6.31, 12.71, 13.97, 63.66, 235.80}}, {2, {1.32, 2.92, 4.30, 4.53, 9.92, 19.21}},
     {3, {1.20, 2.35, 3.18, 3.31, 5.84, 9.22}},      {4, {1.14, 2.13, 2.78, 2.87, 4.60, 6.62}},
     {5, {1.11, 2.02, 2.57, 2.65, 4.03, 5.51}},      {6, {1.09, 1.94, 2.45, 2.52, 3.71, 4.90}},
     {7, {1.08, 1.89, 2.36, 2.43, 3.50, 4.53}},      {8, {1.07, 1.86, 2.31, 2.37, 3.36, 4.28}},
     {9, {1.06, 1.83, 2.26, 2.32, 3.25, 4.09}},      {10, {1.05, 1.81, 2.23, 2.28, 3.17, 3.96}},
     {11, {1.05, 1.80, 2.20, 2.25, 3.11, 3.85}},     {12, {1.04, 1.78, 2.18, 2.23, 3.05, 3.76}},
     {13, {1.04, 1.77, 2.16, 2.21, 3.01, 3.69}},     {14, {1.04, 1.76, 2.14, 2.20, 2.98, 3.64}},
     {15, {1.03, 1.75, 2.13, 2.18, 2.95, 3.59}},     {16, {1.03, 1.75, 2.12, 2.17, 2.92, 3.54}},
     {17, {1.03, 1.74, 2.11, 2.16, 2.90, 3.51}},     {18, {1.03, 1.73, 2.10, 2.15, 2.88, 3.48}},
     {19, {1.03, 1.73, 2.09, 2.14, 2.86, 3.45}},     {20, {1.03, 1.72, 2.09, 2.13, 2.85, 3.42}},
     {30, {1.02, 1.70, 2.04, 2.09, 2.75, 3.27}},     {50, {1.01, 1.68, 2.01, 2.05, 2.68, 3.16}}}};

} // namespace

TEST(GumTableG2, every_row) {
    for (const Row& row : table) {
        for (std::size_t i = 0; i < fractions.size(); ++i) {
            // The columns of 68.27, 95.45 and 99.73 % stand for one, two and three standard deviations of a normal
            // distribution, of which the heads show four digits: hence a little more room in the far tail.
            const double room = row.t[i] > 100 ? 0.2 : 0.0055;
            EXPECT_NEAR(studentT(fractions[i], row.freedom), row.t[i], room)
                << "degrees of freedom " << row.freedom << ", fraction " << fractions[i];
        }
    }
}

TEST(GumTableG2, one_hundred_degrees_of_freedom) {
    EXPECT_NEAR(studentT(0.90, 100), 1.660, 0.0005);
    EXPECT_NEAR(studentT(0.95, 100), 1.984, 0.0005);
    EXPECT_NEAR(studentT(0.9545, 100), 2.025, 0.0006);
    EXPECT_NEAR(studentT(0.99, 100), 2.626, 0.0005);
}
