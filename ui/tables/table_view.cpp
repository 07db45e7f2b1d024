// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/table_view.h>

#include <QHeaderView>
#include <QKeyEvent>
#include <tables/empty_text.h>
#include <tables/tsv.h>

namespace caprail {

namespace {

constexpr int last = -2;
constexpr int room = 10;      // between columns, pixels
constexpr int measured = 300; // rows by which a column is made as wide as its texts

} // namespace

TableView::TableView(const QString& name, TableModel* model, QWidget* parent) : QTableView(parent) {
    model->setParent(this);
    setModel(model);
    m_selection = new KeptSelection(this, model);
    setAccessibleName(name);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(false);
    setTabKeyNavigation(false); // Tab leaves the table
    setCornerButtonEnabled(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 8);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setResizeContentsPrecision(measured);
    horizontalHeader()->setSortIndicatorClearable(true);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    setSortingEnabled(true);
    connect(m_selection, &KeptSelection::selected, this, &TableView::lineSelected);
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& at) { emit lineActivated(at.row()); });
    connect(model, &TableModel::exchanged, this, [this] {
        spanHeadings();
        fitColumns();
    });
}

void TableView::setEmptyText(const QString& sentence) {
    m_emptyText = sentence;
    viewport()->update();
}

void TableView::setStretched(int column) {
    m_stretched = column;
}

void TableView::fitColumns() {
    QHeaderView* header = horizontalHeader();
    const int columns = model()->columnCount();
    const int stretched = m_stretched == last ? columns - 1 : m_stretched;
    // Off and on again: sizes set by content win over a stretch that was set before.
    header->setStretchLastSection(false);
    header->setSectionResizeMode(QHeaderView::Interactive);
    resizeColumnsToContents();
    for (int column = 0; column < columns; ++column) {
        header->resizeSection(column, header->sectionSize(column) + room);
    }
    if (stretched == columns - 1 && columns > 0) {
        // It takes what is left and is elided there; its tool tip has the whole.
        header->resizeSection(stretched, header->minimumSectionSize());
        header->setStretchLastSection(true);
    } else if (stretched >= 0 && stretched < columns) {
        header->setSectionResizeMode(stretched, QHeaderView::Stretch);
    }
}

void TableView::spanHeadings() {
    clearSpans();
    const int columns = model()->columnCount();
    for (int line = 0; columns > 1 && line < model()->rowCount(); ++line) {
        if (model()->index(line, 0).data(TableModel::headingRole).toBool()) {
            setSpan(line, 0, 1, columns);
        }
    }
}

void TableView::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copyToClipboard(*model());
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && selectedLine() >= 0) {
        emit lineActivated(selectedLine());
    } else {
        QTableView::keyPressEvent(event);
    }
}

void TableView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (!m_emptyText.isEmpty()) {
        paintEmptyText(*this, m_emptyText);
    }
}

} // namespace caprail
