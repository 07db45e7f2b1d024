// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/board.h>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <set>
#include <stations/girdle/words.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

DrawnLeaf leafOf(const std::string& shim, const Facts& facts) {
    const auto at = facts.shims.find(shim);
    if (at == facts.shims.end()) {
        return {qtText(shim), Length(), false};
    }
    return {qtText(shim), at->second.thickness(), at->second.measured().has_value()};
}

QString footingOf(Position p, const std::vector<std::string>* planned, const Facts& facts) {
    const auto built = facts.stacks.find(p);
    if (built == facts.stacks.end()) {
        return GirdleBoard::tr("not built");
    }
    const QString on = built->second.isOn ? GirdleBoard::tr("on") : GirdleBoard::tr("off");
    const std::vector<std::string>& shims = built->second.shims;
    const bool isAsPlanned =
        planned == nullptr || std::set(shims.begin(), shims.end()) == std::set(planned->begin(), planned->end());
    if (isAsPlanned) {
        return GirdleBoard::tr("built, %1").arg(on);
    }
    return GirdleBoard::tr("built otherwise");
}

/// The long text where it fits, else the short one.
QString fitting(const QPainter& painter, double width, const QString& text, const QString& shorter) {
    return painter.fontMetrics().horizontalAdvance(text) <= width ? text : shorter;
}

} // namespace

std::vector<BoardCell> boardCells(const RecordSession& session, const PlanOutcome* outcome) {
    const Facts& facts = session.facts();
    const Assessment& assessment = session.assessment();
    std::vector<BoardCell> cells;
    if (!facts.layout) {
        return cells;
    }
    const Band band = residualBand(facts).band; // the plan's sentence says when nobody set it
    for (const Position p : facts.layout->positions()) {
        BoardCell cell;
        cell.position = p;
        const auto gap = assessment.gaps.find(p);
        cell.gap = gap == assessment.gaps.end() ? std::nullopt : gap->second.accepted;
        cell.isPinned = facts.pins.contains(p);
        if (const Check* check = assessment.find("stack:" + code(p))) {
            cell.state = check->state;
        }
        const PlannedStack* planned = nullptr;
        if (outcome != nullptr && outcome->plan) {
            const auto at = std::ranges::find(outcome->plan->stacks, code(p), &PlannedStack::position);
            planned = at == outcome->plan->stacks.end() ? nullptr : &*at;
        }
        std::vector<std::string> shims;
        if (planned != nullptr) {
            cell.isUnmet = !planned->inBand;
            const auto unmet = std::ranges::find(outcome->plan->unmet, code(p), &UnmetPosition::position);
            shims = cell.isUnmet && unmet != outcome->plan->unmet.end() ? unmet->nearest : planned->shims;
            cell.footing = footingOf(p, &planned->shims, facts);
        } else {
            const auto built = facts.stacks.find(p);
            shims = built == facts.stacks.end() ? std::vector<std::string>() : built->second.shims;
            cell.footing = footingOf(p, nullptr, facts);
        }
        Length thickness;
        for (const std::string& shim : shims) {
            cell.leaves.push_back(leafOf(shim, facts));
            thickness += cell.leaves.back().thickness;
        }
        if (cell.gap && (planned != nullptr || facts.stacks.contains(p))) {
            cell.residual = *cell.gap - thickness;
            cell.feel = expectedFeel(*cell.residual, band);
        }
        cells.push_back(std::move(cell));
    }
    return cells;
}

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
                         (cell.isPinned ? GirdleBoard::tr("\npinned") : QString()));

    // The leaves, thickest at the bottom on the washer, to scale; the gap as a dashed line above them.
    const QRectF pile(inner.left(), inner.top() + line * 2.1, std::max(22.0, inner.width() * 0.26),
                      inner.height() - line * 5.6);
    const double scale = tallest > Length() ? pile.height() / static_cast<double>(tallest.value()) : 0.0;
    painter.setPen(QPen(look.ink, 1.6));
    painter.drawLine(QPointF(pile.left() - 2, pile.bottom()), QPointF(pile.right() + 4, pile.bottom()));
    double y = pile.bottom();
    double labelY = pile.bottom() + line * 0.25;
    for (const DrawnLeaf& leaf : cell.leaves) {
        const double height = static_cast<double>(leaf.thickness.value()) * scale;
        const QRectF box(pile.left(), y - height, pile.width(), height);
        painter.setPen(QPen(look.ink, 1.0, leaf.isMeasured ? Qt::SolidLine : Qt::DashLine));
        painter.setBrush(leaf.isMeasured ? QBrush(look.faint) : QBrush(look.faint, Qt::Dense5Pattern));
        painter.drawRect(box);
        labelY = std::min(labelY - line * 0.98, box.center().y() + line / 2 - line * 0.98 + line * 0.45);
        const QRectF label(pile.right() + 12, labelY, inner.right() - pile.right() - 12, line);
        painter.setPen(look.quiet);
        painter.drawLine(QPointF(pile.right(), box.center().y()), QPointF(label.left() - 2, label.center().y()));
        painter.setPen(look.ink);
        const QString text = leaf.name + QStringLiteral(" ") + qtText(formatShort(leaf.thickness, units)) +
                             (leaf.isMeasured ? QString() : QStringLiteral("?"));
        painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(label.width())));
        y -= height;
    }
    if (cell.gap) {
        painter.setPen(QPen(look.accent, 1.2, Qt::DashLine));
        const double gapY = pile.bottom() - static_cast<double>(cell.gap->value()) * scale;
        painter.drawLine(QPointF(pile.left() - 3, gapY), QPointF(pile.right() + 6, gapY));
    }

    QRectF foot(inner.left(), inner.bottom() - line * 3.1, inner.width(), line);
    painter.setFont(plain);
    if (cell.residual) {
        QFont bold = plain;
        bold.setBold(true);
        painter.setFont(bold);
        painter.setPen(cell.isUnmet ? look.out : look.ink);
        painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                         (cell.isUnmet ? sign(CheckState::out) + QStringLiteral(" ") : QString()) +
                             signedShort(*cell.residual, units));
        painter.setFont(plain);
        foot.translate(0, line);
        const QString feel = qtShown(*cell.feel);
        painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                         fitting(painter, foot.width(),
                                 cell.isUnmet ? GirdleBoard::tr("nearest: %1").arg(feel)
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
    painter.restore();
}

GirdleBoard::GirdleBoard(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(360, 300);
    setAccessibleName(tr("Stacks by position"));
}

void GirdleBoard::show(std::vector<BoardCell> cells, const Units& units) {
    m_cells = std::move(cells);
    m_units = units;
    select(m_selected);
}

void GirdleBoard::select(Position position) {
    m_selected = position;
    const auto cell = std::ranges::find(m_cells, position, &BoardCell::position);
    if (cell != m_cells.end()) {
        QStringList leaves;
        for (const DrawnLeaf& leaf : cell->leaves) {
            leaves << leaf.name;
        }
        setAccessibleDescription(
            tr("%1: %2, %3").arg(qtText(describe(position)), leaves.join(QStringLiteral(" + ")), cell->footing));
    }
    update();
}

QRectF GirdleBoard::areaOf(Position position) const {
    const int first = m_cells.front().position.cap;
    const int caps = m_cells.back().position.cap - first + 1;
    const double width = static_cast<double>(this->width()) / caps;
    const double height = static_cast<double>(this->height()) / 2;
    return {(position.cap - first) * width, position.side == Side::left ? 0 : height, width, height};
}

void GirdleBoard::paintEvent(QPaintEvent*) {
    const Look look = screenLook();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), look.paper);
    if (m_cells.empty()) {
        painter.setPen(look.quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("Set the engine layout first: the stacks lie where it says."));
        return;
    }
    Length tallest = thou(10);
    for (const BoardCell& cell : m_cells) {
        tallest = std::max(tallest, cell.gap.value_or(Length()));
        Length pile;
        for (const DrawnLeaf& leaf : cell.leaves) {
            pile += leaf.thickness;
        }
        tallest = std::max(tallest, pile);
    }
    QFont font = painter.font();
    const double width = areaOf(m_cells.front().position).width();
    font.setPixelSize(std::clamp(static_cast<int>(width / 9.5), 9, 13));
    painter.setFont(font);
    for (const BoardCell& cell : m_cells) {
        drawBoardCell(painter, areaOf(cell.position), cell, tallest, cell.position == m_selected, m_units, look);
    }
}

void GirdleBoard::mousePressEvent(QMouseEvent* event) {
    for (const BoardCell& cell : m_cells) {
        if (areaOf(cell.position).contains(event->position())) {
            emit chosen(cell.position);
        }
    }
}

void GirdleBoard::keyPressEvent(QKeyEvent* event) {
    Position next = m_selected;
    switch (event->key()) {
    case Qt::Key_Left:
        --next.cap;
        break;
    case Qt::Key_Right:
        ++next.cap;
        break;
    case Qt::Key_Up:
    case Qt::Key_Down:
        next.side = event->key() == Qt::Key_Up ? Side::left : Side::right;
        break;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    if (std::ranges::find(m_cells, next, &BoardCell::position) != m_cells.end()) {
        emit chosen(next);
    }
}

} // namespace caprail
