// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is gone through at the trial fit, in the order of the work.
#include <assessment/assessment.h>

namespace caprail {

/// All of the girdle's nuts, brought to torque one after another.
struct GirdleNuts {
    friend auto operator<=>(GirdleNuts, GirdleNuts) = default;
};
using TrialTask = std::variant<TrialId, GirdleNuts, TurningStage, OwnPlace>;

/// The shop's own checks before it, the turning torque before the girdle, the girdle's nuts, the items, the turning
/// torque with the girdle after the two turns. Without a layout the per-throw items are left out.
std::vector<TrialTask> trialTasks(const Facts&);
/// How a task stands: its check's state; of the nuts, good once all are at torque.
CheckState trialTaskState(const Facts&, const Assessment&, const TrialTask&);
/// How many of the girdle's nuts are at torque, of how many; and the next one in the order of tightening.
struct NutsAtTorque {
    std::size_t tight = 0, all = 0;
    std::optional<FastenerId> next;
};
NutsAtTorque nutsAtTorque(const Facts&);

} // namespace caprail
