// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTableView>
#include <tables/kept_selection.h>

namespace caprail {

/// A plain table of rows that are read, not typed into: one row is selected at a time, Enter or a double click goes to
/// work on it, a click on a head sorts (the third click takes the rows as they came), Ctrl+C copies all of it for a
/// spreadsheet. The selection stays while rows come and go. `Table` (table.h) is this with rows of one type.
class TableView : public QTableView {
    Q_OBJECT
public:
    /// `name` is for screen readers. The model is taken over.
    TableView(const QString& name, TableModel* model, QWidget* parent);
    /// What stands in the table while it has no rows.
    void setEmptyText(const QString& sentence);
    /// The column that takes the room that is left; the last, without it. −1: none.
    void setStretched(int column);
    [[nodiscard]] int selectedLine() const { return m_selection->line(); }
    void selectLine(int line) { m_selection->select(line); }

signals:
    void lineSelected(int line); ///< −1: none is any more
    void lineActivated(int line);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void fitColumns();
    void spanHeadings();
    KeptSelection* m_selection;
    QString m_emptyText;
    int m_stretched = -2; ///< the last
};

} // namespace caprail
