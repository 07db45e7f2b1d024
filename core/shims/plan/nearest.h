// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <shims/solver/instance.h>
#include <shims/solver/reach.h>
#include <units/band.h>
#include <vector>

namespace caprail::solver {

/// For seats that a plan leaves out of band: which stack of the shims that are left comes nearest to it.
class NearestStack {
public:
    /// `left`: the shims that the plan leaves free; it must outlive this. One unit of it is `unit` nanometres.
    NearestStack(const Instance& left, std::int64_t unit) : m_left(left), m_unit(unit) {}

    /// The stack of up to `most` shims whose residual to `gap` (in units) lies nearest to this band, in whole
    /// nanometres, with as few shims as that takes; empty where no stack comes nearer than the bare gap. Once the clock
    /// runs out: the nearest found until then.
    [[nodiscard]] std::vector<Part> find(std::int64_t gap, Band band, int most, WorkClock& clock);

private:
    [[nodiscard]] std::int64_t distanceOf(std::int64_t residual) const;
    [[nodiscard]] std::vector<Part> thickestFirst(std::int64_t gap, int most) const;
    [[nodiscard]] const Reach& reachTo(std::int64_t total, WorkClock& clock);

    const Instance& m_left;
    std::int64_t m_unit;
    Band m_band; ///< of the seat that is looked at
    std::unique_ptr<Reach> m_reach;
    std::int64_t m_reaches = -1;
    bool m_isOut = false; ///< the clock ran out
};

} // namespace caprail::solver
