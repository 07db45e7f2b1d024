// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/callout_lanes.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace caprail {

namespace {

struct Span {
    double from = 0;
    double to = 0;
};

/// Middles for boxes of one row in their order; none when the row is too short.
std::optional<std::vector<double>> placeRow(const std::vector<double>& wanted, const std::vector<double>& extents,
                                            double lo, double hi, double gap) {
    const std::size_t n = wanted.size();
    // Shift every box by the room that those before it take: then "no overlap" reads "not decreasing".
    std::vector<double> taken(n, 0);
    for (std::size_t i = 1; i < n; ++i) {
        taken[i] = taken[i - 1] + (extents[i - 1] + extents[i]) / 2 + gap;
    }
    const double first = lo + (n == 0 ? 0 : extents.front() / 2);
    const double last = hi - (n == 0 ? 0 : extents.back() / 2 + taken.back());
    if (first > last) {
        return std::nullopt;
    }
    struct Pool {
        double sum = 0;
        std::size_t count = 0;
        [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<Pool> pools;
    for (std::size_t i = 0; i < n; ++i) {
        pools.push_back({wanted[i] - taken[i], 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const Pool merged = pools.back();
            pools.pop_back();
            pools.back().sum += merged.sum;
            pools.back().count += merged.count;
        }
    }
    std::vector<double> middles;
    for (const Pool& pool : pools) {
        for (std::size_t i = 0; i < pool.count; ++i) {
            middles.push_back(std::clamp(pool.mean(), first, last) + taken[middles.size()]);
        }
    }
    return middles;
}

/// The stretches of [lo, hi] that no box covers, with `margin` kept from each box.
std::vector<Span> freeSpans(std::vector<Span> covered, double lo, double hi, double margin) {
    std::sort(covered.begin(), covered.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
    std::vector<Span> list;
    double at = lo;
    for (const Span& span : covered) {
        if (span.from - margin >= at) {
            list.push_back({at, span.from - margin});
        }
        at = std::max(at, span.to + margin);
    }
    if (at <= hi) {
        list.push_back({at, hi});
    }
    return list;
}

std::optional<double> nearestFree(const std::vector<Span>& spans, double wanted, double atLeast) {
    std::optional<double> best;
    for (const Span& span : spans) {
        const double from = std::max(span.from, atLeast);
        if (from > span.to) {
            continue;
        }
        const double x = std::clamp(wanted, from, span.to);
        if (!best || std::abs(x - wanted) < std::abs(*best - wanted)) {
            best = x;
        }
    }
    return best;
}

std::optional<LanePlan> inRows(const std::vector<LaneBox>& boxes, const std::vector<std::size_t>& order, double lo,
                               double hi, double gap, int rows) {
    LanePlan plan;
    plan.boxes.resize(boxes.size());
    plan.rows = rows;
    std::vector<Span> covered;
    for (int row = 0; row < rows; ++row) {
        std::vector<std::size_t> here;
        for (std::size_t i = 0; i < order.size(); ++i) {
            if (static_cast<int>(i % static_cast<std::size_t>(rows)) == row) {
                here.push_back(order[i]);
            }
        }
        const std::vector<Span> spans = freeSpans(covered, lo, hi, gap / 4);
        std::vector<double> wanted;
        std::vector<double> extents;
        double atLeast = lo;
        for (const std::size_t i : here) {
            const auto channel =
                row == 0 ? std::optional(boxes[i].anchor) : nearestFree(spans, boxes[i].anchor, atLeast);
            if (!channel) {
                return std::nullopt;
            }
            atLeast = *channel + gap / 4;
            plan.boxes[i] = {0, row, *channel};
            wanted.push_back(*channel);
            extents.push_back(boxes[i].extent);
        }
        const auto middles = placeRow(wanted, extents, lo, hi, gap);
        if (!middles) {
            return std::nullopt;
        }
        for (std::size_t k = 0; k < here.size(); ++k) {
            const std::size_t i = here[k];
            plan.boxes[i].middle = (*middles)[k];
            plan.farthestShift = std::max(plan.farthestShift, std::abs((*middles)[k] - wanted[k]));
            covered.push_back({(*middles)[k] - extents[k] / 2, (*middles)[k] + extents[k] / 2});
        }
    }
    return plan;
}

} // namespace

std::optional<LanePlan> placeInLane(const std::vector<LaneBox>& boxes, double lo, double hi, double gap, int mostRows) {
    if (boxes.empty()) {
        return LanePlan{};
    }
    std::vector<std::size_t> order(boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return std::pair(boxes[a].anchor, boxes[a].rank) < std::pair(boxes[b].anchor, boxes[b].rank);
    });
    double longest = 0;
    for (const LaneBox& box : boxes) {
        longest = std::max(longest, box.extent);
    }
    std::optional<LanePlan> best;
    for (int rows = 1; rows <= mostRows; ++rows) {
        auto plan = inRows(boxes, order, lo, hi, gap, rows);
        if (!plan) {
            continue;
        }
        if (plan->farthestShift <= 0.8 * longest) {
            return plan;
        }
        if (!best || plan->farthestShift < best->farthestShift) {
            best = std::move(plan);
        }
    }
    return best;
}

} // namespace caprail
