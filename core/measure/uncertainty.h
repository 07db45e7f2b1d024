// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include <vector>

namespace caprail {

/// One line of an uncertainty budget (JCGM 100:2008, chapter 5). Lengths are in nanometres.
struct UncertaintyTerm {
    std::string name;
    double standardUncertainty = 0;
    double sensitivity = 1;
    std::optional<double> degreesOfFreedom; ///< none: infinite (type B, known limits)
    bool isTypeA = false;
    /// Terms that carry the same name here are fully correlated: they add up before they are squared (5.2.2, note 1).
    std::string correlatedWith;
};

/// How the expanded uncertainty is covered: a fixed k = 2, or Student's t at 95.45 % for the effective degrees of freedom.
enum class Coverage { two, student };

/// A budget and what it comes to.
struct UncertaintyBudget {
    std::vector<UncertaintyTerm> terms;

    /// Combined standard uncertainty u_c (equations 10 and 16).
    [[nodiscard]] double combined() const;
    /// Effective degrees of freedom after Welch–Satterthwaite (equation G.2b); none: infinite.
    [[nodiscard]] std::optional<double> effectiveDegreesOfFreedom() const;
    [[nodiscard]] double coverageFactor(Coverage) const;
    /// U = k · u_c.
    [[nodiscard]] double expanded(Coverage) const;
};

/// Standard uncertainty of a value known to lie within ± `halfWidth`: halfWidth / √3 (4.3.7).
double rectangular(double halfWidth);

/// Two-sided quantile: the t for which a share `confidence` (0 to 1) of Student's distribution with `degreesOfFreedom`
/// lies within ± t. Fractional degrees of freedom are cut down to whole ones (G.4.1), at least 1.
double studentT(double confidence, double degreesOfFreedom);

} // namespace caprail
