// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// An uncertainty budget after JCGM 100:2008 (the GUM), and the table that answers «why ± 0.0003?».
#include <optional>
#include <span>
#include <string>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// One line of an uncertainty budget (JCGM 100:2008, chapter 5). Lengths are in nanometres.
struct UncertaintyTerm {
    std::string name;
    double standardUncertainty = 0; ///< 0 or more
    double sensitivity = 1;
    std::optional<double> degreesOfFreedom; ///< above 0; none: infinite (type B, known limits)
    bool isTypeA = false;
    /// Terms that carry the same name here are fully correlated: they add up, with the signs of their sensitivities,
    /// before they are squared (5.2.2, note 1). Empty: independent of all others.
    std::string correlatedWith;
};

/// How the expanded uncertainty is covered: a fixed k = 2, or Student's t at 95.45 % for the effective degrees of
/// freedom.
enum class Coverage { two, student };

/// One line as it is shown. Shares of u_c² add up to 100 %; a share is negative where a correlated term takes away.
struct BudgetRow {
    std::string name;
    std::string type;                ///< "A" or "B"
    std::string standardUncertainty; ///< with its unit
    std::string sensitivity;         ///< "1", "−1"
    std::string contribution;        ///< |sensitivity × standard uncertainty|, with its unit
    std::string degreesOfFreedom;    ///< whole number, or "∞"
    std::string share;               ///< "62 %"
    std::string correlatedWith;
    double shareOfVariance = 0; ///< 0.62
};

/// A budget and what it comes to. A term that breaks the ranges above is a bug of the caller: the functions below throw
/// std::invalid_argument for it. `budgetOf` refuses it with a sentence.
struct UncertaintyBudget {
    std::vector<UncertaintyTerm> terms;
    /// What is left out because nobody said how large it is; each a sentence. Empty: the budget is complete.
    std::vector<std::string> missing;

    /// Combined standard uncertainty u_c (equations 10 and 16), nanometres.
    [[nodiscard]] double combined() const;
    /// Effective degrees of freedom after Welch–Satterthwaite (equation G.2b); none: infinite. A correlated group has
    /// the smallest degrees of freedom among its terms.
    [[nodiscard]] std::optional<double> effectiveDegreesOfFreedom() const;
    [[nodiscard]] double coverageFactor(Coverage) const;
    /// U = k · u_c, nanometres.
    [[nodiscard]] double expanded(Coverage) const;
    /// The table, in the order of the terms.
    [[nodiscard]] std::vector<BudgetRow> rows(const Units&) const;
    /// "± 0.00030 in = k 2.00 × u 0.00015 in; degrees of freedom 12. The largest share is the feeler gauge, 62 %."
    /// followed by what is missing.
    [[nodiscard]] std::string explain(Coverage, const Units&) const;
};

/// Refuses, naming the term: a standard uncertainty below 0 or not finite, a sensitivity that is not finite, degrees of
/// freedom that are not above 0.
Result<UncertaintyBudget> budgetOf(std::vector<UncertaintyTerm> terms);

/// The budget of a − b: the terms of b with their sensitivities turned round. Groups of the same name stay correlated
/// across both, so an error that sits in a and b alike drops out.
UncertaintyBudget difference(UncertaintyBudget a, const UncertaintyBudget& b);

/// Standard uncertainty of a value known to lie within ± `halfWidth`: halfWidth / √3 (JCGM 100:2008, 4.3.7).
double rectangular(double halfWidth);
inline double rectangular(Length halfWidth) {
    return rectangular(static_cast<double>(halfWidth.value()));
}

/// Two-sided quantile: the t for which a share `confidence` (above 0, below 1) of Student's distribution with
/// `degreesOfFreedom` lies within ± t. Fractional degrees of freedom are cut down to whole ones (G.4.1); below 1 they
/// are taken as they are. Throws std::invalid_argument outside those ranges.
double studentT(double confidence, double degreesOfFreedom);

} // namespace caprail
