// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/state_shape.h>

#include <QPainter>
#include <QPainterPath>
#include <cmath>
#include <numbers>

namespace caprail {

namespace {

QPainterPath polygon(QPointF middle, double radius, int corners, double firstDegrees) {
    QPainterPath path;
    for (int i = 0; i < corners; ++i) {
        const double angle = (firstDegrees + 360.0 * i / corners) * std::numbers::pi / 180;
        const QPointF p = middle + radius * QPointF(std::cos(angle), std::sin(angle));
        i == 0 ? path.moveTo(p) : path.lineTo(p);
    }
    path.closeSubpath();
    return path;
}

QPainterPath strokes(QPointF middle, double r, std::initializer_list<std::initializer_list<QPointF>> lines) {
    QPainterPath path;
    for (const auto& line : lines) {
        bool isFirst = true;
        for (const QPointF p : line) {
            isFirst ? path.moveTo(middle + r * p) : path.lineTo(middle + r * p);
            isFirst = false;
        }
    }
    return path;
}

QPainterPath waves(QPointF middle, double r) {
    QPainterPath path;
    for (const double y : {-0.22, 0.22}) {
        path.moveTo(middle + r * QPointF(-0.5, y + 0.08));
        path.cubicTo(middle + r * QPointF(-0.2, y - 0.35), middle + r * QPointF(0.2, y + 0.35),
                     middle + r * QPointF(0.5, y - 0.08));
    }
    return path;
}

} // namespace

void paintBadge(QPainter& painter, QPointF middle, double radius, CheckState state, const Look& look) {
    painter.save();
    const QColor colour = look.of(state);
    QPen pen(colour, radius * 0.24, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(look.paper);
    const double r = radius * 0.88;
    switch (state) {
    case CheckState::good:
        painter.setBrush(colour);
        painter.drawEllipse(middle, r, r);
        pen.setColor(look.paper);
        pen.setWidthF(radius * 0.3);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(strokes(middle, r, {{{-0.45, 0.02}, {-0.1, 0.4}, {0.48, -0.38}}}));
        break;
    case CheckState::out:
        painter.setBrush(colour);
        painter.drawPath(polygon(middle, radius * 1.12, 4, 0));
        pen.setColor(look.paper);
        painter.setPen(pen);
        painter.drawPath(strokes(middle, r, {{{-0.32, -0.32}, {0.32, 0.32}}, {{0.32, -0.32}, {-0.32, 0.32}}}));
        break;
    case CheckState::tooCloseToCall:
        painter.drawPath(polygon(middle, radius * 1.02, 6, 0));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(waves(middle, r));
        break;
    case CheckState::notProven: // a circle with a question: something is missing
        painter.drawEllipse(middle, r, r);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(strokes(
            middle, r, {{{-0.3, -0.3}, {-0.15, -0.52}, {0.15, -0.52}, {0.3, -0.3}, {0.0, 0.02}, {0.0, 0.16}}, {{0, 0.5}, {0, 0.52}}}));
        break;
    case CheckState::stale: {
        painter.setBrush(Qt::NoBrush);
        const QRectF ring(middle.x() - r * 0.85, middle.y() - r * 0.85, 1.7 * r, 1.7 * r);
        painter.drawArc(ring, 60 * 16, 290 * 16);
        painter.setBrush(colour);
        pen.setWidthF(radius * 0.1);
        painter.setPen(pen);
        painter.drawPath(polygon(middle + QPointF(0.72, -0.5) * r, 0.42 * radius, 3, 60));
        break;
    }
    case CheckState::notDone:
        pen.setWidthF(radius * 0.2);
        painter.setPen(pen);
        painter.drawEllipse(middle, r * 0.8, r * 0.8);
        break;
    }
    painter.restore();
}

QPainterPath calloutShape(const QRectF& box, CheckState state, double corner) {
    QPainterPath path;
    switch (state) {
    case CheckState::out: {
        const double c = corner * 1.2;
        path.moveTo(box.left() + c, box.top());
        path.lineTo(box.right() - c, box.top());
        path.lineTo(box.right(), box.top() + c);
        path.lineTo(box.right(), box.bottom() - c);
        path.lineTo(box.right() - c, box.bottom());
        path.lineTo(box.left() + c, box.bottom());
        path.lineTo(box.left(), box.bottom() - c);
        path.lineTo(box.left(), box.top() + c);
        path.closeSubpath();
        return path;
    }
    case CheckState::tooCloseToCall:
    case CheckState::notProven:
        path.addRoundedRect(box, corner * 2.6, corner * 2.6);
        return path;
    case CheckState::good:
    case CheckState::stale:
    case CheckState::notDone:
        break;
    }
    path.addRoundedRect(box, corner * 0.5, corner * 0.5);
    return path;
}

QPen calloutPen(CheckState state, const Look& look, double line) {
    QPen pen(look.of(state), line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    switch (state) {
    case CheckState::out:
        pen.setWidthF(2.2 * line);
        break;
    case CheckState::tooCloseToCall:
        pen.setWidthF(1.5 * line);
        break;
    case CheckState::notProven:
        pen.setWidthF(1.5 * line);
        pen.setDashPattern({2.5, 1.5});
        break;
    case CheckState::stale:
        pen.setWidthF(1.4 * line);
        pen.setDashPattern({4, 2.5});
        break;
    case CheckState::notDone:
        pen.setWidthF(1.2 * line);
        pen.setDashPattern({1, 2});
        break;
    case CheckState::good:
        break;
    }
    return pen;
}

} // namespace caprail
