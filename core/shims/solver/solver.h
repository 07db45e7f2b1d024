// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

// The method
// ----------
// Choosing disjoint stacks is a packing problem: exact, but never by trying all there is. What makes it quick:
//
// 1. Classes. Shims of one thickness are alike, so a stack is a multiset of thicknesses, and all lengths are whole
//    multiples of one small unit (their greatest common divisor). A place whose gap is in band stays bare: fewer than
//    no shims there is not, and none is taken from the others (stages.cpp).
// 2. Reach (reach.h). One table says how few shims, all of a class or thinner ones, make a total. It gives the
//    fewest shims per place, shows what no stack can meet, and steers the listing of stacks past all dead ends.
// 3. Listing by need (pool.h, listing.cpp). The sum of the fewest shims per place is a first bound. A
//    plan of T shims in all can give one place at most T minus that bound more than its fewest; only stacks up to that
//    size are listed, thick to thin, the last two shims by two pointers. Where there are plenty, those nearest to the
//    gap are tried first, and mostly do.
// 4. Prices (column_generation.h, pricing.h). When the kit is short, shims get prices, and every place takes its
//    cheapest stack by itself: a Lagrangian bound on the number of shims. The best prices are those of the linear
//    programme over all stacks, found by generating stacks as they pay: a table over class, shims and total knows the
//    cheapest stack of every place without listing any. The same table then lists just those stacks that do not raise
//    the bound above the number of shims asked about: no plan can contain another. The programme is solved in floating
//    point, but only to suggest prices; they are rounded, and the bound that they make is worked out in whole numbers,
//    so exact. Where lengths are too fine for a table, prices are raised by subgradient steps (lagrangian.h), and
//    what an unlisted stack costs at least is read off the convex hull of the prices over the thickness.
// 5. Whole kits (kit_choice.h, partition.h, residual_table.h). Where a plan needs next to all of the kit, only
//    few choices of its shims add up to the gaps: they are counted, with the sums of residuals that they leave; no
//    choice, no plan. Those few are shared out by lot, which finds plans in a moment where there are many. And a table
//    over the sum of residuals, that of |residual| and the twist knows which of them go together at all.
// 6. Search (search.h). Depth first, always the place with the fewest stacks left; first every smallest stack of
//    that place, then “a larger one” as one branch. Every choice filters the stacks of all other places. A long search
//    gets prices at each node (node_bound.cpp) and remembers states that failed (transposition_table.h).
// 7. Proof and probe (decide.cpp). “No” takes a search to its end, “yes” only luck: long searches take turns
// with
//    short ones that follow the prices, each with its own shuffle of ties, and with lots drawn for whole kits. All of
//    them are rationed by stacks tried, not by the clock.
// 8. The aims in turn (stages.cpp, shrink.cpp). The number of places left out rises from 0, and with each
//    the number of shims from its bound, until a plan is found. Then the largest |residual| by halving; or the twist:
//    at every node the set of all twist sums that the residuals still on offer can reach is worked out as a bit set
//    (twist_reach.h), and with a limit on the sum of |residual| also what each twist costs at least. Last the sum of
//    |residual|, with prices of its own, in which running out of shims has a price too.
// 9. Ties. Places and classes stand in an order that depends on their figures only, every step is whole-number
//    arithmetic (or floating point in a fixed order, compiled without contraction), lots are drawn from a fixed seed,
//    and nothing depends on time unless `stop` says so: the first plan found that no other beats is the plan, the same
//    on any machine.
//
// Limits. At most 400 000 stacks are listed at a time, or 200 000 by price; tables are made up to 6 million entries. So
// the memory stays under 64 MiB whatever the case (tests count it), and a case that needs more than that is searched as
// far as it is listed and never called proven.

/// The plan of the open places, in the instance's units.
struct Solution {
    std::vector<std::optional<std::vector<Part>>> stacks; ///< per place; not set: left unserved
    int served = 0;
    int shims = 0;
    std::int64_t largest = 0; ///< with what is pinned
    std::int64_t sum = 0;     ///< with what is pinned
    std::int64_t twist = 0;   ///< |…| with what is pinned
    bool proven = false;
    /// No plan does better; each given that those before it are reached.
    int mostServed = 0;
    int fewestShims = 0;
    std::int64_t leastLargest = 0;
    std::int64_t leastSum = 0;
    std::int64_t leastTwist = 0;
};

/// Called between two askings of `stop` while there is a better plan than the last one that it took; what it is given
/// gives that plan.
using Better = std::function<void(const std::function<Solution()>&)>;

/// Places must be in a fixed order of the caller's (it is part of the rule that settles ties).
Solution solve(const Instance& instance, const Stop& stop, const Better& better = {});

} // namespace caprail::solver
