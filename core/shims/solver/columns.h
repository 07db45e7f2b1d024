// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// A stack as the search sees it: its parts, and what it costs by each of the two counts, prices included.
struct Column {
    const Part* parts = nullptr;
    std::uint16_t partCount = 0;
    std::uint16_t size = 0;
    std::int64_t residual = 0;
    std::int64_t shimCost = 0;     ///< scale·size + prices
    std::int64_t residualCost = 0; ///< scale·|residual| + prices
};
using Columns = std::vector<std::vector<Column>>; ///< per seat

/// What is minimised.
enum class Cost { shims, residuals };

/// The column as an offer to the bound.
inline Offer offerOf(const Column& c, Cost cost) {
    return {c.parts, c.partCount, c.size, cost == Cost::shims ? scale * c.size : scale * magnitude(c.residual)};
}

/// The market of all columns, with the whole kit as supply.
Market marketOf(const Instance& instance, const Columns& columns, Cost cost, int leftOut, WorkClock& clock);

/// Writes the priced costs into the columns (empty `ofClass`: that price is 0).
void price(Columns& columns, const Prices& forShims, const Prices& forResiduals, WorkClock& clock);

/// Σ price × number in the kit, + the price of a shim × shimLimit: the priced costs of a whole plan exceed its true
/// cost by at most this.
std::int64_t worthOfKit(const Instance& instance, const Prices& prices, int shimLimit);

/// Cheapest first by the one cost, then by the other, else in the order of listing.
void sortColumns(Columns& columns, Cost first, WorkClock& clock);

} // namespace caprail::solver
