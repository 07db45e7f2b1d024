// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/review.h>
#include <ledger/ledger.h>
#include <optional>
#include <units/format.h>
#include <vector>

namespace caprail {

/// One fastener in one verify round, as the ledger has it.
struct RoundCell {
    std::int64_t entry = 0;
    bool isStruck = false;
    std::int64_t otherEntries = 0; ///< further outcomes of the same fastener in the same round (struck ones)
    UtcTime time;
    std::string person;
    RoundOutcome what;
};

struct RoundColumn {
    std::int64_t build = 1, round = 1, entry = 0;
    UtcTime begun;
    std::string person, instrument;
    bool isStruck = false;
    /// "2", or "build 2 · 1" where the record holds more than one build.
    [[nodiscard]] std::string name(bool withBuild) const;
};

/// Rounds that are shown at most: the last. A record that holds more says so.
inline constexpr std::size_t mostRoundsShown = 500;

/// The verify rounds of every build of a record, fastener by fastener, struck ones included.
struct RoundHistory {
    std::vector<RoundColumn> rounds;                          ///< in time
    std::vector<FastenerId> fasteners;                        ///< mains, then rods, by place
    std::vector<std::vector<std::optional<RoundCell>>> cells; ///< [round][fastener]
    bool hasBuilds = false;
    std::size_t leftOut = 0; ///< older rounds, where there are more than `mostRoundsShown`
};
/// Reads the ledger once: n entries cost n·log n.
RoundHistory roundHistory(const Ledger& ledger);

/// Which outcomes are looked at.
struct RoundChoice {
    enum class Outcomes { any, moved, held, struck };
    int cap = 0;                  ///< 0: all; −1: rods only
    std::string person, wrench;   ///< empty: any
    std::optional<Date> from, to; ///< inclusive, UTC
    Outcomes outcomes = Outcomes::any;
    [[nodiscard]] bool takes(const RoundCell& cell) const;
    friend bool operator==(const RoundChoice&, const RoundChoice&) = default;
};

/// In which order fasteners are listed.
enum class RoundOrder { place, mostMovements, largestAngle };

/// What is visible after filter and order: indices into the history. A round or fastener without any cell that the
/// filter takes is left out, unless nothing is filtered.
struct VisibleRounds {
    std::vector<std::size_t> rounds, fasteners;
    std::size_t cells = 0; ///< that the filter takes
};
VisibleRounds visibleRounds(const RoundHistory&, const RoundChoice&, RoundOrder);

/// What the review counts: visible live outcomes.
std::vector<OutcomeRow> reviewRows(const RoundHistory&, const VisibleRounds&, const RoundChoice&);

/// "✓", or "↻ 4.0°"; struck ones in brackets.
std::string cellText(const RoundCell&, const Units&);
/// What is visible as a table for a spreadsheet: one outcome a line (base/csv.h). Torque in mN·m and angle in
/// degrees, with a point as decimal mark whatever the screen shows.
std::string roundsCsv(const RoundHistory&, const VisibleRounds&, const RoundChoice&);

} // namespace caprail
