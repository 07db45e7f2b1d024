// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver_instance.h>
#include <vector>

namespace caprail::solver {

/// The plan of the open places, in the instance's units.
struct Solution {
    std::vector<std::optional<std::vector<Part>>> stacks; ///< per place; not set: left unserved
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0; ///< with what is pinned
    std::int64_t sum = 0;     ///< with what is pinned
    std::int64_t twist = 0;   ///< |…| with what is pinned
    bool proven = false;
    /// No plan does better; each given that those before it are reached.
    int mostServed = 0;
    int fewestShims = 0;
    std::int64_t leastLargest = 0;
    std::int64_t leastSum = 0;
    std::int64_t leastTwist = 0;
};

/// Places must be in a fixed order of the caller's (it is part of the rule that settles ties).
Solution solve(const Instance& instance, const Stop& stop);

} // namespace caprail::solver
