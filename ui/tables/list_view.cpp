// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/list_view.h>

#include <QKeyEvent>
#include <tables/empty_text.h>
#include <tables/tsv.h>

namespace caprail {

ListView::ListView(const QString& name, TableModel* model, QWidget* parent) : QListView(parent) {
    model->setParent(this);
    setModel(model);
    m_selection = new KeptSelection(this, model);
    setAccessibleName(name);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(m_selection, &KeptSelection::selected, this, &ListView::lineSelected);
    connect(this, &QListView::activated, this, [this](const QModelIndex& at) { emit lineActivated(at.row()); });
}

void ListView::setEmptyText(const QString& sentence) {
    m_emptyText = sentence;
    viewport()->update();
}

void ListView::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copyToClipboard(*model());
    } else {
        QListView::keyPressEvent(event);
    }
}

void ListView::paintEvent(QPaintEvent* event) {
    QListView::paintEvent(event);
    if (!m_emptyText.isEmpty()) {
        paintEmptyText(*this, m_emptyText);
    }
}

} // namespace caprail
