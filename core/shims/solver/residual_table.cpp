// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/residual_table.h>

namespace caprail::solver {

namespace {
constexpr std::int64_t mostWork = 20'000'000; ///< words touched while the table is made
} // namespace

ResidualTable::ResidualTable(const Instance& instance, std::int64_t window, std::int64_t mostSum, bool byTotal,
                             WorkClock& clock)
    : m_clock(clock), m_byTotal(byTotal), m_bySum(mostSum >= 0), m_mostSum(std::max<std::int64_t>(0, mostSum)),
      m_fixedTwist(instance.fixedTwist) {
    std::int64_t values = 0;
    for (const Seat& p : instance.seats) {
        const std::int64_t lo = std::max(p.gap - p.hi, -window);
        const std::int64_t hi = std::min(p.gap - p.lo, window);
        if (!p.residualCounts || lo > hi) {
            return;
        }
        values += hi - lo + 1;
        m_leastTotal += byTotal ? lo : 0;
        m_mostTotal += byTotal ? hi : 0;
        m_leastTwist += std::min(p.weight * lo, p.weight * hi);
        m_mostTwist += std::max(p.weight * lo, p.weight * hi);
    }
    m_words = (m_mostTwist - m_leastTwist) / 64 + 1;
    const std::int64_t cells = (m_mostTotal - m_leastTotal + 1) * (m_mostSum + 1);
    if (m_mostTotal - m_leastTotal > mostWork || m_mostSum > mostWork || m_words > mostWork || values > mostWork ||
        cells > mostWork || cells * m_words > mostWork || cells * m_words * values > mostWork) {
        return;
    }
    m_isKnown = true;
    m_bits.assign(static_cast<std::size_t>(cells * m_words), 0);
    // Totals and twists are kept as what is above the least; a seat not yet added stands at its least.
    m_bits[0] = 1;
    for (const Seat& p : instance.seats) {
        add(p, std::max(p.gap - p.hi, -window), std::min(p.gap - p.lo, window));
    }
}

void ResidualTable::add(const Seat& seat, std::int64_t lo, std::int64_t hi) {
    std::vector<std::uint64_t> next(m_bits.size(), 0);
    const std::int64_t totals = m_mostTotal - m_leastTotal + 1;
    const std::int64_t leastTwist = std::min(seat.weight * lo, seat.weight * hi);
    for (std::int64_t r = lo; r <= hi; ++r) {
        const std::int64_t byTotal = m_byTotal ? r - lo : 0;
        const std::int64_t bySum = m_bySum ? magnitude(r) : 0;
        const std::int64_t byTwist = seat.weight * r - leastTwist;
        const std::int64_t whole = byTwist / 64;
        const auto bits = static_cast<unsigned>(byTwist % 64);
        for (std::int64_t total = 0; total + byTotal < totals; ++total) {
            m_clock.book(m_words * (m_mostSum + 1));
            for (std::int64_t sum = 0; sum + bySum <= m_mostSum; ++sum) {
                const std::uint64_t* from =
                    &m_bits[static_cast<std::size_t>((total * (m_mostSum + 1) + sum) * m_words)];
                std::uint64_t* to =
                    &next[static_cast<std::size_t>(((total + byTotal) * (m_mostSum + 1) + sum + bySum) * m_words)];
                for (std::int64_t i = m_words - 1; i >= whole; --i) {
                    std::uint64_t v = from[i - whole] << bits;
                    if (bits != 0 && i > whole) {
                        v |= from[i - whole - 1] >> (64 - bits);
                    }
                    to[i] |= v;
                }
            }
        }
    }
    m_bits.swap(next);
}

const std::uint64_t* ResidualTable::cell(std::int64_t total, std::int64_t sum) const {
    const std::int64_t row = m_byTotal ? total - m_leastTotal : 0;
    if (row < 0 || row > m_mostTotal - m_leastTotal) {
        return nullptr;
    }
    return &m_bits[static_cast<std::size_t>((row * (m_mostSum + 1) + (m_bySum ? sum : 0)) * m_words)];
}

bool ResidualTable::has(std::int64_t total, std::int64_t sum, std::int64_t twist) const {
    const std::uint64_t* bits = cell(total, sum);
    for (const std::int64_t t : {twist, -twist}) {
        const std::int64_t bit = t - m_fixedTwist - m_leastTwist;
        if (bits != nullptr && bit >= 0 && bit <= m_mostTwist - m_leastTwist && ((bits[bit / 64] >> (bit % 64)) & 1U)) {
            return true;
        }
    }
    return false;
}

std::optional<std::int64_t> ResidualTable::leastTwist(const std::vector<std::int64_t>& totals) const {
    static const std::vector<std::int64_t> any{0};
    const std::int64_t most = std::max(magnitude(m_leastTwist + m_fixedTwist), magnitude(m_mostTwist + m_fixedTwist));
    for (std::int64_t twist = 0; twist <= most; ++twist) {
        for (const std::int64_t total : m_byTotal ? totals : any) {
            m_clock.book(4 * (m_mostSum + 1));
            for (std::int64_t sum = 0; sum <= m_mostSum; ++sum) {
                if (has(total, sum, twist)) {
                    return twist;
                }
            }
        }
    }
    return std::nullopt;
}

std::optional<std::int64_t> ResidualTable::leastSum(std::int64_t from, std::int64_t twist,
                                                    const std::vector<std::int64_t>& totals) const {
    static const std::vector<std::int64_t> any{0};
    for (std::int64_t sum = from; sum <= m_mostSum; ++sum) {
        for (const std::int64_t total : m_byTotal ? totals : any) {
            m_clock.book(4);
            if (has(total, sum, twist)) {
                return sum;
            }
        }
    }
    return std::nullopt;
}

} // namespace caprail::solver
