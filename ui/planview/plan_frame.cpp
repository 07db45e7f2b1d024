// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_frame.h>

#include <algorithm>

namespace caprail {

namespace {

int turnsOf(const PlanOrientation& orientation) {
    return ((orientation.quarterTurns % 4) + 4) % 4;
}

QTransform turned(const PlanOrientation& orientation) {
    // A y that grows downwards makes a positive angle clockwise on the paper.
    QTransform transform;
    transform.rotate(90.0 * turnsOf(orientation));
    transform.scale(1, orientation.isFlipped ? -1 : 1);
    return transform;
}

} // namespace

PlanFrame::PlanFrame(const PlanGeometry& size, const PlanOrientation& orientation, const QRectF& room) {
    const QTransform turn = turned(orientation);
    m_isUpright = isUpright(orientation);
    m_rearwards = turn.map(QPointF(1, 0));
    m_rightwards = turn.map(QPointF(0, 1));
    const double pads = 0.22 * size.railWidth; // the bolt pads swell beyond the rail by so much
    const QSizeF plan(size.length + 2 * (size.overhang + pads), 2 * (size.across() + pads));
    const QSizeF onPaper = m_isUpright ? plan.transposed() : plan;
    m_scale = std::max(std::min(room.width() / onPaper.width(), room.height() / onPaper.height()), 1e-6);
    m_block = QRectF(QPointF(), onPaper * m_scale);
    m_block.moveCenter(room.center());
    m_transform.translate(room.center().x(), room.center().y());
    m_transform.scale(m_scale, m_scale);
    m_transform = turn * m_transform;
    m_transform.translate(-size.length / 2, 0);
}

double PlanFrame::edge(Side side) const {
    if (m_isUpright) {
        return sign(side) > 0 ? m_block.right() : m_block.left();
    }
    return sign(side) > 0 ? m_block.bottom() : m_block.top();
}

Side firstLane(const PlanOrientation& orientation) {
    const QPointF right = turned(orientation).map(QPointF(0, 1));
    const double across = PlanFrame::isUpright(orientation) ? right.x() : right.y();
    return across > 0 ? Side::left : Side::right;
}

bool isFrontFirst(const PlanOrientation& orientation) {
    const QPointF rear = turned(orientation).map(QPointF(1, 0));
    return (PlanFrame::isUpright(orientation) ? rear.y() : rear.x()) > 0;
}

} // namespace caprail
