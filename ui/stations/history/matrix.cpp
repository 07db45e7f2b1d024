// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/matrix.h>

#include <QFont>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/plain_text.h>
#include <stations/history/words.h>

namespace caprail {

void HistoryMatrix::show(const RoundHistory& history, VisibleRounds visible, RoundChoice filter, const Units& units) {
    beginResetModel();
    m_history = &history;
    m_visible = std::move(visible);
    m_filter = std::move(filter);
    m_units = units;
    endResetModel();
}

const RoundCell* HistoryMatrix::cellAt(const QModelIndex& index) const {
    if (!index.isValid() || m_history == nullptr) {
        return nullptr;
    }
    const auto& cell = m_history->cells[m_visible.rounds[static_cast<std::size_t>(index.column())]]
                                       [m_visible.fasteners[static_cast<std::size_t>(index.row())]];
    return cell && m_filter.takes(*cell) ? &*cell : nullptr;
}

int HistoryMatrix::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_visible.fasteners.size());
}

int HistoryMatrix::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_visible.rounds.size());
}

QVariant HistoryMatrix::data(const QModelIndex& index, int role) const {
    const RoundCell* cell = cellAt(index);
    if (cell == nullptr) {
        return role == Qt::AccessibleTextRole ? QVariant(tr("no outcome")) : QVariant();
    }
    const bool hasMoved = cell->what.outcome == Outcome::moved;
    switch (role) {
    case Qt::DisplayRole:
        return qtText(cellText(*cell, m_units));
    case Qt::ToolTipRole:
        return plainTip(cellStory(*cell, m_units));
    case Qt::AccessibleTextRole:
        return cellStory(*cell, m_units);
    case Qt::TextAlignmentRole:
        return Qt::AlignCenter;
    case Qt::ForegroundRole: {
        const Look look = screenLook();
        return cell->isStruck ? look.quiet : hasMoved ? look.out : look.good;
    }
    case Qt::FontRole: {
        QFont font;
        font.setStrikeOut(cell->isStruck);
        font.setBold(hasMoved && !cell->isStruck);
        return font;
    }
    default:
        return {};
    }
}

QVariant HistoryMatrix::headerData(int section, Qt::Orientation orientation, int role) const {
    if (m_history == nullptr || section < 0) {
        return {};
    }
    const auto at = static_cast<std::size_t>(section);
    if (orientation == Qt::Vertical && at < m_visible.fasteners.size()) {
        const FastenerId id = m_history->fasteners[m_visible.fasteners[at]];
        return role == Qt::DisplayRole || role == Qt::AccessibleTextRole ? QVariant(capitalised(qtText(describe(id))))
                                                                         : QVariant();
    }
    if (orientation == Qt::Vertical || at >= m_visible.rounds.size()) {
        return {};
    }
    const RoundColumn& round = m_history->rounds[m_visible.rounds[at]];
    if (role == Qt::DisplayRole) {
        const QString name = qtText(round.name(m_history->hasBuilds));
        return round.isStruck ? QStringLiteral("[%1]").arg(name) : name;
    }
    if (role == Qt::ToolTipRole) {
        const QString begun = tr("Round %1, begun %2 by %3 with %4")
                                  .arg(qtText(round.name(m_history->hasBuilds)),
                                       qtText(format(round.begun).substr(0, 10)), qtText(round.person),
                                       round.instrument.empty() ? tr("no instrument named") : qtText(round.instrument));
        return plainTip(round.isStruck ? begun + QStringLiteral("; ") + tr("struck") : begun);
    }
    return {};
}

} // namespace caprail
