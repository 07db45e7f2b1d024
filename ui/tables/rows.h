// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <tables/table_model.h>
#include <text/plain_text.h>

namespace caprail {

/// The model of a table or list: results, each a `Row` by value, and the columns that say what of it is shown. What a
/// row is about (a shim's name, an entry's number, a position) is its key, held as data: nothing is ever read back out
/// of a cell. Keys differ; where two are alike after all, the rows are shown, and only the selection may be lost.
template <class Row, class Key> class Rows : public TableModel {
public:
    using KeyOf = std::function<Key(const Row&)>;

    Rows(KeyOf keyOf, std::vector<TableColumn<Row>> columns, QObject* parent = nullptr)
        : TableModel(parent), m_keyOf(std::move(keyOf)), m_columns(std::move(columns)) {}

    /// Which rows are headings or cannot be selected. None are, without it.
    void setKind(std::function<RowKind(const Row&)> kind) { m_kind = std::move(kind); }

    /// Exchanges the rows for these: what has the same key is the same row, changed or not.
    void put(std::vector<Row> rows) {
        std::map<Key, int> keys;
        std::vector<int> cameFrom;
        cameFrom.reserve(rows.size());
        for (const Row& row : rows) {
            Key key = m_keyOf(row);
            const auto at = m_rowOf.find(key);
            cameFrom.push_back(at == m_rowOf.end() ? -1 : at->second);
            keys.emplace(std::move(key), static_cast<int>(cameFrom.size()) - 1);
        }
        const bool isClear = keys.size() == rows.size() && m_rowOf.size() == m_rows.size();
        const auto take = [&] {
            m_rows = std::move(rows);
            m_rowOf = std::move(keys);
        };
        isClear ? exchange(cameFrom, take) : beginAnew(take);
    }
    /// Other columns, and with them the rows.
    void put(std::vector<TableColumn<Row>> columns, std::vector<Row> rows) {
        beginAnew([&] {
            m_columns = std::move(columns);
            m_rows = std::move(rows);
            m_rowOf.clear();
            for (std::size_t row = 0; row < m_rows.size(); ++row) {
                m_rowOf.emplace(m_keyOf(m_rows[row]), static_cast<int>(row));
            }
        });
    }

    /// In the order in which they were given.
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
    /// The row at a line; null for none.
    [[nodiscard]] const Row* at(int line) const {
        const int row = rowAt(line);
        return row < 0 ? nullptr : &m_rows[static_cast<std::size_t>(row)];
    }
    /// −1: no row has the key.
    [[nodiscard]] int lineOf(const Key& key) const {
        const auto at = m_rowOf.find(key);
        return at == m_rowOf.end() ? -1 : lineOfRow(at->second);
    }
    [[nodiscard]] std::optional<Key> keyAt(int line) const {
        const Row* row = at(line);
        return row == nullptr ? std::nullopt : std::optional<Key>(m_keyOf(*row));
    }

    [[nodiscard]] std::function<int()> finder(int line) const override {
        return [this, key = keyAt(line)] { return key ? lineOf(*key) : -1; };
    }

protected:
    [[nodiscard]] std::size_t rowsHeld() const override { return m_rows.size(); }
    [[nodiscard]] int columnsHeld() const override { return static_cast<int>(m_columns.size()); }
    [[nodiscard]] QString head(int column) const override {
        const TableColumn<Row>& one = m_columns[static_cast<std::size_t>(column)];
        const QString unitText = one.unit ? one.unit() : QString();
        return visible(unitText.isEmpty() ? one.title : one.title + QStringLiteral(" (") + unitText + QStringLiteral(")"));
    }
    [[nodiscard]] bool isFigure(int column) const override {
        return m_columns[static_cast<std::size_t>(column)].isFigure;
    }
    [[nodiscard]] RowKind kindOf(std::size_t row) const override {
        return m_kind ? m_kind(m_rows[row]) : RowKind::usual;
    }
    [[nodiscard]] bool hasTick(std::size_t, int column) const override {
        return static_cast<bool>(m_columns[static_cast<std::size_t>(column)].tick);
    }
    void tick(std::size_t row, int column, bool isTicked) override {
        m_columns[static_cast<std::size_t>(column)].tick(m_rows[row], isTicked);
    }
    [[nodiscard]] SortValue worth(std::size_t row, int column) const override {
        const TableColumn<Row>& one = m_columns[static_cast<std::size_t>(column)];
        return one.value   ? one.value(m_rows[row])
               : one.state ? SortValue(static_cast<double>(severity(one.state(m_rows[row]))))
                           : SortValue(one.text(m_rows[row]));
    }
    [[nodiscard]] QVariant cell(std::size_t at, int column, int role) const override {
        const TableColumn<Row>& one = m_columns[static_cast<std::size_t>(column)];
        const Row& row = m_rows[at];
        switch (role) {
        case Qt::DisplayRole:
            return visible(one.text(row));
        case Qt::ToolTipRole: {
            const QString tip = one.tip ? one.tip(row) : m_columns.size() > 1 ? one.text(row) : QString();
            return tip.isEmpty() ? QVariant() : QVariant(plainTip(tip));
        }
        case Qt::AccessibleTextRole:
            return one.spoken ? QVariant(visible(one.spoken(row))) : QVariant();
        case Qt::TextAlignmentRole:
            return QVariant::fromValue((one.isFigure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        case Qt::ForegroundRole: {
            const Look look = screenLook();
            const QColor ink = one.state ? look.of(one.state(row)) : one.ink ? one.ink(row, look) : QColor();
            return ink.isValid() ? QVariant(ink) : QVariant();
        }
        case Qt::FontRole:
            return one.isBold && one.isBold(row) ? QVariant(boldFont()) : QVariant();
        case Qt::DecorationRole:
            return one.icon ? QVariant(one.icon(row)) : QVariant();
        case Qt::CheckStateRole:
            return one.isTicked && kindOf(at) != RowKind::heading
                       ? QVariant(static_cast<int>(one.isTicked(row) ? Qt::Checked : Qt::Unchecked))
                       : QVariant();
        default:
            return {};
        }
    }

private:
    KeyOf m_keyOf;
    std::vector<TableColumn<Row>> m_columns;
    std::function<RowKind(const Row&)> m_kind;
    std::vector<Row> m_rows;
    std::map<Key, int> m_rowOf;
};

} // namespace caprail
