// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <QFont>
#include <functional>
#include <tables/column.h>
#include <vector>

namespace caprail {

/// The part of a table's model that does not depend on what a row is (that is in rows.h): which row stands at which
/// line, sorting, and the exchange of rows. A line is where a row is shown, from 0; sorting moves rows to other lines.
///
/// When rows are exchanged, those that stay keep their selection and their place in sight: rows are taken out, moved
/// and put in one by one, and the whole is begun anew only where none stays.
class TableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    /// Whether a line goes over all columns (RowKind::heading).
    static constexpr int headingRole = Qt::UserRole + 1;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Ticks a box; anything else is refused: rows are changed by entries, not here.
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    /// By what the column says the rows are worth. −1: as they were given. Rows under headings stay where they are.
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

    /// Finds the row that stands at a line again after rows were exchanged: −1 when it went.
    [[nodiscard]] virtual std::function<int()> finder(int line) const = 0;
    /// Of every line, pixels; 0: as its text needs.
    void setLineHeight(int height) { m_lineHeight = height; }

signals:
    void aboutToExchange(); ///< the rows
    void exchanged();

protected:
    explicit TableModel(QObject* parent) : QAbstractTableModel(parent) {}

    /// What is known of the rows, which are counted in the order in which they were given.
    [[nodiscard]] virtual std::size_t rowsHeld() const = 0;
    [[nodiscard]] virtual int columnsHeld() const = 0;
    [[nodiscard]] virtual QVariant cell(std::size_t row, int column, int role) const = 0;
    [[nodiscard]] virtual QString head(int column) const = 0;
    [[nodiscard]] virtual bool isFigure(int column) const = 0;
    [[nodiscard]] virtual bool hasTick(std::size_t row, int column) const = 0;
    virtual void tick(std::size_t row, int column, bool isTicked) = 0;
    [[nodiscard]] virtual SortValue worth(std::size_t row, int column) const = 0;
    [[nodiscard]] virtual RowKind kindOf(std::size_t row) const = 0;

    /// Exchanges the rows. `cameFrom` has for each of the new ones where it was among the old ones, −1 for one that
    /// was not, each at most once; `put` puts the new ones in the place of the old.
    void exchange(const std::vector<int>& cameFrom, const std::function<void()>& put);
    /// As above, where no row stays or the columns change too.
    void beginAnew(const std::function<void()>& put);
    static QFont boldFont();
    /// Which row stands at a line, or at which line a row stands: −1 for none.
    [[nodiscard]] int rowAt(int line) const;
    [[nodiscard]] int lineOfRow(int row) const;

private:
    /// The rows in the order of the lines.
    [[nodiscard]] std::vector<int> inOrder() const;
    void takeOut(const std::vector<int>& wentTo);
    /// Brings the rows that are shown into another order.
    void reorder(std::vector<int> rows);
    void putIn(const std::vector<int>& rows, const std::vector<int>& cameFrom);

    std::vector<int> m_lines; ///< line → row
    int m_sortColumn = -1;
    Qt::SortOrder m_sortOrder = Qt::AscendingOrder;
    int m_lineHeight = 0;
};

} // namespace caprail
