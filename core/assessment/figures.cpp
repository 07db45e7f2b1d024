// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/figures.h>
#include <cmath>
#include <measure/uncertainty.h>

namespace caprail {

namespace {

Coverage coverageOf(const Facts& facts) {
    return facts.rules.coverage == CoverageWord::two ? Coverage::two : Coverage::student;
}

/// Type A of the mean of `count` readings that repeat with `deviation` known from `degreesOfFreedom`.
UncertaintyTerm typeA(std::string name, double deviation, double degreesOfFreedom, std::size_t count) {
    UncertaintyTerm term;
    term.name = std::move(name);
    term.standardUncertainty = count == 0 ? 0 : deviation / std::sqrt(static_cast<double>(count));
    term.degreesOfFreedom = degreesOfFreedom;
    term.isTypeA = true;
    return term;
}

/// Type B of an instrument that is right within its limit of error. Readings with one instrument share its error, so
/// the terms of several quantities measured with it are correlated where `correlatedWith` says so.
UncertaintyTerm typeB(std::string name, double halfWidth, std::string correlatedWith = {}, double sensitivity = 1) {
    UncertaintyTerm term;
    term.name = std::move(name);
    term.standardUncertainty = rectangular(halfWidth);
    term.sensitivity = sensitivity;
    term.correlatedWith = std::move(correlatedWith);
    return term;
}

/// Readings of several places, in nanometres about their own means: what their scatter is, pooled.
std::optional<Pooled> pooledOver(const std::vector<std::vector<Length>>& places) {
    std::vector<Summary> summaries;
    for (const auto& place : places) {
        summaries.push_back(summarise(place));
    }
    return pool(summaries);
}

/// The largest limit of error among the instruments that readings name.
template <class T> double worstLimit(const Assessing& a, const std::vector<Seen<T>>& readings) {
    double worst = 0;
    for (const auto& reading : readings) {
        worst = std::max(worst, a.limitOfError(reading.what.instrument));
    }
    return worst;
}

/// Limit of error of the straightedge that the record names, if it names one.
double straightedgeLimit(const Assessing& a) {
    double limit = 0;
    for (const auto& [name, instrument] : a.facts.instruments) {
        if (instrument.what.type == InstrumentType::straightedge) {
            limit = std::max(limit, a.limitOfError(name));
        }
    }
    return limit;
}

UncertaintyBudget gapBudget(const Assessing& a, const std::vector<Seen<GapReading>>& standing,
                            std::optional<double> repeatability) {
    UncertaintyBudget budget;
    if (repeatability) {
        const double freedom = static_cast<double>(std::max<std::size_t>(standing.size(), 2) - 1);
        budget.terms.push_back(typeA("repeatability of the survey", *repeatability, freedom, standing.size()));
    }
    budget.terms.push_back(typeB("feeler gauge", worstLimit(a, standing)));
    budget.terms.push_back(typeB("straightedge", straightedgeLimit(a)));
    return budget;
}

} // namespace

std::optional<double> surveyRepeatability(const Facts& facts) {
    std::vector<std::vector<Length>> places;
    for (const auto& [position, readings] : facts.gaps) {
        places.push_back(lengthsOf(facts.standingGaps(position), [](const GapReading& r) { return r.gap.value; }));
    }
    const auto pooled = pooledOver(places);
    return pooled ? std::optional(pooled->standardDeviation) : std::nullopt;
}

double gapUncertainty(const Assessing& a, const std::vector<Seen<GapReading>>& standing,
                      std::optional<double> repeatability) {
    return gapBudget(a, standing, repeatability).expanded(coverageOf(a.facts));
}

double residualUncertainty(const Assessing& a, const std::vector<Seen<GapReading>>& standing,
                           std::optional<double> repeatability, const StackFact& stack) {
    UncertaintyBudget budget = gapBudget(a, standing, repeatability);
    for (const auto& name : stack.shims) {
        const auto shim = a.facts.shims.find(name);
        if (shim == a.facts.shims.end() || shim->second.readings.empty()) {
            continue;
        }
        // Half of the micrometer's limit is taken as scatter of its own for each shim, half as its zero, the same for
        // all.
        const double limit = worstLimit(a, shim->second.readings);
        const auto count = static_cast<double>(shim->second.readings.size());
        budget.terms.push_back(typeB("shim " + name, limit / 2 / std::sqrt(count)));
        budget.terms.push_back(typeB("micrometer zero, shim " + name, limit / 2, "micrometer zero"));
    }
    return budget.expanded(coverageOf(a.facts));
}

double clearanceUncertainty(const Assessing& a, const std::vector<Seen<JournalReading>>& journal,
                            const std::vector<Seen<BoreReading>>& bore) {
    UncertaintyBudget budget;
    const auto journalLengths = lengthsOf(journal, [](const JournalReading& r) { return r.diameter.value; });
    const auto boreLengths = lengthsOf(bore, [](const BoreReading& r) { return r.value.value; });
    for (const auto& [name, lengths] :
         {std::pair{"readings of the journal", journalLengths}, {"readings of the bore", boreLengths}}) {
        const Summary summary = summarise(lengths);
        if (summary.count > 1) {
            budget.terms.push_back(
                typeA(name, summary.standardDeviation, static_cast<double>(summary.count - 1), summary.count));
        }
    }
    budget.terms.push_back(typeB("micrometer", worstLimit(a, journal)));
    budget.terms.push_back(typeB("bore gauge", worstLimit(a, bore)));
    return budget.expanded(coverageOf(a.facts));
}

double fitUncertainty(const Assessing& a, const std::vector<Seen<FitReading>>& readings) {
    UncertaintyBudget budget;
    const Summary summary = summarise(lengthsOf(readings, [](const FitReading& r) { return r.value.value; }));
    if (summary.count > 1) {
        budget.terms.push_back(
            typeA("readings", summary.standardDeviation, static_cast<double>(summary.count - 1), summary.count));
    }
    budget.terms.push_back(typeB("instrument", worstLimit(a, readings)));
    return budget.expanded(coverageOf(a.facts));
}

double pickupUncertainty(const Assessing& a, const std::map<PickupTerm, std::vector<Seen<PickupReading>>>& terms) {
    UncertaintyBudget budget;
    for (const auto& [term, readings] : terms) {
        const std::string name(word(term));
        const Summary summary = summarise(lengthsOf(readings, [](const PickupReading& r) { return r.value.value; }));
        if (summary.count > 1) {
            budget.terms.push_back(typeA(name + ", readings", summary.standardDeviation,
                                         static_cast<double>(summary.count - 1), summary.count));
        }
        budget.terms.push_back(typeB(name + ", instrument", worstLimit(a, readings)));
    }
    return budget.expanded(coverageOf(a.facts));
}

} // namespace caprail
