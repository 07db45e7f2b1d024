// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStackedWidget>

namespace caprail {

/// Panels one over the other. They take the room that the window has: how large each would like to be, and how high at
/// a given width, is its own affair. Asked again and again of all of them while the window is laid out, it took longer
/// than all the rest of the start.
class PanelStack : public QStackedWidget {
public:
    explicit PanelStack(QWidget* parent = nullptr) : QStackedWidget(parent) {
        connect(this, &QStackedWidget::currentChanged, this, [this] { updateGeometry(); });
    }
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }
    [[nodiscard]] int heightForWidth(int) const override { return -1; }
    /// Of the one that is shown: a wide one that was looked at before does not make this one scroll.
    [[nodiscard]] QSize minimumSizeHint() const override {
        return currentWidget() == nullptr ? QStackedWidget::minimumSizeHint()
                                          : currentWidget()->minimumSizeHint().expandedTo(currentWidget()->minimumSize());
    }
    [[nodiscard]] QSize sizeHint() const override { return minimumSizeHint(); }
};

} // namespace caprail
