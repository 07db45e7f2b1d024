// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A plain reading against a band: crank end play, rod side clearance, and anything that the shop adds.
#include <measure/statistics.h>
#include <measure/uncertainty.h>
#include <measure/verdict.h>
#include <span>
#include <string>
#include <units/band.h>
#include <units/format.h>
#include <base/problem.h>

namespace caprail {

/// Readings of one fit at one place.
struct FitToJudge {
    std::string name;                    ///< as it begins a sentence: "Crank end play"
    std::vector<Length> readings;        ///< one or more
    std::string instrument;              ///< its name; may be empty
    Length limitOfError;                 ///< half-width; zero: not known
    std::optional<Pooled> repeatability; ///< of one reading, from elsewhere; none: from these readings
    Band band;
};

struct FitJudgement {
    Length mean; ///< to the nearest nanometre
    Summary summary;
    UncertaintyBudget budget;
    double expandedUncertainty = 0; ///< nanometres
    Verdict verdict = Verdict::tooCloseToCall;
    std::string sentence;
    std::string remedy; ///< empty when in
};
/// Refuses a fit without a name or a reading, and a limit of error below zero.
Result<FitJudgement> judgeFit(const FitToJudge&, Coverage, DecisionRule, const Units&);

} // namespace caprail
