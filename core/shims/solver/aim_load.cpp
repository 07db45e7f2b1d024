// SPDX-License-Identifier: GPL-3.0-or-later
// The least load that the residuals put into the block through a plate of known stiffness: first the largest |force|,
// then the sum of the forces' squares.
#include <algorithm>
#include <shims/solver/aims.h>

namespace caprail::solver {

SearchOutcome LeastLoad::search(std::int64_t most, std::int64_t steps, unsigned probe) {
    static const Prices none;
    Limits limits = Decision::limitsFor(question());
    limits.load = best().load; // while this is the figure sought, the next line says it closer
    limits.*m_of.limit = most;
    const Prices forShims = m_tools.store.prices();
    Columns columns = m_tools.store.columnsFor(question());
    price(columns, forShims, none, m_tools.clock);
    sortColumns(columns, Cost::shims, m_tools.clock);
    Search run(instance(), columns, forShims, none, m_tools.clock);
    run.probe(probe);
    return run.run(limits, steps, [&](const Found& f, Limits& now) {
        m_tools.decision.offer(columns, f);
        now.*m_of.limit = f.*m_of.found - 1;
        return now.*m_of.limit >= m_tools.bounds.*m_of.bound;
    });
}

/// What the residuals on offer allow, each seat by itself, found by halving.
void LeastLoad::boundByOffers() {
    std::int64_t& bound = m_tools.bounds.*m_of.bound;
    std::int64_t no = bound - 1;
    std::int64_t maybe = best().*m_of.figure;
    while (maybe - no > 1) {
        const std::int64_t middle = no + (maybe - no) / 2;
        (search(middle, 0, 0) == SearchOutcome::exhausted ? no : maybe) = middle;
    }
    bound = maybe;
}

void LeastLoad::prove() {
    if (m_tools.store.listAll(question())) {
        boundByOffers();
    }
    closeGap(m_of.figure, m_of.bound,
             [this](std::int64_t most, std::int64_t steps, unsigned probe) { return search(most, steps, probe); });
}

} // namespace caprail::solver
