// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/result_tables.h>

#include <cmath>
#include <shop/result_tables_of.h>

namespace caprail {

namespace results {

ResultCell cellOf(const std::optional<double>& number) {
    return number && std::isfinite(*number) ? ResultCell(*number) : ResultCell();
}

ResultCell cellOf(const std::optional<Length>& length) {
    return length ? ResultCell(length->value()) : ResultCell();
}

ResultCell checkStateOf(const Assessment& assessment, CheckKind kind, const Subject& subject) {
    const Check* check = assessment.find(kind, subject);
    return check == nullptr ? ResultCell() : ResultCell(std::string(word(check->state)));
}

} // namespace results

namespace {

using namespace results;

ResultTable checksTable(const Assessment& a) {
    ResultTable table{"results_checks",
                      "Every check and how it stands.",
                      {{"check", "", "the check's code"},
                       {"kind", "", "what is checked"},
                       {"state", "", stateMeaning},
                       {"made_at_entry", "1", "the newest entry that it rests on"},
                       {"stale_since_entry", "1", "the entry that made it stale"},
                       {"sentence", "", "what was found, for people"}},
                      {}};
    for (const Check& check : a.checks) {
        table.rows.push_back({check.code, std::string(word(check.kind)), std::string(word(check.state)),
                              check.madeAt == 0 ? ResultCell() : ResultCell(check.madeAt),
                              check.staleBecause.entry == 0 ? ResultCell() : ResultCell(check.staleBecause.entry),
                              check.sentence});
    }
    return table;
}

ResultTable verdictsTable(const Assessment& a) {
    ResultTable table{"results_verdicts",
                      "Every value that was held against limits; a check may hold several.",
                      {{"check", "", "the check's code, as in results_checks"},
                       {"what", "", "which value of the check; empty: its only one"},
                       {"value_nm", "nm", "the value"},
                       {"lo_nm", "nm", "lower limit; empty: none"},
                       {"hi_nm", "nm", "upper limit"},
                       {"expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"coverage_factor", "1", "k, by which the standard uncertainty is expanded"},
                       {"degrees_of_freedom", "1", "effective degrees of freedom; empty with a coverage factor: infinite"},
                       {"probability_of_conformity", "1", "that the value lies within the limits, 0 to 1"},
                       {"capability", "1", "width of the limits over four standard uncertainties"},
                       {"state", "", stateMeaning}},
                      {}};
    for (const Check& check : a.checks) {
        for (const Judged& judged : check.judged) {
            const auto* known = judged.uncertainty.known();
            const auto ifKnown = [&](auto of) { return known != nullptr ? cellOf(of(*known)) : ResultCell(); };
            table.rows.push_back(
                {check.code, judged.name, judged.value.value(),
                 isUpperLimitOnly(judged.band) ? ResultCell() : ResultCell(judged.band.lo().value()),
                 judged.band.hi().value(), cellOf(judged.uncertainty.expanded()),
                 ifKnown([](const auto& u) { return std::optional(u.coverageFactor); }),
                 ifKnown([](const auto& u) { return u.degreesOfFreedom; }),
                 judged.conformity ? cellOf(std::optional(judged.conformity->probability)) : ResultCell(),
                 judged.conformity ? cellOf(std::optional(judged.conformity->capability)) : ResultCell(),
                 std::string(word(judged.state))});
        }
    }
    return table;
}

ResultTable gapsTable(const Assessment& a) {
    ResultTable table{"results_gaps",
                      "The gap at each position under the girdle.",
                      {{"position", "", positionMeaning},
                       {"gap_nm", "nm", "the accepted gap: median of the readings that count; empty: none is accepted"},
                       {"readings", "1", "readings that count"},
                       {"mean_nm", "nm", "their mean"},
                       {"standard_deviation_nm", "nm", "their standard deviation; empty: fewer than two"},
                       {"range_nm", "nm", "largest less smallest"},
                       {"expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"state", "", stateMeaning}},
                      {}};
    for (const auto& [position, gap] : a.gaps) {
        const std::size_t n = gap.current.size();
        table.rows.push_back({code(position), cellOf(gap.accepted), static_cast<std::int64_t>(n),
                              n > 0 ? ResultCell(gap.mean) : ResultCell(),
                              n > 1 ? ResultCell(gap.standardDeviation) : ResultCell(),
                              n > 0 ? ResultCell(gap.range.value()) : ResultCell(), cellOf(gap.uncertainty.expanded()),
                              checkStateOf(a, CheckKind::gap, position)});
    }
    return table;
}

ResultTable stacksTable(const Assessment& a) {
    ResultTable table{"results_stacks",
                      "The stack at each position, and what is left of the gap over it.",
                      {{"position", "", positionMeaning},
                       {"shims", "", "names of its shims, parted by single spaces"},
                       {"is_on", "1", "1: it lies on the cap now; 0: it was taken off"},
                       {"thickness_nm", "nm", "sum of its shims"},
                       {"residual_nm", "nm", "gap less thickness, by arithmetic"},
                       {"expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"carried_residual_nm", "nm", "the residual that is judged"},
                       {"carried_expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"carried_by", "", "what that is known by: arithmetic, bracket or feel"},
                       {"state", "", stateMeaning}},
                      {}};
    for (const auto& [position, stack] : a.stacks) {
        std::string shims;
        for (const std::string& shim : stack.shims) {
            shims += (shims.empty() ? "" : " ") + shim;
        }
        table.rows.push_back({code(position), shims, std::int64_t{stack.isOn ? 1 : 0}, stack.thickness.value(),
                              cellOf(stack.residual), cellOf(stack.uncertainty.expanded()),
                              cellOf(stack.carriedResidual), cellOf(stack.carriedUncertainty.expanded()),
                              std::string(carrierOf(stack.carriedBy)), checkStateOf(a, CheckKind::stack, position)});
    }
    return table;
}

ResultTable clearancesTable(const Assessment& a) {
    ResultTable table{"results_clearances",
                      "Each bearing, judged at its worst places.",
                      {{"journal", "", "main or rod, and its number from the front"},
                       {"journal_mean_nm", "nm", "diameter of the journal, mean of its places"},
                       {"bore_mean_nm", "nm", "diameter of the bore, mean of its places; empty: by gauging strip"},
                       {"clearance_nm", "nm", "mean of the stations"},
                       {"smallest_nm", "nm", "clearance at the tightest place"},
                       {"largest_nm", "nm", "clearance at the loosest place"},
                       {"smallest_expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"largest_expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"taper_nm", "nm", "of the journal, between its stations"},
                       {"out_of_round_nm", "nm", "of the journal, between its directions"},
                       {"journal_readings", "1", "readings of the journal that count"},
                       {"bore_readings", "1", "readings of the bore that count"},
                       {"state", "", stateMeaning}},
                      {}};
    for (const auto& [journal, result] : a.clearances) {
        const ClearanceResult& c = result; // clang 14 hands no name of a binding on
        const bool isMain = journal.kind == JournalKind::main;
        const auto ifMeasured = [&](Length l) { return c.clearance ? ResultCell(l.value()) : ResultCell(); };
        table.rows.push_back({code(journal), cellOf(c.journalMean), cellOf(c.boreMean), cellOf(c.clearance),
                              cellOf(c.smallest), cellOf(c.largest), cellOf(c.uncertaintySmallest.expanded()),
                              cellOf(c.uncertaintyLargest.expanded()), ifMeasured(c.taper), ifMeasured(c.outOfRound),
                              static_cast<std::int64_t>(c.journalReadings), static_cast<std::int64_t>(c.boreReadings),
                              checkStateOf(a, isMain ? CheckKind::mainClearance : CheckKind::rodClearance, journal)});
    }
    return table;
}

ResultTable fitsTable(const Assessment& a) {
    ResultTable table{"results_fits",
                      "Other clearances and fits, place by place.",
                      {{"fit", "", "the name of its band"},
                       {"place", "1", "which one of them"},
                       {"value_nm", "nm", "mean of its readings"},
                       {"readings", "1", "readings that count"},
                       {"expanded_uncertainty_nm", "nm", uncertaintyMeaning},
                       {"is_current", "1", "1: nothing that it rests on changed since; 0: it did"},
                       {"state", "", stateMeaning}},
                      {}};
    for (const auto& [id, fit] : a.fits) {
        table.rows.push_back({id.first, id.second, fit.value.value(), static_cast<std::int64_t>(fit.readings),
                              cellOf(fit.uncertainty.expanded()), std::int64_t{fit.isCurrent ? 1 : 0},
                              checkStateOf(a, CheckKind::fit, id)});
    }
    return table;
}

ResultTable pickupTable(const Assessment& a) {
    ResultTable table{"results_pickup",
                      "The pickup's depth: each term of it, and the clearance to the pan floor.",
                      {{"what", "", "the term, or “clearance”"},
                       {"value_nm", "nm", "mean of the readings of a term; the clearance worked out from all"},
                       {"expanded_uncertainty_nm", "nm", "U of the clearance (k about 2); empty for a term"},
                       {"state", "", "how the clearance stands; empty for a term"}},
                      {}};
    for (const auto& [term, mean] : a.pickup.means) {
        table.rows.push_back({std::string(word(term)), mean.value(), ResultCell(), ResultCell()});
    }
    if (a.pickup.clearance) {
        table.rows.push_back({"clearance", a.pickup.clearance->value(), cellOf(a.pickup.uncertainty.expanded()),
                              checkStateOf(a, CheckKind::pickup, {})});
    }
    return table;
}

} // namespace

std::string_view carrierOf(ResidualBy by) {
    switch (by) {
    case ResidualBy::bracket:
        return "bracket";
    case ResidualBy::feel:
        return "feel";
    case ResidualBy::arithmetic:
        break;
    }
    return "arithmetic";
}

std::vector<ResultTable> resultTables(const Facts& facts, const Assessment& a) {
    return {checksTable(a),     verdictsTable(a), gapsTable(a),   stacksTable(a),         clearancesTable(a),
            fitsTable(a),       pickupTable(a),   fastenersTable(facts), roundsTable(facts), closingTable(facts, a)};
}

} // namespace caprail
