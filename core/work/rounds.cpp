// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/rounds.h>

#include <algorithm>
#include <base/csv.h>
#include <base/say.h>
#include <map>

namespace caprail {

namespace {

/// The live outcome before a struck one, the later before the earlier.
void put(std::optional<RoundCell>& at, RoundCell cell) {
    if (at) {
        cell.otherEntries = at->otherEntries + 1;
        if (cell.isStruck && !at->isStruck) {
            at->otherEntries = cell.otherEntries;
            return;
        }
    }
    at = std::move(cell);
}

} // namespace

std::string RoundColumn::name(bool withBuild) const {
    return withBuild ? Core::say("build %1 · %2", build, round) : std::to_string(round);
}

RoundHistory roundHistory(const Ledger& ledger) {
    RoundHistory history;
    std::map<FastenerId, std::size_t> places;
    std::vector<std::pair<std::size_t, RoundCell>> found; // round and outcome
    std::int64_t build = 1;
    const auto rounds = static_cast<std::size_t>(
        std::ranges::count_if(ledger.entries(), [](const Entry& e) { return e.body.is<RoundBegun>(); }));
    const std::size_t leftOut = rounds > mostRoundsShown ? rounds - mostRoundsShown : 0;
    for (const Entry& entry : ledger.entries()) {
        const bool isStruck = ledger.isStruck(entry.sequence);
        if (const auto* next = entry.body.as<BuildBegun>(); next != nullptr && !isStruck) {
            build = next->build;
            history.hasBuilds = true;
        } else if (entry.body.is<RoundBegun>() && history.leftOut < leftOut) {
            ++history.leftOut;
        } else if (const auto* begun = entry.body.as<RoundBegun>()) {
            history.rounds.push_back(
                {build, begun->round, entry.sequence, entry.time, entry.person, begun->instrument, isStruck});
        } else if (const auto* outcome = entry.body.as<RoundOutcome>()) {
            // The newest round of that number: a struck beginning may come before the one that counts.
            const auto at = std::find_if(history.rounds.rbegin(), history.rounds.rend(), [&](const RoundColumn& c) {
                return c.build == build && c.round == outcome->round;
            });
            if (at != history.rounds.rend()) {
                found.emplace_back(history.rounds.rend() - at - 1,
                                   RoundCell{entry.sequence, isStruck, 0, entry.time, entry.person, *outcome});
                places.emplace(outcome->fastener, 0);
            }
        }
    }
    for (auto& [fastener, index] : places) {
        index = history.fasteners.size();
        history.fasteners.push_back(fastener);
    }
    history.cells.assign(history.rounds.size(), std::vector<std::optional<RoundCell>>(history.fasteners.size()));
    for (auto& [round, cell] : found) {
        auto& at = history.cells[round][places[cell.what.fastener]];
        put(at, std::move(cell));
    }
    return history;
}

bool RoundChoice::takes(const RoundCell& cell) const {
    const FastenerId f = cell.what.fastener;
    const bool isMain = f.kind == FastenerKind::mainCap;
    if ((cap > 0 && (!isMain || f.number != cap)) || (cap < 0 && isMain)) {
        return false;
    }
    const Date day = dateOf(cell.time);
    if ((!person.empty() && cell.person != person) || (!wrench.empty() && cell.what.instrument != wrench) ||
        (from && day < *from) || (to && day > *to)) {
        return false;
    }
    switch (outcomes) {
    case Outcomes::any:
        return true;
    case Outcomes::moved:
        return !cell.isStruck && cell.what.outcome == Outcome::moved;
    case Outcomes::held:
        return !cell.isStruck && cell.what.outcome == Outcome::held;
    case Outcomes::struck:
        break;
    }
    return cell.isStruck || cell.otherEntries > 0;
}

VisibleRounds visibleRounds(const RoundHistory& history, const RoundChoice& filter, RoundOrder order) {
    VisibleRounds visible;
    const bool isFiltered = filter != RoundChoice();
    std::vector<std::size_t> taken(history.fasteners.size(), 0), moved(history.fasteners.size(), 0);
    std::vector<Angle> largest(history.fasteners.size());
    for (std::size_t r = 0; r < history.rounds.size(); ++r) {
        std::size_t here = 0;
        for (std::size_t f = 0; f < history.fasteners.size(); ++f) {
            const auto& cell = history.cells[r][f];
            if (!cell || !filter.takes(*cell)) {
                continue;
            }
            ++here;
            ++taken[f];
            if (!cell->isStruck && cell->what.outcome == Outcome::moved) {
                ++moved[f];
                largest[f] = std::max(largest[f], cell->what.angle ? cell->what.angle->value : Angle());
            }
        }
        visible.cells += here;
        if (here > 0 || !isFiltered) {
            visible.rounds.push_back(r);
        }
    }
    for (std::size_t f = 0; f < history.fasteners.size(); ++f) {
        if (taken[f] > 0 || !isFiltered) {
            visible.fasteners.push_back(f);
        }
    }
    if (order != RoundOrder::place) {
        std::ranges::stable_sort(visible.fasteners, [&](std::size_t a, std::size_t b) {
            return order == RoundOrder::mostMovements ? moved[a] > moved[b] : largest[a] > largest[b];
        });
    }
    return visible;
}

std::vector<OutcomeRow> reviewRows(const RoundHistory& history, const VisibleRounds& visible,
                                   const RoundChoice& filter) {
    std::vector<OutcomeRow> rows;
    for (const std::size_t r : visible.rounds) {
        for (const std::size_t f : visible.fasteners) {
            const auto& cell = history.cells[r][f];
            if (!cell || cell->isStruck || !filter.takes(*cell)) {
                continue;
            }
            const FastenerId id = history.fasteners[f];
            const bool hasMoved = cell->what.outcome == Outcome::moved;
            rows.push_back({static_cast<std::int64_t>(r) + 1, describe(id),
                            id.kind == FastenerKind::mainCap ? id.number : 0, cell->person, cell->what.instrument,
                            hasMoved, hasMoved && cell->what.angle ? cell->what.angle->value : Angle()});
        }
    }
    return rows;
}

std::string cellText(const RoundCell& cell, const Units& units) {
    const std::string text = cell.what.outcome == Outcome::held ? "✓"
                             : cell.what.angle                  ? "↷ " + format(cell.what.angle->value, units)
                                                                : "↷";
    return cell.isStruck ? "[" + text + "]" : text;
}

std::string roundsCsv(const RoundHistory& history, const VisibleRounds& visible, const RoundChoice& filter) {
    CsvWriter csv({"build", "round", "fastener", "outcome", "angle_deg", "torque_mNm", "person", "instrument",
                   "time_utc", "entry", "struck", "verified_by", "stretch_nm"});
    for (const std::size_t r : visible.rounds) {
        for (const std::size_t f : visible.fasteners) {
            const auto& cell = history.cells[r][f];
            if (!cell || !filter.takes(*cell)) {
                continue;
            }
            const RoundOutcome& what = cell->what;
            csv.number(history.rounds[r].build).number(what.round).plain(code(what.fastener)).plain(word(what.outcome));
            csv.plain(what.angle ? formatNumber(inDegrees(what.angle->value), 3) : std::string());
            csv.number(what.torque ? std::optional(what.torque->value.value()) : std::nullopt);
            csv.text(cell->person).text(what.instrument).plain(format(cell->time)).number(cell->entry);
            csv.plain(cell->isStruck ? "yes" : "no").plain(word(what.by.value_or(VerifyMethod::torque)));
            csv.number(what.stretch ? std::optional(what.stretch->value.value()) : std::nullopt).endLine();
        }
    }
    return csv.written();
}

} // namespace caprail
