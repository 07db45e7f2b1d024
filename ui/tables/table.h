// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A table or a list together with its rows:
///
///     m_table = new Table<ShimRow, std::string>(tr("Shims of the kit"), &ShimRow::name, {
///         {.title = tr("Shim"), .text = [](const ShimRow& shim) { return qtText(shim.name); }},
///         {.title = tr("Readings"), .text = …, .value = [](const ShimRow& shim) { return valueOf(shim.readings); },
///          .isFigure = true}}, this);
///     m_table->put(rows);                       // at each change; the selection stays
///     if (const ShimRow* shim = m_table->selected()) …
#include <tables/list_view.h>
#include <tables/rows.h>
#include <tables/table_view.h>

namespace caprail {

template <class Row, class Key, class View> class WithRows : public View {
public:
    using Columns = std::vector<TableColumn<Row>>;

    WithRows(const QString& name, typename Rows<Row, Key>::KeyOf keyOf, Columns columns, QWidget* parent)
        : View(name, new Rows<Row, Key>(std::move(keyOf), std::move(columns)), parent),
          m_rows(static_cast<Rows<Row, Key>*>(this->model())) {}

    /// Exchanges the rows: what has the same key is the same row.
    void put(std::vector<Row> rows) { m_rows->put(std::move(rows)); }
    /// Other columns, and with them the rows.
    void put(Columns columns, std::vector<Row> rows) { m_rows->put(std::move(columns), std::move(rows)); }
    void setKind(std::function<RowKind(const Row&)> kind) { m_rows->setKind(std::move(kind)); }
    void setLineHeight(int height) { m_rows->setLineHeight(height); }

    /// Those given, in their order.
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows->rows(); }
    /// The row at a line, and the selected one; null for none.
    [[nodiscard]] const Row* at(int line) const { return m_rows->at(line); }
    [[nodiscard]] const Row* selected() const { return at(this->selectedLine()); }
    [[nodiscard]] std::optional<Key> selectedKey() const { return m_rows->keyAt(this->selectedLine()); }
    /// −1: no row has the key.
    [[nodiscard]] int lineOf(const Key& key) const { return m_rows->lineOf(key); }
    /// Selects a row by its key and brings it in sight; false: no row has it, and nothing was done.
    bool select(const Key& key) {
        const int line = lineOf(key);
        if (line >= 0) {
            this->selectLine(line);
        }
        return line >= 0;
    }

private:
    Rows<Row, Key>* m_rows;
};

template <class Row, class Key> class Table : public WithRows<Row, Key, TableView> {
    using WithRows<Row, Key, TableView>::WithRows;
};
template <class Row, class Key> class List : public WithRows<Row, Key, ListView> {
    using WithRows<Row, Key, ListView>::WithRows;
};

} // namespace caprail
