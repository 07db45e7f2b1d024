// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/kept_selection.h>

#include <QItemSelectionModel>
#include <QScrollBar>

namespace caprail {

KeptSelection::KeptSelection(QAbstractItemView* view, TableModel* model)
    : QObject(view), m_view(view), m_model(model) {
    connect(model, &TableModel::aboutToExchange, this, &KeptSelection::note);
    connect(model, &TableModel::exchanged, this, &KeptSelection::restore);
    connect(view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        if (!m_isExchanging) {
            emit selected(line());
        }
    });
}

int KeptSelection::line() const {
    const QItemSelection& selection = m_view->selectionModel()->selection();
    return selection.isEmpty() ? -1 : selection.first().top();
}

void KeptSelection::select(int line) {
    if (line < 0) {
        m_view->selectionModel()->clear();
        return;
    }
    const QModelIndex first = m_model->index(line, 0);
    m_view->selectionModel()->setCurrentIndex(first, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    m_view->scrollTo(first);
}

void KeptSelection::note() {
    m_isExchanging = true;
    m_findSelected = line() < 0 ? nullptr : m_model->finder(line());
    const QModelIndex top = m_view->indexAt({1, 1});
    m_top = top.row();
    m_findTop = m_top > 0 ? m_model->finder(m_top) : nullptr;
}

void KeptSelection::restore() {
    const int selected = m_findSelected ? m_findSelected() : -1;
    if (selected < 0) {
        m_view->selectionModel()->clear(); // where the selected row went, Qt has gone on to the one beside it
    } else if (selected != line()) {
        m_view->selectionModel()->setCurrentIndex(m_model->index(selected, 0), QItemSelectionModel::ClearAndSelect |
                                                                                   QItemSelectionModel::Rows);
    }
    if (const int top = m_findTop ? m_findTop() : -1; top >= 0 && top != m_view->indexAt({1, 1}).row()) {
        m_view->scrollTo(m_model->index(top, 0), QAbstractItemView::PositionAtTop);
    }
    m_findSelected = nullptr;
    m_findTop = nullptr;
    m_isExchanging = false;
}

} // namespace caprail
