// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// How few shims reach a total thickness: a table over (first class allowed, total), built by one pass per shim.
/// It prunes the enumeration of stacks so that nearly every step leads to a stack.
///
/// Totals are counted in buckets. While the largest total fits the table the bucket is one unit and every answer is
/// exact; for finer units several share a bucket and the answer is a lower bound: it may allow what cannot be done,
/// never forbid what can.
class Reach {
public:
    /// `largest`: the largest total that will be asked for.
    Reach(const Instance& instance, std::int64_t largest, WorkClock& clock);

    /// Fewest shims, all from class `first` on (so as thick as that or thinner), whose total lies in [lo, hi];
    /// or a lower bound on it. 255 stands for “none”.
    [[nodiscard]] int fewest(std::size_t first, std::int64_t lo, std::int64_t hi) const;
    [[nodiscard]] bool isExact() const { return m_bucket == 1; }

    static constexpr int none = 255;
    /// Totals below this are told apart one by one, unless the kit has more than some thousand thicknesses.
    static constexpr std::int64_t mostBuckets = 8192;

private:
    std::int64_t m_bucket = 1;
    std::int64_t m_width = 0; ///< buckets 0 … m_width−1
    int m_most = 0;           ///< shims in the kit, for the rounding slack of coarse buckets
    std::vector<std::uint8_t> m_table;
};

} // namespace caprail::solver
