// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPen>
#include <planview/callouts.h>
#include <planview/plan_drawing.h>

namespace caprail {

/// A drawing laid out: what PlanDrawing asks and the painters paint.
struct PlanScene {
    PlanScene(PlanContent what, const PlanOrientation& orientation, const QRectF& inside, const QFont& font,
              const QPaintDevice* device);
    // Callouts point into `content`.
    PlanScene(const PlanScene&) = delete;
    PlanScene& operator=(const PlanScene&) = delete;

    PlanContent content;
    QRectF area;
    PlanType type;
    PlanGeometry size;
    std::vector<PlanPlace> places;
    std::vector<const PlanMark*> marks; ///< one per place, null: none
    QSizeF frontText;                   ///< of the mark at the engine's front
    double titleHeight = 0;
    PlanSetting set;
    QPointF front;      ///< middle of the room before the engine's front
    QPainterPath plate; ///< of the girdle; empty: not drawn

    [[nodiscard]] const PlanPlace* find(const QString& code) const;
    [[nodiscard]] QPointF pointOf(const PlanPlace& place) const { return set.frame.at(place.at); }
    [[nodiscard]] double radiusOf(const PlanPlace& place) const { return set.frame.at(place.radius); }
    [[nodiscard]] const Callout* calloutOf(const PlanPlace& place) const;
    [[nodiscard]] double line(double factor) const { return factor * 0.055 * type.em; } ///< pen width: 1 is thin
};

/// The pen of every drawn line: square ends, sharp corners.
inline QPen solid(const QColor& colour, double width) {
    return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

/// The painters of the drawing's parts, in the order in which they are called.
void paintBlock(QPainter&, const PlanScene&, const Look&); ///< pan rail, bolt holes, bulkheads
void paintCrank(QPainter&, const PlanScene&, const Look&); ///< throws, rods, main caps, centre lines
/// The plate as a thin wash, under everything else.
void paintGirdleWash(QPainter&, const PlanScene&, const Look&);
void paintGirdle(QPainter&, const PlanScene&, const Look&);   ///< plate, cutout
void paintHeights(QPainter&, const PlanScene&, const Look&);  ///< flushness
void paintLoads(QPainter&, const PlanScene&, const Look&);    ///< forces on the caps
void paintStuds(QPainter&, const PlanScene&, const Look&);    ///< main studs with nuts and washers, rod fasteners
void paintLoose(QPainter&, const PlanScene&, const Look&);    ///< pickup, dipstick
void paintJournals(QPainter&, const PlanScene&, const Look&); ///< cap numbers; symbols of the journals' places
void paintNumbers(QPainter&, const PlanScene&, const Look&);  ///< the tightening sequence
void paintWays(QPainter&, const PlanScene&, const Look&);     ///< FRONT, LEFT, RIGHT, the title

} // namespace caprail
