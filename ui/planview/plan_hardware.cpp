// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <planview/plan_scene.h>

namespace caprail {

namespace {

QPainterPath hexagon(QPointF middle, double radius) {
    QPainterPath path;
    for (int i = 0; i < 6; ++i) {
        const double angle = i * std::numbers::pi / 3;
        const QPointF p = middle + radius * QPointF(std::cos(angle), std::sin(angle));
        i == 0 ? path.moveTo(p) : path.lineTo(p);
    }
    path.closeSubpath();
    return path;
}

/// A stud seen end on: washer, nut, and the thread as a full circle with three quarters of its root circle inside.
void paintStud(QPainter& painter, const PlanScene& scene, QPointF at, double washer, const Look& look) {
    painter.setBrush(look.paper);
    painter.setPen(solid(look.ink, scene.line(1)));
    painter.drawEllipse(at, washer, washer);
    painter.setPen(solid(look.ink, scene.line(1.7)));
    painter.drawPath(hexagon(at, 0.86 * washer));
    painter.setPen(solid(look.ink, scene.line(1)));
    const double stud = 0.46 * washer;
    painter.drawEllipse(at, stud, stud);
    const double root = 0.34 * washer;
    painter.setBrush(Qt::NoBrush);
    painter.drawArc(QRectF(at.x() - root, at.y() - root, 2 * root, 2 * root), 30 * 16, 270 * 16);
}

/// A bolt seen on its head: washer, hexagon, and the chamfer that touches its flats. No thread comes through.
void paintBolt(QPainter& painter, const PlanScene& scene, QPointF at, double washer, const Look& look) {
    painter.setBrush(look.paper);
    painter.setPen(solid(look.ink, scene.line(1)));
    painter.drawEllipse(at, washer, washer);
    painter.setBrush(washed(look.ink, look.paper, 0.18));
    painter.setPen(solid(look.ink, scene.line(1.7)));
    painter.drawPath(hexagon(at, 0.86 * washer));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(solid(look.ink, scene.line(1)));
    painter.drawEllipse(at, 0.7 * washer, 0.7 * washer);
}

/// The outline and the inside of a body of several parts that overlap: every part is outlined twice as wide, and the
/// inside of all of them laid over it, which leaves the outer half of the outline of all together. Uniting the parts
/// first costs many times as much.
void paintBody(QPainter& painter, const std::vector<QPainterPath>& parts, const PlanFrame& frame, QPen outline,
               const QColor& inside) {
    outline.setWidthF(2 * outline.widthF());
    painter.setPen(outline);
    painter.setBrush(Qt::NoBrush);
    std::vector<QPainterPath> placed;
    for (const QPainterPath& part : parts) {
        painter.drawPath(placed.emplace_back(frame.at(part)));
    }
    for (const QPainterPath& part : placed) {
        painter.fillPath(part, inside);
    }
}

} // namespace

void paintBlock(QPainter& painter, const PlanScene& scene, const Look& look) {
    const EngineLayout& layout = scene.content.layout;
    const PlanFrame& frame = scene.set.frame;
    const QColor metal = washed(look.ink, look.paper, 0.07);
    const auto counted = scene.content.rows.find(FastenerKind::panRail);
    std::vector<QPointF> bolts;
    std::ranges::transform(counted == scene.content.rows.end()
                               ? usualRailBolts(layout)
                               : rowPoints(layout, FastenerKind::panRail, counted->second),
                           std::back_inserter(bolts), inPlan);
    paintBody(painter, railParts(scene.size, bolts), frame, solid(look.ink, scene.line(2)), metal);

    painter.setPen(solid(look.ink, scene.line(1)));
    const double hole = frame.at(0.3 * scene.size.railWidth);
    for (const QPointF bolt : bolts) {
        painter.drawEllipse(frame.at(bolt), hole, hole);
    }
    // The block's bulkhead under each cap, from the cap's ends to the rails.
    painter.setPen(solid(look.quiet, scene.line(0.9)));
    const double inner = scene.size.railHalf - scene.size.railWidth / 2;
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        const double x = inMillimetres(layout.capAt(cap));
        for (const double dx : {-1.45 * scene.size.capHalfWidth, 1.45 * scene.size.capHalfWidth}) {
            painter.drawLine(frame.at(QPointF(x + dx, -inner)), frame.at(QPointF(x + dx, inner)));
        }
    }
}

void paintCrank(QPainter& painter, const PlanScene& scene, const Look& look) {
    const EngineLayout& layout = scene.content.layout;
    const PlanFrame& frame = scene.set.frame;
    const PlanLayers layers = scene.content.layers;
    painter.setBrush(Qt::NoBrush);
    if (layers.testFlag(PlanLayer::throws) || layers.testFlag(PlanLayer::rodFasteners) ||
        layers.testFlag(PlanLayer::rodJournals)) {
        QPen dashed = solid(look.quiet, scene.line(1.1));
        dashed.setDashPattern({5, 3});
        painter.setPen(dashed);
        for (int number = 1; number <= layout.throws(); ++number) {
            painter.drawPath(frame.at(throwShape(layout, scene.size, number)));
        }
    }
    if (layers.testFlag(PlanLayer::rodFasteners) || layers.testFlag(PlanLayer::rodJournals)) {
        painter.setPen(solid(look.ink, scene.line(1)));
        painter.setBrush(look.paper);
        for (int rod = 1; rod <= layout.rods(); ++rod) {
            painter.drawPath(frame.at(rodShape(layout, scene.size, rod)));
        }
    }
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        paintBody(painter, capParts(layout, scene.size, cap), frame, solid(look.ink, scene.line(1.6)), look.paper);
    }
    // Centre lines: the crank's axis, and the axis of each cap.
    QPen centre = solid(look.quiet, scene.line(0.9));
    centre.setDashPattern({14, 3, 2, 3});
    painter.setPen(centre);
    const QPointF beyond = frame.rearwards() * 0.55 * scene.type.em;
    const double end = scene.size.overhang + 0.22 * scene.size.railWidth;
    painter.drawLine(frame.at(QPointF(-end, 0)) - beyond, frame.at(QPointF(scene.size.length + end, 0)) + beyond);
    const double reach = scene.size.outermost + 1.6 * scene.size.washer;
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        const double x = inMillimetres(layout.capAt(cap));
        painter.drawLine(frame.at(QPointF(x, -reach)), frame.at(QPointF(x, reach)));
    }
}

void paintStuds(QPainter& painter, const PlanScene& scene, const Look& look) {
    const EngineLayout& layout = scene.content.layout;
    const PlanFrame& frame = scene.set.frame;
    const auto isUnusual = [&](const QString& place) { return scene.content.pieces.contains(place); };
    for (const FastenerId f : layout.mainFasteners()) {
        const QPointF at = frame.at(inPlan(layout.at(f)));
        isUnusual(QString::fromStdString(code(f))) ? paintBolt(painter, scene, at, frame.at(scene.size.washer), look)
                                                   : paintStud(painter, scene, at, frame.at(scene.size.washer), look);
    }
    for (const PlanPlace& place : scene.places) {
        if (place.layer != PlanLayer::rodFasteners && place.layer != PlanLayer::rowFasteners) {
            continue;
        }
        if (isUnusual(place.code)) {
            paintStud(painter, scene, scene.pointOf(place), 1.15 * scene.radiusOf(place), look);
            continue;
        }
        painter.setBrush(look.paper);
        painter.setPen(solid(look.ink, scene.line(1)));
        painter.drawPath(hexagon(scene.pointOf(place), scene.radiusOf(place)));
    }
}

} // namespace caprail
