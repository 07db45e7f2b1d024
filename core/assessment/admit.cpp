// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/known_items.h>

#include <algorithm>
#include <assessment/closing_steps.h>
#include <assessment/described_girdle.h>
#include <assessment/fastener_groups.h>
#include <assessment/signatures.h>
#include <assessment/specified.h>
#include <assessment/unconfirmed.h>
#include <base/say.h>
#include <base/text.h>
#include <fasteners/joint.h>
#include <fasteners/preload.h>
#include <fasteners/thread.h>
#include <ledger/band_names.h>
#include <ledger/entry_texts.h>
#include <set>
#include <units/format.h>

namespace caprail {

namespace {

const Units unitsOfRefusals;

/// Nothing on an engine stand is longer, or turned harder, than this: such an entry is refused however it was typed.
constexpr Length longest = inches(60);
constexpr Torque hardest = newtonMetres(3000);

Result<void> name(const std::string& text, const std::string& what) {
    if (text.empty() || text.size() > 60 || text.find_first_of(" \t\n\r") != std::string::npos) {
        return refuse(Core::say("“%1” cannot be the name of %2: use 1 to 60 characters without spaces.", text, what));
    }
    return {};
}

Result<void> words(const std::string& text, const std::string& what) {
    if (isBlank(text)) {
        return refuse(Core::say("There is nothing written for %1: say it in a few words.", what));
    }
    return {};
}

/// One overload per kind; the first thing that is wrong is said.
class Admission : private KnownItems {
public:
    explicit Admission(const Facts& facts) : KnownItems(facts) {}

    Result<void> operator()(const EngineDescribed& e) const { return words(e.engine, Core::say("the engine")); }

    Result<void> operator()(const LayoutSet& e) const {
        const auto layout = EngineLayout::from(e);
        if (!layout) {
            return tl::unexpected(layout.error());
        }
        if (const auto girdle = describedGirdle(e, *layout); !girdle) {
            return tl::unexpected(girdle.error());
        }
        return noPlaceIsLost(*layout);
    }

    Result<void> operator()(const BandSet& e) const {
        if (auto named = words(e.band, Core::say("the band's name")); !named) {
            return named;
        }
        const auto band = Band::between(e.lo.value, e.hi.value);
        if (!band) {
            return tl::unexpected(band.error());
        }
        if (e.target && !band->contains(e.target->value)) {
            return refuse(Core::say("The target %1 lies outside the band “%2”, %3: choose one inside it.",
                                    format(e.target->value, unitsOfRefusals), e.band, format(*band, unitsOfRefusals)));
        }
        return lengths({e.lo.value, e.hi.value}, Core::say("a band"));
    }

    Result<void> operator()(const RulesSet& e) const {
        if (e.repeatLimit <= Length() || e.kitTolerance <= Length() || e.minimumPasses < 1 || e.minimumPasses > 20 ||
            e.largestStack < 0 || e.largestStack > 50 || e.torqueScatterPercent < 0 || e.torqueScatterPercent > 90 ||
            e.counterweightMinimum < Length()) {
            return refuse(Core::say("A rule has an impossible value: limits must be positive, passes 1 to 20, shims "
                                    "per stack 0 to 50, torque scatter 0 to 90 %."));
        }
        return {};
    }

    Result<void> operator()(const FastenerGroupSet& e) const {
        if (e.count < 1 || e.count > 200) {
            return refuse(Core::say("A fastener group has 1 to 200 fasteners, not %1.", e.count));
        }
        if (e.steps < 1 || e.steps > 10) {
            return refuse(Core::say("Fasteners are tightened in 1 to 10 steps, not %1.", e.steps));
        }
        // Without any value the group waits for what its maker says; with one, it must be the one that its method needs.
        const bool isEmpty = !e.torque && !e.angle && !e.stretch;
        if (!isEmpty && (e.method == TighteningMethod::stretch ? !e.stretch : !e.torque)) {
            return refuse(Core::say("The group “%1” is tightened by %2, but no such value was given: give it.",
                                    shown(e.group), shown(e.method)));
        }
        if (!isEmpty && hasAngle(e.method) && !e.angle) {
            return refuse(Core::say("The group “%1” is tightened by torque and angle, but no angle was given: give it.",
                                    shown(e.group)));
        }
        if (auto set = placesOf(e); !set) {
            return set;
        }
        if (e.clamped && !e.clamped->empty()) {
            if (const auto material = findClampedMaterial(*e.clamped); !material) {
                return tl::unexpected(material.error());
            }
        }
        if (!e.thread.empty()) {
            if (const auto thread = parseThread(e.thread); !thread) {
                return tl::unexpected(thread.error());
            }
        }
        return all({sequence(e), torqueAndAngle(e.torque, e.angle)});
    }
    Result<void> placesOf(const FastenerGroupSet& e) const {
        if (e.places.has_value() != (e.name && !e.name->empty()) || (e.places && e.ring)) {
            return refuse(Core::say("A group of places has a name of its own, lists its places and names no ring; any other "
                                    "group has neither name nor list."));
        }
        std::set<std::string> seen;
        for (const auto& place : e.places ? e.places->names : std::vector<std::string>()) {
            const auto f = parseFastener(place);
            if (!f) {
                return tl::unexpected(f.error());
            }
            const bool isRow = !hasSides(e.group);
            if (f->kind != e.group || (m_facts.layout && !m_facts.layout->has(*f)) || (isRow && f->number > 200)) {
                return refuse(Core::say("The group lists %1, which is not of its kind, or not on this engine: take it out.",
                                        place));
            }
            if (!seen.insert(code(*f)).second) {
                return refuse(Core::say("The group lists %1 twice: name each place once.", place));
            }
        }
        return {};
    }
    Result<void> sequence(const FastenerGroupSet& e) const {
        std::set<std::string> seen;
        for (const auto& member : e.sequence.names) {
            const auto fastener = parseFastener(member);
            if (!fastener) {
                return tl::unexpected(fastener.error());
            }
            if (m_facts.layout && !m_facts.layout->has(*fastener)) {
                return refuse(
                    Core::say("The sequence names %1, but this engine does not have it: take it out.", member));
            }
            if (e.places && std::ranges::find(e.places->names, member) == e.places->names.end()) {
                return refuse(Core::say("The sequence names %1, which is not among the places of this group: take it out.",
                                        member));
            }
            if (e.ring && fastener->ring != *e.ring) {
                return refuse(Core::say("The sequence names %1, which is not of the %2 pair: take it out.", member,
                                        shown(*e.ring)));
            }
            if (fastener->kind != e.group || !seen.insert(member).second) {
                return refuse(
                    fastener->kind == e.group
                        ? Core::say("The sequence names %1 twice: name each fastener of the group once.", member)
                        : Core::say("The sequence names %1, which is of another group: name each fastener of the "
                                    "group once.",
                                    member));
            }
        }
        return {};
    }

    Result<void> operator()(const PersonAdded& e) const { return words(e.name, Core::say("the person's name")); }

    Result<void> operator()(const InstrumentAdded& e) const {
        if (auto named = name(e.instrument, Core::say("an instrument")); !named) {
            return named;
        }
        if (e.smallestTorque && e.largestTorque && e.smallestTorque->value > e.largestTorque->value) {
            return refuse(
                Core::say("The wrench %1 would reach from a larger torque to a smaller one: give the smaller first.",
                          e.instrument));
        }
        if (e.calibrated && e.due && *e.due < *e.calibrated) {
            return refuse(Core::say(
                "The instrument %1 would be due on %2, before it was calibrated on %3: correct one of the dates.",
                e.instrument, format(*e.due), format(*e.calibrated)));
        }
        constexpr std::int64_t mostCycles = 1'000'000;
        if ((e.dueCycles && (*e.dueCycles < 1 || *e.dueCycles > mostCycles)) ||
            (e.cycles && (*e.cycles < 0 || *e.cycles > mostCycles))) {
            return refuse(Core::say("The cycles of %1 are counts of pulls, at most %2 and not negative.", e.instrument,
                                    mostCycles));
        }
        return {};
    }

    Result<void> operator()(const JournalReading& e) const {
        if (e.station < 1 || e.station > 9 || e.direction < 1 || e.direction > 9) {
            return refuse(
                Core::say("A journal is measured at stations 1 to 9 in directions 1 to 9: correct the place on it."));
        }
        return all({journal(e.journal), instrument(e.instrument),
                    positive(e.diameter.value, Core::say("a journal's diameter"))});
    }
    Result<void> operator()(const BoreReading& e) const {
        if (e.station < 1 || e.station > 9) {
            return refuse(Core::say("A bore is measured at stations 1 to 9: correct the place in it."));
        }
        return all({journal(e.journal), instrument(e.instrument), positive(e.value.value, Core::say("a bore"))});
    }
    Result<void> operator()(const ShellMeasured& e) const {
        return all({name(e.shell, Core::say("a shell")), instrument(e.instrument),
                    positive(e.thickness.value, Core::say("a shell's thickness"))});
    }
    Result<void> operator()(const ShellsFitted& e) const {
        if (e.upper == e.lower) {
            return refuse(Core::say("Shell %1 cannot be both the upper and the lower one: name two shells.", e.upper));
        }
        for (const auto& shell : {e.upper, e.lower}) {
            if (!m_facts.shells.contains(shell)) {
                return refuse(Core::say("The shelf has no shell %1: enter its thickness first.", shell));
            }
            for (const auto& [where, fitted] : m_facts.shellsFitted) {
                if (where != e.journal && (fitted.what.upper == shell || fitted.what.lower == shell)) {
                    return refuse(Core::say("Shell %1 already lies in %2: take another one.", shell, describe(where)));
                }
            }
        }
        return journal(e.journal);
    }
    Result<void> operator()(const FitReading& e) const {
        if (!bands::isFit(e.fit) || m_facts.bandNamed(e.fit) == nullptr) {
            return refuse(Core::say("There is no fit “%1” in this record: set its band first.", e.fit));
        }
        if (e.place < 1 || e.place > 99) {
            return refuse(Core::say("A fit is read at place 1 to 99, not %1.", e.place));
        }
        if (e.fit == bands::rodSideClearance && m_facts.layout &&
            !m_facts.layout->hasThrow(static_cast<int>(e.place))) {
            return refuse(Core::say("This engine has no throw %1: choose 1 to %2.", e.place, m_facts.layout->throws()));
        }
        return all({instrument(e.instrument), lengths({e.value.value}, Core::say("a fit"))});
    }
    Result<void> operator()(const CrankLaidIn&) const { return layoutKnown(); }
    Result<void> operator()(const FeelStudyBegun& e) const {
        if (m_facts.feelStudies.contains(e.study)) {
            return refuse(Core::say("There is a study %1 already: give this one the next number.", e.study));
        }
        if (!m_facts.people.empty() && !m_facts.people.contains(e.whose)) {
            return refuse(Core::say("This record knows no person “%1”: add them at the engine station first.", e.whose));
        }
        return all({words(e.whose, Core::say("whose feel is tried")), words(e.straightedge, Core::say("the straightedge")),
                    instrument(e.straightedge)});
    }
    Result<void> operator()(const FeelAnswer& e) const {
        if (!m_facts.feelStudies.contains(e.study)) {
            return refuse(Core::say("There is no study %1 of the feel: begin it first.", e.study));
        }
        return lengths({e.height.value}, Core::say("a step"));
    }
    Result<void> operator()(const PartChanged& e) const {
        if (e.part == Part::nutAndWasher) {
            const auto at = parsePosition(e.place);
            return at ? position(*at) : Result<void>(tl::unexpected(at.error()));
        }
        if (e.part == Part::shells) {
            const auto at = parseJournal(e.place);
            return at ? journal(*at) : Result<void>(tl::unexpected(at.error()));
        }
        if (!e.place.empty()) {
            return refuse(Core::say("There is one %1 only: leave the place empty.", shown(e.part)));
        }
        return {};
    }

    Result<void> operator()(const FastenerTightened& e) const {
        if (!e.torque && !e.angle && !e.stretch) {
            return refuse(
                Core::say("Say to what %1 was tightened: a torque, an angle or a stretch.", describe(e.fastener)));
        }
        const auto* group = m_facts.groupOf(e.fastener);
        if (group != nullptr && hasAngle(group->what.method) && e.torque && !e.angle) {
            return refuse(
                Core::say("%1 is tightened by torque and angle: give both, as 40 / 90.", describe(e.fastener)));
        }
        return all({fastener(e.fastener), instrument(e.instrument), torqueAndAngle(e.torque, e.angle)});
    }
    Result<void> operator()(const FastenerLoosened& e) const { return fastener(e.fastener); }
    Result<void> operator()(const ClampChecked& e) const {
        const auto thread = threadOf(m_facts, e.fastener);
        if (!thread) {
            return refuse(Core::say("The clamp of %1 is worked out from its thread, which is not known: set its group first.",
                                    describe(e.fastener)));
        }
        if (const auto clamp = clampFromTorques(e.on.value, e.off.value, *thread, unitsOfRefusals); !clamp) {
            return tl::unexpected(clamp.error());
        }
        return all({fastener(e.fastener), instrument(e.instrument)});
    }
    Result<void> operator()(const WasherWorked& e) const { return position(e.position); }

    Result<void> operator()(const RoundBegun& e) const {
        const std::int64_t next = m_facts.rounds.empty() ? 1 : m_facts.rounds.back().begun.what.round + 1;
        if (e.round != next) {
            return refuse(Core::say("The next verify round is number %1, not %2.", next, e.round));
        }
        if (!m_facts.layout) {
            return refuse(Core::say("A verify round needs to know the fasteners: set the engine layout first."));
        }
        return instrument(e.instrument);
    }
    Result<void> operator()(const RoundOutcome& e) const {
        if (m_facts.rounds.empty() || m_facts.rounds.back().begun.what.round != e.round) {
            return refuse(Core::say("Verify round %1 is not the one under way: begin it first.", e.round));
        }
        if (!isVerified(e.fastener.kind)) {
            return refuse(Core::say("A verify round pulls main-cap and rod fasteners, not %1.", describe(e.fastener)));
        }
        // One that counts for nothing does not stand in the way of one that does; a movement stays.
        const auto before = m_facts.rounds.back().outcomes.find(e.fastener);
        if (before != m_facts.rounds.back().outcomes.end() &&
            (before->second.what.outcome == Outcome::moved || !whyNotCounted(m_facts, before->second))) {
            return refuse(Core::say("%1 has its outcome in round %2 already: strike that entry if it is wrong.",
                                    describe(e.fastener), e.round));
        }
        if (e.outcome == Outcome::moved && (!e.angle || e.angle->value <= Angle())) {
            return refuse(Core::say("Say by what angle %1 moved, for example 4°.", describe(e.fastener)));
        }
        if (e.outcome == Outcome::held && e.angle && e.angle->value != Angle()) {
            return refuse(
                Core::say("%1 cannot have held and turned by an angle: enter it as moved.", describe(e.fastener)));
        }
        return all({fastener(e.fastener), instrument(e.instrument), torqueAndAngle(e.torque, e.angle)});
    }

    Result<void> operator()(const GapReading& e) const {
        if (e.pass < 1 || e.pass > 99) {
            return refuse(Core::say("Passes count from 1 to 99, not %1.", e.pass));
        }
        return all({position(e.position), instrument(e.instrument), lengths({e.gap.value}, Core::say("a gap"))});
    }
    Result<void> operator()(const ShimAdded& e) const {
        if (m_facts.shims.contains(e.shim)) {
            return refuse(Core::say("The kit has a shim %1 already: give this one another name.", e.shim));
        }
        return all({name(e.shim, Core::say("a shim")), positive(e.marked.value, Core::say("a shim's thickness"))});
    }
    Result<void> operator()(const ShimMeasured& e) const {
        return all(
            {shim(e.shim), instrument(e.instrument), positive(e.thickness.value, Core::say("a shim's thickness"))});
    }
    Result<void> operator()(const ShimSetAside& e) const {
        const auto at = m_facts.shims.find(e.shim);
        if (e.isAside && at != m_facts.shims.end() && at->second.inStackAt) {
            return refuse(Core::say("Shim %1 lies in the stack at %2: build that stack without it first.", e.shim,
                                    describe(*at->second.inStackAt)));
        }
        return shim(e.shim);
    }
    Result<void> operator()(const StackPinned& e) const {
        if (!e.isPinned) {
            return position(e.position);
        }
        for (const auto& [where, shims] : m_facts.pins) {
            for (const auto& pinned : shims) {
                if (where != e.position && std::ranges::find(e.shims.names, pinned) != e.shims.names.end()) {
                    return refuse(Core::say("Shim %1 is pinned to %2 already: take that pin away first.", pinned,
                                            describe(where)));
                }
            }
        }
        return all({position(e.position), distinctFreeShims(e.shims.names, e.position, false)});
    }
    Result<void> operator()(const StackBuilt& e) const {
        return all({position(e.position), distinctFreeShims(e.shims.names, e.position, true)});
    }
    Result<void> operator()(const StackMoved& e) const {
        const auto at = m_facts.stacks.find(e.position);
        if (at == m_facts.stacks.end()) {
            return refuse(Core::say("There is no stack at %1: build it first.", describe(e.position)));
        }
        if (e.move != StackMove::takenApart && at->second.isOn == (e.move == StackMove::putBack)) {
            return refuse(at->second.isOn ? Core::say("The stack at %1 is on already.", describe(e.position))
                                          : Core::say("The stack at %1 is off already.", describe(e.position)));
        }
        return position(e.position);
    }
    Result<void> operator()(const RecheckMade& e) const {
        const auto at = m_facts.stacks.find(e.position);
        if (at == m_facts.stacks.end() || !at->second.isOn) {
            return refuse(
                Core::say("There is no stack on %1 to lay the straightedge on: build it, or put it back, first.",
                          describe(e.position)));
        }
        return all({position(e.position), instrument(e.instrument)});
    }
    Result<void> operator()(const JudgedAgain& e) const {
        return words(e.check, Core::say("the check that is accepted again"));
    }

    Result<void> operator()(const GirdleWaySet&) const { return layoutKnown(); }
    Result<void> operator()(const TrialFitResult& e) const {
        if (isPerThrow(e.item) ? !m_facts.layout || !m_facts.layout->hasThrow(static_cast<int>(e.throwNumber))
                               : e.throwNumber != 0) {
            return refuse(
                "“" + std::string(word(e.item)) + "” " +
                (isPerThrow(e.item)
                     ? Core::say("is answered for each throw, and this engine has no throw %1.", e.throwNumber)
                     : Core::say("is answered once for the engine: leave the throw out.")));
        }
        if ((e.result == TrialResult::measured) != e.clearance.has_value()) {
            return refuse(
                Core::say("A measured clearance and only that carries a value: give it, or answer pass or fail."));
        }
        if (e.clearance && e.clearance->value < Length()) {
            return refuse(Core::say("A clearance cannot be below zero: where parts touch, answer fail."));
        }
        if (e.result == TrialResult::measured && !mayBeMeasured(e.item)) {
            return refuse(Core::say("“%1” is answered by pass or fail, not measured.", shown(e.item)));
        }
        return layoutKnown();
    }
    Result<void> operator()(const PickupReading& e) const {
        return all({instrument(e.instrument),
                    e.value.value < Length()
                        ? Result<void>(refuse(Core::say("A pickup term cannot be negative: measure it from the rail.")))
                        : Result<void>(),
                    lengths({e.value.value}, Core::say("a pickup term"))});
    }

    Result<void> operator()(const TurningTorqueRead& e) const {
        if (e.running.value > e.breakaway.value) {
            return refuse(Core::say("%1 to keep it turning is more than %2 to start it: give what starts it first.",
                                    format(e.running.value, unitsOfRefusals),
                                    format(e.breakaway.value, unitsOfRefusals)));
        }
        return all({layoutKnown(), instrument(e.instrument), torqueAndAngle(e.breakaway, {}),
                    torqueAndAngle(e.running, {})});
    }
    Result<void> operator()(const OwnCheckSet& e) const {
        if (e.places < 0 || e.places > 99) {
            return refuse(Core::say("A check has 1 to 99 places, or none to withdraw it, not %1.", e.places));
        }
        if ((e.holds == OwnCheckHolds::closingStep) != e.step.has_value()) {
            return refuse(Core::say("Say which closing step the check holds, for a check among the steps and only then."));
        }
        if ((e.sort == OwnCheckSort::measured) != (e.lo && e.hi) || e.lo.has_value() != e.hi.has_value()) {
            return refuse(Core::say("A measured check has a band, from and to, and the others have none."));
        }
        if (const auto band = e.lo ? Band::between(e.lo->value, e.hi->value) : Result<Band>(Band::between({}, {}));
            !band) {
            return tl::unexpected(band.error());
        }
        return all({name(e.ownCheck, Core::say("a check")), words(e.words, Core::say("what is looked at")),
                    e.lo ? lengths({e.lo->value, e.hi->value}, Core::say("a band")) : Result<void>()});
    }
    Result<void> operator()(const OwnCheckAnswered& e) const {
        const auto* set = m_facts.ownCheckNamed(e.ownCheck);
        if (set == nullptr || e.place < 1 || e.place > set->what.places) {
            return refuse(Core::say("This record asks no check “%1” at place %2: set it first.", e.ownCheck, e.place));
        }
        const OwnCheckSort sort = set->what.sort;
        if (e.answer.has_value() != (sort == OwnCheckSort::yesNo) ||
            e.value.has_value() != (sort == OwnCheckSort::measured) ||
            e.photo.has_value() != (sort == OwnCheckSort::photo)) {
            return refuse(Core::say("“%1” is answered by %2: give that and nothing else.", set->what.words, shown(sort)));
        }
        if (e.photo && std::ranges::none_of(m_facts.attachments,
                                            [&](const auto& one) { return one.what.sha256 == *e.photo; })) {
            return refuse(Core::say("That photo is not in this record: add it first."));
        }
        return all({instrument(e.instrument),
                    e.value ? lengths({e.value->value}, Core::say("a reading")) : Result<void>()});
    }

    Result<void> operator()(const FindingOpened& e) const {
        if (m_facts.findings.contains(e.finding)) {
            return refuse(Core::say("There is a finding %1 already: give this one the next number.", e.finding));
        }
        return all({name(e.finding, Core::say("a finding")), words(e.text, Core::say("the finding"))});
    }
    Result<void> operator()(const FindingSettled& e) const {
        const auto at = m_facts.findings.find(e.finding);
        if (at == m_facts.findings.end()) {
            return refuse(Core::say("There is no finding %1 in this record.", e.finding));
        }
        if (at->second.settled) {
            return refuse(Core::say("Finding %1 is settled already: open a new one.", e.finding));
        }
        return words(e.done, Core::say("what was done about %1", e.finding));
    }
    Result<void> operator()(const NoteAdded& e) const { return words(e.text, Core::say("the note")); }
    Result<void> operator()(const AttachmentAdded& e) const {
        if (const auto hash = sealFromHex(e.sha256); !hash || e.size < 0) {
            return refuse(Core::say("The attachment “%1” carries no proper SHA-256 hash or size.", e.fileName));
        }
        return words(e.fileName, Core::say("the attachment's file name"));
    }

    Result<void> operator()(const ClosingStepDone& e) const { return mayBeDone(m_facts, e); }
    Result<void> operator()(const SignedOff&) const {
        if (const auto step = nextClosingStepOf(m_facts, unitsOfRefusals)) {
            return refuse(Core::say("The record cannot be signed off before “%1” is done.", shown(*step)));
        }
        return m_facts.isClosed() ? Result<void>(refuse(Core::say("This build is signed off already.")))
                                  : Result<void>();
    }
    Result<void> operator()(const BuildBegun& e) const {
        if (!m_facts.isClosed()) {
            return refuse(
                Core::say("A new build begins when the one before is signed off: finish and sign this one first."));
        }
        if (e.build != m_facts.build + 1) {
            return refuse(Core::say("The next build of this engine is number %1.", m_facts.build + 1));
        }
        return words(e.why, Core::say("why the engine is built again"));
    }
    Result<void> operator()(const Salvaged& e) const {
        if (const auto hash = sealFromHex(e.sha256); !hash || e.size < 0) {
            return refuse(Core::say("The salvage of “%1” carries no proper SHA-256 hash or size.", e.fileName));
        }
        return words(e.fileName, Core::say("the name of the file that was salvaged"));
    }
    Result<void> operator()(const PartEntered& e) const {
        if (e.sort == PartSort::other && e.what.empty()) {
            return refuse(Core::say("Say what the part is: “%1” alone names none.", shown(e.sort)));
        }
        if (!e.place.empty() && !parsePosition(e.place) && !parseJournal(e.place) && !parseFastener(e.place)) {
            return refuse(Core::say("“%1” is not a place of an engine: write a position, a bearing or a fastener as 3R, main-3 "
                                    "or main-3R, or leave the place empty.",
                                    e.place));
        }
        if (e.timesTightened && (*e.timesTightened < 0 || *e.timesTightened > 999)) {
            return refuse(Core::say("A fastener was tightened 0 to 999 times before, not %1.", *e.timesTightened));
        }
        if (e.isNew.value_or(false) && e.timesTightened && *e.timesTightened > 0) {
            return refuse(Core::say("A new fastener was not tightened before: say that it is used, or leave the count out."));
        }
        if (e.photo && !e.photo->empty() && std::ranges::none_of(m_facts.attachments, [&](const auto& one) {
                return one.what.sha256 == *e.photo;
            })) {
            return refuse(Core::say("That photo is not in this record: add it first."));
        }
        return {};
    }
    Result<void> operator()(const ZeroChecked& e) const {
        return all({name(e.instrument, Core::say("an instrument")), instrument(e.instrument),
                    words(e.standard, Core::say("the standard that %1 was tried on", e.instrument)),
                    lengths({e.nominal.value, e.reading.value}, Core::say("a reading"))});
    }
    Result<void> operator()(const ValueConfirmed& e) const {
        const auto values = valuesOf(m_facts);
        if (std::ranges::find(values, e.value, &ValueStanding::code) == values.end()) {
            return refuse(Core::say("This record has no value “%1”: “caprail show” lists the values and their codes.", e.value));
        }
        if (!namesSomebody(e.source)) {
            return refuse(Core::say("Say whose figure it is: a maker's sheet, a drawing, or a person by name."));
        }
        return {};
    }
    Result<void> operator()(const BroughtIn& e) const {
        if (const auto hash = sealFromHex(e.sha256); !hash || e.count < 1) {
            return refuse(Core::say("The entry about what was brought in carries no proper SHA-256 hash or count."));
        }
        return {};
    }
    Result<void> operator()(const SealSigned& e) const { return verify(e); }
    Result<void> operator()(const Struck& e) const { return words(e.why, Core::say("why the entry is struck")); }

private:
    static Result<void> all(std::initializer_list<Result<void>> conditions) {
        const auto bad = std::ranges::find_if(conditions, [](const auto& c) { return !c; });
        return bad == conditions.end() ? Result<void>() : *bad;
    }

    static Result<void> lengths(std::initializer_list<Length> values, const std::string& what) {
        for (const Length l : values) {
            if (l.magnitude() > longest) {
                return refuse(
                    Core::say("%1 is too large for %2 of any engine: correct it.", format(l, unitsOfRefusals), what));
            }
        }
        return {};
    }
    static Result<void> positive(Length l, const std::string& what) {
        if (l <= Length()) {
            return refuse(Core::say("%1 cannot be %2: it must be more than zero.", format(l, unitsOfRefusals), what));
        }
        return lengths({l}, what);
    }
    static Result<void> torqueAndAngle(const std::optional<Entered<Torque>>& torque,
                                       const std::optional<Entered<Angle>>& angle) {
        if (torque && (torque->value <= Torque() || torque->value > hardest)) {
            return refuse(Core::say("%1 cannot be a torque on this engine: it must be more than zero and at most %2.",
                                    format(torque->value, unitsOfRefusals), format(hardest, unitsOfRefusals)));
        }
        if (angle && (angle->value < Angle() || angle->value > degrees(1080))) {
            return refuse(Core::say("%1 cannot be an angle of tightening: it must be 0 to three turns.",
                                    format(angle->value, unitsOfRefusals)));
        }
        return {};
    }
    Result<void> distinctFreeShims(const std::vector<std::string>& names, Position at, bool isBuilt) const {
        std::set<std::string> seen;
        for (const auto& shimName : names) {
            if (auto known = shim(shimName); !known) {
                return known;
            }
            if (!seen.insert(shimName).second) {
                return refuse(Core::say("Shim %1 is named twice in the stack at %2: there is one of it.", shimName,
                                        describe(at)));
            }
            const ShimFact& fact = m_facts.shims.find(shimName)->second;
            if (fact.isSetAside) {
                return refuse(Core::say("Shim %1 is set aside%2: take it back into the kit first.", shimName,
                                        (fact.whyAside.empty() ? "" : " (" + fact.whyAside + ")")));
            }
            if (isBuilt && fact.inStackAt && *fact.inStackAt != at) {
                return refuse(
                    Core::say("Shim %1 lies in the stack at %2 already: the same shim cannot be in two stacks.",
                              shimName, describe(*fact.inStackAt)));
            }
        }
        return {};
    }
};

} // namespace

Result<void> makesSense(const Facts& facts, const Body& body) {
    return body.visit(Admission(facts));
}

Result<void> admit(const Facts& facts, std::string_view person, const Body& body) {
    if (person.empty()) {
        return refuse(Core::say("Say who makes this entry: every entry carries a person's name."));
    }
    if (auto seen = checkTexts(person, body); !seen) {
        return seen;
    }
    // Who adds the first person is that person; a salvage and an import are made by the program.
    if (!facts.people.empty() && facts.people.find(person) == facts.people.end() &&
        !isAnyOf<PersonAdded, Salvaged, BroughtIn>(body)) {
        return refuse(Core::say("This record knows no person “%1”: add them at the engine station first.", person));
    }
    return makesSense(facts, body);
}

} // namespace caprail
