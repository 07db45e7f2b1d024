// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <span>
#include <units/length.h>
#include <vector>

namespace caprail {

/// Count, mean and standard deviation (n − 1) of plain numbers, by Welford's method, which does not lose digits to a
/// large mean (checked on NIST StRD NumAcc1 to 4). The standard deviation is 0 below two values.
struct Moments {
    std::size_t count = 0;
    double mean = 0;
    double standardDeviation = 0;
};
Moments momentsOf(std::span<const double> values);

/// What a few readings of one length come to. Mean and standard deviation are in nanometres; the median of an even count
/// is the mean of the middle two, rounded half away from zero. All zero for no readings.
struct Summary {
    std::size_t count = 0;
    double mean = 0;
    double standardDeviation = 0;
    Length median, smallest, largest, range;
};
Summary summarise(std::span<const Length> readings);

/// Pooled standard deviation sqrt(Σ(n_i−1)s_i² / Σ(n_i−1)) with its degrees of freedom Σ(n_i−1): the repeatability of a
/// person with their instruments over several places. Nothing while no place has two readings.
struct Pooled {
    double standardDeviation = 0; ///< nanometres
    double degreesOfFreedom = 0;
};
std::optional<Pooled> pool(std::span<const Summary> places);

} // namespace caprail
