// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/columns.h>
#include <tuple>

namespace caprail::solver {

Market marketOf(const Instance& instance, const Columns& columns, Cost cost, int leftOut, WorkClock& clock) {
    Market market(instance.count, clock);
    market.leftOut = leftOut;
    for (const auto& list : columns) {
        market.begin.push_back(market.offers.size());
        for (const Column& c : list) {
            clock.bookStep(static_cast<std::size_t>(&c - list.data()), list.size(), 25);
            market.offers.push_back(offerOf(c, cost));
        }
    }
    market.begin.push_back(market.offers.size());
    return market;
}

void price(Columns& columns, const Prices& forShims, const Prices& forResiduals, WorkClock& clock) {
    for (auto& list : columns) {
        for (Column& c : list) {
            clock.bookStep(static_cast<std::size_t>(&c - list.data()), list.size(), 10);
            const Offer asShims = offerOf(c, Cost::shims);
            const Offer asResidual = offerOf(c, Cost::residuals);
            c.shimCost = forShims.ofClass.empty() ? asShims.cost : pricedCost(asShims, forShims);
            c.residualCost = forResiduals.ofClass.empty() ? asResidual.cost : pricedCost(asResidual, forResiduals);
        }
    }
}

std::int64_t worthOfKit(const Instance& instance, const Prices& prices, int shimLimit) {
    std::int64_t worth = prices.ofShim * shimLimit;
    for (std::size_t i = 0; i < prices.ofClass.size(); ++i) {
        worth += prices.ofClass[i] * instance.count[i];
    }
    return worth;
}

void sortColumns(Columns& columns, Cost first, WorkClock& clock) {
    for (auto& list : columns) {
        std::stable_sort(list.begin(), list.end(), [first, &clock](const Column& a, const Column& b) {
            clock.book(6); // of a long list the sorting alone outlasts a deadline
            const auto key = [first](const Column& c) {
                return first == Cost::shims ? std::make_tuple(c.shimCost, magnitude(c.residual))
                                            : std::make_tuple(c.residualCost, c.shimCost);
            };
            return key(a) < key(b);
        });
    }
}

} // namespace caprail::solver
