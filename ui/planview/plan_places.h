// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <planview/plan_content.h>
#include <planview/plan_geometry.h>

namespace caprail {

/// One place that the drawing knows: where it lies and what it is called.
struct PlanPlace {
    QString code;
    QString label; ///< short, as it stands in a callout: "3R"
    QString name;  ///< in words: "cap 3 right"
    PlanLayer layer = PlanLayer::positions;
    QPointF at;        ///< in millimetres of the plan
    double radius = 0; ///< of its symbol, in millimetres
    Side lane = Side::left;
    double leaderShift = 0; ///< how far along the crank its leader stands aside from it, in millimetres
    double rank = 0;        ///< of callouts that share an anchor, the lower stands next to the drawing
};

/// The places of the layers that are on, in the order of a pass: those of `content.order` first, then layer by layer
/// from front to rear, left before right.
std::vector<PlanPlace> placesOf(const PlanContent& content, const PlanGeometry& size);

/// Their codes alone: what can be selected is known without a drawing being laid out.
QStringList placeCodes(const std::vector<PlanPlace>& places);
QStringList placeCodes(const PlanContent& content);

} // namespace caprail
