// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_model.h>

#include <QDateTime>
#include <algorithm>
#include <ledger/qt_text.h>
#include <records/shop_cells.h>
#include <tables/natural_order.h>
#include <unordered_set>

namespace caprail {

ShopModel::ShopModel(QObject* parent) : QAbstractTableModel(parent), m_now{QDateTime::currentMSecsSinceEpoch()} {}

void ShopModel::put(std::vector<ShopRow> rows) {
    if (rows.empty()) {
        return;
    }
    for (ShopRow& row : rows) {
        const auto id = static_cast<std::size_t>(row.id);
        if (id >= m_rowOfId.size()) {
            m_rowOfId.resize(std::max(id + 1, m_rowOfId.size() * 2), -1);
        }
        int& at = m_rowOfId[id];
        if (at < 0) {
            at = static_cast<int>(m_rows.size());
            m_rows.push_back(std::move(row));
        } else {
            m_rows[static_cast<std::size_t>(at)] = std::move(row);
        }
    }
    sortAnew();
}

void ShopModel::remove(const std::vector<std::int64_t>& ids) {
    const std::unordered_set<std::int64_t> gone(ids.begin(), ids.end());
    beginResetModel(); // the lines hold places in m_rows
    std::erase_if(m_rows, [&](const ShopRow& row) { return gone.contains(row.id); });
    std::ranges::fill(m_rowOfId, -1);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rowOfId[static_cast<std::size_t>(m_rows[i].id)] = static_cast<int>(i);
    }
    m_lines.clear();
    m_shown = 0;
    endResetModel();
    sortAnew();
}

void ShopModel::clear() {
    beginResetModel();
    m_rows.clear();
    m_rowOfId.clear();
    m_sorted.clear();
    m_lines.clear();
    m_headings.clear();
    m_shown = 0;
    m_foundIds.reset();
    endResetModel();
    emit listChanged();
}

void ShopModel::setFilter(const ListFilter& filter) {
    if (m_filter != filter) {
        m_filter = filter;
        showAnew();
    }
}

void ShopModel::setFound(std::optional<std::vector<std::int64_t>> ids) {
    m_foundIds = std::move(ids);
    showAnew();
}

void ShopModel::setGrouping(ShopGrouping grouping) {
    if (m_grouping != grouping) {
        m_grouping = grouping;
        sortAnew();
    }
}

void ShopModel::setNow(UtcTime now) {
    m_now = now;
}

void ShopModel::setReachable(bool isReachable) {
    if (m_isReachable != isReachable) {
        m_isReachable = isReachable;
        if (!m_lines.empty()) {
            emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        }
    }
}

std::size_t ShopModel::unreadable() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(m_rows, [](const ShopRow& row) { return !isRecord(row.reading); }));
}

QStringList ShopModel::people() const {
    std::set<std::string> names;
    for (const ShopRow& row : m_rows) {
        std::string_view rest = row.summary.people.empty() ? row.summary.who : row.summary.people;
        while (!rest.empty()) {
            const auto end = rest.find('\n');
            names.emplace(rest.substr(0, end));
            rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + 1);
        }
    }
    QStringList list;
    for (const auto& name : names) {
        list << qtText(name);
    }
    list.removeAll(QString());
    return list;
}

const ShopRow* ShopModel::at(const QModelIndex& index) const {
    if (!index.isValid() || static_cast<std::size_t>(index.row()) >= m_lines.size()) {
        return nullptr;
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    return line.row < 0 ? nullptr : &m_rows[static_cast<std::size_t>(line.row)];
}

QModelIndex ShopModel::indexOf(std::int64_t id) const {
    const auto at = static_cast<std::size_t>(id);
    if (id <= 0 || at >= m_rowOfId.size() || m_rowOfId[at] < 0) {
        return {};
    }
    const auto line = std::ranges::find(m_lines, m_rowOfId[at], &Line::row);
    return line == m_lines.end() ? QModelIndex() : index(static_cast<int>(line - m_lines.begin()), 0);
}

int ShopModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ShopModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(listColumns().size());
}

QString ShopModel::groupOf(const ShopRow& row) const {
    return isRecord(row.reading) ? groupName(m_grouping, row.summary.customer, row.summary.state)
                                 : tr("Files that are not records");
}

void ShopModel::sortAnew() {
    m_sorted.resize(m_rows.size());
    for (std::size_t i = 0; i < m_sorted.size(); ++i) {
        m_sorted[i] = static_cast<int>(i);
    }
    const ListColumn& column = listColumns()[static_cast<std::size_t>(m_sortColumn)];
    const bool isDown = m_sortOrder == Qt::DescendingOrder;
    const auto sortBy = [&](const auto& keys, bool down) {
        std::ranges::stable_sort(m_sorted, [&](int a, int b) {
            const auto& first = keys[static_cast<std::size_t>(down ? b : a)];
            const auto& second = keys[static_cast<std::size_t>(down ? a : b)];
            return first < second;
        });
    };
    const QCollator collator = naturalOrder();
    if (column.isNumber) {
        std::vector<std::int64_t> keys;
        keys.reserve(m_rows.size());
        for (const ShopRow& row : m_rows) {
            keys.push_back(column.order(row));
        }
        sortBy(keys, isDown);
    } else {
        std::vector<QCollatorSortKey> keys;
        keys.reserve(m_rows.size());
        const Seeing seeing = onScreen(m_now);
        for (const ShopRow& row : m_rows) {
            keys.push_back(collator.sortKey(qtText(column.text(row, seeing))));
        }
        std::ranges::stable_sort(m_sorted, [&](int a, int b) {
            const int order = keys[static_cast<std::size_t>(a)].compare(keys[static_cast<std::size_t>(b)]);
            return isDown ? order > 0 : order < 0;
        });
    }
    if (m_grouping == ShopGrouping::state) {
        std::vector<std::int64_t> keys;
        for (const ShopRow& row : m_rows) {
            keys.push_back(isRecord(row.reading) ? static_cast<std::int64_t>(row.summary.state) : 100);
        }
        sortBy(keys, false);
    } else if (m_grouping == ShopGrouping::customer) {
        std::vector<QCollatorSortKey> keys;
        for (const ShopRow& row : m_rows) {
            keys.push_back(
                collator.sortKey((isRecord(row.reading) ? QString() : QStringLiteral("\U0010ffff")) + groupOf(row)));
        }
        std::ranges::stable_sort(m_sorted, [&](int a, int b) {
            return keys[static_cast<std::size_t>(a)].compare(keys[static_cast<std::size_t>(b)]) < 0;
        });
    }
    showAnew();
}

void ShopModel::showAnew() {
    std::vector<bool> found;
    if (m_foundIds) {
        found.resize(m_rows.size());
        for (const std::int64_t id : *m_foundIds) {
            const auto at = static_cast<std::size_t>(id);
            if (id > 0 && at < m_rowOfId.size() && m_rowOfId[at] >= 0) {
                found[static_cast<std::size_t>(m_rowOfId[at])] = true;
            }
        }
    }
    const bool hasFilter = m_filter != ListFilter();
    std::vector<Line> lines;
    std::vector<QString> headings;
    std::vector<int> counts;
    lines.reserve(m_sorted.size());
    std::size_t count = 0;
    for (const int row : m_sorted) {
        const auto at = static_cast<std::size_t>(row);
        if ((m_foundIds && !found[at]) || (hasFilter && !passes(m_filter, m_rows[at], m_now))) {
            continue;
        }
        if (m_grouping != ShopGrouping::none) {
            const QString group = groupOf(m_rows[at]);
            if (headings.empty() || headings.back() != group) {
                lines.push_back({-1, static_cast<int>(headings.size())});
                headings.push_back(group);
                counts.push_back(0);
            }
            ++counts.back();
        }
        lines.push_back({row, -1});
        ++count;
    }
    for (std::size_t i = 0; i < headings.size(); ++i) {
        headings[i] = groupHead(headings[i], counts[i]);
    }
    if (lines == m_lines) {
        m_headings = std::move(headings);
        if (!m_lines.empty()) {
            emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        }
    } else {
        beginResetModel();
        m_lines = std::move(lines);
        m_headings = std::move(headings);
        m_shown = count;
        endResetModel();
    }
    emit listChanged();
}

void ShopModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= columnCount()) {
        return;
    }
    m_sortColumn = column;
    m_sortOrder = order;
    sortAnew();
}

QVariant ShopModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || static_cast<std::size_t>(index.row()) >= m_lines.size()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    return line.row < 0
               ? headCell(m_headings[static_cast<std::size_t>(line.heading)], index.column(), role)
               : shopCell(m_rows[static_cast<std::size_t>(line.row)], index.column(), role, m_now, m_isReachable);
}

QVariant ShopModel::headerData(int section, Qt::Orientation orientation, int role) const {
    return orientation == Qt::Horizontal ? shopHeader(section, role) : QVariant();
}

Qt::ItemFlags ShopModel::flags(const QModelIndex& index) const {
    return at(index) == nullptr ? Qt::ItemIsEnabled
                                : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

QByteArray ShopModel::toCsv() const {
    CsvWriter csv;
    addHead(csv);
    const Seeing seeing = onScreen(m_now);
    for (const Line& line : m_lines) {
        if (line.row >= 0) {
            addRow(csv, m_rows[static_cast<std::size_t>(line.row)], seeing);
        }
    }
    return QByteArray::fromStdString(csv.written());
}

} // namespace caprail
