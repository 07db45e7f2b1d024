// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/change.h>
#include <assessment/rule_values.h>
#include <base/say.h>

namespace caprail {

Topic topicOf(Part part) {
    switch (part) {
    case Part::nutAndWasher:
        return Topic::nutAndWasher;
    case Part::panRail:
        return Topic::panRail;
    case Part::shells:
        return Topic::shells;
    case Part::crank:
        return Topic::crank;
    case Part::pan:
        return Topic::pan;
    case Part::gasket:
        return Topic::gasket;
    case Part::plate:
        return Topic::plate;
    case Part::pickup:
        break;
    }
    return Topic::pickup;
}

Part partOf(PickupTerm term) {
    switch (term) {
    case PickupTerm::panDepth:
        return Part::pan;
    case PickupTerm::gasket:
        return Part::gasket;
    case PickupTerm::plate:
        return Part::plate;
    case PickupTerm::pickupDepth:
        break;
    }
    return Part::pickup;
}

namespace {

/// One sentence for each cause.
struct CauseWords {
    const Units& units;

    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(const LayoutSetAnew&) const { return Core::say("the engine layout was set again"); }
    std::string operator()(const BandSetTo& c) const {
        return Core::say("the band “%1” was set to %2", Core::say(c.band), format(c.to, units));
    }
    std::string operator()(const GroupSetAnew& c) const {
        return Core::say("what is specified for the %1 fasteners was changed", shown(c.group));
    }
    std::string operator()(const OtherShells& c) const {
        return Core::say("other shells were fitted in %1", describe(c.journal));
    }
    std::string operator()(const OtherPart& c) const {
        const std::string part = c.place.empty() ? Core::say("the %1 was changed", shown(c.part))
                                                 : Core::say("the %1 at %2 was changed", shown(c.part), c.place);
        return c.what.empty() ? part : Core::say("%1: %2", part, c.what);
    }
    std::string operator()(const Tightened& c) const {
        return c.isToAnotherValue ? Core::say("%1 was tightened to another value", describe(c.fastener))
                                  : Core::say("%1 was tightened", describe(c.fastener));
    }
    std::string operator()(const Loosened& c) const { return Core::say("%1 was loosened", describe(c.fastener)); }
    std::string operator()(const MovedInRound& c) const {
        return c.angle ? Core::say("%1 moved %2 in verify round %3", describe(c.fastener), format(*c.angle, units),
                                   c.round)
                       : Core::say("%1 moved in verify round %2", describe(c.fastener), c.round);
    }
    std::string operator()(const WasherWorkedOn& c) const {
        return Core::say("the washer at %1 was %2", describe(c.position), shown(c.work));
    }
    std::string operator()(const CrankMoved& c) const {
        return c.isIn ? Core::say("the crank was laid in again") : Core::say("the crank was lifted out");
    }
    std::string operator()(const GapReadAgain& c) const {
        return Core::say("the gap at %1 was measured again", describe(c.position));
    }
    std::string operator()(const ShimRead& c) const { return Core::say("shim %1 was measured", c.shim); }
    std::string operator()(const StackBuiltAnew& c) const {
        return Core::say("the stack at %1 was built again", describe(c.position));
    }
    std::string operator()(const StackTakenApart& c) const {
        return Core::say("the stack at %1 was taken apart", describe(c.position));
    }
    std::string operator()(const StackWasOn& c) const {
        return Core::say("the stack at %1 was on when it began", describe(c.position));
    }
    std::string operator()(const StackLaidOn& c) const {
        return Core::say("the stack at %1 was laid on before the round was complete", describe(c.position));
    }
    std::string operator()(const GirdleTurnedRound&) const { return Core::say("the girdle was turned round"); }
    std::string operator()(const GirdleTriedAfter&) const {
        return Core::say("the girdle was trial-fitted after the round began");
    }
    std::string operator()(const ThrowAnsweredAgain& c) const {
        return Core::say("throw %1 was looked at again after a change there", c.throwNumber);
    }
    std::string operator()(const OwnCheckSetAnew& c) const {
        return Core::say("what the check “%1” asks was changed", c.check);
    }
};

/// What was changed, and the reason where one was given.
std::string because(const std::string& what, const std::string& why) {
    return why.empty() ? Core::say("%1.", what) : Core::say("%1: %2.", what, why);
}
std::string because(const std::string& what, const Rare<std::string>& why) {
    return because(what, why ? *why : std::string());
}

/// "2 h", "3 days"
std::string howLong(std::int64_t minutes) {
    constexpr std::int64_t hour = 60, day = 24 * hour;
    if (minutes < hour) {
        return Core::count(minutes, Core::mark("%1 minute"), Core::mark("%1 minutes"));
    }
    return minutes < 2 * day ? Core::count(minutes / hour, Core::mark("%1 hour"), Core::mark("%1 hours"))
                             : Core::count(minutes / day, Core::mark("%1 day"), Core::mark("%1 days"));
}

struct DeviationWords {
    const Units& units;

    std::string operator()(const InstrumentCorrected& d) const {
        return Core::say("What was known of %1 was corrected, for earlier readings too: %2.", d.instrument, d.why);
    }
    std::string operator()(const BandChanged& d) const {
        const std::string words =
            d.isWider ? Core::say("The limits of “%1” were widened from %2 to %3 after the reading of entry %4",
                                  Core::say(d.band), format(d.from, units), format(d.to, units), d.afterReading)
                      : Core::say("The limits of “%1” were narrowed from %2 to %3 after the reading of entry %4",
                                  Core::say(d.band), format(d.from, units), format(d.to, units), d.afterReading);
        return because(words, d.why);
    }
    std::string operator()(const RulesChanged& d) const {
        const std::string what = d.from && d.to ? describeRuleChanges(*d.from, *d.to, units) : std::string();
        return because(
            what.empty() ? Core::say("The rules of judging were changed after the reading of entry %1", d.afterReading)
                         : Core::say("The rules of judging were changed after the reading of entry %1 (%2)",
                                     d.afterReading, what),
            d.to ? d.to->why : Rare<std::string>());
    }
    std::string operator()(const AcceptedAgain& d) const {
        return Core::say("“%1” was accepted again after a change: %2.", d.check, d.why);
    }
    std::string operator()(const InsistedOn&) const {
        return Core::say("A value outside what is plausible was insisted on.");
    }
    std::string operator()(const GroupChanged& d) const {
        const std::string was = specifiedText(*d.from, units);
        const std::string is = specifiedText(*d.to, units);
        const std::string group = d.to->name ? *d.to->name : shown(d.to->group);
        const std::string words =
            was != is ? Core::say("What is specified for the %1 fasteners was changed from %2 to %3 after they were tightened "
                                  "(entry %4)",
                                  group, was.empty() ? Core::say("nothing") : was,
                                  is.empty() ? Core::say("nothing") : is, d.after)
                      : Core::say("What is specified for the %1 fasteners was changed after they were tightened (entry %2)",
                                  group, d.after);
        return because(words, d.to->why);
    }
    std::string operator()(const OwnCheckChanged& d) const {
        return because(Core::say("What the check “%1” asks was changed after its answer of entry %2", d.words, d.after),
                       d.why);
    }
    std::string operator()(const PartReplaced& d) const {
        const std::string part = d.place.empty() ? shown(d.part) : shown(d.part) + ", " + visibly(d.place);
        return because(Core::say("Changed or worked on after the reading of entry %1: %2", d.after, part), d.what);
    }
    std::string operator()(const WasherChanged& d) const {
        return because(Core::say("The washer at %1 was %2 after the reading of entry %3", describe(d.position),
                                 shown(d.work), d.after),
                       d.why);
    }
    std::string operator()(const ShellsExchanged& d) const {
        return because(
            Core::say("Other shells were fitted in %1 after the reading of entry %2", describe(d.journal), d.after),
            d.why);
    }
    std::string operator()(const FastenerLetOff& d) const {
        return because(Core::say("Loosened after entry %1 rested on it: %2", d.after, describe(d.fastener)), d.why);
    }
    std::string operator()(const FoundMoved& d) const {
        return d.angle ? Core::say("In verify round %1, %2 moved %3.", d.round, describe(d.fastener), format(*d.angle, units))
                       : Core::say("In verify round %1, %2 moved.", d.round, describe(d.fastener));
    }
    std::string operator()(const CameFromOutside& d) const {
        const std::string from = d.fileName.empty() ? Core::say("a text") : "“" + visibly(d.fileName) + "”";
        return Core::count(d.count, Core::mark("%1 entry came in without a seal, from %2."),
                           Core::mark("%1 entries came in without seals, from %2."), from);
    }
    std::string operator()(const OutcomeStruck& d) const {
        const std::string words = Core::say("“%1” (entry %2, by %3) was struck: %4.", d.said, d.entry, d.by, d.why);
        return d.again == 0
                   ? words
                   : words + " " + Core::say("Entered again by %1, %2 later, as “%3” (entry %4).", d.againBy,
                                             howLong(d.minutes), d.againSaid, d.again);
    }
};

} // namespace

std::string describe(const Cause& cause, const Units& units) {
    return std::visit(CauseWords{units}, cause);
}

std::string describe(const Change& change, const Units& units) {
    return Core::say("Entry %1: %2.", change.entry, describe(change.cause, units));
}

std::string describe(const DeviationKind& what, const Units& units) {
    return std::visit(DeviationWords{units}, what);
}

} // namespace caprail
