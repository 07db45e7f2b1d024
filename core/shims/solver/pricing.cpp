// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/pricing.h>

namespace caprail::solver {

namespace {
constexpr std::int64_t mostEntries = 6'000'000;
constexpr std::int32_t none = 1 << 30;

/// to[s] = min(to[s], from[s − shift] + extra), kept plain so that the compiler can vectorise it.
void relax(std::int32_t* to, const std::int32_t* from, std::size_t shift, std::size_t width, std::int32_t extra) {
    for (std::size_t s = shift; s < width; ++s) {
        const std::int32_t sum = from[s - shift] + extra;
        to[s] = to[s] < sum ? to[s] : sum;
    }
}
} // namespace

/// What the listing of one seat carries along.
struct StackPrices::Walk {
    std::size_t room;
    Listed& out;
    std::vector<Part> now;
    int size;
    std::int64_t residual;
    WorkClock& clock;
};

bool StackPrices::canBe(const Instance& instance, int mostShims, std::int64_t mostTotal) {
    return mostShims < 64 && mostTotal < 100'000 &&
           static_cast<std::int64_t>(instance.classes() + 1) * (mostShims + 1) * (mostTotal + 1) <= mostEntries;
}

StackPrices::StackPrices(const Instance& instance, int mostShims, std::int64_t mostTotal, WorkClock& clock)
    : m_instance(instance), m_mostShims(mostShims), m_width(static_cast<std::size_t>(mostTotal + 1)),
      m_cost(instance.classes(), 0) {
    // Fresh memory is dear: row by row, so that the clock is looked at meanwhile.
    const std::size_t rows = (instance.classes() + 1) * static_cast<std::size_t>(mostShims + 1);
    m_table.reserve(rows * m_width);
    for (std::size_t i = 0; i < rows; ++i) {
        clock.book(static_cast<std::int64_t>(m_width));
        m_table.insert(m_table.end(), m_width, none);
    }
}

void StackPrices::set(const Prices& prices, std::int64_t perShim, WorkClock& clock) {
    const std::size_t classes = m_instance.classes();
    // A price above this is cut to it, which can only lower a bound.
    const std::int64_t dearest = none / 2 / (m_mostShims + 1);
    std::fill(row(classes, 0), row(classes, 0) + m_width * static_cast<std::size_t>(m_mostShims + 1), none);
    row(classes, 0)[0] = 0;
    for (std::size_t i = classes; i-- > 0;) {
        m_cost[i] = static_cast<std::int32_t>(std::min(dearest, perShim + prices.ofClass[i] + prices.ofShim));
        const auto t = static_cast<std::size_t>(m_instance.thickness[i]);
        for (int n = 0; n <= m_mostShims; ++n) {
            clock.book(static_cast<std::int64_t>(m_width) * (1 + std::min(n, m_instance.count[i])) / 2);
            std::int32_t* to = row(i, n);
            std::copy(row(i + 1, n), row(i + 1, n) + m_width, to);
            for (int k = 1; k <= std::min(n, m_instance.count[i]) && t * static_cast<std::size_t>(k) < m_width; ++k) {
                relax(to, row(i + 1, n - k), t * static_cast<std::size_t>(k), m_width, k * m_cost[i]);
            }
        }
    }
}

std::int64_t StackPrices::least(const Wanted& wanted) const {
    std::int32_t best = none;
    for (int n = 0; n <= std::min(wanted.most, m_mostShims); ++n) {
        const std::int32_t* costs = row(0, n);
        for (std::int64_t s = std::max<std::int64_t>(0, wanted.lo); s <= wanted.hi; ++s) {
            best = std::min(best, costs[s]);
        }
    }
    return best >= none / 2 ? never : best;
}

std::vector<Part> StackPrices::cheapest(const Wanted& wanted) const {
    std::int32_t best = none / 2;
    int n = -1;
    std::int64_t total = 0;
    for (int k = 0; k <= std::min(wanted.most, m_mostShims); ++k) {
        for (std::int64_t s = std::max<std::int64_t>(0, wanted.lo); s <= wanted.hi; ++s) {
            if (row(0, k)[s] < best) {
                best = row(0, k)[s];
                n = k;
                total = s;
            }
        }
    }
    std::vector<Part> parts;
    for (std::size_t i = 0; n > 0; ++i) {
        const std::int32_t cost = row(i, n)[total];
        for (int k = 0; k <= std::min(n, m_instance.count[i]); ++k) {
            const std::int64_t rest = total - k * m_instance.thickness[i];
            if (rest >= 0 && row(i + 1, n - k)[rest] + k * m_cost[i] == cost) {
                if (k > 0) {
                    parts.push_back({static_cast<std::uint16_t>(i), static_cast<std::uint16_t>(k)});
                }
                n -= k;
                total = rest;
                break;
            }
        }
    }
    return parts;
}

bool StackPrices::walk(std::size_t cls, int shims, std::int64_t total, std::int64_t budget, Walk& w) const {
    if (shims == 0) {
        if (w.out.candidates.size() >= w.room) {
            return false;
        }
        w.out.candidates.push_back({static_cast<std::uint32_t>(w.out.parts.size()),
                                    static_cast<std::uint16_t>(w.now.size()), static_cast<std::uint16_t>(w.size),
                                    w.residual});
        w.out.parts.insert(w.out.parts.end(), w.now.begin(), w.now.end());
        return true;
    }
    for (std::size_t i = cls; i < m_instance.classes() && row(i, shims)[total] <= budget; ++i) {
        w.clock.book(10);
        for (int k = 1; k <= std::min(shims, m_instance.count[i]); ++k) {
            const std::int64_t rest = total - k * m_instance.thickness[i];
            const std::int64_t left = budget - k * static_cast<std::int64_t>(m_cost[i]);
            if (rest < 0 || left < 0) {
                break;
            }
            if (row(i + 1, shims - k)[rest] <= left) {
                w.now.push_back({static_cast<std::uint16_t>(i), static_cast<std::uint16_t>(k)});
                const bool ok = walk(i + 1, shims - k, rest, left, w);
                w.now.pop_back();
                if (!ok) {
                    return false;
                }
            }
        }
    }
    return true;
}

bool StackPrices::list(const Wanted& wanted, std::int64_t limit, std::int64_t gap, std::size_t room, Listed& out,
                       WorkClock& clock) const {
    limit = std::min<std::int64_t>(limit, none / 2 - 1);
    for (int n = 0; n <= std::min(wanted.most, m_mostShims); ++n) {
        for (std::int64_t s = std::max<std::int64_t>(0, wanted.lo); s <= wanted.hi; ++s) {
            if (row(0, n)[s] > limit) {
                continue;
            }
            Walk w{room, out, {}, n, gap - s, clock};
            if (!walk(0, n, s, limit, w)) {
                return false;
            }
        }
    }
    return true;
}

} // namespace caprail::solver
