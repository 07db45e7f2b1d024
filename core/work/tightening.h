// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// In which order fasteners are tightened and pulled again, and what is specified for each.
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <assessment/tightening_order.h>
#include <units/parse.h>

namespace caprail {

/// The entry that brings a fastener to exactly what is specified; refuses where nothing is.
Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument);
/// The outcome of a fastener in the round that is under way, made as its group is verified: held, with the torque that is
/// specified; moved when `moved` is given; with the stretch that was read where it is verified by length. Refuses where no
/// round is under way and where nothing is specified.
Result<RoundOutcome> outcomeOf(const Facts& facts, FastenerId fastener, const std::string& instrument,
                               std::optional<Entered<Angle>> moved = {}, std::optional<Entered<Length>> stretch = {});
/// What was typed for a fastener of the round under way: "h" or "held" where it held, or its mark still lines up; an angle
/// as "4°" where it moved; the stretch that is read now where it is verified by length. Refuses an empty text, which says
/// nothing about the fastener, and whatever `outcomeOf` refuses.
Result<RoundOutcome> parseOutcome(const Facts& facts, FastenerId fastener, std::string_view typed,
                                  const std::string& instrument, const Units& units);
/// What was typed for a fastener: a torque, "40 / 90" for a torque and an angle, a stretch where it is specified so, and
/// nothing for exactly what is specified. Refuses what cannot be, and what the fastener's specification cannot take.
Result<FastenerTightened> parseTightened(const Facts& facts, FastenerId fastener, std::string_view typed,
                                         const std::string& instrument, const Units& units);

} // namespace caprail
