// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <packing/lagrangian.h>

namespace caprail::packing {

std::int64_t pricedCost(const Offer& offer, const Prices& prices) {
    std::int64_t cost = offer.cost + prices.ofShim * offer.size;
    for (std::uint16_t i = 0; i < offer.partCount; ++i) {
        cost += prices.ofClass[offer.parts[i].cls] * offer.parts[i].count;
    }
    return cost;
}

namespace {
/// One evaluation of the dual: the bound, and how far demand exceeds supply per class.
class Evaluation {
public:
    std::int64_t bound = 0;
    std::vector<std::int64_t> excess; ///< per class, and last the total of shims

    void at(const Market& market, const Prices& prices) {
        const std::size_t classes = market.supply.size();
        const std::size_t seats = market.seats();
        m_least.assign(seats, never);
        m_chosen.assign(seats, nullptr);
        market.clock->book(static_cast<std::int64_t>(4 * classes) + 50);
        for (std::size_t p = 0; p < seats; ++p) {
            for (std::size_t i = market.begin[p]; i < market.begin[p + 1]; ++i) {
                market.clock->bookStep(i - market.begin[p], market.begin[p + 1] - market.begin[p], 8);
                const std::int64_t cost = pricedCost(market.offers[i], prices);
                if (cost < m_least[p]) {
                    m_least[p] = cost;
                    m_chosen[p] = &market.offers[i];
                }
            }
        }
        if (market.unlisted) {
            const std::vector<std::int64_t> others = market.unlisted(prices);
            for (std::size_t p = 0; p < seats; ++p) {
                if (others[p] < m_least[p]) {
                    m_least[p] = others[p];
                    m_chosen[p] = nullptr;
                }
            }
        }
        leaveOutCostliest(market.leftOut);
        excess.assign(classes + 1, 0);
        bound = -prices.ofShim * std::max(0, market.shims);
        excess[classes] = -std::max(0, market.shims);
        for (std::size_t i = 0; i < classes; ++i) {
            excess[i] = -market.supply[i];
            bound -= prices.ofClass[i] * market.supply[i];
        }
        for (std::size_t p = 0; p < seats; ++p) {
            if (m_least[p] >= never) {
                bound = never;
                return;
            }
            bound += m_least[p];
            if (m_chosen[p] != nullptr) {
                for (std::uint16_t i = 0; i < m_chosen[p]->partCount; ++i) {
                    excess[m_chosen[p]->parts[i].cls] += m_chosen[p]->parts[i].count;
                }
                excess[classes] += m_chosen[p]->size;
            }
        }
        if (market.shims < 0) {
            excess[classes] = 0;
        }
    }

private:
    void leaveOutCostliest(int leftOut) {
        for (; leftOut > 0; --leftOut) {
            const auto most = std::max_element(m_least.begin(), m_least.end());
            if (most == m_least.end()) {
                return;
            }
            m_chosen[static_cast<std::size_t>(most - m_least.begin())] = nullptr;
            *most = 0;
        }
    }

    std::vector<std::int64_t> m_least;
    std::vector<const Offer*> m_chosen;
};
} // namespace

std::int64_t boundAt(const Market& market, const Prices& prices) {
    Evaluation now;
    now.at(market, prices);
    return now.bound;
}

std::int64_t raiseBound(const Market& market, std::int64_t target, int rounds, Prices& prices) {
    const std::size_t classes = market.supply.size();
    Evaluation now;
    now.at(market, prices);
    Prices best = prices;
    std::int64_t bestBound = now.bound;
    std::vector<std::int64_t> direction(classes + 1, 0);
    std::int64_t stepShare = 1024; // of 1024, the relaxation factor of the step rule
    int sinceBetter = 0;
    for (int round = 0; round < rounds && bestBound <= target && bestBound < never; ++round) {
        // The excess, smoothed over rounds so that the steps zigzag less; in 1/1024.
        std::int64_t norm = 0;
        for (std::size_t i = 0; i <= classes; ++i) {
            direction[i] = (direction[i] * 3 + now.excess[i] * 1024 * 7) / 10;
            const std::int64_t at = i < classes ? prices.ofClass[i] : prices.ofShim;
            if (at == 0 && direction[i] < 0) {
                direction[i] = 0;
            }
            norm += direction[i] * direction[i] / 1024;
        }
        if (norm == 0) {
            break;
        }
        const std::int64_t aim = std::max(target + scale / 4 - now.bound, scale / 64);
        for (std::size_t i = 0; i <= classes; ++i) {
            std::int64_t& price = i < classes ? prices.ofClass[i] : prices.ofShim;
            // step = share · aim · direction ÷ |direction|², all in whole numbers
            price = std::max<std::int64_t>(0, price + (aim * direction[i] / norm) * stepShare / 1024);
        }
        now.at(market, prices);
        if (now.bound > bestBound) {
            bestBound = now.bound;
            best = prices;
            sinceBetter = 0;
        } else if (++sinceBetter >= 8) {
            sinceBetter = 0;
            stepShare = stepShare * 6 / 10;
            if (stepShare < 16) {
                break;
            }
            prices = best;
            now.at(market, prices);
            std::fill(direction.begin(), direction.end(), 0);
        }
    }
    prices = std::move(best);
    return bestBound;
}

} // namespace caprail::packing
