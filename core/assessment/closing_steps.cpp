// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/closing_steps.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/own_check.h>
#include <assessment/specified.h>
#include <assessment/turning.h>
#include <assessment/work_order.h>
#include <base/say.h>

namespace caprail {

namespace {

using enum ClosingStep;

const Seen<ClosingStepDone>* doneOf(const Facts& facts, ClosingStep step) {
    const auto at = facts.closing.find(step);
    return at == facts.closing.end() ? nullptr : &at->second;
}

std::int64_t entryOf(const Facts& facts, ClosingStep step) {
    const auto* done = doneOf(facts, step);
    return done == nullptr ? 0 : done->entry;
}

std::optional<ClosingStep> stepBefore(ClosingStep step) {
    return step == shimsCounted ? std::nullopt : std::optional(static_cast<ClosingStep>(static_cast<int>(step) - 1));
}

/// The step after which the fasteners of this one are tightened.
ClosingStep tightenedAfter(ClosingStep step) {
    return step == nutsTightened ? girdleLowered : crankTurned;
}

/// The newest entry that tightened one of these.
std::int64_t lastTightened(const Facts& facts, const std::vector<FastenerId>& fasteners) {
    std::int64_t last = 0;
    for (const FastenerId f : fasteners) {
        const auto at = facts.fasteners.find(f);
        last = at == facts.fasteners.end() || !at->second.tightened ? last : std::max(last, at->second.tightened->entry);
    }
    return last;
}

std::optional<ClosingLack> unspecified(const Facts& facts) {
    std::vector<FastenerId> all = facts.layout ? facts.layout->girdleNuts() : std::vector<FastenerId>{};
    const auto pan = panFasteners(facts);
    if (pan.empty()) {
        all.push_back({FastenerKind::panRail, 1, Side::left, Ring::inner});
    }
    all.insert(all.end(), pan.begin(), pan.end());
    const auto at = std::ranges::find_if(all, [&](FastenerId f) { return facts.groupOf(f) == nullptr; });
    if (at == all.end()) {
        return {};
    }
    ClosingLack lack;
    lack.sentence = Core::say("Nothing is specified for %1: set its torque before closing begins.", describe(*at));
    lack.destination = {Station::fasteners, code(*at)};
    return lack;
}

std::optional<ClosingLack> stackOff(const Facts& facts) {
    for (const auto& [position, stack] : facts.stacks) {
        if (!stack.isOn) {
            ClosingLack lack;
            lack.sentence = Core::say("The stack of %1 is not back on.", describe(position));
            lack.destination = {Station::closing, code(position)};
            lack.stack = position;
            return lack;
        }
    }
    return {};
}

/// Why a fastener does not count as tight for a step: not at its value since the one before, or by a wrench that may not be
/// used for it.
std::optional<std::string> tightnessFault(const Facts& facts, ClosingStep step, FastenerId f) {
    const auto at = facts.fasteners.find(f);
    if (!isTightAsSpecified(facts, f) || at->second.tightened->entry <= entryOf(facts, tightenedAfter(step))) {
        return Core::say("%1 is not at its value since “%2”.", describe(f), shown(tightenedAfter(step)));
    }
    const auto& tightened = *at->second.tightened;
    return tightened.what.torque ? wrenchFault(facts, tightened.what.instrument, tightened.entry,
                                               tightened.what.torque->value, Units{})
                                 : std::nullopt;
}

std::optional<ClosingLack> notTight(const Facts& facts, ClosingStep step) {
    for (const FastenerId f : fastenersOf(facts, step)) {
        if (auto fault = tightnessFault(facts, step, f)) {
            ClosingLack lack;
            lack.sentence = std::move(*fault);
            lack.destination = {Station::closing, code(f)};
            lack.fastener = f;
            return lack;
        }
    }
    return {};
}

/// The crank turned since the last of the fasteners was tightened, and no harder than it may.
std::optional<ClosingLack> notTurned(const Facts& facts, ClosingStep step, const Units& units) {
    const TurningStage stage = step == crankTurned ? TurningStage::girdleAtTorque : TurningStage::afterPan;
    const ClosingStep tight = step == crankTurned ? nutsTightened : panFastened;
    const std::int64_t after = std::max(lastTightened(facts, fastenersOf(facts, tight)),
                                        entryOf(facts, *stepBefore(step)));
    const auto at = facts.turning.find(stage);
    ClosingLack lack;
    lack.destination = {Station::closing, "turning"};
    lack.turning = stage;
    if (at == facts.turning.end() || at->second.entry < after) {
        lack.sentence = Core::say("The turning torque (%1) was not read since then.", shown(stage));
        return lack;
    }
    const Standing standing = turningOf(facts, stage, units);
    if (standing.state == CheckState::good) {
        return {};
    }
    lack.sentence = standing.sentence + " " + standing.remedy;
    return lack;
}

std::optional<ClosingLack> ownCheckOpen(const Facts& facts, ClosingStep step, const Units& units) {
    for (const OwnPlace& place : ownPlaces(facts, OwnCheckHolds::closingStep, step)) {
        const Standing standing = ownStandingOf(facts, place, units);
        if (standing.state != CheckState::good) {
            ClosingLack lack;
            lack.sentence = titleOf(facts.ownCheckNamed(place.check)->what, place.place) + ": " +
                            (standing.sentence.empty() ? shown(standing.state) + "." : standing.sentence);
            lack.destination = {Station::closing, "own-check"};
            lack.own = place;
            return lack;
        }
    }
    return {};
}

/// What of a step's own work is open now: stacks, fasteners, the turning torque.
std::optional<ClosingLack> openWork(const Facts& facts, ClosingStep step, const Units& units) {
    switch (step) {
    case stacksRefitted:
        return stackOff(facts);
    case nutsTightened:
        return notTight(facts, step);
    case crankTurned:
        return notTurned(facts, step, units);
    case panFastened: {
        auto lack = notTight(facts, step);
        return lack ? lack : notTurned(facts, step, units);
    }
    case shimsCounted:
    case beadLaid:
    case girdleLowered:
        break;
    }
    return {};
}

/// Minutes and hours as they are said: "16 min", "10 h 2 min".
std::string spell(std::int64_t milliseconds) {
    const std::int64_t minutes = (milliseconds + 59'999) / 60'000;
    return minutes < 60 ? Core::say("%1 min", minutes) : Core::say("%1 h %2 min", minutes / 60, minutes % 60);
}

/// The bead against the girdle that was lowered on it.
Standing beadStanding(const Facts& facts, const Seen<ClosingStepDone>& bead) {
    const auto until = beadOpenUntil(facts);
    const auto* lowered = doneOf(facts, girdleLowered);
    if (!until) {
        return {CheckState::notProven, Core::say("The sealant's open time was not entered."),
                Core::say("Strike that entry and enter product, lot and open time as printed on the tube.")};
    }
    if (lowered == nullptr || lowered->entry < bead.entry) {
        return {CheckState::good, {}, {}};
    }
    const std::int64_t passed = lowered->time.milliseconds - bead.time.milliseconds;
    if (passed >= 0 && lowered->time.milliseconds <= until->milliseconds) {
        return {CheckState::good, {}, {}};
    }
    return {CheckState::out,
            passed < 0 ? Core::say("By the entries' times the girdle was lowered before the bead was laid.")
                       : Core::say("The girdle was lowered %1 after the bead was laid; its open time is %2 min.",
                                   spell(passed), *bead.what.openMinutes),
            Core::say("Lift the girdle, clean the bead off, lay it again and enter that.")};
}

Standing evidenceOf(const Facts& facts, const Seen<ClosingStepDone>& done, const Units& units) {
    if (done.what.step == shimsCounted) {
        const ShimCount is = shimCountOf(facts);
        if (done.what.fitted != is.fitted || done.what.aside != is.aside || done.what.leftOver != is.leftOver) {
            return {CheckState::stale, Core::say("The kit or the stacks were changed after the shims were counted."),
                    Core::say("Count them again, and enter it.")};
        }
    }
    if (done.what.step == beadLaid) {
        return beadStanding(facts, done);
    }
    const auto lack = openWork(facts, done.what.step, units);
    return lack ? Standing{CheckState::stale, lack->sentence, Core::say("Do that, and enter the step again.")}
                : Standing{CheckState::good, {}, {}};
}

} // namespace

std::vector<FastenerId> panFasteners(const Facts& facts) {
    std::vector<FastenerId> all = fastenersOf(facts, FastenerKind::panRail);
    for (const FastenerKind kind : {FastenerKind::front, FastenerKind::rear}) {
        const auto row = all.empty() ? std::vector<FastenerId>{} : fastenersOf(facts, kind);
        all.insert(all.end(), row.begin(), row.end());
    }
    return all;
}

std::vector<FastenerId> fastenersOf(const Facts& facts, ClosingStep step) {
    if (step == nutsTightened && facts.layout) {
        return facts.layout->girdleNuts();
    }
    return step == panFastened ? panFasteners(facts) : std::vector<FastenerId>{};
}

bool isTightForClosing(const Facts& facts, ClosingStep step, FastenerId f) {
    return !tightnessFault(facts, step, f);
}

std::optional<UtcTime> beadOpenUntil(const Facts& facts) {
    const auto* bead = doneOf(facts, beadLaid);
    if (bead == nullptr || !bead->what.openMinutes) {
        return {};
    }
    return UtcTime{bead->time.milliseconds + *bead->what.openMinutes * 60'000};
}

Standing standingOf(const Facts& facts, ClosingStep step, const Units& units) {
    const auto* done = doneOf(facts, step);
    if (done == nullptr) {
        return {};
    }
    if (const auto before = stepBefore(step)) {
        if (done->entry < entryOf(facts, *before)) {
            return {CheckState::stale, Core::say("“%1” was done again after it.", shown(*before)),
                    Core::say("Do this step again, and enter it.")};
        }
    }
    // What lies under the girdle is reached only with the girdle lifted: its bead is broken then.
    if (step >= stacksRefitted && done->entry < facts.girdleLifted) {
        return {CheckState::stale,
                Core::say("Entry %1 was made with the girdle off, after this step.", facts.girdleLifted),
                Core::say("Do this step again, and enter it.")};
    }
    return evidenceOf(facts, *done, units);
}

std::optional<ClosingStep> nextClosingStepOf(const Facts& facts, const Units& units) {
    for (const auto& step : allWords<ClosingStep>()) {
        if (standingOf(facts, step.value, units).state != CheckState::good) {
            return step.value;
        }
    }
    return {};
}

std::optional<ClosingLack> lackOf(const Facts& facts, ClosingStep step, const Units& units) {
    if (auto own = ownCheckOpen(facts, step, units)) {
        return own;
    }
    return step == shimsCounted ? unspecified(facts) : openWork(facts, step, units);
}

} // namespace caprail
