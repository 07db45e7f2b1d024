// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/database_model.h>

#include <QDateTime>
#include <algorithm>
#include <records/shop_cells.h>
#include <records/shop_model.h>
#include <tuple>

namespace caprail {

namespace {

/// What is asked of the database: a later question of the same kind takes the place of one that waits.
constexpr char firstTopic[] = "first", countTopic[] = "count", headsTopic[] = "groups";
constexpr std::int64_t pageSize = 100;
constexpr std::size_t mostPages = 40; ///< that are kept: a list of any length needs no more memory

} // namespace

DatabaseModel::DatabaseModel(DatabaseLink& link, QObject* parent) : QAbstractTableModel(parent), m_link(&link) {}

void DatabaseModel::wish(ListingWish wish) {
    if (wish != m_wish) {
        m_wish = std::move(wish);
        ask();
    }
}

void DatabaseModel::setSearch(const QString& typed) {
    ListingWish wished = m_wish;
    wished.search = typed.toStdString();
    wish(std::move(wished));
}

void DatabaseModel::setFilter(const ListFilter& filter) {
    ListingWish wished = m_wish;
    wished.filter = filter;
    wish(std::move(wished));
}

void DatabaseModel::setGrouping(ListingWish::Grouping grouping) {
    ListingWish wished = m_wish;
    wished.grouping = grouping;
    wish(std::move(wished));
}

void DatabaseModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= columnCount()) {
        return;
    }
    ListingWish wished = m_wish;
    wished.order = listColumns()[static_cast<std::size_t>(column)].name;
    wished.isDescending = order == Qt::DescendingOrder;
    wish(std::move(wished));
}

void DatabaseModel::ask() {
    m_wish.now = {QDateTime::currentMSecsSinceEpoch()};
    m_link->ask(
        firstTopic,
        [wish = m_wish](Connection& connection) -> Result<FirstPage> {
            ListingPages pages(connection);
            auto rows = pages.page(wish, 0, pageSize);
            auto groups = rows ? pages.groups(wish) : tl::unexpected(rows.error());
            return groups ? Result<FirstPage>(FirstPage{wish, std::move(*rows), std::move(*groups)})
                          : tl::unexpected(groups.error());
        },
        [this](Result<FirstPage> first) {
            if (!first) {
                emit failed(firstTopic, QString::fromStdString(first.error().sentence));
            } else if (first->wish == m_wish) { // else another answer is on its way
                takeFirst(std::move(*first));
            }
        });
}

void DatabaseModel::takeFirst(FirstPage first) {
    beginResetModel();
    m_shown = std::move(first.wish);
    m_pages.clear();
    m_askedPages.clear();
    m_groups = std::move(first.groups);
    m_headLines.clear();
    const auto read = static_cast<std::int64_t>(first.rows.size());
    m_listed = read < pageSize ? std::optional(read) : std::nullopt;
    m_lines = read;
    if (m_shown.grouping != ListingWish::Grouping::none) {
        m_lines = 0;
        for (const ListingGroup& group : m_groups) {
            m_headLines.push_back(m_lines);
            m_lines += 1 + group.records;
        }
        m_listed = m_lines - static_cast<std::int64_t>(m_groups.size());
    }
    m_pages.emplace(0, std::move(first.rows));
    endResetModel();
    emit listedAnew();
    emit listChanged();
    askCount();
}

/// How many are listed, and how many there are at all. Behind the first page, which a person waits for.
void DatabaseModel::askCount() {
    using Counts = std::pair<std::optional<std::int64_t>, std::int64_t>;
    ListingWish all;
    all.now = m_shown.now;
    m_link->ask(
        countTopic,
        [wish = m_shown, all, isKnown = m_listed.has_value()](Connection& connection) -> Result<Counts> {
            ListingPages pages(connection);
            const auto total = pages.count(all);
            if (!total || isKnown) {
                return total ? Result<Counts>(Counts(std::nullopt, *total)) : tl::unexpected(total.error());
            }
            const bool isAll = wish.search.empty() && wish.filter == ListFilter();
            const auto listed = isAll ? total : pages.count(wish);
            return listed ? Result<Counts>(Counts(*listed, *total)) : tl::unexpected(listed.error());
        },
        [this, wish = m_shown](const Result<Counts>& counts) {
            if (!counts) {
                emit failed(countTopic, QString::fromStdString(counts.error().sentence));
                return;
            }
            emit answered(countTopic);
            m_total = counts->second;
            if (counts->first && wish == m_shown && !m_listed) {
                takeCount(*counts->first);
            }
            emit listChanged();
        });
}

void DatabaseModel::takeCount(std::int64_t count) {
    m_listed = count;
    if (count > m_lines) {
        beginInsertRows({}, static_cast<int>(m_lines), static_cast<int>(count) - 1);
        m_lines = count;
        endInsertRows();
    }
}

void DatabaseModel::askPage(std::int64_t page) const {
    if (!m_askedPages.insert(page).second) {
        return;
    }
    auto* self = const_cast<DatabaseModel*>(this); // what is read changes nothing that is listed
    const QString topic = QStringLiteral("page %1").arg(page);
    m_link->ask(
        topic,
        [wish = m_shown, page](Connection& connection) {
            return ListingPages(connection).page(wish, page * pageSize, pageSize);
        },
        [self, wish = m_shown, page, topic](Result<std::vector<ShopRow>> rows) {
            if (wish != self->m_shown) {
                return;
            }
            self->m_askedPages.erase(page);
            if (rows) {
                self->takePage(page, std::move(*rows));
                emit self->answered(topic);
            } else {
                emit self->failed(topic, QString::fromStdString(rows.error().sentence));
            }
        });
}

void DatabaseModel::takePage(std::int64_t page, std::vector<ShopRow> rows) {
    const auto count = static_cast<std::int64_t>(rows.size());
    if (!isUnderItsHeads(page, rows)) {
        askWhetherGroupsChanged();
    }
    m_pages.insert_or_assign(page, std::move(rows));
    while (m_pages.size() > mostPages) { // the one that is farthest away
        const bool isFirst = page - m_pages.begin()->first > m_pages.rbegin()->first - page;
        m_pages.erase(isFirst ? m_pages.begin() : std::prev(m_pages.end()));
    }
    if (count > 0) {
        emit dataChanged(index(lineOf(page * pageSize), 0),
                         index(lineOf(page * pageSize + count - 1), columnCount() - 1));
    }
}

bool DatabaseModel::isUnderItsHeads(std::int64_t page, const std::vector<ShopRow>& rows) const {
    using Grouping = ListingWish::Grouping;
    if (m_shown.grouping == Grouping::none || m_groups.empty()) {
        return m_shown.grouping == Grouping::none || rows.empty();
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Line line = lineAt(lineOf(page * pageSize + static_cast<std::int64_t>(i)));
        const ListingGroup& group = m_groups[line.group];
        const RecordSummary& summary = rows[i].summary;
        if (m_shown.grouping == Grouping::state ? summary.state != group.state : summary.customer != group.customer) {
            return false;
        }
    }
    return true;
}

/// Records that were published or changed since the heads were counted move those of later pages under others' heads.
void DatabaseModel::askWhetherGroupsChanged() {
    m_link->ask(
        headsTopic, [wish = m_shown](Connection& connection) { return ListingPages(connection).groups(wish); },
        [this, wish = m_shown](const Result<std::vector<ListingGroup>>& groups) {
            const auto same = [](const ListingGroup& one, const ListingGroup& other) {
                return std::tie(one.customer, one.state, one.records) ==
                       std::tie(other.customer, other.state, other.records);
            };
            if (groups && wish == m_shown && !std::ranges::equal(*groups, m_groups, same)) {
                ask();
            }
        });
}

DatabaseModel::Line DatabaseModel::lineAt(int row) const {
    if (m_headLines.empty()) {
        return {row, 0};
    }
    const auto behind = std::ranges::upper_bound(m_headLines, row);
    const auto group = static_cast<std::size_t>(behind - m_headLines.begin()) - 1;
    if (m_headLines[group] == row) {
        return {-1, group};
    }
    return {row - static_cast<std::int64_t>(group) - 1, group};
}

int DatabaseModel::lineOf(std::int64_t record) const {
    std::int64_t line = record;
    for (std::size_t group = 0; group < m_headLines.size() && m_headLines[group] <= line; ++group) {
        ++line; // a head stands before it
    }
    return static_cast<int>(std::min(line, m_lines - 1));
}

const ShopRow* DatabaseModel::at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= m_lines) {
        return nullptr;
    }
    const Line line = lineAt(index.row());
    if (line.record < 0) {
        return nullptr;
    }
    const auto page = m_pages.find(line.record / pageSize);
    if (page == m_pages.end()) {
        askPage(line.record / pageSize);
        return nullptr;
    }
    const auto at = static_cast<std::size_t>(line.record % pageSize);
    return at < page->second.size() ? &page->second[at] : nullptr;
}

int DatabaseModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines);
}

int DatabaseModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(listColumns().size());
}

QVariant DatabaseModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_lines) {
        return {};
    }
    if (const Line line = lineAt(index.row()); line.record < 0) {
        const ListingGroup& group = m_groups[line.group];
        return headCell(groupHead(groupName(m_shown.grouping, group.customer, group.state), group.records),
                        index.column(), role);
    }
    if (const ShopRow* row = at(index)) {
        return shopCell(*row, index.column(), role, m_shown.now, true);
    }
    return (role == Qt::DisplayRole && index.column() == 0) || role == Qt::AccessibleTextRole ? QVariant(tr("reading…"))
                                                                                              : QVariant();
}

QVariant DatabaseModel::headerData(int section, Qt::Orientation orientation, int role) const {
    return orientation == Qt::Horizontal ? shopHeader(section, role) : QVariant();
}

Qt::ItemFlags DatabaseModel::flags(const QModelIndex& index) const {
    return !index.isValid() || lineAt(index.row()).record < 0
               ? Qt::ItemIsEnabled
               : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace caprail
