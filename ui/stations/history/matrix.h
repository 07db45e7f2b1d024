// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <work/rounds.h>

namespace caprail {

/// The matrix fastener × round behind the verify history. Text is made when a cell is drawn, so that 500 rounds of 60
/// fasteners cost only what is in sight.
class HistoryMatrix : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit HistoryMatrix(QObject* parent) : QAbstractTableModel(parent) {}
    /// `history` must outlive the model or the next `show`.
    void show(const RoundHistory& history, VisibleRounds visible, RoundChoice filter, const Units& units);
    /// Null where there is no outcome, or none that the filter takes.
    [[nodiscard]] const RoundCell* cellAt(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const RoundHistory* m_history = nullptr;
    VisibleRounds m_visible;
    RoundChoice m_filter;
    Units m_units;
};

} // namespace caprail
