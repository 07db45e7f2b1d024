// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/board.h>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <stations/common/station_text.h>
#include <text/typed_sign.h>
#include <utility>

namespace caprail {

GirdleBoard::GirdleBoard(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(360, 300);
    setAccessibleName(tr("Stacks by position"));
    installSpokenPlaces();
}

void GirdleBoard::show(std::vector<BoardCell> cells, const Units& units) {
    const QStringList before = spokenPlaces();
    m_cells = std::move(cells);
    m_units = units;
    update();
    if (spokenPlaces() != before) {
        announcePlaces(*this);
    }
}

void GirdleBoard::select(Position position) {
    if (std::exchange(m_selected, position) != position) {
        update();
        announceSelection(*this);
    }
}

const BoardCell* GirdleBoard::cellOf(const QString& place) const {
    const auto cell =
        std::ranges::find_if(m_cells, [&](const BoardCell& one) { return qtText(code(one.position)) == place; });
    return cell == m_cells.end() ? nullptr : &*cell;
}

QStringList GirdleBoard::spokenPlaces() const {
    QStringList places;
    for (const BoardCell& cell : m_cells) {
        places << qtText(code(cell.position));
    }
    return places;
}

QString GirdleBoard::spokenSentence(const QString& place) const {
    const BoardCell* cell = cellOf(place);
    return cell == nullptr ? QString() : boardSentence(*cell, m_units);
}

QRect GirdleBoard::spokenRect(const QString& place) const {
    const BoardCell* cell = cellOf(place);
    return cell == nullptr ? QRect() : areaOf(cell->position).toAlignedRect();
}

QString GirdleBoard::spokenSelected() const {
    return qtText(code(m_selected));
}

void GirdleBoard::chooseSpoken(const QString& place, bool) {
    if (const BoardCell* cell = cellOf(place)) {
        emit chosen(cell->position);
    }
}

void GirdleBoard::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    announceSelection(*this);
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
        tallest = std::max({tallest, pileThickness(cell.leaves), pileThickness(cell.planned)});
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
        if (isTypedSign(*event)) {
            emit typed(event->text());
            return;
        }
        QWidget::keyPressEvent(event);
        return;
    }
    if (std::ranges::find(m_cells, next, &BoardCell::position) != m_cells.end()) {
        emit chosen(next);
    }
}

} // namespace caprail
