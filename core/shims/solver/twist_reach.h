// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <cstdint>
#include <shims/solver/columns.h>
#include <vector>

namespace caprail::solver {

/// What one open seat can still add to the twist sum.
struct TwistChoice {
    static constexpr int most = 64; ///< residuals counted one by one: lowest … lowest + 63
    std::int64_t weight = 0;
    std::int64_t leastTwist = 0;
    std::int64_t mostTwist = 0;
    std::uint64_t residuals = 0;             ///< bit r − lowest: residual r is on offer
    std::array<std::int64_t, most> cheapest; ///< its least residualCost; valid where the bit is set
    std::int64_t leastCost = 0;              ///< over all residuals
    bool mayBeLeftOut = false;
};

/// Whether the residuals on offer can bring the twist sum within its limit, each seat taken by itself: the set of all
/// sums that the seats can reach together is worked out seat by seat, and with it the least that each sum costs.
class TwistReach {
public:
    /// Looks up the span of residuals.
    explicit TwistReach(const Columns& columns);

    void start(TwistChoice& choice, std::int64_t weight, bool mayBeLeftOut) const;
    void offer(TwistChoice& choice, const Column& c) const {
        const std::int64_t twist = choice.weight * c.residual;
        choice.leastTwist = twist < choice.leastTwist ? twist : choice.leastTwist;
        choice.mostTwist = twist > choice.mostTwist ? twist : choice.mostTwist;
        if (m_countsOneByOne) {
            const auto bit = static_cast<std::size_t>(c.residual - m_lowest);
            const std::uint64_t mask = std::uint64_t{1} << bit;
            if ((choice.residuals & mask) == 0 || c.residualCost < choice.cheapest[bit]) {
                choice.cheapest[bit] = c.residualCost;
            }
            choice.residuals |= mask;
        }
    }

    /// `room`: how much the open seats may cost above the sum of their least costs (`never`: cost is no matter).
    bool canClose(std::int64_t twist, std::int64_t limit, const std::vector<const TwistChoice*>& choices,
                  std::int64_t room, WorkClock& clock);

private:
    bool byBits(std::int64_t least, std::int64_t width, std::int64_t twistLimit,
                const std::vector<const TwistChoice*>& choices, WorkClock& clock);
    bool byCost(std::int64_t least, std::int64_t width, std::int64_t twistLimit,
                const std::vector<const TwistChoice*>& choices, std::int64_t room, WorkClock& clock);

    std::int64_t m_lowest = 0;
    bool m_countsOneByOne = false;
    std::vector<std::uint64_t> m_bits;
    std::vector<std::uint64_t> m_shifted;
    std::vector<std::int32_t> m_cost;
    std::vector<std::int32_t> m_next;
};

} // namespace caprail::solver
