// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Whether the Tab key goes through a page as it is read: down a column, and along a line from the left.
#include <QString>
#include <QWidget>
#include <vector>

namespace caprail {

/// Each pair of stops that Tab reaches in another order than they are read, a sentence each. The page must be shown.
inline std::string outOfReadingOrder(const QWidget& page) {
    std::vector<const QWidget*> stops;
    for (const QWidget* at = page.nextInFocusChain(); at != &page; at = at->nextInFocusChain()) {
        if (page.isAncestorOf(at) && at->isVisible() && (at->focusPolicy() & Qt::TabFocus) != 0 &&
            at->focusProxy() == nullptr) {
            stops.push_back(at);
        }
    }
    const auto place = [&](const QWidget* stop) { return QRect(stop->mapTo(&page, QPoint()), stop->size()); };
    const auto name = [](const QWidget* stop) {
        const QString said =
            stop->accessibleName().isEmpty() ? stop->property("text").toString() : stop->accessibleName();
        return stop->metaObject()->className() + (" “" + said.toStdString()) + "”";
    };
    std::string sentences;
    for (std::size_t i = 0; i < stops.size(); ++i) {
        for (std::size_t j = i + 1; j < stops.size(); ++j) {
            const QRect first = place(stops[i]), then = place(stops[j]);
            const bool isAbove =
                then.bottom() < first.top() && then.left() <= first.right() && first.left() <= then.right();
            const bool isBefore =
                then.right() < first.left() && then.top() <= first.bottom() && first.top() <= then.bottom();
            if (isAbove || isBefore) {
                sentences += name(stops[j]) + " is reached after " + name(stops[i]) + ", and stands before it.\n";
            }
        }
    }
    return sentences.empty() && stops.size() < 2 ? "fewer than two stops" : sentences;
}

} // namespace caprail
