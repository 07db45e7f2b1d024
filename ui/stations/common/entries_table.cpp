// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entries_table.h>

#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>
#include <functional>
#include <ledger/history_line.h>
#include <session/filled.h>
#include <stations/common/entries_model.h>
#include <stations/common/station_text.h>
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

std::vector<qint64> EntriesTable::selectedEntries() const {
    std::vector<qint64> entries;
    for (const QModelIndex& row : selectionModel()->selectedRows()) {
        if (const qint64 entry = m_model->entryAt(row.row()); m_session.ledger().struckBy(entry) == 0) {
            entries.push_back(entry);
        }
    }
    std::ranges::sort(entries, std::greater<>());
    return entries;
}

void EntriesTable::askAndStrike(RecordSession& session, const std::vector<qint64>& entries, QWidget* parent) {
    if (entries.empty()) {
        return;
    }
    constexpr std::size_t mostSaid = 12; // a longer list leaves no room for the question
    constexpr qsizetype mostLetters = 100; // the question is as wide as its longest line
    const int count = static_cast<int>(entries.size());
    QStringList lines{tr("Why are these %n entries withdrawn? They stay readable, struck through.", "", count)};
    for (const qint64 entry : entries) {
        if (lines.size() > static_cast<qsizetype>(mostSaid)) {
            lines << tr("… and %n more.", "", static_cast<int>(entries.size() - mostSaid));
            break;
        }
        QString line = filled(QStringLiteral("%1   %2"), entry,
                              qtText(historyLine(session.ledger().at(entry).body, session.units())));
        if (line.size() > mostLetters) {
            line = line.left(mostLetters) + QStringLiteral(" …");
        }
        lines << line;
    }
    const QString title = count == 1 ? tr("Strike entry %1").arg(entries.front()) : tr("Strike %n entries", "", count);
    if (count == 1) {
        lines.front() = tr("Why is this entry withdrawn? It stays readable, struck through.");
    }
    const auto why = askText(parent, title, lines.join(QLatin1Char('\n')));
    if (!why) {
        return;
    }
    std::vector<Body> strikes;
    for (const qint64 entry : entries) {
        strikes.emplace_back(Struck{entry, coreText(why->trimmed())});
    }
    session.appendAllAndSay(std::move(strikes)); // a refusal is said by the session's `refused`
}

void EntriesTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    paintEmptyText(*this, m_emptyText);
}

void EntriesTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copySelection();
    } else if (event->key() == Qt::Key_Delete && !selectedEntries().empty()) {
        askAndStrike(m_session, selectedEntries(), this);
    } else {
        QTableView::keyPressEvent(event);
    }
}

void EntriesTable::contextMenuEvent(QContextMenuEvent* event) {
    const QModelIndex index = indexAt(event->pos());
    if (!index.isValid()) {
        return;
    }
    // What lies under the mouse, unless it is one of several that are selected.
    const qint64 here = m_model->entryAt(index.row());
    std::vector<qint64> meant = selectedEntries();
    if (std::ranges::find(meant, here) == meant.end()) {
        meant = {here};
    }
    QMenu menu;
    menu.addAction(meant.size() == 1 ? tr("Strike entry %1…").arg(here)
                                     : tr("Strike these %n entries…", "", static_cast<int>(meant.size())),
                   this, [&] { askAndStrike(m_session, meant, this); });
    menu.addAction(tr("Copy"), this, &EntriesTable::copySelection);
    menu.exec(event->globalPos());
}

void EntriesTable::copySelection() const {
    std::vector<int> lines;
    for (const QModelIndex& row : selectionModel()->selectedRows()) {
        lines.push_back(row.row());
    }
    copyToClipboard(*m_model, lines);
}

} // namespace caprail
