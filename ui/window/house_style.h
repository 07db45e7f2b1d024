// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProxyStyle>

namespace caprail {

/// Fusion with its own mark for what finds no room in a menu bar or a tool bar. The stock one is read from a picture
/// file when the bar is made, seen or not, and for that Qt loads every picture reader that is installed: 1.3 ms of each
/// start. And the labels that Qt itself makes, as a file dialog's «exists already», do not take a name for HTML.
class HouseStyle : public QProxyStyle {
    Q_OBJECT
public:
    HouseStyle();
    using QProxyStyle::polish;
    void polish(QWidget* widget) override;
    [[nodiscard]] QIcon standardIcon(StandardPixmap which, const QStyleOption* option,
                                     const QWidget* widget) const override;
};

} // namespace caprail
