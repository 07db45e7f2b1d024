// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/empty_text.h>

#include <QPainter>

namespace caprail {

void paintEmptyText(QAbstractItemView& view, const QString& sentence) {
    const bool isEmpty = view.model()->rowCount() == 0;
    const QString description = isEmpty ? sentence : QString();
    if (view.accessibleDescription() != description) {
        view.setAccessibleDescription(description);
    }
    if (!isEmpty) {
        return;
    }
    QPainter painter(view.viewport());
    painter.setPen(view.palette().color(QPalette::PlaceholderText));
    constexpr int margin = 8;
    painter.drawText(view.viewport()->rect().adjusted(margin, margin, -margin, -margin),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, sentence);
}

} // namespace caprail
