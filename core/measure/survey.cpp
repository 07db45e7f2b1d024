// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <measure/survey.h>

namespace caprail {

GapSurvey acceptGap(std::span<const Length> readings, Length repeatLimit, int minimumPasses, const Units& units) {
    GapSurvey survey;
    if (readings.empty()) {
        survey.sentence = "Not read yet.";
        return survey;
    }
    const Summary summary = summarise(readings);
    const auto distance = [&](Length l) { return (l - summary.median).magnitude(); };
    survey.agreeing =
        static_cast<std::size_t>(std::ranges::count_if(readings, [&](Length l) { return distance(l) <= repeatLimit; }));
    const auto odd = *std::ranges::max_element(readings, {}, distance);
    const auto needed = static_cast<std::size_t>(std::max(1, minimumPasses));
    const std::string count = std::to_string(readings.size()) + (readings.size() == 1 ? " reading" : " readings");
    if (survey.agreeing >= needed && survey.agreeing * 2 > readings.size()) {
        survey.accepted = summary.median;
        survey.sentence =
            format(summary.median, units) + ", " + count + " within " + format(summary.range, units) + ".";
        if (survey.agreeing < readings.size()) {
            survey.sentence += " " + format(odd, units) + " stands apart and is outvoted.";
        }
        return survey;
    }
    survey.sentence = count + " of at least " + std::to_string(needed) + ".";
    if (readings.size() > 1 && survey.agreeing < readings.size()) {
        survey.sentence = "The readings differ by " + format(summary.range, units) +
                          ", more than the repeat limit of " + format(repeatLimit, units) + " allows.";
        if (readings.size() > 2) {
            survey.sentence += " " + format(odd, units) + " is the odd one.";
        }
    }
    return survey;
}

} // namespace caprail
