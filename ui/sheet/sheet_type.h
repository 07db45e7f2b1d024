// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The typography of the sheet: its unit, fonts, colours and spaces, in one place.
#include <QColor>
#include <QFont>
#include <base/problem.h>
#include <session/look.h>

namespace caprail::sheet {

/// Refuses where this computer has no font to set a sheet in: its pages would be rows of empty boxes.
Result<void> haveFont();

/// Everything on a sheet is laid out in 1/1200 inch, whatever it is painted on later, so that screen, printer and file
/// break lines and pages alike.
inline constexpr qreal unitsPerInch = 1200;
constexpr qreal mm(qreal n) {
    return n * unitsPerInch / 25.4;
}
constexpr qreal points(qreal n) {
    return n * unitsPerInch / 72;
}

struct SheetType {
    SheetType();

    QFont title, heading, subheading;
    QFont body, strong, small;
    QFont cell, cellStrong, cellHead;
    QFont figure; ///< what diagrams and charts are drawn in

    QColor ink, quiet, rule, tint, accent;
    Look look; ///< colours of the states, diagrams and charts

    qreal margin = mm(16);    ///< left and right
    qreal topMargin = mm(20); ///< above the body; the running head lies in it
    qreal bottomMargin = mm(21);
};

} // namespace caprail::sheet
