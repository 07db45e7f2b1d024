// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/column_generation.h>
#include <shims/solver/search.h>

namespace caprail::solver {

namespace {
/// With more than so many seats open, nodes are bounded by a linear programme of their own; where residuals are summed
/// up, which steps bound well enough for a while, from so many steps on.
constexpr std::size_t fewOpen = 3;
constexpr std::int64_t veryLongSearch = 2000;
} // namespace

/// Prices for this node alone: what is left in the kit against what the open seats still want. Either the bound then
/// says that there is no plan below this node, or the stacks that no such plan can contain are shed.
bool Search::squeeze(Frame& frame, Cost cost, Prices& prices) {
    const bool isLinear = m_probe == 0 && m_open.size() > fewOpen && (cost == Cost::shims || m_steps > veryLongSearch);
    const int rounds = isLinear ? 2 : 8;
    Market market(m_left, m_clock);
    market.leftOut = frame.leftOut;
    market.shims = cost == Cost::residuals ? m_limits.shims - frame.shims : -1;
    std::size_t offers = 0;
    for (std::size_t p : m_open) {
        offers += frame.live[p].end - frame.live[p].begin;
    }
    market.offers.reserve(offers);
    for (std::size_t p : m_open) {
        market.begin.push_back(market.offers.size());
        for (std::size_t i = frame.live[p].begin; i < frame.live[p].end; ++i) {
            m_clock.bookStep(i - frame.live[p].begin, frame.live[p].count(), 15);
            market.offers.push_back(offerOf(m_columns[p][m_arena[i]], cost));
        }
    }
    market.begin.push_back(market.offers.size());
    const std::int64_t target =
        scale * (cost == Cost::residuals ? m_limits.sum - frame.sum : m_limits.shims - frame.shims);
    std::int64_t bound = raiseBound(market, target, rounds, prices);
    if (bound > target) {
        return false;
    }
    if (isLinear) {
        // The steps get stuck; the linear programme does not. It is dear, so only where much hangs on it.
        const Prices linear = linearPricesFrom(prices, market, target);
        const std::int64_t other = boundAt(market, linear);
        if (other > target) {
            return false;
        }
        if (other > bound) {
            bound = other;
            prices = linear;
        }
    }
    int empty = 0;
    for (std::size_t k = 0; k < m_open.size(); ++k) {
        Live& live = frame.live[m_open[k]];
        m_scratch.clear();
        std::int64_t least = never;
        for (std::size_t i = market.begin[k]; i < market.begin[k + 1]; ++i) {
            m_scratch.push_back(pricedCost(market.offers[i], prices));
            least = std::min(least, m_scratch.back());
        }
        const Live was = live;
        live = Live::at(was.begin);
        for (std::size_t i = was.begin; i < was.end; ++i) {
            if (m_scratch[i - was.begin] - least > target - bound) {
                continue;
            }
            m_arena[live.end++] = m_arena[i];
            live.add(m_columns[m_open[k]][m_arena[live.end - 1]]);
        }
        empty += live.isEmpty() ? 1 : 0;
    }
    return empty <= frame.leftOut && balance(frame);
}

} // namespace caprail::solver
