// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where a stack plan aims, so that the verdicts will be good.
#include <assessment/budget_of.h>
#include <string>
#include <units/band.h>
#include <vector>

namespace caprail {

struct PlanAim {
    Band band;                 ///< that the plan is solved for
    bool canBeProven = true;   ///< a residual inside it will be judged good by arithmetic
    std::string sentence = {}; ///< empty where it can; else why not, and what would do
    friend bool operator==(const PlanAim&, const PlanAim&) = default;
};

/// The aims of one record. The facts must outlive this.
class PlanAims {
public:
    PlanAims(const Facts&, const Units&);
    /// For a stack of so many shims at a position: the residual band less the U that its residual will have once such a
    /// stack lies there, worked out from its gap's readings and from as many shims as are measured worst: any other stack
    /// of that number is known as well or better. Where U is not known, or so large that no residual could pass, the plan
    /// aims at the middle half of the band, and says so: only a bracketed recheck or better instruments can then prove a
    /// stack. Without a residual band there is no aim.
    [[nodiscard]] std::optional<PlanAim> at(Position, std::size_t shims) const;

private:
    const Facts& m_facts;
    Units m_units;
    Scatters m_scatters;
    std::vector<std::string> m_worst; ///< the measured shims of the kit, the worst known first
};

} // namespace caprail
