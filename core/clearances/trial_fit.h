// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is looked at when the girdle is laid on its stacks for trial, and when each item is good.
#include <optional>
#include <string>
#include <units/format.h>
#include <units/length.h>
#include <base/problem.h>
#include <base/words.h>

namespace caprail {

enum class TrialFitItem {
    wayRound,
    dipstick,
    pickupTube,
    counterweights,
    rodBolts,
    turnsFreely,
    keywayAtTopDeadCentre
};
template <> struct WordsOf<TrialFitItem> {
    static constexpr std::array<Word<TrialFitItem>, 7> list{
        {{TrialFitItem::wayRound, Core::mark("girdle the right way round")},
         {TrialFitItem::dipstick, Core::mark("dipstick clear")},
         {TrialFitItem::pickupTube, Core::mark("pickup tube clear")},
         {TrialFitItem::counterweights, Core::mark("counterweights clear")},
         {TrialFitItem::rodBolts, Core::mark("rod bolts clear")},
         {TrialFitItem::turnsFreely, Core::mark("two turns by hand, nothing binds")},
         {TrialFitItem::keywayAtTopDeadCentre, Core::mark("keyway agrees at top dead centre")}}};
};

/// Answered once per throw.
constexpr bool needsThrow(TrialFitItem item) {
    return item == TrialFitItem::counterweights || item == TrialFitItem::rodBolts;
}
/// May be answered with a measured clearance instead of pass or fail.
constexpr bool mayBeMeasured(TrialFitItem item) {
    return needsThrow(item) || item == TrialFitItem::dipstick || item == TrialFitItem::pickupTube;
}
/// The least clearance at the closest counterweight: 0.060 in (common practice, no source).
constexpr Length defaultCounterweightClearance() {
    return thou(60);
}
/// The least clearance of the pickup tube to nuts and studs: 0.100 in (common practice, no source).
constexpr Length defaultPickupTubeClearance() {
    return thou(100);
}
/// The least clearance around the dipstick: 0.060 in (common practice, no source).
constexpr Length defaultDipstickClearance() {
    return thou(60);
}

/// What was found.
enum class TrialFitFound { pass, fail, clearance };

struct TrialFitObservation {
    TrialFitItem item = TrialFitItem::wayRound;
    int throwNumber = 0; ///< 1 or more where the item needs a throw, else 0
    TrialFitFound found = TrialFitFound::pass;
    std::optional<Length> clearance; ///< with `TrialFitFound::clearance`, and only then
};

struct TrialFitJudgement {
    bool isGood = false;
    std::string sentence; ///< what was found, and against what
    std::string remedy;   ///< what to do; empty when good
};
/// A measured clearance is good from `minimum` on, and never at zero.
/// Refuses a throw where none belongs and the lack of one where one does, a measurement of what cannot be measured, a
/// measurement without its value or a value without one, a clearance below zero and a minimum below zero.
Result<TrialFitJudgement> judgeTrialFit(const TrialFitObservation&, Length minimum, const Units&);

} // namespace caprail
