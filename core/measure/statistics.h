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
    friend bool operator==(const Pooled&, const Pooled&) = default;
};
std::optional<Pooled> pool(std::span<const Summary> places);
/// How readings of one place come apart.
struct Scatter {
    std::optional<Pooled> repeatability; ///< one person, one place, again and again; none: nobody read one twice
    /// Between people who read the same place, what is left of it after their own scatter; none: no place was read by
    /// two. Its degrees of freedom are those of all places together, so a person's way is not told from chance.
    std::optional<Pooled> people;
    friend bool operator==(const Scatter&, const Scatter&) = default;
};
/// Readings of one place while nothing changed there, person by person.
using PlaceReadings = std::vector<std::vector<Length>>;
/// Pools over places (a nested analysis of variance of people within places; JCGM 100:2008, H.5).
Scatter scatterOf(std::span<const PlaceReadings> places);

/// How much wider the median of n readings scatters than their mean, for a normal distribution: 1, 1, 1.16, 1.09, 1.20 …
/// up to √(π/2) (exact variances of order statistics, from memory; checked by drawing). 1 for none.
double medianFactor(std::size_t n);

/// The standard deviation alone, in nanometres.
std::optional<double> pooledStandardDeviation(std::span<const Summary> places);

/// Largest minus smallest; none for no values. Of accepted gaps: the spread of the survey.
std::optional<Length> spread(std::span<const Length> values);

} // namespace caprail
