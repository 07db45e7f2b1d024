// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/page.h>

namespace caprail {

/// A mode of the fasteners station.
class FastenersPage : public Page {
    Q_OBJECT
public:
    using Page::Page;
    /// Shows facts and assessment anew, with this fastener selected.
    virtual void refresh(FastenerId selected) = 0;
    /// Takes a key that was typed on the diagram.
    virtual void type(const QString& text) = 0;
    /// The fasteners in the order in which this mode goes through them.
    [[nodiscard]] virtual std::vector<FastenerId> order() const = 0;

signals:
    void chosen(caprail::FastenerId fastener);
};

} // namespace caprail
