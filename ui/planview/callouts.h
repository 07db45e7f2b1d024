// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QFont>
#include <QPolygonF>
#include <planview/plan_frame.h>
#include <planview/plan_places.h>
#include <session/look.h>

class QPainter;
class QPaintDevice;

namespace caprail {

/// Measures texts for what is painted on.
struct PlanType {
    QFont font;
    const QPaintDevice* device = nullptr;
    double em = 0; ///< height of a line of `font`; everything that is not text is drawn in parts of it

    PlanType(const QFont& base, const QPaintDevice* on);
    /// The font times a factor; `isBold` for figures.
    [[nodiscard]] QFont sized(double factor, bool isBold = false) const;
    [[nodiscard]] QSizeF sizeOf(const QString& text, const QFont& with) const;
};

/// A box beside the drawing with a leader to its place: badge, label, figure, note.
struct Callout {
    std::size_t place = 0; ///< index into the scene's places
    const PlanMark* mark = nullptr;
    QRectF box;
    QPolygonF leader; ///< from the symbol's edge to the box
};

struct CalloutLayout {
    std::vector<Callout> callouts;
    double scale = 1;         ///< of their texts
    int rows = 0;             ///< in both lanes together
    double farthestShift = 0; ///< the most that one stands away from where its leader leaves the drawing
};

/// The frame of a drawing together with the callouts around it: each is laid out for the other.
struct PlanSetting {
    PlanFrame frame;
    CalloutLayout around;
};

/// Fits block and callouts into `room`; `frontRoom` is kept free before the engine's front. The callouts stand in as
/// few rows as hold them. When they crowd out the block or each other, their texts are made smaller; when room is left
/// over, larger, for whoever reads from a step away.
PlanSetting setPlan(const PlanGeometry& size, const PlanOrientation& orientation, const QRectF& room, double frontRoom,
                    const std::vector<PlanPlace>& places, const std::vector<const PlanMark*>& marks,
                    const PlanType& type);

void paintLeader(QPainter& painter, const Callout& callout, bool isSelected, const PlanType& type, const Look& look);
void paintCallout(QPainter& painter, const Callout& callout, const QString& label, bool isFlat, double scale,
                  bool isSelected, const PlanType& type, const Look& look);

} // namespace caprail
