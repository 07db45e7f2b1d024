// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStyledItemDelegate>
#include <QTableView>

namespace caprail {

/// The list of records: whole lines are selected, and Enter opens one.
class ShopTable : public QTableView {
    Q_OBJECT
public:
    explicit ShopTable(QWidget* parent = nullptr);

    /// The keyboard comes here, to the first record where none was chosen.
    void takeKeyboard();
    /// What it says while it has no lines; empty: nothing.
    void setEmptyText(const QString& sentence);

signals:
    void opened(const QModelIndex& index);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fitLines();
    void selectLineFrom(int row, int step);
    QString m_emptyText;
};

/// Paints lines that go over all columns (ShopModel::acrossRole): each cell paints its own part of the one text.
class ShopDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit ShopDelegate(ShopTable* table) : QStyledItemDelegate(table), m_table(table) {}
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    ShopTable* m_table;
};

} // namespace caprail
