// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/preload.h>
#include <units/angle.h>

namespace caprail {

/// The angle itself, or a refusal that says what was read: a nut that moved turned by more than nothing and by no more
/// than one turn (more is asked back).
Result<Angle> plausibleMovement(Angle moved);

/// Axial advance of a nut that turned by θ: P·θ/360°, to the nearest nanometre; negative θ gives a negative advance.
Length axialAdvance(const Thread& thread, Angle turned);

/// Where a gap may be after a movement: the gap is measured to the washer and grows as the cap goes down.
struct GapWindow {
    Length smallest;
    Length largest;
    friend bool operator==(const GapWindow&, const GapWindow&) = default;
};

/// The window of the new gap after a nut of that cap moved by `moved`: [smallest, largest + P·θ/360°], because the cap
/// went down by between nothing (all of it went into stretch) and the whole advance. A measured gap is a window of one
/// value; the cap may move again before it is measured. Refuses what plausibleMovement refuses.
Result<Worked<GapWindow>> gapAfterMovement(const GapWindow& before, const Thread& thread, Angle moved,
                                           const Units& units);

} // namespace caprail
