// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <span>
#include <string>
#include <units/angle.h>
#include <vector>

namespace caprail {

/// One fastener in one verify round, as the review counts it. Struck entries are left out by the caller.
struct OutcomeRow {
    std::int64_t round = 0; ///< number of the round; a later round has a larger one
    std::string fastener;   ///< "cap 3 left inner", "rod 2 bolt 1"
    int cap = 0;            ///< 0 for a rod fastener
    std::string person;
    std::string wrench;
    bool moved = false;
    Angle angle; ///< by how much, when it moved
};

/// How often something was pulled, and how often it moved.
struct MovementCount {
    std::string what; ///< the fastener, cap, wrench or person; "not named" when the rows name none
    std::int64_t pulled = 0;
    std::int64_t moved = 0;
    Angle largest; ///< of the movements; 0 when none moved
    /// moved/pulled, from 0 to 1.
    [[nodiscard]] double share() const;
    friend bool operator==(const MovementCount&, const MovementCount&) = default;
};

struct RoundMovement {
    std::int64_t round = 0;
    std::int64_t pulled = 0;
    std::int64_t moved = 0;
    Angle largest;
    Angle total; ///< sum of the movements
    friend bool operator==(const RoundMovement&, const RoundMovement&) = default;
};

/// What the counts say of the rounds in order, and no more than that.
enum class MovementTrend {
    tooFewRounds, ///< fewer than two
    neverMoved,
    diesDown, ///< no round has more movements than the one before it, and the last has fewer than the first
    doesNotDieDown,
};

/// Simple tables with counts; no claim beyond them.
struct MovementReview {
    std::vector<MovementCount> fasteners; ///< most movements first, then larger share, larger angle, name
    std::vector<MovementCount> caps;      ///< "cap 3"; rods are not in it
    std::vector<MovementCount> wrenches;
    std::vector<MovementCount> persons;
    std::vector<RoundMovement> rounds; ///< by round number
    MovementTrend trend = MovementTrend::tooFewRounds;
    std::string trendSentence; ///< "Movements per round: 5, 2, 0. They die down."
};

/// Counts the rows. Time grows with n·log n: 30 000 rows take well under a frame.
MovementReview reviewMovement(std::span<const OutcomeRow> rows);

} // namespace caprail
