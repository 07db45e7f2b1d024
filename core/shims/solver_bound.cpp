// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver_bound.h>

namespace caprail::solver {

namespace {
std::int64_t floorDivide(std::int64_t a, std::int64_t b) {
    const std::int64_t q = a / b;
    return (a % b != 0 && ((a < 0) != (b < 0))) ? q - 1 : q;
}

std::int64_t priceOf(const Column& c, const std::vector<std::int64_t>& prices) {
    std::int64_t sum = 0;
    for (std::uint16_t i = 0; i < c.partCount; ++i) {
        sum += prices[c.parts[i].cls] * c.parts[i].count;
    }
    return sum;
}

std::int64_t takeOutLargest(std::vector<std::int64_t>& costs, int leftOut) {
    if (leftOut > 0) {
        std::sort(costs.begin(), costs.end());
        for (int i = 0; i < leftOut && !costs.empty(); ++i) {
            costs.pop_back();
        }
    }
    std::int64_t sum = 0;
    for (std::int64_t c : costs) {
        if (c >= never) {
            return never;
        }
        sum += c;
    }
    return sum;
}
} // namespace

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

namespace {
/// One evaluation of the dual: the bound, and how far demand exceeds supply per class.
struct Evaluation {
    std::int64_t bound = 0;
    std::vector<std::int64_t> excess; ///< per class, and last the total of shims
};

void evaluate(const BoundTask& task, const Prices& prices, Evaluation& out) {
    const Instance& in = task.instance;
    const std::size_t classes = in.classes();
    out.excess.assign(classes + 1, 0);
    for (std::size_t i = 0; i < classes; ++i) {
        out.excess[i] = -in.count[i];
    }
    out.excess[classes] = task.costIsResidual ? -task.shimLimit : 0;
    const PriceHull hull(in, prices.ofClass);
    std::vector<std::int64_t> least(in.places.size(), never);
    std::vector<const Column*> chosen(in.places.size(), nullptr);
    for (std::size_t p = 0; p < in.places.size(); ++p) {
        for (const Column& c : task.columns[p]) {
            const std::int64_t own =
                task.costIsResidual ? scale * magnitude(c.residual) + prices.ofShim * c.size : scale * c.size;
            const std::int64_t cost = own + priceOf(c, prices.ofClass);
            if (cost < least[p]) {
                least[p] = cost;
                chosen[p] = &c;
            }
        }
        const Unlisted& u = task.unlisted[p];
        if (u.fewest <= u.most && !task.costIsResidual) {
            const std::int64_t other = hull.leastCost(u);
            if (other < least[p]) {
                least[p] = other;
                chosen[p] = nullptr;
            }
        }
    }
    std::int64_t cut = never + 1;
    if (task.leftOut > 0) {
        std::vector<std::int64_t> sorted = least;
        std::sort(sorted.begin(), sorted.end());
        const auto keep = static_cast<std::size_t>(
            std::max<std::ptrdiff_t>(0, static_cast<std::ptrdiff_t>(sorted.size()) - task.leftOut));
        cut = keep == 0 ? -1 : sorted[keep - 1];
    }
    int kept = static_cast<int>(in.places.size()) - task.leftOut;
    for (std::size_t p = 0; p < in.places.size(); ++p) {
        if (chosen[p] == nullptr || least[p] > cut || kept <= 0) {
            continue;
        }
        --kept;
        for (std::uint16_t i = 0; i < chosen[p]->partCount; ++i) {
            out.excess[chosen[p]->parts[i].cls] += chosen[p]->parts[i].count;
        }
        out.excess[classes] += task.costIsResidual ? chosen[p]->size : 0;
    }
    const std::int64_t sum = takeOutLargest(least, task.leftOut);
    out.bound = sum >= never ? never : sum - worthOfKit(in, prices, task.costIsResidual ? task.shimLimit : 0);
}
} // namespace

std::int64_t worthOfKit(const Instance& instance, const Prices& prices, int shimLimit) {
    std::int64_t worth = prices.ofShim * shimLimit;
    for (std::size_t i = 0; i < prices.ofClass.size(); ++i) {
        worth += prices.ofClass[i] * instance.count[i];
    }
    return worth;
}

std::int64_t raiseBound(const BoundTask& task, Prices& prices, const Stop& stop) {
    const std::size_t classes = task.instance.classes();
    if (prices.ofClass.size() != classes) {
        prices.ofClass.assign(classes, 0);
    }
    Evaluation now;
    evaluate(task, prices, now);
    Prices best = prices;
    std::int64_t bestBound = now.bound;
    std::vector<std::int64_t> direction(classes + 1, 0);
    std::int64_t stepShare = 1024; // of 1024, the relaxation factor of the step rule
    int sinceBetter = 0;
    for (int round = 0; round < task.rounds && bestBound <= task.target && bestBound < never; ++round) {
        if (stop && stop()) {
            break;
        }
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
        const std::int64_t aim = std::max(task.target + scale / 4 - now.bound, scale / 64);
        for (std::size_t i = 0; i <= classes; ++i) {
            std::int64_t& price = i < classes ? prices.ofClass[i] : prices.ofShim;
            // step = share · aim · direction ÷ |direction|², all in whole numbers
            const std::int64_t step = (aim * direction[i] / norm) * stepShare / 1024;
            price = std::max<std::int64_t>(0, price + step);
        }
        evaluate(task, prices, now);
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
            evaluate(task, prices, now);
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

void price(Columns& columns, const Prices& forShims, const Prices& forResidual) {
    for (auto& list : columns) {
        for (Column& c : list) {
            c.shimCost = scale * c.size + (forShims.ofClass.empty() ? 0 : priceOf(c, forShims.ofClass));
            c.residualCost = scale * magnitude(c.residual) + forResidual.ofShim * c.size +
                             (forResidual.ofClass.empty() ? 0 : priceOf(c, forResidual.ofClass));
        }
    }
}

} // namespace caprail::solver
