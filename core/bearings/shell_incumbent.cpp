// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bearings/shell_incumbent.h>
#include <numeric>
#include <span>

namespace caprail {

ShellFigures figuresOf(const std::vector<ShellChoice>& chosen) {
    ShellFigures f;
    for (const ShellChoice& c : chosen) {
        f.notInBand += c.hasShells() && c.isInBand ? 0U : 1U;
        f.without += c.hasShells() ? 0U : 1U;
        f.cost += c.hasShells() ? c.cost : 0;
    }
    f.spread = spreadOf(chosen);
    return f;
}

void ShellIncumbent::offer(const std::vector<ShellChoice>& chosen) {
    const ShellFigures figures = figuresOf(chosen);
    if (figures < m_figures) {
        m_figures = figures;
        m_chosen = chosen;
        ++m_revision;
    }
}

namespace {
const ShellChoice without;
constexpr std::int64_t perNotInBand = std::int64_t{1} << 46;
constexpr std::int64_t perWithout = std::int64_t{1} << 40;
/// Choices looked at for one bearing, and nodes in one step.
constexpr std::size_t mostChoices = 40;
/// Choices of one bearing that are kept in order: of 200 shells there are 20 000 pairs.
constexpr std::size_t mostListed = 400;
constexpr int mostNodes = 400;
/// Steps from one rise of the threshold to the next, and how high it rises, in nanometres.
constexpr std::int64_t stepsPerRise = 1500;
constexpr std::int64_t highest = 2'540;
} // namespace

namespace {
/// A whole order, so that it does not matter how it is sorted.
auto orderOf(const ShellChoice& c) {
    return std::tuple(c.cost, c.upper, c.lower);
}
} // namespace

std::int64_t ShellImprover::weightOf(const ShellChoice& c) {
    return !c.hasShells() ? perNotInBand + perWithout : c.isInBand ? c.cost : perNotInBand + c.cost;
}

ShellImprover::ShellImprover(const ShellFamily& family, ShellIncumbent& incumbent, packing::WorkClock& clock)
    : m_family(family), m_incumbent(incumbent), m_clock(clock), m_now(family.bearings.size()), m_stock(family.stock()) {
    for (std::size_t j = 0; j < family.bearings.size(); ++j) {
        auto& choices = m_choices.emplace_back();
        for (const auto* list : {&family.inBand[j], &family.outOfBand[j]}) {
            const std::size_t listed = choices.size();
            choices.resize(std::min(mostListed, listed + list->size()));
            std::ranges::partial_sort_copy(*list, std::span(choices).subspan(listed), {}, orderOf, orderOf);
        }
    }
}

void ShellImprover::load(const std::vector<ShellChoice>& chosen) {
    m_stock = m_family.stock();
    for (std::size_t j = 0; j < chosen.size(); ++j) {
        put(j, chosen[j], 1);
    }
}

void ShellImprover::runFor(std::int64_t work) {
    const std::int64_t began = m_clock.now();
    const std::int64_t before = m_work;
    const auto offer = [&] {
        const std::size_t revision = m_incumbent.revision();
        m_incumbent.offer(m_now);
        m_work = before + m_clock.now() - began;
        m_lastBetter = m_incumbent.revision() != revision ? m_work : m_lastBetter;
    };
    if (m_work == 0) { // a first selection: the bearings with the fewest choices in band first
        std::vector<std::size_t> order(m_now.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::ranges::stable_sort(order, {}, [this](std::size_t j) { return m_family.inBand[j].size(); });
        for (const std::size_t j : order) {
            m_clock.book(static_cast<std::int64_t>(m_choices[j].size()));
            put(j, firstInStock(j), 1);
        }
        offer();
    }
    while (m_clock.now() < began + work) {
        if (m_steps % stepsPerRise == 0) { // another search may have found a better one
            load(std::vector<ShellChoice>(m_incumbent.chosen()));
        }
        step();
        offer();
    }
}

/// The lightest that is kept in order, or else any.
const ShellChoice& ShellImprover::firstInStock(std::size_t bearing) const {
    for (const auto* list : {&m_choices[bearing], &m_family.inBand[bearing], &m_family.outOfBand[bearing]}) {
        const auto at = std::ranges::find_if(*list, [this](const ShellChoice& c) { return isInStock(c); });
        if (at != list->end()) {
            return *at;
        }
    }
    return without;
}

void ShellImprover::step() {
    const std::int64_t phase = m_steps++ % stepsPerRise;
    const std::int64_t threshold = highest * (stepsPerRise - phase) / stepsPerRise * (m_steps / stepsPerRise % 2);
    ruin();
    std::int64_t before = 0;
    m_best.clear();
    for (const std::size_t j : m_ruins) {
        before += weightOf(m_now[j]);
        m_best.push_back(m_now[j]);
        put(j, m_now[j], -1);
    }
    listChoices();
    m_bestWeight = before + threshold + 1;
    m_nodes = 0;
    m_trial.assign(m_ruins.size(), without);
    recreate(0, 0);
    for (std::size_t i = 0; i < m_ruins.size(); ++i) {
        put(m_ruins[i], m_best[i], 1);
    }
}

void ShellImprover::ruin() {
    m_ruins.clear();
    const std::size_t count = std::min(m_now.size(), 2 + below(3));
    while (m_ruins.size() < count) {
        const std::size_t j = below(m_now.size());
        if (std::ranges::find(m_ruins, j) == m_ruins.end()) {
            m_ruins.push_back(j);
        }
    }
}

/// What each ruined bearing can have of the shelf as it is now, lightest first, equals in any order.
void ShellImprover::listChoices() {
    m_lists.resize(m_ruins.size());
    m_leastFrom.assign(m_ruins.size() + 1, 0);
    for (std::size_t i = m_ruins.size(); i-- > 0;) {
        auto& list = m_lists[i];
        const auto& all = m_choices[m_ruins[i]];
        list.clear();
        m_clock.book(2 * static_cast<std::int64_t>(all.size()) + 100);
        for (std::size_t k = 0; k < all.size() && list.size() < mostChoices; ++k) {
            if (isInStock(all[k])) {
                list.push_back(&all[k]);
            }
        }
        list.push_back(&without);
        for (std::size_t k = 1; k < list.size(); ++k) {
            if (weightOf(*list[k]) == weightOf(*list[k - 1]) && below(2) == 0) {
                std::swap(list[k], list[k - 1]);
            }
        }
        m_leastFrom[i] = m_leastFrom[i + 1] + weightOf(*list.front());
    }
}

void ShellImprover::recreate(std::size_t depth, std::int64_t weight) {
    if (depth == m_ruins.size()) {
        m_bestWeight = weight;
        m_best = m_trial;
        return;
    }
    for (const ShellChoice* c : m_lists[depth]) {
        m_clock.book(8);
        if (weight + weightOf(*c) + m_leastFrom[depth + 1] >= m_bestWeight || m_nodes > mostNodes) {
            return;
        }
        if (isInStock(*c)) {
            ++m_nodes;
            m_trial[depth] = *c;
            put(m_ruins[depth], *c, 1);
            recreate(depth + 1, weight + weightOf(*c));
            put(m_ruins[depth], *c, -1);
        }
    }
}

bool ShellImprover::isInStock(const ShellChoice& c) const {
    const int needed = c.upper == c.lower ? 2 : 1;
    return !c.hasShells() || (m_stock[static_cast<std::size_t>(c.upper)] >= needed &&
                              m_stock[static_cast<std::size_t>(c.lower)] >= needed);
}

/// Takes (+1) or gives back (−1).
void ShellImprover::put(std::size_t bearing, const ShellChoice& choice, int sign) {
    const ShellChoice what = choice; // it may be the one that stands there
    m_now[bearing] = sign > 0 ? what : without;
    if (what.hasShells()) {
        m_stock[static_cast<std::size_t>(what.upper)] -= sign;
        m_stock[static_cast<std::size_t>(what.lower)] -= sign;
    }
}

} // namespace caprail
