// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/panel_scroller.h>

#include <QApplication>

namespace caprail {

namespace {

constexpr QSize least(420, 240); // a field and what it says can still be seen

} // namespace

PanelScroller::PanelScroller(QWidget* content, QWidget* parent) : QScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(true);
    setWidget(content);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { followFocus(now); });
}

QSize PanelScroller::minimumSizeHint() const {
    return widget()->minimumSizeHint().boundedTo(least);
}

void PanelScroller::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    followFocus(widget()->focusWidget());
}

bool PanelScroller::eventFilter(QObject* watched, QEvent* event) {
    const bool isTaken = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::Resize) {
        followFocus(widget()->focusWidget());
    }
    return isTaken;
}

void PanelScroller::followFocus(const QWidget* now) {
    if (now == nullptr || !widget()->isAncestorOf(now)) {
        return;
    }
    // With as much of what it lies in as there is room for from side to side: a figure over a field, a unit beside it.
    const QWidget* around = now;
    while (around->parentWidget() != widget() && around->parentWidget()->width() <= viewport()->width()) {
        around = around->parentWidget();
    }
    const int left = around->mapTo(widget(), QPoint()).x();
    const int top = now->mapTo(widget(), QPoint()).y();
    constexpr int margin = 8;
    // The end first: of what is larger than the room the beginning is seen.
    ensureVisible(left + around->width(), top + now->height(), 0, margin);
    ensureVisible(left, top, 0, margin);
}

} // namespace caprail
