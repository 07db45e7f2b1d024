// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Answers of yes or no over a dose, and the dose at which they turn: probit regression (D. J. Finney, Probit Analysis).
#include <optional>
#include <span>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// At one dose, so many of so many answers were yes.
struct Response {
    double dose = 0;
    std::size_t trials = 0, successes = 0;
};

/// P(yes) = Φ(intercept + slope · dose).
struct ProbitFit {
    double intercept = 0, slope = 0;
    double interceptError = 0, slopeError = 0, covariance = 0; ///< standard errors, from the expected information
    double logLikelihood = 0;                                  ///< without the binomial coefficients
    double deviance = 0;
    [[nodiscard]] double middle() const { return -intercept / slope; } ///< the dose answered yes every second time
    [[nodiscard]] double spread() const { return 1 / slope; }          ///< standard deviation of the turning point
    [[nodiscard]] double middleError() const;                          ///< by the delta method
    [[nodiscard]] double spreadError() const;
};
/// Greatest likelihood, by iteratively reweighted least squares (McCullagh & Nelder, Generalized Linear Models, 2.5).
/// Refuses fewer than two doses, more yes than answers, and answers that one dose parts completely: there the slope has
/// no greatest likelihood (`upperDose` still has an answer).
Result<ProbitFit> probitFit(std::span<const Response>);

/// The dose at which a `share` of answers is yes, at the upper end of its one-sided confidence: the largest dose that the
/// profile of the likelihood admits (χ² with one degree of freedom). It needs no finite slope, so it holds for answers
/// that one dose parts completely too. None where the answers put no bound to it. `share` and `confidence` lie between
/// 0.5 and 1; the answers turn from no to yes as the dose grows.
std::optional<double> upperDose(std::span<const Response>, double share, double confidence);

} // namespace caprail
