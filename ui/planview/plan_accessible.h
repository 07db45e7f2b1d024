// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAccessible>
#include <planview/plan_view.h>
#include <utility>
#include <vector>

namespace caprail {

/// Makes every PlanView a list to screen readers, with one item per place: its name, what stands beside it and its
/// state in words. Called by each view; only the first call does anything.
void installPlanAccessibility();

/// Tells screen readers that the content changed, and which place is selected now (empty: only the former).
void announcePlanContent(PlanView& view);
void announcePlanSelection(PlanView& view);

/// What screen readers are told of the selected place: events about the child of this index. None: nothing is selected.
std::vector<std::pair<QAccessible::Event, int>> selectionNews(const PlanView& view);

} // namespace caprail
