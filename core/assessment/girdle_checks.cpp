// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/rests_on.h>
#include <fasteners/movement.h>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

Length gapOf(const GapReading& reading) {
    return reading.gap.value;
}

std::string because(const Change& change) {
    return Core::say("Entry %1: %2.", change.entry, change.what);
}

/// After main fasteners of this cap moved in verify rounds: where the new gap must lie, from the last accepted gap
/// before. Only movements widen it; once anything else turned a fastener of the cap, there is nothing to predict.
std::optional<Band> windowAfterMovement(const Facts& facts, Position p, const std::vector<Seen<GapReading>>& fallen) {
    const Change felled = facts.gapFelledBy(p);
    GapWindow window;
    bool hasMoved = false;
    std::int64_t firstMove = 0;
    std::vector<std::pair<FastenerId, Angle>> moves;
    for (const RoundFact& round : facts.rounds) {
        for (const auto& [fastener, outcome] : round.outcomes) {
            const bool isHere = fastener.kind == FastenerKind::mainCap && fastener.number == p.cap &&
                                outcome.what.outcome == Outcome::moved && outcome.what.angle;
            if (isHere && !fallen.empty() && outcome.entry > fallen.back().entry) {
                moves.emplace_back(fastener, outcome.what.angle->value);
                firstMove = firstMove == 0 ? outcome.entry : std::min(firstMove, outcome.entry);
                hasMoved = hasMoved || outcome.entry == felled.entry;
            }
        }
    }
    if (!hasMoved) {
        return {};
    }
    // The readings that stood until the first of these movements.
    std::vector<Length> before;
    for (const auto& reading : fallen) {
        if (reading.entry < firstMove) {
            before.push_back(gapOf(reading.what));
        }
    }
    const Length last = summarise(before).median;
    window = {last, last};
    for (const auto& [fastener, angle] : moves) {
        const auto* group = facts.groupOf(fastener);
        const auto thread = group == nullptr ? Result<Thread>(refuse("")) : parseThread(group->what.thread);
        const auto next = thread ? gapAfterMovement(window, *thread, angle, {}) : Result<Worked<GapWindow>>(refuse(""));
        if (!next) {
            return {};
        }
        window = next->value;
    }
    const auto band = Band::between(window.smallest, window.largest);
    return band ? std::optional(*band) : std::nullopt;
}

GapResult gapResult(const Assessing& a, Position p) {
    GapResult result;
    const auto standingNow = a.facts.standingGaps(p);
    result.standing.assign(standingNow.begin(), standingNow.end());
    if (const auto all = a.facts.gaps.find(p); all != a.facts.gaps.end()) {
        const auto standing = static_cast<std::ptrdiff_t>(result.standing.size());
        result.fallen.assign(all->second.begin(), all->second.end() - standing);
    }
    if (!result.standing.empty()) {
        const auto summary = summarise(lengthsOf(result.standing, gapOf));
        result.mean = summary.mean;
        result.standardDeviation = summary.standardDeviation;
        result.range = summary.range;
        result.last = summary.median;
        result.expandedUncertainty = expandedBy(a.facts, gapBudgetOf(a.facts, p, a.repeatability));
    } else {
        result.window = windowAfterMovement(a.facts, p, result.fallen);
    }
    return result;
}

/// Whether the standing readings of a position agree, and what the person must do if not.
void judgeGap(const Assessing& a, Check& check, GapResult& result) {
    const GapSurvey survey = acceptGap(lengthsOf(result.standing, gapOf), a.facts.rules.repeatLimit,
                                       static_cast<int>(a.facts.rules.minimumPasses), a.units);
    check.sentence = survey.sentence;
    if (survey.accepted) {
        result.accepted = survey.accepted;
        check.state = CheckState::good;
    } else {
        check.remedy = Core::say("Read it in another pass.");
    }
}

void gapCheck(const Assessing& a, Position p) {
    Check& check = a.add(CheckKind::gap, p, code(p), Core::say("Gap at %1", describe(p)), {Station::girdle, code(p)});
    GapResult& result = a.out.gaps[p] = gapResult(a, p);
    check.restsOn.reserve(result.standing.size());
    for (const auto& reading : result.standing) {
        rest(check, reading.entry);
    }
    if (!result.standing.empty()) {
        judgeGap(a, check, result);
        return;
    }
    check.remedy = Core::say("Lay the straightedge across the rails and read the gap down to the washer.");
    if (result.fallen.empty()) {
        return;
    }
    check.state = CheckState::stale;
    check.staleBecause = a.facts.gapFelledBy(p);
    check.madeAt = result.fallen.back().entry;
    check.sentence = because(check.staleBecause);
    if (result.window) {
        check.sentence += " " + Core::say("The new gap lies within %1.", format(*result.window, a.units));
    }
    check.remedy = Core::say("Read the gap again, in two passes or more.");
}

/// The pass that is being read: the earliest that some position not accepted yet still lacks; once all are accepted,
/// the one after the last.
std::int64_t nextPass(const std::map<Position, GapResult>& gaps) {
    std::optional<std::int64_t> earliest;
    std::int64_t last = 0;
    for (const auto& [p, gap] : gaps) {
        std::int64_t passHere = 0;
        for (const auto* readings : {&gap.fallen, &gap.standing}) {
            for (const auto& reading : *readings) {
                passHere = std::max(passHere, reading.what.pass);
            }
        }
        last = std::max(last, passHere);
        if (!gap.accepted) {
            earliest = std::min(earliest.value_or(passHere), passHere);
        }
    }
    return earliest.value_or(last) + 1;
}

void surveyResult(const Assessing& a) {
    SurveyResult& survey = a.out.survey;
    if (a.repeatability) {
        survey.pooledStandardDeviation = a.repeatability->standardDeviation;
    }
    for (const auto& [p, gap] : a.out.gaps) {
        ++survey.positions;
        if (gap.accepted) {
            ++survey.accepted;
            survey.smallest = std::min(survey.smallest.value_or(*gap.accepted), *gap.accepted);
            survey.largest = std::max(survey.largest.value_or(*gap.accepted), *gap.accepted);
        }
    }
    if (survey.smallest) {
        survey.spread = *survey.largest - *survey.smallest;
    }
    survey.nextPass = nextPass(a.out.gaps);
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
        if (!shim->second.measured()) {
            result.unmeasured.push_back(name);
        } else if (shim->second.isOffMarking(a.facts.rules)) {
            result.suspect.push_back(name);
        }
    }
    const GapResult& gap = a.out.gaps[p];
    if (gap.accepted) {
        result.residual = *gap.accepted - result.thickness;
        result.expandedUncertainty = expandedBy(a.facts, residualBudgetOf(a.facts, p, a.repeatability));
    }
    return result;
}

void judgeStack(const Assessing& a, Check& check, const StackResult& result) {
    const BandFact* band = a.band(bands::residual);
    if (!result.unmeasured.empty()) {
        check.sentence = Core::say("Shim %1 was never measured.", result.unmeasured.front());
        check.remedy = Core::say("Measure shim %1 with the micrometer.", result.unmeasured.front());
    } else if (band == nullptr) {
        check.sentence = Core::say("There is no band for the residual.");
        check.remedy = Core::say("Set the band “residual” at the engine station.");
    } else if (result.residual) {
        check.state = a.judged(*result.residual, result.expandedUncertainty, *band);
        check.sentence = Core::say("Residual %1.", a.against(*result.residual, result.expandedUncertainty, *band));
        if (check.state == CheckState::out) {
            check.remedy = *result.residual > band->band.hi() ? Core::say("The stack is low: build it thicker.")
                                                              : Core::say("The stack is proud: build it thinner.");
        } else if (check.state == CheckState::tooCloseToCall) {
            check.remedy = Core::say("Read the gap and the shims once more, or build a stack nearer to the middle.");
        }
    }
}

void stackCheck(const Assessing& a, Position p) {
    Check& check =
        a.add(CheckKind::stack, p, code(p), Core::say("Stack at %1", describe(p)), {Station::girdle, code(p)});
    const auto stack = a.facts.stacks.find(p);
    if (stack == a.facts.stacks.end()) {
        check.remedy = Core::say("Take the plan over, or build the stack by hand.");
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
        check.sentence = because(gap.staleBecause);
        check.remedy = Core::say("Read the gap at %1 first.", describe(p));
        return;
    }
    if (!gap.isGood()) {
        check.sentence = Core::say("Its gap is not accepted yet.");
        check.remedy = Core::say("Read the gap at %1 first.", describe(p));
        return;
    }
    judgeStack(a, check, result);
    const std::string numbers = check.sentence;
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.sentence += " " + Core::say("Now: %1", numbers);
        check.remedy = Core::say("Look at the residual: judge it again, or build the stack anew.");
    }
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
        check.sentence = Core::say("It drags.");
        break;
    case Feel::rocks:
        check.state = CheckState::out;
        check.sentence = Core::say("It rocks: the stack is proud.");
        check.remedy = Core::say("Build the stack thinner, and try again.");
        break;
    case Feel::loose:
        check.state = CheckState::out;
        check.sentence = Core::say("It is loose: the stack is low.");
        check.remedy = Core::say("Build the stack thicker, and try again.");
        break;
    }
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Lay the straightedge on the stack again.");
    } else if (check.isGood()) {
        check.remedy.clear();
    }
}

} // namespace

void gapChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    for (const Position p : a.facts.layout->positions()) {
        gapCheck(a, p);
    }
    surveyResult(a);
}

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
