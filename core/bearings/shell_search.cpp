// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_search.h>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>
#include <unordered_map>

namespace caprail {

namespace {

/// Costs and multipliers are counted in sixteenths, so that multipliers may be fractions and the bound is still exact.
constexpr std::int64_t scale = 16;
constexpr std::int64_t none = std::numeric_limits<std::int64_t>::max();

using Multipliers = std::vector<std::int64_t>;

std::int64_t reducedCost(const ShellChoice& c, const Multipliers& price) {
    return scale * c.cost +
           (c.hasShells() ? price[static_cast<std::size_t>(c.upper)] + price[static_cast<std::size_t>(c.lower)] : 0);
}

std::int64_t stockValue(const std::vector<int>& stock, const Multipliers& price) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < stock.size(); ++i) {
        sum += price[i] * stock[i];
    }
    return sum;
}

struct Bound {
    std::int64_t value = 0;
    Multipliers price;
};

/// Subgradient steps from `start` towards the best multipliers. `target`: a cost that the bound need not pass.
Bound bestBound(const ShellProblem& problem, std::int64_t target, const Multipliers& start,
                const std::function<bool()>& shouldStop) {
    constexpr int steps = 200;
    constexpr int patience = 12;
    const std::size_t classes = problem.stock.size();
    std::vector<double> price(start.begin(), start.end());
    Bound best{std::numeric_limits<std::int64_t>::min(), Multipliers(classes, 0)};
    double stepSize = 1.5;
    int sinceBetter = 0;
    // At least one step, so that there is a bound to go by.
    for (int step = 0; step < steps && (step == 0 || !(shouldStop && shouldStop())); ++step) {
        Multipliers whole(classes);
        std::ranges::transform(price, whole.begin(), [](double p) { return std::llround(p); });
        std::vector<int> excess(classes);
        std::ranges::transform(problem.stock, excess.begin(), std::negate<>());
        std::int64_t value = -stockValue(problem.stock, whole);
        for (const auto& choices : problem.choices) {
            const auto& cheapest =
                *std::ranges::min_element(choices, {}, [&](const ShellChoice& c) { return reducedCost(c, whole); });
            value += reducedCost(cheapest, whole);
            if (cheapest.hasShells()) {
                ++excess[static_cast<std::size_t>(cheapest.upper)];
                ++excess[static_cast<std::size_t>(cheapest.lower)];
            }
        }
        if (value > best.value) {
            best = {value, whole};
            sinceBetter = 0;
        } else if (++sinceBetter == patience) {
            stepSize /= 2;
            sinceBetter = 0;
        }
        double norm = 0;
        for (std::size_t i = 0; i < classes; ++i) {
            if (excess[i] > 0 || price[i] > 0) {
                norm += static_cast<double>(excess[i]) * excess[i];
            }
        }
        if (norm == 0 || best.value > target) {
            break;
        }
        const double length = stepSize * (static_cast<double>(target - value) + static_cast<double>(scale)) / norm;
        for (std::size_t i = 0; i < classes; ++i) {
            price[i] = std::max(0.0, price[i] + length * excess[i]);
        }
    }
    return best;
}

/// One choice with its reduced cost at the root's multipliers; lists are sorted by it.
struct Priced {
    std::int64_t reduced = 0;
    std::size_t choice = 0;
};

class Search {
public:
    Search(const ShellProblem& problem, std::int64_t limit, const std::function<bool()>& shouldStop)
        : m_problem(problem), m_limit(limit), m_shouldStop(shouldStop), m_stock(problem.stock),
          m_chosen(problem.choices.size()), m_isFree(problem.choices.size(), true) {
        for (const auto& choices : problem.choices) {
            for (const ShellChoice& c : choices) {
                m_step = std::gcd(m_step, c.cost);
            }
        }
        m_step = std::max<std::int64_t>(m_step, 1);
    }

    /// The limit is raised from the bound upwards, in widening steps: most often the best lies just above the bound,
    /// and a low limit keeps the search narrow.
    ShellSearchResult run() {
        const std::int64_t most = m_limit;
        Bound bound = bestBound(m_problem, scale * most, Multipliers(m_stock.size(), 0), m_shouldStop);
        const std::int64_t least = std::max<std::int64_t>(0, bound.value / scale);
        for (std::int64_t margin = std::max(m_step, (most - least) / 128);; margin *= 3) {
            m_limit = std::min(most, least + margin);
            const Bound nearer = bestBound(m_problem, scale * m_limit, bound.price, m_shouldStop);
            bound = nearer.value > bound.value ? nearer : bound;
            sortBy(bound.price);
            descend(0, -stockValue(m_stock, m_price), m_problem.choices.size());
            if (m_best || m_isStopped || least + margin >= most) {
                return {std::move(m_best), !m_isStopped};
            }
        }
    }

private:
    void sortBy(const Multipliers& price) {
        m_price = price;
        m_sorted.clear();
        for (const auto& choices : m_problem.choices) {
            auto& list = m_sorted.emplace_back();
            for (std::size_t i = 0; i < choices.size(); ++i) {
                list.push_back({reducedCost(choices[i], m_price), i});
            }
            std::ranges::stable_sort(list, {}, &Priced::reduced);
        }
    }

    [[nodiscard]] bool isInStock(const ShellChoice& c) const {
        if (!c.hasShells()) {
            return true;
        }
        const int needed = c.upper == c.lower ? 2 : 1;
        return m_stock[static_cast<std::size_t>(c.upper)] >= needed &&
               m_stock[static_cast<std::size_t>(c.lower)] >= needed;
    }

    void take(const ShellChoice& c, int count) {
        if (c.hasShells()) {
            m_stock[static_cast<std::size_t>(c.upper)] -= count;
            m_stock[static_cast<std::size_t>(c.lower)] -= count;
        }
    }

    /// Cheapest in stock, or `none`.
    [[nodiscard]] std::int64_t cheapestFor(std::size_t bearing) const {
        for (const Priced& p : m_sorted[bearing]) {
            if (isInStock(m_problem.choices[bearing][p.choice])) {
                return p.reduced;
            }
        }
        return none;
    }

    bool stops() {
        if (!m_isStopped && m_shouldStop && m_nodes++ % 64 == 0) {
            m_isStopped = m_shouldStop();
        }
        return m_isStopped;
    }

    /// `spent`: what the fixed bearings cost, by reduced cost. The stock's value is constant: what is used is paid for.
    void descend(std::int64_t cost, std::int64_t spent, std::size_t free) {
        if (stops()) {
            return;
        }
        if (free == 0) {
            if (cost <= m_limit) { // the bound may lie below the cost, by what shells left over are priced at
                m_best = ShellAssignment{cost, m_chosen};
                m_limit = cost - m_step; // from here on only what is cheaper
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
        const std::string state = free > 1 ? stateKey() : std::string();
        if (const auto at = m_searched.find(state); at != m_searched.end() && m_limit - cost <= at->second) {
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
                descend(cost + c.cost, spent + p.reduced, free - 1);
                take(c, -1);
            }
            if (m_isStopped) {
                break;
            }
        }
        m_isFree[bearing] = true;
        if (!m_isStopped && free > 1) {
            remember(state, m_limit - cost);
        }
    }

    /// The free bearings and the shells left, as bytes.
    [[nodiscard]] std::string stateKey() const {
        std::string key(m_isFree.size() + m_stock.size(), '\0');
        std::ranges::transform(m_isFree, key.begin(), [](bool isFree) { return isFree ? '\1' : '\0'; });
        std::ranges::transform(m_stock, key.begin() + static_cast<std::ptrdiff_t>(m_isFree.size()),
                               [](int left) { return static_cast<char>(left); });
        return key;
    }

    /// `inVain`: nothing of at most this cost completes the state.
    void remember(const std::string& state, std::int64_t inVain) {
        if (const auto at = m_searched.find(state); at != m_searched.end()) {
            at->second = std::max(at->second, inVain);
        } else if (m_searched.size() < mostRemembered) {
            m_searched.emplace(state, inVain);
        }
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
    std::int64_t m_limit;
    const std::function<bool()>& m_shouldStop;
    std::vector<int> m_stock;
    std::vector<ShellChoice> m_chosen;
    std::vector<bool> m_isFree;
    std::int64_t m_step = 0; ///< all costs are multiples of it
    Multipliers m_price;
    std::vector<std::vector<Priced>> m_sorted;
    std::optional<ShellAssignment> m_best;
    static constexpr std::size_t mostRemembered = 500'000; ///< some 50 MB at most
    std::unordered_map<std::string, std::int64_t> m_searched;
    std::uint64_t m_nodes = 0;
    bool m_isStopped = false;
};

bool hasEmptyList(const ShellProblem& problem) {
    return std::ranges::any_of(problem.choices, [](const auto& list) { return list.empty(); });
}

} // namespace

ShellSearchResult cheapestAssignment(const ShellProblem& problem, std::int64_t limit,
                                     const std::function<bool()>& shouldStop) {
    if (hasEmptyList(problem)) {
        return {};
    }
    return Search(problem, limit, shouldStop).run();
}

ShellProblem reduced(const ShellProblem& problem, std::int64_t limit, const std::function<bool()>& shouldStop) {
    if (hasEmptyList(problem)) {
        return problem;
    }
    const Bound bound = bestBound(problem, scale * limit, Multipliers(problem.stock.size(), 0), shouldStop);
    ShellProblem smaller{{}, problem.stock};
    for (const auto& choices : problem.choices) {
        std::int64_t cheapest = none;
        for (const ShellChoice& c : choices) {
            cheapest = std::min(cheapest, reducedCost(c, bound.price));
        }
        auto& kept = smaller.choices.emplace_back();
        for (const ShellChoice& c : choices) {
            if (bound.value - cheapest + reducedCost(c, bound.price) <= scale * limit) {
                kept.push_back(c);
            }
        }
    }
    return smaller;
}

} // namespace caprail
