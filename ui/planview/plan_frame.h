// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QRectF>
#include <QTransform>
#include <planview/plan_content.h>
#include <planview/plan_geometry.h>

namespace caprail {

/// How the plan lies on the paper: millimetres of the plan to the painter's coordinates, turned, flipped and to scale
/// (the same along and across the crank). A lane is the strip outside one pan rail where its callouts stand.
class PlanFrame {
public:
    /// Fits the block into `room`, centred.
    PlanFrame(const PlanGeometry& size, const PlanOrientation& orientation, const QRectF& room);

    [[nodiscard]] QPointF at(QPointF plan) const { return m_transform.map(plan); }
    [[nodiscard]] QPainterPath at(const QPainterPath& plan) const { return m_transform.map(plan); }
    [[nodiscard]] double at(double millimetres) const { return millimetres * m_scale; }
    [[nodiscard]] QRectF block() const { return m_block; } ///< the block's outline with its pads

    /// The crank runs up and down on the paper.
    [[nodiscard]] bool isUpright() const { return m_isUpright; }
    /// Unit vectors on the paper: from front to rear, and outwards from the axis to a side.
    [[nodiscard]] QPointF rearwards() const { return m_rearwards; }
    [[nodiscard]] QPointF outwards(Side side) const { return side == Side::left ? -m_rightwards : m_rightwards; }

    /// A point by where it lies along the paper's axis that the crank runs along, and across it.
    [[nodiscard]] QPointF point(double along, double across) const {
        return m_isUpright ? QPointF(across, along) : QPointF(along, across);
    }
    [[nodiscard]] double along(QPointF p) const { return m_isUpright ? p.y() : p.x(); }
    [[nodiscard]] double across(QPointF p) const { return m_isUpright ? p.x() : p.y(); }
    /// +1 or −1: which way a side's lane lies across the paper.
    [[nodiscard]] double sign(Side side) const { return across(outwards(side)) > 0 ? 1 : -1; }
    /// Where a side's lane begins: the outer edge of its rail's pads.
    [[nodiscard]] double edge(Side side) const;

    static bool isUpright(const PlanOrientation& orientation) { return orientation.quarterTurns % 2 != 0; }

private:
    QTransform m_transform;
    double m_scale = 1;
    QRectF m_block;
    bool m_isUpright = false;
    QPointF m_rearwards;
    QPointF m_rightwards;
};

/// The side whose lane lies on top, or to the left when the crank runs up and down.
Side firstLane(const PlanOrientation& orientation);
/// True when the front of the engine lies to the left, or on top when the crank runs up and down.
bool isFrontFirst(const PlanOrientation& orientation);

} // namespace caprail
