// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver_bound.h>
#include <shims/solver_instance.h>
#include <vector>

namespace caprail::solver {

/// What a plan must keep to while it is searched for. Costs are the columns' priced ones, so each limit is
/// scale × (the true limit) + the worth of the kit at those prices.
struct Limits {
    std::int64_t shimCost = never;
    std::int64_t residualCost = never;
    std::int64_t largestResidual = never;
    std::int64_t twist = never; ///< |fixed twist + Σ weight·residual|
    int leftOut = 0;            ///< so many places may stay unserved
};

/// One complete choice: per place the index of its column, or −1.
struct Found {
    std::vector<int> column;
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0; ///< without what is pinned
    std::int64_t sum = 0;
    std::int64_t twist = 0; ///< |…| with what is pinned
};

enum class Outcome {
    found,     ///< the callback asked to stop at a solution
    exhausted, ///< all columns tried: nothing (more) within the limits
    gaveUp     ///< by the step limit or `stop`
};

/// Depth-first search over the places, always the one with the fewest stacks left; after each choice the stacks of
/// all other places are filtered by what is left in the kit and by the limits, so that a dead end shows early.
class Search {
public:
    /// Columns are tried in their order in the list.
    Search(const Instance& instance, const Columns& columns, const Stop& stop);

    /// Runs to the end, or until `steps` nodes. At each solution `onFound(found, limits)` may tighten the limits and
    /// says whether to go on.
    Outcome run(const Limits& limits, std::int64_t steps, const std::function<bool(const Found&, Limits&)>& onFound);
    [[nodiscard]] std::int64_t steps() const { return m_steps; }

private:
    struct Live {
        std::size_t begin = 0;
        std::size_t end = 0;
        std::int64_t leastShimCost = 0;
        std::int64_t leastResidualCost = 0;
        std::int64_t leastTwist = 0;
        std::int64_t mostTwist = 0;
        std::uint64_t residuals = 0; ///< bit r − m_lowest: some live column has residual r
    };
    struct Frame {
        std::vector<Live> live; ///< per place
        std::int64_t shimCost = 0;
        std::int64_t residualCost = 0;
        std::int64_t freeShimCost = 0; ///< Σ least over the open places, less what may be left out
        std::int64_t freeResidualCost = 0;
        std::int64_t twist = 0;
        int leftOut = 0;
    };
    enum class Next { goOn, halt };

    Next descend(std::size_t depth);
    Next report(const Frame& frame);
    [[nodiscard]] std::size_t hardest(const Frame& frame) const;
    bool narrow(const Frame& from, Frame& to);
    bool balance(Frame& frame);
    [[nodiscard]] bool twistCanClose(const Frame& frame);
    [[nodiscard]] bool fits(const Column& c) const;
    void use(const Column& c, int sign);

    const Instance& m_instance;
    const Columns& m_columns;
    const Stop& m_stop;
    std::vector<int> m_left;
    std::vector<std::size_t> m_open;
    std::vector<Frame> m_frames;
    std::vector<std::uint32_t> m_arena;
    std::vector<int> m_chosen;
    std::vector<std::int64_t> m_scratch;
    std::vector<std::uint64_t> m_reachable;
    std::vector<std::uint64_t> m_shifted;
    std::int64_t m_lowest = 0;
    bool m_bitsUsable = false;
    Limits m_limits;
    std::int64_t m_steps = 0;
    std::int64_t m_mostSteps = 0;
    bool m_gaveUp = false;
    const std::function<bool(const Found&, Limits&)>* m_onFound = nullptr;
};

} // namespace caprail::solver
