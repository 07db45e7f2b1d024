// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/board.h>

#include <QPainter>
#include <algorithm>
#include <stations/common/station_text.h>
#include <stations/girdle/words.h>

namespace caprail {

namespace {

/// The long text where it fits, else the short one.
QString fitting(const QPainter& painter, double width, const QString& text, const QString& shorter) {
    return painter.fontMetrics().horizontalAdvance(text) <= width ? text : shorter;
}

/// Where the leaves of a cell lie, and how they are told apart.
struct Pile {
    QRectF area;
    double scale = 0;   ///< pixels per nanometre
    bool isPlan = false; ///< dashed and hollow: nothing of it lies there yet
};

/// The leaves from the washer upwards, thickest first, to scale.
void drawLeaves(QPainter& painter, const Pile& pile, const std::vector<DrawnLeaf>& leaves, const Look& look) {
    double y = pile.area.bottom();
    for (const DrawnLeaf& leaf : leaves) {
        const double height = static_cast<double>(leaf.thickness.value()) * pile.scale;
        painter.setPen(QPen(pile.isPlan ? look.accent : look.ink, 1.0,
                            pile.isPlan || !leaf.isMeasured ? Qt::DashLine : Qt::SolidLine));
        painter.setBrush(pile.isPlan       ? QBrush(Qt::NoBrush)
                         : leaf.isMeasured ? QBrush(look.faint)
                                           : QBrush(look.faint, Qt::Dense5Pattern));
        painter.drawRect(QRectF(pile.area.left(), y - height, pile.area.width(), height));
        y -= height;
    }
}

/// Each leaf's name beside it, moved up where they would overlap.
void nameLeaves(QPainter& painter, const Pile& pile, double right, const std::vector<DrawnLeaf>& leaves,
                const Units& units, const Look& look) {
    const double line = painter.fontMetrics().height();
    double y = pile.area.bottom();
    double labelY = pile.area.bottom() + line * 0.25;
    for (const DrawnLeaf& leaf : leaves) {
        const double height = static_cast<double>(leaf.thickness.value()) * pile.scale;
        const double middle = y - height / 2;
        labelY = std::min(labelY - line * 0.98, middle + line / 2 - line * 0.98 + line * 0.45);
        const QRectF label(pile.area.right() + 12, labelY, right - pile.area.right() - 12, line);
        painter.setPen(look.quiet);
        painter.drawLine(QPointF(pile.area.right(), middle), QPointF(label.left() - 2, label.center().y()));
        painter.setPen(pile.isPlan ? look.accent : look.ink);
        const QString text = leaf.name + QStringLiteral(" ") + qtText(formatShort(leaf.thickness, units)) +
                             (leaf.isMeasured ? QString() : QStringLiteral("?"));
        painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(label.width())));
        y -= height;
    }
}

/// Names under a word, line by line; gives where the next text may begin.
double listLeaves(QPainter& painter, QRectF column, const QString& word, const std::vector<DrawnLeaf>& leaves) {
    const double line = painter.fontMetrics().height();
    QStringList lines = leafNames(leaves);
    if (lines.isEmpty()) {
        lines << GirdleBoard::tr("bare");
    }
    lines.prepend(word);
    for (const QString& text : lines) {
        painter.drawText(QRectF(column.left(), column.top(), column.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(column.width())));
        column.setTop(column.top() + line * 0.98);
    }
    return column.top() + line * 0.4;
}

/// What stands at the left, solid; what is planned instead beside it, dashed; the names of both at the right.
void drawPiles(QPainter& painter, const QRectF& room, const BoardCell& cell, double scale, const Units& units,
               const Look& look) {
    const bool isPlanned = cell.plannedResidual.has_value();
    const bool isBoth = cell.isBuilt && isPlanned;
    const double width = isBoth ? std::max(16.0, room.width() * 0.17) : std::max(22.0, room.width() * 0.26);
    const Pile standing{QRectF(room.left(), room.top(), width, room.height()), scale, false};
    Pile plan = standing;
    plan.isPlan = true;
    if (isBoth) {
        plan.area.translate(width + 5, 0);
    }
    const double rightmost = isBoth ? plan.area.right() : standing.area.right();
    painter.setPen(QPen(look.ink, 1.6));
    painter.drawLine(QPointF(room.left() - 2, room.bottom()), QPointF(rightmost + 4, room.bottom()));
    if (isPlanned) {
        drawLeaves(painter, plan, cell.planned, look);
    }
    if (cell.isBuilt) {
        drawLeaves(painter, standing, cell.leaves, look);
    }
    if (isBoth) {
        QRectF column(rightmost + 8, room.top(), room.right() - rightmost - 8, room.height());
        painter.setPen(look.accent);
        column.setTop(listLeaves(painter, column, GirdleBoard::tr("planned"), cell.planned));
        painter.setPen(look.ink);
        listLeaves(painter, column, GirdleBoard::tr("stands"), cell.leaves);
    } else {
        nameLeaves(painter, isPlanned ? plan : standing, room.right(), isPlanned ? cell.planned : cell.leaves, units,
                   look);
    }
    if (cell.gap) {
        painter.setPen(QPen(look.accent, 1.2, Qt::DotLine));
        const double gapY = room.bottom() - static_cast<double>(cell.gap->value()) * scale;
        painter.drawLine(QPointF(room.left() - 3, gapY), QPointF(rightmost + 6, gapY));
    }
}

/// The residual, what the straightedge should say, and how the stack stands: three lines.
void drawFoot(QPainter& painter, QRectF foot, const BoardCell& cell, const Units& units, const Look& look) {
    const QFont plain = painter.font();
    const double line = painter.fontMetrics().height();
    const auto residual = cell.residual ? cell.residual : cell.plannedResidual;
    const bool isPlanOnly = !cell.residual && cell.plannedResidual;
    if (residual) {
        QFont bold = plain;
        bold.setBold(!isPlanOnly);
        painter.setFont(bold);
        const bool isUnmet = cell.isUnmet && isPlanOnly;
        painter.setPen(isUnmet ? look.out : isPlanOnly ? look.accent : look.ink);
        const QString figure = signedShort(*residual, units);
        painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                         isUnmet      ? sign(CheckState::out) + QLatin1Char(' ') + figure
                         : isPlanOnly ? fitting(painter, foot.width(), GirdleBoard::tr("planned %1").arg(figure), figure)
                                      : figure);
        painter.setFont(plain);
        foot.translate(0, line);
        const QString feel = qtShown(*cell.feel);
        painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                         fitting(painter, foot.width(),
                                 isUnmet ? GirdleBoard::tr("nearest: %1").arg(feel)
                                         : GirdleBoard::tr("should be: %1").arg(feel),
                                 feel));
        foot.translate(0, line);
    } else {
        foot.translate(0, line * 2);
    }
    painter.setPen(cell.state == CheckState::notDone ? look.quiet : look.of(cell.state));
    const QString footing = sign(cell.state) + QStringLiteral(" ") + cell.footing;
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(footing, Qt::ElideRight, static_cast<int>(foot.width())));
}

} // namespace

void drawBoardCell(QPainter& painter, const QRectF& area, const BoardCell& cell, Length tallest, bool isSelected,
                   const Units& units, const Look& look) {
    painter.save();
    const QFont plain = painter.font();
    const double line = painter.fontMetrics().height();
    painter.setPen(QPen(isSelected ? look.accent : look.faint, isSelected ? 2.4 : 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(2, 2, -2, -2));
    const QRectF inner = area.adjusted(8, 6, -6, -5);

    QFont large = plain;
    large.setPixelSize(static_cast<int>(plain.pixelSize() * 1.45));
    large.setBold(true);
    painter.setFont(large);
    painter.setPen(isSelected ? look.accent : look.ink);
    painter.drawText(inner, Qt::AlignLeft | Qt::AlignTop, qtText(code(cell.position)));
    painter.setFont(plain);
    painter.setPen(look.quiet);
    const QString gap = cell.gap ? qtText(formatShort(*cell.gap, units)) : GirdleBoard::tr("no gap");
    painter.drawText(inner, Qt::AlignRight | Qt::AlignTop,
                     fitting(painter, inner.width() * 0.65, cell.gap ? GirdleBoard::tr("gap %1").arg(gap) : gap, gap) +
                         (cell.isPinned ? QLatin1Char('\n') + GirdleBoard::tr("pinned") : QString()));

    // The leaves, thickest at the bottom on the washer, to scale; the gap as a dotted line above them.
    const QRectF room(inner.left(), inner.top() + line * 2.1, inner.width(), inner.height() - line * 5.6);
    drawPiles(painter, room, cell, tallest > Length() ? room.height() / static_cast<double>(tallest.value()) : 0.0, units,
              look);
    painter.setFont(plain);
    drawFoot(painter, QRectF(inner.left(), inner.bottom() - line * 3.1, inner.width(), line), cell, units, look);
    painter.restore();
}

} // namespace caprail
