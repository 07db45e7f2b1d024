// SPDX-License-Identifier: GPL-3.0-or-later
/// W. D. Callister and D. G. Rethwisch, Fundamentals of Materials Science and Engineering: An Integrated Approach,
/// 3rd edition, appendix B, table B.6, room-temperature linear coefficients of thermal expansion, 10⁻⁶ per °C. Seen in
/// copies of the table. Its own column per °F serves as a second reading of the same figures.
#include <bearings/expansion.h>
#include <gmock/gmock.h>
#include <map>

using namespace caprail;

TEST(ExpansionHandbook, coefficients_are_those_of_the_table) {
    const std::map<std::string_view, std::pair<double, double>> table{{"grey cast iron", {11.4, 6.3}},
                                                                      {"ductile iron 60-40-18", {11.2, 6.2}},
                                                                      {"ductile iron 80-55-06", {10.6, 5.9}},
                                                                      {"aluminium alloy 356.0", {21.5, 11.9}},
                                                                      {"steel 1040", {11.3, 6.3}},
                                                                      {"steel 4140", {12.3, 6.8}},
                                                                      {"steel 4340", {12.3, 6.8}}};
    EXPECT_EQ(knownExpansions().size(), table.size());
    for (const MaterialExpansion& m : knownExpansions()) {
        const auto row = table.find(m.material);
        ASSERT_NE(row, table.end()) << m.material;
        EXPECT_EQ(m.coefficient, millionthsPerKelvin(row->second.first)) << m.material;
        EXPECT_NEAR(inMillionthsPerKelvin(m.coefficient) / 1.8, row->second.second, 0.07) << m.material;
    }
}
