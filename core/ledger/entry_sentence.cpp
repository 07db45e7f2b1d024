// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry_sentence.h>

#include <base/plain_text.h>
#include <base/say.h>
#include <ledger/entry_sentence_parts.h>

namespace caprail {

using Parts = EntryTeller::Parts;
using namespace sentence;

std::string EntryTeller::text(Length l) const {
    // What has half a digit more is not cut: a limit of error is never shown as nothing.
    const std::int64_t digit = m_units.length == LengthUnit::inch ? 2'540 : 1'000;
    return l.value() % digit == 0 ? format(l, m_units) : formatFine(l, m_units);
}

void EntryTeller::addStandard(Parts& parts, const std::string& instrument, const Rare<Entered<Temperature>>& part) const {
    with(parts, instrument);
    if (part) {
        parts.push_back(Core::say("the part at %1", text(*part)));
    }
}

// --- Bearings and fits -----------------------------------------------------------------------------------------

Parts EntryTeller::operator()(const JournalReading& e) const {
    Parts parts{Core::say("Journal %1, place %2, direction %3: %4", describe(e.journal), e.station, e.direction,
                          text(e.diameter))};
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const BoreReading& e) const {
    const std::string bearing = describe(e.journal);
    const std::string value = text(e.value);
    Parts parts{e.method == BoreMethod::strip     ? Core::say("Clearance at %1 by gauging strip: %2", bearing, value)
                : e.method == BoreMethod::housing ? Core::say("Bare housing of %1, place %2: %3", bearing, e.station, value)
                                                  : Core::say("Bore of %1 with its shells, place %2: %3", bearing,
                                                              e.station, value)};
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const ShellMeasured& e) const {
    const std::string value = text(e.thickness);
    Parts parts{e.isMarked ? Core::say("Shell %1 is marked %2", e.shell, value)
                           : Core::say("Shell %1 measured: %2", e.shell, value)};
    parts.push_back(e.fits == JournalKind::main ? Core::say("for a main") : Core::say("for a rod"));
    if (e.half != ShellHalf::either) {
        parts.push_back(shown(e.half));
    }
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const ShellsFitted& e) const {
    Parts parts{Core::say("Shells fitted at %1: %2 above, %3 below", describe(e.journal), e.upper, e.lower)};
    because(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const FitReading& e) const {
    Parts parts{Core::say("%1 at place %2: %3", capitalised(Core::say(e.fit)), e.place, text(e.value))};
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const CrankLaidIn& e) const {
    Parts parts{e.isIn ? Core::say("Crank laid in") : Core::say("Crank lifted out")};
    add(parts, e.note);
    return parts;
}

Parts EntryTeller::operator()(const PartChanged& e) const {
    const std::string part = shown(e.part);
    Parts parts{e.place.empty() ? Core::say("Another %1, or it was worked on", part)
                                : Core::say("Another %1 at %2, or it was worked on", part, e.place)};
    add(parts, e.what);
    return parts;
}

// --- Fasteners and verify rounds -------------------------------------------------------------------------------

Parts EntryTeller::operator()(const FastenerTightened& e) const {
    const std::string value = brought(e);
    Parts parts{value.empty() ? Core::say("%1 tightened", capitalised(describe(e.fastener)))
                              : Core::say("%1 tightened to %2", capitalised(describe(e.fastener)), value)};
    if (e.isNew) {
        parts.push_back(*e.isNew ? Core::say("a new one") : Core::say("not a new one"));
    }
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const FastenerLoosened& e) const {
    Parts parts{Core::say("%1 loosened", capitalised(describe(e.fastener)))};
    add(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const ClampChecked& e) const {
    Parts parts{Core::say("Clamp of %1: on at %2, off at %3", describe(e.fastener), text(e.on), text(e.off))};
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const RoundBegun& e) const {
    Parts parts{Core::say("Verify round %1 begun", e.round)};
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const RoundOutcome& e) const {
    const std::string name = capitalised(describe(e.fastener));
    Parts parts{e.outcome == Outcome::held ? Core::say("%1 held in round %2", name, e.round)
                : e.angle                  ? Core::say("%1 moved %2 in round %3", name, text(*e.angle), e.round)
                                           : Core::say("%1 moved in round %2", name, e.round)};
    if (e.outcome == Outcome::held && e.angle) { // no program of ours says both
        parts.push_back(text(*e.angle));
    }
    if (e.torque) {
        parts.push_back(Core::say("pulled to %1", text(*e.torque)));
    }
    if (e.by) {
        parts.push_back(Core::say("verified by %1", shown(*e.by)));
    }
    if (e.stretch) {
        parts.push_back(Core::say("stretch %1", text(*e.stretch)));
    }
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const WasherWorked& e) const {
    Parts parts{Core::say("Washer at %1 %2", describe(e.position), shown(e.work))};
    add(parts, e.note);
    return parts;
}

// --- Gaps, shims and stacks ------------------------------------------------------------------------------------

Parts EntryTeller::operator()(const GapReading& e) const {
    Parts parts{Core::say("Gap at %1, pass %2: %3", describe(e.position), e.pass, text(e.gap))};
    if (e.doesNotGo) {
        parts.push_back(Core::say("%1 does not go", text(*e.doesNotGo)));
    }
    with(parts, e.instrument);
    if (e.straightedge) {
        parts.push_back(Core::say("under %1", *e.straightedge));
    }
    return parts;
}

Parts EntryTeller::operator()(const ShimAdded& e) const {
    Parts parts{Core::say("Shim %1 added, marked %2", e.shim, text(e.marked))};
    if (!e.bag.empty()) {
        parts.push_back(Core::say("from bag %1", e.bag));
    }
    return parts;
}

Parts EntryTeller::operator()(const ShimMeasured& e) const {
    Parts parts{Core::say("Shim %1 measured: %2", e.shim, text(e.thickness))};
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const ShimSetAside& e) const {
    Parts parts{e.isAside ? Core::say("Shim %1 set aside", e.shim) : Core::say("Shim %1 taken back into the kit", e.shim)};
    add(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const StackPinned& e) const {
    return {e.isPinned ? Core::say("Stack at %1 pinned: %2", describe(e.position), stackText(e.shims))
                       : Core::say("Stack at %1 no longer pinned", describe(e.position))};
}

Parts EntryTeller::operator()(const StackBuilt& e) const {
    return {Core::say("Stack built at %1: %2", describe(e.position), stackText(e.shims))};
}

Parts EntryTeller::operator()(const StackMoved& e) const {
    return {Core::say("Stack at %1 %2", describe(e.position), shown(e.move))};
}

Parts EntryTeller::operator()(const RecheckMade& e) const {
    Parts parts{Core::say("Recheck at %1: it %2", describe(e.position), feltText(e.feel))};
    const auto exchanged = [&](const Rare<NameList>& out, const Rare<NameList>& in, const std::optional<Feel>& felt) {
        if (felt) {
            parts.push_back(Core::say("with %1 in place of %2 it %3", in ? stackText(*in) : stackText({}),
                                      out ? stackText(*out) : stackText({}), feltText(*felt)));
        }
    };
    exchanged(e.thickerOut, e.thickerIn, e.thickerFelt);
    exchanged(e.thinnerOut, e.thinnerIn, e.thinnerFelt);
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const JudgedAgain& e) const {
    Parts parts{Core::say("Accepted again by the present numbers: %1", e.check)};
    add(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const FeelStudyBegun& e) const {
    Parts parts{Core::say("Study %1 begun of the feel of %2 under %3", e.study, e.whose, e.straightedge)};
    add(parts, e.setUp);
    return parts;
}

Parts EntryTeller::operator()(const FeelAnswer& e) const {
    Parts parts{Core::say("Study %1: at %2 it %3", e.study, text(e.height), feltText(e.felt))};
    if (!e.shims.names.empty()) {
        parts.push_back(Core::say("step of %1", stackText(e.shims)));
    }
    return parts;
}

} // namespace caprail
