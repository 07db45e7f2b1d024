// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <numeric>
#include <shims/solver/neighbourhood.h>
#include <shims/solver/whole_division.h>

namespace caprail::solver {

namespace {
/// Steps by one guide before the next has its turn.
constexpr int stepsPerTurn = 40;
/// Classes looked at in one step; of larger kits as many are drawn by lot.
constexpr std::size_t mostClasses = 150;
constexpr std::size_t mostRuins = 4;
} // namespace

LargeNeighbourhoodSearch::LargeNeighbourhoodSearch(const Instance& instance, int mostServed, Incumbent& incumbent,
                                                   WorkClock& clock)
    : m_instance(instance), m_incumbent(incumbent), m_clock(clock), m_table(instance), m_firstServed(mostServed),
      m_mostServed(mostServed) {
    m_plan.stacks.resize(instance.seats.size());
    m_plan.residual.resize(instance.seats.size());
    m_plan.left = instance.count;
    // What is used up of the kit is its thickness; and where not even stacks of the most shims are thick enough unless
    // these are thicker than the rest, thick shims are worth more than their thickness.
    std::int64_t thickness = 0;
    for (std::size_t i = 0; i < instance.classes(); ++i) {
        thickness += instance.count[i] * instance.thickness[i];
    }
    const std::int64_t mean = thickness / std::max(1, instance.shims());
    const bool isShort = std::any_of(instance.seats.begin(), instance.seats.end(),
                                     [mean](const Seat& p) { return p.lo > p.most * mean; });
    for (const std::int64_t t : instance.thickness) {
        m_worth.push_back(isShort ? t * t / std::max<std::int64_t>(1, mean) : t);
    }
}

void LargeNeighbourhoodSearch::runUntil(std::int64_t work) {
    if (m_instance.seats.empty()) {
        return;
    }
    const std::int64_t began = m_clock.now();
    const std::int64_t before = m_work;
    const auto note = [&](Figures was) {
        m_work = before + m_clock.now() - began;
        if (m_incumbent.figures().rank(m_instance) < was.rank(m_instance)) {
            m_lastBetter = m_work;
        }
    };
    if (!m_isBegun) {
        const Figures was = m_incumbent.figures();
        m_random.seed(); // begun anew after a stop, it comes to the same
        for (const bool smallestFirst : {false, true}) {
            load(Stacks(m_instance.seats.size()));
            construct(smallestFirst);
        }
        m_isBegun = true;
        note(was);
    }
    constexpr Guide whileSeats[] = {Guide::seats, Guide::shims, Guide::seats, Guide::rank};
    constexpr Guide whileShims[] = {Guide::shims, Guide::shims, Guide::rank};
    while (m_clock.now() < work) {
        const Figures was = m_incumbent.figures();
        turn(was.served < m_mostServed   ? whileSeats[m_turns % std::size(whileSeats)]
             : was.shims > m_fewestShims ? whileShims[m_turns % std::size(whileShims)]
                                         : Guide::rank);
        ++m_turns;
        note(was);
    }
}

void LargeNeighbourhoodSearch::load(const Stacks& stacks) {
    m_plan.left = m_instance.count;
    m_plan.used = 0;
    m_window = never;
    for (std::size_t p = 0; p < stacks.size(); ++p) {
        m_plan.stacks[p].reset();
        if (stacks[p]) {
            serve(p, *stacks[p]);
        }
    }
}

/// Serves seat after seat with what is left; of all seats as many as may be, the smallest gaps first or last.
void LargeNeighbourhoodSearch::construct(bool smallestFirst) {
    std::vector<std::size_t> seats(m_instance.seats.size());
    std::iota(seats.begin(), seats.end(), std::size_t{0});
    std::stable_sort(seats.begin(), seats.end(),
                     [&](std::size_t a, std::size_t b) { return m_instance.seats[a].lo < m_instance.seats[b].lo; });
    const auto served = seats.begin() + std::min<std::ptrdiff_t>(m_firstServed, std::ssize(seats));
    if (!smallestFirst) {
        std::reverse(seats.begin(), served);
    }
    m_window = never;
    try {
        for (const std::size_t p : seats) {
            recreate(p, Guide::shims, true);
        }
    } catch (const Stopped&) {
        m_incumbent.offer(m_plan.stacks); // some seats are served
        throw;
    }
    m_incumbent.offer(m_plan.stacks);
}

/// Some steps from the best plan so far, or from one that is as good by what counts for this guide.
void LargeNeighbourhoodSearch::turn(Guide guide) {
    const Figures best = m_incumbent.figures();
    const Figures now = figures();
    if (now.served != best.served || now.shims != best.shims || guide == Guide::rank) {
        load(m_incumbent.stacks());
    }
    for (int i = 0; i < stepsPerTurn; ++i) {
        if (step(guide)) {
            m_incumbent.offer(m_plan.stacks);
        }
    }
}

/// One ruin and its recreation; true when the plan is better for it.
bool LargeNeighbourhoodSearch::step(Guide guide) {
    chooseRuins(guide);
    const Value before = valueOf(guide);
    std::vector<std::optional<std::vector<Part>>> were;
    for (const std::size_t p : m_ruins) {
        were.push_back(m_plan.stacks[p]);
        free(p);
    }
    bool isWhole = true;
    for (std::size_t i = 0; i < m_ruins.size() && isWhole; ++i) {
        isWhole = recreate(m_ruins[i], guide, i + 1 == m_ruins.size()) || guide == Guide::seats;
    }
    const Value after = valueOf(guide);
    if (isWhole && after <= before) {
        return after < before;
    }
    m_window = never; // what was there need not be within it
    for (const std::size_t p : m_ruins) {
        free(p);
    }
    for (std::size_t i = 0; i < m_ruins.size(); ++i) {
        if (were[i]) {
            serve(m_ruins[i], *were[i]);
        }
    }
    return false;
}

/// Some served seats by lot; where seats are to be won, with one that is not served; by rank, with one that stands
/// in the way of a smaller largest residual.
void LargeNeighbourhoodSearch::chooseRuins(Guide guide) {
    m_ruins.clear();
    m_window = never;
    std::vector<std::size_t> served;
    std::vector<std::size_t> others;
    std::int64_t largest = 0;
    for (std::size_t p = 0; p < m_plan.stacks.size(); ++p) {
        (m_plan.stacks[p] ? served : others).push_back(p);
        largest = std::max(largest, m_plan.stacks[p] ? magnitude(m_plan.residual[p]) : 0);
    }
    if (!others.empty() && (served.empty() || (guide == Guide::seats && !oneIn(4)) || oneIn(8))) {
        m_ruins.push_back(others[below(others.size())]);
    }
    if (guide == Guide::rank && m_instance.isBy(Objective::smallestResidual) && largest > m_instance.fixedLargest &&
        !oneIn(4)) {
        m_window = largest - 1;
        std::vector<std::size_t> worst;
        std::copy_if(served.begin(), served.end(), std::back_inserter(worst),
                     [&](std::size_t p) { return magnitude(m_plan.residual[p]) == largest; });
        m_ruins.push_back(worst[below(worst.size())]);
    }
    const std::size_t count = std::min(served.size(), 1 + below(std::min(mostRuins, served.size() + 1)));
    for (std::size_t tries = 0; m_ruins.size() < count + 1 && tries < 2 * count && !served.empty(); ++tries) {
        const std::size_t p = served[below(served.size())];
        if (std::find(m_ruins.begin(), m_ruins.end(), p) == m_ruins.end()) {
            m_ruins.push_back(p);
        }
    }
    for (std::size_t i = m_ruins.size(); i-- > 1;) {
        std::swap(m_ruins[i], m_ruins[below(i + 1)]);
    }
    if (guide == Guide::seats && !others.empty() && oneIn(2)) { // the largest gap has the hardest stack
        std::stable_sort(m_ruins.begin(), m_ruins.end(),
                         [&](std::size_t a, std::size_t b) { return m_instance.seats[a].lo > m_instance.seats[b].lo; });
    }
}

bool LargeNeighbourhoodSearch::recreate(std::size_t seat, Guide guide, bool isLast) {
    const Seat& at = m_instance.seats[seat];
    orderClasses(at.hi);
    m_table.fill(m_plan.left, m_order, at.hi, m_clock);
    for (int tries = m_table.step() == 1 ? 1 : 4; tries > 0; --tries) {
        const std::int64_t total = chooseTotal(seat, guide, isLast && tries % 2 == 1);
        if (total < 0) {
            return false;
        }
        m_table.take(total, m_stack);
        if (serve(seat, m_stack)) {
            return true;
        }
    }
    return false;
}

/// The total, in steps of the table, of the stack that the seat is to have; −1: there is none. The last seat of a
/// step has the best for the guide, the others leave some of it to chance.
std::int64_t LargeNeighbourhoodSearch::chooseTotal(std::size_t seat, Guide guide, bool isLast) {
    const Seat& at = m_instance.seats[seat];
    const std::int64_t step = m_table.step();
    const bool isNarrow = m_window < never && at.residualCounts;
    const std::int64_t lo = ceilDivide(isNarrow ? std::max(at.lo, at.gap - m_window) : at.lo, step);
    const std::int64_t hi = floorDivide(isNarrow ? std::min(at.hi, at.gap + m_window) : at.hi, step);
    int fewest = FewestShims::none;
    for (std::int64_t t = lo; t <= hi; ++t) {
        fewest = std::min(fewest, m_table.fewest(t));
    }
    if (fewest >= FewestShims::none || fewest > at.most) {
        return -1;
    }
    const bool byLowest = guide != Guide::rank && (isLast || oneIn(2));
    const bool byRank = guide == Guide::rank && (isLast || oneIn(2));
    const Figures others = byRank ? figures() : Figures{};
    const Forces otherForces = byRank ? forces() : Forces{};
    const std::int64_t otherTwist = byRank ? twistSum() : 0;
    const int most = std::min(at.most, guide == Guide::seats || (!isLast && oneIn(4)) ? fewest + 1 : fewest);
    std::int64_t best = -1;
    ByRank bestValue;
    std::size_t among = 0;
    for (std::int64_t t = lo; t <= hi; ++t) {
        if (m_table.fewest(t) > most) {
            continue;
        }
        if (byLowest) {
            return t;
        }
        if (!byRank) {
            best = oneIn(++among) ? t : best;
            continue;
        }
        const std::int64_t residual = at.residualCounts ? at.gap - t * step : 0;
        const ByRank value = rankOf(others, otherForces, otherTwist, at, residual);
        if (best < 0 || value < bestValue) {
            best = t;
            bestValue = value;
        }
    }
    return best;
}

/// The classes that there are shims of, in an order that says which of equal stacks is taken: thick shims first, thin
/// ones first, or any.
void LargeNeighbourhoodSearch::orderClasses(std::int64_t thickest) {
    m_order.clear();
    for (std::size_t i = 0; i < m_instance.classes(); ++i) {
        if (m_plan.left[i] > 0 && m_instance.thickness[i] <= thickest) {
            m_order.push_back(static_cast<std::uint16_t>(i));
        }
    }
    const std::size_t manner = below(3);
    if (m_order.size() > mostClasses || manner == 2) {
        for (std::size_t i = 0; i + 1 < m_order.size() && i < mostClasses; ++i) {
            std::swap(m_order[i], m_order[i + below(m_order.size() - i)]);
        }
        m_order.resize(std::min(m_order.size(), mostClasses));
        if (manner < 2) {
            std::sort(m_order.begin(), m_order.end());
        }
    }
    if (manner == 1) {
        std::reverse(m_order.begin(), m_order.end());
    }
}

} // namespace caprail::solver
