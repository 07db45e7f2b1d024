// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver/lagrangian.h>
#include <shims/solver/whole_division.h>

namespace caprail::solver {

PriceHull::PriceHull(const Instance& instance, const std::vector<std::int64_t>& prices) {
    // Andrew's monotone chain, lower half; classes run from thick to thin.
    for (std::size_t i = instance.classes(); i-- > 0;) {
        const std::pair<std::int64_t, std::int64_t> p(instance.thickness[i], prices[i]);
        while (m_hull.size() >= 2) {
            const auto& a = m_hull[m_hull.size() - 2];
            const auto& b = m_hull.back();
            if ((b.second - a.second) * (p.first - a.first) < (p.second - a.second) * (b.first - a.first)) {
                break;
            }
            m_hull.pop_back();
        }
        m_hull.push_back(p);
    }
}

std::int64_t PriceHull::at(int n, std::int64_t total) const {
    std::size_t i = 1;
    while (i + 1 < m_hull.size() && m_hull[i].first * n < total) {
        ++i;
    }
    if (m_hull.size() == 1) {
        return m_hull[0].second * n;
    }
    const auto& a = m_hull[i - 1];
    const auto& b = m_hull[i];
    return a.second * n + floorDivide((total - a.first * n) * (b.second - a.second), b.first - a.first);
}

std::int64_t PriceHull::leastCost(int n, std::int64_t lo, std::int64_t hi) const {
    if (n == 0) {
        return lo <= 0 && hi >= 0 ? 0 : never;
    }
    if (m_hull.empty()) {
        return never;
    }
    lo = std::max(lo, m_hull.front().first * n);
    hi = std::min(hi, m_hull.back().first * n);
    if (lo > hi) {
        return never;
    }
    std::int64_t best = std::min(at(n, lo), at(n, hi));
    for (const auto& corner : m_hull) {
        if (corner.first * n >= lo && corner.first * n <= hi) {
            best = std::min(best, corner.second * n);
        }
    }
    return best + scale * n;
}

std::int64_t PriceHull::leastCost(const Unlisted& unlisted) const {
    std::int64_t best = never;
    for (int n = unlisted.fewest; n <= unlisted.most; ++n) {
        if (scale * n >= best) {
            break;
        }
        best = std::min(best, leastCost(n, unlisted.lo, unlisted.hi));
    }
    return best;
}

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
        const std::size_t places = market.places();
        m_least.assign(places, never);
        m_chosen.assign(places, nullptr);
        market.clock->book(static_cast<std::int64_t>(4 * classes) + 50);
        for (std::size_t p = 0; p < places; ++p) {
            for (std::size_t i = market.begin[p]; i < market.begin[p + 1]; ++i) {
                market.clock->bookStep(i - market.begin[p], market.begin[p + 1] - market.begin[p], 8);
                const std::int64_t cost = pricedCost(market.offers[i], prices);
                if (cost < m_least[p]) {
                    m_least[p] = cost;
                    m_chosen[p] = &market.offers[i];
                }
            }
        }
        if (!market.unlisted.empty()) {
            const PriceHull hull(*market.instance, prices.ofClass);
            for (std::size_t p = 0; p < places; ++p) {
                const std::int64_t other = hull.leastCost(market.unlisted[p]);
                if (other < m_least[p]) {
                    m_least[p] = other;
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
        for (std::size_t p = 0; p < places; ++p) {
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

Prices startingPrices(const Instance& instance) {
    // By the thickness alone: a plan of T shims is no thicker than the T thickest. With prices (t − t0)/t0 on all
    // shims thicker than t0, the bound says just that; the best t0 is sought.
    Prices best;
    best.ofClass.assign(instance.classes(), 0);
    std::int64_t need = 0;
    for (const Place& p : instance.places) {
        need += std::max<std::int64_t>(0, p.lo);
    }
    std::int64_t bestBound = 0;
    std::int64_t thicker = 0; // Σ count·thickness of the classes before i
    std::int64_t number = 0;
    for (std::size_t i = 0; i < instance.classes(); ++i) {
        const std::int64_t t0 = instance.thickness[i];
        const std::int64_t bound = (need - (thicker - number * t0)) * 1024 / t0;
        if (bound > bestBound) {
            bestBound = bound;
            for (std::size_t j = 0; j < instance.classes(); ++j) {
                best.ofClass[j] = std::max<std::int64_t>(0, (instance.thickness[j] - t0) * scale / t0);
            }
        }
        thicker += instance.thickness[i] * instance.count[i];
        number += instance.count[i];
    }
    return best;
}

Prices sumPrices(const Instance& instance, int shims) {
    Prices prices;
    std::int64_t thinnest = 0; // of the so many thickest
    for (std::size_t i = 0, number = 0; i < instance.classes() && number < static_cast<std::size_t>(shims); ++i) {
        thinnest = instance.thickness[i];
        number += static_cast<std::size_t>(instance.count[i]);
    }
    for (std::int64_t t : instance.thickness) {
        prices.ofClass.push_back(std::max<std::int64_t>(0, t - thinnest) * scale);
    }
    prices.ofShim = thinnest * scale;
    return prices;
}

} // namespace caprail::solver
