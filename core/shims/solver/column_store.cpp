// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/column_generation.h>
#include <shims/solver/column_store.h>

namespace caprail::solver {

namespace {
/// Candidates listed in all pools together; some 30 bytes each.
constexpr std::size_t roomInAll = 250'000;
constexpr std::size_t roomByPrice = 150'000;
} // namespace

ColumnStore::ColumnStore(const OpenSeats& open, WorkClock& clock) : m_open(open), m_clock(clock) {
    m_pools.reserve(open.count());
    for (std::size_t p = 0; p < open.count(); ++p) {
        m_pools.emplace_back(open.instance(), open.reach(), p);
    }
}

bool ColumnStore::extend(std::size_t seat, int size, std::int64_t window) {
    std::size_t others = 0;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        others += p == seat ? 0 : m_pools[p].candidates().size();
    }
    const std::size_t before = m_pools[seat].candidates().size();
    const bool isDone = m_pools[seat].extend(size, window, roomInAll - std::min(roomInAll, others), m_clock);
    m_revision += m_pools[seat].candidates().size() != before ? 1 : 0;
    return isDone;
}

/// All multisets, evenly spread over their totals.
double ColumnStore::expectedStacks(std::size_t seat, int size) const {
    double n = 1;
    for (int i = 0; i < size; ++i) {
        n *= (static_cast<double>(instance().classes()) + i) / (i + 1);
    }
    const double span = static_cast<double>(instance().thickness.front() - instance().thickness.back()) * size + 1;
    const Seat& at = instance().seats[seat];
    return n * std::min(1.0, static_cast<double>(at.hi - at.lo + 1) / span);
}

Columns ColumnStore::columnsFor(const Question& question) const {
    Columns columns(m_pools.size());
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const int most = m_open.most(p, question);
        const auto take = [&](const Candidate& c, const Part* parts) {
            m_clock.book(50);
            if (c.size <= most && magnitude(c.residual) <= question.window) {
                columns[p].push_back({parts, c.parts, c.size, c.residual, 0, 0});
            }
        };
        if (isListedByPrice(question)) {
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

std::vector<StackPrices::Wanted> ColumnStore::wantedFor(const Question& question) const {
    std::vector<StackPrices::Wanted> out;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const Seat& at = instance().seats[p];
        out.push_back({m_open.most(p, question), at.residualCounts ? std::max(at.lo, at.gap - question.window) : at.lo,
                       at.residualCounts ? std::min(at.hi, at.gap + question.window) : at.hi});
    }
    return out;
}

/// The table of the costs of all stacks, large enough for the question; none where it would be too large.
StackPrices* ColumnStore::tableFor(const Question& question) {
    int shims = 0;
    std::int64_t total = 0;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        shims = std::max(shims, m_open.most(p, question));
        total = std::max(total, instance().seats[p].hi);
    }
    if (!StackPrices::canBe(instance(), shims, total)) {
        return nullptr;
    }
    if (!m_table || m_table->mostShims() < shims) {
        m_table = std::make_unique<StackPrices>(instance(), shims, total, m_clock);
    }
    return m_table.get();
}

bool ColumnStore::isListedByPrice(const Question& question) const {
    return !m_byPrice.empty() && question.leftOut == m_byPriceFor.leftOut && question.shims <= m_byPriceFor.shims &&
           question.window <= m_byPriceFor.window;
}

/// Those that do not raise the bound above the number of shims asked about.
bool ColumnStore::listByPrice(const Question& question) {
    if (isListedByPrice(question)) {
        return true;
    }
    StackPrices* table = tableFor(question);
    if (table == nullptr || m_prices.ofClass.empty()) {
        return false;
    }
    m_byPrice.clear();
    const std::vector<StackPrices::Wanted> wanted = wantedFor(question);
    const Market market = marketOf(instance(), Columns(m_pools.size()), Cost::shims, question.leftOut, m_clock);
    table->set(m_prices, scale, m_clock);
    const std::int64_t above = scale * question.shims - boundOverAll(market, m_prices, *table, wanted);
    std::vector<StackPrices::Listed> lists(m_pools.size());
    std::size_t room = roomByPrice;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const std::int64_t least = table->least(wanted[p]);
        if (least < never && !table->list(wanted[p], least + above, instance().seats[p].gap, room, lists[p], m_clock)) {
            return false;
        }
        room -= lists[p].candidates.size();
        for (Candidate& c : lists[p].candidates) {
            c.residual = instance().seats[p].residualCounts ? c.residual : 0;
        }
    }
    m_byPrice = std::move(lists);
    m_byPriceFor = question;
    ++m_revision;
    return true;
}

std::vector<Unlisted> ColumnStore::unlistedFor(const Question& question) const {
    std::vector<Unlisted> out;
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const Seat& at = instance().seats[p];
        Unlisted u;
        u.fewest = m_pools[p].completeSize() + 1;
        u.most = m_open.most(p, question);
        u.lo = at.residualCounts ? std::max(at.lo, at.gap - question.window) : at.lo;
        u.hi = at.residualCounts ? std::min(at.hi, at.gap + question.window) : at.hi;
        out.push_back(u);
    }
    return out;
}

/// What the stacks cost at least that are not listed.
std::function<std::vector<std::int64_t>(const Prices&)> ColumnStore::costOf(std::vector<Unlisted> unlisted) const {
    return [this, unlisted = std::move(unlisted)](const Prices& prices) {
        const PriceHull hull(instance(), prices.ofClass);
        std::vector<std::int64_t> costs;
        for (const Unlisted& one : unlisted) {
            costs.push_back(hull.leastCost(one));
        }
        return costs;
    };
}

bool ColumnStore::isListed(const Question& question) const {
    if (isListedByPrice(question)) {
        return true;
    }
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        if (m_pools[p].completeSize() < m_open.most(p, question) ||
            m_pools[p].completeWindow() < std::min(question.window, m_pools[p].wholeBand())) {
            return false;
        }
    }
    return true;
}

std::int64_t ColumnStore::raisePrices(const Question& question, int rounds) {
    const Columns columns = columnsFor(question);
    Market market = marketOf(instance(), columns, Cost::shims, question.leftOut, m_clock);
    if (StackPrices* table = tableFor(question)) {
        const std::vector<StackPrices::Wanted> wanted = wantedFor(question);
        m_prices = linearPrices(market, scale * question.shims, table, wanted);
        return boundOverAll(market, m_prices, *table, wanted);
    }
    market.unlisted = costOf(unlistedFor(question));
    Prices none;
    none.ofClass.assign(instance().classes(), 0);
    for (const Prices& other : {none, startingPrices(instance())}) {
        if (m_prices.ofClass.empty() || boundAt(market, other) > boundAt(market, m_prices)) {
            m_prices = other;
        }
    }
    const std::int64_t bound = raiseBound(market, scale * question.shims, rounds, m_prices);
    if (bound > scale * question.shims) {
        return bound;
    }
    const Prices linear = linearPrices(market, scale * question.shims);
    const std::int64_t other = boundAt(market, linear);
    if (other > bound) {
        m_prices = linear;
        return other;
    }
    return bound;
}

/// A bound holds for its own question only: with more shims there may be larger stacks.
std::int64_t ColumnStore::boundFor(const Question& question) {
    if (m_prices.ofClass.empty()) {
        return 0;
    }
    if (StackPrices* table = tableFor(question)) {
        table->set(m_prices, scale, m_clock);
        const Market market = marketOf(instance(), Columns(m_pools.size()), Cost::shims, question.leftOut, m_clock);
        return boundOverAll(market, m_prices, *table, wantedFor(question));
    }
    const Columns columns = columnsFor(question);
    Market market = marketOf(instance(), columns, Cost::shims, question.leftOut, m_clock);
    market.unlisted = costOf(unlistedFor(question));
    return boundAt(market, m_prices);
}

/// At each seat those of one more shim only: what these add to the bound may make the next ones needless.
ColumnStore::Listing ColumnStore::listMore(const Question& question) {
    Columns columns = columnsFor(question);
    const std::vector<Unlisted> unlisted = unlistedFor(question);
    Market market = marketOf(instance(), columns, Cost::shims, question.leftOut, m_clock);
    market.unlisted = costOf(unlisted);
    const std::int64_t room = scale * question.shims - boundAt(market, m_prices);
    const PriceHull hull(instance(), m_prices.ofClass);
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
        const std::int64_t window = std::min(question.window, m_pools[p].wholeBand());
        if (matters || m_pools[p].completeWindow() < window) {
            if (!extend(p, m_pools[p].completeSize() + (matters ? 1 : 0), window)) {
                return Listing::noRoom;
            }
            result = Listing::extended;
        }
    }
    return result;
}

bool ColumnStore::listAll(const Question& question) {
    if (isListed(question)) {
        return true;
    }
    raisePrices(question, 200);
    if (listByPrice(question)) {
        return true;
    }
    Listing listing = listMore(question);
    while (listing == Listing::extended) {
        raisePrices(question, 60);
        listing = listMore(question);
    }
    return listing == Listing::complete;
}

} // namespace caprail::solver
