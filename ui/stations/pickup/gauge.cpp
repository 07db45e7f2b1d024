// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/pickup/gauge.h>

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class PickupGaugeText {
    Q_DECLARE_TR_FUNCTIONS(PickupGaugeText)
};

} // namespace

void drawPickupGauge(QPainter& painter, const QRectF& area, const PickupSection& section, const Look& look) {
    if (!section.band) {
        return;
    }
    const double fontSize = painter.fontInfo().pixelSize();
    const double head = fontSize * 3.2;
    const double floor = area.bottom() - fontSize * 2.2;
    const double top = area.top() + head;
    const double clearance = section.clearance ? inInches(*section.clearance) : 0.0;
    const double lo = inInches(section.band->lo());
    const double hi = inInches(section.band->hi());
    // The scale grows with what must be seen, never the other way round: nothing is drawn off its place.
    const double tallest = std::max({hi * 1.35, clearance * 1.15, 0.05});
    const double deepest = std::min(0.0, clearance * 1.15);
    const auto y = [&](double heightInches) {
        return floor - (heightInches - deepest) / (tallest - deepest) * (floor - top);
    };
    const double left = area.left() + area.width() * 0.1;
    const double width = area.width() * 0.3;
    const QRectF bandBox(left, y(hi), width, y(lo) - y(hi));

    painter.setPen(look.quiet);
    painter.drawText(QRectF(area.left(), area.top(), area.width(), head), Qt::AlignLeft | Qt::AlignTop,
                     PickupGaugeText::tr("clearance,\nenlarged"));

    painter.setPen(QPen(look.ink, 1.6));
    painter.drawLine(QPointF(left - 4, y(0)), QPointF(area.right() - 4, y(0)));
    painter.fillRect(QRectF(left - 4, y(0), area.right() - left, fontSize * 0.8), QBrush(look.quiet, Qt::BDiagPattern));
    painter.setPen(look.quiet);
    painter.drawText(QRectF(left, y(0) + fontSize * 0.8, area.width(), fontSize * 1.4), Qt::AlignLeft,
                     PickupGaugeText::tr("pan floor"));

    painter.setPen(QPen(look.good, 1.4));
    painter.setBrush(QBrush(look.good, Qt::Dense6Pattern));
    painter.drawRect(bandBox);
    painter.setPen(QPen(look.good, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(left, y((lo + hi) / 2)), QPointF(left + width, y((lo + hi) / 2)));
    painter.setPen(look.ink);
    const auto figure = [&](double heightInches) {
        painter.drawText(QRectF(left + width + 6, y(heightInches) - fontSize, area.width(), fontSize * 2),
                         Qt::AlignLeft | Qt::AlignVCenter, qtText(formatBare(inches(heightInches), section.units)));
    };
    const bool isAtLo = section.clearance && std::abs(y(lo) - y(clearance)) < fontSize * 1.2;
    const bool isAtHi = section.clearance && std::abs(y(hi) - y(clearance)) < fontSize * 1.2;
    if (!isAtLo) {
        figure(lo);
    }
    if (!isAtHi) {
        figure(hi);
    }
    if (section.clearance) {
        const double uncertainty = section.expandedUncertainty / static_cast<double>(nanometresPerInch);
        const QColor colour = look.of(section.state);
        painter.setPen(QPen(colour, 2.6));
        painter.drawLine(QPointF(left - 8, y(clearance)), QPointF(left + width + 4, y(clearance)));
        painter.setPen(QPen(colour, 1.4));
        const double x = left + width / 2;
        painter.drawLine(QPointF(x, y(clearance + uncertainty)), QPointF(x, y(clearance - uncertainty)));
        for (const double end : {clearance + uncertainty, clearance - uncertainty}) {
            painter.drawLine(QPointF(x - 5, y(end)), QPointF(x + 5, y(end)));
        }
        QFont font = painter.font();
        font.setBold(true);
        painter.setFont(font);
        painter.drawText(QRectF(left + width + 6, y(clearance) - fontSize, area.width(), fontSize * 2),
                         Qt::AlignLeft | Qt::AlignVCenter, qtText(formatBare(*section.clearance, section.units)));
    }
}

} // namespace caprail
