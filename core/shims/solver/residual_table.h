// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// Which twist sums, sums of |residual| and sums of residuals go together, each seat free to take any residual in its
/// band, whatever the kit. (With an even number of caps, for one, the twist sum is odd just when the sum of the
/// residuals is.) A table of bits over the twist for each pair of sums, worked out seat by seat.
class ResidualTable {
public:
    /// All seats served, |residual| ≤ `window`; of the sums of |residual| those up to `mostSum` are told apart (−1:
    /// none are). With `byTotal` the sums of residuals are told apart too. What is pinned is left out but for the
    /// twist.
    ResidualTable(const Instance& instance, std::int64_t window, std::int64_t mostSum, bool byTotal, WorkClock& clock);

    /// False when the table would be too large; then nothing is known.
    [[nodiscard]] bool isKnown() const { return m_isKnown; }

    /// The least |twist| with the sum of residuals among `totals` (rising; not looked at unless `byTotal`), if any.
    [[nodiscard]] std::optional<std::int64_t> leastTwist(const std::vector<std::int64_t>& totals) const;
    /// The least sum of |residual| from `from` on that goes with a twist of ±`twist`, if any is in the table.
    [[nodiscard]] std::optional<std::int64_t> leastSum(std::int64_t from, std::int64_t twist,
                                                       const std::vector<std::int64_t>& totals) const;

private:
    [[nodiscard]] const std::uint64_t* cell(std::int64_t total, std::int64_t sum) const;
    [[nodiscard]] bool has(std::int64_t total, std::int64_t sum, std::int64_t twist) const;
    void add(const Seat& seat, std::int64_t lo, std::int64_t hi);
    WorkClock& m_clock;

    bool m_isKnown = false;
    bool m_byTotal = false;
    bool m_bySum = false;
    std::int64_t m_leastTotal = 0;
    std::int64_t m_mostTotal = 0;
    std::int64_t m_mostSum = 0;
    std::int64_t m_leastTwist = 0; ///< of the open seats; bit 0
    std::int64_t m_mostTwist = 0;
    std::int64_t m_fixedTwist = 0;
    std::int64_t m_words = 0;
    std::vector<std::uint64_t> m_bits; ///< [total][sum][twist]
};

} // namespace caprail::solver
