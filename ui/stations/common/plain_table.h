// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTableWidget>

namespace caprail {

/// A plain list of rows that are read, not typed into: one row is selected at a time, Enter (or a double click) goes to
/// work on it, Ctrl+C copies the table for a spreadsheet. `show` keeps the selected row by its first cell.
class PlainTable : public QTableWidget {
    Q_OBJECT
public:
    PlainTable(const QString& name, const QStringList& heads, QWidget* parent);
    void show(const std::vector<QStringList>& rows);
    /// First cell of the selected row; empty for none.
    [[nodiscard]] QString selectedKey() const;
    void selectKey(const QString& key);
    void tint(int row, const QColor& ink);

signals:
    void keySelected(const QString& key);
    void keyActivated(const QString& key);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool m_isFilling = false;
};

} // namespace caprail
