// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <shims/solver/pricing.h>
#include <vector>

namespace caprail::solver {

/// The prices that give the best bound there is over the stacks on offer: those of the linear programme in which a
/// seat may take a bit of this stack and a bit of that one. Revised primal simplex with a dense inverse, in which a
/// stack joins the programme only when its price says that it would pay (Dantzig, Wolfe, “Decomposition principle for
/// linear programs”, Operations Research 8 (1960); from memory). Prices may be off by rounding: any prices bound, see
/// raiseBound, and whole numbers are made of them before they are used. Plain double arithmetic in a fixed order,
/// compiled without contraction: the same on any machine.
/// With `all`, stacks that are not on offer join as well: those that it finds for what each seat wants (the market's
/// cost is then the number of shims, and its bound that over all stacks; on return the table is set to the prices).
/// Stops early once the bound exceeds `target` (times scale). What a seat without any stack costs is taken as far more
/// than that.
Prices linearPrices(const Market& market, std::int64_t target, StackPrices* all = nullptr,
                    const std::vector<StackPrices::Wanted>& wanted = {});

/// The same over the stacks on offer, begun with those that are cheapest by the prices `from`: at a node of a search
/// the prices of the node before are near the mark, and most of the rounds are spared.
Prices linearPricesFrom(const Prices& from, const Market& market, std::int64_t target);

/// The bound that the prices make when every seat may have any stack that it wants; `all` must be set to them.
std::int64_t boundOverAll(const Market& market, const Prices& prices, const StackPrices& all,
                          const std::vector<StackPrices::Wanted>& wanted);

} // namespace caprail::solver
