// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_delegate.h>

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <records/shop_model.h>
#include <session/look.h>
#include <tables/empty_text.h>

namespace caprail {

ShopTable::ShopTable(QWidget* parent) : QTableView(parent) {
    setItemDelegate(new ShopDelegate(this));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(false);
    setTabKeyNavigation(false); // Tab leaves the list
    setSortingEnabled(true);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setStretchLastSection(true);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    fitLines();
    connect(this, &QAbstractItemView::doubleClicked, this, &ShopTable::opened);
}

void ShopTable::fitLines() {
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 12);
}

void ShopTable::takeKeyboard() {
    if (model() != nullptr && !currentIndex().flags().testFlag(Qt::ItemIsSelectable)) {
        selectLineFrom(0, 1); // else Qt gives the keyboard to the first line, be it the head of a group
    }
    setFocus();
}

void ShopTable::setEmptyText(const QString& sentence) {
    if (m_emptyText != sentence) {
        m_emptyText = sentence;
        viewport()->update();
    }
}

void ShopTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (model() != nullptr) {
        paintEmptyText(*this, m_emptyText);
    }
}

void ShopTable::keyPressEvent(QKeyEvent* event) {
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentIndex().isValid()) {
        emit opened(currentIndex());
        return;
    }
    // Over a list of records, Home and End mean its ends; over a table Qt means those of the line.
    const bool isHome = event->key() == Qt::Key_Home;
    if ((isHome || event->key() == Qt::Key_End) && event->modifiers() == Qt::NoModifier && model()->rowCount() > 0) {
        selectLineFrom(isHome ? 0 : model()->rowCount() - 1, isHome ? 1 : -1);
        return;
    }
    QTableView::keyPressEvent(event);
}

/// The first line from here on that can be selected: headings cannot.
void ShopTable::selectLineFrom(int row, int step) {
    for (; row >= 0 && row < model()->rowCount(); row += step) {
        const QModelIndex index = model()->index(row, std::max(0, currentIndex().column()));
        if (index.flags().testFlag(Qt::ItemIsSelectable)) {
            setCurrentIndex(index);
            scrollTo(index);
            return;
        }
    }
}

void ShopTable::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        fitLines();
    }
    QTableView::changeEvent(event);
}

void ShopDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QString across = index.data(ShopModel::acrossRole).toString();
    if (across.isEmpty()) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    const Look look = screenLook();
    const bool isHeading = index.data(ShopModel::isHeadingRole).toBool();
    const bool isSelected = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->setClipRect(option.rect);
    const QRect line(m_table->columnViewportPosition(0), option.rect.top(), m_table->horizontalHeader()->length(),
                     option.rect.height());
    painter->fillRect(option.rect, isSelected  ? option.palette.highlight()
                                   : isHeading ? QBrush(washed(look.accent, look.paper, 0.10))
                                               : QBrush(look.paper));
    QFont font = option.font;
    font.setBold(isHeading);
    painter->setFont(font);
    painter->setPen(isSelected ? option.palette.color(QPalette::HighlightedText) : isHeading ? look.ink : look.out);
    // As wide as what is in sight, so that the end of a long sentence is told by its dots.
    QRect seen = line.adjusted(6, 0, -6, 0);
    seen.setRight(std::min(seen.right(), m_table->viewport()->width() - 6));
    painter->drawText(seen, Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(font).elidedText(across, Qt::ElideRight, seen.width()));
    painter->restore();
}

} // namespace caprail
