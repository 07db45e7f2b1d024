// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <assessment/specified.h>
#include <assessment/turning.h>
#include <base/say.h>
#include <clearances/turning.h>

namespace caprail {

namespace {

TurningTorque torquesOf(const TurningTorqueRead& reading) {
    return {reading.breakaway.value, reading.running.value};
}

/// The check of a stage as far as staleness goes.
Check checkOf(TurningStage stage, std::int64_t madeAt) {
    Check check;
    check.kind = CheckKind::turningTorque;
    check.subject = stage;
    check.madeAt = madeAt;
    return check;
}

bool isStale(const Facts& facts, TurningStage stage) {
    const auto at = facts.turning.find(stage);
    return at != facts.turning.end() && newestChange(facts, checkOf(stage, at->second.entry)).entry > at->second.entry;
}

std::string remedyFor(TurningStage stage) {
    return stage == TurningStage::beforeGirdle
               ? Core::say("With the girdle off, turn the crank by its bolt: read what starts it and what keeps it "
                           "turning.")
               : Core::say("Turn the crank by its bolt through two full turns: read what starts it and what keeps it "
                           "turning.");
}

} // namespace

Torque largestRiseOf(const Facts& facts) {
    return facts.rules.turningRise.value_or(usualTurningRise());
}

Standing turningOf(const Facts& facts, TurningStage stage, const Units& units) {
    const auto at = facts.turning.find(stage);
    if (at == facts.turning.end()) {
        return {CheckState::notDone, {}, remedyFor(stage)};
    }
    const TurningTorqueRead& read = at->second.what;
    for (const Torque t : {read.breakaway.value, read.running.value}) {
        if (auto fault = wrenchFault(facts, read.instrument, at->second.entry, t, units)) {
            return {CheckState::notProven, std::move(*fault),
                    Core::say("Read it again with a torque wrench that is known and reaches it.")};
        }
    }
    if (stage == TurningStage::beforeGirdle) {
        return {CheckState::good,
                Core::say("%1 to start it, %2 to turn it.", format(read.breakaway.value, units),
                          format(read.running.value, units)),
                {}};
    }
    const auto before = facts.turning.find(TurningStage::beforeGirdle);
    if (turningOf(facts, TurningStage::beforeGirdle, units).state != CheckState::good ||
        isStale(facts, TurningStage::beforeGirdle)) {
        return {CheckState::notProven, Core::say("There is no turning torque before the girdle to hold it against."),
                Core::say("Read the turning torque before the girdle.")};
    }
    const TurningLimit limit{largestRiseOf(facts), before->second.what.instrument == read.instrument,
                             facts.rules.decision};
    const auto judged = judgeTurning(torquesOf(before->second.what), torquesOf(read), limit, units);
    if (!judged) {
        return {CheckState::notProven, judged.error().sentence, Core::say("Strike that reading, and read it again.")};
    }
    std::string sentence = judged->sentence;
    if (!facts.rules.turningRise) {
        sentence += " " + Core::say("That limit is common practice; nobody confirmed it for this engine.");
    }
    switch (judged->verdict) {
    case Verdict::in:
        return {CheckState::good, std::move(sentence), {}};
    case Verdict::tooCloseToCall:
        return {CheckState::tooCloseToCall, std::move(sentence),
                Core::say("Read both stages again with one wrench; if it stays so close, look for what binds.")};
    case Verdict::out:
        break;
    }
    return {CheckState::out, std::move(sentence),
            Core::say("The girdle binds: lift it, look at the stacks and at each throw, and read again.")};
}

void turningChecks(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    for (const TurningStage stage : {TurningStage::beforeGirdle, TurningStage::girdleAtTorque}) {
        const std::string name(word(stage));
        Check& check = a.add(CheckKind::turningTorque, stage, name, Core::say("Turning torque, %1", shown(stage)),
                             {Station::trialFit, "turning-" + name});
        const Standing standing = turningOf(a.facts, stage, a.units);
        check.state = standing.state;
        check.sentence = standing.sentence;
        check.remedy = standing.remedy;
        const auto at = a.facts.turning.find(stage);
        if (at == a.facts.turning.end()) {
            continue;
        }
        rest(check, at->second.entry);
        applyStaleness(check, a.facts, a.units);
        if (check.state == CheckState::stale) {
            check.remedy = remedyFor(stage);
        }
        // It is held against the first stage, which may be read again: that alone makes it no older.
        const auto before = a.facts.turning.find(TurningStage::beforeGirdle);
        if (stage != TurningStage::beforeGirdle && before != a.facts.turning.end()) {
            check.restsOn.push_back(before->second.entry);
        }
    }
}

} // namespace caprail
