// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/fit.h>
#include <measure/budgets.h>
#include <base/say.h>

namespace caprail {

namespace {

std::string remedyFor(Verdict verdict, Length mean, const Band& band, const Units& units) {
    switch (verdict) {
    case Verdict::in:
        return {};
    case Verdict::out:
        return mean > band.hi() ? Core::say("It is %1 above its band: bring it in, and measure again.",
                                            format(mean - band.hi(), units))
                                : Core::say("It is %1 below its band: bring it in, and measure again.",
                                            format(band.lo() - mean, units));
    case Verdict::tooCloseToCall:
        break;
    }
    return Core::say("Measure again: more readings, or a finer instrument, make the uncertainty smaller.");
}

} // namespace

Result<FitJudgement> judgeFit(const FitToJudge& fit, Coverage coverage, DecisionRule rule, const Units& units) {
    if (fit.name.empty()) {
        return refuse(Core::say("A fit needs a name, such as crank end play."));
    }
    if (fit.readings.empty()) {
        return refuse(Core::say("%1 is not measured: measure it.", fit.name));
    }
    FitJudgement judgement;
    judgement.summary = summarise(fit.readings);
    judgement.mean = Length(toNearest(judgement.summary.mean));
    MeasuredTerm term;
    term.name = fit.name;
    term.instrument = fit.instrument;
    term.readings = fit.readings.size();
    term.repeatability = fit.repeatability ? fit.repeatability : pool(std::span(&judgement.summary, 1));
    term.limitOfError = fit.limitOfError;
    auto budget = budgetFor(std::span(&term, 1));
    if (!budget) {
        return tl::unexpected(budget.error());
    }
    judgement.budget = std::move(*budget);
    judgement.expandedUncertainty = judgement.budget.expanded(coverage);
    judgement.verdict = judge(judgement.mean, judgement.expandedUncertainty, fit.band, rule);
    judgement.sentence =
        fit.name + ": " + describeVerdict(judgement.mean, judgement.expandedUncertainty, fit.band, rule, units);
    judgement.remedy = remedyFor(judgement.verdict, judgement.mean, fit.band, units);
    return judgement;
}

} // namespace caprail
