// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <planview/plan_content.h>
#include <session/record_session.h>

namespace caprail {

/// Trial fit: per throw, pickup and dipstick what was found. Needs a layout.
PlanContent trialFitContent(const RecordSession& session);

} // namespace caprail
