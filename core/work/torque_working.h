// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <fasteners/preload.h>
#include <string_view>

namespace caprail {

/// What a group's specification comes to: preload by short and long form, share of proof load with the scatter, steps,
/// each with its working; and what to mind about it.
struct GroupWorking {
    std::vector<std::string> warnings; ///< 90 % of proof at the lower friction; a value that looks like the wrong unit
    std::vector<std::string> missing;  ///< why a part of the working is not there
    std::vector<std::string> lines;
};
/// `scatterPercent` is that of the record's rules.
GroupWorking workingOf(const FastenerGroupSet& group, std::int64_t scatterPercent, const Units& units);

/// What to set on a wrench with an extension, from what was typed for the wrench's length, the extension's length and
/// its angle. Refuses what cannot be read, and what wrenchSetting refuses (fasteners/wrench.h).
Result<Worked<Torque>> settingAsTyped(Torque wanted, std::string_view length, std::string_view offset,
                                      std::string_view angle, const Units& units);

} // namespace caprail
