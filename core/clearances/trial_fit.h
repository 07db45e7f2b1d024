// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is looked at when the girdle is laid on its stacks for trial, and when each item is good.
#include <base/problem.h>
#include <base/words.h>
#include <clearances/trial_item.h>
#include <optional>
#include <string>
#include <units/format.h>
#include <units/length.h>

namespace caprail {

/// The least clearance at the closest counterweight: 0.060 in (common practice, no source).
constexpr Length defaultCounterweightClearance() {
    return thou(60);
}

struct TrialFitObservation {
    TrialItem item = TrialItem::dipstick;
    int throwNumber = 0; ///< 1 or more where the item needs a throw, else 0
    TrialResult found = TrialResult::pass;
    std::optional<Length> clearance; ///< with `TrialResult::measured`, and only then
};

struct TrialFitJudgement {
    bool isGood = false;
    std::string sentence; ///< what was found, and against what
    std::string remedy;   ///< what to do; empty when good
};
/// A measured clearance is good from `minimum` on (counterweights and rod bolts), or above zero (the others).
/// Refuses a throw where none belongs and the lack of one where one does, a measurement of what cannot be measured, a
/// measurement without its value or a value without one, a clearance below zero and a minimum below zero.
Result<TrialFitJudgement> judgeTrialFit(const TrialFitObservation&, Length minimum, const Units&);

} // namespace caprail
