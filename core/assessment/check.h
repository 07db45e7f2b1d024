// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <assessment/facts.h>
#include <measure/verdict.h>
#include <string>
#include <base/say.h>
#include <vector>

namespace caprail {

/// What is checked. The word is the first half of a check's code ("gap:3R").
enum class CheckKind {
    fastenersTightened,
    mainClearance,
    rodClearance,
    taper,
    outOfRound,
    fit,
    gap,
    stack,
    recheck,
    flushness,
    girdleWay,
    trialFit,
    pickup,
    verifyRound,
    findings,
    turningTorque,
    ownCheck
};
template <> struct WordsOf<CheckKind> {
    static constexpr std::array<Word<CheckKind>, 17> list{{{CheckKind::fastenersTightened, "fasteners"},
                                                           {CheckKind::mainClearance, "main-clearance"},
                                                           {CheckKind::rodClearance, "rod-clearance"},
                                                           {CheckKind::taper, "taper"},
                                                           {CheckKind::outOfRound, "out-of-round"},
                                                           {CheckKind::fit, "fit"},
                                                           {CheckKind::gap, "gap"},
                                                           {CheckKind::stack, "stack"},
                                                           {CheckKind::recheck, "recheck"},
                                                           {CheckKind::flushness, "flushness"},
                                                           {CheckKind::girdleWay, "girdle-way"},
                                                           {CheckKind::trialFit, "trial-fit"},
                                                           {CheckKind::pickup, "pickup"},
                                                           {CheckKind::verifyRound, "verify-round"},
                                                           {CheckKind::findings, "findings"},
                                                           {CheckKind::turningTorque, "turning-torque"},
                                                           {CheckKind::ownCheck, "own-check"}}};
};

/// What a list calls all checks of a kind.
constexpr std::string_view titleOf(CheckKind kind) {
    static_assert(WordsOf<CheckKind>::list.size() == static_cast<std::size_t>(CheckKind::ownCheck) + 1,
                  "each kind of check has its word above; the last kind is named here");
    switch (kind) {
    case CheckKind::fastenersTightened:
        return Core::mark("Fastener groups at torque");
    case CheckKind::mainClearance:
        return Core::mark("Main bearing clearances");
    case CheckKind::rodClearance:
        return Core::mark("Rod bearing clearances");
    case CheckKind::taper:
        return Core::mark("Taper of journals");
    case CheckKind::outOfRound:
        return Core::mark("Out-of-round of journals");
    case CheckKind::fit:
        return Core::mark("Fits");
    case CheckKind::gap:
        return Core::mark("Gaps");
    case CheckKind::stack:
        return Core::mark("Shim stacks");
    case CheckKind::recheck:
        return Core::mark("Rechecks");
    case CheckKind::flushness:
        return Core::mark("Flushness");
    case CheckKind::girdleWay:
        return Core::mark("Girdle orientation");
    case CheckKind::trialFit:
        return Core::mark("Trial fit");
    case CheckKind::pickup:
        return Core::mark("Pickup clearance");
    case CheckKind::verifyRound:
        return Core::mark("Torques verified");
    case CheckKind::turningTorque:
        return Core::mark("Turning torque");
    case CheckKind::ownCheck:
        return Core::mark("The shop's own checks");
    case CheckKind::findings:
        break;
    }
    return Core::mark("Findings settled");
}

/// Not proven: it was measured, and something is missing without which no verdict can be given (an instrument, its limit
/// of error, a repeat). It never counts as good.
enum class CheckState { notDone, good, out, tooCloseToCall, notProven, stale };
template <> struct WordsOf<CheckState> {
    static constexpr std::array<Word<CheckState>, 6> list{
        {{CheckState::notDone, Core::mark("not done")},
         {CheckState::good, Core::mark("good")},
         {CheckState::out, Core::mark("out")},
         {CheckState::tooCloseToCall, Core::mark("too close to call")},
         {CheckState::notProven, Core::mark("not proven")},
         {CheckState::stale, Core::mark("stale")}}};
};

/// In which order states matter: what is out comes first, what is good last. Where a mark stands for several, it shows the
/// first.
constexpr int severity(CheckState state) {
    switch (state) {
    case CheckState::out:
        return 0;
    case CheckState::stale:
        return 1;
    case CheckState::notProven:
        return 2;
    case CheckState::tooCloseToCall:
        return 3;
    case CheckState::notDone:
        return 4;
    case CheckState::good:
        break;
    }
    return 5;
}
constexpr CheckState worse(CheckState a, CheckState b) {
    return severity(b) < severity(a) ? b : a;
}

/// How one thing stands that is judged outside the list of checks as well: a turning torque, a check of the shop's own, a
/// closing step.
struct Standing {
    CheckState state = CheckState::notDone;
    std::string sentence; ///< what was found, or why it is out or stale; may be empty
    std::string remedy;   ///< what to do; empty when good or simply not done
};

/// Where in the program a check is worked on; one station each.
enum class Station { engine, bearings, fasteners, girdle, trialFit, pickup, closing, history };
template <> struct WordsOf<Station> {
    static constexpr std::array<Word<Station>, 8> list{{{Station::engine, Core::mark("Engine")},
                                                        {Station::bearings, Core::mark("Bearings")},
                                                        {Station::fasteners, Core::mark("Fasteners")},
                                                        {Station::girdle, Core::mark("Girdle")},
                                                        {Station::trialFit, Core::mark("Trial fit")},
                                                        {Station::pickup, Core::mark("Pickup")},
                                                        {Station::closing, Core::mark("Closing")},
                                                        {Station::history, Core::mark("History")}}};
    static_assert(list.size() == static_cast<std::size_t>(Station::history) + 1, "each station has its word");
};

/// Where a jump leads: a station and what is selected there.
struct Destination {
    Station station = Station::engine;
    std::string subject; ///< "3R", "main-3", "main-3R", a fit's name …; empty: the station as a whole
    friend bool operator==(const Destination&, const Destination&) = default;
};

/// What a check is about.
using Subject = std::variant<std::monostate, Position, JournalId, FastenerKind, FitId, TrialId, TurningStage,
                             OwnPlace>;

/// One value held against one band.
struct Judged {
    std::string name; ///< "smallest clearance"; empty where a check judges one value
    Length value;
    Uncertainty uncertainty;
    Band band; ///< may be an upper limit only: see `atMost`
    CheckState state = CheckState::notProven;
    std::optional<Conformity> conformity; ///< beside each verdict; none while nothing is proven
    std::optional<WouldDo> wouldDo;       ///< where no value could pass: what would change that
};

struct Check {
    CheckKind kind = CheckKind::gap;
    Subject subject;
    std::string code;  ///< "gap:3R", "main-clearance:main-3", "trial-fit:counterweights clear:2"
    std::string title; ///< "Gap at cap 3 right"
    CheckState state = CheckState::notDone;
    std::string sentence;              ///< what was found: "0.0575 in, two passes within 0.0005 in"
    std::string remedy;                ///< what to do when it is not good; empty when it is
    std::vector<std::int64_t> restsOn; ///< the entries that it was made from
    std::int64_t madeAt = 0;           ///< the newest of them; 0: none
    Change staleBecause;               ///< what made it stale; entry 0: it is not
    std::vector<Judged> judged;        ///< the values that it was decided by; empty: by no number
    Destination destination;

    [[nodiscard]] bool isGood() const { return state == CheckState::good; }
};

/// A set of checks that must all be good before the steps behind it unlock.
enum class GateKind { trialFit, closing };
template <> struct WordsOf<GateKind> {
    static constexpr std::array<Word<GateKind>, 2> list{
        {{GateKind::trialFit, Core::mark("Trial fit")}, {GateKind::closing, Core::mark("Closing")}}};
};

struct Gate {
    GateKind kind = GateKind::closing;
    bool isOpen = false;
    std::vector<std::size_t> needs;   ///< indices into Assessment::checks: all that it needs
    std::vector<std::size_t> holding; ///< those of them that are not good: why it is locked
};

} // namespace caprail
