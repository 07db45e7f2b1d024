// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/tab_order.h>

#include <QAbstractScrollArea>
#include <QLayout>
#include <QWidget>
#include <vector>

namespace caprail {

namespace {

void collect(const QLayout& layout, std::vector<QWidget*>& stops) {
    for (int i = 0; i < layout.count(); ++i) {
        QLayoutItem* item = layout.itemAt(i);
        if (const QLayout* inner = item->layout()) {
            collect(*inner, stops);
        } else if (QWidget* widget = item->widget()) {
            const bool isWhole = qobject_cast<QAbstractScrollArea*>(widget) != nullptr || widget->layout() == nullptr;
            if (!isWhole) {
                collect(*widget->layout(), stops);
            } else if ((widget->focusPolicy() & Qt::TabFocus) != 0) {
                stops.push_back(widget);
            }
        }
    }
}

} // namespace

void orderAsRead(QWidget& page) {
    std::vector<QWidget*> stops;
    if (page.layout() != nullptr) {
        collect(*page.layout(), stops);
    }
    for (std::size_t i = 1; i < stops.size(); ++i) {
        QWidget::setTabOrder(stops[i - 1], stops[i]);
    }
}

} // namespace caprail
