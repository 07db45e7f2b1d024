// SPDX-License-Identifier: GPL-3.0-or-later
// The plan that the large-neighbourhood search works on: what stands where, what is left, and how good that is.
#include <algorithm>
#include <shims/solver/neighbourhood.h>

namespace caprail::solver {

void LargeNeighbourhoodSearch::free(std::size_t seat) {
    if (!m_plan.stacks[seat]) {
        return;
    }
    for (const Part& part : *m_plan.stacks[seat]) {
        m_plan.left[part.cls] += part.count;
        m_plan.used -= part.count * m_worth[part.cls];
    }
    m_plan.stacks[seat].reset();
}

/// False, and nothing done, if the stack does not serve the seat.
bool LargeNeighbourhoodSearch::serve(std::size_t seat, const std::vector<Part>& stack) {
    const Seat& at = m_instance.seats[seat];
    std::int64_t total = 0;
    int size = 0;
    for (const Part& part : stack) {
        total += part.count * m_instance.thickness[part.cls];
        size += part.count;
    }
    if (total < at.lo || total > at.hi || size > at.most ||
        (at.residualCounts && magnitude(at.gap - total) > m_window)) {
        return false;
    }
    for (const Part& part : stack) {
        m_plan.left[part.cls] -= part.count;
        m_plan.used += part.count * m_worth[part.cls];
    }
    m_plan.residual[seat] = at.residualCounts ? at.gap - total : 0;
    m_plan.stacks[seat] = stack;
    return true;
}

std::int64_t LargeNeighbourhoodSearch::twistSum() const {
    std::int64_t twist = m_instance.fixedTwist;
    for (std::size_t p = 0; p < m_plan.stacks.size(); ++p) {
        twist += m_plan.stacks[p] ? m_instance.seats[p].weight * m_plan.residual[p] : 0;
    }
    return twist;
}

Forces LargeNeighbourhoodSearch::forces() const {
    Forces list = m_instance.fixedLoad;
    for (std::size_t p = 0; p < m_plan.stacks.size(); ++p) {
        addTo(list, m_instance.seats[p], m_plan.stacks[p] ? m_plan.residual[p] : 0);
    }
    return list;
}

LargeNeighbourhoodSearch::ByRank LargeNeighbourhoodSearch::rankOf(const Figures& others, const Forces& otherForces,
                                                                  std::int64_t otherTwist, const Seat& at,
                                                                  std::int64_t residual) const {
    if (m_instance.isBy(Objective::leastLoad)) {
        m_clock.book(static_cast<std::int64_t>(otherForces.size()));
        Forces list = otherForces;
        addTo(list, at, residual);
        return {largestOf(list), squaresOf(list)};
    }
    return {m_instance.isBy(Objective::leastTwist) ? magnitude(otherTwist + at.weight * residual)
                                                   : std::max(others.largest, magnitude(residual)),
            magnitude(residual)};
}

Figures LargeNeighbourhoodSearch::figures() const {
    Figures f;
    f.largest = m_instance.fixedLargest;
    f.sum = m_instance.fixedSum;
    f.twist = magnitude(twistSum());
    if (m_instance.isBy(Objective::leastLoad)) {
        const Forces list = forces();
        f.load = largestOf(list);
        f.squares = squaresOf(list);
    }
    for (std::size_t i = 0; i < m_instance.classes(); ++i) {
        f.shims += m_instance.count[i] - m_plan.left[i];
    }
    for (std::size_t p = 0; p < m_plan.stacks.size(); ++p) {
        if (m_plan.stacks[p]) {
            ++f.served;
            f.largest = std::max(f.largest, magnitude(m_plan.residual[p]));
            f.sum += magnitude(m_plan.residual[p]);
        }
    }
    return f;
}

LargeNeighbourhoodSearch::Value LargeNeighbourhoodSearch::valueOf(Guide guide) const {
    const Figures f = figures();
    return guide == Guide::seats   ? Value{-f.served, m_plan.used, 0, 0}
           : guide == Guide::shims ? Value{-f.served, f.shims, m_plan.used, 0}
                                   : Value{-f.served, f.shims, f.third(m_instance), f.fourth(m_instance)};
}

} // namespace caprail::solver
