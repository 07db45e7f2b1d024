// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <map>
#include <measure/uncertainty.h>
#include <stdexcept>
#include <base/say.h>

namespace caprail {

namespace {

/// What is wrong with a term, as a sentence; empty: nothing.
std::string faultOf(const UncertaintyTerm& term) {
    if (!std::isfinite(term.standardUncertainty) || term.standardUncertainty < 0) {
        return Core::say("The standard uncertainty of “%1” must be a number of 0 or more.", term.name);
    }
    if (!std::isfinite(term.sensitivity)) {
        return Core::say("The sensitivity of “%1” must be a number.", term.name);
    }
    if (term.degreesOfFreedom && !(*term.degreesOfFreedom > 0)) {
        return Core::say("The degrees of freedom of “%1” must be above 0.", term.name);
    }
    return {};
}

/// Contributions after correlated ones were added up: each with its degrees of freedom (none: infinite).
struct Contribution {
    double value = 0;
    std::optional<double> degreesOfFreedom;
};

std::map<std::string, Contribution> groups(const std::vector<UncertaintyTerm>& terms) {
    std::map<std::string, Contribution> correlated;
    for (const UncertaintyTerm& term : terms) {
        if (!term.correlatedWith.empty()) {
            Contribution& group = correlated[term.correlatedWith];
            group.value += term.sensitivity * term.standardUncertainty;
            if (term.degreesOfFreedom) {
                group.degreesOfFreedom =
                    std::min(*term.degreesOfFreedom, group.degreesOfFreedom.value_or(*term.degreesOfFreedom));
            }
        }
    }
    return correlated;
}

std::vector<Contribution> contributions(const std::vector<UncertaintyTerm>& terms) {
    std::vector<Contribution> list;
    for (const UncertaintyTerm& term : terms) {
        if (const std::string fault = faultOf(term); !fault.empty()) {
            throw std::invalid_argument(fault);
        }
        if (term.correlatedWith.empty()) {
            list.push_back({term.sensitivity * term.standardUncertainty, term.degreesOfFreedom});
        }
    }
    for (const auto& [name, group] : groups(terms)) {
        list.push_back(group);
    }
    return list;
}

std::string freedomText(const std::optional<double>& freedom) {
    return freedom ? formatNumber(std::floor(*freedom), 0) : "∞";
}

/// "1", "−1", "0.5": no more decimals than there are.
std::string sensitivityText(double sensitivity, const Units& units) {
    const bool isWhole = sensitivity == std::floor(sensitivity);
    return formatNumber(sensitivity, isWhole ? 0 : 3, units.decimalMark);
}

} // namespace

double UncertaintyBudget::combined() const {
    double squares = 0;
    for (const Contribution& c : contributions(terms)) {
        squares += c.value * c.value;
    }
    return std::sqrt(squares);
}

std::optional<double> UncertaintyBudget::effectiveDegreesOfFreedom() const {
    double fourths = 0;
    for (const Contribution& c : contributions(terms)) {
        if (c.degreesOfFreedom) {
            fourths += std::pow(c.value, 4) / *c.degreesOfFreedom;
        }
    }
    if (fourths == 0) {
        return {};
    }
    return std::pow(combined(), 4) / fourths;
}

double UncertaintyBudget::coverageFactor(Coverage coverage) const {
    const auto freedom = effectiveDegreesOfFreedom();
    return coverage == Coverage::two || !freedom ? 2.0 : studentT(0.9545, *freedom);
}

double UncertaintyBudget::expanded(Coverage coverage) const {
    return coverageFactor(coverage) * combined();
}

std::vector<BudgetRow> UncertaintyBudget::rows(const Units& units) const {
    const double whole = std::pow(combined(), 2);
    const auto correlated = groups(terms);
    std::vector<BudgetRow> table;
    for (const UncertaintyTerm& term : terms) {
        const double value = term.sensitivity * term.standardUncertainty;
        const double with = term.correlatedWith.empty() ? value : correlated.at(term.correlatedWith).value;
        BudgetRow row;
        row.name = term.name;
        row.type = term.isTypeA ? "A" : "B";
        row.standardUncertainty = formatSpread(term.standardUncertainty, units);
        row.sensitivity = sensitivityText(term.sensitivity, units);
        row.contribution = formatSpread(std::abs(value), units);
        row.degreesOfFreedom = freedomText(term.degreesOfFreedom);
        row.correlatedWith = term.correlatedWith;
        row.shareOfVariance = whole > 0 ? value * with / whole : 0;
        row.share = formatPercent(row.shareOfVariance, units);
        table.push_back(std::move(row));
    }
    return table;
}

std::string UncertaintyBudget::explain(Coverage coverage, const Units& units) const {
    if (terms.empty() && missing.empty()) {
        return Core::say("Nothing was measured yet.");
    }
    std::string text =
        missing.empty()
            ? Core::say("± %1 = k %2 × u %3; degrees of freedom %4.", formatUncertainty(expanded(coverage), units),
                        formatNumber(coverageFactor(coverage), 2, units.decimalMark), formatSpread(combined(), units),
                        freedomText(effectiveDegreesOfFreedom()))
            : Core::say("± not known, at least %1.", formatUncertainty(expanded(coverage), units));
    const auto table = rows(units);
    const auto largest = std::ranges::max_element(table, {}, &BudgetRow::shareOfVariance);
    if (largest != table.end() && largest->shareOfVariance > 0) {
        text += " " + Core::say("The largest share is “%1”, %2.", largest->name, largest->share);
    }
    for (const Missing& what : missing) {
        text += " " + remedyFor(what);
    }
    return text;
}

std::string describe(const Missing& missing) {
    switch (missing.what) {
    case Missing::What::reading:
        return Core::say("a reading");
    case Missing::What::repeatability:
        return Core::say("how well readings of “%1” repeat", missing.about);
    case Missing::What::instrument:
        return Core::say("the instrument that read “%1”", missing.about);
    case Missing::What::limitOfError:
        return Core::say("the limit of error of %1", missing.about);
    case Missing::What::straightedge:
        break;
    }
    return Core::say("the straightedge and its flatness");
}

std::string remedyFor(const Missing& missing) {
    switch (missing.what) {
    case Missing::What::reading:
        return Core::say("Measure it.");
    case Missing::What::repeatability:
        return Core::say("Read “%1” once more at one place: nobody knows how well it repeats.", missing.about);
    case Missing::What::instrument:
        return Core::say("Say with which instrument “%1” was read: read it again with the instrument named.",
                         missing.about);
    case Missing::What::limitOfError:
        return Core::say("Enter the limit of error of %1 with what it corrects, so that it counts for readings made "
                         "before.",
                         missing.about);
    case Missing::What::straightedge:
        break;
    }
    return Core::say("Say which straightedge it was, with its flatness at the engine station, and read it again.");
}

Uncertainty::Uncertainty(const UncertaintyBudget& budget, Coverage coverage) : m_missing(budget.missing) {
    if (!m_missing.empty()) {
        return;
    }
    if (budget.terms.empty()) {
        m_missing.push_back(Missing{});
        return;
    }
    m_known = Known{budget.expanded(coverage), budget.combined(), budget.coverageFactor(coverage),
                    budget.effectiveDegreesOfFreedom()};
}

std::string describe(const Uncertainty& uncertainty, const Units& units) {
    return uncertainty.isKnown() ? "± " + formatUncertainty(uncertainty.known()->expanded, units)
                                 : Core::say("± not known");
}

std::optional<WouldDo> whatWouldDo(const UncertaintyBudget& budget, Coverage coverage, double wanted) {
    // Terms that add up before they are squared are one: two leaves of one set are both too coarse.
    std::map<std::string, double> sums;
    const auto keyOf = [](const UncertaintyTerm& t) {
        return t.correlatedWith.empty() ? "\n" + t.name : t.correlatedWith;
    };
    for (const UncertaintyTerm& term : budget.terms) {
        sums[keyOf(term)] += term.sensitivity * term.standardUncertainty;
    }
    const auto largest = std::ranges::max_element(
        budget.terms, {}, [&](const UncertaintyTerm& t) { return std::abs(sums.at(keyOf(t))); });
    if (largest == budget.terms.end()) {
        return {};
    }
    WouldDo would{largest->name, {}, {}};
    const double sum = std::abs(sums.at(keyOf(*largest)));
    const double whole = budget.combined();
    const double target = wanted / budget.coverageFactor(coverage);
    const double left = target * target - (whole * whole - sum * sum);
    if (left > 0 && sum > 0) {
        const double share = std::sqrt(left) / sum;
        if (largest->isTypeA && largest->readings > 0) {
            would.readings = static_cast<std::size_t>(
                std::ceil(static_cast<double>(largest->readings) / (share * share) - 1e-9));
        } else {
            would.limitOfError = Length(static_cast<std::int64_t>(largest->standardUncertainty * std::sqrt(3.0) * share));
        }
    }
    return would;
}

std::string describe(const WouldDo& would, const Units& units) {
    if (would.limitOfError) {
        return Core::say("The largest term is “%1”: with a limit of ± %2 there it would do.", would.term,
                         formatFine(*would.limitOfError, units));
    }
    if (would.readings) {
        return Core::say("The largest term is “%1”: %2 readings would do.", would.term, *would.readings);
    }
    return Core::say("The largest term is “%1”, and it alone is not enough: another way to measure is needed.",
                     would.term);
}

Result<UncertaintyBudget> budgetOf(std::vector<UncertaintyTerm> terms) {
    for (const UncertaintyTerm& term : terms) {
        if (std::string fault = faultOf(term); !fault.empty()) {
            return refuse(std::move(fault));
        }
    }
    UncertaintyBudget budget;
    budget.terms = std::move(terms);
    return budget;
}

UncertaintyBudget difference(UncertaintyBudget a, const UncertaintyBudget& b) {
    for (UncertaintyTerm term : b.terms) {
        term.sensitivity = -term.sensitivity;
        a.terms.push_back(std::move(term));
    }
    for (const Missing& what : b.missing) {
        if (std::ranges::find(a.missing, what) == a.missing.end()) {
            a.missing.push_back(what);
        }
    }
    return a;
}

double rectangular(double halfWidth) {
    return halfWidth / std::sqrt(3.0);
}

double studentT(double confidence, double degreesOfFreedom) {
    if (!(confidence > 0 && confidence < 1) || !(degreesOfFreedom > 0)) {
        throw std::invalid_argument(Core::say("a confidence lies between 0 and 1, degrees of freedom above 0"));
    }
    const double freedom = degreesOfFreedom < 1 ? degreesOfFreedom : std::floor(degreesOfFreedom);
    const boost::math::students_t_distribution<double> distribution(freedom);
    return boost::math::quantile(boost::math::complement(distribution, (1.0 - confidence) / 2.0));
}

} // namespace caprail
