// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <optional>

namespace caprail {

/// A length in the earlier build and in the later one, with what the two measurements can tell apart.
struct ThenNow {
    std::optional<Length> then, now;
    std::optional<double> uncertaintyThen, uncertaintyNow; ///< expanded, nanometres; none: not known
    /// now − then; none unless both are known.
    [[nodiscard]] std::optional<Length> difference() const;
    /// Expanded uncertainty of the difference, nanometres: the root of the sum of squares of both (JCGM 100, 5.1.2,
    /// from memory; the two are taken as independent, which errs on the safe side where one instrument measured both).
    /// None while one of them is not known.
    [[nodiscard]] std::optional<double> uncertainty() const;
    /// Whether both uncertainties are known, so that a difference can be judged at all.
    [[nodiscard]] bool isJudged() const { return difference() && uncertainty(); }
    /// Whether the difference is larger than its uncertainty: a change that was measured, and not its scatter. Never
    /// where an uncertainty is not known.
    [[nodiscard]] bool isChange() const;
};

/// One bearing then and now. A journal wears smaller, a bore larger: both wears are positive when metal went.
struct BearingThenNow {
    JournalId journal;
    ThenNow clearance;
    std::optional<Length> journalThen, journalNow; ///< means of the diameters
    std::optional<Length> boreThen, boreNow;       ///< means of the bores as read; none by gauging strip
    std::string shellsThen, shellsNow;             ///< "upper / lower"; empty: not noted
    [[nodiscard]] std::optional<Length> journalWear() const;          ///< then − now
    [[nodiscard]] std::optional<Length> boreWear() const;             ///< now − then
};

struct GapThenNow {
    Position position;
    ThenNow gap;
    std::optional<Length> stackThen, stackNow; ///< thickness of what lay or lies there
};

struct FastenerThenNow {
    FastenerId fastener;
    std::optional<Torque> then, now;          ///< it was last tightened to
    std::int64_t movedThen = 0, movedNow = 0; ///< rounds in which it moved
};

struct NamedThenNow {
    std::string name; ///< "crank end play", "rod side clearance 2", "pickup clearance"
    ThenNow value;
};

struct RoundsThenNow {
    std::int64_t rounds = 0, pulls = 0, moved = 0;
    Angle largest; ///< of the movements
};

struct BuildSide {
    std::int64_t number = 1;
    UtcTime begun, last;
    std::string why; ///< it was begun
    bool isSignedOff = false;
};

/// An engine's earlier build and its later one, side by side. What was measured in neither is left out.
struct BuildComparison {
    BuildSide then, now;
    std::vector<BearingThenNow> bearings;
    std::vector<GapThenNow> gaps;
    std::vector<NamedThenNow> fits;
    std::vector<FastenerThenNow> fasteners;
    RoundsThenNow roundsThen, roundsNow;
};

/// Compares two builds of one record, by number. Refuses a number that the record has not, and a build with itself.
Result<BuildComparison> compareBuilds(const Ledger& ledger, std::int64_t then, std::int64_t now);
/// The last build against the one before it; refuses a record with one build.
Result<BuildComparison> compareLastBuilds(const Ledger& ledger);

} // namespace caprail
