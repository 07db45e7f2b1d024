// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProxyStyle>

namespace caprail {

/// Fusion with its own mark for what finds no room in a menu bar or a tool bar. The stock one is read from a picture
/// file when the bar is made, seen or not, and for that Qt loads every picture reader that is installed: 1.3 ms of each
/// start. Its frames are darker than Fusion's. And the labels that Qt itself makes, as a file dialog's «exists already», do
/// not take a name for HTML. Fields, boxes and buttons are large enough for a finger or an unsteady hand, and what scrolls
/// follows a finger.
class HouseStyle : public QProxyStyle {
    Q_OBJECT
public:
    HouseStyle();
    using QProxyStyle::polish;
    static constexpr int leastTarget = 24; ///< pixels, both ways, of what is clicked or touched
    void polish(QWidget* widget) override;
    // Frames of fields, buttons and boxes that can be seen: 3 : 1 against what is around them (WCAG 2.1, 1.4.11).
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                         const QWidget* widget) const override;
    [[nodiscard]] QIcon standardIcon(StandardPixmap which, const QStyleOption* option,
                                     const QWidget* widget) const override;
};

} // namespace caprail
