// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// An uncertainty budget after JCGM 100:2008 (the GUM), and the table that answers «why ± 0.0003?».
#include <base/problem.h>
#include <measure/decision.h>
#include <optional>
#include <span>
#include <string>
#include <units/format.h>
#include <units/length.h>
#include <vector>

namespace caprail {

/// Something that an uncertainty cannot be worked out without. It is never taken as nothing.
struct Missing {
    enum class What {
        reading,       ///< nothing was measured
        repeatability, ///< nobody read one place of `about` twice
        instrument,    ///< a reading of `about` names no instrument
        limitOfError,  ///< of the instrument `about`, as it was known when the reading was made
        straightedge,  ///< nobody said which one was used
    };
    What what = What::reading;
    std::string about; ///< the quantity, or the instrument
    friend bool operator==(const Missing&, const Missing&) = default;
};
/// "the limit of error of LEAVES-2"
std::string describe(const Missing&);
/// What to enter: "Enter the limit of error of LEAVES-2 …"
std::string remedyFor(const Missing&);

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
    std::size_t readings = 0; ///< behind a type A term of a mean or median; 0: more readings would not help
};

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
    /// What is left out because nobody said how large it is. Empty: the budget is complete.
    std::vector<Missing> missing;

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
    /// With something missing: "± not known, 0.00030 in at least", and what to enter.
    [[nodiscard]] std::string explain(Coverage, const Units&) const;
};

/// An expanded uncertainty, or what is missing to know it. There is no third: what is not known is never 0.
class Uncertainty {
public:
    struct Known {
        double expanded = 0; ///< U, nanometres
        double standard = 0; ///< u_c, nanometres
        double coverageFactor = 2;
        std::optional<double> degreesOfFreedom; ///< none: infinite
        friend bool operator==(const Known&, const Known&) = default;
    };
    /// Not known: nothing was measured.
    Uncertainty() : m_missing{Missing{}} {}
    explicit Uncertainty(Known known) : m_known(known) {}
    /// What a budget comes to; not known while anything is missing from it, or it has no terms.
    Uncertainty(const UncertaintyBudget&, Coverage);

    [[nodiscard]] bool isKnown() const { return m_known.has_value(); }
    /// Null while it is not known.
    [[nodiscard]] const Known* known() const { return m_known ? &*m_known : nullptr; }
    /// U in nanometres; none while it is not known.
    [[nodiscard]] std::optional<double> expanded() const {
        return m_known ? std::optional(m_known->expanded) : std::nullopt;
    }
    [[nodiscard]] const std::vector<Missing>& missing() const { return m_missing; }
    friend bool operator==(const Uncertainty&, const Uncertainty&) = default;

private:
    std::optional<Known> m_known;
    std::vector<Missing> m_missing;
};
/// "± 0.00024 in", rounded up, or "± not known".
std::string describe(const Uncertainty&, const Units&);

/// What would make U small enough, for a band in which no value could pass: the largest term, and the limit of error
/// (half-width) or the number of readings at which U would be `wanted` (nanometres) with all else as it is.
struct WouldDo {
    std::string term;
    std::optional<Length> limitOfError;  ///< of each correlated part, where the term is one of several
    std::optional<std::size_t> readings; ///< in all
};
/// None for a budget without terms. Neither figure is set where even a perfect term would not be enough.
std::optional<WouldDo> whatWouldDo(const UncertaintyBudget&, Coverage, double wanted);
std::string describe(const WouldDo&, const Units&);

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
