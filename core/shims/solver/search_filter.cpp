// SPDX-License-Identifier: GPL-3.0-or-later
// What a choice in the search leaves to the other seats: forward checking, and the bounds that come of it.
#include <algorithm>
#include <shims/solver/search.h>

namespace caprail::solver {

/// Copies the stacks of one seat that still fit; false if there are none.
bool Search::filterSeat(std::size_t seat, const Frame& from, Frame& to) {
    const Live& was = from.live[seat];
    Live& now = to.live[seat];
    now.leastShimCost = never;
    now.leastResidualCost = never;
    now.begin = m_arena.size();
    now.ofSmallest = 0;
    std::int64_t shimMost = never;
    std::int64_t residualMost = never;
    if (from.bounded && !was.isEmpty()) {
        shimMost = shimCap() - from.shimCost - from.freeShimCost + was.leastShimCost;
        residualMost =
            isSumLimited() ? residualCap() - from.residualCost - from.freeResidualCost + was.leastResidualCost : never;
    }
    TwistChoice* choice = isTwistLimited() ? &to.choices[seat] : nullptr;
    if (choice != nullptr) {
        m_twist.start(*choice, m_instance.seats[seat].weight, to.leftOut > 0);
    }
    const auto& list = m_columns[seat];
    for (std::size_t i = was.begin; i < was.end; ++i) {
        m_clock.bookStep(i - was.begin, was.count(), 12);
        const std::uint32_t index = m_arena[i];
        const Column& c = list[index];
        if (c.shimCost > shimMost || c.residualCost > residualMost || !fits(c) ||
            magnitude(c.residual) > m_limits.largestResidual) {
            continue;
        }
        m_arena.push_back(index);
        now.leastShimCost = std::min(now.leastShimCost, c.shimCost);
        now.leastResidualCost = std::min(now.leastResidualCost, c.residualCost);
        if (now.ofSmallest == 0 || c.size < now.smallest) {
            now.smallest = c.size;
            now.ofSmallest = 0;
        }
        now.ofSmallest += c.size == now.smallest ? 1 : 0;
        if (choice != nullptr) {
            m_twist.offer(*choice, c);
        }
    }
    now.end = m_arena.size();
    if (choice != nullptr) {
        choice->leastCost = now.leastResidualCost;
        if (now.isEmpty()) {
            choice->leastTwist = 0;
            choice->mostTwist = 0;
        }
    }
    return !now.isEmpty();
}

/// Fills `to` with those stacks of `from` that still fit; false when the open seats cannot be completed.
bool Search::narrow(const Frame& from, Frame& to) {
    to.shims = from.shims;
    to.sum = from.sum;
    to.shimCost = from.shimCost;
    to.residualCost = from.residualCost;
    to.twist = from.twist;
    to.forces = from.forces;
    to.leftOut = from.leftOut;
    to.bounded = true;
    int empty = 0;
    for (std::size_t p : m_open) {
        if (!filterSeat(p, from, to) && ++empty > to.leftOut) {
            return false;
        }
    }
    if (!balance(to) || (isTwistLimited() && !twistCanClose(to)) || (areForcesLimited() && !forcesCanClose(to))) {
        return false;
    }
    if (isLong()) {
        if (m_open.size() > 1 && m_failures.knows(stateOf(to), roomForSum(to))) {
            return false;
        }
        to.prices = from.prices.ofClass.empty() ? m_root.prices : from.prices;
        if (isSumLimited()) {
            to.shimPrices = from.shimPrices.ofClass.empty() ? m_root.shimPrices : from.shimPrices;
        }
        if (m_open.size() > 2) {
            return squeeze(to, isSumLimited() ? Cost::residuals : Cost::shims, to.prices);
        }
    }
    return true;
}

/// Sums up what the open seats cost at least, and compares with the limits.
bool Search::balance(Frame& frame) {
    for (const Cost cost : {Cost::shims, Cost::residuals}) {
        std::int64_t sum = 0;
        int skip = frame.leftOut;
        m_scratch.clear();
        for (std::size_t p : m_open) {
            const Live& live = frame.live[p];
            const std::int64_t least = cost == Cost::shims ? live.leastShimCost : live.leastResidualCost;
            if (live.isEmpty()) {
                --skip; // narrow() has made sure that it may be left out
            } else if (frame.leftOut > 0) {
                m_scratch.push_back(least);
            } else {
                sum += least;
            }
        }
        std::sort(m_scratch.begin(), m_scratch.end());
        for (std::size_t i = 0; i + static_cast<std::size_t>(skip) < m_scratch.size(); ++i) {
            sum += m_scratch[i];
        }
        (cost == Cost::shims ? frame.freeShimCost : frame.freeResidualCost) = sum;
    }
    return frame.shimCost + frame.freeShimCost <= shimCap() &&
           (!isSumLimited() || frame.residualCost + frame.freeResidualCost <= residualCap());
}

bool Search::twistCanClose(const Frame& frame) {
    std::vector<const TwistChoice*> choices;
    choices.reserve(m_open.size());
    for (std::size_t p : m_open) {
        if (!frame.live[p].isEmpty()) {
            choices.push_back(&frame.choices[p]);
        }
    }
    const std::int64_t room = isSumLimited() ? residualCap() - frame.residualCost - frame.freeResidualCost : never;
    return m_twist.canClose(frame.twist, m_limits.twist, choices, room, m_clock);
}

} // namespace caprail::solver
