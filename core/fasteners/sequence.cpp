// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <engine/rows.h>
#include <fasteners/sequence.h>
#include <numeric>
#include <string>
#include <base/say.h>

namespace caprail {

namespace {

/// Picks every item once: always the one that `isBefore(a, b, done)` puts first, given those picked so far.
template <class IsBefore> std::vector<std::size_t> greedyOrder(std::size_t count, IsBefore isBefore) {
    std::vector<std::size_t> left(count);
    std::iota(left.begin(), left.end(), std::size_t{0});
    std::vector<std::size_t> order;
    order.reserve(count);
    while (!left.empty()) {
        auto best = left.begin();
        for (auto it = left.begin() + 1; it != left.end(); ++it) {
            if (isBefore(*it, *best, order)) {
                best = it;
            }
        }
        order.push_back(*best);
        left.erase(best);
    }
    return order;
}

std::vector<int> fromCentreOutwards(int count) {
    std::vector<int> order(static_cast<std::size_t>(count));
    std::iota(order.begin(), order.end(), 1);
    const auto distance = [count](int number) { return std::abs(2 * number - (count + 1)); };
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return distance(a) < distance(b); });
    return order;
}

} // namespace

Result<std::vector<FastenerId>> mainCapSequence(int caps, int fastenersPerCap) {
    if (caps < 3 || caps > 9) {
        return refuse(Core::say("A sequence is known for 3 to 9 main caps, and %1 were given.", caps));
    }
    if (fastenersPerCap != 2 && fastenersPerCap != 4) {
        return refuse(Core::say("A main cap has 2 or 4 fasteners, and %1 were given.", fastenersPerCap));
    }
    std::vector<FastenerId> order;
    for (const Ring ring : {Ring::inner, Ring::outer}) {
        if (ring == Ring::outer && fastenersPerCap == 2) {
            break;
        }
        for (const int cap : fromCentreOutwards(caps)) {
            order.push_back({FastenerKind::mainCap, cap, Side::left, ring});
            order.push_back({FastenerKind::mainCap, cap, Side::right, ring});
        }
    }
    return order;
}

Result<std::vector<FastenerId>> rodSequence(int rods) {
    if (rods < 1 || rods > 16) {
        return refuse(Core::say("A sequence is known for 1 to 16 rods, and %1 were given.", rods));
    }
    std::vector<FastenerId> order;
    for (int rod = 1; rod <= rods; ++rod) {
        order.push_back({FastenerKind::rod, rod, Side::left, Ring::inner});
        order.push_back({FastenerKind::rod, rod, Side::right, Ring::inner});
    }
    return order;
}

Result<std::vector<std::size_t>> outwardSequence(const std::vector<PlanPoint>& points) {
    if (points.empty() || points.size() > 500) {
        return refuse(
            Core::say("A pattern of 1 to 500 fasteners can be put in order, and %1 were given.", points.size()));
    }
    const auto [west, east] =
        std::minmax_element(points.begin(), points.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
    const auto [south, north] =
        std::minmax_element(points.begin(), points.end(), [](const auto& a, const auto& b) { return a.y < b.y; });
    const double middleX = (inMillimetres(west->x) + inMillimetres(east->x)) / 2.0;
    const double middleY = (inMillimetres(south->y) + inMillimetres(north->y)) / 2.0;

    // Whole millimetres from the middle, so that readings of a layout that differ by less count as one ring.
    std::vector<std::int64_t> ring;
    ring.reserve(points.size());
    for (const PlanPoint& point : points) {
        ring.push_back(toNearest(std::hypot(inMillimetres(point.x) - middleX, inMillimetres(point.y) - middleY)));
    }
    const auto apart = [&](std::size_t a, std::size_t b) {
        return std::hypot(inMillimetres(points[a].x - points[b].x), inMillimetres(points[a].y - points[b].y));
    };
    return greedyOrder(points.size(), [&](std::size_t a, std::size_t b, const std::vector<std::size_t>& done) {
        if (ring[a] != ring[b]) {
            return ring[a] < ring[b];
        }
        return !done.empty() && apart(a, done.back()) > apart(b, done.back()) + 1e-6;
    });
}

std::vector<FastenerId> usualSequence(const EngineLayout& layout, FastenerKind kind, int count) {
    if (kind == FastenerKind::mainCap) {
        return mainCapSequence(layout.caps(), static_cast<int>(layout.description().fastenersPerCap))
            .value_or(std::vector<FastenerId>());
    }
    if (kind == FastenerKind::rod) {
        return rodSequence(layout.rods()).value_or(std::vector<FastenerId>());
    }
    std::vector<FastenerId> all;
    std::vector<PlanPoint> points;
    if (kind == FastenerKind::girdleNut) {
        all = layout.girdleNuts();
        for (const FastenerId nut : all) {
            points.push_back(layout.at(nut));
        }
    } else {
        points = rowPoints(layout, kind, count);
        for (std::size_t i = 0; i < points.size(); ++i) {
            all.push_back({kind, static_cast<int>(i) + 1, Side::left, Ring::inner});
        }
    }
    std::vector<FastenerId> order;
    for (const std::size_t i : outwardSequence(points).value_or(std::vector<std::size_t>())) {
        order.push_back(all[i]);
    }
    return order;
}

Result<std::vector<Torque>> equalSteps(Torque final, int count) {
    if (final <= Torque()) {
        return refuse(Core::say("The final torque must be above zero: give the specified value."));
    }
    if (count < 1 || count > 10) {
        return refuse(Core::say("A torque is reached in 1 to 10 steps, and %1 were given.", count));
    }
    std::vector<Torque> steps;
    for (int step = 1; step <= count; ++step) {
        steps.emplace_back(toNearest(static_cast<double>(final.value()) * step / count));
    }
    return steps;
}

} // namespace caprail
