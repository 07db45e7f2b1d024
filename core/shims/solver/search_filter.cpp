// SPDX-License-Identifier: GPL-3.0-or-later
// What a choice in the search leaves to the other seats: forward checking, and the bounds that come of it.
#include <algorithm>
#include <shims/solver/search.h>

namespace caprail::solver {

Search::Live Search::Live::at(std::size_t begin) {
    Live none;
    none.begin = none.end = begin;
    none.leastShimCost = none.leastResidualCost = none.leastResidual = never;
    return none;
}

void Search::Live::add(const Column& c) {
    leastShimCost = std::min(leastShimCost, c.shimCost);
    leastResidualCost = std::min(leastResidualCost, c.residualCost);
    leastResidual = std::min(leastResidual, magnitude(c.residual));
    if (ofSmallest == 0 || c.size < smallest) {
        smallest = c.size;
        ofSmallest = 0;
    }
    ofSmallest += c.size == smallest ? 1 : 0;
}

/// Copies the stacks of one seat that still fit; false if there are none.
bool Search::filterSeat(std::size_t seat, const Frame& from, Frame& to) {
    const Live& was = from.live[seat];
    Live& now = to.live[seat];
    now = Live::at(m_arena.size());
    std::int64_t shimMost = never;
    std::int64_t residualMost = never;
    std::int64_t sizeMost = never;
    std::int64_t widest = m_limits.largestResidual;
    if (from.bounded && !was.isEmpty()) {
        shimMost = shimCap() - from.shimCost - from.freeShimCost + was.leastShimCost;
        residualMost =
            isSumLimited() ? residualCap() - from.residualCost - from.freeResidualCost + was.leastResidualCost : never;
        sizeMost = m_limits.shims - from.shims - from.freeShims + was.smallest;
        if (isSumLimited()) {
            widest = std::min(widest, m_limits.sum - from.sum - from.freeSum + was.leastResidual);
        }
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
        if (c.shimCost > shimMost || c.residualCost > residualMost || c.size > sizeMost ||
            magnitude(c.residual) > widest || !fits(c)) {
            continue;
        }
        m_arena.push_back(index);
        now.add(c);
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
    if (!canFill(to)) {
        return false;
    }
    int empty = 0;
    for (std::size_t p : m_open) {
        if (!filterSeat(p, from, to) && ++empty > to.leftOut) {
            return false;
        }
    }
    if (!balance(to) || (isTwistLimited() && !twistCanClose(to)) || (areForcesLimited() && !forcesCanClose(to))) {
        return false;
    }
    if (remembers() && m_shared->table().knows(stateOf(to), roomForSum(to))) {
        return false;
    }
    if (isLong()) {
        to.prices = from.prices.ofClass.empty() ? m_root.prices : from.prices;
        if (isSumLimited()) {
            to.shimPrices = from.shimPrices.ofClass.empty() ? m_root.shimPrices : from.shimPrices;
        }
        if (m_open.size() > 2) {
            return squeeze(to, isSumLimited() ? Cost::residuals : Cost::shims, to.prices) && chooseShim(to);
        }
    }
    return chooseShim(to);
}

/// The sum of a figure's least over the open seats, but for those that may be left out.
template <typename Least> std::int64_t Search::leastOf(const Frame& frame, Least least) {
    std::int64_t sum = 0;
    int skip = frame.leftOut;
    m_scratch.clear();
    for (std::size_t p : m_open) {
        const Live& live = frame.live[p];
        if (live.isEmpty()) {
            --skip; // narrow() has made sure that it may be left out
        } else if (frame.leftOut > 0) {
            m_scratch.push_back(least(live));
        } else {
            sum += least(live);
        }
    }
    std::sort(m_scratch.begin(), m_scratch.end());
    for (std::size_t i = 0; i + static_cast<std::size_t>(skip) < m_scratch.size(); ++i) {
        sum += m_scratch[i];
    }
    return sum;
}

/// Sums up what the open seats cost at least, with prices and without, and compares with the limits.
bool Search::balance(Frame& frame) {
    frame.freeShimCost = leastOf(frame, [](const Live& live) { return live.leastShimCost; });
    frame.freeResidualCost = leastOf(frame, [](const Live& live) { return live.leastResidualCost; });
    frame.freeShims = leastOf(frame, [](const Live& live) { return std::int64_t{live.smallest}; });
    frame.freeSum = leastOf(frame, [](const Live& live) { return live.leastResidual; });
    if (frame.shims + frame.freeShims > m_limits.shims ||
        (isSumLimited() && frame.sum + frame.freeSum > m_limits.sum)) {
        return false;
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
