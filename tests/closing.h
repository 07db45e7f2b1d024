// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The end of a job, told once for every test bench: the girdle's nuts and the pan's fasteners as specified, the turning
/// torques, the trial fit, and the closing steps each with its evidence. A bench has `make(Body)`, and its facts are
/// given.
#include "drafts.h"

#include <assessment/closing_steps.h>
#include <assessment/specified.h>
#include <assessment/work_order.h>

namespace caprail::drafts {

/// Two groups without which nothing is closed: girdle nuts at 30 lbf·ft, eight pan fasteners at 8.
template <class Bench> void specifyClosing(Bench& bench, int caps) {
    bench.make(group(FastenerKind::girdleNut, 2 * caps, "3/8-24", 30));
    bench.make(group(FastenerKind::panRail, 8, "1/4-20", 8));
}

template <class Bench>
void tightenAsSpecified(Bench& bench, const Facts& facts, const std::vector<FastenerId>& fasteners,
                        const std::string& wrench = "W1") {
    for (const FastenerId f : fasteners) {
        if (facts.groupOf(f) != nullptr && !isTightAsSpecified(facts, f)) {
            bench.make(FastenerTightened{f, facts.groupOf(f)->what.torque, {}, {}, wrench});
        }
    }
}

template <class Bench>
void readTurning(Bench& bench, TurningStage stage, double breakaway = 12, double running = 8,
                 const std::string& wrench = "W1") {
    bench.make(TurningTorqueRead{
        stage, Entered<Torque>{poundFeet(breakaway), ""}, Entered<Torque>{poundFeet(running), ""}, wrench});
}

/// The crank turned before the girdle, where that can still be; the girdle's nuts brought to torque.
template <class Bench> void girdleToTorque(Bench& bench, const Facts& facts, const std::string& wrench = "W1") {
    if (looseNut(facts)) {
        readTurning(bench, TurningStage::beforeGirdle, 12, 8, wrench);
    }
    tightenAsSpecified(bench, facts, facts.layout->girdleNuts(), wrench);
}

/// Every item a pass, and the crank turned with the girdle at torque.
template <class Bench> void passTrialFit(Bench& bench, const Facts& facts, const std::string& wrench = "W1") {
    girdleToTorque(bench, facts, wrench);
    for (const auto& [item, name] : allWords<TrialItem>()) {
        const int last = isPerThrow(item) ? facts.layout->throws() : 0;
        for (int number = isPerThrow(item) ? 1 : 0; number <= last; ++number) {
            bench.make(TrialFitResult{item, number, TrialResult::pass, {}, ""});
        }
    }
    readTurning(bench, TurningStage::girdleAtTorque, 12.5, 8, wrench);
}

/// What a step carries: the shims counted as many as there are, the sealant named.
inline ClosingStepDone closingStep(const Facts& facts, ClosingStep step, std::int64_t openMinutes = 20) {
    ClosingStepDone done{step, {}, ""};
    if (step == ClosingStep::shimsCounted) {
        const ShimCount is = shimCountOf(facts);
        done.fitted = is.fitted;
        done.aside = is.aside;
        done.leftOver = is.leftOver;
    } else if (step == ClosingStep::beadLaid) {
        done.openMinutes = openMinutes;
        done.product = "Grey sealant";
        done.lot = "2231-A";
    }
    return done;
}

/// What must be on record before a step can be entered.
template <class Bench>
void closingEvidence(Bench& bench, const Facts& facts, ClosingStep step, const std::string& wrench = "W1") {
    if (step == ClosingStep::stacksRefitted) {
        for (const Position p : facts.layout->positions()) {
            if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end() && !stack->second.isOn) {
                bench.make(StackMoved{p, StackMove::putBack});
            }
        }
    }
    tightenAsSpecified(bench, facts, fastenersOf(facts, step), wrench);
    if (step == ClosingStep::crankTurned) {
        readTurning(bench, TurningStage::girdleAtTorque, 12.5, 8, wrench);
    } else if (step == ClosingStep::panFastened) {
        readTurning(bench, TurningStage::afterPan, 12.5, 8.5, wrench);
    }
}

template <class Bench>
void doClosingStep(Bench& bench, const Facts& facts, ClosingStep step, std::int64_t openMinutes = 20,
                   const std::string& wrench = "W1") {
    closingEvidence(bench, facts, step, wrench);
    bench.make(closingStep(facts, step, openMinutes));
}

/// Every step up to `last`.
template <class Bench>
void closeUpTo(Bench& bench, const Facts& facts, ClosingStep last = ClosingStep::panFastened,
               std::int64_t openMinutes = 20, const std::string& wrench = "W1") {
    for (const auto& step : allWords<ClosingStep>()) {
        if (step.value <= last && !facts.closing.contains(step.value)) {
            doClosingStep(bench, facts, step.value, openMinutes, wrench);
        }
    }
}

} // namespace caprail::drafts
