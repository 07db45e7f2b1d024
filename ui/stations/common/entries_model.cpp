// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entries_model.h>

#include <QDateTime>
#include <QFont>
#include <QLocale>
#include <ledger/history_line.h>
#include <session/look.h>

namespace caprail {

void EntriesModel::setFilter(std::function<bool(const Entry&)> filter) {
    m_filter = std::move(filter);
    refresh();
}

void EntriesModel::refresh() {
    beginResetModel();
    m_rows.clear();
    const auto& entries = m_session.ledger().entries();
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        if (!m_filter || m_filter(*entry)) {
            m_rows.push_back(entry->sequence);
        }
    }
    endResetModel();
}

int EntriesModel::rowOf(qint64 sequence) const {
    const auto at = std::find(m_rows.begin(), m_rows.end(), sequence);
    return at == m_rows.end() ? -1 : static_cast<int>(at - m_rows.begin());
}

int EntriesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int EntriesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant EntriesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    const QString heads[] = {tr("Entry"), tr("Time"), tr("Person"), tr("What was seen or done")};
    return heads[section];
}

QVariant EntriesModel::data(const QModelIndex& index, int role) const {
    const Ledger& ledger = m_session.ledger();
    const qint64 sequence = entryAt(index.row());
    const Entry& entry = ledger.at(sequence);
    const qint64 struckBy = ledger.struckBy(sequence);
    if (role == Qt::FontRole && struckBy != 0) {
        QFont font;
        font.setStrikeOut(true);
        return font;
    }
    if (role == Qt::ForegroundRole && struckBy != 0) {
        return screenLook().quiet;
    }
    if (role == Qt::TextAlignmentRole && index.column() == number) {
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    }
    if (role == Qt::ToolTipRole && struckBy == 0 && m_line) {
        return QString::fromStdString(historyLine(entry.body, m_session.units()));
    }
    if (role == Qt::ToolTipRole && struckBy != 0) {
        const Entry& strike = ledger.at(struckBy);
        return tr("Struck by entry %1 (%2): %3")
            .arg(struckBy)
            .arg(QString::fromStdString(strike.person), QString::fromStdString(std::get<Struck>(strike.body).why));
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (index.column()) {
    case number:
        return sequence;
    case time:
        return QLocale().toString(QDateTime::fromMSecsSinceEpoch(entry.time.milliseconds),
                                  QStringLiteral("yyyy-MM-dd HH:mm"));
    case person:
        return QString::fromStdString(entry.person);
    default: {
        const QString line =
            m_line ? m_line(entry) : QString::fromStdString(historyLine(entry.body, m_session.units()));
        return struckBy == 0 ? line : line + tr("  (struck by entry %1)").arg(struckBy);
    }
    }
}

} // namespace caprail
