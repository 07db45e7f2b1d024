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
        row.share = formatNumber(row.shareOfVariance * 100, 0, units.decimalMark) + " %";
        table.push_back(std::move(row));
    }
    return table;
}

std::string UncertaintyBudget::explain(Coverage coverage, const Units& units) const {
    std::string text = Core::say("± %1 = k %2 × u %3; degrees of freedom %4.", formatSpread(expanded(coverage), units),
                                 formatNumber(coverageFactor(coverage), 2, units.decimalMark),
                                 formatSpread(combined(), units), freedomText(effectiveDegreesOfFreedom()));
    const auto table = rows(units);
    const auto largest = std::ranges::max_element(table, {}, &BudgetRow::shareOfVariance);
    if (largest != table.end() && largest->shareOfVariance > 0) {
        text += " " + Core::say("The largest share is “%1”, %2.", largest->name, largest->share);
    }
    for (const std::string& what : missing) {
        text += " " + what;
    }
    return text;
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
    for (const std::string& what : b.missing) {
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
