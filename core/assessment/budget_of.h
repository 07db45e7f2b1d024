// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The uncertainty budget behind each figure of an assessment: what a screen shows for «why ± 0.0003?». Each reading
/// counts with its instrument as that was known when the reading was made.
#include <assessment/facts.h>
#include <measure/statistics.h>
#include <measure/uncertainty.h>
#include <span>

namespace caprail {

Coverage coverageOf(const Facts&);

/// How the readings of a kind scatter: from repeats of one place while nothing changed there, and between people.
Scatter gapScatter(const Facts&);
Scatter journalScatter(const Facts&);
Scatter boreScatter(const Facts&, BoreMethod);
Scatter shimScatter(const Facts&);
/// Of one fit, over its places.
Scatter fitScatter(const Facts&, const std::string& fit);
/// Of the pickup's terms that were read with one instrument.
Scatter pickupScatter(const Facts&, const std::string& instrument);

/// All of these at once, for who needs several budgets of one record: each goes through all readings.
struct Scatters {
    Scatter gaps, journals, shims;
    std::map<BoreMethod, Scatter> bores;
    explicit Scatters(const Facts&);
};

/// Of the gap at a position, from its current readings; or from other readings of one position that stood together.
UncertaintyBudget gapBudgetOf(const Facts&, Position);
UncertaintyBudget gapBudgetOf(const Facts&, Position, const Scatters&);
UncertaintyBudget gapBudgetFrom(const Facts&, std::span<const Seen<GapReading>> readings, const Scatter& gaps);
/// Of the residual at a position: its gap, and one micrometer term per shim of its stack with a common zero.
UncertaintyBudget residualBudgetOf(const Facts&, Position);
UncertaintyBudget residualBudgetOf(const Facts&, Position, const Scatters&);
/// Of the sum of some shims less that of others, by the micrometer: zeros drop out where as many lie on both sides.
UncertaintyBudget exchangeBudgetOf(const Facts&, const std::vector<std::string>& in, const std::vector<std::string>& out,
                                   const Scatter& shims);
/// The same with these shims, whatever lies there.
UncertaintyBudget residualBudgetWith(const Facts&, Position, const std::vector<std::string>& shims, const Scatters&);
/// Of the thickness of one shim.
UncertaintyBudget shimBudgetOf(const Facts&, const std::string& shim, const Scatters&);

/// Which of a bearing's worst places.
enum class Worst { smallest, largest };
/// Of one worst place of the clearance at a bearing, from the readings that stand: bore and journal; housing, both
/// shells and journal; or the gauging strip alone. Each with the readings of that one place.
UncertaintyBudget clearanceBudgetOf(const Facts&, JournalId, Worst = Worst::smallest);
UncertaintyBudget clearanceBudgetOf(const Facts&, JournalId, Worst, const Scatters&);
/// Of the difference of two diameters of a journal, each read so often: its taper or out-of-round.
UncertaintyBudget formBudgetOf(const Facts&, JournalId, const Scatters&);
/// Of a fit, from the readings that stand, else from those that stood last.
UncertaintyBudget fitBudgetOf(const Facts&, const FitId&);
/// Of one term of the pickup's stack-up by itself.
UncertaintyBudget pickupTermBudgetOf(const Facts&, PickupTerm, std::span<const Seen<PickupReading>> readings);
/// `terms` has all four terms; one without a reading leaves the whole not known.
using PickupReadings = std::map<PickupTerm, std::span<const Seen<PickupReading>>>;
UncertaintyBudget pickupBudgetOf(const Facts&, const PickupReadings& terms);


} // namespace caprail
