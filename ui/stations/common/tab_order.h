// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <vector>

namespace caprail {

/// Tab enters a page through its focus proxy (the field that takes the next value), and would pass over whatever stands
/// between the page and that proxy in the order of focus: it is put right behind the proxy. Called once, with the page
/// complete and its proxy set.
inline void putProxyFirst(const QWidget& page) {
    QWidget* proxy = page.focusProxy();
    while (proxy != nullptr && proxy->focusProxy() != nullptr) {
        proxy = proxy->focusProxy();
    }
    std::vector<QWidget*> before;
    for (QWidget* at = page.nextInFocusChain(); proxy != nullptr && at != proxy && at != &page;
         at = at->nextInFocusChain()) {
        if (page.isAncestorOf(at) && (at->focusPolicy() & Qt::TabFocus) != 0 && at->focusProxy() == nullptr) {
            before.push_back(at);
        }
    }
    for (QWidget* one : before) {
        QWidget::setTabOrder(proxy, one);
        proxy = one;
    }
}

} // namespace caprail
