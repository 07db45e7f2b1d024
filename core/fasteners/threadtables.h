// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <cstdint>
#include <string_view>
#include <units/length.h>

// The threads that exist: nominal diameters with their coarse and fine pitches.
namespace caprail::threadtables {

struct InchSize {
    std::string_view label;
    std::int64_t nominalTenThousandths; ///< basic major diameter; 1/16 in is 625
    int coarse;                         ///< threads per inch, UNC
    int fine;                           ///< threads per inch, UNF
    [[nodiscard]] constexpr Length nominal() const { return tenths(nominalTenThousandths); }
};

/// ASME B1.1, standard series UNC and UNF, #4 to 1 1/2 in.
inline constexpr std::array<InchSize, 20> inchSizes{{
    {"#4", 1'120, 40, 48},    {"#5", 1'250, 40, 44},    {"#6", 1'380, 32, 40},    {"#8", 1'640, 32, 36},
    {"#10", 1'900, 24, 32},   {"#12", 2'160, 24, 28},   {"1/4", 2'500, 20, 28},   {"5/16", 3'125, 18, 24},
    {"3/8", 3'750, 16, 24},   {"7/16", 4'375, 14, 20},  {"1/2", 5'000, 13, 20},   {"9/16", 5'625, 12, 18},
    {"5/8", 6'250, 11, 18},   {"3/4", 7'500, 10, 16},   {"7/8", 8'750, 9, 14},    {"1", 10'000, 8, 12},
    {"1 1/8", 11'250, 7, 12}, {"1 1/4", 12'500, 7, 12}, {"1 3/8", 13'750, 6, 12}, {"1 1/2", 15'000, 6, 12},
}};

struct MetricSize {
    std::int64_t nominalMicrons;
    std::int64_t coarseMicrons;
    std::array<std::int64_t, 4> fineMicrons; ///< coarsest first; 0 fills up
};

/// ISO 261, M3 to M39, first to third choice where engines use them (M9 and M11 are third choice).
inline constexpr std::array<MetricSize, 22> metricSizes{{
    {3'000, 500, {350, 0, 0, 0}},
    {3'500, 600, {350, 0, 0, 0}},
    {4'000, 700, {500, 0, 0, 0}},
    {5'000, 800, {500, 0, 0, 0}},
    {6'000, 1'000, {750, 0, 0, 0}},
    {7'000, 1'000, {750, 0, 0, 0}},
    {8'000, 1'250, {1'000, 750, 0, 0}},
    {9'000, 1'250, {1'000, 750, 0, 0}},
    {10'000, 1'500, {1'250, 1'000, 750, 0}},
    {11'000, 1'500, {1'000, 750, 0, 0}},
    {12'000, 1'750, {1'500, 1'250, 1'000, 0}},
    {14'000, 2'000, {1'500, 1'250, 1'000, 0}},
    {16'000, 2'000, {1'500, 1'000, 0, 0}},
    {18'000, 2'500, {2'000, 1'500, 1'000, 0}},
    {20'000, 2'500, {2'000, 1'500, 1'000, 0}},
    {22'000, 2'500, {2'000, 1'500, 1'000, 0}},
    {24'000, 3'000, {2'000, 1'500, 1'000, 0}},
    {27'000, 3'000, {2'000, 1'500, 1'000, 0}},
    {30'000, 3'500, {3'000, 2'000, 1'500, 1'000}},
    {33'000, 3'500, {3'000, 2'000, 1'500, 0}},
    {36'000, 4'000, {3'000, 2'000, 1'500, 0}},
    {39'000, 4'000, {3'000, 2'000, 1'500, 0}},
}};

constexpr const InchSize* findInch(Length nominal) {
    for (const InchSize& size : inchSizes) {
        if (size.nominal() == nominal) {
            return &size;
        }
    }
    return nullptr;
}

constexpr const MetricSize* findMetric(Length nominal) {
    for (const MetricSize& size : metricSizes) {
        if (microns(size.nominalMicrons) == nominal) {
            return &size;
        }
    }
    return nullptr;
}

} // namespace caprail::threadtables
