// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver_stages.h>

#include <cstdio>
#ifdef TRACE
#define TR(...) std::fprintf(stderr, __VA_ARGS__)
#else
#define TR(...)
#endif
namespace caprail::solver {

namespace {
/// Candidates listed in all pools together; some 30 bytes each.
constexpr std::size_t roomInAll = 400'000;
/// A place with more stacks than this is first tried with those nearest to its gap.
constexpr double plenty = 400;
/// Tries at a plan before a long proof.
constexpr unsigned probes = 3;
constexpr std::int64_t firstSteps = 1000;
} // namespace

Stages::Stages(const Instance& instance, const Stop& stop) : m_all(instance), m_stop(stop) {
    sortOutPlaces();
}

/// Splits the places into bare ones (gap in band: no shim can be better than none), hopeless ones, and the rest.
void Stages::sortOutPlaces() {
    m_instance = m_all;
    m_instance.places.clear();
    std::int64_t largest = 0;
    for (const Place& p : m_all.places) {
        largest = std::max(largest, p.hi);
    }
    m_reach = std::make_unique<Reach>(m_instance, largest);
    for (std::size_t p = 0; p < m_all.places.size(); ++p) {
        const Place& place = m_all.places[p];
        int fewest = 0;
        if (place.lo <= 0 && place.hi >= 0) {
            m_bare.push_back(p);
            const std::int64_t residual = place.residualCounts ? place.gap : 0;
            m_instance.fixedLargest = std::max(m_instance.fixedLargest, magnitude(residual));
            m_instance.fixedSum += magnitude(residual);
            m_instance.fixedTwist += place.weight * residual;
        } else if (!isHopeless(place, fewest)) {
            m_origin.push_back(p);
            m_instance.places.push_back(place);
            m_fewest.push_back(fewest);
        }
    }
    m_pools.reserve(m_instance.places.size());
    for (std::size_t p = 0; p < m_instance.places.size(); ++p) {
        m_pools.emplace_back(m_instance, *m_reach, p);
        m_wholeBand = std::max(m_wholeBand, m_pools[p].wholeBand());
    }
}

bool Stages::isHopeless(const Place& place, int& fewest) const {
    fewest = m_reach->fewest(0, place.lo, place.hi);
    if (fewest > place.most) {
        return true;
    }
    if (m_reach->isExact()) {
        return false;
    }
    for (; fewest <= place.most; ++fewest) { // coarse buckets: see whether there is one
        if (anyStack(m_instance, *m_reach, place, fewest, m_stop)) {
            return false;
        }
    }
    return true;
}

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

Limits Stages::limitsFor(const Aim& aim) const {
    Limits limits;
    limits.shims = aim.shims;
    limits.largestResidual = aim.window;
    limits.leftOut = aim.leftOut;
    return limits;
}

/// Keeps a found plan if it is better than the best so far.
bool Stages::keep(const Columns& columns, const Found& found) {
    const std::int64_t largest = std::max(found.largest, m_instance.fixedLargest);
    const std::int64_t sum = found.sum + m_instance.fixedSum;
    if (m_haveBest) {
        const auto rank = [this](int served, int shims, std::int64_t l, std::int64_t t, std::int64_t s) {
            return std::make_tuple(-served, shims, m_instance.leastTwist ? t : l, s);
        };
        if (rank(found.served, found.shims, largest, found.twist, sum) >=
            rank(m_best.served, m_best.shims, m_best.largest, m_best.twist, m_best.sum)) {
            return false;
        }
    }
    m_haveBest = true;
    m_best.served = found.served;
    m_best.shims = found.shims;
    m_best.largest = largest;
    m_best.sum = sum;
    m_best.twist = found.twist;
    m_best.stacks.assign(columns.size(), std::nullopt);
    for (std::size_t p = 0; p < columns.size(); ++p) {
        if (found.column[p] >= 0) {
            const Column& c = columns[p][static_cast<std::size_t>(found.column[p])];
            m_best.stacks[p] = std::vector<Part>(c.parts, c.parts + c.partCount);
        }
    }
    return true;
}

Stages::Answer Stages::decideFromListed(const Aim& aim, std::int64_t steps, unsigned probe) {
    Columns columns = columnsFor(aim);
    price(columns, m_prices, {});
    sortColumns(columns, Cost::shims);
    Search search(m_instance, columns, m_prices, {}, m_stop);
    search.probe(probe);
    bool found = false;
    const Outcome outcome = search.run(limitsFor(aim), steps, [&](const Found& f, Limits&) {
        keep(columns, f);
        found = true;
        return false;
    });
    TR("  listed T=%d w=%ld U=%d steps=%ld/%ld -> %s\n", aim.shims, (long)aim.window, aim.leftOut, (long)search.steps(),
       (long)steps,
       found                           ? "yes"
       : outcome == Outcome::exhausted ? "no"
                                       : "gaveup");
    if (found) {
        return Answer::yes;
    }
    return outcome == Outcome::exhausted ? Answer::no : Answer::unknown;
}

Stages::Answer Stages::decide(const Aim& aim) {
    if (aim.shims < fewestInAll(aim.leftOut)) {
        return Answer::no;
    }
    // Where there are plenty, the stacks nearest to the gap usually do.
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const double expected = expectedStacks(p, m_fewest[p]);
        std::int64_t window = std::min(aim.window, m_pools[p].wholeBand());
        if (expected > plenty) {
            window = std::min(window, static_cast<std::int64_t>(static_cast<double>(window) * plenty / expected));
        }
        if (!extend(p, m_fewest[p], window)) {
            return Answer::unknown;
        }
    }
    bool listed = isListed(aim);
    Answer answer = decideFromListed(aim, firstSteps);
    if (answer == Answer::yes || (answer == Answer::no && listed) || stopped()) {
        return stopped() && answer != Answer::yes ? Answer::unknown : answer;
    }
    if (!listed) {
        const std::size_t before = candidatesListed();
        for (std::size_t p = 0; p < m_pools.size(); ++p) {
            int size = m_fewest[p];
            while (size < mostFor(p, aim) && expectedStacks(p, size + 1) < 4000) {
                ++size;
            }
            if (!extend(p, size, aim.window)) {
                return Answer::unknown;
            }
        }
        listed = isListed(aim);
        if (candidatesListed() > before) {
            answer = decideFromListed(aim, firstSteps);
        }
        if (answer == Answer::yes || (answer == Answer::no && listed) || stopped()) {
            return stopped() && answer != Answer::yes ? Answer::unknown : answer;
        }
    }
    return decideByPrices(aim);
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
    TR("  prices T=%d w=%ld U=%d bound=%.3f cols=%zu\n", aim.shims, (long)aim.window, aim.leftOut, (double)bound / (double)scale, market.offers.size());
    return bound;
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

/// The full treatment: prices until the bound settles it or stands still, then a search to the end over all stacks
/// that the prices leave possible.
Stages::Answer Stages::decideByPrices(const Aim& aim) {
    Listing listing = Listing::extended;
    for (int rounds = 200; listing == Listing::extended; rounds = 60) {
        const std::int64_t bound = raisePrices(aim, rounds);
        if (bound > scale * aim.shims) {
            m_shimsAtLeast = static_cast<int>(bound >= never ? m_instance.shims() + 1 : (bound + scale - 1) / scale);
            return Answer::no;
        }
        // Before more stacks are listed: are those that are enough?
        if (rounds == 200 && decideAtLength(aim, firstSteps, firstSteps) == Answer::yes) {
            return Answer::yes;
        }
        if (stopped()) {
            return Answer::unknown;
        }
        listing = listMore(aim);
    }
    const Answer answer = decideAtLength(aim, 4 * firstSteps, never);
    return answer == Answer::no && listing == Listing::noRoom ? Answer::unknown : answer;
}

/// A search to the end, and between whiles short tries at a plan: where plans are many but hard to come by, the one
/// never ends and the other is quick; where there is none, only the one can show it.
Stages::Answer Stages::decideAtLength(const Aim& aim, std::int64_t steps, std::int64_t mostSteps) {
    for (; steps <= mostSteps && !stopped(); steps *= 4) {
        for (unsigned probe = 0; probe <= probes; ++probe) {
            const Answer answer = decideFromListed(aim, probe == 0 ? steps : steps / 4, probe);
            if (answer != Answer::unknown) {
                return answer;
            }
        }
    }
    return Answer::unknown;
}

/// The same for what is minimised: closes the gap between `atLeast` and `best`, which `search` brings down when it
/// finds a plan of at most `most`. False if it was stopped.
bool Stages::settle(const Aim& aim, std::int64_t& atLeast, const std::int64_t& best, const Lower& search) {
    // First over the stacks that happen to be listed: that may be enough.
    for (std::int64_t steps = firstSteps; steps <= 4 * firstSteps && atLeast < best && !stopped(); steps *= 4) {
        const bool listed = isListed(aim);
        for (unsigned probe = 0; probe <= probes && atLeast < best && !stopped(); ++probe) {
            const std::int64_t before = best;
            const Outcome outcome = search(best - 1, probe == 0 ? steps : steps / 4, probe);
            if (outcome == Outcome::exhausted && listed) {
                atLeast = best;
            } else if (best < before) {
                probe = 0;
            }
        }
        if (listed) {
            break;
        }
    }
    if (atLeast == best || stopped()) {
        return atLeast == best;
    }
    if (!listAll(aim)) {
        return false;
    }
    std::int64_t steps = firstSteps;
    while (atLeast < best) {
        const std::int64_t most = atLeast + (best - 1 - atLeast) / 2;
        const std::int64_t before = best;
        bool exhausted = false;
        for (unsigned probe = 0; probe <= probes && !exhausted && best == before; ++probe) {
            exhausted = search(most, probe == 0 ? steps : steps / 4, probe) == Outcome::exhausted;
        }
        if (exhausted) {
            atLeast = std::min(best, most + 1);
        } else if (best == before) {
            steps *= 4;
        }
        if (stopped()) {
            return atLeast >= best;
        }
    }
    return true;
}

/// A first plan at once, by taking for the hardest place its first stack and never looking back.
void Stages::dive() {
    const Aim aim{m_instance.shims(), m_wholeBand, static_cast<int>(m_pools.size())};
    decideFromListed(aim, never);
}

void Stages::serveMost() {
    const int places = static_cast<int>(m_pools.size());
    const int kit = m_instance.shims();
    for (int leftOut = 0; leftOut <= places; ++leftOut) {
        m_leftOut = leftOut;
        m_prices = {};
        for (int shims = fewestInAll(leftOut); shims <= kit; ++shims) {
            m_fewestShims = shims;
            m_shimsAtLeast = shims;
            if (m_haveBest && m_best.served == places - leftOut && m_best.shims <= shims) {
                return;
            }
            const Answer answer = decide({shims, m_wholeBand, leftOut});
            if (answer == Answer::yes) {
                return;
            }
            if (answer == Answer::unknown) {
                m_proven = false;
                if (!m_haveBest) {
                    dive();
                }
                return;
            }
            shims = std::max(shims, m_shimsAtLeast - 1);
        }
    }
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
            m_proven = false;
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
        price(columns, m_prices, {});
        sortColumns(columns, Cost::shims);
        Search run(m_instance, columns, m_prices, {}, m_stop);
        run.probe(probe);
        Limits limits = limitsFor(aim);
        limits.twist = twist;
        const Outcome outcome = run.run(limits, steps, [&](const Found& f, Limits& now) {
            keep(columns, f);
            now.twist = f.twist - 1;
            return now.twist >= m_twistAtLeast;
        });
        TR("  twist<=%ld probe %u steps=%ld/%ld %s best=%ld\n", (long)twist, probe, (long)run.steps(), (long)steps,
           outcome == Outcome::found       ? "found"
           : outcome == Outcome::exhausted ? "exhausted"
                                           : "gaveup",
           (long)m_best.twist);
        return outcome;
    };
    if (m_best.twist == 0 || search(0, firstSteps, 0) == Outcome::found) {
        return;
    }
    if (isListed(aim)) {
        // What the residuals on offer allow, each place by itself.
        std::int64_t no = -1;
        std::int64_t maybe = m_best.twist;
        while (maybe - no > 1) {
            const std::int64_t middle = (no + maybe) / 2;
            (search(middle, 0, 0) == Outcome::exhausted ? no : maybe) = middle;
        }
        m_twistAtLeast = maybe;
    }
    m_proven = settle(aim, m_twistAtLeast, m_best.twist, search);
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

/// With least twist, only some sums of |residual| go together with the twist found, whatever the kit: raises the bound
/// to the next of these. (With an even number of caps, for one, the twist sum is odd just when the sum is.)
void Stages::liftSum() {
    std::int64_t width = 1;
    const std::int64_t sums = m_best.sum - m_instance.fixedSum + 1;
    for (const Place& p : m_instance.places) {
        if (!p.residualCounts || m_leftOut > 0) {
            return;
        }
        const std::int64_t extent = std::max(magnitude(p.gap - p.lo), magnitude(p.gap - p.hi));
        width += 2 * extent * magnitude(p.weight);
    }
    if (!m_instance.leastTwist || m_instance.places.empty() || width * sums > 100'000 || m_wholeBand > 64) {
        return;
    }
    const auto at = [width](std::int64_t sum, std::int64_t twist) {
        return static_cast<std::size_t>(sum * width + twist + width / 2);
    };
    std::vector<char> can(static_cast<std::size_t>(width * sums), 0);
    can[at(0, 0)] = 1;
    for (const Place& p : m_instance.places) {
        std::vector<char> next(can.size(), 0);
        for (std::int64_t r = p.gap - p.hi; r <= p.gap - p.lo; ++r) {
            const std::int64_t by = magnitude(r) * width + r * p.weight;
            const std::int64_t from = std::max<std::int64_t>(0, -by);
            const std::int64_t to = std::min<std::int64_t>(width * sums, width * sums - by);
            for (std::int64_t i = from; i < to; ++i) {
                const auto target = static_cast<std::size_t>(i + by);
                next[target] = static_cast<char>(next[target] | can[static_cast<std::size_t>(i)]);
            }
        }
        can.swap(next);
    }
    while (m_sumAtLeast < m_best.sum) {
        for (std::int64_t sign : {-1, 1}) {
            const std::int64_t twist = sign * m_best.twist - m_instance.fixedTwist;
            if (magnitude(twist) <= width / 2 && can[at(m_sumAtLeast - m_instance.fixedSum, twist)] != 0) {
                return;
            }
        }
        ++m_sumAtLeast;
    }
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
    liftSum();
    Prices prices;
    std::size_t pricedFor = 0;
    const auto search = [&](std::int64_t most, std::int64_t steps, unsigned probe) {
        Columns columns = columnsFor(aim);
        const std::size_t listed = candidatesListed();
        if (listed != pricedFor) {
            pricedFor = listed;
            const std::int64_t bound = boundSum(columns, aim, m_best.sum - m_instance.fixedSum - 1, prices);
            if (isListed(aim)) { // over an unfinished list the prices are good to search by, but bound nothing
                m_sumAtLeast = std::max(m_sumAtLeast, bound + m_instance.fixedSum);
                liftSum();
            }
            if (m_sumAtLeast >= m_best.sum) {
                return Outcome::exhausted;
            }
        }
        price(columns, m_prices, prices);
        sortColumns(columns, Cost::residuals);
        Limits limits = limitsFor(aim);
        limits.sum = most - m_instance.fixedSum;
        limits.twist = m_instance.leastTwist ? m_best.twist : never;
        Search run(m_instance, columns, m_prices, prices, m_stop);
        run.probe(probe);
        const Outcome outcome = run.run(limits, steps, [&](const Found& f, Limits& now) {
            keep(columns, f);
            now.sum = f.sum - 1;
            return now.sum + m_instance.fixedSum >= m_sumAtLeast;
        });
        TR("  sum<=%ld (at least %ld) probe %u steps=%ld/%ld %s best=%ld\n", (long)most, (long)m_sumAtLeast, probe,
           (long)run.steps(), (long)steps,
           outcome == Outcome::exhausted ? "exhausted"
           : outcome == Outcome::found   ? "found"
                                         : "gaveup",
           (long)m_best.sum);
        return outcome;
    };
    m_proven = settle(aim, m_sumAtLeast, m_best.sum, search);
}

/// A bound on the sum of |residual| over the open places, by prices that are left in `prices`; at most `target` + 1.
std::int64_t Stages::boundSum(const Columns& columns, const Aim& aim, std::int64_t target, Prices& prices) {
    Market market = marketOf(m_instance, columns, Cost::residuals, aim.leftOut);
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
    const std::int64_t bound = raiseBound(market, scale * target, 200, prices, m_stop);
    TR("  sum prices target=%ld start=%.3f bound=%.3f\n", (long)target, (double)best / (double)scale,
       (double)bound / (double)scale);
    return bound >= never ? target + 1 : std::min(target + 1, (bound + scale - 1) / scale);
}

Solution Stages::run() {
    m_sumAtLeast = m_instance.fixedSum;
    m_largestAtLeast = m_instance.fixedLargest;
    serveMost();
    if (m_proven) {
        if (m_instance.leastTwist) {
            shrinkTwist();
        } else {
            shrinkLargest();
        }
    }
    if (m_proven) {
        shrinkSum();
    }
    return finish();
}

/// Back to the places as given.
Solution Stages::finish() const {
    Solution out = m_best;
    out.stacks.assign(m_all.places.size(), std::nullopt);
    for (std::size_t p = 0; p < m_best.stacks.size(); ++p) {
        out.stacks[m_origin[p]] = m_best.stacks[p];
    }
    for (std::size_t p : m_bare) {
        out.stacks[p] = std::vector<Part>{};
    }
    if (m_best.stacks.empty()) {
        out.largest = m_instance.fixedLargest;
        out.sum = m_instance.fixedSum;
        out.twist = magnitude(m_instance.fixedTwist);
    }
    out.served += static_cast<int>(m_bare.size());
    out.proven = m_proven;
    out.mostServed = static_cast<int>(m_pools.size() + m_bare.size()) - m_leftOut;
    out.fewestShims = m_haveBest && m_proven ? out.shims : m_fewestShims;
    out.leastLargest = m_proven ? out.largest : m_largestAtLeast;
    out.leastSum = m_proven ? out.sum : m_sumAtLeast;
    out.leastTwist = m_proven ? out.twist : m_twistAtLeast;
    return out;
}

Solution solve(const Instance& instance, const Stop& stop) {
    return Stages(instance, stop).run();
}

} // namespace caprail::solver
