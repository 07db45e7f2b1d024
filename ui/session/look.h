// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>
#include <QPalette>
#include <QString>
#include <assessment/check.h>

namespace caprail {

/// The colours of one look. A state is told by shape and word as well; colour only helps. The inks are told apart by
/// people with any colour vision (blue, orange, vermilion, grey; no red against green) and keep 4.5 : 1 against
/// `paper`.
struct Look {
    QColor paper;                         ///< ground of diagrams and charts
    QColor ink;                           ///< lines and figures
    QColor faint;                         ///< construction lines, grids
    QColor quiet;                         ///< secondary text
    QColor accent;                        ///< the selected place
    QColor good, out, close, stale, open; ///< one per check state
    [[nodiscard]] QColor of(CheckState) const;
};

/// For screens, after the application's palette (dark when its window colour is darker than its text).
Look screenLook();
Look lightLook();
Look darkLook();
/// For whoever needs more contrast: black and white, inks of 7 : 1 and more (WCAG 2.1, 1.4.6).
Look contrastLook(bool isDark);
/// Whether a palette's text stands out from its ground as in a high-contrast scheme of a desktop: 19 : 1 and more.
bool isHighContrast(const QPalette& palette);
/// How far two colours stand apart, from 1 to 21 (WCAG 2.1, “contrast ratio”).
double contrast(const QColor& one, const QColor& other);
/// For paper: the light one on white.
Look paperLook();

/// A thin wash of `colour` on `ground`, opaque: PDF/A-1 knows no transparency (ISO 19005-1, 6.4), so washes are mixed
/// here and not on the paper. `share` from 0 (the ground) to 1 (the colour).
QColor washed(const QColor& colour, const QColor& ground, double share);

/// A sign for a state that reads without colour: ✓ good, ✕ out, ≈ too close to call, ↻ stale, ○ not done.
QString sign(CheckState);
/// The state's word, for screens and screen readers.
QString stateWord(CheckState);

} // namespace caprail
