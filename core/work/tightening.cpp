// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/tightening.h>

#include <algorithm>
#include <assessment/admission.h>
#include <base/text.h>
#include <ledger/expectations.h>
#include <base/say.h>

namespace caprail {

namespace {

Result<const FastenerGroupSet*> specifiedFor(const Facts& facts, FastenerId fastener) {
    const auto* group = facts.groupOf(fastener);
    if (group == nullptr || !isSpecified(group->what)) {
        return refuse(Core::say("Nothing is specified for %1: set its group first, under Groups.", describe(fastener)));
    }
    return &group->what;
}

} // namespace

Result<FastenerTightened> asSpecified(const Facts& facts, FastenerId fastener, const std::string& instrument) {
    const auto group = specifiedFor(facts, fastener);
    if (!group) {
        return tl::unexpected(group.error());
    }
    const FastenerGroupSet& specified = **group;
    FastenerTightened entry{fastener, {}, {}, {}, instrument};
    switch (specified.method) {
    case TighteningMethod::torque:
        entry.torque = specified.torque;
        break;
    case TighteningMethod::torqueAndAngle:
    case TighteningMethod::toYield:
        entry.torque = specified.torque;
        entry.angle = specified.angle;
        break;
    case TighteningMethod::stretch:
        entry.stretch = specified.stretch;
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
    const auto group = specifiedFor(facts, fastener);
    if (!group) {
        return tl::unexpected(group.error());
    }
    const FastenerGroupSet& specified = **group;
    RoundOutcome outcome{round->begun.what.round, fastener, moved ? Outcome::moved : Outcome::held, std::move(moved), {},
                         instrument};
    const VerifyMethod by = verifiedBy(specified);
    if (by == VerifyMethod::torque) {
        outcome.torque = specified.torque;
    } else {
        outcome.by = by;
        outcome.stretch = std::move(stretch);
    }
    return outcome;
}

Result<RoundOutcome> parseOutcome(const Facts& facts, FastenerId fastener, std::string_view typed,
                                  const std::string& instrument, const Units& units) {
    const auto* group = facts.groupOf(fastener);
    const VerifyMethod by = group == nullptr ? VerifyMethod::torque : verifiedBy(group->what);
    const std::string text = lowered(trimmed(typed));
    const std::string name = describe(fastener);
    const bool isAngle = text.find("°") != std::string::npos || text.find("deg") != std::string::npos;
    if (by == VerifyMethod::length && !isAngle) {
        auto stretch = parseLength(
            typed, units, expectedLength(RoundOutcome::kind, "stretch", Core::say("the stretch of %1", name)));
        return stretch ? outcomeOf(facts, fastener, instrument, {}, std::move(*stretch)) : tl::unexpected(stretch.error());
    }
    if (text.empty()) {
        return refuse(by == VerifyMethod::witnessMark
                          ? Core::say("Say what was seen at %1: h if its mark still lines up, or the angle it moved.", name)
                          : Core::say("Say what was felt at %1: h if it held, or the angle it moved.", name));
    }
    if (text == "h" || text == "held") {
        return outcomeOf(facts, fastener, instrument);
    }
    auto angle = parseAngle(typed, units,
                            expectedAngle(RoundOutcome::kind, "angle", Core::say("the angle that %1 moved", name)));
    if (!angle) {
        return tl::unexpected(angle.error());
    }
    return outcomeOf(facts, fastener, instrument, angle->value > Angle() ? std::optional(std::move(*angle)) : std::nullopt);
}

Result<FastenerTightened> parseTightened(const Facts& facts, FastenerId fastener, std::string_view typed,
                                         const std::string& instrument, const Units& units) {
    const std::string_view text = trimmed(typed);
    auto specified = asSpecified(facts, fastener, instrument);
    if (text.empty()) {
        return specified;
    }
    FastenerTightened entry{fastener, {}, {}, {}, instrument};
    const std::string name = describe(fastener);
    if (specified && specified->stretch) {
        auto stretch = parseLength(
            text, units, expectedLength(FastenerTightened::kind, "stretch", Core::say("the stretch of %1", name)));
        if (!stretch) {
            return tl::unexpected(stretch.error());
        }
        entry.stretch = std::move(*stretch);
        return entry;
    }
    const std::size_t slash = text.find('/');
    auto torque = parseTorque(text.substr(0, slash), units,
                              expectedTorque(FastenerTightened::kind, "torque", Core::say("the torque of %1", name)));
    if (!torque) {
        return tl::unexpected(torque.error());
    }
    entry.torque = std::move(*torque);
    if (slash != std::string_view::npos) {
        auto angle = parseAngle(text.substr(slash + 1), units,
                                expectedAngle(FastenerTightened::kind, "angle", Core::say("the angle of %1", name)));
        if (!angle) {
            return tl::unexpected(angle.error());
        }
        entry.angle = std::move(*angle);
    }
    const auto good = makesSense(facts, entry); // said as it is typed
    return good ? Result<FastenerTightened>(std::move(entry)) : tl::unexpected(good.error());
}

} // namespace caprail
