// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <planview/plan_geometry.h>

namespace caprail {

/// Where the fasteners of a row lie, in millimetres of the plan, number 1 first. A layout does not say where its pan
/// rail is drilled: they are spread evenly, which is enough to tell them apart and to number them.
/// - pan rail: around the rail, from the front left corner rearwards along the left, and on across the rear;
/// - front, rear: across the block's end, from left to right.
/// Other kinds and a count below 1 have none.
std::vector<QPointF> rowPoints(const EngineLayout& layout, const PlanGeometry& size, FastenerKind kind, int count);

/// From the centre of their pattern outwards (common practice, no source): the numbers of a row's fasteners in the
/// order of tightening, counted from 1.
std::vector<int> rowSequence(const EngineLayout& layout, FastenerKind kind, int count);

/// How many fasteners the groups of a record count in each row.
std::map<FastenerKind, int> rowsOf(const Facts& facts);

} // namespace caprail
