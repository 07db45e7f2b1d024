// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <measure/statistics.h>
#include <string>
#include <units/format.h>

namespace caprail {

/// What the standing readings of one gap come to.
struct GapSurvey {
    std::optional<Length> accepted; ///< the median, once enough readings agree with it
    std::size_t agreeing = 0;       ///< readings within the repeat limit of the median
    std::string sentence;
};

/// A reading agrees when it lies within `repeatLimit` of the median. The median is accepted when at least `minimumPasses`
/// readings agree and they are more than half of all; otherwise another pass is asked for, and the odd reading is named.
GapSurvey acceptGap(std::span<const Length> readings, Length repeatLimit, int minimumPasses, const Units& units);

} // namespace caprail
