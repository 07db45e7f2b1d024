// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// From readings with their instruments to figures with an uncertainty: the bridge between the ledger's words and
/// core/measure, core/bearings, core/clearances. Private to this folder.
#include <assessment/checks.h>
#include <measure/statistics.h>
#include <measure/survey.h>

namespace caprail {

/// The lengths of readings, in their order.
template <class T, class Get> std::vector<Length> lengthsOf(const std::vector<Seen<T>>& readings, Get get) {
    std::vector<Length> list;
    for (const auto& reading : readings) {
        list.push_back(get(reading.what));
    }
    return list;
}

/// Repeatability of the survey: the pooled standard deviation over all positions with two standing readings or more,
/// nanometres; none while there is none.
std::optional<double> surveyRepeatability(const Facts&);

/// Expanded uncertainty of an accepted gap, nanometres.
double gapUncertainty(const Assessing&, const std::vector<Seen<GapReading>>& standing,
                      std::optional<double> repeatability);
/// Expanded uncertainty of a residual: its gap and one micrometer term per shim with a common zero, nanometres.
double residualUncertainty(const Assessing&, const std::vector<Seen<GapReading>>& standing,
                           std::optional<double> repeatability, const StackFact& stack);
/// Expanded uncertainty of a clearance from its bore and journal readings, nanometres.
double clearanceUncertainty(const Assessing&, const std::vector<Seen<JournalReading>>& journal,
                            const std::vector<Seen<BoreReading>>& bore);
/// Expanded uncertainty of a plain reading, nanometres.
double fitUncertainty(const Assessing&, const std::vector<Seen<FitReading>>& readings);
/// Expanded uncertainty of the pickup clearance from the readings of its terms, nanometres.
double pickupUncertainty(const Assessing&, const std::map<PickupTerm, std::vector<Seen<PickupReading>>>& terms);

} // namespace caprail
