// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where scatter comes from: analysis of variance over groups, and the repeatability study of a shop.
#include <span>
#include <string>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// One-way analysis of variance (NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3). The unit of the squares is
/// the square of the unit of the values.
struct OneWaySplit {
    double betweenSquares = 0, withinSquares = 0; ///< sums of squares
    double betweenFreedom = 0, withinFreedom = 0; ///< degrees of freedom: k − 1 and N − k
    double betweenMeanSquare = 0, withinMeanSquare = 0;
    double ratio = 0;           ///< F = between / within mean square; infinity when nothing scatters within
    double withinVariance = 0;  ///< = the within mean square
    double betweenVariance = 0; ///< of the groups themselves, 0 when F < 1 (then `betweenIsZero`)
    bool betweenIsZero = false; ///< the estimate came out negative: the groups cannot be told apart
};
/// Takes two groups or more of one value or more each, three values at least in all and one group with two; refuses
/// others, and values that are no finite numbers.
Result<OneWaySplit> oneWaySplit(std::span<const std::vector<double>> groups);

/// Readings of a repeatability study: every person reads every place in every pass.
struct StudyReading {
    std::string person;
    std::string place;
    int pass = 1;
    Length value;
};

/// The variance split of a crossed study (people × places × passes), all standard deviations in nanometres.
struct RepeatabilityStudy {
    std::size_t people = 0, places = 0, passes = 0;
    double repeatability = 0;   ///< one person, one place, again and again
    double reproducibility = 0; ///< person to person, with person-by-place; 0 for one person
    double placeToPlace = 0;    ///< what the places really differ by
    double total = 0;           ///< of all three
    double repeatabilityFreedom = 0;
    bool isPooled = false; ///< person-by-place was no larger than repeatability (F test, 5 %) and went into it
    std::string sentence;
};
/// Two-way crossed random-effects analysis of variance (ISO 5725-2 gives the model; estimates are those of
/// the expected mean squares: EMS_error = σ², EMS_person×place = σ² + nσ²_pp, EMS_person = … + nqσ²_p,
/// EMS_place = … + npσ²_q). A negative estimate is given as 0.
/// Refuses fewer than two places or two passes, and a study with a missing or a doubled reading, which it names.
Result<RepeatabilityStudy> repeatabilityStudy(std::span<const StudyReading> readings, const Units& units);

} // namespace caprail
