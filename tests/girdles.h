// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Girdles of plain blocks, for every test that works out their load.
#include <load/girdle_model.h>

namespace caprail {

/// A usual block of so many caps, of which the girdle ties a run.
inline LayoutDescription described(std::int64_t caps, std::int64_t tiedFirst, std::int64_t tiedLast) {
    LayoutDescription d;
    d.caps = caps;
    d.tiedFirst = tiedFirst;
    d.tiedLast = tiedLast;
    d.pickupCap = std::min<std::int64_t>(d.pickupCap, caps);
    d.dipstickCap = std::min<std::int64_t>(d.dipstickCap, caps);
    return d;
}

inline EngineLayout layoutOf(std::int64_t caps, std::int64_t tiedFirst, std::int64_t tiedLast) {
    return *EngineLayout::from(described(caps, tiedFirst, tiedLast));
}

/// Solved, and put on its springs.
inline Result<GirdleModel> girdleOf(const EngineLayout& layout, const GirdlePlate& plate, int panFasteners = 0,
                                    const Springs& springs = {}, std::optional<Length> longestCell = {}) {
    const auto solved = SolvedGirdle::from(layout, plate, panFasteners, longestCell);
    return solved ? solved->withSprings(springs) : Result<GirdleModel>(tl::unexpected(solved.error()));
}

} // namespace caprail
