// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QPainter>
#include <cmath>
#include <numbers>
#include <planview/plan_scene.h>

namespace caprail {

namespace {

void centred(QPainter& painter, QPointF middle, const QString& text) {
    constexpr double wide = 1e4;
    painter.drawText(QRectF(middle.x() - wide, middle.y() - wide, 2 * wide, 2 * wide),
                     Qt::AlignCenter | Qt::TextDontClip, text);
}

void crossLines(QPainter& painter, QPointF at, double reach) {
    painter.drawLine(at - QPointF(reach, 0), at + QPointF(reach, 0));
    painter.drawLine(at - QPointF(0, reach), at + QPointF(0, reach));
}

/// Draws the outline of a path contour by contour: the cost of a stroke grows faster than its length, because Qt's
/// rasterizer goes through all of it for every band of the picture.
void drawContours(QPainter& painter, const QPainterPath& path) {
    QPainterPath contour;
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element at = path.elementAt(i);
        if (at.isMoveTo()) {
            painter.drawPath(contour);
            contour.clear();
            contour.moveTo(at);
        } else if (at.isLineTo()) {
            contour.lineTo(at);
        } else { // a curve: its two control points and its end
            contour.cubicTo(at, path.elementAt(i + 1), path.elementAt(i + 2));
            i += 2;
        }
    }
    painter.drawPath(contour);
}

} // namespace

void paintGirdleWash(QPainter& painter, const PlanScene& scene, const Look& look) {
    painter.fillPath(scene.plate, washed(look.accent, look.paper, 0.07));
}

void paintGirdle(QPainter& painter, const PlanScene& scene, const Look& look) {
    if (scene.plate.isEmpty()) {
        return;
    }
    // A part that lies over the drawing is drawn in phantom line: long, short, short.
    QPen phantom = solid(look.accent, scene.line(1.5));
    phantom.setDashPattern({11, 2.5, 2, 2.5, 2, 2.5});
    painter.setPen(phantom);
    painter.setBrush(Qt::NoBrush);
    drawContours(painter, scene.plate);
}

namespace {

/// How far a height lies out of its band: negative is proud, positive loose, 0 nothing to see.
double outOfBand(double height, const std::optional<std::pair<double, double>>& band) {
    if (!band) {
        return height;
    }
    return height < band->first ? height - band->first : height > band->second ? height - band->second : 0;
}

/// Eight short strokes outwards from a circle.
void drawRays(QPainter& painter, QPointF middle, double radius) {
    for (int i = 0; i < 8; ++i) {
        const double angle = i * std::numbers::pi / 4;
        const QPointF way(std::cos(angle), std::sin(angle));
        painter.drawLine(middle + 1.08 * radius * way, middle + 1.3 * radius * way);
    }
}

} // namespace

void paintHeights(QPainter& painter, const PlanScene& scene, const Look& look) {
    if (!scene.content.layers.testFlag(PlanLayer::flushness)) {
        return;
    }
    double farthest = 0;
    for (const auto& [place, height] : scene.content.heights) {
        farthest = std::max(farthest, std::abs(outOfBand(height, scene.content.heightBand)));
    }
    for (const auto& [code, height] : scene.content.heights) {
        const PlanPlace* place = scene.find(code);
        if (place == nullptr) {
            continue;
        }
        const double off = outOfBand(height, scene.content.heightBand);
        const double share = farthest > 0 ? std::abs(off) / farthest : 0;
        const double radius = scene.radiusOf(*place) * (1.15 + 0.55 * share);
        if (off == 0) {
            painter.setPen(solid(look.quiet, scene.line(1.2)));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(scene.pointOf(*place), radius, radius);
        } else if (off < 0) {
            // Proud is a disc with rays, loose a dashed ring; both larger and heavier the farther out, and in full ink at
            // the edge, so that neither a faint screen nor eyes that tell no colours lose them.
            painter.setPen(solid(look.out, scene.line(1.5 + 1.5 * share)));
            painter.setBrush(washed(look.out, look.paper, 0.15 + 0.4 * share));
            painter.drawEllipse(scene.pointOf(*place), radius, radius);
            drawRays(painter, scene.pointOf(*place), radius);
        } else {
            QPen pen = solid(look.accent, scene.line(2 + 2 * share));
            pen.setDashPattern({2.2, 1.6});
            painter.setPen(pen);
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(scene.pointOf(*place), radius, radius);
        }
    }
}

void paintLoads(QPainter& painter, const PlanScene& scene, const Look& look) {
    if (!scene.content.layers.testFlag(PlanLayer::loads)) {
        return;
    }
    double largest = 0;
    for (const auto& [place, force] : scene.content.loads) {
        largest = std::max(largest, std::abs(force));
    }
    for (const auto& [code, force] : scene.content.loads) {
        const PlanPlace* place = scene.find(code);
        if (place == nullptr || largest <= 0) {
            continue;
        }
        // Beside the stud, upright on the paper: an arrow up where the cap is pulled up, a filled one down where it is
        // pressed down; the longer the larger the force.
        const double radius = scene.radiusOf(*place);
        const double length = radius * (0.9 + 1.9 * std::abs(force) / largest);
        const double way = force >= 0 ? -1 : 1;
        const QPointF foot = scene.pointOf(*place) + QPointF(1.55 * radius, -way * length / 2);
        const QPointF tip = foot + QPointF(0, way * length);
        const double head = 0.55 * radius;
        const QColor colour = force >= 0 ? look.accent : look.out;
        painter.setPen(solid(colour, scene.line(2.4)));
        painter.drawLine(foot, tip - QPointF(0, way * head));
        painter.setBrush(force >= 0 ? look.paper : colour);
        const QPointF barb(0.6 * head, -way * head);
        painter.drawPolygon(QPolygonF({tip, tip + barb, tip + QPointF(-barb.x(), barb.y())}));
    }
}

void paintLoose(QPainter& painter, const PlanScene& scene, const Look& look) {
    const EngineLayout& layout = scene.content.layout;
    const PlanFrame& frame = scene.set.frame;
    if (scene.content.layers.testFlag(PlanLayer::pickup)) {
        const QPointF plan = inPlan(layout.pickupAt());
        const QPointF at = frame.at(plan);
        const double radius = frame.at(scene.size.pickup);
        // The tube leaves outwards, clear of the studs, and is broken off before the rail.
        const double way = plan.y() < 0 ? -1 : 1;
        const double half = 0.3 * scene.size.pickup;
        const double end = way * (scene.size.railHalf - 0.85 * scene.size.railWidth);
        painter.setPen(solid(look.ink, scene.line(1.2)));
        painter.setBrush(look.paper);
        QPainterPath tube;
        tube.moveTo(plan.x() - half, plan.y());
        tube.lineTo(plan.x() - half, end);
        tube.cubicTo(plan.x() - half / 2, end + half, plan.x() + half / 2, end - half, plan.x() + half, end);
        tube.lineTo(plan.x() + half, plan.y());
        painter.drawPath(frame.at(tube));
        painter.drawEllipse(at, radius, radius);
        painter.setPen(solid(look.quiet, scene.line(0.8)));
        for (const double share : {0.78, 0.5, 0.22}) {
            painter.drawEllipse(at, share * radius, share * radius);
        }
        crossLines(painter, at, 1.25 * radius);
    }
    if (scene.content.layers.testFlag(PlanLayer::dipstick)) {
        const QPointF at = frame.at(inPlan(layout.dipstickAt()));
        const double radius = frame.at(0.34 * scene.size.pickup);
        painter.setPen(solid(look.ink, scene.line(1.2)));
        painter.setBrush(look.paper);
        painter.drawEllipse(at, radius, radius);
        painter.setBrush(look.ink);
        painter.drawEllipse(at, 0.35 * radius, 0.35 * radius);
        painter.setPen(solid(look.quiet, scene.line(0.8)));
        crossLines(painter, at, 1.7 * radius);
    }
}

void paintJournals(QPainter& painter, const PlanScene& scene, const Look& look) {
    const EngineLayout& layout = scene.content.layout;
    const PlanFrame& frame = scene.set.frame;
    for (const PlanPlace& place : scene.places) {
        if (place.layer == PlanLayer::mainJournals || place.layer == PlanLayer::rodJournals) {
            // A journal seen from below is a box as wide as its bearing.
            const bool isMain = place.layer == PlanLayer::mainJournals;
            const double half = isMain ? scene.size.capHalfWidth : 0.4 * 2 * place.radius;
            const double across = isMain ? place.radius : 0.24 * scene.size.innerHalf;
            QPainterPath box;
            box.addRect(QRectF(place.at.x() - half, -across, 2 * half, 2 * across));
            painter.setBrush(look.paper);
            painter.setPen(solid(look.ink, scene.line(1.4)));
            painter.drawPath(frame.at(box));
        }
    }
    // The cap's number stands on its middle, on a ground that interrupts the centre lines.
    const double most = 0.9 * frame.at(std::min(scene.size.capHalfWidth, 0.5 * scene.size.innerHalf));
    const double radius = std::min(0.62 * scene.type.em, most);
    painter.setFont(scene.type.sized(std::min(1.0, radius / (0.62 * scene.type.em)), true));
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        const QPointF at = frame.at(QPointF(inMillimetres(layout.capAt(cap)), 0));
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.paper);
        painter.drawEllipse(at, radius, radius);
        painter.setPen(look.ink);
        centred(painter, at, QString::number(cap));
    }
}

namespace {

/// The number of a fastener in the rail stands inside the rail, that of one at the block's end beside it.
void paintRowNumber(QPainter& painter, const PlanScene& scene, const PlanPlace& place, int number, const Look& look) {
    const PlanFrame& frame = scene.set.frame;
    const double radius = std::min(0.55 * scene.type.em, frame.at(0.75 * scene.size.railWidth));
    const bool isAlong = std::abs(place.at.y()) > scene.size.railHalf - scene.size.railWidth;
    const QPointF inwards =
        isAlong ? -frame.outwards(place.lane) : frame.rearwards() * (place.at.x() < scene.size.length / 2 ? 1.0 : -1.0);
    const QPointF middle = scene.pointOf(place) + inwards * (scene.radiusOf(place) + 1.35 * radius);
    painter.setPen(solid(look.ink, scene.line(1)));
    painter.setBrush(look.paper);
    painter.drawEllipse(middle, radius, radius);
    painter.setFont(scene.type.sized((number > 9 ? 0.72 : 0.8) * radius / (0.62 * scene.type.em)));
    painter.setPen(look.ink);
    centred(painter, middle, QString::number(number));
}

} // namespace

void paintNumbers(QPainter& painter, const PlanScene& scene, const Look& look) {
    if (!scene.content.layers.testFlag(PlanLayer::sequence)) {
        return;
    }
    const PlanFrame& frame = scene.set.frame;
    for (const PlanPlace& place : scene.places) {
        const auto at = scene.content.sequence.find(place.code);
        if (at == scene.content.sequence.end()) {
            continue;
        }
        if (place.layer == PlanLayer::rowFasteners) {
            paintRowNumber(painter, scene, place, at->second, look);
            continue;
        }
        const bool isRod = place.layer == PlanLayer::rodFasteners;
        // Beside a main stud on its front side; on a rod fastener itself, where there is no room beside it.
        const double room = frame.at(isRod ? 1.35 * place.radius : 0.5 * scene.size.spacing - 1.05 * place.radius);
        const double radius = std::min(0.62 * scene.type.em, isRod ? room : 0.48 * room);
        const QPointF plan = isRod ? place.at : place.at - QPointF(1.15 * place.radius, 0);
        const QPointF middle = frame.at(plan) - (isRod ? QPointF() : frame.rearwards() * radius);
        painter.setPen(solid(look.ink, scene.line(1)));
        painter.setBrush(look.paper);
        painter.drawEllipse(middle, radius, radius);
        const QString number = QString::number(at->second);
        painter.setFont(scene.type.sized((number.size() > 2 ? 0.58 : (number.size() > 1 ? 0.72 : 0.8)) * radius /
                                         (0.62 * scene.type.em)));
        painter.setPen(look.ink);
        centred(painter, middle, number);
    }
}

void paintWays(QPainter& painter, const PlanScene& scene, const Look& look) {
    const PlanFrame& frame = scene.set.frame;
    const double em = scene.type.em;
    const QPointF forwards = -frame.rearwards();
    const QPointF across = frame.outwards(Side::right);
    // An arrow on the crank's axis, and the word beside it where the paper has room.
    const QPointF frontAt = frame.isUpright() ? scene.front + QPointF(scene.frontText.width() / 2 + 0.7 * em, 0)
                                              : scene.front - QPointF(0, 0.95 * em);
    const QPointF tip = scene.front + forwards * (frame.isUpright() ? 0.85 : 1.3) * em;
    const QPointF tail = scene.front - forwards * (frame.isUpright() ? 0.75 : 1.2) * em;
    painter.setPen(solid(look.ink, scene.line(2.2)));
    painter.drawLine(tail, tip - forwards * 0.4 * em);
    painter.setBrush(look.ink);
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(
        QPolygonF{tip, tip - forwards * 0.75 * em + across * 0.3 * em, tip - forwards * 0.75 * em - across * 0.3 * em});
    painter.setFont(scene.type.sized(0.85, true));
    painter.setPen(look.ink);
    centred(painter, frontAt, QCoreApplication::translate("PlanDrawing", "FRONT"));

    painter.setFont(scene.type.sized(0.8));
    painter.setPen(look.quiet);
    for (const Side side : {Side::left, Side::right}) {
        const QString name = side == Side::left ? QCoreApplication::translate("PlanDrawing", "LEFT")
                                                : QCoreApplication::translate("PlanDrawing", "RIGHT");
        const QPointF out = frame.outwards(side);
        const QSizeF size = scene.type.sizeOf(name, painter.font());
        const double rail = frame.at(scene.size.across());
        QPointF at = scene.front + out * (rail - (frame.isUpright() ? size.width() / 2 : size.height() / 2));
        if (frame.isUpright()) {
            // Clear of the word FRONT, which stands on one side of the axis.
            const double clear = scene.frontText.width() + 1.3 * em + size.width() / 2;
            at = scene.front + out * std::max(rail - size.width() / 2, out.x() > 0 ? clear : size.width() / 2 + em);
        } else {
            at = scene.front + out * std::max(rail - size.height() / 2, 1.9 * em);
        }
        centred(painter, at, name);
    }
    if (!scene.content.title.isEmpty()) {
        painter.setFont(scene.type.sized(1, true));
        painter.setPen(look.ink);
        painter.drawText(QRectF(scene.area.left() + 0.5 * em, scene.area.top() + 0.3 * em, scene.area.width() - em,
                                scene.titleHeight),
                         Qt::AlignLeft | Qt::AlignTop, scene.content.title);
    }
}

} // namespace caprail
