// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/open_places.h>
#include <shims/solver/pool.h>

namespace caprail::solver {

namespace {
/// Turns of the clock for one walk that looks whether a place is hopeless; some milliseconds.
constexpr int turnsPerPlace = 40;

} // namespace

std::int64_t OpenPlaces::bandOf(std::size_t place) const {
    const Place& p = m_instance.places[place];
    return p.residualCounts ? std::max(magnitude(p.gap - p.lo), magnitude(p.gap - p.hi)) : 0;
}

OpenPlaces::OpenPlaces(const Instance& all, WorkClock& clock) : m_all(all), m_clock(clock), m_instance(all) {
    m_instance.places.clear();
    std::int64_t kit = 0;
    for (std::size_t i = 0; i < all.classes(); ++i) {
        kit += all.count[i] * all.thickness[i];
    }
    std::int64_t largest = 0;
    for (const Place& p : all.places) { // a gap beyond the whole kit would only make the table coarse
        largest = std::max(largest, p.lo > kit ? 0 : p.hi);
    }
    std::size_t p = 0;
    try {
        m_reach = std::make_unique<Reach>(m_instance, std::min(largest, kit), clock);
        for (; p < all.places.size(); ++p) {
            sortOut(p);
        }
        m_isComplete = true;
    } catch (const Stopped&) {
        for (; p < all.places.size(); ++p) {
            keep(p, 1);
        }
    }
}

void OpenPlaces::sortOut(std::size_t p) {
    const Place& place = m_all.places[p];
    int fewest = 0;
    if (place.lo <= 0 && place.hi >= 0) {
        keep(p, 0);
    } else if (place.hi > 0 && !isHopeless(place, fewest)) {
        keep(p, fewest);
    }
}

void OpenPlaces::keep(std::size_t p, int fewest) {
    const Place& place = m_all.places[p];
    if (place.lo <= 0 && place.hi >= 0) {
        m_bare.push_back(p);
        const std::int64_t residual = place.residualCounts ? place.gap : 0;
        m_instance.fixedLargest = std::max(m_instance.fixedLargest, magnitude(residual));
        m_instance.fixedSum += magnitude(residual);
        m_instance.fixedTwist += place.weight * residual;
        return;
    }
    m_origin.push_back(p);
    m_instance.places.push_back(place);
    m_fewest.push_back(fewest);
    m_wholeBand = std::max(m_wholeBand, bandOf(m_instance.places.size() - 1));
}

bool OpenPlaces::isHopeless(const Place& place, int& fewest) {
    fewest = m_reach->fewest(0, place.lo, place.hi);
    if (fewest > place.most) {
        return true;
    }
    if (m_reach->isExact()) {
        return false;
    }
    // Coarse buckets: see whether there is one. Such a walk may go on for ever, so it only has a few turns; then the
    // place stays, with the fewest shims that were not ruled out.
    int turns = 0;
    WorkClock walk([&] {
        m_clock.book(WorkClock::between);
        return ++turns > turnsPerPlace;
    });
    try {
        for (; fewest <= place.most; ++fewest) {
            if (anyStack(m_instance, *m_reach, place, fewest, walk)) {
                return false;
            }
        }
    } catch (const Stopped&) {
        if (turns <= turnsPerPlace) {
            throw; // it was the clock itself
        }
        return false;
    }
    return true;
}

int OpenPlaces::fewestInAll(int leftOut) const {
    std::vector<int> sorted = m_fewest;
    std::sort(sorted.begin(), sorted.end());
    int sum = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(leftOut) < sorted.size(); ++i) {
        sum += sorted[i];
    }
    return sum;
}

int OpenPlaces::most(std::size_t place, const Question& question) const {
    return std::min(m_instance.places[place].most, m_fewest[place] + question.shims - fewestInAll(question.leftOut));
}

namespace {
std::vector<std::int64_t> leastTotals(const Instance& instance) {
    std::vector<std::int64_t> lows;
    for (const Place& p : instance.places) {
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

int OpenPlaces::leastLeftOut() const {
    const std::vector<std::int64_t> lows = leastTotals(m_instance);
    const int kit = m_instance.shims();
    std::int64_t sum = 0;
    std::int64_t room = 0; // shims in so many stacks
    int served = 0;
    int largestStack = 0;
    for (const Place& p : m_instance.places) {
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

int OpenPlaces::fewestByThickness(int leftOut) const {
    const std::vector<std::int64_t> lows = leastTotals(m_instance);
    std::int64_t sum = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(leftOut) < lows.size(); ++i) {
        sum += lows[i];
    }
    return thickestFor(m_instance, sum);
}

std::int64_t OpenPlaces::leastResidual(std::size_t place, int size) const {
    const Place& at = m_instance.places[place];
    if (!at.residualCounts) {
        return 0;
    }
    std::int64_t no = -1;
    std::int64_t yes = bandOf(place);
    while (yes - no > 1) {
        const std::int64_t middle = (no + yes) / 2;
        const std::int64_t lo = std::max(at.lo, at.gap - middle);
        const std::int64_t hi = std::min(at.hi, at.gap + middle);
        (lo <= hi && m_reach->fewest(0, lo, hi) <= size ? yes : no) = middle;
    }
    return yes;
}

std::int64_t OpenPlaces::unfilled(int shims) const {
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

Stacks OpenPlaces::asGiven(const Stacks& stacks) const {
    Stacks out(m_all.places.size());
    for (std::size_t p = 0; p < stacks.size(); ++p) {
        out[m_origin[p]] = stacks[p];
    }
    for (const std::size_t p : m_bare) {
        out[p] = std::vector<Part>{};
    }
    return out;
}

} // namespace caprail::solver
