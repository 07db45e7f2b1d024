// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <optional>
#include <shims/plan/stack_plan.h>

namespace caprail::plancases {

/// What a general optimiser makes of the first two aims of a plan.
struct FirstTwo {
    int inBand = 0;
    int shims = 0;
};

/// Solves the plan as a mixed-integer programme with GLPK, the GNU Linear Programming Kit (not part of the program):
/// one whole number per position and thickness, one yes or no per position; first the most positions, then, with that
/// many, the fewest shims. Nothing, if it is not done within `seconds`.
std::optional<FirstTwo> planWithGlpk(const PlanRequest& request, double seconds);

} // namespace caprail::plancases
