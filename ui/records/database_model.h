// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <QStringList>
#include <map>
#include <records/database_link.h>
#include <set>
#include <shop/listing_pages.h>

namespace caprail {

/// The records of a shop's database as a table: searched, filtered, sorted and grouped by the database, and read a page
/// at a time as they come in sight, the last few kept. The roles are those of ShopModel.
class DatabaseModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit DatabaseModel(DatabaseLink& link, QObject* parent = nullptr);

    /// Asks anew; what is listed stays until the first page of the answer is there.
    void ask();
    void setSearch(const QString& typed);
    void setFilter(const ListFilter& filter);
    void setGrouping(ListingWish::Grouping grouping);
    [[nodiscard]] const ListingWish& wish() const { return m_wish; }

    /// How many records are listed, and how many there are; none while that is not known.
    [[nodiscard]] std::optional<std::int64_t> listed() const { return m_listed; }
    [[nodiscard]] std::optional<std::int64_t> total() const { return m_total; }
    /// The record at a line; null for a group's head and what is not read yet.
    [[nodiscard]] const ShopRow* at(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    void sort(int column, Qt::SortOrder order) override;

signals:
    void listChanged();                   ///< what is listed, or how many there are
    void failed(const QString& question, const QString& sentence); ///< it was refused
    void answered(const QString& question);                        ///< the database gave what was asked
    void listedAnew(); ///< nothing of what was listed before counts any more

private:
    struct FirstPage {
        ListingWish wish;
        std::vector<ShopRow> rows;
        std::vector<ListingGroup> groups;
    };
    void takeFirst(FirstPage first);
    void takeCount(std::int64_t count);
    void askCount();
    void askPage(std::int64_t page) const;
    void takePage(std::int64_t page, std::vector<ShopRow> rows);
    /// Whether each row of a page stands under the head of its group.
    [[nodiscard]] bool isUnderItsHeads(std::int64_t page, const std::vector<ShopRow>& rows) const;
    void askWhetherGroupsChanged();
    void wish(ListingWish wish);
    /// Which record stands at a line, counted from 0, or which group's head.
    struct Line {
        std::int64_t record = -1;
        std::size_t group = 0;
    };
    [[nodiscard]] Line lineAt(int row) const;
    [[nodiscard]] int lineOf(std::int64_t record) const;

    DatabaseLink* m_link;
    ListingWish m_wish, m_shown; ///< what is asked for, and what the lines are the answer to
    std::map<std::int64_t, std::vector<ShopRow>> m_pages;
    mutable std::set<std::int64_t> m_askedPages;
    std::vector<ListingGroup> m_groups;
    std::vector<std::int64_t> m_headLines; ///< of each group
    std::int64_t m_lines = 0;
    std::optional<std::int64_t> m_listed, m_total;
};

} // namespace caprail
