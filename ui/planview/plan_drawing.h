// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFont>
#include <memory>
#include <planview/plan_content.h>
#include <session/look.h>

class QPainter;
class QPaintDevice;

namespace caprail {

struct PlanScene;

/// The plan drawing of one pan rail, laid out for an area: what is where, and the painting of it. One routine for the
/// screen, the printer and the sheet. Coordinates are those of the painter; the area's size is in the same units.
class PlanDrawing {
public:
    /// Lays the drawing out inside `area` with texts in sizes about `font`; everything else is drawn in proportion to
    /// the font. `device` is what will be painted on (null: the screen), so that texts are measured for it. When the
    /// callouts do not fit, their texts are made smaller until they do; they never overlap.
    PlanDrawing(PlanContent content, const PlanOrientation& orientation, const QRectF& area, const QFont& font,
                const QPaintDevice* device = nullptr);

    void paint(QPainter& painter, const Look& look) const;

    /// Paints another place as the selected one from now on; nothing is laid out anew for it.
    void select(const QString& place) { m_selected = place; }

    /// As it was given; what is selected now may be another place.
    [[nodiscard]] const PlanContent& content() const;
    [[nodiscard]] const PlanMark* markOf(const QString& place) const; ///< null: it carries none
    /// The places that can be selected, in the order of a pass.
    [[nodiscard]] QStringList places() const;
    /// "cap 3 right", "main 3 right outer", "throw 2"; empty for a place that is not drawn.
    [[nodiscard]] QString nameOf(const QString& place) const;
    /// "cap 3 right, 57.5, S014+S022, stale": the name with what stands beside it and its state in words.
    [[nodiscard]] QString sentenceOf(const QString& place) const;

    /// The place at a point: that of the callout under it, else the nearest symbol within reach; empty: none.
    [[nodiscard]] QString placeAt(QPointF point) const;
    /// The symbol and its callout; null for a place that is not drawn.
    [[nodiscard]] QRectF rectOf(const QString& place) const;
    [[nodiscard]] QPointF pointOf(const QString& place) const;  ///< the middle of the symbol
    [[nodiscard]] QRectF calloutOf(const QString& place) const; ///< null: it carries no mark
    /// The next place in that direction as it lies on the drawing; the place itself when there is none.
    [[nodiscard]] QString neighbour(const QString& place, PlanDirection direction) const;

    /// Where the mark "FRONT" stands.
    [[nodiscard]] QPointF frontAt() const;
    /// The factor of the callouts' texts: below 1 they were made smaller to fit, above 1 larger to fill spare room.
    [[nodiscard]] qreal calloutScale() const;

private:
    std::shared_ptr<const PlanScene> m_scene;
    QString m_selected;
};

/// Lays out with the painter's font and paints, in one call.
void drawPlan(QPainter& painter, const QRectF& area, const PlanContent& content, const PlanOrientation& orientation,
              const Look& look);

} // namespace caprail
