// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <QTimer>
#include <functional>
#include <session/record_session.h>

namespace caprail {

/// The rows behind an EntriesTable: numbers of the ledger's entries that pass a filter, newest first. Text is made when
/// a row is drawn, so a long ledger costs only what is in sight. Entries are looked at for a few milliseconds at a
/// time: what is in sight stands there at once, and in a very long ledger the older rows follow while the window lives
/// on.
class EntriesModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Columns { number, time, person, what, columns };
    EntriesModel(RecordSession& session, QObject* parent);

    void setFilter(std::function<bool(const Entry&)> filter);
    /// What stands in the last column; without it, the whole history line.
    void setLine(std::function<QString(const Entry&)> line) { m_line = std::move(line); }
    void refresh();
    /// Whether every entry was looked at.
    [[nodiscard]] bool isWhole() const { return m_next < 1; }
    /// Looks on, without a pause, until this entry was looked at.
    void lookUpTo(qint64 sequence);
    [[nodiscard]] qint64 entryAt(int row) const { return m_rows.at(static_cast<std::size_t>(row)); }
    [[nodiscard]] int rowOf(qint64 sequence) const; ///< -1: not shown

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void lookedOn(); ///< more entries were looked at; perhaps all by now

private:
    void lookOn();
    void add(const std::vector<qint64>& rows);
    [[nodiscard]] std::vector<qint64> found(qint64 downTo, bool hasTimeLimit);
    RecordSession& m_session;
    std::function<bool(const Entry&)> m_filter;
    std::function<QString(const Entry&)> m_line;
    std::vector<qint64> m_rows;
    qint64 m_next = 0; ///< the entry to be looked at next, then the one before it; 0: none is left
    QTimer m_timer;
};

} // namespace caprail
