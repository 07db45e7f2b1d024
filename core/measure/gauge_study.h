// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a way of measuring is worth against a band: the shares of a repeatability study as the gauge studies of the
/// trade give them (AIAG, Measurement Systems Analysis).
#include <measure/variance_split.h>
#include <optional>
#include <units/band.h>

namespace caprail {

struct GaugeStudy {
    RepeatabilityStudy study;
    double gauge = 0;                       ///< GRR: root of the squares of repeatability and reproducibility, nanometres
    double shareOfTotal = 0;                ///< %GRR of the total variation, 0 to 1
    std::optional<double> shareOfTolerance; ///< 6 · GRR / (hi − lo); none without a band
    /// Number of distinct categories, 1.41 · PV / GRR, cut down to whole ones and 1 at least; none when the gauge does not
    /// scatter at all.
    std::optional<int> categories;
    double personEffect = 0; ///< reproducibility, which the uncertainty of one person's reading carries, nanometres
    std::string sentence;
};
/// Refuses what repeatabilityStudy refuses, and a band without width. Up to 10 % of the tolerance is good, up to 30 % may
/// do, above it will not (AIAG, chapter II, from memory).
Result<GaugeStudy> gaugeStudy(std::span<const StudyReading> readings, const std::optional<Band>& band, const Units&);

} // namespace caprail
