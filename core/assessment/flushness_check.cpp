// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/budget_of.h>
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <ledger/band_names.h>
#include <shims/flushness.h>
#include <units/say.h>

namespace caprail {

namespace {

/// The fit is linear in the residuals, so a residual of 1 mm alone at one place shows how much of its uncertainty goes
/// into the twist. Errors that all places share (leaves, straightedge) make offset rather than twist: taking them as
/// independent errs on the safe side.
UncertaintyBudget twistBudget(const Assessing& a, std::vector<HeightAt> heights, const std::vector<Position>& places) {
    constexpr Length one = millimetres(1);
    UncertaintyBudget budget;
    for (HeightAt& height : heights) {
        height.residual = Length();
    }
    for (std::size_t i = 0; i < heights.size(); ++i) {
        heights[i].residual = one;
        const double weight = flushnessOf(heights).twist.value_or(0) / static_cast<double>(one.value());
        heights[i].residual = Length();
        const Uncertainty& residual = a.out.stacks.at(places[i]).carriedUncertainty;
        if (!residual.isKnown()) {
            budget.missing = residual.missing();
            return budget;
        }
        UncertaintyTerm term;
        term.name = Core::say("residual at %1", describe(places[i]));
        term.standardUncertainty = residual.known()->standard;
        term.sensitivity = weight;
        term.degreesOfFreedom = residual.known()->degreesOfFreedom;
        budget.terms.push_back(std::move(term));
    }
    return budget;
}

/// The fit over every position that has a residual.
void fitPlate(const Assessing& a, const std::vector<Position>& positions) {
    std::vector<HeightAt> heights;
    std::vector<Position> places;
    for (const Position p : positions) {
        const auto stack = a.out.stacks.find(p);
        if (stack != a.out.stacks.end() && stack->second.carriedResidual) {
            heights.push_back({a.facts.layout->at(p).x, p.side == Side::left ? -1 : 1, *stack->second.carriedResidual});
            places.push_back(p);
        }
    }
    const Flushness fit = flushnessOf(heights);
    FlushnessResult& result = a.out.flushness;
    result.isComplete = places.size() == positions.size();
    result.offset = fit.offset;
    result.pitch = fit.pitch;
    result.roll = fit.roll;
    result.twist = fit.twist;
    result.sentence = fit.sentence;
    for (std::size_t i = 0; i < places.size(); ++i) {
        result.localError[places[i]] = fit.localError[i];
    }
    if (fit.twist) {
        result.uncertaintyTwist = {twistBudget(a, heights, places), coverageOf(a.facts)};
    }
}

std::string inWords(const Assessing& a) {
    const FlushnessResult& f = a.out.flushness;
    std::string text;
    const auto add = [&](const char* name, const std::optional<double>& value) {
        if (value) {
            text +=
                (text.empty() ? "" : ", ") + std::string(name) + " " + formatFineSigned(Length(toNearest(*value)), a.units);
        }
    };
    add("offset", f.offset);
    add("pitch", f.pitch);
    add("roll", f.roll);
    add("twist", f.twist);
    return text;
}

} // namespace

void flushnessCheck(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    Check& check =
        a.add(CheckKind::flushness, {}, {}, Core::say("Flushness of the plate"), {Station::girdle, "flushness"});
    const auto positions = a.facts.layout->positions();
    fitPlate(a, positions);
    for (const Position p : positions) {
        const Check& stack = *a.out.find("stack:" + code(p));
        for (const std::int64_t entry : stack.restsOn) {
            rest(check, entry);
        }
        if (stack.state == CheckState::stale && check.staleBecause.entry < stack.staleBecause.entry) {
            check.staleBecause = stack.staleBecause;
        }
    }
    if (check.staleBecause.entry != 0) {
        check.state = CheckState::stale;
        check.sentence = describe(check.staleBecause, a.units);
        check.remedy = Core::say("Put every stack right first.");
        return;
    }
    if (!a.out.flushness.isComplete) {
        check.sentence = Core::say("Not every position has a stack over an accepted gap.");
        check.remedy = Core::say("Build the missing stacks first.");
        return;
    }
    const BandFact* band = a.band(bands::twist);
    const std::optional<double> twist = a.out.flushness.twist;
    check.state = CheckState::good;
    check.sentence = inWords(a) + ". " + a.out.flushness.sentence;
    if (band != nullptr && twist) {
        const Judged& judged =
            a.judge(check, Core::say("twist"), Length(toNearest(*twist)), a.out.flushness.uncertaintyTwist, band->band);
        check.sentence += (check.sentence.ends_with(' ') ? "" : " ") + Core::say("Twist %1.", a.against(judged));
        a.settle(check, Core::say("Plan the stacks for least twist."),
                 Core::say("Plan the stacks for least twist, or know the residuals better by bracketed rechecks."));
    }
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Look at the flushness, and judge it again.");
    }
}

} // namespace caprail
