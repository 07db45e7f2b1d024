// SPDX-License-Identifier: GPL-3.0-or-later
/// Pan rail, front and rear fasteners: as many as the group counts, each at a place of its own.
#include "engines.h"

#include <planview/plan_drawing.h>

namespace caprail {
namespace {

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
