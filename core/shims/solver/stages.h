// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <memory>
#include <optional>
#include <shims/solver/columns.h>
#include <shims/solver/kit_choice.h>
#include <shims/solver/lagrangian.h>
#include <shims/solver/pool.h>
#include <shims/solver/pricing.h>
#include <shims/solver/reach.h>
#include <shims/solver/search.h>
#include <shims/solver/solver.h>
#include <vector>

namespace caprail::solver {

/// The stages of one solve, each settling one aim in the order of importance, over what is left by those before.
class Stages {
public:
    Stages(const Instance& instance, WorkClock& clock);
    /// Settles the aims in turn; throws Stopped, with the best so far kept.
    void run();
    /// The best found, proven or not, and the bounds.
    [[nodiscard]] Solution result() const;

private:
    enum class Answer { yes, no, unknown };
    /// Stacks tried in a first search, and short tries at a plan before each longer one.
    static constexpr std::int64_t firstSteps = 1000;
    static constexpr unsigned probes = 3;
    /// Stacks tried in sharing out whole kits.
    static constexpr std::int64_t kitSteps = 100'000;

    /// A plan is sought with at most `shims` shims, |residual| ≤ `window`, all but `leftOut` places served.
    struct Aim {
        int shims = 0;
        std::int64_t window = 0;
        int leftOut = 0;
    };
    /// Finds such a plan (and keeps it, if it is the best so far), or that there is none.
    Answer decide(const Aim& aim);
    Answer decideFromListed(const Aim& aim, std::int64_t steps, unsigned probe = 0);
    Answer decideByPrices(const Aim& aim);
    Answer decideAtLength(const Aim& aim, std::int64_t steps, std::int64_t mostSteps);

    Answer decideByKit(const Limits& limits, std::int64_t steps);
    [[nodiscard]] std::optional<std::vector<std::int64_t>> sumsOfResiduals(const Limits& limits) const;
    [[nodiscard]] std::optional<KitChoice> kitChoice(const Limits& limits) const;
    std::int64_t leastTwistOf(const Limits& limits) const;
    std::int64_t leastSumOf(const Limits& limits) const;

    void sortOutPlaces();
    void settleAims();
    bool isHopeless(const Place& place, int& fewest) const;
    void dive();
    void serveMost();
    void shrinkLargest();
    void shrinkTwist();
    void shrinkSum();
    using Lower = std::function<Outcome(std::int64_t most, std::int64_t steps, unsigned probe)>;
    bool settle(const Aim& aim, std::int64_t& atLeast, const std::int64_t& best, const Lower& search);
    std::int64_t boundSum(const Columns& columns, const Aim& aim, std::int64_t target, Prices& prices);

    bool extend(std::size_t place, int size, std::int64_t window);
    enum class Listing { complete, extended, noRoom };
    Listing listMore(const Aim& aim);
    bool listAll(const Aim& aim);
    std::int64_t raisePrices(const Aim& aim, int rounds);
    [[nodiscard]] std::int64_t boundFor(const Aim& aim);
    [[nodiscard]] std::vector<StackPrices::Wanted> wantedFor(const Aim& aim) const;
    StackPrices* tableFor(const Aim& aim);
    bool listByPrice(const Aim& aim);
    [[nodiscard]] bool isListedByPrice(const Aim& aim) const;
    [[nodiscard]] std::size_t candidatesListed() const;
    [[nodiscard]] double expectedStacks(std::size_t place, int size) const;
    [[nodiscard]] bool isListed(const Aim& aim) const;
    [[nodiscard]] int fewestInAll(int leftOut) const;
    [[nodiscard]] int mostFor(std::size_t place, const Aim& aim) const;
    [[nodiscard]] Columns columnsFor(const Aim& aim) const;
    [[nodiscard]] std::vector<Unlisted> unlistedFor(const Aim& aim) const;
    [[nodiscard]] Limits limitsFor(const Aim& aim) const;
    [[nodiscard]] std::int64_t unfilled(int shims) const;
    [[nodiscard]] std::int64_t leastResidual(std::size_t place, int size) const;
    bool keep(const Columns& columns, const Found& found);
    bool keep(const std::vector<std::optional<std::vector<Part>>>& stacks);
    [[nodiscard]] Aim bestAim() const { return {m_best.shims, m_wholeBand, m_leftOut}; }

    const Instance& m_all; ///< as given
    WorkClock& m_clock;
    Instance m_instance;               ///< without the places that stay bare and those that nothing can serve
    std::vector<std::size_t> m_origin; ///< of m_instance's places in m_all
    std::vector<std::size_t> m_bare;   ///< places of m_all whose gap is in band: no shim
    std::unique_ptr<Reach> m_reach;
    std::vector<Pool> m_pools;
    std::vector<int> m_fewest; ///< per place, the fewest shims of any stack that serves it
    std::int64_t m_wholeBand = 0;
    Prices m_prices; ///< for the number of shims
    std::unique_ptr<StackPrices> m_table;
    /// All stacks that by their prices a plan of this aim can contain, per place.
    std::vector<StackPrices::Listed> m_byPrice;
    Aim m_byPriceFor;
    Solution m_best; ///< over m_instance's places
    bool m_haveBest = false;
    bool m_isOpen = false;    ///< an aim could not be settled, with no more room for stacks
    bool m_isSettled = false; ///< all aims are
    int m_hopeless = 0; ///< places of m_all that nothing can serve, as far as was looked
    int m_leftOut = 0;
    int m_fewestShims = 0; ///< no plan that serves as many has fewer
    std::int64_t m_largestAtLeast = 0;
    std::int64_t m_twistAtLeast = 0;
    std::int64_t m_sumAtLeast = 0;
};

} // namespace caprail::solver
