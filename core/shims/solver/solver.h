// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

// The method, and where each part of it is described, is told in README.md beside this file.

/// The plan of the open seats, in the instance's units.
struct Solution {
    std::vector<std::optional<std::vector<Part>>> stacks; ///< per seat; not set: left unserved
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0; ///< with what is pinned
    std::int64_t sum = 0;     ///< with what is pinned
    std::int64_t twist = 0;   ///< |…| with what is pinned
    std::int64_t load = 0;    ///< largest |force| with what is pinned, with least load
    std::int64_t squares = 0; ///< sum of the forces' squares, with least load
    bool proven = false;
    /// No plan does better; each given that those before it are reached.
    int mostServed = 0;
    int fewestShims = 0;
    std::int64_t leastLargest = 0;
    std::int64_t leastSum = 0;
    std::int64_t leastTwist = 0;
    std::int64_t leastLoad = 0;
    std::int64_t leastSquares = 0;
};

/// Called between two askings of `stop` while there is a better plan than the last one that it took; what it is given
/// gives that plan.
using Better = std::function<void(const std::function<Solution()>&)>;

/// Seats must be in a fixed order of the caller's (it is part of the rule that settles ties).
Solution solve(const Instance& instance, const Stop& stop, const Better& better = {});

} // namespace caprail::solver
