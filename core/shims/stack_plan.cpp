// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/plan_request.h>
#include <shims/solver.h>
#include <shims/stack_plan.h>

namespace caprail {

Result<StackPlan> planStacks(const PlanRequest& request, const PlanOptions& options) {
    return solver::CheckedRequest::from(request).map([&options](const solver::CheckedRequest& checked) {
        return checked.name(solver::solve(checked.instance(), options.stop));
    });
}

} // namespace caprail
