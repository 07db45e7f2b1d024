// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/plain_table.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <text/plain_text.h>

namespace caprail {

PlainTable::PlainTable(const QString& name, const QStringList& heads, QWidget* parent)
    : QTableWidget(0, static_cast<int>(heads.size()), parent) {
    setAccessibleName(name);
    setHorizontalHeaderLabels(heads);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(false);
    setTabKeyNavigation(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 8);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(this, &QTableWidget::itemSelectionChanged, this, [this] {
        if (!m_isFilling && !selectedKey().isEmpty()) {
            emit keySelected(selectedKey());
        }
    });
    connect(this, &QTableWidget::cellDoubleClicked, this, [this] { emit keyActivated(selectedKey()); });
}

void PlainTable::show(const std::vector<QStringList>& rows) {
    m_isFilling = true;
    const QString selected = selectedKey();
    setRowCount(static_cast<int>(rows.size()));
    int row = 0;
    for (const QStringList& cells : rows) {
        for (int column = 0; column < columnCount(); ++column) {
            auto* cell = new QTableWidgetItem(cells.value(column));
            setTip(cell, cells.value(column));
            setItem(row, column, cell);
        }
        ++row;
    }
    // Off and on again: sizes set by content win over a stretch that was set before.
    horizontalHeader()->setStretchLastSection(false);
    resizeColumnsToContents();
    // The last takes what is left and is elided there; its tool tip has the whole.
    horizontalHeader()->resizeSection(columnCount() - 1, horizontalHeader()->minimumSectionSize());
    horizontalHeader()->setStretchLastSection(true);
    clearSelection();
    selectKey(selected);
    m_isFilling = false;
}

QString PlainTable::selectedKey() const {
    const auto chosen = selectedItems();
    return chosen.isEmpty() ? QString() : item(chosen.front()->row(), 0)->text();
}

void PlainTable::selectKey(const QString& key) {
    for (int row = 0; row < rowCount(); ++row) {
        if (!key.isEmpty() && item(row, 0)->text() == key) {
            selectRow(row);
            scrollToItem(item(row, 0));
        }
    }
}

void PlainTable::tint(int row, const QColor& ink) {
    for (int column = 0; column < columnCount(); ++column) {
        item(row, column)->setForeground(ink);
    }
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        QString text;
        for (int row = 0; row < rowCount(); ++row) {
            QStringList cells;
            for (int column = 0; column < columnCount(); ++column) {
                cells << item(row, column)->text();
            }
            text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
        }
        QGuiApplication::clipboard()->setText(text);
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && !selectedKey().isEmpty()) {
        emit keyActivated(selectedKey());
    } else {
        QTableWidget::keyPressEvent(event);
    }
}

} // namespace caprail
