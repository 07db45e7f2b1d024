// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver/pool.h>

namespace caprail::solver {

/// The enumeration: classes from thick to thin, so that each multiset comes once. A branch is entered only if the
/// reach table says that the thinner classes can complete it; the last two shims are found by two pointers.
struct Pool::Walk {
    const Instance& instance;
    const Reach& reach;
    const Seat& seat;
    std::size_t room;
    WorkClock& clock;
    std::vector<Candidate> candidates;
    std::vector<Part> parts;
    std::vector<Part> now;
    int size = 0;
    std::int64_t total = 0;
    bool overflow = false;

    void record() {
        Candidate c;
        c.first = static_cast<std::uint32_t>(parts.size());
        c.parts = static_cast<std::uint16_t>(now.size());
        c.size = static_cast<std::uint16_t>(size);
        c.residual = seat.residualCounts ? seat.gap - total : 0;
        candidates.push_back(c);
        parts.insert(parts.end(), now.begin(), now.end());
        clock.book(20);
        if (candidates.size() > room) {
            overflow = true;
        }
    }

    void push(std::size_t cls, int n) {
        now.push_back({static_cast<std::uint16_t>(cls), static_cast<std::uint16_t>(n)});
        size += n;
        total += instance.thickness[cls] * n;
    }
    void pop() {
        size -= now.back().count;
        total -= instance.thickness[now.back().cls] * now.back().count;
        now.pop_back();
    }

    /// Exactly one more shim, or none: those classes from `first` whose thickness lies in [lo, hi].
    void lastOne(std::size_t first, std::int64_t lo, std::int64_t hi) {
        const auto begin = instance.thickness.begin();
        auto it = std::lower_bound(begin + static_cast<std::ptrdiff_t>(first), instance.thickness.end(), hi,
                                   [](std::int64_t t, std::int64_t most) { return t > most; });
        for (; it != instance.thickness.end() && *it >= lo && !overflow; ++it) {
            push(static_cast<std::size_t>(it - begin), 1);
            record();
            pop();
        }
    }

    /// Exactly two more shims from class `first` on.
    void lastTwo(std::size_t first, std::int64_t lo, std::int64_t hi) {
        const auto& t = instance.thickness;
        if (first >= t.size()) {
            return;
        }
        // As the thicker one gets thinner, the thinner one must get thicker: `low` and `high` bracket it.
        std::size_t low = t.size();
        for (std::size_t a = first; a < t.size() && !overflow; ++a) {
            while (low > a && t[low - 1] + t[a] <= hi) {
                --low;
            }
            if (low < a) {
                low = a;
            }
            if (t[a] + t[a] < lo) {
                break;
            }
            clock.book(4);
            for (std::size_t b = std::max(low, a); b < t.size() && t[a] + t[b] >= lo && !overflow; ++b) {
                if (a == b) {
                    if (instance.count[a] >= 2) {
                        push(a, 2);
                        record();
                        pop();
                    }
                } else {
                    push(a, 1);
                    push(b, 1);
                    record();
                    pop();
                    pop();
                }
            }
        }
    }

    /// Every way to add 1 … `left` shims from class `first` on so that the total added lies in [lo, hi].
    void descend(std::size_t first, std::int64_t lo, std::int64_t hi, int left) {
        if (hi <= 0 || left <= 0 || overflow) {
            return;
        }
        if (left <= 2) {
            lastOne(first, lo, hi);
            if (left == 2) {
                lastTwo(first, lo, hi);
            }
            return;
        }
        for (std::size_t i = first; i < instance.classes() && !overflow; ++i) {
            const std::int64_t t = instance.thickness[i];
            if (t * left < lo) {
                return;
            }
            clock.book(20 + (hi - lo) / 8);
            const int most = std::min(instance.count[i], left);
            for (int n = 1; n <= most && t * n <= hi && !overflow; ++n) {
                const std::int64_t restLo = lo - t * n;
                const std::int64_t restHi = hi - t * n;
                const bool ends = restLo <= 0;
                const bool goesOn = left > n && restHi > 0 && reach.fewest(i + 1, restLo, restHi) <= left - n;
                if (!ends && !goesOn) {
                    continue;
                }
                push(i, n);
                if (ends) {
                    record();
                }
                if (goesOn) {
                    descend(i + 1, restLo, restHi, left - n);
                }
                pop();
            }
        }
    }
};

Pool::Pool(const Instance& instance, const Reach& reach, std::size_t seat)
    : m_instance(instance), m_reach(reach), m_seat(instance.seats[seat]),
      m_wholeBand(m_seat.residualCounts ? std::max(magnitude(m_seat.gap - m_seat.lo), magnitude(m_seat.gap - m_seat.hi))
                                        : 0) {}

bool Pool::extend(int size, std::int64_t window, std::size_t room, WorkClock& clock) {
    size = std::max(std::min(size, m_seat.most), m_size);
    window = std::max(std::min(window, m_wholeBand), m_window);
    if (size == m_size && window == m_window) {
        return true;
    }
    const std::int64_t lo = m_seat.residualCounts ? std::max(m_seat.lo, m_seat.gap - window) : m_seat.lo;
    const std::int64_t hi = m_seat.residualCounts ? std::min(m_seat.hi, m_seat.gap + window) : m_seat.hi;
    Walk walk{m_instance, m_reach, m_seat, room, clock, {}, {}, {}};
    if (lo <= hi && hi >= 0) {
        if (lo <= 0) {
            walk.record();
        }
        walk.descend(0, lo, hi, size);
    }
    if (walk.overflow) {
        return false;
    }
    m_candidates = std::move(walk.candidates);
    m_parts = std::move(walk.parts);
    m_size = size;
    m_window = window;
    return true;
}

std::optional<std::vector<Part>> anyStack(const Instance& instance, const Reach& reach, const Seat& seat, int size,
                                          WorkClock& clock) {
    if (seat.lo > seat.hi || seat.hi < 0) {
        return std::nullopt;
    }
    if (seat.lo <= 0) {
        return std::vector<Part>{};
    }
    Pool::Walk walk{instance, reach, seat, 0, clock, {}, {}, {}}; // with room for none it halts at the first
    walk.descend(0, seat.lo, seat.hi, std::min(size, seat.most));
    if (walk.candidates.empty()) {
        return std::nullopt;
    }
    const Candidate& c = walk.candidates.front();
    return std::vector<Part>(walk.parts.begin() + c.first, walk.parts.begin() + c.first + c.parts);
}

int Pool::smallestSize() const {
    int best = -1;
    for (const Candidate& c : m_candidates) {
        best = best < 0 || c.size < best ? c.size : best;
    }
    return best;
}

std::int64_t Pool::smallestResidual() const {
    std::int64_t best = -1;
    for (const Candidate& c : m_candidates) {
        best = best < 0 || magnitude(c.residual) < best ? magnitude(c.residual) : best;
    }
    return best;
}

} // namespace caprail::solver
