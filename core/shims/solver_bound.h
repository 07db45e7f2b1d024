// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver_instance.h>
#include <vector>

namespace caprail::solver {

/// A stack as the bound and the search see it: its parts, and what it costs by each of the two counts.
struct Column {
    const Part* parts = nullptr;
    std::uint16_t partCount = 0;
    std::uint16_t size = 0;
    std::int64_t residual = 0;
    std::int64_t shimCost = 0;     ///< scale·size + prices, set by `price`
    std::int64_t residualCost = 0; ///< scale·|residual| + prices, set by `price`
};
using Columns = std::vector<std::vector<Column>>; ///< per place

/// Prices on shims: what a shim of each class is worth to the other positions, and what using up one of the total
/// number of shims is worth. All at least 0, in units of 1/scale.
struct Prices {
    std::vector<std::int64_t> ofClass;
    std::int64_t ofShim = 0;
};

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

/// What a bound run is about.
struct BoundTask {
    const Instance& instance;
    const Columns& columns;
    const std::vector<Unlisted>& unlisted; ///< per place
    bool costIsResidual = false;           ///< bound the sum of |residual| instead of the number of shims
    int leftOut = 0;                       ///< so many places may stay unserved
    int shimLimit = 0;                     ///< with costIsResidual: most shims in all
    std::int64_t target = 0;               ///< stop once the bound exceeds this
    int rounds = 150;
};

/// Lagrangian lower bound on the cost of any plan: the limited number of shims of each class is dropped and paid for
/// by prices instead, so that every place takes its cheapest stack by itself; the prices are raised where demand
/// exceeds the kit and lowered where it does not (subgradient steps). Any prices give a valid bound.
/// Held, Wolfe, Crowder, “Validation of subgradient optimization”, Mathematical Programming 6 (1974): the step rule
/// (from memory).
/// Starts from `prices`, leaves the best ones found there, and returns the bound they give, times scale; `never` when
/// some place has no stack at all and none may be left out.
std::int64_t raiseBound(const BoundTask& task, Prices& prices, const Stop& stop);

/// Prices to start from when the kit is scarce: a shim is worth what its thickness is over that of the thinnest shim
/// still needed when the thickest are used first.
Prices startingPrices(const Instance& instance);

/// Writes the priced costs into the columns, for the search: by number of shims with one set of prices, and by
/// residual with another (empty `ofClass`: all prices 0).
void price(Columns& columns, const Prices& forShims, const Prices& forResidual);

/// Σ price × number in the kit (and × shimLimit): what the priced costs of a whole plan exceed its true cost by, at
/// most.
std::int64_t worthOfKit(const Instance& instance, const Prices& prices, int shimLimit);

} // namespace caprail::solver
