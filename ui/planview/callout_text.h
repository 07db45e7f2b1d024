// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <planview/callouts.h>

namespace caprail {

/// The texts of one callout measured. Tall: head, figure and note below each other, for a crank across the paper. Flat:
/// head and figure in one line, for a crank that runs up and down.
struct CalloutText {
    CalloutText(const PlanMark& of, const QString& withLabel, bool flat, double scale, const PlanType& type);

    const PlanMark& mark;
    QString label;
    bool isFlat;
    QFont small;
    QFont large;
    double pad;
    double badge; ///< radius
    double headWidth = 0, headHeight = 0, figureHeight = 0, noteHeight = 0;
    QSizeF size; ///< of the whole box
};

} // namespace caprail
