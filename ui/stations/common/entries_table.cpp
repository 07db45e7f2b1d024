// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entries_table.h>

#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <stations/common/entries_model.h>
#include <tables/empty_text.h>
#include <tables/tsv.h>
#include <text/ask.h>
#include <utility>

namespace caprail {

EntriesTable::EntriesTable(RecordSession& session, QWidget* parent)
    : QTableView(parent), m_session(session), m_model(new EntriesModel(session, this)) {
    m_emptyText = tr("No entry yet. What is entered here will be listed with its number; Delete strikes it.");
    setModel(m_model);
    connect(m_model, &EntriesModel::lookedOn, this, [this] {
        if (m_awaited != 0 && m_model->rowOf(m_awaited) >= 0) {
            selectRow(m_model->rowOf(std::exchange(m_awaited, 0)));
        }
    });
    setAccessibleName(tr("Entries"));
    setSelectionBehavior(SelectRows);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(NoEditTriggers);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(false);
    setTabKeyNavigation(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 8);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setHighlightSections(false);
    setColumnWidth(EntriesModel::number, fontMetrics().horizontalAdvance(QStringLiteral("000000")) + 16);
    setColumnWidth(EntriesModel::time, fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00 00:00")) + 16);
    setColumnWidth(EntriesModel::person, fontMetrics().horizontalAdvance(QStringLiteral("Mmmmm Mmmmm")) + 8);
}

void EntriesTable::setFilter(std::function<bool(const Entry&)> filter) {
    m_model->setFilter(std::move(filter));
}

void EntriesTable::setLine(std::function<QString(const Entry&)> line) {
    m_model->setLine(std::move(line));
}

void EntriesTable::setEmptyText(const QString& sentence) {
    m_emptyText = sentence;
}

void EntriesTable::refresh() {
    const qint64 selected = selectedEntry();
    m_model->refresh();
    m_awaited = 0;
    if (selected == 0) {
        return;
    }
    if (m_model->rowOf(selected) >= 0) {
        selectEntry(selected);
    } else if (!m_model->isWhole()) {
        m_awaited = selected; // its row is not there yet
    }
}

void EntriesTable::selectEntry(qint64 sequence) {
    m_model->lookUpTo(sequence);
    m_awaited = 0;
    if (const int row = m_model->rowOf(sequence); row >= 0) {
        selectRow(row);
        scrollTo(m_model->index(row, 0));
    }
}

qint64 EntriesTable::selectedEntry() const {
    const QModelIndex current = currentIndex();
    return current.isValid() && selectionModel()->hasSelection() ? m_model->entryAt(current.row()) : 0;
}

void EntriesTable::askAndStrike(RecordSession& session, qint64 sequence, QWidget* parent) {
    const auto why = askText(parent, tr("Strike entry %1").arg(sequence),
                             tr("Why is entry %1 withdrawn? It stays readable, struck through.").arg(sequence));
    if (why) {
        (void)session.strike(sequence, *why); // a refusal is said by the session's `refused`
    }
}

void EntriesTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    paintEmptyText(*this, m_emptyText);
}

void EntriesTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copySelection();
    } else if (event->key() == Qt::Key_Delete && selectedEntry() != 0) {
        askAndStrike(m_session, selectedEntry(), this);
    } else {
        QTableView::keyPressEvent(event);
    }
}

void EntriesTable::contextMenuEvent(QContextMenuEvent* event) {
    const QModelIndex index = indexAt(event->pos());
    if (!index.isValid()) {
        return;
    }
    QMenu menu;
    menu.addAction(tr("Strike entry %1…").arg(m_model->entryAt(index.row())), this,
                   [&] { askAndStrike(m_session, m_model->entryAt(index.row()), this); });
    menu.addAction(tr("Copy"), this, &EntriesTable::copySelection);
    menu.exec(event->globalPos());
}

void EntriesTable::copySelection() const {
    std::vector<int> lines;
    for (const QModelIndex& row : selectionModel()->selectedRows()) {
        lines.push_back(row.row());
    }
    copyToClipboard(tsvOf(*m_model, lines));
}

} // namespace caprail
