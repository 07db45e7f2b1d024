// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What repeated readings of one thing come to: mean, scatter, median, range.
#include <optional>
#include <span>
#include <units/length.h>
#include <vector>

namespace caprail {

/// Count, mean and standard deviation (divisor n − 1) of plain numbers. Two passes with a correction for the rounding
/// of the mean, so that no digits are lost to a large mean (checked on NIST StRD NumAcc1 to 4). All zero for no values;
/// the standard deviation is 0 below two.
struct Moments {
    std::size_t count = 0;
    double mean = 0;
    double standardDeviation = 0;
};
Moments momentsOf(std::span<const double> values);

/// What a few readings of one length come to. Mean and standard deviation are in nanometres; the median of an even
/// count is the mean of the middle two, rounded half away from zero. All zero for no readings.
struct Summary {
    std::size_t count = 0;
    double mean = 0;
    double standardDeviation = 0;
    Length median, smallest, largest, range;
};
Summary summarise(std::span<const Length> readings);

/// Pooled standard deviation sqrt(Σ(n_i−1)s_i² / Σ(n_i−1)) with its degrees of freedom Σ(n_i−1): the repeatability of a
/// person with their instruments over several places (JCGM 100:2008, 4.2.4 and H.3.6). Nothing while no place has two
/// readings.
struct Pooled {
    double standardDeviation = 0; ///< nanometres
    double degreesOfFreedom = 0;
};
std::optional<Pooled> pool(std::span<const Summary> places);
/// The standard deviation alone, in nanometres.
std::optional<double> pooledStandardDeviation(std::span<const Summary> places);

/// Largest minus smallest; none for no values. Of accepted gaps: the spread of the survey.
std::optional<Length> spread(std::span<const Length> values);

} // namespace caprail
