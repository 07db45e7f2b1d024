// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <random>
#include <shims/solver/fewest_shims.h>
#include <shims/solver/figures.h>
#include <shims/solver/forces.h>
#include <shims/solver/incumbent.h>
#include <shims/solver/instance.h>
#include <tuple>
#include <vector>

namespace caprail::solver {

/// Large-neighbourhood search: a plan at once, and then better ones for as long as it is let. A few stacks of the
/// present plan are taken apart (“ruin”), and the seats are served anew, one after the other, each with the best stack
/// that the shims now free can make (“recreate”); what comes out stays unless it is worse. Since one dynamic programme
/// per seat finds that stack among all there are, a step is an exchange of any number of shims between those seats
/// and the rest of the kit. It proves nothing.
///
/// P. Shaw, “Using constraint programming and local search methods to solve vehicle routing problems”, CP 1998, LNCS
/// 1520; G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck, “Record breaking optimization results using the ruin
/// and recreate principle”, Journal of Computational Physics 159 (2000); S. Ropke, D. Pisinger, “An adaptive large
/// neighborhood search heuristic for the pickup and delivery problem with time windows”, Transportation Science 40
/// (2006). All from memory.
class LargeNeighbourhoodSearch {
public:
    /// No plan serves more seats than `mostServed`.
    LargeNeighbourhoodSearch(const Instance& instance, int mostServed, Incumbent& incumbent, WorkClock& clock);

    /// What is known by now: no plan serves more seats, and none that serves so many has fewer shims. It is no use to
    /// look for more.
    void aimAt(int mostServed, int fewestShims) {
        m_mostServed = mostServed;
        m_fewestShims = fewestShims;
    }
    /// Whether the incumbent is as good as that.
    [[nodiscard]] bool isAtAim() const {
        return m_incumbent.figures().served >= m_mostServed && m_incumbent.figures().shims <= m_fewestShims;
    }
    /// Goes on until the clock stands there. The first time, and after a stop that came before there was a first plan,
    /// it begins with that.
    void runUntil(std::int64_t work);
    /// Work booked in all, and what it stood at when the incumbent was last bettered from here.
    [[nodiscard]] std::int64_t work() const { return m_work; }
    [[nodiscard]] bool hasFirstPlan() const { return m_isBegun; }
    [[nodiscard]] std::int64_t lastBetter() const { return m_lastBetter; }

private:
    /// What makes a step a good one; the search goes by each in turn, as far as there is anything to be won by it.
    enum class Guide {
        seats, ///< more seats, else less of the kit used up, which leaves more for the next
        shims, ///< fewer shims, else less of the kit used up
        rank   ///< as plans are ranked
    };
    using Value = std::tuple<int, std::int64_t, std::int64_t, std::int64_t>; ///< less is better
    struct Plan {
        Stacks stacks;
        std::vector<std::int64_t> residual; ///< per seat, while it is served
        std::vector<int> left;              ///< of the kit, per class
        std::int64_t used = 0;              ///< what the shims in all stacks are worth
    };

    void construct(bool smallestFirst);
    void load(const Stacks& stacks);
    void turn(Guide guide);
    bool step(Guide guide);
    void chooseRuins(Guide guide);
    bool recreate(std::size_t seat, Guide guide, bool isLast);
    [[nodiscard]] std::int64_t chooseTotal(std::size_t seat, Guide guide, bool isLast);
    void orderClasses(std::int64_t thickest);
    void free(std::size_t seat);
    bool serve(std::size_t seat, const std::vector<Part>& stack);
    [[nodiscard]] Figures figures() const;
    [[nodiscard]] Value valueOf(Guide guide) const;
    [[nodiscard]] std::int64_t twistSum() const;
    [[nodiscard]] Forces forces() const;
    /// What a residual at a place makes of the third and the fourth aim, beside the others.
    using ByRank = std::pair<std::int64_t, std::int64_t>;
    [[nodiscard]] ByRank rankOf(const Figures& others, const Forces& otherForces, std::int64_t otherTwist,
                                const Seat& at, std::int64_t residual) const;
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_random() % n); }
    bool oneIn(std::size_t n) { return below(n) == 0; }

    const Instance& m_instance;
    Incumbent& m_incumbent;
    WorkClock& m_clock;
    FewestShims m_table;
    std::vector<std::int64_t> m_worth; ///< of a shim of each class to the seats that are not served
    Plan m_plan;
    std::vector<std::size_t> m_ruins;
    std::vector<std::uint16_t> m_order;
    std::vector<Part> m_stack;
    std::int64_t m_window = never; ///< |residual| in a step by rank
    int m_firstServed;
    int m_mostServed;
    int m_fewestShims = 0;
    bool m_isBegun = false;
    std::size_t m_turns = 0;
    std::int64_t m_work = 0;
    std::int64_t m_lastBetter = 0;
    std::mt19937_64 m_random; ///< as the standard seeds it: the same lots in every run, on any machine
};

} // namespace caprail::solver
