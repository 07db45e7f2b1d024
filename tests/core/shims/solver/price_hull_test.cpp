// SPDX-License-Identifier: GPL-3.0-or-later
/// The least cost of stacks that are not listed, held against every mixture of two thicknesses (by Carathéodory's
/// theorem no other mixture is cheaper on a line) and against every stack of so many shims.
#include <shims/solver/price_hull.h>

#include <gtest/gtest.h>
#include <random>

namespace caprail::solver {
namespace {

struct Priced {
    Instance instance; ///< thick to thin
    std::vector<std::int64_t> prices;
};

Priced draw(std::mt19937& random, std::size_t classes) {
    Priced drawn;
    std::int64_t thickness = 40;
    for (std::size_t i = 0; i < classes; ++i) {
        thickness -= 1 + static_cast<std::int64_t>(random() % 8);
        drawn.instance.thickness.push_back(thickness);
        drawn.instance.count.push_back(1);
        drawn.prices.push_back(static_cast<std::int64_t>(random() % 1000));
    }
    return drawn;
}

/// The cheapest mixture of n shims with this total, rounded down; `never` where there is none.
std::int64_t cheapestMixture(const Priced& p, int n, std::int64_t total) {
    std::int64_t best = never;
    for (std::size_t i = 0; i < p.prices.size(); ++i) {
        for (std::size_t j = i; j < p.prices.size(); ++j) {
            const std::int64_t thick = p.instance.thickness[i];
            const std::int64_t thin = p.instance.thickness[j];
            if (total > thick * n || total < thin * n) {
                continue;
            }
            if (thick == thin) {
                best = std::min(best, p.prices[i] * n);
                continue;
            }
            const std::int64_t above = (total - thin * n) * (p.prices[i] - p.prices[j]); // over thick − thin
            const std::int64_t step = thick - thin;
            best = std::min(best, p.prices[j] * n + (above - (above % step + step) % step) / step);
        }
    }
    return best;
}

/// The cheapest stack of n shims with a total from lo to hi, as many of a thickness as one likes.
std::int64_t cheapestStack(const Priced& p, int n, std::int64_t lo, std::int64_t hi, std::size_t from = 0) {
    if (n == 0) {
        return lo <= 0 && hi >= 0 ? 0 : never;
    }
    std::int64_t best = never;
    for (std::size_t i = from; i < p.prices.size(); ++i) {
        const std::int64_t t = p.instance.thickness[i];
        const std::int64_t rest = cheapestStack(p, n - 1, lo - t, hi - t, i);
        best = rest == never ? best : std::min(best, rest + p.prices[i] + scale);
    }
    return best;
}

TEST(PriceHull, gives_the_cheapest_mixture_and_so_no_more_than_any_stack_costs) {
    std::mt19937 random(20);
    for (int tried = 0; tried < 60; ++tried) {
        const Priced drawn = draw(random, 1 + tried % 5);
        const PriceHull hull(drawn.instance, drawn.prices);
        for (int n = 1; n <= 3; ++n) {
            for (std::int64_t lo = 0; lo <= 120; lo += 7) {
                for (const std::int64_t width : {0, 1, 6, 30}) {
                    const std::int64_t hi = lo + width;
                    std::int64_t mixture = never;
                    for (std::int64_t total = lo; total <= hi; ++total) {
                        mixture = std::min(mixture, cheapestMixture(drawn, n, total));
                    }
                    const std::int64_t least = hull.leastCost(n, lo, hi);
                    ASSERT_EQ(least, mixture == never ? never : mixture + scale * n)
                        << n << " shims, total " << lo << " to " << hi << ", draw " << tried;
                    ASSERT_LE(least, cheapestStack(drawn, n, lo, hi));
                }
            }
        }
    }
}

TEST(PriceHull, of_several_numbers_of_shims_gives_the_least) {
    std::mt19937 random(21);
    for (int tried = 0; tried < 40; ++tried) {
        const Priced drawn = draw(random, 4);
        const PriceHull hull(drawn.instance, drawn.prices);
        for (int fewest = 0; fewest < 4; ++fewest) {
            for (int most = 0; most < 5; ++most) {
                std::int64_t least = never;
                for (int n = fewest; n <= most; ++n) {
                    least = std::min(least, hull.leastCost(n, 35, 50));
                }
                EXPECT_EQ(hull.leastCost({fewest, most, 35, 50}), least)
                    << fewest << " to " << most << ", draw " << tried;
            }
        }
    }
}

TEST(PriceHull, knows_that_nothing_is_made_of_nothing) {
    const PriceHull empty(Instance(), {});
    EXPECT_EQ(empty.leastCost(2, 0, 100), never);
    EXPECT_EQ(empty.leastCost(0, 0, 100), 0);
    EXPECT_EQ(empty.leastCost(0, 1, 100), never);
    EXPECT_EQ(empty.leastCost(0, -5, -1), never);
}

} // namespace
} // namespace caprail::solver
