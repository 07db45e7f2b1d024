// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The uncertainty budget behind each figure of an assessment: what a screen shows for «why ± 0.0003?».
#include <assessment/facts.h>
#include <measure/statistics.h>
#include <measure/uncertainty.h>

namespace caprail {

/// Repeatability of the survey: the pooled scatter over all positions with two standing readings or more.
std::optional<Pooled> surveyRepeatability(const Facts&);
/// Of the gap at a position, from its standing readings.
UncertaintyBudget gapBudgetOf(const Facts&, Position);
/// The same where the survey's repeatability is known: it is worked out from every position, so for all of them once.
UncertaintyBudget gapBudgetOf(const Facts&, Position, const std::optional<Pooled>& repeatability);
/// Of the residual at a position: its gap, and one micrometer term per shim of its stack with a common zero.
UncertaintyBudget residualBudgetOf(const Facts&, Position);
UncertaintyBudget residualBudgetOf(const Facts&, Position, const std::optional<Pooled>& repeatability);
/// Expanded uncertainty that the residual at a position will have once a stack lies there, nanometres: with its own
/// stack where one is built, else with three shims as the kit's were measured. What a plan must keep clear of the
/// band's ends.
double expectedResidualUncertainty(const Facts&, Position);
/// Of the clearance at a bearing, from the readings that stand: bore and journal; housing, both shells and journal; or
/// the gauging strip alone.
UncertaintyBudget clearanceBudgetOf(const Facts&, JournalId);
/// Of a fit, from the readings that stand, else from those that stood last.
UncertaintyBudget fitBudgetOf(const Facts&, const FitPlace&);
using PickupReadings = std::map<PickupTerm, std::span<const Seen<PickupReading>>>;
/// `terms` has all four terms; those without a reading count as one reading of unknown scatter.
UncertaintyBudget pickupBudgetOf(const Facts&, const PickupReadings& terms);
/// U = k · u_c after the record's rule of coverage, nanometres.
double expandedBy(const Facts&, const UncertaintyBudget&);

} // namespace caprail
