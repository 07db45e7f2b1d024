// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/check.h>
#include <session/look.h>

class QPainter;
class QPainterPath;
class QPen;
class QPointF;
class QRectF;

namespace caprail {

/// How a state looks where colour cannot be seen: each has a badge and an outline of its own.
///
/// | state | badge | outline of a callout |
/// | good | tick in a circle | plain |
/// | out | cross in a diamond | heavy, corners cut |
/// | too close to call | two waves in a hexagon | round ends |
/// | stale | open circle with an arrowhead | dashed |
/// | not done | empty circle | dotted |

/// A badge of this radius; drawn as lines, so it needs no sign of any font.
void paintBadge(QPainter& painter, QPointF middle, double radius, CheckState state, const Look& look);

/// The outline of a callout over `box`; `corner` is about the size of its roundings and cut corners.
QPainterPath calloutShape(const QRectF& box, CheckState state, double corner);
/// The pen for it; `line` is the width of a plain line.
QPen calloutPen(CheckState state, const Look& look, double line);

} // namespace caprail
