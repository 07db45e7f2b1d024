// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <map>
#include <measure/uncertainty.h>

namespace caprail {

namespace {

/// Contributions after correlated ones were added up: each with its degrees of freedom (none: infinite).
struct Contribution {
    double value = 0;
    std::optional<double> degreesOfFreedom;
};

std::vector<Contribution> contributions(const std::vector<UncertaintyTerm>& terms) {
    std::vector<Contribution> list;
    std::map<std::string, double> correlated;
    for (const UncertaintyTerm& term : terms) {
        const double value = term.sensitivity * term.standardUncertainty;
        if (term.correlatedWith.empty()) {
            list.push_back({value, term.degreesOfFreedom});
        } else {
            correlated[term.correlatedWith] += value;
        }
    }
    for (const auto& [name, value] : correlated) {
        list.push_back({value, {}});
    }
    return list;
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
        if (c.degreesOfFreedom && *c.degreesOfFreedom > 0) {
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

double rectangular(double halfWidth) {
    return halfWidth / std::sqrt(3.0);
}

double studentT(double confidence, double degreesOfFreedom) {
    const double whole = std::max(1.0, std::floor(degreesOfFreedom));
    const boost::math::students_t_distribution<double> distribution(whole);
    return boost::math::quantile(boost::math::complement(distribution, (1.0 - confidence) / 2.0));
}

} // namespace caprail
