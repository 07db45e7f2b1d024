// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <algorithm>
#include <cstdint>
#include <packing/lagrangian.h>
#include <packing/transposition_table.h>
#include <shims/objective.h>
#include <vector>

namespace caprail::solver {

// The stack plan stripped to whole numbers: what is left when ids, pins and units are gone. One unit is the greatest
// common divisor of all gaps and thicknesses, so the figures are small and exact. The method is told in README.md.

/// An open position. A stack of total thickness s serves it when lo ≤ s ≤ hi; its residual is gap − s.
struct Seat {
    std::int64_t lo = 0;
    std::int64_t hi = 0;
    std::int64_t gap = 0;
    int most = 0;   ///< most shims in its stack
    int weight = 0; ///< of its residual in the twist sum
    /// False where the residual does not matter, because a shim that is still to be bought will take it up.
    bool residualCounts = true;
    /// What one unit of residual adds to the force at each position of the request; empty unless least load is asked.
    std::vector<std::int64_t> load{};
    friend bool operator==(const Seat&, const Seat&) = default;
};

/// Shims of one thickness are one class; classes are sorted from thick to thin.
struct Instance {
    std::vector<std::int64_t> thickness;
    std::vector<int> count;
    std::vector<Seat> seats;
    Objective objective = Objective::smallestResidual;
    std::int64_t fixedTwist = 0;   ///< twist sum of what is pinned
    std::int64_t fixedLargest = 0; ///< largest |residual| of what is pinned
    std::int64_t fixedSum = 0;     ///< sum of |residual| of what is pinned
    std::vector<std::int64_t> fixedLoad{}; ///< the forces that what is pinned makes, with least load

    [[nodiscard]] bool isBy(Objective aim) const { return objective == aim; }
    [[nodiscard]] std::size_t classes() const { return thickness.size(); }
    [[nodiscard]] int shims() const {
        int n = 0;
        for (int c : count) {
            n += c;
        }
        return n;
    }
};

inline std::int64_t magnitude(std::int64_t x) {
    return x < 0 ? -x : x;
}

// One shim, or one unit of residual, costs `scale`.
using packing::boundAt;
using packing::Market;
using packing::never;
using packing::Offer;
using packing::Part;
using packing::pricedCost;
using packing::Prices;
using packing::raiseBound;
using packing::scale;
using packing::StateKey;
using packing::Stop;
using packing::Stopped;
using packing::TranspositionTable;
using packing::WorkClock;

} // namespace caprail::solver
