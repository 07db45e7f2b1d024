// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_search.h>
#include <limits>
#include <numeric>
#include <packing/lagrangian.h>
#include <packing/transposition_table.h>

namespace caprail {

namespace {

using packing::Prices;
using packing::scale;
using packing::StateKey;
using packing::WorkClock;

constexpr std::int64_t none = std::numeric_limits<std::int64_t>::max();
constexpr int rounds = 200;

/// The choices as offers to the bound, costs counted in steps that all of them are multiples of.
class ShellMarket {
public:
    ShellMarket(const ShellProblem& problem, std::int64_t step, WorkClock& clock) : m_market(problem.stock, clock) {
        for (const auto& choices : problem.choices) {
            for (const ShellChoice& c : choices) {
                m_parts.push_back(partsOf(c));
            }
        }
        std::size_t next = 0;
        for (const auto& choices : problem.choices) {
            m_market.begin.push_back(next);
            for (const ShellChoice& c : choices) {
                clock.book(20);
                const auto& parts = m_parts[next++];
                m_market.offers.push_back({parts.data(), static_cast<std::uint16_t>(parts.size()),
                                           static_cast<std::uint16_t>(c.hasShells() ? 2 : 0), scale * (c.cost / step)});
            }
        }
        m_market.begin.push_back(next);
    }
    [[nodiscard]] const packing::Market& market() const { return m_market; }
    [[nodiscard]] std::int64_t priced(std::size_t bearing, std::size_t choice, const Prices& prices) const {
        return packing::pricedCost(m_market.offers[m_market.begin[bearing] + choice], prices);
    }

private:
    static std::vector<packing::Part> partsOf(const ShellChoice& c) {
        std::vector<packing::Part> parts;
        const auto take = [&](int cls, int count) {
            if (cls >= 0) {
                parts.push_back({static_cast<std::uint16_t>(cls), static_cast<std::uint16_t>(count)});
            }
        };
        take(c.upper, c.upper == c.lower ? 2 : 1);
        take(c.upper == c.lower ? -1 : c.lower, 1);
        take(c.quota, 1);
        return parts;
    }

    std::vector<std::vector<packing::Part>> m_parts;
    packing::Market m_market;
};

std::int64_t stockValue(const std::vector<int>& stock, const Prices& prices) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < stock.size(); ++i) {
        sum += prices.ofClass[i] * stock[i];
    }
    return sum;
}

/// The greatest length that all costs are multiples of.
std::int64_t stepOf(const ShellProblem& problem) {
    std::int64_t step = 0;
    for (const auto& choices : problem.choices) {
        for (const ShellChoice& c : choices) {
            step = std::gcd(step, c.cost);
        }
    }
    return std::max<std::int64_t>(step, 1);
}

bool hasEmptyList(const ShellProblem& problem) {
    return std::ranges::any_of(problem.choices, [](const auto& list) { return list.empty(); });
}

/// One choice with its reduced cost at the root's prices; lists are sorted by it.
struct Priced {
    std::int64_t reduced = 0;
    std::size_t choice = 0;
};

/// Costs and limits in steps.
class Search {
public:
    Search(const ShellProblem& problem, std::int64_t limit, WorkClock& clock)
        : m_problem(problem), m_step(stepOf(problem)), m_limit(limit / m_step), m_clock(clock),
          m_market(problem, m_step, clock), m_stock(problem.stock), m_chosen(problem.choices.size()),
          m_isFree(problem.choices.size(), true) {
        m_prices.ofClass.assign(m_stock.size(), 0);
    }

    /// The limit is raised from the bound upwards, in widening steps: most often the best lies just above the bound,
    /// and a low limit keeps the search narrow.
    std::optional<ShellAssignment> run() {
        const std::int64_t most = m_limit;
        std::int64_t bound = packing::raiseBound(m_market.market(), scale * most, rounds, m_prices);
        const std::int64_t least = std::max<std::int64_t>(0, (bound + scale - 1) / scale);
        if (least > most) {
            return std::nullopt;
        }
        for (std::int64_t margin = (most - least) / 128;; margin = 3 * margin + 1) {
            m_limit = std::min(most, least + margin);
            Prices nearer = m_prices;
            const std::int64_t other = packing::raiseBound(m_market.market(), scale * m_limit, rounds, nearer);
            if (other > bound) {
                bound = other;
                m_prices = nearer;
            }
            if (bound <= scale * m_limit) {
                sortByPrice();
                m_failed.clear();
                descend(0, -stockValue(m_stock, m_prices), m_problem.choices.size());
            }
            if (m_best || m_limit >= most) {
                return std::move(m_best);
            }
        }
    }

private:
    void sortByPrice() {
        m_sorted.clear();
        for (std::size_t j = 0; j < m_problem.choices.size(); ++j) {
            auto& list = m_sorted.emplace_back();
            for (std::size_t i = 0; i < m_problem.choices[j].size(); ++i) {
                m_clock.book(100);
                list.push_back({m_market.priced(j, i, m_prices), i});
            }
            std::ranges::stable_sort(list, {}, &Priced::reduced);
        }
    }

    [[nodiscard]] bool isInStock(const ShellChoice& c) const {
        const auto left = [this](int cls) { return m_stock[static_cast<std::size_t>(cls)]; };
        if (c.quota >= 0 && left(c.quota) < 1) {
            return false;
        }
        const int needed = c.upper == c.lower ? 2 : 1;
        return !c.hasShells() || (left(c.upper) >= needed && left(c.lower) >= needed);
    }

    void take(const ShellChoice& c, int count) {
        for (const int cls : {c.upper, c.lower, c.quota}) {
            if (cls >= 0) {
                m_stock[static_cast<std::size_t>(cls)] -= count;
            }
        }
    }

    /// Cheapest in stock, or `none`.
    [[nodiscard]] std::int64_t cheapestFor(std::size_t bearing) const {
        for (const Priced& p : m_sorted[bearing]) {
            m_clock.book(4);
            if (isInStock(m_problem.choices[bearing][p.choice])) {
                return p.reduced;
            }
        }
        return none;
    }

    /// `spent`: what the fixed bearings cost, by reduced cost. The stock's value is constant: what is used is paid for.
    void descend(std::int64_t cost, std::int64_t spent, std::size_t free) {
        m_clock.book(200);
        if (free == 0) {
            if (cost <= m_limit) { // the bound may lie below the cost, by what shells left over are priced at
                m_best = ShellAssignment{cost * m_step, m_chosen};
                m_limit = cost - 1; // from here on only what is cheaper
            }
            return;
        }
        std::int64_t bound = spent;
        std::vector<std::int64_t> cheapest(m_isFree.size(), 0);
        for (std::size_t j = 0; j < m_isFree.size(); ++j) {
            if (m_isFree[j]) {
                cheapest[j] = cheapestFor(j);
                if (cheapest[j] == none) {
                    return;
                }
                bound += cheapest[j];
            }
        }
        if (bound > scale * m_limit) {
            return;
        }
        // Many ways lead to the same bearings with the same shells left. Once one was searched through in vain with as
        // much to spend, the others need not be.
        const StateKey state = free > 1 ? stateKey() : StateKey{};
        if (free > 1 && m_failed.knows(state, m_limit - cost)) {
            return;
        }
        const std::size_t bearing = narrowest(cheapest, bound);
        m_isFree[bearing] = false;
        for (const Priced& p : m_sorted[bearing]) {
            if (bound - cheapest[bearing] + p.reduced > scale * m_limit) {
                break;
            }
            const ShellChoice& c = m_problem.choices[bearing][p.choice];
            if (isInStock(c)) {
                take(c, 1);
                m_chosen[bearing] = c;
                descend(cost + c.cost / m_step, spent + p.reduced, free - 1);
                take(c, -1);
            }
        }
        m_isFree[bearing] = true;
        if (free > 1) {
            m_failed.remember(state, m_limit - cost);
        }
    }

    /// The free bearings and what is left in stock.
    [[nodiscard]] StateKey stateKey() const {
        StateKey key;
        for (std::size_t j = 0; j < m_isFree.size(); ++j) {
            if (m_isFree[j]) {
                key += StateKey::of(1, j);
            }
        }
        for (std::size_t i = 0; i < m_stock.size(); ++i) {
            key += StateKey::of(2 + i, static_cast<std::uint64_t>(m_stock[i]));
        }
        return key;
    }

    /// The free bearing with the fewest choices that could still do; the first of equals.
    [[nodiscard]] std::size_t narrowest(const std::vector<std::int64_t>& cheapest, std::int64_t bound) const {
        std::size_t best = 0;
        std::size_t fewest = std::numeric_limits<std::size_t>::max();
        for (std::size_t j = 0; j < m_isFree.size(); ++j) {
            if (!m_isFree[j]) {
                continue;
            }
            std::size_t count = 0;
            for (const Priced& p : m_sorted[j]) {
                m_clock.book(4);
                if (bound - cheapest[j] + p.reduced > scale * m_limit || count >= fewest) {
                    break;
                }
                count += isInStock(m_problem.choices[j][p.choice]) ? 1U : 0U;
            }
            if (count < fewest) {
                fewest = count;
                best = j;
            }
        }
        return best;
    }

    const ShellProblem& m_problem;
    std::int64_t m_step;
    std::int64_t m_limit;
    WorkClock& m_clock;
    ShellMarket m_market;
    std::vector<int> m_stock;
    std::vector<ShellChoice> m_chosen;
    std::vector<bool> m_isFree;
    Prices m_prices;
    std::vector<std::vector<Priced>> m_sorted;
    std::optional<ShellAssignment> m_best;
    packing::TranspositionTable m_failed;
};

} // namespace

std::optional<ShellAssignment> cheapestAssignment(const ShellProblem& problem, std::int64_t limit, WorkClock& clock) {
    if (limit < 0 || hasEmptyList(problem)) {
        return std::nullopt;
    }
    return Search(problem, limit, clock).run();
}

ShellProblem reduced(const ShellProblem& problem, std::int64_t limit, WorkClock& clock) {
    if (hasEmptyList(problem)) {
        return problem;
    }
    const std::int64_t step = stepOf(problem);
    const ShellMarket market(problem, step, clock);
    Prices prices;
    prices.ofClass.assign(problem.stock.size(), 0);
    const std::int64_t most = scale * (limit / step);
    const std::int64_t bound = packing::raiseBound(market.market(), most, rounds, prices);
    ShellProblem smaller{{}, problem.stock};
    for (std::size_t j = 0; j < problem.choices.size(); ++j) {
        std::int64_t cheapest = none;
        for (std::size_t i = 0; i < problem.choices[j].size(); ++i) {
            cheapest = std::min(cheapest, market.priced(j, i, prices));
        }
        auto& kept = smaller.choices.emplace_back();
        for (std::size_t i = 0; i < problem.choices[j].size(); ++i) {
            if (bound - cheapest + market.priced(j, i, prices) <= most) {
                kept.push_back(problem.choices[j][i]);
            }
        }
    }
    return smaller;
}

} // namespace caprail
