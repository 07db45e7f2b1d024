// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/aims.h>
#include <shims/solver/column_generation.h>
#include <shims/solver/price_hull.h>

namespace caprail::solver {

Limits SmallestSumOfResiduals::limits() const {
    Limits limits = Decision::limitsFor(m_question);
    limits.twist = instance().isBy(Objective::leastTwist) ? best().twist : never;
    return limits;
}

void SmallestSumOfResiduals::bound() {
    m_question = Aim::question();
    m_question.window = std::min(instance().isBy(Objective::leastTwist) ? m_question.window : best().largest,
                                 best().sum - instance().fixedSum);
    std::vector<std::int64_t> least;
    for (std::size_t p = 0; p < m_tools.open.count(); ++p) {
        least.push_back(m_tools.open.leastResidual(p, m_tools.open.most(p, m_question)));
    }
    std::sort(least.begin(), least.end());
    std::int64_t sum = instance().fixedSum;
    for (std::size_t i = 0; i + static_cast<std::size_t>(m_question.leftOut) < least.size(); ++i) {
        sum += least[i];
    }
    m_tools.bounds.sum = sum;
    if (isClosed()) {
        return;
    }
    if (m_question.leftOut == 0) {
        sum = std::max(sum, instance().fixedSum + m_tools.open.unfilled(m_question.shims));
    }
    m_tools.bounds.sum = std::min(best().sum, m_tools.kits.leastSum(limits(), m_tools.bounds.fewestShims, sum));
}

/// Whole kits, at the bound and then by halving: what cannot be shared out quickly is not proven impossible.
void SmallestSumOfResiduals::improve() {
    Limits within = limits();
    within.sum = m_tools.bounds.sum - instance().fixedSum;
    if (m_tools.kits.decide(within, m_tools.bounds.fewestShims, Decision::kitSteps) == Answer::yes) {
        return;
    }
    for (std::int64_t from = m_tools.bounds.sum + 1; from < best().sum;) {
        const std::int64_t most = from + (best().sum - 1 - from) / 2;
        within.sum = most - instance().fixedSum;
        if (m_tools.kits.decide(within, m_tools.bounds.fewestShims, Decision::kitSteps / 4) != Answer::yes) {
            from = most + 1;
        }
    }
}

void SmallestSumOfResiduals::prove() {
    closeGap(&Figures::sum, &Bounds::sum,
             [this](std::int64_t most, std::int64_t steps, unsigned probe) { return search(most, steps, probe); });
}

SearchOutcome SmallestSumOfResiduals::search(std::int64_t most, std::int64_t steps, unsigned probe) {
    Columns columns = m_tools.store.columnsFor(m_question);
    priceSum(columns);
    if (isClosed()) {
        return SearchOutcome::exhausted;
    }
    // No residual can exceed the sum: fewer stacks, and prices for the shims of these.
    const std::int64_t widest = most - instance().fixedSum;
    for (auto& list : columns) {
        list.erase(std::remove_if(list.begin(), list.end(),
                                  [widest](const Column& c) { return magnitude(c.residual) > widest; }),
                   list.end());
    }
    if (hasTooFewShims(columns, most)) {
        return SearchOutcome::exhausted;
    }
    price(columns, m_forShims, m_prices, m_tools.clock);
    sortColumns(columns, Cost::residuals, m_tools.clock);
    Limits within = limits();
    within.sum = widest;
    if (probe == 1 && m_tools.kits.decide(within, m_tools.bounds.fewestShims, steps) == Answer::yes) {
        return SearchOutcome::found;
    }
    Search run(instance(), columns, m_forShims, m_prices, m_tools.clock);
    run.probe(probe);
    run.share(m_failures, m_tools.store.listingFor(m_question));
    return run.run(within, steps, [&](const Found& f, Limits& now) {
        m_tools.decision.offer(columns, f);
        now.sum = f.sum - 1;
        return now.sum + instance().fixedSum >= m_tools.bounds.sum;
    });
}

/// Prices for the sum of |residual|, made anew when more stacks are listed. Over an unfinished list they are good to
/// search by, but bound nothing.
void SmallestSumOfResiduals::priceSum(const Columns& columns) {
    if (m_pricedFor == m_tools.store.revision()) {
        return;
    }
    const std::int64_t bound = boundByPrices(columns, best().sum - instance().fixedSum - 1);
    m_pricedFor = m_tools.store.revision();
    if (m_tools.store.isListed(m_question)) {
        const std::int64_t sum = std::max(m_tools.bounds.sum, bound + instance().fixedSum);
        m_tools.bounds.sum = std::min(best().sum, m_tools.kits.leastSum(limits(), m_tools.bounds.fewestShims, sum));
    }
}

/// Makes prices for the number of shims over the stacks that such a sum leaves; true if no plan has so few shims.
bool SmallestSumOfResiduals::hasTooFewShims(const Columns& columns, std::int64_t most) {
    if (most == m_shimsPricedFor) {
        return false;
    }
    m_forShims = m_tools.store.prices();
    if (most - instance().fixedSum < m_question.window && m_tools.store.isListed(m_question)) {
        const Market market = marketOf(instance(), columns, Cost::shims, m_question.leftOut, m_tools.clock);
        m_forShims = linearPrices(market, scale * m_question.shims);
        if (boundAt(market, m_forShims) > scale * m_question.shims) {
            m_shimsPricedFor = -1;
            return true;
        }
    }
    m_shimsPricedFor = most;
    return false;
}

/// A bound on the sum of |residual| over the open seats, by prices that stay in `m_prices`; at most `target` + 1.
std::int64_t SmallestSumOfResiduals::boundByPrices(const Columns& columns, std::int64_t target) {
    Market market = marketOf(instance(), columns, Cost::residuals, m_question.leftOut, m_tools.clock);
    market.shims = m_question.shims;
    m_prices.ofClass.assign(instance().classes(), 0);
    m_prices.ofShim = 0;
    std::int64_t best = boundAt(market, m_prices);
    const auto tryOut = [&](const Prices& other) {
        const std::int64_t bound = boundAt(market, other);
        if (bound > best) {
            best = bound;
            m_prices = other;
        }
    };
    // Where shims are short, a smaller residual costs shims: the prices by number of shims, times what one is worth.
    const Prices forShims = m_tools.store.prices();
    for (std::int64_t worth = 1; !forShims.ofClass.empty() && worth <= 4 * target; worth *= 2) {
        Prices other = forShims;
        other.ofShim = worth * scale;
        for (std::int64_t& p : other.ofClass) {
            p *= worth;
        }
        tryOut(other);
    }
    tryOut(sumPrices(instance(), m_question.shims));
    std::int64_t bound =
        instance().isBy(Objective::leastTwist) ? raiseBound(market, scale * target, 200, m_prices) : best;
    if (bound <= scale * target) {
        const Prices linear = linearPrices(market, scale * target);
        const std::int64_t other = boundAt(market, linear);
        // With least twist most of the search is for plans that balance, and smoother prices guide it better.
        if (instance().isBy(Objective::leastTwist) ? other > (bound + scale - 1) / scale * scale : other > bound) {
            bound = other;
            m_prices = linear;
        }
    }
    return bound >= never ? target + 1 : std::min(target + 1, (bound + scale - 1) / scale);
}

} // namespace caprail::solver
