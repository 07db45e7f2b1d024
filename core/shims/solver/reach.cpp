// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver/reach.h>

namespace caprail::solver {

namespace {
constexpr std::int64_t mostReachEntries = 6'000'000;

/// to[s] = min(to[s], from[s − shift] + extra), kept plain so that the compiler can vectorise it.
void relax(std::uint8_t* to, const std::uint8_t* from, std::int64_t shift, std::int64_t width, int extra) {
    const auto add = static_cast<std::uint8_t>(extra);
    for (std::int64_t s = shift; s < width; ++s) {
        const std::uint8_t was = from[s - shift];
        const auto sum = static_cast<std::uint8_t>(was + add);
        const std::uint8_t capped = sum < was ? std::uint8_t{255} : sum;
        to[s] = to[s] < capped ? to[s] : capped;
    }
}
} // namespace

Reach::Reach(const Instance& instance, std::int64_t largest, WorkClock& clock) {
    largest = std::max<std::int64_t>(largest, 0);
    const std::int64_t buckets =
        std::min(mostBuckets, mostReachEntries / static_cast<std::int64_t>(instance.classes() + 1));
    m_bucket = largest / std::max<std::int64_t>(1, buckets) + 1;
    m_width = largest / m_bucket + 1;
    m_most = instance.shims();
    const std::size_t classes = instance.classes();
    m_table.assign((classes + 1) * static_cast<std::size_t>(m_width), std::uint8_t{none});
    m_table[classes * static_cast<std::size_t>(m_width)] = 0;
    for (std::size_t i = classes; i-- > 0;) {
        std::uint8_t* row = &m_table[i * static_cast<std::size_t>(m_width)];
        const std::uint8_t* thinner = row + m_width;
        std::copy(thinner, thinner + m_width, row);
        // Coarse buckets book each thickness rounded down; `fewest` allows for what that loses.
        const std::int64_t step = instance.thickness[i] / m_bucket;
        const int copies = std::min(instance.count[i], none - 1);
        for (int n = 1; n <= copies && step * n < m_width; ++n) {
            clock.book(m_width / 8);
            relax(row, thinner, step * n, m_width, n);
        }
    }
}

int Reach::fewest(std::size_t first, std::int64_t lo, std::int64_t hi) const {
    if (hi < 0) {
        return none;
    }
    const std::uint8_t* row = &m_table[first * static_cast<std::size_t>(m_width)];
    const std::int64_t to = std::min(hi / m_bucket, m_width - 1);
    const std::int64_t from = std::max<std::int64_t>(lo, 0) / m_bucket;
    int best = none;
    if (m_bucket == 1) {
        for (std::int64_t s = from; s <= to; ++s) {
            best = std::min<int>(best, row[s]);
        }
        return best;
    }
    // Rounding down loses less than one bucket per shim, so a total in bucket `from` may be booked up to n lower.
    for (std::int64_t s = to; s >= 0; --s) {
        const std::int64_t lost = from - s;
        if (lost >= best || lost > m_most) {
            break;
        }
        if (row[s] != none) {
            best = std::min(best, std::max<int>(row[s], static_cast<int>(lost)));
        }
    }
    return best;
}

} // namespace caprail::solver
