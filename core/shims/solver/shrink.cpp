// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/column_generation.h>
#include <shims/solver/stages.h>

namespace caprail::solver {

/// The same for what is minimised: closes the gap between `atLeast` and `best`, which `search` brings down when it
/// finds a plan of at most `most`. False if there is no room for the stacks.
bool Stages::settle(const Aim& aim, std::int64_t& atLeast, const std::int64_t& best, const Lower& search) {
    // First over the stacks that happen to be listed: that may be enough.
    for (std::int64_t steps = firstSteps; steps <= 4 * firstSteps && atLeast < best; steps *= 4) {
        const bool listed = isListed(aim);
        for (unsigned probe = 0; probe <= probes && atLeast < best; ++probe) {
            const std::int64_t before = best;
            const Outcome outcome = search(best - 1, probe == 0 ? steps : steps / 4, probe);
            if (outcome == Outcome::exhausted) {
                atLeast = listed ? best : atLeast;
                steps = never / 8; // the stacks listed hold no more: on to the others
                break;
            }
            if (best < before) {
                probe = 0;
            }
        }
        if (listed) {
            break;
        }
    }
    if (atLeast == best) {
        return true;
    }
    if (!listAll(aim)) {
        return false;
    }
    std::int64_t steps = firstSteps;
    bool isTooLow = false;
    while (atLeast < best) {
        // By turns all the way down to the bound, which is often the truth and leaves the search the least to look at,
        // and half-way; or, once the bound was seen to be too low, only just down: no proof is needed twice.
        bool settled = false;
        for (const bool down : {true, false}) {
            const std::int64_t most = down && !isTooLow ? atLeast
                                      : isTooLow        ? best - 1
                                                        : atLeast + (best - 1 - atLeast) / 2;
            const std::int64_t before = best;
            bool exhausted = false;
            for (unsigned probe = 0; probe <= probes && !exhausted && best == before; ++probe) {
                exhausted = search(most, probe == 0 ? steps : steps / 4, probe) == Outcome::exhausted;
            }
            if (exhausted) {
                atLeast = std::min(best, most + 1);
                isTooLow = true;
            }
            if (atLeast >= best) {
                return true;
            }
            settled = settled || exhausted || best < before;
            if (most == best - 1) {
                break;
            }
        }
        steps *= settled ? 1 : 4;
    }
    return true;
}

/// The smallest |residual| that any stack of so many shims can give at a place.
std::int64_t Stages::leastResidual(std::size_t place, int size) const {
    const Place& at = m_instance.places[place];
    if (!at.residualCounts) {
        return 0;
    }
    std::int64_t no = -1;
    std::int64_t yes = m_pools[place].wholeBand();
    while (yes - no > 1) {
        const std::int64_t middle = (no + yes) / 2;
        const std::int64_t lo = std::max(at.lo, at.gap - middle);
        const std::int64_t hi = std::min(at.hi, at.gap + middle);
        (lo <= hi && m_reach->fewest(0, lo, hi) <= size ? yes : no) = middle;
    }
    return yes;
}

void Stages::shrinkLargest() {
    const Aim aim = bestAim();
    std::vector<std::int64_t> least;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        least.push_back(leastResidual(p, mostFor(p, aim)));
    }
    std::sort(least.begin(), least.end());
    const std::size_t kept = least.size() - static_cast<std::size_t>(m_leftOut);
    std::int64_t from = kept == 0 ? 0 : least[kept - 1];
    from = std::max(from, m_instance.fixedLargest);
    m_largestAtLeast = from;
    bool first = true;
    while (from < m_best.largest) {
        const std::int64_t window = first ? from : (from + m_best.largest - 1) / 2;
        first = false;
        const Answer answer = decide({aim.shims, window, aim.leftOut});
        if (answer == Answer::unknown) {
            m_isOpen = true;
            return;
        }
        if (answer == Answer::no) {
            from = window + 1;
            m_largestAtLeast = from;
        }
    }
}

void Stages::shrinkTwist() {
    Aim aim = bestAim();
    const auto search = [&](std::int64_t twist, std::int64_t steps, unsigned probe) {
        Columns columns = columnsFor(aim);
        price(columns, m_prices, {}, m_clock);
        sortColumns(columns, Cost::shims, m_clock);
        Limits limits = limitsFor(aim);
        limits.twist = twist;
        if (probe == 1 && decideByKit(limits, steps) == Answer::yes) {
            return Outcome::found;
        }
        Search run(m_instance, columns, m_prices, {}, m_clock);
        run.probe(probe);
        const Outcome outcome = run.run(limits, steps, [&](const Found& f, Limits& now) {
            keep(columns, f);
            now.twist = f.twist - 1;
            return now.twist >= m_twistAtLeast;
        });
        return outcome;
    };
    if (m_best.twist == 0 || search(0, firstSteps, 0) == Outcome::found) {
        return;
    }
    Limits limits = limitsFor(aim);
    m_twistAtLeast = std::min(m_best.twist, leastTwistOf(limits));
    limits.twist = m_twistAtLeast;
    if (m_best.twist == m_twistAtLeast || decideByKit(limits, kitSteps) == Answer::yes) {
        return;
    }
    if (isListed(aim)) {
        // What the residuals on offer allow, each place by itself.
        std::int64_t no = m_twistAtLeast - 1;
        std::int64_t maybe = m_best.twist;
        while (maybe - no > 1) {
            const std::int64_t middle = (no + maybe) / 2;
            (search(middle, 0, 0) == Outcome::exhausted ? no : maybe) = middle;
        }
        m_twistAtLeast = maybe;
    }
    m_isOpen = !settle(aim, m_twistAtLeast, m_best.twist, search);
}

/// What so many shims leave of the gaps at least, taken from the thickest.
std::int64_t Stages::unfilled(int shims) const {
    std::int64_t rest = 0;
    for (const Place& p : m_instance.places) {
        if (!p.residualCounts) {
            return 0;
        }
        rest += p.gap;
    }
    for (std::size_t i = 0; i < m_instance.classes() && shims > 0; ++i) {
        const int n = std::min(shims, m_instance.count[i]);
        rest -= n * m_instance.thickness[i];
        shims -= n;
    }
    return std::max<std::int64_t>(0, rest);
}

void Stages::shrinkSum() {
    Aim aim = bestAim();
    aim.window = std::min(m_instance.leastTwist ? m_wholeBand : m_best.largest, m_best.sum - m_instance.fixedSum);
    std::vector<std::int64_t> least;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        least.push_back(leastResidual(p, mostFor(p, aim)));
    }
    std::sort(least.begin(), least.end());
    std::int64_t sum = m_instance.fixedSum;
    for (std::size_t i = 0; i + static_cast<std::size_t>(m_leftOut) < least.size(); ++i) {
        sum += least[i];
    }
    m_sumAtLeast = sum;
    if (sum >= m_best.sum) {
        return;
    }
    if (m_leftOut == 0) {
        m_sumAtLeast = std::max(m_sumAtLeast, m_instance.fixedSum + unfilled(aim.shims));
    }
    Limits limits = limitsFor(aim);
    limits.twist = m_instance.leastTwist ? m_best.twist : never;
    m_sumAtLeast = std::min(m_best.sum, leastSumOf(limits));
    if (m_sumAtLeast >= m_best.sum) {
        return;
    }
    limits.sum = m_sumAtLeast - m_instance.fixedSum;
    if (decideByKit(limits, kitSteps) == Answer::yes) {
        return;
    }
    for (std::int64_t from = m_sumAtLeast + 1; from < m_best.sum;) {
        const std::int64_t most = from + (m_best.sum - 1 - from) / 2;
        limits.sum = most - m_instance.fixedSum;
        if (decideByKit(limits, kitSteps / 4) != Answer::yes) {
            from = most + 1;
        }
    }
    Prices prices;
    std::size_t pricedFor = 0;
    Prices forShims;
    std::int64_t shimsPricedFor = -1;
    bool isTooFew = false;
    const auto search = [&](std::int64_t most, std::int64_t steps, unsigned probe) {
        Columns columns = columnsFor(aim);
        const std::size_t listed = candidatesListed();
        if (listed != pricedFor) {
            pricedFor = listed;
            const std::int64_t bound = boundSum(columns, aim, m_best.sum - m_instance.fixedSum - 1, prices);
            if (isListed(aim)) { // over an unfinished list the prices are good to search by, but bound nothing
                m_sumAtLeast = std::max(m_sumAtLeast, bound + m_instance.fixedSum);
                m_sumAtLeast = std::min(m_best.sum, leastSumOf(limits));
            }
            if (m_sumAtLeast >= m_best.sum) {
                return Outcome::exhausted;
            }
        }
        // No residual can exceed the sum: fewer stacks, and prices for the shims of these.
        const std::int64_t widest = most - m_instance.fixedSum;
        for (auto& list : columns) {
            list.erase(std::remove_if(list.begin(), list.end(),
                                      [widest](const Column& c) { return magnitude(c.residual) > widest; }),
                       list.end());
        }
        if (most != shimsPricedFor) {
            shimsPricedFor = most;
            forShims = m_prices;
            if (widest < aim.window && isListed(aim)) {
                const Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut, m_clock);
                forShims = linearPrices(market, scale * aim.shims);
                isTooFew = boundAt(market, forShims) > scale * aim.shims;
            }
        }
        if (isTooFew) {
            shimsPricedFor = -1;
            isTooFew = false;
            return Outcome::exhausted;
        }
        price(columns, forShims, prices, m_clock);
        sortColumns(columns, Cost::residuals, m_clock);
        limits.sum = most - m_instance.fixedSum;
        if (probe == 1 && decideByKit(limits, steps) == Answer::yes) {
            return Outcome::found;
        }
        Search run(m_instance, columns, forShims, prices, m_clock);
        run.probe(probe);
        const Outcome outcome = run.run(limits, steps, [&](const Found& f, Limits& now) {
            keep(columns, f);
            now.sum = f.sum - 1;
            return now.sum + m_instance.fixedSum >= m_sumAtLeast;
        });
        return outcome;
    };
    m_isOpen = !settle(aim, m_sumAtLeast, m_best.sum, search);
}

/// A bound on the sum of |residual| over the open places, by prices that are left in `prices`; at most `target` + 1.
std::int64_t Stages::boundSum(const Columns& columns, const Aim& aim, std::int64_t target, Prices& prices) {
    Market market = marketOf(m_instance, columns, Cost::residuals, aim.leftOut, m_clock);
    market.shims = aim.shims;
    prices.ofClass.assign(m_instance.classes(), 0);
    std::int64_t best = boundAt(market, prices);
    // Where shims are short, a smaller residual costs shims: the prices by number of shims, times what one is worth.
    for (std::int64_t worth = 1; !m_prices.ofClass.empty() && worth <= 4 * target; worth *= 2) {
        Prices other = m_prices;
        other.ofShim = worth * scale;
        for (std::int64_t& p : other.ofClass) {
            p *= worth;
        }
        const std::int64_t bound = boundAt(market, other);
        if (bound > best) {
            best = bound;
            prices = other;
        }
    }
    for (const Prices& other : {sumPrices(m_instance, aim.shims)}) {
        const std::int64_t bound = boundAt(market, other);
        if (bound > best) {
            best = bound;
            prices = other;
        }
    }
    std::int64_t bound = m_instance.leastTwist ? raiseBound(market, scale * target, 200, prices) : best;
    if (bound <= scale * target) {
        const Prices linear = linearPrices(market, scale * target);
        const std::int64_t other = boundAt(market, linear);
        // With least twist most of the search is for plans that balance, and smoother prices guide it better.
        if (m_instance.leastTwist ? other > (bound + scale - 1) / scale * scale : other > bound) {
            bound = other;
            prices = linear;
        }
    }
    return bound >= never ? target + 1 : std::min(target + 1, (bound + scale - 1) / scale);
}

} // namespace caprail::solver
