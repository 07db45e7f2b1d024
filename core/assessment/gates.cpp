// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/review.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr CheckKind beforeTrialFit[] = {CheckKind::gap, CheckKind::stack, CheckKind::recheck, CheckKind::flushness,
                                        CheckKind::girdleWay};

bool isNeeded(GateKind gate, CheckKind check) {
    return gate == GateKind::closing || std::ranges::find(beforeTrialFit, check) != std::end(beforeTrialFit);
}

NextStep closingStep(const Assessing& a) {
    if (a.out.nextClosingStep) {
        return {Core::say("Closing is open. Next: %1.", shown(*a.out.nextClosingStep)), {Station::closing, "step"}};
    }
    return {Core::say("Everything is closed up. Sign the record off."), {Station::closing, "sign-off"}};
}

} // namespace

void makeGates(const Assessing& a) {
    for (const GateKind kind : {GateKind::trialFit, GateKind::closing}) {
        Gate gate{kind, false, {}, {}};
        for (std::size_t i = 0; i < a.out.checks.size(); ++i) {
            if (isNeeded(kind, a.out.checks[i].kind)) {
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
        if (!a.facts.closing.contains(step.value)) {
            a.out.nextClosingStep = step.value;
            break;
        }
    }
    a.out.isReadyToSign = a.out.gate(GateKind::closing).isOpen && !a.out.nextClosingStep && !a.facts.isClosed();
}

namespace {

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
    a.out.next = {Core::say("%1 is %2. %3", first.title, shown(first.state), first.remedy), first.destination};
}

} // namespace

void makeNextStep(const Assessing& a) {
    chooseNextStep(a);
    if (!a.facts.isClosed() && !a.facts.neverValid.empty()) {
        a.out.next.sentence = sentenceOf(a.facts.neverValid.back()) + " " + a.out.next.sentence;
    }
}

} // namespace caprail
