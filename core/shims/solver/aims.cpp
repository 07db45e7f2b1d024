// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/aims.h>

namespace caprail::solver {

bool Aim::settle() {
    if (!m_isTried) {
        m_isTried = true;
        bound();
        if (!isClosed()) {
            improve();
        }
        if (!isClosed()) {
            prove();
        }
    }
    return isClosed();
}

Question Aim::question() const {
    return {best().shims, m_tools.open.wholeBand(), m_tools.bounds.leftOut};
}

void Aim::boundByOffers(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search) {
    std::int64_t& bound = m_tools.bounds.*atLeast;
    std::int64_t no = bound - 1;
    std::int64_t maybe = best().*figure;
    while (maybe - no > 1) {
        const std::int64_t middle = no + (maybe - no) / 2;
        // Without a step the search only looks at what the seats have on offer.
        (search(middle, 0, 0) == SearchOutcome::exhausted ? no : maybe) = middle;
    }
    bound = maybe;
}

/// Over the stacks that happen to be listed: that may be enough. It only has one go, since to list them all often costs
/// less than a second.
void Aim::closeOverListed(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search) {
    std::int64_t& bound = m_tools.bounds.*atLeast;
    const Question asked = question();
    const bool listed = m_tools.store.isListed(asked);
    for (unsigned probe = 0; probe <= 1 && !isClosed(); ++probe) {
        const std::int64_t before = best().*figure;
        const std::int64_t steps = probe == 0 ? Decision::firstSteps : Decision::firstSteps / 4;
        if (search(before - 1, steps, probe) == SearchOutcome::exhausted) {
            bound = listed ? best().*figure : bound;
            return; // the stacks listed hold no more: on to the others
        }
        if (best().*figure < before) {
            probe = 0;
        }
    }
}

void Aim::closeGap(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search) {
    const bool wasListed = m_tools.store.isListed(question());
    closeOverListed(figure, atLeast, search);
    if (isClosed() || !m_tools.store.listAll(question())) {
        return;
    }
    std::int64_t& bound = m_tools.bounds.*atLeast;
    std::int64_t steps = wasListed ? 4 * Decision::firstSteps : Decision::firstSteps;
    bool isTooLow = best().*figure - bound <= 2; // then one proof, the last one, is hardly dearer than the first
    while (!isClosed()) {
        // By turns all the way down to the bound, which is often the truth and leaves the search the least to look at,
        // and half-way; or, once the bound was seen to be too low, only just down: no proof is needed twice.
        bool settled = false; // by the last of them
        for (const bool down : {true, false}) {
            const std::int64_t before = best().*figure;
            const std::int64_t most = down && !isTooLow ? bound
                                      : isTooLow        ? before - 1
                                                        : bound + (before - 1 - bound) / 2;
            if (!down && !isTooLow && most == bound) {
                break; // the same again
            }
            bool exhausted = false;
            for (unsigned probe = 0; probe <= Decision::probes && !exhausted && best().*figure == before; ++probe) {
                exhausted = search(most, probe == 0 ? steps : steps / 4, probe) == SearchOutcome::exhausted;
            }
            if (exhausted) {
                bound = std::min(best().*figure, most + 1);
                isTooLow = true;
            }
            if (isClosed()) {
                return;
            }
            settled = exhausted || best().*figure < before;
            if (most == best().*figure - 1) {
                break;
            }
        }
        steps *= settled ? 1 : 4;
    }
}

void MostSeatsFewestShims::bound() {
    Bounds& bounds = m_tools.bounds;
    bounds.leftOut = m_tools.open.leastLeftOut();
    bounds.fewestShims =
        std::max(m_tools.open.fewestInAll(bounds.leftOut), m_tools.open.fewestByThickness(bounds.leftOut));
}

bool MostSeatsFewestShims::isServed() const {
    return best().served >= static_cast<int>(m_tools.open.count()) - m_tools.bounds.leftOut;
}

bool MostSeatsFewestShims::isClosed() const {
    return isServed() && best().shims <= m_tools.bounds.fewestShims;
}

void MostSeatsFewestShims::prove() {
    const int seats = static_cast<int>(m_tools.open.count());
    for (int leftOut = m_tools.bounds.leftOut; leftOut <= seats; ++leftOut) {
        m_tools.bounds.leftOut = leftOut;
        m_tools.store.forgetPrices();
        if (!proveServing(leftOut)) {
            return;
        }
    }
}

/// False when the number of seats left out is settled or must stay open; true when it must be larger.
bool MostSeatsFewestShims::proveServing(int leftOut) {
    const int served = static_cast<int>(m_tools.open.count()) - leftOut;
    int& shims = m_tools.bounds.fewestShims;
    shims = std::max(m_tools.open.fewestInAll(leftOut), m_tools.open.fewestByThickness(leftOut));
    for (; shims <= instance().shims(); ++shims) {
        m_tools.improver.aimAt(served, shims);
        if (isClosed()) {
            return false;
        }
        switch (m_tools.decision.decide({shims, m_tools.open.wholeBand(), leftOut}, shims)) {
        case Answer::yes:
            return false;
        case Answer::unknown:
            return boundByPrices(leftOut);
        case Answer::no:
            break;
        }
    }
    return true;
}

/// What the linear programme says of any plan that leaves out so many, however many shims it has: where the search had
/// to give up, that still bounds. True if there is no such plan.
bool MostSeatsFewestShims::boundByPrices(int leftOut) {
    const bool served = isServed();
    const Question question{served ? best().shims : instance().shims(), m_tools.open.wholeBand(), leftOut};
    const std::int64_t bound = m_tools.store.raisePrices(question, 200);
    const std::int64_t shims = bound >= never ? question.shims + 1 : (bound + scale - 1) / scale;
    if (shims > question.shims) {
        return !served;
    }
    m_tools.bounds.fewestShims = std::max(m_tools.bounds.fewestShims, static_cast<int>(shims));
    m_tools.improver.aimAt(static_cast<int>(m_tools.open.count()) - leftOut, m_tools.bounds.fewestShims);
    return false;
}

void SmallestLargestResidual::bound() {
    std::vector<std::int64_t> least;
    for (std::size_t p = 0; p < m_tools.open.count(); ++p) {
        least.push_back(m_tools.open.leastResidual(p, m_tools.open.most(p, question())));
    }
    std::sort(least.begin(), least.end());
    const std::size_t kept = least.size() - static_cast<std::size_t>(m_tools.bounds.leftOut);
    m_tools.bounds.largest = std::max(kept == 0 ? 0 : least[kept - 1], instance().fixedLargest);
}

/// First at the bound, which is often the truth, then by halving.
void SmallestLargestResidual::prove() {
    std::int64_t& bound = m_tools.bounds.largest;
    for (bool first = true; !isClosed(); first = false) {
        const std::int64_t window = first ? bound : (bound + best().largest - 1) / 2;
        Question asked = question();
        asked.window = window;
        switch (m_tools.decision.decide(asked, m_tools.bounds.fewestShims)) {
        case Answer::unknown:
            return;
        case Answer::no:
            bound = window + 1;
            break;
        case Answer::yes:
            break;
        }
    }
}

SearchOutcome LeastTwist::search(std::int64_t twist, std::int64_t steps, unsigned probe) {
    static const Prices none;
    const Prices forShims = m_tools.store.prices();
    Columns columns = m_tools.store.columnsFor(question());
    price(columns, forShims, none, m_tools.clock);
    sortColumns(columns, Cost::shims, m_tools.clock);
    Limits limits = Decision::limitsFor(question());
    limits.twist = twist;
    if (probe == 1 && m_tools.kits.decide(limits, m_tools.bounds.fewestShims, steps) == Answer::yes) {
        return SearchOutcome::found;
    }
    Search run(instance(), columns, forShims, none, m_tools.clock);
    run.probe(probe);
    run.share(m_failures, m_tools.store.listingFor(question()));
    return run.run(limits, steps, [&](const Found& f, Limits& now) {
        m_tools.decision.offer(columns, f);
        now.twist = f.twist - 1;
        return now.twist >= m_tools.bounds.twist;
    });
}

/// What the residuals allow together, if a first search does not do without.
void LeastTwist::bound() {
    if (best().twist == 0 || search(0, Decision::firstSteps, 0) == SearchOutcome::found) {
        return;
    }
    m_tools.bounds.twist =
        std::min(best().twist, m_tools.kits.leastTwist(Decision::limitsFor(question()), m_tools.bounds.fewestShims));
}

void LeastTwist::improve() {
    Limits limits = Decision::limitsFor(question());
    limits.twist = m_tools.bounds.twist;
    m_tools.kits.decide(limits, m_tools.bounds.fewestShims, Decision::kitSteps);
}

void LeastTwist::prove() {
    const auto lower = [this](std::int64_t most, std::int64_t steps, unsigned probe) {
        return search(most, steps, probe);
    };
    if (m_tools.store.isListed(question())) {
        boundByOffers(&Figures::twist, &Bounds::twist, lower);
    }
    closeGap(&Figures::twist, &Bounds::twist, lower);
}

} // namespace caprail::solver
