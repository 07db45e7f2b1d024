// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bit>
#include <shims/solver/partition.h>
#include <shims/solver/residual_table.h>
#include <shims/solver/whole_kits.h>

namespace caprail::solver {

namespace {
/// Kits that are shared out in turn.
constexpr std::size_t mostKits = 256;
/// With fewer plans to be expected than two to this power, lots are not drawn for long; with fewer than one, never.
constexpr std::int64_t plentyOfPlans = 4;

/// About 256 · log2 x, in whole numbers: straight between powers of two.
std::int64_t logarithm(std::int64_t x) {
    const auto u = static_cast<std::uint64_t>(std::max<std::int64_t>(1, x));
    const std::int64_t power = 63 - std::countl_zero(u);
    return 256 * power + static_cast<std::int64_t>(((u << 8) >> power) - 256);
}

/// About how many ways there are to share out a kit within the limits, as 256 · log2: all ways to hand out its shims,
/// times the odds that each stack but the last is right by chance.
std::int64_t waysToShare(const Instance& instance, const WholeKit& kit, const Limits& limits) {
    const auto seats = static_cast<std::int64_t>(instance.seats.size());
    std::int64_t ways = 0;
    std::int64_t shims = 0;
    for (const int count : kit.count) {
        for (int n = 1; n <= count; ++n) {
            ways += logarithm(++shims) - logarithm(n);
        }
    }
    for (std::int64_t p = 0; p < seats; ++p) {
        for (std::int64_t n = 1; n <= (shims + p) / seats; ++n) {
            ways -= logarithm(n);
        }
    }
    const std::int64_t span = instance.thickness.front() - instance.thickness.back();
    std::int64_t widest = 0;
    for (const Seat& p : instance.seats) {
        std::int64_t width = std::min(p.hi - p.lo, 2 * limits.largestResidual) + 1;
        width = limits.sum < never ? std::min(width, 2 * limits.sum / seats + 1) : width;
        widest = std::max(widest, width);
        ways += std::min<std::int64_t>(0, logarithm(width) - logarithm(span + span / 3 + 1));
    }
    return ways - std::min<std::int64_t>(0, logarithm(widest) - logarithm(span + span / 3 + 1)) -
           (limits.twist < never ? 6 * 256 : 0);
}
} // namespace

/// The kits that a plan within the limits can use to the last shim, where all seats are to be served and no plan has
/// fewer shims than the limit (so that one within it has just so many).
std::optional<KitChoice> WholeKits::choiceFor(const Limits& limits, int fewestShims) const {
    if (limits.leftOut > 0 || limits.shims != fewestShims || m_instance.seats.empty()) {
        return std::nullopt;
    }
    std::int64_t gaps = 0;
    std::int64_t least = 0; // sum of all residuals
    std::int64_t most = 0;
    for (const Seat& p : m_instance.seats) {
        if (!p.residualCounts) {
            return std::nullopt;
        }
        gaps += p.gap;
        least += std::max(p.gap - p.hi, -limits.largestResidual);
        most += std::min(p.gap - p.lo, limits.largestResidual);
    }
    least = std::max(least, -limits.sum);
    most = std::min(most, limits.sum);
    KitChoice choice(m_instance, limits.shims, gaps - most, gaps - least, m_clock);
    return choice.isTight() ? std::optional(std::move(choice)) : std::nullopt;
}

/// The values that the sum of all residuals can have within the limits, rising; nothing if it can be most anything.
std::optional<std::vector<std::int64_t>> WholeKits::sumsOfResiduals(const Limits& limits, int fewestShims) const {
    const auto choice = choiceFor(limits, fewestShims);
    if (!choice) {
        return std::nullopt;
    }
    std::int64_t gaps = 0;
    for (const Seat& p : m_instance.seats) {
        gaps += p.gap;
    }
    std::vector<std::int64_t> sums;
    for (const std::int64_t total : choice->totals()) {
        sums.push_back(gaps - total);
    }
    std::reverse(sums.begin(), sums.end());
    return sums;
}

/// Those first that fill the gaps best.
Answer WholeKits::decide(const Limits& limits, int fewestShims, std::int64_t steps) {
    const auto choice = choiceFor(limits, fewestShims);
    if (!choice) {
        return Answer::unknown;
    }
    const std::vector<std::int64_t> totals = choice->totals();
    if (totals.empty()) {
        return Answer::no;
    }
    if (steps == 0) {
        return Answer::unknown;
    }
    std::int64_t gaps = 0;
    for (const Seat& p : m_instance.seats) {
        gaps += p.gap;
    }
    std::vector<std::int64_t> byOffset = totals;
    std::stable_sort(byOffset.begin(), byOffset.end(),
                     [gaps](std::int64_t a, std::int64_t b) { return magnitude(gaps - a) < magnitude(gaps - b); });
    std::vector<WholeKit> kits;
    for (const std::int64_t total : byOffset) {
        if (kits.size() < mostKits) {
            auto more = choice->list(total, total, mostKits - kits.size(), m_clock);
            kits.insert(kits.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
        }
    }
    const std::int64_t ways = waysToShare(m_instance, kits.front(), limits);
    if (ways < 0) {
        return Answer::unknown;
    }
    Partition partition(m_instance, limits, m_clock);
    const auto stacks = partition.find(kits, ways > 256 * plentyOfPlans ? steps : steps / 16);
    if (!stacks) {
        return Answer::unknown;
    }
    m_incumbent.offer({stacks->begin(), stacks->end()});
    return Answer::yes;
}

std::int64_t WholeKits::leastTwist(const Limits& limits, int fewestShims) const {
    const auto sums = sumsOfResiduals(limits, fewestShims);
    ResidualTable table(m_instance, limits.largestResidual, -1, sums.has_value(), m_clock);
    const auto least = limits.leftOut == 0 && table.isKnown()
                           ? table.leastTwist(sums.value_or(std::vector<std::int64_t>{}))
                           : std::nullopt;
    return least.value_or(0);
}

std::int64_t WholeKits::leastSum(const Limits& limits, int fewestShims, std::int64_t atLeast) const {
    const auto sums = sumsOfResiduals(limits, fewestShims);
    const std::int64_t best = m_incumbent.figures().sum;
    std::int64_t least = atLeast;
    if (limits.leftOut > 0) {
        return least;
    }
    if (sums) {
        std::int64_t nearest = never;
        for (const std::int64_t sum : *sums) {
            nearest = std::min(nearest, magnitude(sum));
        }
        least = std::max(least, nearest + m_instance.fixedSum);
    }
    if (limits.twist >= never) {
        return least;
    }
    ResidualTable table(m_instance, limits.largestResidual, best - m_instance.fixedSum, sums.has_value(), m_clock);
    if (!table.isKnown()) {
        return least;
    }
    const auto together =
        table.leastSum(least - m_instance.fixedSum, limits.twist, sums.value_or(std::vector<std::int64_t>{}));
    return together ? *together + m_instance.fixedSum : best;
}

} // namespace caprail::solver
