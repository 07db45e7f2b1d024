// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <planview/plan_content.h>
#include <session/record_session.h>
#include <work/trial_work.h>

namespace caprail {

/// Trial fit: per throw, pickup and dipstick what was found; or, for its nuts, which are at torque, in their sequence.
/// Needs a layout.
PlanContent trialFitContent(const RecordSession& session, const TrialTask& task);

} // namespace caprail
