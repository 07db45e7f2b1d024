// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <memory>
#include <shims/solver/aims.h>
#include <shims/solver/solver.h>

namespace caprail::solver {

namespace {

/// What the first plan may take once the solver was told to stop before there was one; a millisecond or so.
constexpr std::int64_t grace = 1'000'000;
/// What is proven in less needs no other search: some 0.1 ms.
constexpr std::int64_t soonProven = 200'000;

/// One solve: the aims in turn, and meanwhile the large-neighbourhood search.
class Solve {
public:
    Solve(const Instance& instance, WorkClock& clock)
        : m_clock(clock), m_open(instance, clock), m_incumbent(m_open.instance()), m_store(m_open, clock),
          m_kits(m_open.instance(), m_incumbent, clock), m_decision(m_open, m_store, m_kits, m_incumbent, clock),
          m_improver(m_open.instance(), static_cast<int>(m_open.count()) - m_open.leastLeftOut(), m_incumbent, clock) {
        const Tools tools{m_open, m_store, m_kits, m_decision, m_incumbent, m_improver, m_clock, m_bounds};
        m_aims[0] = std::make_unique<MostSeatsFewestShims>(tools);
        m_aims[2] = std::make_unique<SmallestSumOfResiduals>(tools);
        switch (instance.objective) {
        case Objective::smallestResidual:
            m_aims[1] = std::make_unique<SmallestLargestResidual>(tools);
            break;
        case Objective::leastTwist:
            m_aims[1] = std::make_unique<LeastTwist>(tools);
            break;
        case Objective::leastLoad:
            m_aims[1] = std::make_unique<LeastLoad>(tools, LeastLoad::largestForce);
            m_aims[2] = std::make_unique<LeastLoad>(tools, LeastLoad::sumOfSquares);
            break;
        }
        m_bounds.largest = m_open.instance().fixedLargest;
        m_bounds.sum = m_open.instance().fixedSum;
    }

    void run(bool hasDeadline) {
        try {
            if (m_open.isComplete()) {
                m_clock.alternateWith([this] { improveMeanwhile(); });
                search(hasDeadline);
            }
        } catch (const Stopped&) {
            // The best so far stands, and the bounds.
        }
        m_clock.alternateWith({});
        if (!m_isSettled && !m_improver.hasFirstPlan()) {
            firstPlan();
        }
    }

    /// Whether there is a better plan than the last one given by news().
    [[nodiscard]] bool hasNews() const { return m_incumbent.revision() != m_shown; }
    Solution news() {
        m_shown = m_incumbent.revision();
        return result();
    }

    [[nodiscard]] Solution result() const {
        const Figures best = m_incumbent.figures();
        Solution out;
        out.stacks = m_open.asGiven(m_incumbent.stacks());
        out.served = best.served + m_open.bare();
        out.shims = best.shims;
        out.largest = best.largest;
        out.sum = best.sum;
        out.twist = best.twist;
        out.load = best.load;
        out.squares = best.squares;
        out.proven = m_isSettled;
        out.mostServed = static_cast<int>(m_open.count()) + m_open.bare() - m_bounds.leftOut;
        out.fewestShims = m_isSettled ? best.shims : m_bounds.fewestShims;
        out.leastLargest = m_isSettled ? best.largest : m_bounds.largest;
        out.leastSum = m_isSettled ? best.sum : m_bounds.sum;
        out.leastTwist = m_isSettled ? best.twist : m_bounds.twist;
        out.leastLoad = m_isSettled ? best.load : m_bounds.load;
        out.leastSquares = m_isSettled ? best.squares : m_bounds.squares;
        return out;
    }

private:
    bool settleAims() {
        for (const auto& aim : m_aims) {
            if (!aim->settle()) {
                return false;
            }
        }
        return true;
    }

    /// Where there is no room for the proof, better plans are sought for as long as there is time; without a deadline,
    /// until that has been in vain for as long as everything so far.
    void search(bool hasDeadline) {
        m_isSettled = settleAims();
        m_clock.alternateWith({});
        while (!m_isSettled) {
            const auto was = m_incumbent.figures().rank(m_open.instance());
            m_improver.runUntil(2 * m_clock.now());
            if (m_incumbent.figures().rank(m_open.instance()) == was) {
                if (!hasDeadline) {
                    return;
                }
                continue;
            }
            m_clock.alternateWith([this] { improveMeanwhile(); });
            m_isSettled = settleAims();
            m_clock.alternateWith({});
        }
    }

    /// As much work as the proof has had, while seats or shims are won by it; a quarter of that while anything is, and
    /// else a sixteenth.
    void improveMeanwhile() {
        const std::int64_t had = m_improver.work();
        const std::int64_t proof = m_clock.now() - had;
        const bool isFresh = had <= 2 * m_improver.lastBetter();
        const std::int64_t share = !isFresh ? proof / 16 : m_improver.isAtAim() ? proof / 4 : proof;
        if (share > had && proof > soonProven) {
            m_improver.runUntil(m_clock.now() + share - had);
        }
    }

    void firstPlan() {
        m_clock.grant(grace);
        try {
            m_improver.runUntil(m_clock.now() + 1);
        } catch (const Stopped&) {
            // What it has come to stands.
        }
    }

    WorkClock& m_clock;
    OpenSeats m_open;
    Incumbent m_incumbent;
    ColumnStore m_store;
    WholeKits m_kits;
    Decision m_decision;
    LargeNeighbourhoodSearch m_improver;
    Bounds m_bounds;
    std::array<std::unique_ptr<Aim>, 3> m_aims;
    bool m_isSettled = false;
    std::size_t m_shown = 0;
};

} // namespace

Solution solve(const Instance& instance, const Stop& stop, const Better& better) {
    Solve* solve = nullptr;
    WorkClock clock([&] {
        if (better && solve != nullptr && solve->hasNews()) {
            better([&] { return solve->news(); });
        }
        return stop && stop();
    });
    Solve one(instance, clock);
    solve = &one;
    one.run(static_cast<bool>(stop));
    return one.result();
}

} // namespace caprail::solver
