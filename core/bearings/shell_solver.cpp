// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_solver.h>
#include <cstdlib>
#include <set>

namespace caprail {

namespace {
/// Half a millisecond or so for each family, before the first proof.
constexpr std::int64_t beginning = 1'000'000;
constexpr std::int64_t grace = 500'000;

/// Where a window may begin: at a clearance; those that leave no bearing without a choice, the middle ones first.
std::vector<std::int64_t> startsOf(const ShellProblem& problem, std::int64_t width, packing::WorkClock& clock) {
    std::set<std::int64_t> all;
    for (const auto& choices : problem.choices) {
        for (const ShellChoice& c : choices) {
            clock.book(50);
            if (c.hasShells()) {
                all.insert(c.clearance);
            }
        }
    }
    std::vector<std::int64_t> starts;
    for (const std::int64_t lo : all) {
        const auto hasChoice = [&](const std::vector<ShellChoice>& choices) {
            clock.book(static_cast<std::int64_t>(choices.size()));
            return std::ranges::any_of(choices, [&](const ShellChoice& c) {
                return !c.hasShells() || (lo <= c.clearance && c.clearance <= lo + width);
            });
        };
        if (std::ranges::all_of(problem.choices, hasChoice)) {
            starts.push_back(lo);
        }
    }
    if (!starts.empty()) {
        const std::int64_t middle = starts[starts.size() / 2];
        std::ranges::stable_sort(starts, {}, [middle](std::int64_t lo) { return std::abs(lo - middle); });
    }
    return starts;
}

ShellProblem within(const ShellProblem& problem, std::int64_t lo, std::int64_t hi) {
    ShellProblem narrow{{}, problem.stock};
    for (const auto& choices : problem.choices) {
        auto& kept = narrow.choices.emplace_back();
        std::ranges::copy_if(choices, std::back_inserter(kept), [&](const ShellChoice& c) {
            return !c.hasShells() || (lo <= c.clearance && c.clearance <= hi);
        });
    }
    return narrow;
}

/// A cost that no assignment of the problem exceeds.
std::int64_t dearest(const ShellProblem& problem) {
    std::int64_t sum = 0;
    for (const auto& choices : problem.choices) {
        std::int64_t most = 0;
        for (const ShellChoice& c : choices) {
            most = std::max(most, c.cost);
        }
        sum += most;
    }
    return sum;
}
} // namespace

ShellSolver::ShellSolver(const ShellFamily& family, packing::WorkClock& clock)
    : m_family(family), m_clock(clock), m_incumbent(family), m_improver(family, m_incumbent, clock) {}

void ShellSolver::begin() {
    m_improver.runFor(family().bearings.size() > 2 ? beginning : 1);
}

void ShellSolver::beginInGrace() {
    if (m_improver.work() > 0) {
        return;
    }
    m_clock.grant(grace);
    try {
        m_improver.runFor(1);
    } catch (const packing::Stopped&) {
        // What it has come to stands.
    }
}

void ShellSolver::prove() {
    m_clock.alternateWith([this] { improveMeanwhile(); });
    fewestNotInBand();
    fewestWithoutAndCost();
    leastSpread();
    m_isProven = true;
    m_clock.alternateWith({});
}

/// As much work as the proof has had, while it brings better selections; else an eighth of that.
void ShellSolver::improveMeanwhile() {
    const std::int64_t had = m_improver.work();
    const std::int64_t proof = m_clock.now() - had;
    const std::int64_t share = had <= 2 * m_improver.lastBetter() ? proof : proof / 8;
    if (share > had) {
        m_improver.runFor(share - had);
    }
}

/// First aim: the most bearings in band. A bearing that is not costs 1, and takes no shells here.
void ShellSolver::fewestNotInBand() {
    ShellProblem problem{{}, m_family.stock()};
    for (auto choices : m_family.inBand) {
        for (ShellChoice& c : choices) {
            c.cost = 0;
        }
        ShellChoice without;
        without.cost = 1;
        choices.push_back(without);
        problem.choices.push_back(std::move(choices));
    }
    const auto fewest = m_incumbent.figures().notInBand;
    const auto fewer = cheapestAssignment(problem, static_cast<std::int64_t>(fewest) - 1, m_clock);
    m_notInBand = fewer ? static_cast<std::size_t>(fewer->cost) : m_incumbent.figures().notInBand;
}

/// All bearings that a selection leaves out of band or without shells, as quotas on the stock: so many may be without,
/// and so many out of band that with the fewest not in band all others are.
ShellProblem ShellSolver::problemWith(std::size_t without) const {
    ShellProblem problem{{}, m_family.stock()};
    const auto outOfBand = static_cast<std::int16_t>(problem.stock.size());
    problem.stock.push_back(static_cast<int>(m_notInBand - without));
    problem.stock.push_back(static_cast<int>(without));
    for (std::size_t j = 0; j < m_family.bearings.size(); ++j) {
        auto& choices = problem.choices.emplace_back(m_family.inBand[j]);
        if (m_notInBand > without) {
            for (ShellChoice c : m_family.outOfBand[j]) {
                c.quota = outOfBand;
                choices.push_back(c);
            }
        }
        if (without > 0) {
            ShellChoice none;
            none.quota = static_cast<std::int16_t>(outOfBand + 1);
            choices.push_back(none);
        }
    }
    return problem;
}

/// Second and third aim.
void ShellSolver::fewestWithoutAndCost() {
    const std::size_t bearings = m_family.bearings.size();
    for (std::size_t without = bearings - std::min(bearings, m_family.mostPairs()); without <= m_notInBand; ++without) {
        const ShellProblem problem = problemWith(without);
        const ShellFigures best = m_incumbent.figures();
        const bool isKnown = best.notInBand == m_notInBand && best.without == without;
        if (const auto better = cheapestAssignment(problem, isKnown ? best.cost - 1 : dearest(problem), m_clock)) {
            m_incumbent.offer(better->chosen);
        }
        if (m_incumbent.figures().notInBand == m_notInBand && m_incumbent.figures().without == without) {
            return;
        }
    }
}

/// Fourth aim: among all selections of the least cost, clearances in the narrowest window. The width is narrowed by
/// thirds: a wide window is filled at once.
void ShellSolver::leastSpread() {
    const ShellFigures best = m_incumbent.figures();
    if (best.spread == 0) {
        return;
    }
    const ShellProblem problem = reduced(problemWith(best.without), best.cost, m_clock);
    std::int64_t impossible = -1; // no window of this width can be filled
    while (impossible + 1 < m_incumbent.figures().spread) {
        const std::int64_t width = impossible + (m_incumbent.figures().spread - impossible) * 2 / 3;
        if (const auto narrower = anyWithin(problem, width)) {
            m_incumbent.offer(*narrower);
        } else {
            impossible = width;
        }
    }
}

/// A selection of the least cost whose clearances lie in some window of this width.
std::optional<std::vector<ShellChoice>> ShellSolver::anyWithin(const ShellProblem& problem, std::int64_t width) {
    for (const std::int64_t lo : startsOf(problem, width, m_clock)) {
        if (auto found = cheapestAssignment(within(problem, lo, lo + width), m_incumbent.figures().cost, m_clock)) {
            return std::move(found->chosen);
        }
    }
    return {};
}

} // namespace caprail
