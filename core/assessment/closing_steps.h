// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The closing steps, each with its own evidence: what must be on record before a step may be entered, and whether a step
/// that was entered still holds. Worked out from the facts alone; the sealant's open time is judged by the entries' own
/// times.
#include <assessment/check.h>
#include <base/problem.h>
#include <optional>
#include <vector>

namespace caprail {

/// How a step stands. It is good when it was entered, everything before it was done before it, and its evidence still
/// stands: the stacks on, every fastener of it at its value, the girdle lowered within the open time of the bead.
Standing standingOf(const Facts&, ClosingStep, const Units&);
/// The first step that is not good; none: all are.
std::optional<ClosingStep> nextClosingStepOf(const Facts&, const Units&);

/// One thing that must be on record before a step can be entered.
struct ClosingLack {
    std::string sentence; ///< "Girdle nut 2 left is not at its value since the girdle was lowered."
    Destination destination; ///< where it is entered
    /// What is asked for; at most one of them.
    std::optional<Position> stack;
    std::optional<FastenerId> fastener;
    std::optional<TurningStage> turning;
    std::optional<OwnPlace> own;
};
/// The first thing that is still missing before `step` can be entered, in the order of the work; none: it may be, as far
/// as what was entered before goes.
std::optional<ClosingLack> lackOf(const Facts&, ClosingStep step, const Units&);

/// Whether a step may be entered with what it carries: the steps before it good, its evidence there, the shims counted as
/// many as the record has, the sealant's product, lot and open time named. Refuses in one sentence.
Result<void> mayBeDone(const Facts&, const ClosingStepDone&);

/// How many shims the record says there are; what a hand count must come to.
struct ShimCount {
    std::int64_t fitted = 0;   ///< in the stacks
    std::int64_t aside = 0;    ///< set aside
    std::int64_t leftOver = 0; ///< neither
    [[nodiscard]] std::int64_t kit() const { return fitted + aside + leftOver; }
};
ShimCount shimCountOf(const Facts&);

/// The pan's fasteners: the rail's, and those of the front and the rear where the record specifies such. Empty while
/// nothing is specified for the rail.
std::vector<FastenerId> panFasteners(const Facts&);
/// What a closing step tightens, in no order: the girdle's nuts or the pan's fasteners; nothing for the other steps.
std::vector<FastenerId> fastenersOf(const Facts&, ClosingStep);
/// Whether a fastener of a closing step is at its value, tightened after the step before it was done.
bool isTightForClosing(const Facts&, ClosingStep, FastenerId);

/// When the bead must be covered by the girdle; none: no bead counts, or its open time is not known.
std::optional<UtcTime> beadOpenUntil(const Facts&);

} // namespace caprail
