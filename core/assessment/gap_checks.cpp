// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/budget_of.h>
#include <assessment/figures.h>
#include <assessment/gap_window.h>
#include <base/say.h>

namespace caprail {

namespace {

Length gapOf(const GapReading& reading) {
    return reading.value();
}

GapResult gapResult(const Assessing& a, Position p) {
    GapResult result;
    const auto currentReadings = a.facts.currentGaps(p);
    result.current.assign(currentReadings.begin(), currentReadings.end());
    if (const auto all = a.facts.gaps.find(p); all != a.facts.gaps.end()) {
        const auto current = static_cast<std::ptrdiff_t>(result.current.size());
        result.outdated.assign(all->second.begin(), all->second.end() - current);
    }
    if (!result.current.empty()) {
        const auto summary = summarise(lengthsOf(result.current, gapOf));
        result.mean = summary.mean;
        result.standardDeviation = summary.standardDeviation;
        result.range = summary.range;
        result.last = summary.median;
        result.uncertainty = {gapBudgetOf(a.facts, p, a.scatters), coverageOf(a.facts)};
    } else {
        result.window = windowAfterMovement(a.facts, p);
    }
    return result;
}

/// Whether the current readings of a position agree, and what the person must do if not.
void judgeGap(const Assessing& a, Check& check, GapResult& result) {
    const GapSurvey survey =
        acceptGap(lengthsOf(result.current, gapOf), a.facts.rules.repeatLimit, a.facts.rules.minimumPasses, a.units);
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
    for (const auto& reading : result.current) {
        rest(check, reading.entry);
    }
    if (!result.current.empty()) {
        judgeGap(a, check, result);
        return;
    }
    check.remedy = Core::say("Lay the straightedge across the rails and read the gap down to the washer.");
    if (result.outdated.empty()) {
        return;
    }
    check.state = CheckState::stale;
    check.staleBecause = a.facts.gapInvalidatedBy(p);
    check.madeAt = result.outdated.back().entry;
    check.sentence = describe(check.staleBecause, a.units);
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
        for (const auto* readings : {&gap.outdated, &gap.current}) {
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
    if (const auto repeatability = a.scatters.gaps.repeatability) {
        survey.pooledStandardDeviation = repeatability->standardDeviation;
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

} // namespace caprail
