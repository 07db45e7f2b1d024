// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QScrollArea>

namespace caprail {

/// The room that the window has for its stations. On a screen that is smaller than a station needs (a laptop at 200 %)
/// it scrolls, instead of making the window larger than the screen, and what has the focus is brought into sight.
class PanelScroller : public QScrollArea {
    Q_OBJECT
public:
    explicit PanelScroller(QWidget* content, QWidget* parent = nullptr);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void followFocus(const QWidget* now);
};

} // namespace caprail
