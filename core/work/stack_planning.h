// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the planner of the stacks is asked for one record, and what the straightedge should feel.
#include <assessment/assessment.h>
#include <assessment/plan_aim.h>
#include <map>
#include <set>
#include <shims/plan/stack_plan.h>
#include <work/block_load.h>

namespace caprail {

/// The band of the residual that stacks are planned for.
struct ResidualBand {
    Band band;
    /// False: nobody set one, and the usual 0.0005 in either way is taken (common practice, no source). Whoever shows
    /// what was made with it says so. No stack is judged good by it: the check asks for a band.
    bool isSet = true;
    friend bool operator==(const ResidualBand&, const ResidualBand&) = default;
};
ResidualBand residualBand(const Facts& facts);

/// What a plan is for.
enum class PlanScope {
    openPlaces, ///< places without a stack, or whose stack does not stand; what stands stays
    anew        ///< every place, as if nothing stood
};

/// What there is to plan in a record, with the band that it was made for.
struct PlanTask {
    PlanRequest request;
    ResidualBand band;           ///< as set; those of the positions may be narrower
    std::set<std::string> stays; ///< positions whose stack stands and is kept, pinned in the request
    /// Per position that is not good yet: where a stack of one shim, of two … has to lie to be judged so. Empty: the band.
    std::map<std::string, std::vector<PlanAim>> aims;
    bool isClosed = false;       ///< the build is signed off: nothing is planned
    std::string doubt = {};      ///< why the plan is not for the objective of the rules; empty: it is
    friend bool operator==(const PlanTask&, const PlanTask&) = default;
};

/// The positions whose stack stands: it is built, nothing that it rests on changed, neither the numbers nor the
/// straightedge speak against it, and it is judged good, or was rechecked, or lies where a plan would put it. One that no
/// plan may hold (more shims than the rules allow, one that is set aside or pinned elsewhere) does not stand.
std::set<Position> standingStacks(const Facts& facts, const Assessment& assessment);

/// Every position whose gap is accepted, every shim that is not set aside, the pins, and the rules' objective and
/// largest stack. A stack that stands is kept, as if it were pinned, unless all is planned anew. Positions without an
/// accepted gap are left out. `units` are for the sentences of the aims. `girdle` is the record's plate where it is
/// known (work/block_load.h): it gives the plan its loads; without it, least load cannot be aimed at, and the smallest
/// residual is, with `doubt` saying so.
PlanTask planTaskFor(const Facts& facts, const Assessment& assessment, const Units& units = {},
                     PlanScope scope = PlanScope::openPlaces, const GirdleModel* girdle = nullptr);

/// A plan, and the request that it answers.
struct PlanAnswer {
    PlanRequest request; ///< that of the task, with the bands that the plan keeps to
    StackPlan plan;
    std::string doubt; ///< that of the task, and why a stack in band need not be judged good; empty: each will be
};
/// The plan of a task in which every stack that is in band will be judged good once it is built: U grows with the number
/// of shims, so the plan is first made as if each stack had one, and made anew with narrower aims where a stack has more
/// and lies too near to the end of the band. Proven best only where it reaches the bound of the first, widest aims.
/// Refuses what `planStacks` refuses; `options.better` gets only plans whose stacks keep to the aims.
Result<PlanAnswer> planForVerdicts(const PlanTask& task, const PlanOptions& options = {});

/// What the straightedge should say on a stack with this residual: below the band it rocks, above it the place is
/// loose.
Feel expectedFeel(Length residual, const Band& band);

} // namespace caprail
