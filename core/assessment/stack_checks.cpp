// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/bracket.h>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

/// One way to know a residual.
struct Way {
    ResidualBy by = ResidualBy::arithmetic;
    Length residual;
    Uncertainty uncertainty;
};

/// What the straightedge tells is an interval, whose middle is no measured value: it lies in the band as a whole, or
/// proves nothing, whatever the rule says of values.
DecisionRule ruleOf(ResidualBy by, DecisionRule rule) {
    return by == ResidualBy::arithmetic ? rule : DecisionRule::guarded;
}

/// Of the ways that know the residual the one that knows it best; where that one cannot decide, another that can. A way
/// whose U is not known carries only where there is none else, or where it contradicts: its value lies outside the band,
/// and nobody can say by how much that is wrong. Else leaving out a limit of error would silence what speaks against the
/// stack.
Way bestWay(const std::vector<Way>& ways, const Band& band, DecisionRule rule) {
    const auto verdictOf = [&](const Way& way) {
        return judge(way.residual, way.uncertainty, band, ruleOf(way.by, rule));
    };
    for (const Way& way : ways) {
        if (!way.uncertainty.isKnown() && !band.contains(way.residual)) {
            return way;
        }
    }
    Way best = ways.front();
    for (const Way& way : ways) {
        const auto expanded = way.uncertainty.expanded();
        if (expanded && (!best.uncertainty.isKnown() || *expanded < *best.uncertainty.expanded())) {
            best = way;
        }
    }
    if (verdictOf(best) == Verdict::tooCloseToCall) {
        for (const Way& way : ways) {
            if (verdictOf(way) == Verdict::in) {
                return way;
            }
        }
    }
    return best;
}

/// The recheck of the stack as it lies there now; none: it was not made, or something that it rests on changed.
const Seen<RecheckMade>* currentRecheck(const Facts& facts, Position p) {
    const auto at = facts.rechecks.find(p);
    if (at == facts.rechecks.end()) {
        return nullptr;
    }
    Check probe;
    probe.kind = CheckKind::recheck;
    probe.subject = p;
    return newestChange(facts, probe).entry > at->second.entry ? nullptr : &at->second;
}

void carryResidual(const Assessing& a, Position p, StackResult& result) {
    std::vector<Way> ways{{ResidualBy::arithmetic, *result.residual, result.uncertainty}};
    if (const auto* recheck = currentRecheck(a.facts, p)) {
        if (const auto bracket = bracketOf(a.facts, *recheck, a.scatters.shims)) {
            ways.push_back({ResidualBy::bracket, bracket->residual, bracket->uncertainty});
        }
        if (const auto felt = byFeel(a.facts, *recheck)) {
            ways.push_back({ResidualBy::feel, felt->residual, felt->uncertainty});
        }
    }
    for (std::size_t i = 1; i < ways.size(); ++i) {
        const Way& way = ways[i];
        const auto expanded = way.uncertainty.expanded();
        const auto before = result.feltUncertainty.expanded();
        if (!result.feltResidual || (expanded && (!before || *expanded < *before))) {
            result.feltResidual = way.residual;
            result.feltUncertainty = way.uncertainty;
            result.feltBy = way.by;
        }
    }
    const BandFact* band = a.band(bands::residual);
    const Way way = band == nullptr ? ways.front() : bestWay(ways, band->band, a.rule());
    result.carriedBy = way.by;
    result.carriedResidual = way.residual;
    result.carriedUncertainty = way.uncertainty;
}

StackResult stackResult(const Assessing& a, Position p, const StackFact& stack) {
    StackResult result;
    result.shims = stack.shims;
    result.isOn = stack.isOn;
    for (const auto& name : stack.shims) {
        const auto shim = a.facts.shims.find(name);
        if (shim == a.facts.shims.end()) {
            continue;
        }
        result.thickness += shim->second.thickness();
        const auto measured = shim->second.measured();
        if (!measured) {
            result.unmeasured.push_back(name);
        } else if ((*measured - shim->second.added.what.marked.value).magnitude() > a.facts.rules.kitTolerance) {
            result.suspect.push_back(name);
        }
    }
    const GapResult& gap = a.out.gaps[p];
    if (gap.accepted) {
        result.residual = *gap.accepted - result.thickness;
        result.uncertainty = {residualBudgetOf(a.facts, p, a.scatters), coverageOf(a.facts)};
        carryResidual(a, p, result);
    }
    return result;
}

std::string carriedSentence(const Assessing& a, const Judged& judged, const StackResult& result) {
    switch (result.carriedBy) {
    case ResidualBy::bracket:
        return Core::say("Residual %1, by the bracketed recheck.", a.against(judged));
    case ResidualBy::feel:
        return Core::say("Residual %1, by a feel that was tried.", a.against(judged));
    case ResidualBy::arithmetic:
        break;
    }
    return Core::say("Residual %1.", a.against(judged));
}

/// What helps when what is felt and what is worked out disagree: the cheap and likely first, the stack last.
std::string remediesInOrder() {
    return Core::say("Clean; turn the washer, turn it over, look for a burr; measure the shims; read the gap again; change "
                     "the stack: in this order.");
}

/// Whether the numbers say that the stack is in its band, whatever the straightedge says.
bool numbersSayRight(const Assessing& a, Position p) {
    const auto stack = a.out.stacks.find(p);
    const BandFact* band = a.band(bands::residual);
    return stack != a.out.stacks.end() && band != nullptr && stack->second.residual &&
           band->band.contains(*stack->second.residual);
}

/// Whether the straightedge and the arithmetic cannot both be right.
bool doDisagree(const StackResult& result) {
    const auto own = result.uncertainty.expanded();
    const auto carried = result.carriedUncertainty.expanded();
    return result.carriedBy != ResidualBy::arithmetic && own && carried &&
           static_cast<double>((*result.residual - *result.carriedResidual).magnitude().value()) > *own + *carried;
}

void judgeResidual(const Assessing& a, Check& check, Position p, const StackResult& result, const Band& band) {
    const Judged& judged = result.carriedBy == ResidualBy::arithmetic
                               ? a.judge(check, "", *result.residual, residualBudgetOf(a.facts, p, a.scatters), band)
                               : a.judge(check, "", *result.carriedResidual, result.carriedUncertainty, band,
                                         DecisionRule::guarded);
    if (result.carriedBy != ResidualBy::arithmetic) {
        rest(check, a.facts.rechecks.at(p).entry);
    }
    check.sentence = carriedSentence(a, judged, result);
    const bool couldNotPass = judged.wouldDo.has_value();
    a.settle(check,
             judged.value > band.hi() ? Core::say("The stack is low: build it thicker.")
                                      : Core::say("The stack is proud: build it thinner."),
             Core::say("Read the gap and the shims once more, or build a stack nearer to the middle."));
    if (check.state == CheckState::tooCloseToCall && couldNotPass) {
        check.remedy += " " + Core::say("Or bracket the recheck: with shims exchanged it must rock, and be loose.");
    }
    if (doDisagree(result)) {
        check.sentence += " " + Core::say("The arithmetic says %1 %2, which is impossible.",
                                          formatFine(*result.residual, a.units), describe(result.uncertainty, a.units));
        check.remedy += (check.remedy.empty() ? "" : " ") + remediesInOrder();
    }
}

void judgeStack(const Assessing& a, Check& check, Position p, const StackResult& result) {
    const BandFact* band = a.band(bands::residual);
    if (!result.unmeasured.empty()) {
        check.sentence = Core::say("Shim %1 was never measured.", result.unmeasured.front());
        check.remedy = Core::say("Measure shim %1 with the micrometer.", result.unmeasured.front());
    } else if (band == nullptr) {
        check.sentence = Core::say("There is no band for the residual.");
        check.remedy = Core::say("Set the band “residual” at the engine station.");
    } else if (result.residual) {
        judgeResidual(a, check, p, result, band->band);
    }
}

void stackCheck(const Assessing& a, Position p) {
    Check& check =
        a.add(CheckKind::stack, p, code(p), Core::say("Stack at %1", describe(p)), {Station::girdle, code(p)});
    const auto stack = a.facts.stacks.find(p);
    if (stack == a.facts.stacks.end()) {
        // Neither a plan nor a hand has anything to build it of.
        if (a.facts.shims.empty()) {
            check.remedy = Core::say("List the shims of the kit first.");
            check.destination.subject = "shims";
            return;
        }
        check.remedy = Core::say("Use the plan, or build the stack by hand.");
        return;
    }
    rest(check, stack->second.entry);
    for (const auto& name : stack->second.shims) {
        if (const auto shim = a.facts.shims.find(name); shim != a.facts.shims.end() && !shim->second.readings.empty()) {
            check.restsOn.push_back(shim->second.readings.back().entry);
        }
    }
    const StackResult& result = a.out.stacks[p] = stackResult(a, p, stack->second);
    const Check& gap = *a.out.find("gap:" + code(p));
    if (gap.state == CheckState::stale) {
        check.state = CheckState::stale;
        check.staleBecause = gap.staleBecause;
        check.sentence = describe(gap.staleBecause, a.units);
        check.remedy = Core::say("Read the gap at %1 first.", describe(p));
        return;
    }
    if (!gap.isGood()) {
        check.sentence = Core::say("Its gap is not accepted yet.");
        check.remedy = Core::say("Read the gap at %1 first.", describe(p));
        return;
    }
    judgeStack(a, check, p, result);
    const std::string numbers = check.sentence;
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.sentence += " " + Core::say("Now: %1", numbers);
        check.remedy = Core::say("Look at the residual: accept it by the new numbers with a reason, or build the stack "
                                 "again.");
    }
}

/// What was felt, with the exchanges where there were any.
std::string bracketSentence(const RecheckMade& recheck) {
    std::string text = Core::say("It drags.");
    if (recheck.thickerFelt) {
        text += " " + Core::say("Thicker: %1.", shown(*recheck.thickerFelt));
    }
    if (recheck.thinnerFelt) {
        text += " " + Core::say("Thinner: %1.", shown(*recheck.thinnerFelt));
    }
    return text;
}

void recheckCheck(const Assessing& a, Position p) {
    Check& check =
        a.add(CheckKind::recheck, p, code(p), Core::say("Recheck at %1", describe(p)), {Station::girdle, code(p)});
    const auto at = a.facts.rechecks.find(p);
    check.remedy = Core::say("Lay the straightedge on the built stack.");
    if (at == a.facts.rechecks.end()) {
        return;
    }
    rest(check, at->second.entry);
    switch (at->second.what.feel) {
    case Feel::drags:
        check.state = CheckState::good;
        check.sentence = bracketSentence(at->second.what);
        break;
    case Feel::rocks:
        check.state = CheckState::out;
        check.sentence = Core::say("It rocks: the stack is proud.");
        check.remedy = numbersSayRight(a, p)
                           ? Core::say("By the numbers it should drag.") + " " + remediesInOrder()
                           : Core::say("Build the stack thinner, and try again.");
        break;
    case Feel::loose:
        check.state = CheckState::out;
        check.sentence = Core::say("It is loose: the stack is low.");
        check.remedy = numbersSayRight(a, p)
                           ? Core::say("By the numbers it should drag.") + " " + remediesInOrder()
                           : Core::say("Build the stack thicker, and try again.");
        break;
    }
    applyStaleness(check, a.facts, a.units);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Lay the straightedge on the stack again.");
    } else if (check.isGood()) {
        check.remedy.clear();
    }
}

} // namespace

void stackChecks(const Assessing& a) {
    if (a.facts.layout) {
        for (const Position p : a.facts.layout->positions()) {
            stackCheck(a, p);
        }
    }
}

void recheckChecks(const Assessing& a) {
    if (a.facts.layout) {
        for (const Position p : a.facts.layout->positions()) {
            recheckCheck(a, p);
        }
    }
}

} // namespace caprail
