// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/assessment.h>
#include <assessment/budget_of.h>
#include <assessment/checks.h>
#include <measure/verdict.h>
#include <base/say.h>

namespace caprail {

Check& Assessing::add(CheckKind kind, Subject subject, const std::string& subjectCode, std::string title,
                      Place place) const {
    Check check;
    check.kind = kind;
    check.subject = std::move(subject);
    check.code = std::string(word(kind)) + (subjectCode.empty() ? "" : ":" + subjectCode);
    check.title = std::move(title);
    check.place = std::move(place);
    return out.checks.emplace_back(std::move(check));
}

CheckState Assessing::judged(Length value, double expandedUncertainty, const BandFact& bandFact) const {
    const DecisionRule rule =
        facts.rules.decision == DecisionWord::guarded ? DecisionRule::guarded : DecisionRule::simple;
    switch (judge(value, expandedUncertainty, bandFact.band, rule)) {
    case Verdict::in:
        return CheckState::good;
    case Verdict::out:
        return CheckState::out;
    case Verdict::tooCloseToCall:
        break;
    }
    return CheckState::tooCloseToCall;
}

std::string Assessing::against(Length value, double expandedUncertainty, const BandFact& bandFact) const {
    return Core::say("%1 ± %2, band %3", format(value, units), formatSpread(expandedUncertainty, units),
                     format(bandFact.band, units));
}

void rest(Check& check, std::int64_t entry) {
    check.restsOn.push_back(entry);
    check.madeAt = std::max(check.madeAt, entry);
}

const Check* Assessment::find(std::string_view code) const {
    const auto at = std::ranges::find(checks, code, [](const Check& c) { return std::string_view(c.code); });
    return at == checks.end() ? nullptr : &*at;
}

const Gate& Assessment::gate(GateKind kind) const {
    return *std::ranges::find(gates, kind, &Gate::kind);
}

std::size_t Assessment::openAt(Station station) const {
    return static_cast<std::size_t>(
        std::ranges::count_if(checks, [&](const Check& c) { return c.place.station == station && !c.isGood(); }));
}

Assessment assess(const Facts& facts, const Units& units) {
    Assessment assessment;
    const Assessing a{facts, units, assessment, surveyRepeatability(facts)};
    bearingChecks(a);
    fastenerChecks(a);
    gapChecks(a);
    stackChecks(a);
    recheckChecks(a);
    flushnessCheck(a);
    trialFitChecks(a);
    pickupCheck(a);
    verifyRoundCheck(a);
    findingsCheck(a);
    makeGates(a);
    makeNextStep(a);
    return assessment;
}

Assessment assess(const Ledger& ledger, const Units& units) {
    return assess(fold(ledger), units);
}

} // namespace caprail
