// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <records/shop_cells.h>
#include <set>
#include <shop/listing_pages.h>
#include <vector>

namespace caprail {

using ShopGrouping = ListingWish::Grouping;

/// The records of a folder as a table, filtered, sorted and grouped here and not by a proxy, so that a letter typed at
/// 50 000 rows costs one pass over them. A group begins with a line of its own, whose text is in the first column.
class ShopModel : public QAbstractTableModel {
    Q_OBJECT
public:
    /// The columns that something is done about.
    static constexpr int customer = listColumn("customer"), state = listColumn("state"), who = listColumn("who"),
                         lastEntry = listColumn("last_entry"), file = listColumn("file");
    /// Whether the line goes over all columns (a group's head, or a file that is no record): its text.
    static constexpr int acrossRole = Qt::UserRole + 1;
    static constexpr int isHeadingRole = Qt::UserRole + 2;
    /// Values as they are sorted, for tests and exports.
    static constexpr int rowIdRole = Qt::UserRole + 3;

    explicit ShopModel(QObject* parent = nullptr);

    /// Adds rows or replaces those of the same id.
    void put(std::vector<ShopRow> rows);
    void remove(const std::vector<std::int64_t>& ids);
    void clear();
    void setFilter(const ListFilter& filter);
    /// Only these ids are shown; none: all.
    void setFound(std::optional<std::vector<std::int64_t>> ids);
    void setGrouping(ShopGrouping grouping);
    /// What the clock says; entries after it are shown as such, and calibrations are due by it.
    void setNow(UtcTime now);
    /// The folder did not answer: rows are shown in the quiet ink.
    void setReachable(bool isReachable);

    [[nodiscard]] std::size_t total() const { return m_rows.size(); }
    [[nodiscard]] std::size_t shown() const { return m_shown; }
    [[nodiscard]] std::size_t unreadable() const;
    [[nodiscard]] QStringList people() const;
    /// The record at a line; null for a group's head.
    [[nodiscard]] const ShopRow* at(const QModelIndex& index) const;
    /// The line of a row, or an invalid index when it is not shown.
    [[nodiscard]] QModelIndex indexOf(std::int64_t id) const;
    [[nodiscard]] const std::vector<ShopRow>& rows() const { return m_rows; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    void sort(int column, Qt::SortOrder order) override;
    /// The shown rows as a table for a spreadsheet (RFC 4180).
    [[nodiscard]] QByteArray toCsv() const;

signals:
    void listChanged(); ///< which rows are shown, or how many there are

private:
    struct Line {
        int row = -1;     ///< in m_rows; −1: a group's head
        int heading = -1; ///< in m_headings
        friend bool operator==(const Line&, const Line&) = default;
    };
    [[nodiscard]] QString groupOf(const ShopRow& row) const;
    void sortAnew();
    void showAnew();

    std::vector<ShopRow> m_rows;
    std::vector<int> m_rowOfId; ///< −1: none
    std::vector<int> m_sorted;  ///< every row, in groups and order
    std::vector<Line> m_lines;
    std::vector<QString> m_headings;
    std::size_t m_shown = 0;
    ListFilter m_filter;
    std::optional<std::vector<std::int64_t>> m_foundIds;
    ShopGrouping m_grouping = ShopGrouping::none;
    int m_sortColumn = lastEntry;
    Qt::SortOrder m_sortOrder = Qt::DescendingOrder;
    UtcTime m_now;
    bool m_isReachable = true;
};

} // namespace caprail
