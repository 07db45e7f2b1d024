// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where a stack plan aims, so that the verdicts will be good.
#include <assessment/facts.h>
#include <span>
#include <string>
#include <units/band.h>

namespace caprail {

struct PlanAim {
    Band band;                 ///< that the plan is solved for
    bool canBeProven = true;   ///< a residual inside it will be judged good by arithmetic
    std::string sentence;      ///< empty where it can; else why not, and what would do
};
/// The residual band less the largest U that the residuals at these positions will have. Where U is not known, or so large
/// that no residual could pass, the plan aims at the middle half of the band, and says so: only a bracketed recheck or
/// better instruments can then prove a stack. Without a residual band there is no aim.
std::optional<PlanAim> bandToAimAt(const Facts&, std::span<const Position> positions, const Units&);

} // namespace caprail
