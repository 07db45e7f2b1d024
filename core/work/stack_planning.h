// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the planner of the stacks is asked for one record, and what the straightedge should feel.
#include <assessment/assessment.h>
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

/// What there is to plan in a record, with the band that it was made for.
struct PlanTask {
    PlanRequest request;
    ResidualBand band; ///< as set; that of the request may be narrower
    std::string doubt; ///< why a stack in the band of the request need not be judged good; empty: it will be
};
/// Every position whose gap is accepted, every shim that is not set aside, the residual band as `bandToAimAt` narrows it
/// (assessment/plan_aim.h), the pins, and the rules' objective and largest stack. Positions without an accepted gap are
/// left out. `units` are for the doubt. `girdle` is the record's plate where it is known (work/block_load.h): it gives the
/// plan its loads; without it, least load cannot be aimed at, and the smallest residual is, with the doubt saying so.
PlanTask planTaskFor(const Facts& facts, const Assessment& assessment, const Units& units = {},
                     const GirdleModel* girdle = nullptr);

/// What the straightedge should say on a stack with this residual: below the band it rocks, above it the place is
/// loose.
Feel expectedFeel(Length residual, const Band& band);

} // namespace caprail
