// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Where a new gap must lie after a fastener of its cap moved in a verify round.
#include <assessment/facts.h>
#include <optional>
#include <units/band.h>

namespace caprail {

/// From the gap that was accepted just before the movement: the cap went down by between nothing and the whole advance
/// of this side's nut (the other side's did not turn), wider at both ends by that gap's U, or by the repeat limit where
/// its U is not known. None where no movement in a verify round invalidated the readings, where something else turned a
/// fastener of the cap since, or where no gap was accepted before.
std::optional<Band> windowAfterMovement(const Facts&, Position);

} // namespace caprail
