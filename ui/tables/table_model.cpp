// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/table_model.h>

#include <QCollator>
#include <QSize>
#include <algorithm>
#include <utility>

namespace caprail {

int TableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int TableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnsHeld();
}

int TableModel::rowAt(int line) const {
    return line < 0 || line >= rowCount() ? -1 : m_lines[static_cast<std::size_t>(line)];
}

int TableModel::lineOfRow(int row) const {
    const auto at = std::ranges::find(m_lines, row);
    return row < 0 || at == m_lines.end() ? -1 : static_cast<int>(at - m_lines.begin());
}

QFont TableModel::boldFont() {
    QFont font;
    font.setBold(true);
    return font;
}

QVariant TableModel::data(const QModelIndex& index, int role) const {
    const int at = index.isValid() && index.column() < columnsHeld() ? rowAt(index.row()) : -1;
    if (at < 0) {
        return {};
    }
    const auto row = static_cast<std::size_t>(at);
    const bool isHeading = kindOf(row) == RowKind::heading;
    if (role == headingRole) {
        return isHeading;
    }
    if (role == Qt::SizeHintRole) {
        return m_lineHeight > 0 ? QVariant(QSize(0, m_lineHeight)) : QVariant();
    }
    if (isHeading && role == Qt::FontRole) {
        return boldFont();
    }
    if (isHeading && role == Qt::BackgroundRole) {
        const Look look = screenLook();
        return washed(look.accent, look.paper, 0.10);
    }
    return cell(row, index.column(), role);
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnsHeld()) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue((isFigure(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    return role == Qt::DisplayRole ? QVariant(head(section)) : QVariant();
}

Qt::ItemFlags TableModel::flags(const QModelIndex& index) const {
    const int row = index.isValid() ? rowAt(index.row()) : -1;
    const RowKind kind = row < 0 ? RowKind::off : kindOf(static_cast<std::size_t>(row));
    if (kind == RowKind::off) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    if (kind == RowKind::usual) {
        flags |= Qt::ItemIsSelectable;
        flags.setFlag(Qt::ItemIsUserCheckable, hasTick(static_cast<std::size_t>(row), index.column()));
    }
    return flags;
}

bool TableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::CheckStateRole || !flags(index).testFlag(Qt::ItemIsUserCheckable)) {
        return false;
    }
    tick(static_cast<std::size_t>(rowAt(index.row())), index.column(), value.toInt() == Qt::Checked);
    emit dataChanged(index, index, {Qt::CheckStateRole});
    return true;
}

void TableModel::sort(int column, Qt::SortOrder order) {
    m_sortColumn = column;
    m_sortOrder = order;
    reorder(inOrder());
}

std::vector<int> TableModel::inOrder() const {
    std::vector<int> rows(rowsHeld());
    std::vector<SortValue> worths;
    bool hasHeadings = false;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        rows[row] = static_cast<int>(row);
        hasHeadings = hasHeadings || kindOf(row) == RowKind::heading;
    }
    if (m_sortColumn < 0 || m_sortColumn >= columnsHeld() || hasHeadings) {
        return rows;
    }
    worths.reserve(rows.size());
    for (std::size_t row = 0; row < rows.size(); ++row) {
        worths.push_back(worth(row, m_sortColumn));
    }
    QCollator collator;
    collator.setNumericMode(true);
    collator.setCaseSensitivity(Qt::CaseInsensitive);
    const bool isDown = m_sortOrder == Qt::DescendingOrder;
    std::ranges::stable_sort(rows, [&](int first, int second) {
        const SortValue& a = worths[static_cast<std::size_t>(first)];
        const SortValue& b = worths[static_cast<std::size_t>(second)];
        if (a.index() != b.index()) {
            return a.index() > b.index(); // what is known before what is not; texts before numbers, if both occur
        }
        if (const double* number = std::get_if<double>(&a)) {
            return isDown ? *number > std::get<double>(b) : *number < std::get<double>(b);
        }
        const QString* text = std::get_if<QString>(&a);
        const int order = text == nullptr ? 0 : collator.compare(*text, std::get<QString>(b));
        return isDown ? order > 0 : order < 0;
    });
    return rows;
}

void TableModel::beginAnew(const std::function<void()>& put) {
    emit aboutToExchange();
    beginResetModel();
    put();
    m_lines = inOrder();
    endResetModel();
    emit exchanged();
}

void TableModel::exchange(const std::vector<int>& cameFrom, const std::function<void()>& put) {
    std::vector<int> wentTo(rowsHeld(), -1);
    bool staysAny = false;
    for (std::size_t row = 0; row < cameFrom.size(); ++row) {
        if (cameFrom[row] >= 0) {
            wentTo[static_cast<std::size_t>(cameFrom[row])] = static_cast<int>(row);
            staysAny = true;
        }
    }
    if (!staysAny) {
        beginAnew(put);
        return;
    }
    emit aboutToExchange();
    takeOut(wentTo);
    put();
    for (int& row : m_lines) {
        row = wentTo[static_cast<std::size_t>(row)];
    }
    const std::vector<int> rows = inOrder();
    std::vector<int> stayed = rows;
    std::erase_if(stayed, [&](int row) { return cameFrom[static_cast<std::size_t>(row)] < 0; });
    reorder(std::move(stayed));
    putIn(rows, cameFrom);
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnsHeld() - 1));
    emit exchanged();
}

void TableModel::takeOut(const std::vector<int>& wentTo) {
    const auto isGone = [&](int line) {
        return wentTo[static_cast<std::size_t>(m_lines[static_cast<std::size_t>(line)])] < 0;
    };
    for (int last = rowCount() - 1; last >= 0; --last) {
        if (!isGone(last)) {
            continue;
        }
        int first = last;
        while (first > 0 && isGone(first - 1)) {
            --first;
        }
        beginRemoveRows({}, first, last);
        m_lines.erase(m_lines.begin() + first, m_lines.begin() + last + 1);
        endRemoveRows();
        last = first;
    }
}

void TableModel::reorder(std::vector<int> rows) {
    if (rows == m_lines) {
        return;
    }
    emit layoutAboutToBeChanged({}, VerticalSortHint);
    const std::vector<int> before = std::exchange(m_lines, std::move(rows));
    std::vector<int> lineOf(rowsHeld(), -1);
    for (std::size_t line = 0; line < m_lines.size(); ++line) {
        lineOf[static_cast<std::size_t>(m_lines[line])] = static_cast<int>(line);
    }
    const QModelIndexList from = persistentIndexList();
    QModelIndexList to;
    for (const QModelIndex& one : from) {
        const int row = before[static_cast<std::size_t>(one.row())];
        to << index(lineOf[static_cast<std::size_t>(row)], one.column());
    }
    changePersistentIndexList(from, to);
    emit layoutChanged({}, VerticalSortHint);
}

void TableModel::putIn(const std::vector<int>& rows, const std::vector<int>& cameFrom) {
    const auto isNew = [&](std::size_t line) { return cameFrom[static_cast<std::size_t>(rows[line])] < 0; };
    for (std::size_t first = 0; first < rows.size(); ++first) {
        if (!isNew(first)) {
            continue;
        }
        std::size_t end = first + 1;
        while (end < rows.size() && isNew(end)) {
            ++end;
        }
        beginInsertRows({}, static_cast<int>(first), static_cast<int>(end) - 1);
        m_lines.insert(m_lines.begin() + static_cast<std::ptrdiff_t>(first),
                       rows.begin() + static_cast<std::ptrdiff_t>(first), rows.begin() + static_cast<std::ptrdiff_t>(end));
        endInsertRows();
        first = end - 1;
    }
}

} // namespace caprail
