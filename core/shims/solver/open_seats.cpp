// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/forces.h>
#include <shims/solver/open_seats.h>
#include <shims/solver/pool.h>

namespace caprail::solver {

namespace {
/// Turns of the clock for one walk that looks whether a seat is hopeless; some milliseconds.
constexpr int turnsPerSeat = 40;

} // namespace

std::int64_t OpenSeats::bandOf(std::size_t seat) const {
    const Seat& p = m_instance.seats[seat];
    return p.residualCounts ? std::max(magnitude(p.gap - p.lo), magnitude(p.gap - p.hi)) : 0;
}

OpenSeats::OpenSeats(const Instance& all, WorkClock& clock) : m_all(all), m_clock(clock), m_instance(all) {
    m_instance.seats.clear();
    std::int64_t kit = 0;
    for (std::size_t i = 0; i < all.classes(); ++i) {
        kit += all.count[i] * all.thickness[i];
    }
    std::int64_t largest = 0;
    for (const Seat& p : all.seats) { // a gap beyond the whole kit would only make the table coarse
        largest = std::max(largest, p.lo > kit ? 0 : p.hi);
    }
    std::size_t p = 0;
    try {
        m_reach = std::make_unique<Reach>(m_instance, std::min(largest, kit), clock);
        for (; p < all.seats.size(); ++p) {
            sortOut(p);
        }
        m_isComplete = true;
    } catch (const Stopped&) {
        for (; p < all.seats.size(); ++p) {
            keep(p, 1);
        }
    }
}

void OpenSeats::sortOut(std::size_t p) {
    const Seat& seat = m_all.seats[p];
    int fewest = 0;
    if (seat.lo <= 0 && seat.hi >= 0) {
        keep(p, 0);
    } else if (seat.hi > 0 && !isHopeless(seat, fewest)) {
        keep(p, fewest);
    }
}

void OpenSeats::keep(std::size_t p, int fewest) {
    const Seat& seat = m_all.seats[p];
    if (seat.lo <= 0 && seat.hi >= 0) {
        m_bare.push_back(p);
        const std::int64_t residual = seat.residualCounts ? seat.gap : 0;
        m_instance.fixedLargest = std::max(m_instance.fixedLargest, magnitude(residual));
        m_instance.fixedSum += magnitude(residual);
        m_instance.fixedTwist += seat.weight * residual;
        addTo(m_instance.fixedLoad, seat, residual);
        return;
    }
    m_origin.push_back(p);
    m_instance.seats.push_back(seat);
    m_fewest.push_back(fewest);
    m_wholeBand = std::max(m_wholeBand, bandOf(m_instance.seats.size() - 1));
}

bool OpenSeats::isHopeless(const Seat& seat, int& fewest) {
    fewest = m_reach->fewest(0, seat.lo, seat.hi);
    if (fewest > seat.most) {
        return true;
    }
    if (m_reach->isExact()) {
        return false;
    }
    // Coarse buckets: see whether there is one. Such a walk may go on for ever, so it only has a few turns; then the
    // seat stays, with the fewest shims that were not ruled out.
    int turns = 0;
    WorkClock walk([&] {
        m_clock.book(WorkClock::between);
        return ++turns > turnsPerSeat;
    });
    try {
        for (; fewest <= seat.most; ++fewest) {
            if (anyStack(m_instance, *m_reach, seat, fewest, walk)) {
                return false;
            }
        }
    } catch (const Stopped&) {
        if (turns <= turnsPerSeat) {
            throw; // it was the clock itself
        }
        return false;
    }
    return true;
}

int OpenSeats::fewestInAll(int leftOut) const {
    std::vector<int> sorted = m_fewest;
    std::sort(sorted.begin(), sorted.end());
    int sum = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(leftOut) < sorted.size(); ++i) {
        sum += sorted[i];
    }
    return sum;
}

int OpenSeats::most(std::size_t seat, const Question& question) const {
    return std::min(m_instance.seats[seat].most, m_fewest[seat] + question.shims - fewestInAll(question.leftOut));
}

namespace {
std::vector<std::int64_t> leastTotals(const Instance& instance) {
    std::vector<std::int64_t> lows;
    for (const Seat& p : instance.seats) {
        lows.push_back(p.lo);
    }
    std::sort(lows.begin(), lows.end());
    return lows;
}

/// How many of the thickest shims make so much together; more than there are if all of them do not.
int thickestFor(const Instance& instance, std::int64_t total) {
    int shims = 0;
    for (std::size_t i = 0; i < instance.classes(); ++i) {
        const std::int64_t t = instance.thickness[i];
        const std::int64_t wanted = total <= 0 ? 0 : (total + t - 1) / t;
        const auto n = static_cast<int>(std::min<std::int64_t>(wanted, instance.count[i]));
        shims += n;
        total -= n * t;
    }
    return total > 0 ? shims + 1 : shims;
}
} // namespace

int OpenSeats::leastLeftOut() const {
    const std::vector<std::int64_t> lows = leastTotals(m_instance);
    const int kit = m_instance.shims();
    std::int64_t sum = 0;
    std::int64_t room = 0; // shims in so many stacks
    int served = 0;
    int largestStack = 0;
    for (const Seat& p : m_instance.seats) {
        largestStack = std::max(largestStack, p.most);
    }
    for (const std::int64_t low : lows) {
        sum += low;
        room += largestStack;
        if (thickestFor(m_instance, sum) > std::min<std::int64_t>(kit, room)) {
            break;
        }
        ++served;
    }
    return static_cast<int>(lows.size()) - served;
}

int OpenSeats::fewestByThickness(int leftOut) const {
    const std::vector<std::int64_t> lows = leastTotals(m_instance);
    std::int64_t sum = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(leftOut) < lows.size(); ++i) {
        sum += lows[i];
    }
    return thickestFor(m_instance, sum);
}

std::int64_t OpenSeats::leastResidual(std::size_t seat, int size) const {
    const Seat& at = m_instance.seats[seat];
    if (!at.residualCounts) {
        return 0;
    }
    std::int64_t no = -1;
    std::int64_t yes = bandOf(seat);
    while (yes - no > 1) {
        const std::int64_t middle = (no + yes) / 2;
        const std::int64_t lo = std::max(at.lo, at.gap - middle);
        const std::int64_t hi = std::min(at.hi, at.gap + middle);
        (lo <= hi && m_reach->fewest(0, lo, hi) <= size ? yes : no) = middle;
    }
    return yes;
}

std::int64_t OpenSeats::unfilled(int shims) const {
    std::int64_t rest = 0;
    for (const Seat& p : m_instance.seats) {
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

Stacks OpenSeats::asGiven(const Stacks& stacks) const {
    Stacks out(m_all.seats.size());
    for (std::size_t p = 0; p < stacks.size(); ++p) {
        out[m_origin[p]] = stacks[p];
    }
    for (const std::size_t p : m_bare) {
        out[p] = std::vector<Part>{};
    }
    return out;
}

} // namespace caprail::solver
