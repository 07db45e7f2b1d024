// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <shims/solver/work_clock.h>
#include <utility>
#include <vector>

namespace caprail::solver {

/// Prices on shims: what a shim of each class is worth to the other places, and what using up one of the total number
/// of shims is worth. All at least 0, in units of 1/scale.
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

/// A stack on offer: its parts, the shims in it, and its own cost, in units of 1/scale.
struct Offer {
    const Part* parts = nullptr;
    std::uint16_t partCount = 0;
    std::uint16_t size = 0;
    std::int64_t cost = 0;
};

/// What a bound is asked about: places that want one stack each, and the shims there are.
struct Market {
    Market(const Instance& of, WorkClock& bookedOn) : instance(&of), clock(&bookedOn), supply(of.count) {}
    const Instance* instance;
    WorkClock* clock;               ///< on which each look at the offers is booked
    std::vector<int> supply;        ///< per class
    int shims = -1;                 ///< most shims in all; −1: not limited, or the cost itself is their number
    std::vector<Offer> offers;      ///< place by place
    std::vector<std::size_t> begin; ///< of each place's offers; and last their total number
    std::vector<Unlisted> unlisted; ///< per place; may be empty (then all stacks are on offer)
    int leftOut = 0;                ///< so many places may stay unserved

    [[nodiscard]] std::size_t places() const { return begin.size() - 1; }
};

/// Lagrangian lower bound on the cost of any plan: the limited number of shims of each class is dropped and paid for
/// by prices instead, so that every place takes its cheapest stack by itself; the prices are raised where demand
/// exceeds the kit and lowered where it does not (subgradient steps). Any prices give a valid bound.
/// Held, Wolfe, Crowder, “Validation of subgradient optimization”, Mathematical Programming 6 (1974): the step rule
/// (from memory).
/// Starts from `prices`, leaves the best ones found there, and returns the bound they give, times scale; `never` when
/// some place has no stack at all and none may be left out. Stops as soon as the bound exceeds `target`.
std::int64_t raiseBound(const Market& market, std::int64_t target, int rounds, Prices& prices);

/// The bound that given prices make, without changing them.
std::int64_t boundAt(const Market& market, const Prices& prices);

/// What an offer costs with the prices of its shims (and of the total).
std::int64_t pricedCost(const Offer& offer, const Prices& prices);

/// Prices to start from when the kit is scarce: a shim is worth what its thickness is over that of the thinnest shim
/// still needed when the thickest are used first.
Prices startingPrices(const Instance& instance);

/// The same for the sum of |residual|, when there may be so many shims in all: those, taken from the thickest, leave so
/// much of the gaps unfilled.
Prices sumPrices(const Instance& instance, int shims);

} // namespace caprail::solver
