// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/twist_reach.h>

namespace caprail::solver {

namespace {
constexpr std::int64_t widestTable = 16'384; ///< of the tables of sums; a wider span is judged by its ends alone
constexpr std::int32_t unreachable = 1 << 29;
constexpr std::int64_t coarse = 256; ///< costs are counted in these, rounded down, so as to fit 32 bits
} // namespace

TwistReach::TwistReach(const Columns& columns) {
    std::int64_t highest = 0;
    bool any = false;
    for (const auto& list : columns) {
        for (const Column& c : list) {
            m_lowest = any ? std::min(m_lowest, c.residual) : c.residual;
            highest = any ? std::max(highest, c.residual) : c.residual;
            any = true;
        }
    }
    m_countsOneByOne = highest - m_lowest < TwistChoice::most;
}

void TwistReach::start(TwistChoice& choice, std::int64_t weight, bool mayBeLeftOut) const {
    choice.weight = weight;
    choice.leastTwist = mayBeLeftOut ? 0 : never;
    choice.mostTwist = mayBeLeftOut ? 0 : -never;
    choice.residuals = 0;
    choice.mayBeLeftOut = mayBeLeftOut;
}

bool TwistReach::canClose(std::int64_t twist, std::int64_t limit, const std::vector<const TwistChoice*>& choices,
                          std::int64_t room, WorkClock& clock) {
    std::int64_t least = twist;
    std::int64_t most = twist;
    for (const TwistChoice* c : choices) {
        least += c->leastTwist;
        most += c->mostTwist;
    }
    if (least > limit || most < -limit) {
        return false;
    }
    const std::int64_t width = most - least + 1;
    if (!m_countsOneByOne || width > widestTable || choices.empty()) {
        return true;
    }
    return room < never ? byCost(least, width, limit, choices, room, clock)
                        : byBits(least, width, limit, choices, clock);
}

bool TwistReach::byBits(std::int64_t least, std::int64_t width, std::int64_t twistLimit,
                        const std::vector<const TwistChoice*>& choices, WorkClock& clock) {
    const auto words = static_cast<std::size_t>(width / 64 + 1);
    m_bits.assign(words, 0);
    m_bits[0] = 1; // bit s − least: the sum s can be reached
    for (const TwistChoice* c : choices) {
        m_shifted.assign(words, 0);
        const auto join = [&](std::int64_t by) {
            const auto whole = static_cast<std::size_t>(by / 64);
            const auto bits = static_cast<unsigned>(by % 64);
            clock.book(static_cast<std::int64_t>(words));
            for (std::size_t i = words; i-- > whole;) {
                std::uint64_t v = m_bits[i - whole] << bits;
                if (bits != 0 && i > whole) {
                    v |= m_bits[i - whole - 1] >> (64 - bits);
                }
                m_shifted[i] |= v;
            }
        };
        for (std::uint64_t rest = c->residuals; rest != 0; rest &= rest - 1) {
            join(c->weight * (m_lowest + __builtin_ctzll(rest)) - c->leastTwist);
        }
        if (c->mayBeLeftOut) {
            join(-c->leastTwist);
        }
        m_bits.swap(m_shifted);
    }
    const std::int64_t from = std::max<std::int64_t>(0, -twistLimit - least);
    const std::int64_t to = std::min(width - 1, twistLimit - least);
    for (std::int64_t s = from; s <= to; ++s) {
        if ((m_bits[static_cast<std::size_t>(s / 64)] >> (s % 64)) & 1U) {
            return true;
        }
    }
    return false;
}

bool TwistReach::byCost(std::int64_t least, std::int64_t width, std::int64_t twistLimit,
                        const std::vector<const TwistChoice*>& choices, std::int64_t room, WorkClock& clock) {
    const auto n = static_cast<std::size_t>(width);
    const auto cap = static_cast<std::int32_t>(std::min<std::int64_t>(room / coarse, unreachable / 2));
    m_cost.assign(n, unreachable);
    m_cost[0] = 0; // at s − least: what the sum s costs at least
    std::size_t used = 1;
    for (const TwistChoice* c : choices) {
        m_next.assign(n, unreachable);
        const auto join = [&](std::int64_t by, std::int64_t cost) {
            const std::int64_t extra = std::max<std::int64_t>(0, cost) / coarse;
            if (extra > cap) {
                return;
            }
            const auto add = static_cast<std::int32_t>(extra);
            clock.book(static_cast<std::int64_t>(used) / 2);
            std::int32_t* to = m_next.data() + by;
            const std::int32_t* from = m_cost.data();
            for (std::size_t i = 0; i < used; ++i) {
                const std::int32_t v = from[i] + add;
                to[i] = to[i] < v ? to[i] : v;
            }
        };
        for (std::uint64_t rest = c->residuals; rest != 0; rest &= rest - 1) {
            const auto bit = static_cast<std::size_t>(__builtin_ctzll(rest));
            join(c->weight * (m_lowest + static_cast<std::int64_t>(bit)) - c->leastTwist,
                 c->cheapest[bit] - c->leastCost);
        }
        if (c->mayBeLeftOut) {
            join(-c->leastTwist, 0);
        }
        used += static_cast<std::size_t>(c->mostTwist - c->leastTwist);
        m_cost.swap(m_next);
    }
    const std::int64_t from = std::max<std::int64_t>(0, -twistLimit - least);
    const std::int64_t to = std::min(width - 1, twistLimit - least);
    for (std::int64_t s = from; s <= to; ++s) {
        if (m_cost[static_cast<std::size_t>(s)] <= cap) {
            return true;
        }
    }
    return false;
}

} // namespace caprail::solver
