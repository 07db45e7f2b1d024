// SPDX-License-Identifier: GPL-3.0-or-later
// The least load that the residuals put into the block through a plate of known stiffness: first the largest |force|,
// then the sum of the forces' squares.
#include <algorithm>
#include <shims/solver/aims.h>

namespace caprail::solver {

SearchOutcome LoadAim::searchWithin(Limits limits, std::int64_t steps, unsigned probe,
                                    const std::function<bool(const Found&, Limits&)>& onFound) {
    static const Prices none;
    const Prices forShims = m_tools.store.prices();
    Columns columns = m_tools.store.columnsFor(question());
    price(columns, forShims, none, m_tools.clock);
    sortColumns(columns, Cost::shims, m_tools.clock);
    Search run(instance(), columns, forShims, none, m_tools.clock);
    run.probe(probe);
    return run.run(limits, steps, [&](const Found& f, Limits& now) {
        m_tools.decision.offer(columns, f);
        return onFound(f, now);
    });
}

/// What the residuals on offer allow, each seat by itself, found by halving.
std::int64_t LoadAim::boundByOffers(std::int64_t no, std::int64_t maybe,
                                    const std::function<SearchOutcome(std::int64_t most)>& isOpen) {
    while (maybe - no > 1) {
        const std::int64_t middle = no + (maybe - no) / 2;
        (isOpen(middle) == SearchOutcome::exhausted ? no : maybe) = middle;
    }
    return maybe;
}

SearchOutcome LeastLoad::search(std::int64_t most, std::int64_t steps, unsigned probe) {
    Limits limits = Decision::limitsFor(question());
    limits.load = most;
    return searchWithin(limits, steps, probe, [&](const Found& f, Limits& now) {
        now.load = f.load - 1;
        return now.load >= m_tools.bounds.load;
    });
}

void LeastLoad::prove() {
    if (m_tools.store.listAll(question())) {
        m_tools.bounds.load = boundByOffers(m_tools.bounds.load - 1, best().load,
                                            [this](std::int64_t most) { return search(most, 0, 0); });
    }
    closeGap(&Figures::load, &Bounds::load,
             [this](std::int64_t most, std::int64_t steps, unsigned probe) { return search(most, steps, probe); });
}

SearchOutcome SmallestSumOfSquares::search(std::int64_t most, std::int64_t steps, unsigned probe) {
    Limits limits = Decision::limitsFor(question());
    limits.load = best().load;
    limits.squares = most;
    return searchWithin(limits, steps, probe, [&](const Found& f, Limits& now) {
        now.squares = f.squares - 1;
        return now.squares >= m_tools.bounds.squares;
    });
}

void SmallestSumOfSquares::prove() {
    if (m_tools.store.listAll(question())) {
        m_tools.bounds.squares = boundByOffers(m_tools.bounds.squares - 1, best().squares,
                                               [this](std::int64_t most) { return search(most, 0, 0); });
    }
    closeGap(&Figures::squares, &Bounds::squares,
             [this](std::int64_t most, std::int64_t steps, unsigned probe) { return search(most, steps, probe); });
}

} // namespace caprail::solver
