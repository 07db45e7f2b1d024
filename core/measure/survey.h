// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// When the readings of one gap are good enough to go on with, and what to do when they are not.
#include <measure/statistics.h>
#include <string>
#include <units/format.h>

namespace caprail {

enum class GapState {
    none,             ///< no reading
    needsAnotherPass, ///< too few readings, or they do not agree
    accepted
};

/// One reading since the last thing that disturbed the position.
struct SurveyReading {
    Length gap;
    std::int64_t pass = 0; ///< 0: not known
    std::string person;    ///< may be empty
};

/// What the current readings of one gap come to.
struct GapSurvey {
    std::optional<Length> accepted; ///< the median, once enough readings agree with it
    std::size_t agreeing = 0;       ///< the most readings around the median that differ by no more than the limit
    std::string sentence;
    GapState state = GapState::none;
    Summary summary;
    std::optional<std::size_t> odd; ///< index of the reading farthest from the median, when it does not agree
};

/// Readings agree when the largest and the smallest of them differ by no more than `repeatLimit` (0 or more, inclusive):
/// their range, not their distance from the median. The median of all is accepted when at least `minimumPasses` (1 or
/// more) readings around it agree and they are more than half of all; otherwise another pass is asked for, and the odd
/// reading is named. The rule is common practice, no source.
GapSurvey acceptGap(std::span<const Length> readings, Length repeatLimit, std::int64_t minimumPasses,
                    const Units& units);
/// The same, naming the odd reading by its pass and person.
GapSurvey surveyGap(std::span<const SurveyReading> readings, Length repeatLimit, std::int64_t minimumPasses,
                    const Units& units);

} // namespace caprail
