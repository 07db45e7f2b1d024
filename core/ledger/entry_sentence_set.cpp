// SPDX-License-Identifier: GPL-3.0-or-later
/// What is asked of the engine and with what it is measured; and what is looked at, written down and closed.
#include <ledger/entry_sentence.h>

#include <base/date.h>
#include <base/plain_text.h>

namespace caprail {

using Parts = EntryTeller::Parts;
using namespace sentence;

namespace {

/// "S014" and what it is, each where it was said: "maker Kestrel, number 22".
void addNamed(Parts& parts, const char* pattern, const std::string& text) {
    if (!text.empty()) {
        parts.push_back(Core::say(pattern, text));
    }
}

std::string groupName(const FastenerGroupSet& e) {
    if (e.name && !e.name->empty()) {
        return visibly(*e.name);
    }
    const std::string kind = shown(e.group);
    return e.ring ? Core::say("%1, %2 ring", kind, shown(*e.ring)) : kind;
}

} // namespace

Parts EntryTeller::operator()(const EngineDescribed& e) const {
    const std::string engine = joined({visibly(e.engine), visibly(e.serial)}, " ");
    Parts parts{engine.empty() ? Core::say("Engine described") : Core::say("Engine: %1", engine)};
    addNamed(parts, Core::mark("for %1"), e.customer);
    addNamed(parts, Core::mark("shop: %1"), e.shop);
    add(parts, e.address.value_or(""));
    addNamed(parts, Core::mark("telephone %1"), e.telephone.value_or(""));
    add(parts, e.note);
    return parts;
}

Parts EntryTeller::operator()(const LayoutSet& e) const {
    Parts parts{Core::say("Girdle now ties caps %1 to %2", e.tiedFirst, e.tiedLast)};
    parts.push_back(Core::say("%1 caps of %2 fasteners", e.caps, e.fastenersPerCap));
    parts.push_back(Core::say("girdle at the %1 ring", shown(e.girdleRing)));
    parts.push_back(Core::say("%1 rods on %2 throws", e.rods, e.throws));
    parts.push_back(Core::say("pickup at cap %1 %2", e.pickupCap, shown(e.pickupSide)));
    parts.push_back(Core::say("dipstick at cap %1 %2", e.dipstickCap, shown(e.dipstickSide)));
    parts.push_back(Core::say("caps %1 apart, studs %2, outer studs %3, rails %4", text(e.capSpacing), text(e.studSpan),
                              text(e.outerStudSpan), text(e.railSpan)));
    const auto given = [&](const char* words, const Rare<Length>& length) {
        if (length) {
            parts.push_back(Core::say(words, text(*length)));
        }
    };
    given(Core::mark("girdle %1 thick"), e.plateThickness);
    if (e.plateMetal) {
        parts.push_back(Core::say("of %1", shown(*e.plateMetal)));
    }
    if (e.plateModulus) {
        parts.push_back(Core::say("elastic modulus %1 MPa", *e.plateModulus));
    }
    if (e.platePoisson) {
        parts.push_back(Core::say("Poisson's ratio %1 thousandths", *e.platePoisson));
    }
    given(Core::mark("windows %1 along"), e.windowAlong);
    given(Core::mark("windows %1 across"), e.windowAcross);
    given(Core::mark("%1 beyond the end nuts"), e.plateOverhang);
    source(parts, e.source);
    return parts;
}

Parts EntryTeller::operator()(const BandSet& e) const {
    Parts parts{Core::say("Band “%1” is now %2 to %3", Core::say(e.band), text(e.lo), text(e.hi))};
    if (e.target) {
        parts.push_back(Core::say("aim %1", text(*e.target)));
    }
    source(parts, e.source);
    because(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const RulesSet& e) const {
    Parts parts{Core::say("Judged from now on by %1, U %2", shown(e.decision), shown(e.coverage))};
    parts.push_back(Core::say("a gap in %1 passes within %2", e.minimumPasses, text(e.repeatLimit)));
    parts.push_back(Core::say("shims within %1 of their marking", text(e.kitTolerance)));
    parts.push_back(e.largestStack == 0 ? Core::say("stacks of any number of shims")
                                        : Core::say("stacks of up to %1 shims", e.largestStack));
    parts.push_back(Core::say("plan for %1", shown(e.objective)));
    parts.push_back(Core::say("preload within %1 % at a torque", e.torqueScatterPercent));
    parts.push_back(Core::say("counterweights %1 clear", text(e.counterweightMinimum)));
    if (e.temperatureSpread) {
        parts.push_back(Core::say("parts within %1 of each other", text(*e.temperatureSpread)));
    }
    if (e.secondPersonVerifies) {
        parts.push_back(*e.secondPersonVerifies ? Core::say("a second person verifies")
                                                : Core::say("anyone may verify"));
    }
    if (e.secondPersonSigns) {
        parts.push_back(*e.secondPersonSigns ? Core::say("a second person signs") : Core::say("anyone may sign"));
    }
    if (e.pickupTubeMinimum) {
        parts.push_back(Core::say("pickup tube %1 clear", text(*e.pickupTubeMinimum)));
    }
    if (e.dipstickMinimum) {
        parts.push_back(Core::say("dipstick %1 clear", text(*e.dipstickMinimum)));
    }
    if (e.turningRise) {
        parts.push_back(Core::say("turning torque may rise by %1", text(*e.turningRise)));
    }
    source(parts, e.source);
    because(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const OwnCheckSet& e) const {
    Parts parts{e.places == 0 ? Core::say("Own check “%1” is asked no more", e.ownCheck)
                              : Core::say("Own check “%1” is now asked: %2", e.ownCheck, e.words)};
    parts.push_back(shown(e.sort));
    parts.push_back(Core::say("it holds %1", e.step ? shown(*e.step) : shown(e.holds)));
    if (e.places > 1) {
        parts.push_back(Core::say("at %1 places", e.places));
    }
    if (e.lo || e.hi) {
        parts.push_back(Core::say("within %1 to %2", e.lo ? text(*e.lo) : "…", e.hi ? text(*e.hi) : "…"));
    }
    source(parts, e.source);
    because(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const FastenerGroupSet& e) const {
    const std::string value = brought(e);
    Parts parts{value.empty() ? Core::say("Fasteners of %1: %2", groupName(e), e.count)
                              : Core::say("Fasteners of %1 go to %2", groupName(e), value)};
    if (!value.empty()) {
        parts.push_back(Core::say("%1 of them", e.count));
    }
    if (e.name && !e.name->empty()) {
        parts.push_back(shown(e.group));
    }
    if (e.places) {
        parts.push_back(e.places->names.empty() ? Core::say("dissolved: no place is left in it")
                                                : Core::say("places: %1", stackText(*e.places)));
    }
    addNamed(parts, Core::mark("thread %1"), e.thread);
    add(parts, e.grade);
    add(parts, e.lubricant);
    parts.push_back(Core::say("by %1 in %2 steps", shown(e.method), e.steps));
    if (!e.sequence.names.empty()) {
        parts.push_back(Core::say("in the order %1", stackText(e.sequence)));
    }
    if (e.piece) {
        parts.push_back(shown(*e.piece));
    }
    if (e.verifiedBy) {
        parts.push_back(Core::say("verified by %1", shown(*e.verifiedBy)));
    }
    if (e.isSingleUse) {
        parts.push_back(*e.isSingleUse ? Core::say("used once") : Core::say("may be used again"));
    }
    const auto length = [&](const Rare<Entered<Length>>& given, const char* pattern) {
        if (given) {
            parts.push_back(Core::say(pattern, text(*given)));
        }
    };
    length(e.stretchTolerance, Core::mark("length within %1"));
    length(e.grip, Core::mark("grip %1"));
    length(e.shank, Core::mark("shank %1"));
    length(e.threadInGrip, Core::mark("%1 of thread in the grip"));
    if (e.clamped) {
        addNamed(parts, Core::mark("clamps %1"), *e.clamped);
    }
    source(parts, e.source);
    because(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const PersonAdded& e) const {
    return {e.role.empty() ? Core::say("%1 works on this engine", e.name)
                           : Core::say("%1 works on this engine as %2", e.name, e.role)};
}

Parts EntryTeller::operator()(const InstrumentAdded& e) const {
    Parts parts{Core::say("%1 is a %2", e.instrument, shown(e.type))};
    addNamed(parts, Core::mark("made by %1"), e.maker);
    addNamed(parts, Core::mark("number %1"), e.serial);
    if (e.limitOfError) {
        parts.push_back(Core::say("limit of error ± %1", text(*e.limitOfError)));
    }
    if (e.smallestTorque || e.largestTorque) {
        parts.push_back(Core::say("from %1 to %2", e.smallestTorque ? text(*e.smallestTorque) : "…",
                                  e.largestTorque ? text(*e.largestTorque) : "…"));
    }
    if (e.calibrated) {
        parts.push_back(Core::say("calibrated %1", format(*e.calibrated)));
    }
    if (e.due) {
        parts.push_back(Core::say("due %1", format(*e.due)));
    }
    if (e.dueCycles) {
        parts.push_back(Core::say("due after %1 pulls", *e.dueCycles));
    }
    if (e.cycles) {
        parts.push_back(Core::say("%1 pulls before this record", *e.cycles));
    }
    if (e.step) {
        parts.push_back(Core::say("read to %1", text(*e.step)));
    }
    if (e.setWith) {
        addNamed(parts, Core::mark("set in %1"), *e.setWith);
    }
    if (e.corrects) {
        addNamed(parts, Core::mark("corrects: %1"), *e.corrects);
    }
    return parts;
}

} // namespace caprail
