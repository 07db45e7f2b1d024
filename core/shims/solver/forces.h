// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shims/solver/figures.h>

namespace caprail::solver {

/// The force at each position of the request, in whole numbers of a unit so small that the largest which residuals in
/// band can make has more than half of `forceRange`, and none more than all of it.
using Forces = std::vector<std::int64_t>;
inline constexpr std::int64_t forceRange = std::int64_t{1} << 43;
/// Forces are squared in units of 2^squareShift, or the sum over some hundred positions would leave the range of
/// `never`.
inline constexpr int squareShift = 17;
inline std::int64_t squareOf(std::int64_t force) {
    const std::int64_t shifted = magnitude(force) >> squareShift;
    return shifted * shifted;
}

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
        sum += squareOf(f);
    }
    return sum;
}

} // namespace caprail::solver
