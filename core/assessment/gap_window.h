// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where a new gap must lie after a fastener of its cap moved in a verify round, and where it likely lies.
#include <assessment/facts.h>
#include <measure/uncertainty.h>
#include <optional>
#include <units/band.h>
#include <units/force.h>
#include <units/format.h>

namespace caprail {

/// What the movements of one side of a cap did to its gap.
struct GapAfterMovement {
    Band window;                      ///< what a new reading must lie in
    Length before;                    ///< the gap accepted just before
    Uncertainty uncertaintyBefore;    ///< of that: by it the window is wider at both ends
    Length bound;                     ///< Σ P·θ/360°: by so much the gap can have grown at most
    Length likelyLeast, likelyMost;   ///< Σ C·P·θ/360°
    bool isJointKnown = false;        ///< C is worked out from the joint's dimensions; false: what is usual
    std::optional<Force> clampGained; ///< where the joint is known
};

/// From the gap that was accepted just before the movement: the cap went down by between nothing and the whole advance of
/// this side's nut (the other side's did not turn), wider at both ends by that gap's U, or by the repeat limit where its U
/// is not known. None where no movement in a verify round invalidated the readings, where something else turned a fastener of
/// the cap since, or where no gap was accepted before.
std::optional<GapAfterMovement> gapAfterMovementAt(const Facts&, Position);
/// Its window alone.
std::optional<Band> windowAfterMovement(const Facts&, Position);

/// "Likely it grew by 0.0001 to 0.0002 in (joint share 0.15 to 0.32, what is usual), which its own ± 0.0003 in hides."
std::string describeLikely(const GapAfterMovement&, const Units&);

/// By how much a bearing's cap likely went down after the moves that made it stale, at most; none where none is known.
std::optional<Length> likelyDrop(const Facts&, FastenerId, Angle);

} // namespace caprail
