// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <cstdint>
#include <deque>
#include <packing/transposition_table.h>
#include <shims/solver/columns.h>
#include <shims/solver/failures.h>
#include <shims/solver/forces.h>
#include <shims/solver/instance.h>
#include <shims/solver/twist_reach.h>
#include <vector>

namespace caprail::solver {

/// What a plan must keep to while it is searched for.
struct Limits {
    int shims = 0;
    std::int64_t sum = never; ///< of |residual|
    std::int64_t largestResidual = never;
    std::int64_t twist = never; ///< |fixed twist + Σ weight·residual|
    int leftOut = 0;            ///< so many seats may stay unserved
    std::int64_t load = never;  ///< largest |force|, with what is pinned
    std::int64_t squares = never; ///< sum of the forces' squares, with what is pinned
};

/// One complete choice: per seat the index of its column, or −1. Without what is pinned, but for the twist.
struct Found {
    std::vector<int> column;
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0;
    std::int64_t sum = 0;
    std::int64_t twist = 0; ///< |…| with what is pinned
    std::int64_t load = 0;  ///< largest |force| with what is pinned
    std::int64_t squares = 0; ///< of the forces, with what is pinned
};

enum class SearchOutcome {
    found,     ///< the callback asked to stop at a solution
    exhausted, ///< nothing (more) within the limits
    gaveUp     ///< by the step limit
};

/// Depth-first search over the seats, always the one with the fewest stacks left to try. Of these, the stacks of the
/// fewest shims are tried one by one; that the seat takes a larger one is then a single further branch, which leaves
/// open which: what is short is mostly the number of shims, and so a bad share-out of it shows early. After each choice
/// the stacks of all other seats are filtered by what is left in the kit and by the limits, so that a dead end shows
/// early. Once a search turns out long, each node also gets prices of its own (see lagrangian.h), which shed many
/// more stacks, and states that have failed before are recognised.
class Search {
public:
    /// The columns must be priced with these prices; they are tried in their order in the list.
    Search(const Instance& instance, const Columns& columns, const Prices& forShims, const Prices& forResiduals,
           WorkClock& clock);

    /// Runs to the end, or until `steps` stacks were tried; fewer, where there are so many that trying one takes long.
    /// At each solution `onFound(found, limits)` may tighten the limits and says whether to go on.
    SearchOutcome run(const Limits& limits, std::int64_t steps,
                      const std::function<bool(const Found&, Limits&)>& onFound);
    /// To find a plan where there are many rather than to prove that there is none: prices at every node, stacks by
    /// those prices alone, ties by a shuffle of its own for each `seed`.
    void probe(unsigned seed) { m_probe = seed; }
    /// Goes by what failed in other searches over the same listing of stacks, and adds to it.
    void share(Failures& failures, std::size_t listing) {
        m_shared = &failures;
        m_listing = listing;
    }

private:
    struct Live {
        std::size_t begin = 0; ///< in m_arena
        std::size_t end = 0;
        std::int64_t leastShimCost = 0;
        std::int64_t leastResidualCost = 0;
        std::int64_t leastResidual = 0; ///< least |residual| of any
        int smallest = 0;               ///< fewest shims of any
        int ofSmallest = 0;             ///< how many have so few
        [[nodiscard]] std::size_t count() const { return end - begin; }
        [[nodiscard]] bool isEmpty() const { return begin == end; }
        /// No stacks, from here on.
        static Live at(std::size_t begin);
        /// What one more stack changes, but for `end`.
        void add(const Column& c);
    };
    struct Frame {
        std::vector<Live> live;           ///< per seat
        std::vector<TwistChoice> choices; ///< per seat, while twist matters
        int shims = 0;                    ///< in the stacks chosen so far
        std::int64_t sum = 0;
        std::int64_t twist = 0;
        std::int64_t shimCost = 0;
        std::int64_t residualCost = 0;
        std::int64_t freeShimCost = 0; ///< Σ least over the open seats, less what may be left out
        std::int64_t freeResidualCost = 0;
        std::int64_t freeShims = 0; ///< the same without prices: fewest shims,
        std::int64_t freeSum = 0;   ///< and least |residual|
        Forces forces{}; ///< of the stacks chosen so far and what is pinned, while they are limited
        int leftOut = 0;
        bool bounded = false;   ///< the least costs are known
        std::uint16_t shim = 0; ///< class of which some open seat must take one
        int ofShim = 0;         ///< stacks with such a shim; 0: there is no such class
        Prices prices;          ///< of this node, once the search is long
        Prices shimPrices;      ///< with the sum of |residual| limited: those for the number of shims
    };
    enum class Next { goOn, halt };

    Next descend(std::size_t depth);
    Next branchOnSeat(std::size_t depth, std::size_t at);
    struct Option { ///< a stack of a seat
        std::size_t rank;
        std::size_t seat;
        std::uint32_t index;
    };
    std::vector<Option> stacksWith(std::uint16_t shim, const Frame& frame);
    Next branchOnShim(std::size_t depth);
    Next tryColumn(std::size_t depth, std::size_t seat, std::uint32_t index, const Live& live);
    Next tryLarger(std::size_t depth, std::size_t seat, const Live& larger);
    Next tryLeavingOut(std::size_t depth);
    Frame& frameAt(std::size_t depth);
    bool isSpent();
    Next report(const Frame& frame);
    void seed(Frame& root);
    [[nodiscard]] std::size_t hardest(const Frame& frame) const;
    [[nodiscard]] int branchesAt(const Frame& frame, std::size_t seat) const;
    std::int64_t leastTotal(const Frame& frame);
    bool canFill(const Frame& frame);
    bool chooseShim(Frame& frame);
    bool narrow(const Frame& from, Frame& to);
    bool filterSeat(std::size_t seat, const Frame& from, Frame& to);
    template <typename Least> std::int64_t leastOf(const Frame& frame, Least least);
    bool balance(Frame& frame);
    bool twistCanClose(const Frame& frame);
    bool forcesCanClose(Frame& frame);
    void spread(const Frame& frame, Forces& lowest, Forces& highest);
    bool shedByForces(Frame& frame, std::size_t seat, const Forces& lowest, const Forces& highest);
    bool squeeze(Frame& frame, Cost cost, Prices& prices);
    void orderByPrices(const Frame& frame, std::size_t seat);
    void use(const Column& c, int sign);
    [[nodiscard]] bool isLong() const;
    [[nodiscard]] bool remembers() const { return m_open.size() > 1 && (isLong() || !m_shared->table().isEmpty()); }
    [[nodiscard]] bool fits(const Column& c) const;
    [[nodiscard]] bool isTwistLimited() const { return m_limits.twist < never; }
    [[nodiscard]] bool areForcesLimited() const { return m_limits.load < never || m_limits.squares < never; }
    [[nodiscard]] bool isSumLimited() const { return m_limits.sum < never; }
    [[nodiscard]] std::int64_t shimCap() const { return scale * m_limits.shims + m_shimWorth; }
    [[nodiscard]] std::int64_t residualCap() const {
        return isSumLimited() ? scale * m_limits.sum + m_residualWorth : never;
    }
    [[nodiscard]] std::int64_t roomForSum(const Frame& frame) const {
        return isSumLimited() ? m_limits.sum - frame.sum : 0;
    }
    [[nodiscard]] StateKey stateOf(const Frame& frame) const;

    const Instance& m_instance;
    const Columns& m_columns;
    const Prices& m_forShims;
    const Prices& m_forResiduals;
    WorkClock& m_clock;
    std::int64_t m_shimWorth = 0;     ///< what the prices count for the whole kit
    std::int64_t m_residualWorth = 0; ///< and those for residuals
    std::vector<int> m_left;
    std::vector<std::size_t> m_open;
    std::deque<Frame> m_frames; ///< by depth
    Frame m_root;
    Frame m_once;
    std::vector<int> m_barred; ///< per seat: only stacks of more shims than this
    std::vector<std::uint32_t> m_arena;
    std::vector<int> m_chosen;
    std::vector<std::int64_t> m_scratch;
    std::vector<std::pair<std::int64_t, std::int64_t>> m_span; ///< per open seat: its least and its largest residual
    std::vector<std::uint16_t> m_musts; ///< classes of which the open seats must take at least one
    std::vector<int> m_uses;            ///< per class
    std::vector<std::uint64_t> m_kind;  ///< per seat; equal for seats that are alike
    StateKey m_kit;                     ///< of what is left
    Failures m_own;
    Failures* m_shared = &m_own;
    std::size_t m_listing = 0; ///< of the stacks
    TwistReach m_twist;
    Limits m_limits;
    std::int64_t m_steps = 0;
    std::int64_t m_mostSteps = 0;
    std::int64_t m_mostWork = 0;
    bool m_gaveUp = false;
    unsigned m_probe = 0; ///< 0: not probing
    std::vector<std::pair<std::int64_t, std::uint32_t>> m_ranked;
    const std::function<bool(const Found&, Limits&)>* m_onFound = nullptr;
};

} // namespace caprail::solver
