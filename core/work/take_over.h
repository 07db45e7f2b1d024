// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <ledger/entries.h>
#include <shims/plan/stack_plan.h>
#include <vector>

namespace caprail {

/// The entries that turn what lies on the engine into the plan, in an order that never has one shim in two stacks:
/// first stacks are taken apart that hold shims wanted elsewhere, then stacks are built. Positions that the plan leaves
/// unmet are left as they are, and so are stacks that stand as planned. Nothing where the build is closed.
std::vector<Body> takeOver(const StackPlan& plan, const Facts& facts, const Assessment& assessment);

/// All built stacks that lie on are lifted off, or all that are off are put back.
std::vector<Body> moveAllStacks(const Facts& facts, StackMove move);

/// What confirms the stack that lies at a position against present numbers: a look at the numbers when arithmetic alone
/// made it stale, else the same stack entered as built anew. Nothing when none was built there.
std::optional<Body> confirmStack(Position position, const Facts& facts, const Assessment& assessment);

/// The stacks as built, for comparison with the plan; only positions that the plan knows.
std::vector<BuiltStack> builtStacks(const Facts& facts, const StackPlan& plan);

} // namespace caprail
