// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/pickup/section.h>

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <ledger/band_names.h>
#include <stations/pickup/gauge.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class PickupSectionText {
    Q_DECLARE_TR_FUNCTIONS(PickupSectionText)
};

/// Sizes that an unmeasured term is drawn at, so that the section has a shape before anything is measured.
Length usual(PickupTerm term) {
    switch (term) {
    case PickupTerm::panDepth:
        return inches(7.5);
    case PickupTerm::gasket:
        return inches(0.06);
    case PickupTerm::plate:
        return inches(0.375);
    case PickupTerm::pickupDepth:
        break;
    }
    return inches(7.6);
}

class SectionDrawing {
public:
    SectionDrawing(QPainter& painter, const QRectF& area, const PickupSection& section, const Look& look)
        : m_painter(painter), m_area(area), m_section(section), m_look(look) {
        m_fontSize = std::clamp(area.height() / 34.0, 8.0, 13.0);
        QFont font = painter.font();
        font.setPixelSize(static_cast<int>(m_fontSize));
        painter.setFont(font);
        const double deepest = std::max(depth(PickupTerm::pickupDepth), floorDepth());
        const double block = m_fontSize * 2.6;
        m_rail = area.top() + block + m_fontSize * 1.4;
        m_scale = (area.bottom() - m_fontSize * 2.2 - m_rail) / deepest;
        m_left = area.left() + area.width() * 0.24;
        m_right = area.right() - area.width() * 0.25;
        m_block = block;
    }

    void draw() {
        drawBlock();
        drawPlate();
        drawPan();
        drawPickup();
        drawDimensions();
    }

private:
    [[nodiscard]] bool isMeasured(PickupTerm term) const { return m_section.terms.contains(term); }
    [[nodiscard]] double depth(PickupTerm term) const {
        const auto at = m_section.terms.find(term);
        return inInches(at == m_section.terms.end() ? usual(term) : at->second);
    }
    [[nodiscard]] double flangeDepth() const { return depth(PickupTerm::plate) + depth(PickupTerm::gasket); }
    [[nodiscard]] double floorDepth() const { return flangeDepth() + depth(PickupTerm::panDepth); }
    [[nodiscard]] double y(double inchesBelowRail) const { return m_rail + inchesBelowRail * m_scale; }

    void outline(PickupTerm term) {
        const bool isSelected = m_section.selected == term;
        QPen pen(isSelected ? m_look.accent : m_look.ink, isSelected ? 2.4 : 1.4);
        pen.setStyle(isMeasured(term) ? Qt::SolidLine : Qt::DashLine);
        m_painter.setPen(pen);
    }
    void hatch(const QPolygonF& shape, PickupTerm term, bool isForward) {
        outline(term);
        QBrush brush(m_section.selected == term ? m_look.accent : m_look.quiet,
                     isForward ? Qt::BDiagPattern : Qt::FDiagPattern);
        m_painter.setBrush(brush);
        m_painter.drawPolygon(shape);
    }

    void drawBlock() {
        const double wide = m_area.width() * 0.09;
        m_painter.setPen(QPen(m_look.ink, 1.4));
        m_painter.setBrush(QBrush(m_look.quiet, Qt::BDiagPattern));
        for (const double x : {m_left - wide * 0.5, m_right - wide * 0.5}) {
            m_painter.drawRect(QRectF(x, m_rail - m_block, wide, m_block));
        }
        m_painter.setPen(m_look.quiet);
        m_painter.drawText(QRectF(m_area.left(), m_rail - m_block, m_left - wide * 0.5 - 8 - m_area.left(), m_block),
                           Qt::AlignRight | Qt::AlignVCenter, PickupSectionText::tr("pan rail"));
    }

    void drawPlate() {
        const double wide = m_area.width() * 0.09;
        const double bottom = y(depth(PickupTerm::plate));
        if (depth(PickupTerm::plate) > 0) {
            hatch(QPolygonF(QRectF(m_left - wide * 0.5, m_rail, m_right - m_left + wide, bottom - m_rail)),
                  PickupTerm::plate, false);
        }
        for (const double x : {m_left - wide * 0.5, m_right - wide * 0.5}) {
            outline(PickupTerm::gasket);
            m_painter.setBrush(m_section.selected == PickupTerm::gasket ? m_look.accent : m_look.ink);
            m_painter.drawRect(QRectF(x, bottom, wide, std::max(1.0, y(flangeDepth()) - bottom)));
        }
    }

    void drawPan() {
        const double wide = m_area.width() * 0.09;
        const double wall = std::max(3.0, m_fontSize * 0.35);
        const double flange = y(flangeDepth());
        const double floor = y(floorDepth());
        const double slope = m_area.width() * 0.03;
        QPolygonF pan;
        pan << QPointF(m_left - wide * 0.5, flange) << QPointF(m_left + wall, flange)
            << QPointF(m_left + slope + wall, floor) << QPointF(m_right - slope - wall, floor)
            << QPointF(m_right - wall, flange) << QPointF(m_right + wide * 0.5, flange)
            << QPointF(m_right + wide * 0.5, flange + wall) << QPointF(m_right, flange + wall)
            << QPointF(m_right - slope, floor + wall) << QPointF(m_left + slope, floor + wall)
            << QPointF(m_left, flange + wall) << QPointF(m_left - wide * 0.5, flange + wall);
        outline(PickupTerm::panDepth);
        m_painter.setBrush(m_section.selected == PickupTerm::panDepth ? m_look.accent : m_look.quiet);
        m_painter.drawPolygon(pan);
    }

    void drawPickup() {
        const double x = middle();
        const double foot = y(depth(PickupTerm::pickupDepth));
        const double tube = m_area.width() * 0.022;
        const double footWide = m_area.width() * 0.11;
        const double footHigh = std::min(m_fontSize * 2.0, (foot - m_rail) * 0.3);
        QPolygonF shape;
        shape << QPointF(x - tube, m_rail - m_block) << QPointF(x + tube, m_rail - m_block)
              << QPointF(x + tube, foot - footHigh) << QPointF(x + footWide, foot - footHigh * 0.4)
              << QPointF(x + footWide, foot) << QPointF(x - footWide, foot)
              << QPointF(x - footWide, foot - footHigh * 0.4) << QPointF(x - tube, foot - footHigh);
        outline(PickupTerm::pickupDepth);
        m_painter.setBrush(m_look.paper);
        m_painter.drawPolygon(shape);
    }

    /// One dimension line between two depths with its name and value to the side.
    void dimension(double x, double from, double to, PickupTerm term, bool isTextLeft) {
        const bool isSelected = m_section.selected == term;
        const QColor colour = isSelected ? m_look.accent : m_look.ink;
        m_painter.setPen(QPen(colour, isSelected ? 1.8 : 1.0));
        m_painter.setBrush(colour);
        m_painter.drawLine(QPointF(x, y(from)), QPointF(x, y(to)));
        for (const auto& [end, way] : {std::pair(from, 1.0), std::pair(to, -1.0)}) {
            const double tip = y(end);
            const double size = m_fontSize * 0.45;
            m_painter.drawPolygon(QPolygonF{QPointF(x, tip), QPointF(x - size * 0.5, tip + way * size * 1.6),
                                            QPointF(x + size * 0.5, tip + way * size * 1.6)});
        }
        // Beside the line: out to the edge on the left, up to the pan's wall on the right.
        const double room = isTextLeft ? x - m_area.left() : m_right - m_area.width() * 0.05 - x;
        const QRectF box(isTextLeft ? m_area.left() : x + 6, (y(from) + y(to)) / 2 - m_fontSize * 2.2, room - 8,
                         m_fontSize * 4.4);
        m_painter.drawText(box, (isTextLeft ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter | Qt::TextWordWrap,
                           label(term));
    }

    [[nodiscard]] QString label(PickupTerm term) const {
        const auto at = m_section.terms.find(term);
        return qtShown(term) + QLatin1Char('\n') +
               (at == m_section.terms.end() ? PickupSectionText::tr("not measured")
                                            : qtText(format(at->second, m_section.units)));
    }

    void extension(double x1, double x2, double depthInches) {
        m_painter.setPen(QPen(m_look.faint, 1.0));
        m_painter.drawLine(QPointF(x1, y(depthInches)), QPointF(x2, y(depthInches)));
    }

    /// Thin layers have no room for a dimension line of their own: a leader to one side.
    void leader(double depthInches, double textY, PickupTerm term) {
        const double edge = m_right + m_area.width() * 0.045;
        const QColor colour = m_section.selected == term ? m_look.accent : m_look.ink;
        m_painter.setPen(QPen(colour, 1.0));
        const double x = edge + m_area.width() * 0.02;
        m_painter.drawLine(QPointF(edge, y(depthInches)), QPointF(x, textY));
        m_painter.drawText(QRectF(x + 4, textY - m_fontSize * 2.2, m_area.right() - x - 4, m_fontSize * 4.4),
                           Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, label(term));
    }

    void drawDimensions() {
        const double xPan = m_left - m_area.width() * 0.075;
        extension(xPan - 4, m_left, flangeDepth());
        extension(xPan - 4, m_left + m_area.width() * 0.05, floorDepth());
        dimension(xPan, flangeDepth(), floorDepth(), PickupTerm::panDepth, true);

        leader(depth(PickupTerm::plate) / 2, m_rail - m_block * 0.35, PickupTerm::plate);
        leader((depth(PickupTerm::plate) + flangeDepth()) / 2, m_rail + m_fontSize * 4.6, PickupTerm::gasket);

        const double xPickup = middle() + m_area.width() * 0.042;
        const double foot = depth(PickupTerm::pickupDepth);
        dimension(xPickup, 0, foot, PickupTerm::pickupDepth, false);
        drawClearance(foot);
    }

    void drawClearance(double foot) {
        const double x = middle() - m_area.width() * 0.135;
        const QColor colour = m_look.of(m_section.state);
        m_painter.setPen(QPen(colour, 1.6));
        m_painter.drawLine(QPointF(x, y(foot)), QPointF(middle(), y(foot)));
        m_painter.drawLine(QPointF(x, std::min(y(foot), y(floorDepth()))),
                           QPointF(x, std::max(y(foot), y(floorDepth()))));
        const QString value = m_section.clearance ? qtText(format(*m_section.clearance, m_section.units))
                                                  : PickupSectionText::tr("not known yet");
        m_painter.drawText(QRectF(m_left + m_area.width() * 0.05, y(floorDepth()) + m_fontSize * 0.5,
                                  m_right - m_left - m_area.width() * 0.1, m_fontSize * 1.6),
                           Qt::AlignCenter, PickupSectionText::tr("clearance %1").arg(value));
    }

    [[nodiscard]] double middle() const { return (m_left + m_right) / 2; }

    QPainter& m_painter;
    QRectF m_area;
    const PickupSection& m_section;
    const Look& m_look;
    double m_fontSize = 12;
    double m_rail = 0;  ///< y of the rail plane
    double m_scale = 1; ///< device units per inch of height
    double m_left = 0, m_right = 0, m_block = 0;
};

} // namespace

PickupSection pickupSectionOf(const Facts& facts, const Assessment& assessment, const Units& units) {
    PickupSection section;
    section.terms = assessment.pickup.means;
    section.clearance = assessment.pickup.clearance;
    section.expandedUncertainty = assessment.pickup.expandedUncertainty;
    if (const BandFact* band = facts.bandNamed(bands::pickupClearance)) {
        section.band = band->band;
    }
    const auto check = std::ranges::find(assessment.checks, CheckKind::pickup, &Check::kind);
    if (check != assessment.checks.end()) {
        section.state = check->state;
    }
    section.units = units;
    return section;
}

void drawPickupSection(QPainter& painter, const QRectF& area, const PickupSection& section, const Look& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double gaugeWide = area.width() * 0.2;
    SectionDrawing(painter, area.adjusted(0, 0, -gaugeWide, 0), section, look).draw();
    drawPickupGauge(painter, QRectF(area.right() - gaugeWide, area.top(), gaugeWide, area.height()), section, look);
    painter.restore();
}

} // namespace caprail
