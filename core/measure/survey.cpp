// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <measure/survey.h>
#include <base/say.h>

namespace caprail {

namespace {

/// "0.0590 in (pass 3, Ana)"; what is not known is left out.
std::string nameOf(const SurveyReading& reading, const Units& units) {
    std::string by = reading.pass > 0 ? Core::say("pass %1", reading.pass) : "";
    if (!reading.person.empty()) {
        by += (by.empty() ? "" : ", ") + reading.person;
    }
    return format(reading.gap, units) + (by.empty() ? "" : " (" + by + ")");
}

std::string counted(std::size_t n) {
    return Core::count(n, Core::mark("%1 reading"), Core::mark("%1 readings"));
}

std::string acceptedSentence(const GapSurvey& survey, std::span<const SurveyReading> readings, const Units& units) {
    const std::string sentence =
        readings.size() > 1 ? Core::say("%1, %2 within %3.", format(survey.summary.median, units),
                                        counted(readings.size()), format(survey.summary.range, units))
                            : Core::say("%1, %2.", format(survey.summary.median, units), counted(readings.size()));
    return survey.odd
               ? sentence + " " +
                     Core::say("%1 is an outlier; the other readings outvote it.", nameOf(readings[*survey.odd], units))
               : sentence;
}

std::string anotherPassSentence(const GapSurvey& survey, std::span<const SurveyReading> readings, Length repeatLimit,
                                std::size_t needed, const Units& units) {
    if (!survey.odd) {
        return Core::say("%1 of at least %2: read another pass.", counted(readings.size()), needed);
    }
    // Of two readings neither is the odd one.
    return readings.size() > 2
               ? Core::say(
                     "The readings differ by %1, more than the repeat limit of %2 allows; %3 is the odd one: read "
                     "another pass.",
                     format(survey.summary.range, units), format(repeatLimit, units),
                     nameOf(readings[*survey.odd], units))
               : Core::say("The readings differ by %1, more than the repeat limit of %2 allows: read another pass.",
                           format(survey.summary.range, units), format(repeatLimit, units));
}

/// The smallest and largest of the most readings that differ by no more than the limit and lie around the median: one
/// of them at or below it, one at or above it, unless two that differ leave none.
std::pair<Length, Length> agreeingRange(std::vector<Length> gaps, Length median, Length repeatLimit) {
    std::ranges::sort(gaps);
    std::pair<Length, Length> best{median, median};
    std::size_t most = 0;
    for (std::size_t first = 0; first < gaps.size(); ++first) {
        std::size_t last = first;
        while (last + 1 < gaps.size() && gaps[last + 1] - gaps[first] <= repeatLimit) {
            ++last;
        }
        if (gaps[first] <= median && median <= gaps[last] && last - first + 1 > most) {
            most = last - first + 1;
            best = {gaps[first], gaps[last]};
        }
    }
    return best;
}

} // namespace

GapSurvey surveyGap(std::span<const SurveyReading> readings, Length repeatLimit, std::int64_t minimumPasses,
                    const Units& units) {
    GapSurvey survey;
    if (readings.empty()) {
        survey.sentence = Core::say("Not read yet.");
        return survey;
    }
    std::vector<Length> gaps;
    gaps.reserve(readings.size());
    for (const SurveyReading& reading : readings) {
        gaps.push_back(reading.gap);
    }
    survey.summary = summarise(gaps);
    const auto [from, to] = agreeingRange(gaps, survey.summary.median, repeatLimit);
    Length farthest;
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        const Length distance = (gaps[i] - survey.summary.median).magnitude();
        if (from <= gaps[i] && gaps[i] <= to) {
            ++survey.agreeing;
        } else if (distance > farthest) {
            farthest = distance;
            survey.odd = i;
        }
    }
    const auto needed = static_cast<std::size_t>(std::max<std::int64_t>(1, minimumPasses));
    if (survey.agreeing >= needed && survey.agreeing * 2 > readings.size()) {
        survey.state = GapState::accepted;
        survey.accepted = survey.summary.median;
        survey.sentence = acceptedSentence(survey, readings, units);
    } else {
        survey.state = GapState::needsAnotherPass;
        survey.sentence = anotherPassSentence(survey, readings, repeatLimit, needed, units);
    }
    return survey;
}

GapSurvey acceptGap(std::span<const Length> readings, Length repeatLimit, std::int64_t minimumPasses,
                    const Units& units) {
    std::vector<SurveyReading> plain;
    plain.reserve(readings.size());
    for (const Length gap : readings) {
        plain.push_back({gap, 0, {}});
    }
    return surveyGap(plain, repeatLimit, minimumPasses, units);
}

} // namespace caprail
