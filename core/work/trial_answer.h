// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entries.h>
#include <units/parse.h>

namespace caprail {

/// What a person typed for one item of the trial fit: "p" or "pass", "f" or "fail" (a remark may follow, "f touches the
/// nut"), or a clearance as any length is typed. Refuses anything else, saying what would do.
Result<TrialFitResult> parseTrialAnswer(std::string_view text, TrialItem item, std::int64_t throwNumber,
                                        const Units& units);

} // namespace caprail
