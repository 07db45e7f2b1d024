// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <utility>
#include <vector>

namespace caprail::solver {

/// Stacks that were not listed: of `fewest` … `most` shims with a total in [lo, hi]. fewest > most: there are none.
struct Unlisted {
    int fewest = 1;
    int most = 0;
    std::int64_t lo = 0;
    std::int64_t hi = 0;
};

/// The least that an unlisted stack can cost (scale per shim plus the prices of its shims), without listing it: n
/// shims of mean thickness t̄ cost at least n times the lower convex hull of the prices, taken at t̄.
class PriceHull {
public:
    PriceHull(const Instance& instance, const std::vector<std::int64_t>& prices);
    /// `never` if no stack of that many shims can have such a total.
    [[nodiscard]] std::int64_t leastCost(const Unlisted& unlisted) const;
    /// Same for exactly n shims.
    [[nodiscard]] std::int64_t leastCost(int n, std::int64_t lo, std::int64_t hi) const;

private:
    [[nodiscard]] std::int64_t at(int n, std::int64_t total) const;
    std::vector<std::pair<std::int64_t, std::int64_t>> m_hull; ///< (thickness, price), by rising thickness
};

/// Prices to start from when the kit is scarce: a shim is worth what its thickness is over that of the thinnest shim
/// still needed when the thickest are used first.
Prices startingPrices(const Instance& instance);

/// The same for the sum of |residual|, when there may be so many shims in all: those, taken from the thickest, leave so
/// much of the gaps unfilled.
Prices sumPrices(const Instance& instance, int shims);

} // namespace caprail::solver
