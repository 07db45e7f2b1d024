// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/tightening.h>

#include <base/say.h>

namespace caprail {

Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument) {
    const auto* group = facts.groupOf(fastener);
    if (group == nullptr || !isSpecified(group->what)) {
        return refuse(Core::say("Nothing is specified for %1: set its group first, under Groups.", describe(fastener)));
    }
    FastenerTightened entry{fastener, {}, {}, {}, instrument};
    switch (group->what.method) {
    case TighteningMethod::torque:
        entry.torque = group->what.torque;
        break;
    case TighteningMethod::torqueAndAngle:
    case TighteningMethod::toYield:
        entry.torque = group->what.torque;
        entry.angle = group->what.angle;
        break;
    case TighteningMethod::stretch:
        entry.stretch = group->what.stretch;
        break;
    }
    return entry;
}

Result<RoundOutcome> outcomeOf(const Facts& facts, FastenerId fastener, const std::string& instrument,
                               std::optional<Entered<Angle>> moved, std::optional<Entered<Length>> stretch) {
    const RoundFact* round = roundUnderWay(facts);
    if (round == nullptr) {
        return refuse(Core::say("No verify round is under way: begin one first."));
    }
    const auto* group = facts.groupOf(fastener);
    if (group == nullptr || !isSpecified(group->what)) {
        return refuse(Core::say("Nothing is specified for %1: set its group first, under Groups.", describe(fastener)));
    }
    RoundOutcome outcome{round->begun.what.round, fastener, moved ? Outcome::moved : Outcome::held, std::move(moved), {},
                         instrument};
    const VerifyMethod by = verifiedBy(group->what);
    if (by == VerifyMethod::torque) {
        outcome.torque = group->what.torque;
    } else {
        outcome.by = by;
        outcome.stretch = std::move(stretch);
    }
    return outcome;
}

} // namespace caprail
