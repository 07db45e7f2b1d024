// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numeric>
#include <shims/solver/column_generation.h>
#include <shims/solver/linear_programme.h>

namespace caprail::solver {

namespace {
constexpr int mostRounds = 400;

/// What a seat without any stack is taken to cost: far more than the goal.
double costOfNone(std::int64_t goal) {
    return 40 * (std::abs(static_cast<double>(goal)) + static_cast<double>(scale));
}

/// Lets stacks join a programme that is solved for those that it has, round by round, until its prices make a bound
/// that exceeds the goal or none would pay any more. Gives the prices of the best bound, or else `best`.
Prices generate(LinearProgramme& programme, Prices best, const Market& market, std::int64_t target, StackPrices* all,
                const std::vector<StackPrices::Wanted>& wanted) {
    const double goal = static_cast<double>(target);
    double bestBound = -1e300;
    bool overOffers = all == nullptr || !market.offers.empty();
    for (int round = 0; round < mostRounds; ++round) {
        double bound = 0;
        bool goesOn = false;
        if (overOffers) {
            goesOn = programme.join(bound);
            overOffers = goesOn || all == nullptr;
        }
        if (!overOffers) {
            const Prices now = programme.prices();
            all->set(now, scale, *market.clock);
            bound = static_cast<double>(boundOverAll(market, now, *all, wanted));
            goesOn = programme.value() - bound > static_cast<double>(scale) / 32 && programme.join(*all, wanted);
        }
        if (bound > bestBound && (all == nullptr || !overOffers)) {
            bestBound = bound;
            best = programme.prices();
        }
        if (!goesOn || (bestBound > goal + 64) || !programme.solve()) {
            break;
        }
    }
    return best;
}
} // namespace

std::int64_t boundOverAll(const Market& market, const Prices& prices, const StackPrices& all,
                          const std::vector<StackPrices::Wanted>& wanted) {
    std::vector<std::int64_t> least;
    for (const StackPrices::Wanted& one : wanted) {
        least.push_back(all.least(one));
    }
    std::sort(least.begin(), least.end());
    std::int64_t bound = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(market.leftOut) < least.size(); ++i) {
        bound = std::min(never, bound + least[i]);
    }
    for (std::size_t c = 0; c < market.supply.size() && bound < never; ++c) {
        bound -= prices.ofClass[c] * market.supply[c];
    }
    return bound;
}

Prices linearPrices(const Market& market, std::int64_t target, StackPrices* all,
                    const std::vector<StackPrices::Wanted>& wanted) {
    std::vector<std::size_t> classes(market.supply.size());
    std::iota(classes.begin(), classes.end(), std::size_t{0});
    LinearProgramme programme(market, costOfNone(target), all == nullptr ? scarceClasses(market) : std::move(classes));
    Prices best = generate(programme, programme.prices(), market, target, all, wanted);
    if (all != nullptr) {
        all->set(best, scale, *market.clock);
    }
    return best;
}

Prices linearPricesFrom(const Prices& from, const Market& market, std::int64_t target) {
    LinearProgramme programme(market, costOfNone(target), scarceClasses(market));
    programme.joinBy(from);
    return programme.solve() ? generate(programme, from, market, target, nullptr, {}) : from;
}

} // namespace caprail::solver
