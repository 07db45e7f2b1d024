// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/movement.h>

namespace caprail {

Result<Angle> plausibleMovement(Angle moved) {
    if (moved <= Angle()) {
        return refuse("A fastener that moved turned by more than 0°, and " + format(moved, Units{}) +
                      " was given: if it did not turn, it held.");
    }
    if (moved > degrees(360)) {
        return refuse("A movement of " + format(moved, Units{}) +
                      " is more than a whole turn: check the angle, or back the fastener off and tighten it anew.");
    }
    return moved;
}

Length axialAdvance(const Thread& thread, Angle turned) {
    return Length(toNearest(static_cast<double>(thread.pitch().value()) * inDegrees(turned) / 360.0));
}

Result<Worked<GapWindow>> gapAfterMovement(Length gap, const Thread& thread, Angle moved, const Units& units) {
    return gapAfterMovement(GapWindow{gap, gap}, thread, moved, units);
}

Result<Worked<GapWindow>> gapAfterMovement(const GapWindow& before, const Thread& thread, Angle moved,
                                           const Units& units) {
    return plausibleMovement(moved).map([&](Angle turned) {
        const Length advance = axialAdvance(thread, turned);
        const GapWindow window{before.smallest, before.largest + advance};
        const std::string was = before.smallest == before.largest
                                    ? format(before.smallest, units)
                                    : formatBare(before.smallest, units) + " to " + format(before.largest, units);
        return Worked<GapWindow>{window,
                                 {"P·θ/360° = " + format(thread.pitch(), units) + " × " + format(turned, units) +
                                      " / 360° = " + format(advance, units),
                                  "gap = " + was + " + 0 to " + format(advance, units) + " = " +
                                      formatBare(window.smallest, units) + " to " + format(window.largest, units)}};
    });
}

} // namespace caprail
