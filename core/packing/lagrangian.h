// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <functional>
#include <packing/work_clock.h>
#include <vector>

namespace caprail::packing {

// Packing from a limited supply: every seat wants one offer, an offer takes things of some classes, and of each class
// there are so many. Stacks of shims, pairs of bearing shells.

/// `count` things of one class, as part of an offer.
struct Part {
    std::uint16_t cls = 0;
    std::uint16_t count = 0;
    friend bool operator==(const Part&, const Part&) = default;
};

/// Larger than any sum of costs, small enough to add a few of.
inline constexpr std::int64_t never = std::int64_t{1} << 60;

/// One unit of cost, in fixed point: prices are whole multiples of 1/scale, so that every bound is exact integer
/// arithmetic and the same on any machine.
inline constexpr std::int64_t scale = std::int64_t{1} << 14;

/// Prices: what a thing of each class is worth to the other seats, and what using up one of the total number is worth.
/// All at least 0, in units of 1/scale.
struct Prices {
    std::vector<std::int64_t> ofClass;
    std::int64_t ofShim = 0;
};

/// An offer: its parts, the things in it, and its own cost, in units of 1/scale.
struct Offer {
    const Part* parts = nullptr;
    std::uint16_t partCount = 0;
    std::uint16_t size = 0;
    std::int64_t cost = 0;
};

/// What a bound is asked about.
struct Market {
    explicit Market(std::vector<int> of, WorkClock& bookedOn) : clock(&bookedOn), supply(std::move(of)) {}
    WorkClock* clock;               ///< on which each look at the offers is booked
    std::vector<int> supply;        ///< per class
    int shims = -1;                 ///< most things in all; −1: not limited, or the cost itself is their number
    std::vector<Offer> offers;      ///< seat by seat
    std::vector<std::size_t> begin; ///< of each seat's offers; and last their total number
    /// Offers that were not listed: at given prices, the least that one of a seat can cost. May be empty.
    std::function<std::vector<std::int64_t>(const Prices&)> unlisted;
    int leftOut = 0; ///< so many seats may stay unserved

    [[nodiscard]] std::size_t seats() const { return begin.size() - 1; }
};

/// Lagrangian lower bound on the cost of any plan: the limited supply of each class is dropped and paid for by prices
/// instead, so that every seat takes its cheapest offer by itself; the prices are raised where demand exceeds the
/// supply and lowered where it does not (subgradient steps). Any prices give a valid bound.
/// Held, Wolfe, Crowder, “Validation of subgradient optimization”, Mathematical Programming 6 (1974): the step rule;
/// Fisher, “The Lagrangian relaxation method for solving integer programming problems”, Management Science 27 (1981).
/// Both from memory.
/// Starts from `prices`, leaves the best ones found there, and returns the bound they give, times scale; `never` when
/// some seat has no offer at all and none may be left out. Ends as soon as the bound exceeds `target`.
std::int64_t raiseBound(const Market& market, std::int64_t target, int rounds, Prices& prices);

/// The bound that given prices make, without changing them.
std::int64_t boundAt(const Market& market, const Prices& prices);

/// What an offer costs with the prices of its parts (and of the total).
std::int64_t pricedCost(const Offer& offer, const Prices& prices);

} // namespace caprail::packing
