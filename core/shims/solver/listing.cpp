// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/column_generation.h>
#include <shims/solver/stages.h>

namespace caprail::solver {

namespace {
/// Candidates listed in all pools together; some 30 bytes each.
constexpr std::size_t roomInAll = 400'000;
constexpr std::size_t roomByPrice = 200'000;
} // namespace

bool Stages::extend(std::size_t place, int size, std::int64_t window) {
    std::size_t others = 0;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        others += p == place ? 0 : m_pools[p].candidates().size();
    }
    return m_pools[place].extend(size, window, roomInAll - std::min(roomInAll, others), m_clock);
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
        const auto take = [&](const Candidate& c, const Part* parts) {
            m_clock.book(50);
            if (c.size <= most && magnitude(c.residual) <= aim.window) {
                columns[p].push_back({parts, c.parts, c.size, c.residual, 0, 0});
            }
        };
        if (isListedByPrice(aim)) {
            for (const Candidate& c : m_byPrice[p].candidates) {
                take(c, &m_byPrice[p].parts[c.first]);
            }
        } else {
            for (const Candidate& c : m_pools[p].candidates()) {
                take(c, m_pools[p].parts(c));
            }
        }
    }
    return columns;
}

std::vector<StackPrices::Wanted> Stages::wantedFor(const Aim& aim) const {
    std::vector<StackPrices::Wanted> out;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const Place& at = m_instance.places[p];
        out.push_back({mostFor(p, aim), at.residualCounts ? std::max(at.lo, at.gap - aim.window) : at.lo,
                       at.residualCounts ? std::min(at.hi, at.gap + aim.window) : at.hi});
    }
    return out;
}

/// The table of the costs of all stacks, large enough for the aim; none where it would be too large.
StackPrices* Stages::tableFor(const Aim& aim) {
    int shims = 0;
    std::int64_t total = 0;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        shims = std::max(shims, mostFor(p, aim));
        total = std::max(total, m_instance.places[p].hi);
    }
    if (!StackPrices::canBe(m_instance, shims, total)) {
        return nullptr;
    }
    if (!m_table || m_table->mostShims() < shims) {
        m_table = std::make_unique<StackPrices>(m_instance, shims, total, m_clock);
    }
    return m_table.get();
}

bool Stages::isListedByPrice(const Aim& aim) const {
    return !m_byPrice.empty() && aim.leftOut == m_byPriceFor.leftOut && aim.shims <= m_byPriceFor.shims &&
           aim.window <= m_byPriceFor.window;
}

/// Lists all stacks that by the present prices a plan of the aim can contain: those that do not raise the bound above
/// it. False if there is no room for them.
bool Stages::listByPrice(const Aim& aim) {
    if (isListedByPrice(aim)) {
        return true;
    }
    StackPrices* table = tableFor(aim);
    if (table == nullptr || m_prices.ofClass.empty()) {
        return false;
    }
    m_byPrice.clear();
    const std::vector<StackPrices::Wanted> wanted = wantedFor(aim);
    const Market market = marketOf(m_instance, Columns(m_pools.size()), Cost::shims, aim.leftOut, m_clock);
    table->set(m_prices, scale, m_clock);
    const std::int64_t above = scale * aim.shims - boundOverAll(market, m_prices, *table, wanted);
    std::vector<StackPrices::Listed> lists(m_pools.size());
    std::size_t room = roomByPrice;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const std::int64_t least = table->least(wanted[p]);
        if (least < never && !table->list(wanted[p], least + above, m_instance.places[p].gap, room, lists[p], m_clock)) {
            return false;
        }
        room -= lists[p].candidates.size();
        for (Candidate& c : lists[p].candidates) {
            c.residual = m_instance.places[p].residualCounts ? c.residual : 0;
        }
    }
    m_byPrice = std::move(lists);
    m_byPriceFor = aim;
    return true;
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
    if (isListedByPrice(aim)) {
        return true;
    }
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
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut, m_clock);
    if (StackPrices* table = tableFor(aim)) {
        const std::vector<StackPrices::Wanted> wanted = wantedFor(aim);
        m_prices = linearPrices(market, scale * aim.shims, table, wanted);
        return boundOverAll(market, m_prices, *table, wanted);
    }
    market.unlisted = unlistedFor(aim);
    Prices none;
    none.ofClass.assign(m_instance.classes(), 0);
    for (const Prices& other : {none, startingPrices(m_instance)}) {
        if (m_prices.ofClass.empty() || boundAt(market, other) > boundAt(market, m_prices)) {
            m_prices = other;
        }
    }
    const std::int64_t bound = raiseBound(market, scale * aim.shims, rounds, m_prices);
    if (bound > scale * aim.shims) {
        return bound;
    }
    const Prices linear = linearPrices(market, scale * aim.shims);
    const std::int64_t other = boundAt(market, linear);
    if (other > bound) {
        m_prices = linear;
        return other;
    }
    return bound;
}

/// The bound that the present prices make for another aim (a bound holds for its own aim only: with more shims there
/// may be larger stacks).
std::int64_t Stages::boundFor(const Aim& aim) {
    if (m_prices.ofClass.empty()) {
        return 0;
    }
    if (StackPrices* table = tableFor(aim)) {
        table->set(m_prices, scale, m_clock);
        const Market market = marketOf(m_instance, Columns(m_pools.size()), Cost::shims, aim.leftOut, m_clock);
        return boundOverAll(market, m_prices, *table, wantedFor(aim));
    }
    const Columns columns = columnsFor(aim);
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut, m_clock);
    market.unlisted = unlistedFor(aim);
    return boundAt(market, m_prices);
}

/// Lists further stacks that by the present prices a plan of the aim could contain, at each place those of one more
/// shim only: what these add to the bound may make the next ones needless.
Stages::Listing Stages::listMore(const Aim& aim) {
    Columns columns = columnsFor(aim);
    const std::vector<Unlisted> unlisted = unlistedFor(aim);
    Market market = marketOf(m_instance, columns, Cost::shims, aim.leftOut, m_clock);
    market.unlisted = unlisted;
    const std::int64_t room = scale * aim.shims - boundAt(market, m_prices);
    const PriceHull hull(m_instance, m_prices.ofClass);
    price(columns, m_prices, {}, m_clock);
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
    if (listByPrice(aim)) {
        return true;
    }
    Listing listing = listMore(aim);
    while (listing == Listing::extended) {
        raisePrices(aim, 60);
        listing = listMore(aim);
    }
    return listing == Listing::complete;
}

} // namespace caprail::solver
