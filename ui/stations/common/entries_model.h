// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <functional>
#include <session/record_session.h>

namespace caprail {

/// The rows behind an EntriesTable: numbers of the ledger's entries that pass a filter, newest first. Text is made when
/// a row is drawn, so a long ledger costs only what is in sight.
class EntriesModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Columns { number, time, person, what, columns };
    EntriesModel(RecordSession& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {}

    void setFilter(std::function<bool(const Entry&)> filter);
    /// What stands in the last column; without it, the whole history line.
    void setLine(std::function<QString(const Entry&)> line) { m_line = std::move(line); }
    void refresh();
    [[nodiscard]] qint64 entryAt(int row) const { return m_rows.at(static_cast<std::size_t>(row)); }
    [[nodiscard]] int rowOf(qint64 sequence) const; ///< -1: not shown

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    RecordSession& m_session;
    std::function<bool(const Entry&)> m_filter;
    std::function<QString(const Entry&)> m_line;
    std::vector<qint64> m_rows;
};

} // namespace caprail
