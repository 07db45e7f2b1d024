// SPDX-License-Identifier: GPL-3.0-or-later
/// Pan rail, front and rear fasteners: as many as the group counts, each at a place of its own.
#include <cmath>
#include <engine/rows.h>
#include <gtest/gtest.h>

namespace caprail {
namespace {

EngineLayout layoutOf(int caps, int fastenersPerCap) {
    LayoutDescription d;
    d.caps = caps;
    d.fastenersPerCap = fastenersPerCap;
    d.tiedLast = caps;
    d.pickupCap = d.dipstickCap = 2;
    d.throws = caps - 1;
    d.rods = 2 * d.throws;
    return *EngineLayout::from(d);
}

constexpr FastenerKind rows[] = {FastenerKind::panRail, FastenerKind::front, FastenerKind::rear};

TEST(Rows, hold_as_many_fasteners_as_are_counted_each_by_itself) {
    for (const EngineLayout& layout : std::vector{layoutOf(3, 2), layoutOf(5, 4), layoutOf(9, 2)}) {
        for (const FastenerKind kind : rows) {
            for (int count = 1; count <= 36; ++count) {
                const auto points = rowPoints(layout, kind, count);
                ASSERT_EQ(points.size(), static_cast<std::size_t>(count));
                for (std::size_t i = 0; i < points.size(); ++i) {
                    for (std::size_t j = i + 1; j < points.size(); ++j) {
                        EXPECT_GT(std::hypot(inMillimetres(points[i].x - points[j].x),
                                             inMillimetres(points[i].y - points[j].y)),
                                  1.0)
                            << layout.caps() << " caps, " << count << ": " << i << " and " << j;
                    }
                }
            }
        }
    }
}

TEST(Rows, of_the_pan_lie_on_the_rail_and_those_of_the_ends_between_rail_and_cap) {
    const EngineLayout layout = layoutOf(5, 2);
    const BlockOutline block(layout);
    const double front = -block.overhang + block.railWidth / 2;
    for (const PlanPoint& at : rowPoints(layout, FastenerKind::panRail, 19)) {
        const double x = inMillimetres(at.x);
        const bool isAlong = std::abs(std::abs(inMillimetres(at.y)) - block.railHalf) < 1e-5;
        const bool isAcross = std::abs(x - front) < 1e-5 || std::abs(x - (block.length - front)) < 1e-5;
        EXPECT_TRUE(isAlong || isAcross) << x;
    }
    for (const PlanPoint& at : rowPoints(layout, FastenerKind::front, 6)) {
        EXPECT_LT(inMillimetres(at.x), -block.capHalfWidth);
        EXPECT_GT(inMillimetres(at.x), -block.overhang + block.railWidth);
    }
}

TEST(Rows, of_none_and_of_fasteners_that_the_layout_places_itself_are_empty) {
    EXPECT_TRUE(rowPoints(layoutOf(5, 2), FastenerKind::panRail, 0).empty());
    EXPECT_TRUE(rowPoints(layoutOf(5, 2), FastenerKind::mainCap, 10).empty());
}

} // namespace
} // namespace caprail
