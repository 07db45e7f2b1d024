// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/stages.h>
#include <tuple>

namespace caprail::solver {

Stages::Stages(const Instance& instance, WorkClock& clock) : m_all(instance), m_clock(clock), m_instance(instance) {}

/// Splits the places into bare ones (gap in band: no shim can be better than none), hopeless ones, and the rest.
void Stages::sortOutPlaces() {
    m_instance.places.clear();
    std::int64_t largest = 0;
    for (const Place& p : m_all.places) {
        largest = std::max(largest, p.hi);
    }
    m_reach = std::make_unique<Reach>(m_instance, largest, m_clock);
    for (std::size_t p = 0; p < m_all.places.size(); ++p) {
        const Place& place = m_all.places[p];
        int fewest = 0;
        if (place.lo <= 0 && place.hi >= 0) {
            m_bare.push_back(p);
            const std::int64_t residual = place.residualCounts ? place.gap : 0;
            m_instance.fixedLargest = std::max(m_instance.fixedLargest, magnitude(residual));
            m_instance.fixedSum += magnitude(residual);
            m_instance.fixedTwist += place.weight * residual;
        } else if (isHopeless(place, fewest)) {
            ++m_hopeless;
        } else {
            m_origin.push_back(p);
            m_instance.places.push_back(place);
            m_fewest.push_back(fewest);
        }
    }
    m_pools.reserve(m_instance.places.size());
    for (std::size_t p = 0; p < m_instance.places.size(); ++p) {
        m_pools.emplace_back(m_instance, *m_reach, p);
        m_wholeBand = std::max(m_wholeBand, m_pools[p].wholeBand());
    }
}

bool Stages::isHopeless(const Place& place, int& fewest) const {
    fewest = m_reach->fewest(0, place.lo, place.hi);
    if (fewest > place.most) {
        return true;
    }
    if (m_reach->isExact()) {
        return false;
    }
    for (; fewest <= place.most; ++fewest) { // coarse buckets: see whether there is one
        if (anyStack(m_instance, *m_reach, place, fewest, m_clock)) {
            return false;
        }
    }
    return true;
}

Limits Stages::limitsFor(const Aim& aim) const {
    Limits limits;
    limits.shims = aim.shims;
    limits.largestResidual = aim.window;
    limits.leftOut = aim.leftOut;
    return limits;
}

bool Stages::keep(const Columns& columns, const Found& found) {
    std::vector<std::optional<std::vector<Part>>> stacks(columns.size());
    for (std::size_t p = 0; p < columns.size(); ++p) {
        if (found.column[p] >= 0) {
            const Column& c = columns[p][static_cast<std::size_t>(found.column[p])];
            stacks[p] = std::vector<Part>(c.parts, c.parts + c.partCount);
        }
    }
    return keep(stacks);
}

/// Keeps a found plan if it is better than the best so far.
bool Stages::keep(const std::vector<std::optional<std::vector<Part>>>& stacks) {
    Solution found;
    found.stacks = stacks;
    found.largest = m_instance.fixedLargest;
    found.sum = m_instance.fixedSum;
    found.twist = m_instance.fixedTwist;
    for (std::size_t p = 0; p < stacks.size(); ++p) {
        if (!stacks[p]) {
            continue;
        }
        const Place& at = m_instance.places[p];
        std::int64_t residual = at.gap;
        for (const Part& part : *stacks[p]) {
            residual -= part.count * m_instance.thickness[part.cls];
            found.shims += part.count;
        }
        residual = at.residualCounts ? residual : 0;
        ++found.served;
        found.largest = std::max(found.largest, magnitude(residual));
        found.sum += magnitude(residual);
        found.twist += at.weight * residual;
    }
    found.twist = magnitude(found.twist);
    const auto rank = [this](const Solution& s) {
        return std::make_tuple(-s.served, s.shims, m_instance.leastTwist ? s.twist : s.largest, s.sum);
    };
    if (m_haveBest && rank(found) >= rank(m_best)) {
        return false;
    }
    m_haveBest = true;
    m_best = std::move(found);
    return true;
}

/// A first plan at once, by taking for the hardest place its first stack and never looking back.
void Stages::dive() {
    const Aim aim{m_instance.shims(), m_wholeBand, static_cast<int>(m_pools.size())};
    decideFromListed(aim, never);
}

void Stages::serveMost() {
    const int places = static_cast<int>(m_pools.size());
    const int kit = m_instance.shims();
    for (int leftOut = 0; leftOut <= places; ++leftOut) {
        m_leftOut = leftOut;
        m_prices = {};
        for (int shims = fewestInAll(leftOut); shims <= kit; ++shims) {
            m_fewestShims = shims;
            if (m_haveBest && m_best.served == places - leftOut && m_best.shims <= shims) {
                return;
            }
            const Answer answer = decide({shims, m_wholeBand, leftOut});
            if (answer == Answer::yes) {
                return;
            }
            if (answer == Answer::unknown) {
                m_isOpen = true;
                if (!m_haveBest) {
                    dive();
                }
                return;
            }
        }
    }
}

void Stages::run() {
    sortOutPlaces();
    settleAims();
}

void Stages::settleAims() {
    m_sumAtLeast = m_instance.fixedSum;
    m_largestAtLeast = m_instance.fixedLargest;
    serveMost();
    if (!m_isOpen) {
        if (m_instance.leastTwist) {
            shrinkTwist();
        } else {
            shrinkLargest();
        }
    }
    if (!m_isOpen) {
        shrinkSum();
    }
    m_isSettled = !m_isOpen;
}

/// Back to the places as given.
Solution Stages::result() const {
    Solution out = m_best;
    out.stacks.assign(m_all.places.size(), std::nullopt);
    for (std::size_t p = 0; p < m_best.stacks.size(); ++p) {
        out.stacks[m_origin[p]] = m_best.stacks[p];
    }
    for (std::size_t p : m_bare) {
        out.stacks[p] = std::vector<Part>{};
    }
    if (m_best.stacks.empty()) {
        out.largest = m_instance.fixedLargest;
        out.sum = m_instance.fixedSum;
        out.twist = magnitude(m_instance.fixedTwist);
    }
    out.served += static_cast<int>(m_bare.size());
    out.proven = m_isSettled;
    out.mostServed = static_cast<int>(m_all.places.size()) - m_hopeless - m_leftOut;
    out.fewestShims = m_isSettled ? out.shims : m_fewestShims;
    out.leastLargest = m_isSettled ? out.largest : m_largestAtLeast;
    out.leastSum = m_isSettled ? out.sum : m_sumAtLeast;
    out.leastTwist = m_isSettled ? out.twist : m_twistAtLeast;
    return out;
}

Solution solve(const Instance& instance, const Stop& stop) {
    WorkClock clock(stop);
    Stages stages(instance, clock);
    try {
        stages.run();
    } catch (const Stopped&) {
        // The best so far stands, and the bounds.
    }
    return stages.result();
}

} // namespace caprail::solver
