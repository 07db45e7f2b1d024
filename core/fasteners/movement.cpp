// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/movement.h>
#include <base/say.h>

namespace caprail {

Result<Angle> plausibleMovement(Angle moved) {
    if (moved <= Angle()) {
        return refuse(
            Core::say("A fastener that moved turned by more than 0°, and %1 was given: if it did not turn, it held.",
                      format(moved, Units{})));
    }
    if (moved > degrees(360)) {
        return refuse(Core::say("A movement of %1 is more than a whole turn: check the angle, or back the fastener off "
                                "and tighten it again.",
                                format(moved, Units{})));
    }
    return moved;
}

Length axialAdvance(const Thread& thread, Angle turned) {
    return Length(toNearest(static_cast<double>(thread.pitch().value()) * inDegrees(turned) / 360.0));
}

Result<Worked<GapWindow>> gapAfterMovement(const GapWindow& before, const Thread& thread, Angle moved,
                                           const Units& units) {
    return plausibleMovement(moved).map([&](Angle turned) {
        const Length advance = axialAdvance(thread, turned);
        const GapWindow window{before.smallest, before.largest + advance};
        const std::string was =
            before.smallest == before.largest
                ? format(before.smallest, units)
                : Core::say("%1 to %2", formatBare(before.smallest, units), format(before.largest, units));
        return Worked<GapWindow>{window,
                                 {"P·θ/360° = " + format(thread.pitch(), units) + " × " + format(turned, units) +
                                      " / 360° = " + format(advance, units),
                                  Core::say("gap = %1 + 0 to %2 = %3 to %4", was, format(advance, units),
                                            formatBare(window.smallest, units), format(window.largest, units))}};
    });
}

} // namespace caprail
