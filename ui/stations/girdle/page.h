// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/page.h>

namespace caprail {

/// A mode of the girdle station.
class GirdlePage : public Page {
    Q_OBJECT
public:
    using Page::Page;
    /// Shows facts and assessment anew, with this position selected.
    virtual void refresh(Position selected) = 0;
    /// Takes a key that was typed on the diagram; false when it means nothing here.
    virtual bool type(const QString& text) = 0;

signals:
    void chosen(caprail::Position position);
};

} // namespace caprail
