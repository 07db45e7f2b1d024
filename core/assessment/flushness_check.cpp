// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/budget_of.h>
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <ledger/band_names.h>
#include <shims/flushness.h>
#include <base/say.h>

namespace caprail {

namespace {

/// One way to know every residual: by whatever carries each verdict, or by the straightedge alone.
struct Heights {
    std::vector<Position> places;
    std::vector<HeightAt> at;
    std::vector<Uncertainty> uncertainties;
};

Heights heightsBy(const Assessing& a, const std::vector<Position>& positions, bool byStraightedge) {
    Heights heights;
    for (const Position p : positions) {
        const auto stack = a.out.stacks.find(p);
        if (stack == a.out.stacks.end()) {
            continue;
        }
        const auto& residual = byStraightedge ? stack->second.feltResidual : stack->second.carriedResidual;
        if (residual) {
            heights.places.push_back(p);
            heights.at.push_back({a.facts.layout->at(p).x, p.side == Side::left ? -1 : 1, *residual});
            heights.uncertainties.push_back(byStraightedge ? stack->second.feltUncertainty
                                                           : stack->second.carriedUncertainty);
        }
    }
    return heights;
}

/// The fit is linear in the residuals, so a residual of 1 mm alone at one place shows how much of its uncertainty goes
/// into the twist. Errors that all places share (leaves, straightedge) make offset rather than twist: taking them as
/// independent errs on the safe side.
UncertaintyBudget twistBudget(const Heights& heights) {
    constexpr Length one = millimetres(1);
    UncertaintyBudget budget;
    std::vector<HeightAt> probe = heights.at;
    for (HeightAt& height : probe) {
        height.residual = Length();
    }
    for (std::size_t i = 0; i < probe.size(); ++i) {
        const auto* known = heights.uncertainties[i].known();
        if (known == nullptr) {
            budget.missing = heights.uncertainties[i].missing();
            return budget;
        }
        probe[i].residual = one;
        UncertaintyTerm term;
        term.name = Core::say("residual at %1", describe(heights.places[i]));
        term.standardUncertainty = known->standard;
        term.sensitivity = flushnessOf(probe).twist.value_or(0) / static_cast<double>(one.value());
        term.degreesOfFreedom = known->degreesOfFreedom;
        budget.terms.push_back(std::move(term));
        probe[i].residual = Length();
    }
    return budget;
}

FlushnessResult fitPlate(const Assessing& a, const Heights& heights, std::size_t positions) {
    const Flushness fit = flushnessOf(heights.at);
    FlushnessResult result;
    result.isComplete = heights.places.size() == positions;
    result.offset = fit.offset;
    result.pitch = fit.pitch;
    result.roll = fit.roll;
    result.twist = fit.twist;
    result.sentence = fit.sentence;
    for (std::size_t i = 0; i < heights.places.size(); ++i) {
        result.localError[heights.places[i]] = fit.localError[i];
    }
    if (fit.twist) {
        result.uncertaintyTwist = {twistBudget(heights), coverageOf(a.facts)};
    }
    return result;
}

/// The plate by what carries the verdicts; where its twist is then too close to call and the straightedge alone can
/// decide, by that: what was also known by arithmetic must not count against it.
FlushnessResult bestPlate(const Assessing& a, const std::vector<Position>& positions) {
    FlushnessResult plate = fitPlate(a, heightsBy(a, positions, false), positions.size());
    const BandFact* band = a.band(bands::twist);
    const auto verdict = [&](const FlushnessResult& f) {
        return judge(Length(toNearest(*f.twist)), f.uncertaintyTwist, band->band, a.rule());
    };
    if (band != nullptr && plate.isComplete && plate.twist && verdict(plate) == Verdict::tooCloseToCall) {
        FlushnessResult felt = fitPlate(a, heightsBy(a, positions, true), positions.size());
        if (felt.isComplete && felt.twist && verdict(felt) == Verdict::in) {
            return felt;
        }
    }
    return plate;
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
    a.out.flushness = bestPlate(a, positions);
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
        check.remedy = Core::say("Look at the flushness, and accept it by the new numbers with a reason.");
    }
}

} // namespace caprail
