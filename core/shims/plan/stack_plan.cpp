// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/plan/checked_request.h>
#include <shims/plan/stack_plan.h>
#include <shims/solver/solver.h>

namespace caprail {

Result<StackPlan> planStacks(const PlanRequest& request, const PlanOptions& options) {
    return solver::CheckedRequest::from(request).map([&options](const solver::CheckedRequest& checked) {
        return checked.name(solver::solve(checked.instance(), options.stop), options.stop);
    });
}

} // namespace caprail
