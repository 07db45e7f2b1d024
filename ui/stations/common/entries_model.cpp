// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entries_model.h>

#include <QDateTime>
#include <QElapsedTimer>
#include <QFont>
#include <QLocale>
#include <algorithm>
#include <ledger/history_line.h>
#include <session/filled.h>
#include <session/look.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr qint64 atATime = 8;       // ms
constexpr qint64 betweenLooks = 64; // entries between looks at the clock

} // namespace

EntriesModel::EntriesModel(RecordSession& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &EntriesModel::lookOn);
}

void EntriesModel::setFilter(std::function<bool(const Entry&)> filter) {
    m_filter = std::move(filter);
    refresh();
}

void EntriesModel::refresh() {
    beginResetModel();
    m_next = m_session.ledger().size();
    m_rows.clear();
    m_rows = found(1, true);
    endResetModel();
    isWhole() ? m_timer.stop() : m_timer.start(0);
}

/// Those of the entries from the next one down that pass, as far as the time allows.
std::vector<qint64> EntriesModel::found(qint64 downTo, bool hasTimeLimit) {
    QElapsedTimer elapsed;
    elapsed.start();
    std::vector<qint64> rows;
    const Ledger& ledger = m_session.ledger();
    m_next = std::min<qint64>(m_next, ledger.size()); // another record may have taken its place
    for (; m_next >= downTo; --m_next) {
        if (hasTimeLimit && m_next % betweenLooks == 0 && elapsed.elapsed() >= atATime) {
            break;
        }
        if (!m_filter || m_filter(ledger.at(m_next))) {
            rows.push_back(m_next);
        }
    }
    return rows;
}

void EntriesModel::add(const std::vector<qint64>& rows) {
    if (!rows.empty()) {
        const int first = static_cast<int>(m_rows.size());
        beginInsertRows({}, first, first + static_cast<int>(rows.size()) - 1);
        m_rows.insert(m_rows.end(), rows.begin(), rows.end());
        endInsertRows();
    }
}

void EntriesModel::lookOn() {
    add(found(1, true));
    if (!isWhole()) {
        m_timer.start(0);
    }
    emit lookedOn();
}

void EntriesModel::lookUpTo(qint64 sequence) {
    if (isWhole() || m_next < sequence) {
        return;
    }
    add(found(std::max<qint64>(1, sequence), false));
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
        return plainTip(QString::fromStdString(historyLine(entry.body, m_session.units())));
    }
    if (role == Qt::ToolTipRole && struckBy != 0) {
        const Entry& strike = ledger.at(struckBy);
        return plainTip(filled(tr("Struck by entry %1 (%2): %3"), struckBy, QString::fromStdString(strike.person),
                               QString::fromStdString(strike.body.get<Struck>().why)));
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
        return struckBy == 0 ? line : line + QStringLiteral("  ") + tr("(struck by entry %1)").arg(struckBy);
    }
    }
}

} // namespace caprail
