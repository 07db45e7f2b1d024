// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <functional>
#include <limits>
#include <assessment/budget_of.h>
#include <assessment/plan_aim.h>
#include <ledger/band_names.h>
#include <measure/verdict.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The middle half: what a bracketed recheck can prove, and no stack is called impossible that lies near the middle.
Band middleHalf(Band band) {
    const Length quarter((band.hi() - band.lo()).value() / 4);
    return Band::between(band.lo() + quarter, band.hi() - quarter).value();
}

} // namespace

PlanAims::PlanAims(const Facts& facts, const Units& units) : m_facts(facts), m_units(units), m_scatters(facts) {
    if (facts.rules.decision != DecisionRule::guarded) {
        return; // no U is asked for
    }
    std::vector<std::pair<double, std::string>> known;
    for (const auto& [name, shim] : facts.shims) {
        if (!shim.readings.empty() && !shim.isSetAside) {
            const Uncertainty u(shimBudgetOf(facts, name, m_scatters), coverageOf(facts));
            known.emplace_back(u.expanded().value_or(std::numeric_limits<double>::infinity()), name);
        }
    }
    std::ranges::sort(known, std::greater<>(), &std::pair<double, std::string>::first);
    for (auto& [expanded, name] : known) {
        m_worst.push_back(std::move(name));
    }
}

std::optional<PlanAim> PlanAims::at(Position p, std::size_t shims) const {
    const BandFact* band = m_facts.bandNamed(bands::residual);
    if (band == nullptr) {
        return {};
    }
    if (m_facts.rules.decision != DecisionRule::guarded) {
        return PlanAim{band->band};
    }
    const auto count = static_cast<std::ptrdiff_t>(std::min(shims, m_worst.size()));
    const Uncertainty expected(
        residualBudgetWith(m_facts, p, {m_worst.begin(), m_worst.begin() + count}, m_scatters), coverageOf(m_facts));
    if (!expected.isKnown()) {
        return PlanAim{middleHalf(band->band), false,
                       Core::say("The uncertainty of the residuals is not known, so the plan aims at the middle of the "
                                 "band.") +
                           " " + remedyFor(expected.missing().front())};
    }
    const double expanded = expected.known()->expanded;
    if (const auto zone = acceptanceZone(band->band, expanded, DecisionRule::guarded)) {
        return PlanAim{*zone};
    }
    return PlanAim{middleHalf(band->band), false,
                   Core::say("With ± %1 no residual could be proven by arithmetic, so the plan aims at the middle of the "
                             "band: prove the stacks by bracketed rechecks.",
                             formatUncertainty(expanded, m_units))};
}

} // namespace caprail
