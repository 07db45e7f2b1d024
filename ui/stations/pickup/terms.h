// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <assessment/assessment.h>
#include <assessment/budget_of.h>

namespace caprail {

/// How a term is measured, in one sentence.
QString howToMeasure(PickupTerm term);
/// The uncertainty budget of the clearance, from the current readings of all terms.
UncertaintyBudget pickupBudget(const Facts& facts);
/// One line of what a term's readings come to: mean with its uncertainty, count and range.
QString termLine(const Facts& facts, PickupTerm term, const Units& units);
/// What to change, and by how much, to bring the clearance to the middle of its band; empty without a clearance or a
/// band.
QString towardsMiddle(const Facts& facts, const Assessment& assessment, const Units& units);

} // namespace caprail
