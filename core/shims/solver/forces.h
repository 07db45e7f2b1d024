// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shims/solver/figures.h>

namespace caprail::solver {

/// The force at each position of the request, in whole numbers of a unit so small that forces can be told apart to one
/// part in some ten million, and so large that their squares can be summed up.
using Forces = std::vector<std::int64_t>;
inline constexpr std::int64_t largestForce = std::int64_t{1} << 28;

/// Adds what a residual makes (or takes it away, with its sign turned).
inline void addTo(Forces& forces, const Seat& seat, std::int64_t residual) {
    for (std::size_t i = 0; i < seat.load.size(); ++i) {
        forces[i] += seat.load[i] * residual;
    }
}
inline std::int64_t largestOf(const Forces& forces) {
    std::int64_t largest = 0;
    for (const std::int64_t f : forces) {
        largest = std::max(largest, magnitude(f));
    }
    return largest;
}
inline std::int64_t squaresOf(const Forces& forces) {
    std::int64_t sum = 0;
    for (const std::int64_t f : forces) {
        sum += f * f;
    }
    return sum;
}

} // namespace caprail::solver
