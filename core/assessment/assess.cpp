// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/assessment.h>
#include <assessment/budget_of.h>
#include <assessment/checks.h>
#include <measure/verdict.h>
#include <base/say.h>

namespace caprail {

Check& Assessing::add(CheckKind kind, Subject subject, const std::string& subjectCode, std::string title,
                      Destination destination) const {
    Check check;
    check.kind = kind;
    check.subject = std::move(subject);
    check.code = std::string(word(kind)) + (subjectCode.empty() ? "" : ":" + subjectCode);
    check.title = std::move(title);
    check.destination = std::move(destination);
    return out.checks.emplace_back(std::move(check));
}

namespace {

CheckState stateOf(const std::optional<Verdict>& verdict) {
    if (!verdict) {
        return CheckState::notProven;
    }
    switch (*verdict) {
    case Verdict::in:
        return CheckState::good;
    case Verdict::out:
        return CheckState::out;
    case Verdict::tooCloseToCall:
        break;
    }
    return CheckState::tooCloseToCall;
}

} // namespace

DecisionRule Assessing::rule() const {
    return facts.rules.decision;
}

const Judged& Assessing::judge(Check& check, std::string name, Length value, const Uncertainty& uncertainty,
                               const Band& band, std::optional<DecisionRule> as) const {
    Judged judged{std::move(name), value, uncertainty, band, CheckState::notProven, {}, {}};
    judged.state = stateOf(caprail::judge(value, uncertainty, band, as.value_or(rule())));
    if (const auto* known = uncertainty.known()) {
        judged.conformity = conformity(value, known->standard, band);
    }
    return check.judged.emplace_back(std::move(judged));
}

const Judged& Assessing::judge(Check& check, std::string name, Length value, const UncertaintyBudget& budget,
                               const Band& band) const {
    judge(check, std::move(name), value, Uncertainty(budget, coverageOf(facts)), band);
    Judged& judged = check.judged.back();
    if (const auto expanded = judged.uncertainty.expanded();
        expanded && rule() == DecisionRule::guarded && !isUpperLimitOnly(band) &&
        !acceptanceZone(band, *expanded, rule())) {
        const double halfBand = static_cast<double>((band.hi() - band.lo()).value()) / 2;
        judged.wouldDo = whatWouldDo(budget, coverageOf(facts), halfBand);
    }
    return judged;
}

void Assessing::settle(Check& check, const std::string& whenOut, const std::string& whenTooClose) const {
    // The worst of them is the check's; what is out is out, whatever else is not known.
    constexpr CheckState worstFirst[] = {CheckState::out, CheckState::notProven, CheckState::tooCloseToCall,
                                         CheckState::good};
    const Judged* worst = nullptr;
    for (const CheckState state : worstFirst) {
        const auto at = std::ranges::find(check.judged, state, &Judged::state);
        if (worst == nullptr && at != check.judged.end()) {
            worst = &*at;
        }
    }
    if (worst == nullptr) {
        return;
    }
    check.state = worst->state;
    if (check.state == CheckState::out) {
        check.remedy = whenOut;
    } else if (check.state == CheckState::notProven) {
        check.remedy = remedyFor(worst->uncertainty.missing().front());
    } else if (check.state == CheckState::tooCloseToCall) {
        check.remedy = worst->wouldDo
                           ? Core::say("No value could pass with these instruments.") + " " + describe(*worst->wouldDo, units)
                           : whenTooClose;
    } else {
        check.remedy.clear();
    }
}

std::string Assessing::against(const Judged& judged) const {
    return Core::say("%1 %2, %3", formatFine(judged.value, units), describe(judged.uncertainty, units),
                     describeLimits(judged.band, units));
}

void rest(Check& check, std::int64_t entry) {
    check.restsOn.push_back(entry);
    check.madeAt = std::max(check.madeAt, entry);
}

const Check* Assessment::find(std::string_view checkCode) const {
    const auto at = std::ranges::find(checks, checkCode, [](const Check& c) { return std::string_view(c.code); });
    return at == checks.end() ? nullptr : &*at;
}

const Check* Assessment::find(CheckKind kind, const Subject& subject) const {
    const auto at =
        std::ranges::find_if(checks, [&](const Check& c) { return c.kind == kind && c.subject == subject; });
    return at == checks.end() ? nullptr : &*at;
}

const Gate& Assessment::gate(GateKind kind) const {
    return *std::ranges::find(gates, kind, &Gate::kind);
}

std::size_t Assessment::openAt(Station station) const {
    return static_cast<std::size_t>(
        std::ranges::count_if(checks, [&](const Check& c) { return c.destination.station == station && !c.isGood(); }));
}

Assessment assess(const Facts& facts, const Units& units) {
    Assessment assessment;
    const Scatters scatters(facts);
    const Assessing a{facts, units, assessment, scatters};
    for (const auto make : checkMakers) {
        make(a);
    }
    assessment.weaklyMeasured =
        static_cast<std::size_t>(std::ranges::count_if(assessment.checks, [](const Check& check) {
            return std::ranges::any_of(check.judged,
                                       [](const Judged& j) { return j.conformity && j.conformity->isWeak(); });
        }));
    assessment.passedByEye = static_cast<std::size_t>(std::ranges::count_if(facts.trialFits, [](const auto& at) {
        const TrialFitResult& what = at.second.what;
        return what.result == TrialResult::pass && mayBeMeasured(what.item);
    }));
    makeGates(a);
    makeNextStep(a);
    return assessment;
}

Assessment assess(const Ledger& ledger, const Units& units) {
    return assess(fold(ledger), units);
}

} // namespace caprail
