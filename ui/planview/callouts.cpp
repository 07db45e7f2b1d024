// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/callouts.h>

#include <QFontMetricsF>
#include <QPainter>
#include <planview/callout_text.h>
#include <planview/state_shape.h>

namespace caprail {

PlanType::PlanType(const QFont& base, const QPaintDevice* on) : font(base), device(on) {
    em = device == nullptr ? QFontMetricsF(font).height() : QFontMetricsF(font, device).height();
}

QFont PlanType::sized(double factor, bool isBold) const {
    QFont made = font;
    if (font.pointSizeF() > 0) {
        made.setPointSizeF(font.pointSizeF() * factor);
    } else {
        made.setPixelSize(std::max(1, qRound(font.pixelSize() * factor)));
    }
    made.setBold(isBold);
    return made;
}

QSizeF PlanType::sizeOf(const QString& text, const QFont& with) const {
    const QFontMetricsF metrics = device == nullptr ? QFontMetricsF(with) : QFontMetricsF(with, device);
    return {metrics.horizontalAdvance(text), metrics.ascent() + metrics.descent()};
}

CalloutText::CalloutText(const PlanMark& of, const QString& withLabel, bool flat, double scale, const PlanType& type)
    : mark(of), label(withLabel), isFlat(flat), small(type.sized(0.8 * scale)), large(type.sized(1.3 * scale, true)),
      pad(0.26 * scale * type.em), badge(0.36 * scale * type.em) {
    const QSizeF labelSize = type.sizeOf(label, small);
    const QSizeF figureSize = mark.figure.isEmpty() ? QSizeF() : type.sizeOf(mark.figure, large);
    const QSizeF noteSize = mark.note.isEmpty() ? QSizeF() : type.sizeOf(mark.note, small);
    // Figures have no descenders: their line is taken in to the digits.
    figureHeight = 0.88 * figureSize.height();
    headWidth = 2 * badge + pad + labelSize.width();
    headHeight = std::max(2 * badge, 0.98 * labelSize.height());
    noteHeight = 0.95 * noteSize.height();
    const double figureGap = mark.figure.isEmpty() ? 0 : 1.2 * pad;
    if (isFlat) {
        const double line = headWidth + figureGap + figureSize.width();
        size = {std::max(line, noteSize.width()) + 2.4 * pad,
                std::max(headHeight, figureHeight) + noteHeight + 1.3 * pad};
    } else {
        size = {std::max({headWidth, figureSize.width(), noteSize.width()}) + 2.4 * pad,
                headHeight + figureHeight + noteHeight + 1.6 * pad};
    }
}

void paintLeader(QPainter& painter, const Callout& callout, bool isSelected, const PlanType& type, const Look& look) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(isSelected ? look.accent : look.quiet, (isSelected ? 0.12 : 0.05) * type.em));
    painter.drawPolyline(callout.leader);
}

void paintCallout(QPainter& painter, const Callout& callout, const QString& label, bool isFlat, double scale,
                  bool isSelected, const PlanType& type, const Look& look) {
    const PlanMark& mark = *callout.mark;
    const CalloutText text(mark, label, isFlat, scale, type);
    const double corner = 0.22 * type.em * scale;
    const QRectF box = callout.box;
    if (isSelected) {
        const double out = 0.2 * type.em * scale;
        painter.setBrush(look.paper);
        painter.setPen(QPen(look.accent, 0.16 * type.em));
        painter.drawRoundedRect(box.adjusted(-out, -out, out, out), corner * 1.4, corner * 1.4);
    }
    painter.fillPath(calloutShape(box, mark.state, corner), look.paper);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(calloutPen(mark.state, look, 0.075 * type.em));
    painter.drawPath(calloutShape(box, mark.state, corner));

    const double left = box.left() + 1.2 * text.pad;
    const double width = box.width() - 2.4 * text.pad;
    const double line = isFlat ? std::max(text.headHeight, text.figureHeight) : text.headHeight;
    const double top = box.top() + (isFlat ? 0.65 : 0.8) * text.pad;
    // On a tall callout the head is centred over the figure; on a flat one it leads the line.
    const double head = isFlat ? left : box.center().x() - text.headWidth / 2;
    paintBadge(painter, {head + text.badge, top + line / 2}, text.badge, mark.state, look);
    painter.setPen(look.quiet);
    painter.setFont(text.small);
    painter.drawText(QRectF(head + 2 * text.badge + text.pad, top, width, line),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, label);
    painter.setPen(look.ink);
    painter.setFont(text.large);
    if (isFlat) {
        painter.drawText(QRectF(left, top, width, line), Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip,
                         mark.figure);
    } else {
        painter.drawText(QRectF(left, top + line, width, text.figureHeight), Qt::AlignCenter | Qt::TextDontClip,
                         mark.figure);
    }
    painter.setPen(look.quiet);
    painter.setFont(text.small);
    const double bottom = box.bottom() - (isFlat ? 0.55 : 0.7) * text.pad;
    painter.drawText(QRectF(left, bottom - text.noteHeight, width, text.noteHeight), Qt::AlignCenter | Qt::TextDontClip,
                     mark.note);
}

} // namespace caprail
