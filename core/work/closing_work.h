// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What leads the closing: one thing after another, and what a person types for each. Enter alone says that the thing is
/// done as it should be, wherever that can be said without a number; but it never signs.
#include <assessment/assessment.h>
#include <assessment/own_check.h>
#include <units/parse.h>

namespace caprail {

/// The one thing that closing asks for next.
struct ClosingTask {
    enum class Kind {
        locked,   ///< the gate holds, or there is nothing to close
        count,    ///< shims, by hand
        stack,    ///< one labelled stack goes back on
        bead,     ///< product, lot, open time
        fastener, ///< one fastener to its value
        turning,  ///< the crank turned
        own,      ///< one of the shop's own checks
        tick,     ///< the step itself, its evidence being there
        sign,     ///< the sign-off
        closed
    };
    Kind kind = Kind::locked;
    ClosingStep step = ClosingStep::shimsCounted;
    std::optional<Position> stack;
    std::optional<FastenerId> fastener;
    std::optional<TurningStage> turning;
    std::optional<OwnPlace> own;
};
/// While the gate is held by nothing but the shop's own checks, the first of those is asked.
ClosingTask closingTask(const Facts&, const Assessment&);

/// The stacks of a refit, front to rear; or the fasteners of a step, in the order of tightening. Each with whether it is
/// done.
std::vector<std::pair<Position, bool>> stacksToRefit(const Facts&);
std::vector<std::pair<FastenerId, bool>> fastenersToTighten(const Facts&, ClosingStep);

/// The entry for what was typed: counts as "29+1+16", a bead as "product / lot / minutes" (Enter alone: as the last
/// one), a torque or Enter alone, a turning torque as "12 / 8", y or n or a value, Enter alone for a step, and for the
/// sign-off "sign" or a statement of more than one word. The photo of
/// an own check is the newest one of this record that names it as its place. Refuses anything else, saying what would do.
Result<Body> closingEntry(const Facts&, const ClosingTask&, std::string_view typed, const std::string& instrument,
                          const Units&);

/// The two torques of "12 / 8": what starts the crank, and what keeps it turning.
Result<TurningTorqueRead> parseTurning(std::string_view typed, TurningStage, const std::string& instrument,
                                       const Units&);
/// "y", "n touches at 3", a value, or the photo that is there.
Result<OwnCheckAnswered> parseOwnAnswer(const Facts&, const OwnPlace&, std::string_view typed,
                                        const std::string& instrument, const Units&);
/// Where the photo of an own check says that it belongs: "own-check:plugs:1".
std::string photoPlaceOf(const OwnPlace&);

} // namespace caprail
