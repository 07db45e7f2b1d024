// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/price_hull.h>
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

Prices startingPrices(const Instance& instance) {
    // By the thickness alone: a plan of T shims is no thicker than the T thickest. With prices (t − t0)/t0 on all
    // shims thicker than t0, the bound says just that; the best t0 is sought.
    Prices best;
    best.ofClass.assign(instance.classes(), 0);
    std::int64_t need = 0;
    for (const Seat& p : instance.seats) {
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
