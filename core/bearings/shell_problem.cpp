// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_problem.h>
#include <cstdlib>
#include <map>
#include <set>

namespace caprail {

namespace {

/// The two shells of a pair and which lies where; nothing when they cannot make one.
std::optional<ShellChoice> paired(const std::vector<ShellClass>& classes, std::size_t a, std::size_t b) {
    const auto mayLie = [&](std::size_t i, ShellSide side) {
        return classes[i].side == ShellSide::either || classes[i].side == side;
    };
    if (a == b && classes[a].ids.size() < 2) {
        return {};
    }
    ShellChoice choice;
    if (mayLie(a, ShellSide::upper) && mayLie(b, ShellSide::lower)) {
        choice.upper = static_cast<int>(a);
        choice.lower = static_cast<int>(b);
    } else if (mayLie(b, ShellSide::upper) && mayLie(a, ShellSide::lower)) {
        choice.upper = static_cast<int>(b);
        choice.lower = static_cast<int>(a);
    } else {
        return {};
    }
    return choice;
}

void addChoices(ShellFamily& family, const BearingToFit& bearing) {
    auto& in = family.inBand.emplace_back();
    auto& out = family.outOfBand.emplace_back();
    for (std::size_t a = 0; a < family.classes.size(); ++a) {
        for (std::size_t b = a; b < family.classes.size(); ++b) {
            auto choice = paired(family.classes, a, b);
            if (!choice) {
                continue;
            }
            const Length clearance =
                bearing.housing - family.classes[a].thickness - family.classes[b].thickness - bearing.journal;
            choice->clearance = clearance.value();
            choice->cost = (clearance - bearing.target).magnitude().value();
            (bearing.band.contains(clearance) ? in : out).push_back(*choice);
        }
    }
}

/// What becomes of one bearing.
enum class Fate { inBand, outOfBand, without };

/// The problem in which each bearing meets its fate.
ShellProblem problemFor(const ShellFamily& family, const std::vector<Fate>& fates) {
    ShellProblem problem{{}, family.stock()};
    for (std::size_t j = 0; j < fates.size(); ++j) {
        problem.choices.push_back(fates[j] == Fate::inBand      ? family.inBand[j]
                                  : fates[j] == Fate::outOfBand ? family.outOfBand[j]
                                                                : std::vector<ShellChoice>{ShellChoice{}});
    }
    return problem;
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

class FamilySolver {
public:
    FamilySolver(const ShellFamily& family, const std::function<bool()>& shouldStop)
        : m_family(family), m_shouldStop(shouldStop) {}

    FamilySolution run() {
        const std::size_t bearings = m_family.bearings.size();
        const std::size_t inBand = mostInBand();
        for (std::size_t fitted = std::min(bearings, m_family.mostPairs()); fitted >= inBand && !m_best; --fitted) {
            std::vector<Fate> fates;
            everyFate(fates, inBand, fitted - inBand, bearings - fitted);
            if (fitted == 0 || m_isStopped) {
                break;
            }
        }
        if (m_best) {
            leastSpread();
            return {m_best->chosen, !m_isStopped};
        }
        return {m_fallback, !m_isStopped};
    }

private:
    ShellSearchResult cheapest(const ShellProblem& problem, std::int64_t limit) {
        auto result = cheapestAssignment(problem, limit, m_shouldStop);
        m_isStopped = m_isStopped || !result.isComplete;
        return result;
    }

    /// First aim: the most bearings in band. A bearing that is not costs 1, and takes no shells here.
    std::size_t mostInBand() {
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
        m_fallback.assign(m_family.bearings.size(), ShellChoice{});
        const auto result = cheapest(problem, static_cast<std::int64_t>(m_family.bearings.size()));
        if (!result.best) {
            return 0; // stopped before the first assignment
        }
        m_fallback = result.best->chosen;
        fillUp();
        return m_family.bearings.size() - static_cast<std::size_t>(result.best->cost);
    }

    /// Gives what is left of the shelf to the bearings without, so that a stopped search still fits them.
    void fillUp() {
        std::vector<int> stock = m_family.stock();
        for (const ShellChoice& c : m_fallback) {
            if (c.hasShells()) {
                --stock[static_cast<std::size_t>(c.upper)];
                --stock[static_cast<std::size_t>(c.lower)];
            }
        }
        for (std::size_t j = 0; j < m_fallback.size(); ++j) {
            if (m_fallback[j].hasShells()) {
                continue;
            }
            for (const ShellChoice& c : m_family.outOfBand[j]) {
                const int needed = c.upper == c.lower ? 2 : 1;
                if (stock[static_cast<std::size_t>(c.upper)] >= needed &&
                    stock[static_cast<std::size_t>(c.lower)] >= needed) {
                    --stock[static_cast<std::size_t>(c.upper)];
                    --stock[static_cast<std::size_t>(c.lower)];
                    m_fallback[j] = c;
                    break;
                }
            }
        }
    }

    /// Second and third aim: tries every way to say which bearings are in band, out of it, and without shells.
    void everyFate(std::vector<Fate>& fates, std::size_t in, std::size_t out, std::size_t without) {
        if (m_isStopped) {
            return;
        }
        if (fates.size() == m_family.bearings.size()) {
            const ShellProblem problem = problemFor(m_family, fates);
            const auto result = cheapest(problem, m_best ? m_best->cost : dearest(problem));
            if (result.best) {
                if (!m_best || result.best->cost < m_best->cost) {
                    m_equals.clear();
                    m_best = result.best;
                }
                m_equals.push_back(fates);
            }
            return;
        }
        const std::size_t j = fates.size();
        const auto tryFate = [&](Fate fate, std::size_t i, std::size_t o, std::size_t w) {
            fates.push_back(fate);
            everyFate(fates, i, o, w);
            fates.pop_back();
        };
        if (in > 0 && !m_family.inBand[j].empty()) {
            tryFate(Fate::inBand, in - 1, out, without);
        }
        if (out > 0 && !m_family.outOfBand[j].empty()) {
            tryFate(Fate::outOfBand, in, out - 1, without);
        }
        if (without > 0) {
            tryFate(Fate::without, in, out, without - 1);
        }
    }

    /// Fourth aim: among all assignments of the least cost, clearances in the narrowest window. The width is
    /// narrowed by thirds: a wide window is filled at once, so that a search stopped early is near the best.
    void leastSpread() {
        std::int64_t impossible = -1; // no window of this width can be filled
        while (impossible + 1 < spreadOf(m_best->chosen) && !m_isStopped) {
            const std::int64_t width = impossible + (spreadOf(m_best->chosen) - impossible) * 2 / 3;
            if (auto better = anyWithin(width)) {
                m_best = std::move(better);
            } else {
                impossible = width;
            }
        }
    }

    /// An assignment of the least cost whose clearances lie in some window of this width.
    std::optional<ShellAssignment> anyWithin(std::int64_t width) {
        const std::int64_t cost = m_best->cost;
        if (m_narrowed.empty()) {
            for (const auto& fates : m_equals) {
                m_narrowed.push_back(reduced(problemFor(m_family, fates), cost, m_shouldStop));
            }
        }
        for (const ShellProblem& problem : m_narrowed) {
            for (const std::int64_t lo : startsOf(problem, width)) {
                auto result = cheapest(within(problem, lo, lo + width), cost);
                if (result.best || m_isStopped) {
                    return std::move(result.best);
                }
            }
        }
        return {};
    }

    /// Where a window may begin: at a clearance; those that leave no bearing without a choice, the middle ones first.
    static std::vector<std::int64_t> startsOf(const ShellProblem& problem, std::int64_t width) {
        std::set<std::int64_t> all;
        for (const auto& choices : problem.choices) {
            for (const ShellChoice& c : choices) {
                if (c.hasShells()) {
                    all.insert(c.clearance);
                }
            }
        }
        std::vector<std::int64_t> starts;
        for (const std::int64_t lo : all) {
            const auto hasChoice = [&](const std::vector<ShellChoice>& choices) {
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

    static ShellProblem within(const ShellProblem& problem, std::int64_t lo, std::int64_t hi) {
        ShellProblem narrow{{}, problem.stock};
        for (const auto& choices : problem.choices) {
            auto& kept = narrow.choices.emplace_back();
            std::ranges::copy_if(choices, std::back_inserter(kept), [&](const ShellChoice& c) {
                return !c.hasShells() || (lo <= c.clearance && c.clearance <= hi);
            });
        }
        return narrow;
    }

    const ShellFamily& m_family;
    const std::function<bool()>& m_shouldStop;
    std::optional<ShellAssignment> m_best;
    std::vector<std::vector<Fate>> m_equals; ///< those whose least cost is the best
    std::vector<ShellProblem> m_narrowed;    ///< the same, without choices that cost too much
    std::vector<ShellChoice> m_fallback;
    bool m_isStopped = false;
};

} // namespace

std::vector<int> ShellFamily::stock() const {
    std::vector<int> counts;
    for (const ShellClass& c : classes) {
        counts.push_back(static_cast<int>(c.ids.size()));
    }
    return counts;
}

std::size_t ShellFamily::mostPairs() const {
    std::map<ShellSide, std::size_t> count;
    for (const ShellClass& c : classes) {
        count[c.side] += c.ids.size();
    }
    const std::size_t either = count[ShellSide::either];
    const std::size_t upper = count[ShellSide::upper];
    const std::size_t lower = count[ShellSide::lower];
    return std::min({upper + either, lower + either, (upper + lower + either) / 2});
}

std::vector<ShellFamily> familiesOf(const std::vector<BearingToFit>& bearings, const std::vector<ShelfShell>& shelf) {
    std::map<std::string, ShellFamily> families;
    for (const BearingToFit& bearing : bearings) {
        families[bearing.family].bearings.push_back(&bearing);
    }
    std::map<std::string, std::map<std::pair<Length, ShellSide>, std::vector<std::string>>> like;
    for (const ShelfShell& shell : shelf) {
        like[shell.family][{shell.thickness, shell.side}].push_back(shell.id);
    }
    std::vector<ShellFamily> list;
    for (auto& [name, family] : families) {
        std::ranges::sort(family.bearings, {}, [](const BearingToFit* b) { return b->id; });
        for (auto& [kind, ids] : like[name]) {
            std::ranges::sort(ids);
            family.classes.push_back({kind.first, kind.second, std::move(ids)});
        }
        for (const BearingToFit* bearing : family.bearings) {
            addChoices(family, *bearing);
        }
        list.push_back(std::move(family));
    }
    return list;
}

FamilySolution solveFamily(const ShellFamily& family, const std::function<bool()>& shouldStop) {
    return FamilySolver(family, shouldStop).run();
}

std::int64_t spreadOf(const std::vector<ShellChoice>& chosen) {
    std::optional<std::int64_t> smallest;
    std::optional<std::int64_t> largest;
    for (const ShellChoice& c : chosen) {
        if (c.hasShells()) {
            smallest = std::min(smallest.value_or(c.clearance), c.clearance);
            largest = std::max(largest.value_or(c.clearance), c.clearance);
        }
    }
    return smallest ? *largest - *smallest : 0;
}

} // namespace caprail
