// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/review.h>
#include <assessment/tightening_order.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr CheckKind beforeTrialFit[] = {CheckKind::gap, CheckKind::stack, CheckKind::recheck, CheckKind::flushness,
                                        CheckKind::girdleWay};

/// A check of the shop's own holds what it was placed before; one among the closing steps holds its step alone.
bool isOwnCheckNeeded(const Facts& facts, GateKind gate, const Check& check) {
    const auto* set = facts.ownCheckNamed(std::get<OwnPlace>(check.subject).check);
    return set != nullptr && (set->what.holds == OwnCheckHolds::trialFit ||
                              (set->what.holds == OwnCheckHolds::closing && gate == GateKind::closing));
}

bool isNeeded(const Facts& facts, GateKind gate, const Check& check) {
    if (check.kind == CheckKind::ownCheck) {
        return isOwnCheckNeeded(facts, gate, check);
    }
    return gate == GateKind::closing || std::ranges::find(beforeTrialFit, check.kind) != std::end(beforeTrialFit);
}

NextStep closingStep(const Assessing& a) {
    if (a.out.nextClosingStep) {
        const Standing& standing = a.out.closing.at(*a.out.nextClosingStep);
        if (standing.state != CheckState::notDone) {
            return {Core::say("%1 %2", standing.sentence, standing.remedy), {Station::closing, "step"}};
        }
        if (const auto lack = lackOf(a.facts, *a.out.nextClosingStep, a.units)) {
            return {Core::say("Closing, “%1”: %2", shown(*a.out.nextClosingStep), lack->sentence), lack->destination};
        }
        return {Core::say("Closing: %1.", shown(*a.out.nextClosingStep)), {Station::closing, "step"}};
    }
    return {Core::say("Everything is closed up. Sign the record off."), {Station::closing, "sign-off"}};
}

} // namespace

void makeGates(const Assessing& a) {
    for (const GateKind kind : {GateKind::trialFit, GateKind::closing}) {
        Gate gate{kind, false, {}, {}};
        for (std::size_t i = 0; i < a.out.checks.size(); ++i) {
            if (isNeeded(a.facts, kind, a.out.checks[i])) {
                gate.needs.push_back(i);
                if (!a.out.checks[i].isGood()) {
                    gate.holding.push_back(i);
                }
            }
        }
        gate.isOpen = gate.holding.empty() && !gate.needs.empty() && a.facts.layout.has_value();
        a.out.gates.push_back(std::move(gate));
    }
    for (const auto& step : allWords<ClosingStep>()) {
        a.out.closing[step.value] = standingOf(a.facts, step.value, a.units);
        if (!a.out.nextClosingStep && a.out.closing[step.value].state != CheckState::good) {
            a.out.nextClosingStep = step.value;
        }
    }
    a.out.isReadyToSign = a.out.gate(GateKind::closing).isOpen && !a.out.nextClosingStep && !a.facts.isClosed();
}

namespace {

/// Where a check is worked on; a bore that waits for its cap's torque first at that.
Destination wayTo(const Assessing& a, const Check& check) {
    const auto* journal = std::get_if<JournalId>(&check.subject);
    const bool isClearance = check.kind == CheckKind::mainClearance || check.kind == CheckKind::rodClearance;
    const auto waitsFor = journal != nullptr && isClearance ? a.out.clearances.at(*journal).boreWaitsFor : std::nullopt;
    return waitsFor ? Destination{Station::fasteners, code(*waitsFor)} : check.destination;
}

void chooseNextStep(const Assessing& a) {
    if (a.facts.isClosed()) {
        a.out.next = {Core::say("This build is signed off by %1.", a.facts.signedOff->person), {Station::history, {}}};
        return;
    }
    if (!a.facts.engine) {
        a.out.next = {Core::say("Say whose engine this is."), {Station::engine, "engine"}};
        return;
    }
    if (!a.facts.layout) {
        a.out.next = {Core::say("Set the engine layout: caps, fasteners, tied run."), {Station::engine, "layout"}};
        return;
    }
    // A round is finished before anything that it spoiled is looked at: what turned once may turn again in it.
    if (const RoundFact* round = roundUnderWay(a.facts)) {
        const FastenerId next = stillToPull(a.facts, *round).front();
        a.out.next = {Core::say("Verify round %1 goes on with %2.", round->begun.what.round, describe(next)),
                      {Station::fasteners, code(next)}};
        return;
    }
    const Gate& closing = a.out.gate(GateKind::closing);
    if (closing.isOpen) {
        a.out.next = closingStep(a);
        return;
    }
    if (closing.holding.empty()) {
        a.out.next = {Core::say("Set the bands that this engine is judged by."), {Station::engine, "bands"}};
        return;
    }
    const Check& first = a.out.checks[closing.holding.front()];
    a.out.next = {Core::say("%1: %2. %3", first.title, shown(first.state), first.remedy), wayTo(a, first)};
}

} // namespace

void makeNextStep(const Assessing& a) {
    chooseNextStep(a);
    if (!a.facts.isClosed() && !a.facts.neverValid.empty()) {
        a.out.next.sentence = sentenceOf(a.facts.neverValid.back()) + " " + a.out.next.sentence;
    }
}

} // namespace caprail
