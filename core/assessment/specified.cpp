// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/specified.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <base/say.h>
#include <fasteners/wrench.h>

namespace caprail {

namespace {

/// What agrees to a coarse last digit in another unit is at most so far apart; a bare number read in the wrong unit is
/// further (1 lbf·ft is 1.36 N·m).
constexpr double mostApart = 0.05;

template <class Q> bool isSame(const Entered<Q>& a, const Entered<Q>& b, Q untyped) {
    const auto apart = static_cast<double>((a.value - b.value).magnitude().value());
    if (a.typed.empty() && b.typed.empty()) {
        return apart <= static_cast<double>(untyped.value());
    }
    // Each text must be able to mean the other's value: then the finer of the two decides.
    return apart <= mostApart * static_cast<double>(b.value.magnitude().value()) &&
           fitOfTyped(Entered<Q>{a.value, b.typed}) == TypedFit::agrees &&
           fitOfTyped(Entered<Q>{b.value, a.typed}) == TypedFit::agrees;
}

std::string byWord(VerifyMethod method) {
    switch (method) {
    case VerifyMethod::torque:
        return Core::say("by pulling it to its torque");
    case VerifyMethod::length:
        return Core::say("by its length: it must not be pulled");
    case VerifyMethod::witnessMark:
        break;
    }
    return Core::say("by its witness mark: it must not be pulled");
}

std::optional<std::string> torqueFault(const Facts& facts, const Seen<RoundOutcome>& seen, const FastenerGroupSet& group,
                                       const Units& units) {
    const RoundOutcome& outcome = seen.what;
    if (!group.torque) {
        return Core::say("No torque is specified for %1.", describe(outcome.fastener));
    }
    if (!outcome.torque) {
        return Core::say("%1 has an outcome without a torque.", describe(outcome.fastener));
    }
    if (!isSameAsTyped(*outcome.torque, *group.torque)) {
        return Core::say("%1 was pulled at %2, and %3 is specified.", describe(outcome.fastener),
                         format(outcome.torque->value, units), format(group.torque->value, units));
    }
    return wrenchFault(facts, wrenchOf(facts, outcome), seen.entry, outcome.torque->value, units);
}

std::optional<std::string> lengthFault(const RoundOutcome& outcome, const FastenerGroupSet& group, const Units& units) {
    if (!outcome.stretch || !group.stretch) {
        return Core::say("%1 is verified by its length, and no stretch was read.", describe(outcome.fastener));
    }
    if ((outcome.stretch->value - group.stretch->value).magnitude() > stretchTolerance(group)) {
        return Core::say("%1 has a stretch of %2, outside %3 ± %4.", describe(outcome.fastener),
                         formatFine(outcome.stretch->value, units), formatFine(group.stretch->value, units),
                         formatFine(stretchTolerance(group), units));
    }
    return {};
}

} // namespace

std::optional<Date> dueOf(const InstrumentAdded& instrument) {
    const bool isYearly = !instrument.due && instrument.type == InstrumentType::torqueWrench && instrument.calibrated;
    return isYearly ? std::optional(dueByDefault(*instrument.calibrated)) : std::optional<Date>(instrument.due);
}

std::string wrenchOf(const Facts& facts, const RoundOutcome& outcome) {
    if (!outcome.instrument.empty()) {
        return outcome.instrument;
    }
    const auto round =
        std::ranges::find(facts.rounds, outcome.round, [](const RoundFact& r) { return r.begun.what.round; });
    return round == facts.rounds.end() ? std::string() : round->begun.what.instrument;
}

bool isSameAsTyped(const Entered<Torque>& a, const Entered<Torque>& b) {
    return isSame(a, b, millinewtonMetres(50));
}

bool isSameAsTyped(const Entered<Angle>& a, const Entered<Angle>& b) {
    return isSame(a, b, degrees(0.05));
}

bool isAsSpecified(const FastenerTightened& is, const FastenerGroupSet& group) {
    if (!isSpecified(group)) {
        return false;
    }
    if (group.method == TighteningMethod::stretch) {
        return is.stretch && (is.stretch->value - group.stretch->value).magnitude() <= stretchTolerance(group);
    }
    return is.torque && isSameAsTyped(*is.torque, *group.torque) &&
           (!hasAngle(group.method) || (is.angle && isSameAsTyped(*is.angle, *group.angle)));
}

bool isTightAsSpecified(const Facts& facts, FastenerId f) {
    const auto* group = facts.groupOf(f);
    const auto at = facts.fasteners.find(f);
    return group != nullptr && at != facts.fasteners.end() && at->second.tightened && !at->second.isLoose &&
           isAsSpecified(at->second.tightened->what, group->what);
}

bool isOutsideRange(const InstrumentAdded& wrench, Torque pulled) {
    const auto marked = wrench.smallestTorque ? std::optional(wrench.smallestTorque->value) : std::nullopt;
    if (!wrench.largestTorque) {
        return marked && pulled < *marked;
    }
    const auto range = WrenchRange::upTo(wrench.largestTorque->value, marked);
    return range && rangeVerdict(pulled, *range) != RangeVerdict::within;
}

std::optional<std::string> wrenchFault(const Facts& facts, const std::string& wrench, std::int64_t entry, Torque pulled,
                                       const Units& units) {
    if (wrench.empty()) {
        return Core::say("No wrench is named for %1.", format(pulled, units));
    }
    const InstrumentAdded* known = facts.instrumentAt(wrench, entry);
    if (known == nullptr) {
        return Core::say("Nothing was known of %1 when it was used.", wrench);
    }
    if (known->type != InstrumentType::torqueWrench) {
        return Core::say("%1 is a %2, which pulls no torque.", wrench, shown(known->type));
    }
    if (!known->largestTorque) {
        return Core::say("The range of %1 is not known.", wrench);
    }
    if (isOutsideRange(*known, pulled)) {
        return Core::say("%1 lies outside the range of %2.", format(pulled, units), wrench);
    }
    return {};
}

std::optional<std::string> whyNotCounted(const Facts& facts, const Seen<RoundOutcome>& seen, const Units& units) {
    const RoundOutcome& outcome = seen.what;
    const auto* group = facts.groupOf(outcome.fastener);
    if (group == nullptr || !isSpecified(group->what)) {
        return Core::say("Nothing is specified for %1.", describe(outcome.fastener));
    }
    const VerifyMethod wanted = verifiedBy(group->what);
    if (outcome.by.value_or(VerifyMethod::torque) != wanted || (wanted != VerifyMethod::torque && outcome.torque)) {
        return Core::say("%1 is verified %2.", describe(outcome.fastener), byWord(wanted));
    }
    if (facts.rules.secondPersonVerifies.value_or(false)) {
        const auto at = facts.fasteners.find(outcome.fastener);
        if (at != facts.fasteners.end() && at->second.tightened && at->second.tightened->person == seen.person) {
            return Core::say("%1 was tightened and verified by %2, and the shop's rule asks for a second person.",
                             describe(outcome.fastener), seen.person);
        }
    }
    switch (wanted) {
    case VerifyMethod::torque:
        return torqueFault(facts, seen, group->what, units);
    case VerifyMethod::length:
        return lengthFault(outcome, group->what, units);
    case VerifyMethod::witnessMark:
        break;
    }
    return {};
}

bool isComplete(const Facts& facts, const RoundFact& round) {
    return facts.layout && std::ranges::all_of(facts.layout->verifiedFasteners(), [&](FastenerId f) {
               const auto outcome = round.outcomes.find(f);
               return outcome != round.outcomes.end() && !whyNotCounted(facts, outcome->second);
           });
}

} // namespace caprail
