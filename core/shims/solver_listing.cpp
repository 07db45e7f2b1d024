// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver_linear.h>
#include <shims/solver_stages.h>

namespace caprail::solver {

namespace {
/// Candidates listed in all pools together; some 30 bytes each.
constexpr std::size_t roomInAll = 400'000;
} // namespace

bool Stages::extend(std::size_t place, int size, std::int64_t window) {
    std::size_t others = 0;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        others += p == place ? 0 : m_pools[p].candidates().size();
    }
    return m_pools[place].extend(size, window, roomInAll - std::min(roomInAll, others), m_stop);
}

std::size_t Stages::candidatesListed() const {
    std::size_t n = 0;
    for (const Pool& pool : m_pools) {
        n += pool.candidates().size();
    }
    return n;
}

/// About how many stacks of so many shims serve a place: all multisets, evenly spread over their totals.
double Stages::expectedStacks(std::size_t place, int size) const {
    double n = 1;
    for (int i = 0; i < size; ++i) {
        n *= (static_cast<double>(m_instance.classes()) + i) / (i + 1);
    }
    const double span = static_cast<double>(m_instance.thickness.front() - m_instance.thickness.back()) * size + 1;
    const Place& at = m_instance.places[place];
    return n * std::min(1.0, static_cast<double>(at.hi - at.lo + 1) / span);
}

int Stages::fewestInAll(int leftOut) const {
    std::vector<int> sorted = m_fewest;
    std::sort(sorted.begin(), sorted.end());
    int sum = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(leftOut) < sorted.size(); ++i) {
        sum += sorted[i];
    }
    return sum;
}

/// The most shims that one place can have in a plan of the aim.
int Stages::mostFor(std::size_t place, const Aim& aim) const {
    return std::min(m_instance.places[place].most, m_fewest[place] + aim.shims - fewestInAll(aim.leftOut));
}

Columns Stages::columnsFor(const Aim& aim) const {
    Columns columns(m_pools.size());
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const int most = mostFor(p, aim);
        for (const Candidate& c : m_pools[p].candidates()) {
            if (c.size <= most && magnitude(c.residual) <= aim.window) {
                columns[p].push_back({m_pools[p].parts(c), c.parts, c.size, c.residual, 0, 0});
            }
        }
    }
    return columns;
}

std::vector<Unlisted> Stages::unlistedFor(const Aim& aim) const {
    std::vector<Unlisted> out;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const Place& at = m_instance.places[p];
        Unlisted u;
        u.fewest = m_pools[p].completeSize() + 1;
        u.most = mostFor(p, aim);
        u.lo = at.residualCounts ? std::max(at.lo, at.gap - aim.window) : at.lo;
        u.hi = at.residualCounts ? std::min(at.hi, at.gap + aim.window) : at.hi;
        out.push_back(u);
    }
    return out;
}

bool Stages::isListed(const Aim& aim) const {
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        if (m_pools[p].completeSize() < mostFor(p, aim) ||
            m_pools[p].completeWindow() < std::min(aim.window, m_pools[p].wholeBand())) {
            return false;
        }
    }
    return true;
}

/// Improves the prices for the number of shims; the bound they give, times scale.
std::int64_t Stages::raisePrices(const Aim& aim, int rounds) {
    const Columns columns = columnsFor(aim);
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut);
    market.unlisted = unlistedFor(aim);
    Prices none;
    none.ofClass.assign(m_instance.classes(), 0);
    for (const Prices& other : {none, startingPrices(m_instance)}) {
        if (m_prices.ofClass.empty() || boundAt(market, other) > boundAt(market, m_prices)) {
            m_prices = other;
        }
    }
    const std::int64_t bound = raiseBound(market, scale * aim.shims, rounds, m_prices, m_stop);
    if (bound > scale * aim.shims) {
        return bound;
    }
    const Prices linear = linearPrices(market, scale * aim.shims, m_stop);
    const std::int64_t other = boundAt(market, linear);
    if (other > bound) {
        m_prices = linear;
        return other;
    }
    return bound;
}

/// The bound that the present prices make for another aim (a bound holds for its own aim only: with more shims there
/// may be larger stacks).
std::int64_t Stages::boundFor(const Aim& aim) const {
    if (m_prices.ofClass.empty()) {
        return 0;
    }
    const Columns columns = columnsFor(aim);
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut);
    market.unlisted = unlistedFor(aim);
    return boundAt(market, m_prices);
}

/// Lists further stacks that by the present prices a plan of the aim could contain, at each place those of one more
/// shim only: what these add to the bound may make the next ones needless.
Stages::Listing Stages::listMore(const Aim& aim) {
    Columns columns = columnsFor(aim);
    const std::vector<Unlisted> unlisted = unlistedFor(aim);
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut);
    market.unlisted = unlisted;
    const std::int64_t room = scale * aim.shims - boundAt(market, m_prices);
    const PriceHull hull(m_instance, m_prices.ofClass);
    price(columns, m_prices, {});
    Listing result = Listing::complete;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const Unlisted& u = unlisted[p];
        std::int64_t least = hull.leastCost(u);
        for (const Column& c : columns[p]) {
            least = std::min(least, c.shimCost);
        }
        bool matters = false;
        for (int n = u.fewest; n <= u.most && !matters; ++n) {
            const std::int64_t cost = hull.leastCost(n, u.lo, u.hi);
            matters = cost < never && cost - least <= room;
        }
        const std::int64_t window = std::min(aim.window, m_pools[p].wholeBand());
        if (matters || m_pools[p].completeWindow() < window) {
            if (!extend(p, m_pools[p].completeSize() + (matters ? 1 : 0), window)) {
                return Listing::noRoom;
            }
            result = Listing::extended;
        }
    }
    return result;
}

/// Lists all stacks that a plan of the aim could contain; false if there is no room for them.
bool Stages::listAll(const Aim& aim) {
    if (isListed(aim)) {
        return true;
    }
    raisePrices(aim, 200);
    Listing listing = listMore(aim);
    while (listing == Listing::extended && !stopped()) {
        raisePrices(aim, 60);
        listing = listMore(aim);
    }
    return listing == Listing::complete;
}

} // namespace caprail::solver
