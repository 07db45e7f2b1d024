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

void LeastLoad::prove() {
    const auto lower = [this](std::int64_t most, std::int64_t steps, unsigned probe) {
        return search(most, steps, probe);
    };
    if (m_tools.store.listAll(question())) {
        boundByOffers(m_of.figure, m_of.bound, lower);
    }
    closeGap(m_of.figure, m_of.bound, lower);
}

} // namespace caprail::solver
