// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <tuple>

namespace caprail::solver {

/// What a plan is judged by, with what is pinned.
struct Figures {
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0; ///< largest |residual|
    std::int64_t sum = 0;     ///< of |residual|
    std::int64_t twist = 0;   ///< |…|
    std::int64_t load = 0;    ///< largest |force|, with least load
    std::int64_t squares = 0; ///< sum of the forces' squares, with least load

    /// The third aim: largest |residual|, or the twist, or the largest |force|.
    [[nodiscard]] std::int64_t third(const Instance& instance) const {
        switch (instance.objective) {
        case Objective::leastTwist:
            return twist;
        case Objective::leastLoad:
            return load;
        case Objective::smallestResidual:
            break;
        }
        return largest;
    }
    /// And what settles plans that are alike in it.
    [[nodiscard]] std::int64_t fourth(const Instance& instance) const {
        return instance.isBy(Objective::leastLoad) ? squares : sum;
    }
    /// In the order of importance; less is better.
    [[nodiscard]] std::tuple<int, int, std::int64_t, std::int64_t> rank(const Instance& instance) const {
        return {-served, shims, third(instance), fourth(instance)};
    }
};

} // namespace caprail::solver
