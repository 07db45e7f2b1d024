// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <shims/plan/stack_plan.h>

namespace caprail::plancases {

/// What a plain local search makes of the first two aims.
struct Served {
    int inBand = 0;
    int shims = 0;
};

/// The baseline that the planner is measured by, as one would write it in an afternoon: greedy (small gaps first, thick
/// shims first), then ruin and recreate, one shim exchanged for another to bring a stack into its band; what is not
/// worse stays. Fixed seed; goes on until `stop`. Every open position, no pins.
Served planByLocalSearch(const PlanRequest& request, const std::function<bool()>& stop);

} // namespace caprail::plancases
