// SPDX-License-Identifier: GPL-3.0-or-later
/// Pan rail, front and rear fasteners: as many as the group counts, each at a place of its own.
#include "engines.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <planview/plan_rows.h>
#include <set>

namespace caprail {
namespace {

constexpr FastenerKind rows[] = {FastenerKind::panRail, FastenerKind::front, FastenerKind::rear};

TEST(PlanRows, hold_as_many_fasteners_as_are_counted_each_by_itself) {
    for (const LayoutDescription& engine : {engineOf(3, 2, 1, 3), engineOf(5, 4, 1, 5), engineOf(9, 2, 1, 9)}) {
        const EngineLayout layout = layoutOf(engine);
        const PlanGeometry size(layout);
        for (const FastenerKind kind : rows) {
            for (int count = 1; count <= 36; ++count) {
                const auto points = rowPoints(layout, size, kind, count);
                ASSERT_EQ(points.size(), static_cast<std::size_t>(count));
                for (std::size_t i = 0; i < points.size(); ++i) {
                    for (std::size_t j = i + 1; j < points.size(); ++j) {
                        EXPECT_GT(std::hypot(points[i].x() - points[j].x(), points[i].y() - points[j].y()), 1.0)
                            << nameOf(engine) << ", " << count << ": " << i << " and " << j;
                    }
                }
            }
        }
    }
}

TEST(PlanRows, of_the_pan_lie_on_the_rail_and_those_of_the_ends_between_rail_and_cap) {
    const EngineLayout layout = layoutOf(engineOf(5, 2, 1, 5));
    const PlanGeometry size(layout);
    for (const QPointF at : rowPoints(layout, size, FastenerKind::panRail, 19)) {
        const bool isAlong = std::abs(std::abs(at.y()) - size.railHalf) < 1e-6;
        const double front = -size.overhang + size.railWidth / 2;
        const bool isAcross = std::abs(at.x() - front) < 1e-6 || std::abs(at.x() - (size.length - front)) < 1e-6;
        EXPECT_TRUE(isAlong || isAcross) << at.x() << " " << at.y();
    }
    for (const QPointF at : rowPoints(layout, size, FastenerKind::front, 6)) {
        EXPECT_LT(at.x(), -size.capHalfWidth);
        EXPECT_GT(at.x(), -size.overhang + size.railWidth);
    }
}

TEST(PlanRows, are_tightened_from_the_centre_outwards_each_once) {
    const EngineLayout layout = layoutOf(engineOf(5, 2, 1, 5));
    const PlanGeometry size(layout);
    for (const FastenerKind kind : rows) {
        for (const int count : {1, 4, 18, 31}) {
            const auto order = rowSequence(layout, kind, count);
            std::vector<int> all(static_cast<std::size_t>(count));
            std::iota(all.begin(), all.end(), 1);
            EXPECT_TRUE(std::is_permutation(order.begin(), order.end(), all.begin(), all.end()));
        }
    }
    // The first of the pan rail lies nearer to the middle of the rail than the last.
    const auto points = rowPoints(layout, size, FastenerKind::panRail, 18);
    const auto order = rowSequence(layout, FastenerKind::panRail, 18);
    const auto away = [&](int number) {
        return std::abs(points[static_cast<std::size_t>(number - 1)].x() - size.length / 2);
    };
    EXPECT_LT(away(order.front()), away(order.back()));
}

TEST(PlanRows, are_places_of_the_drawing_when_their_layer_is_on) {
    PlanContent content{layoutOf(engineOf(5, 2, 1, 5))};
    content.layers = PlanLayer::rowFasteners | PlanLayer::sequence;
    content.rows = {{FastenerKind::panRail, 18}, {FastenerKind::front, 4}};
    const PlanDrawing drawing(content, {}, QRectF(0, 0, 900, 500), QFont(QStringLiteral("DejaVu Sans"), 10));
    EXPECT_EQ(drawing.places().size(), 22);
    EXPECT_EQ(drawing.nameOf(QStringLiteral("pan-7")), QStringLiteral("pan rail 7"));
    for (const QString& place : drawing.places()) {
        EXPECT_EQ(drawing.placeAt(drawing.pointOf(place)), place);
    }
}

} // namespace
} // namespace caprail
