// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver_bound.h>
#include <shims/solver_instance.h>

namespace caprail::solver {

/// The prices that give the best bound there is over the stacks on offer: those of the linear programme in which a
/// place may take a bit of this stack and a bit of that one. Revised primal simplex with a dense inverse, in which a
/// stack joins the programme only when its price says that it would pay (Dantzig, Wolfe, “Decomposition principle for
/// linear programs”, Operations Research 8 (1960); from memory). Prices may be off by rounding: any prices bound, see
/// raiseBound, and whole numbers are made of them before they are used. Plain double arithmetic in a fixed order,
/// compiled without contraction: the same on any machine.
/// Stops early once the bound over the offers exceeds `target` (times scale). What a place without any stack costs is
/// taken as far more than that.
Prices linearPrices(const Market& market, std::int64_t target, const Stop& stop);

} // namespace caprail::solver
