// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <shims/solver/solver.h>

namespace caprail {

Band bandAt(const PlanRequest& request, const PlanPosition& position) {
    return position.band.value_or(request.band);
}

Result<StackPlan> planStacks(const PlanRequest& request, const PlanOptions& options) {
    return solver::CheckedRequest::from(request).map([&options](const solver::CheckedRequest& checked) {
        solver::Better better;
        if (options.better) {
            better = [&](const std::function<solver::Solution()>& solution) {
                // A look at a plan on the way is no time to search for what comes near: nothing beyond the grace.
                options.better([&] { return checked.name(solution(), [] { return true; }); });
            };
        }
        return checked.name(solver::solve(checked.instance(), options.stop, better), options.stop);
    });
}

} // namespace caprail
