// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/admission.h>
#include <assessment/known_places.h>

#include <algorithm>
#include <ledger/band_names.h>
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
        return refuse("“" + text + "” does not do as the name of " + what + ": use 1 to 60 characters without spaces.");
    }
    return {};
}

Result<void> words(const std::string& text, const std::string& what) {
    if (text.find_first_not_of(" \t\n\r") == std::string::npos) {
        return refuse("There is nothing written for " + what + ": say it in a few words.");
    }
    return {};
}

/// One overload per kind; the first thing that is wrong is said.
class Admission : private KnownPlaces {
public:
    explicit Admission(const Facts& facts) : KnownPlaces(facts) {}

    Result<void> operator()(const EngineDescribed& e) const { return words(e.engine, "the engine"); }

    Result<void> operator()(const LayoutSet& e) const {
        const auto layout = EngineLayout::from(e);
        if (!layout) {
            return tl::unexpected(layout.error());
        }
        return noPlaceIsLost(*layout);
    }

    Result<void> operator()(const BandSet& e) const {
        if (auto named = words(e.band, "the band's name"); !named) {
            return named;
        }
        const auto band = Band::between(e.lo.value, e.hi.value);
        if (!band) {
            return tl::unexpected(band.error());
        }
        if (e.target && !band->contains(e.target->value)) {
            return refuse("The target " + format(e.target->value, unitsOfRefusals) + " lies outside the band “" +
                          e.band + "”, " + format(*band, unitsOfRefusals) + ": choose one inside it.");
        }
        return lengths({e.lo.value, e.hi.value}, "a band");
    }

    Result<void> operator()(const RulesSet& e) const {
        if (e.repeatLimit <= Length() || e.kitTolerance <= Length() || e.minimumPasses < 1 || e.minimumPasses > 20 ||
            e.largestStack < 0 || e.largestStack > 50 || e.torqueScatterPercent < 0 || e.torqueScatterPercent > 90 ||
            e.counterweightMinimum < Length()) {
            return refuse("The rules hold a value that cannot be: limits must be positive, passes 1 to 20, shims per "
                          "stack 0 to 50, torque scatter 0 to 90 %.");
        }
        return {};
    }

    Result<void> operator()(const FastenerGroupSet& e) const {
        if (e.count < 1 || e.count > 200) {
            return refuse("A fastener group has 1 to 200 fasteners, not " + std::to_string(e.count) + ".");
        }
        if (e.steps < 1 || e.steps > 10) {
            return refuse("Fasteners are tightened in 1 to 10 steps, not " + std::to_string(e.steps) + ".");
        }
        if (e.method == TighteningMethod::stretch ? !e.stretch : !e.torque) {
            return refuse("The group “" + std::string(word(e.group)) + "” is tightened by " +
                          std::string(word(e.method)) + ", but no such value was given: give it.");
        }
        if (e.method == TighteningMethod::torqueAndAngle && !e.angle) {
            return refuse("The group “" + std::string(word(e.group)) +
                          "” is tightened by torque and angle, but no angle was given: give it.");
        }
        std::set<std::string> seen;
        for (const auto& member : e.sequence.names) {
            const auto fastener = parseFastener(member);
            if (!fastener) {
                return tl::unexpected(fastener.error());
            }
            if (fastener->kind != e.group || !seen.insert(member).second) {
                return refuse("The sequence names " + member +
                              (fastener->kind == e.group ? " twice" : ", which is of another group") +
                              ": name each fastener of the group once.");
            }
        }
        return torqueAndAngle(e.torque, e.angle);
    }

    Result<void> operator()(const PersonAdded& e) const { return words(e.name, "the person's name"); }

    Result<void> operator()(const InstrumentAdded& e) const {
        if (auto named = name(e.instrument, "an instrument"); !named) {
            return named;
        }
        if (e.smallestTorque && e.largestTorque && e.smallestTorque->value > e.largestTorque->value) {
            return refuse("The wrench " + e.instrument +
                          " would reach from a larger torque to a smaller one: give the smaller first.");
        }
        if (e.calibrated && e.due && *e.due < *e.calibrated) {
            return refuse("The instrument " + e.instrument + " would be due on " + format(*e.due) +
                          ", before it was calibrated on " + format(*e.calibrated) + ": correct one of the dates.");
        }
        if ((e.dueCycles && *e.dueCycles < 1) || (e.cycles && *e.cycles < 0)) {
            return refuse("The cycles of " + e.instrument + " cannot be negative: give counts of pulls.");
        }
        return {};
    }

    Result<void> operator()(const JournalReading& e) const {
        if (e.station < 1 || e.station > 9 || e.direction < 1 || e.direction > 9) {
            return refuse("A journal is measured at stations 1 to 9 in directions 1 to 9: correct the place on it.");
        }
        return all({journal(e.journal), instrument(e.instrument), positive(e.diameter.value, "a journal's diameter")});
    }
    Result<void> operator()(const BoreReading& e) const {
        if (e.station < 1 || e.station > 9) {
            return refuse("A bore is measured at stations 1 to 9: correct the place in it.");
        }
        return all({journal(e.journal), instrument(e.instrument), positive(e.value.value, "a bore")});
    }
    Result<void> operator()(const ShellMeasured& e) const {
        return all(
            {name(e.shell, "a shell"), instrument(e.instrument), positive(e.thickness.value, "a shell's thickness")});
    }
    Result<void> operator()(const ShellsFitted& e) const {
        if (e.upper == e.lower) {
            return refuse("Shell " + e.upper + " cannot be both the upper and the lower one: name two shells.");
        }
        for (const auto& shell : {e.upper, e.lower}) {
            if (!m_facts.shells.contains(shell)) {
                return refuse("The shelf has no shell " + shell + ": enter its thickness first.");
            }
            for (const auto& [where, fitted] : m_facts.shellsFitted) {
                if (where != e.journal && (fitted.what.upper == shell || fitted.what.lower == shell)) {
                    return refuse("Shell " + shell + " already lies in " + describe(where) + ": take another one.");
                }
            }
        }
        return journal(e.journal);
    }
    Result<void> operator()(const FitReading& e) const {
        if (!bands::isFit(e.fit) || m_facts.bandNamed(e.fit) == nullptr) {
            return refuse("There is no fit “" + e.fit + "” in this record: set its band first.");
        }
        if (e.place < 1 || e.place > 99) {
            return refuse("A fit is read at place 1 to 99, not " + std::to_string(e.place) + ".");
        }
        if (e.fit == bands::rodSideClearance && m_facts.layout &&
            !m_facts.layout->hasThrow(static_cast<int>(e.place))) {
            return refuse("This engine has no throw " + std::to_string(e.place) + ": choose 1 to " +
                          std::to_string(m_facts.layout->throws()) + ".");
        }
        return all({instrument(e.instrument), lengths({e.value.value}, "a fit")});
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
            return refuse("There is one " + std::string(word(e.part)) + " only: leave the place empty.");
        }
        return {};
    }

    Result<void> operator()(const FastenerTightened& e) const {
        if (!e.torque && !e.angle && !e.stretch) {
            return refuse("Say to what " + describe(e.fastener) + " was tightened: a torque, an angle or a stretch.");
        }
        return all({fastener(e.fastener), instrument(e.instrument), torqueAndAngle(e.torque, e.angle)});
    }
    Result<void> operator()(const FastenerLoosened& e) const { return fastener(e.fastener); }

    Result<void> operator()(const RoundBegun& e) const {
        const std::int64_t next = m_facts.rounds.empty() ? 1 : m_facts.rounds.back().begun.what.round + 1;
        if (e.round != next) {
            return refuse("The next verify round is number " + std::to_string(next) + ", not " +
                          std::to_string(e.round) + ".");
        }
        if (!m_facts.layout) {
            return refuse("A verify round needs to know the fasteners: set the engine layout first.");
        }
        return instrument(e.instrument);
    }
    Result<void> operator()(const RoundOutcome& e) const {
        if (m_facts.rounds.empty() || m_facts.rounds.back().begun.what.round != e.round) {
            return refuse("Verify round " + std::to_string(e.round) + " is not the one under way: begin it first.");
        }
        if (!isVerified(e.fastener.kind)) {
            return refuse("A verify round pulls main-cap and rod fasteners, not " + describe(e.fastener) + ".");
        }
        if (m_facts.rounds.back().outcomes.contains(e.fastener)) {
            return refuse(describe(e.fastener) + " has its outcome in round " + std::to_string(e.round) +
                          " already: strike that entry if it is wrong.");
        }
        if (e.outcome == Outcome::moved && (!e.angle || e.angle->value <= Angle())) {
            return refuse("Say by what angle " + describe(e.fastener) + " moved, for example 4°.");
        }
        if (e.outcome == Outcome::held && e.angle && e.angle->value != Angle()) {
            return refuse(describe(e.fastener) + " cannot have held and turned by an angle: enter it as moved.");
        }
        return all({fastener(e.fastener), instrument(e.instrument), torqueAndAngle(e.torque, e.angle)});
    }

    Result<void> operator()(const GapReading& e) const {
        if (e.pass < 1 || e.pass > 99) {
            return refuse("Passes count from 1 to 99, not " + std::to_string(e.pass) + ".");
        }
        return all({position(e.position), instrument(e.instrument), lengths({e.gap.value}, "a gap")});
    }
    Result<void> operator()(const ShimAdded& e) const {
        if (m_facts.shims.contains(e.shim)) {
            return refuse("The kit has a shim " + e.shim + " already: give this one another name.");
        }
        return all({name(e.shim, "a shim"), positive(e.marked.value, "a shim's thickness")});
    }
    Result<void> operator()(const ShimMeasured& e) const {
        return all({shim(e.shim), instrument(e.instrument), positive(e.thickness.value, "a shim's thickness")});
    }
    Result<void> operator()(const ShimSetAside& e) const {
        const auto at = m_facts.shims.find(e.shim);
        if (e.isAside && at != m_facts.shims.end() && at->second.inStackAt) {
            return refuse("Shim " + e.shim + " lies in the stack at " + describe(*at->second.inStackAt) +
                          ": build that stack without it first.");
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
                    return refuse("Shim " + pinned + " is pinned to " + describe(where) +
                                  " already: take that pin away first.");
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
            return refuse("There is no stack at " + describe(e.position) + ": build it first.");
        }
        if (e.move != StackMove::takenApart && at->second.isOn == (e.move == StackMove::putBack)) {
            return refuse("The stack at " + describe(e.position) + " is " + (at->second.isOn ? "on" : "off") +
                          " already.");
        }
        return position(e.position);
    }
    Result<void> operator()(const RecheckMade& e) const {
        const auto at = m_facts.stacks.find(e.position);
        if (at == m_facts.stacks.end() || !at->second.isOn) {
            return refuse("There is no stack on " + describe(e.position) +
                          " to lay the straightedge on: build it, or put it back, first.");
        }
        return all({position(e.position), instrument(e.instrument)});
    }
    Result<void> operator()(const JudgedAgain& e) const { return words(e.check, "the check that is judged again"); }

    Result<void> operator()(const GirdleWaySet&) const { return layoutKnown(); }
    Result<void> operator()(const TrialFitResult& e) const {
        if (isPerThrow(e.item) ? !m_facts.layout || !m_facts.layout->hasThrow(static_cast<int>(e.throwNumber))
                               : e.throwNumber != 0) {
            return refuse("“" + std::string(word(e.item)) + "” " +
                          (isPerThrow(e.item) ? "is answered for each throw, and this engine has no throw " +
                                                    std::to_string(e.throwNumber) + "."
                                              : "is answered once for the engine: leave the throw out."));
        }
        if ((e.result == TrialResult::measured) != e.clearance.has_value()) {
            return refuse("A measured clearance and only that carries a value: give it, or answer pass or fail.");
        }
        if (e.clearance && e.clearance->value < Length()) {
            return refuse("A clearance cannot be below zero: where parts touch, answer fail.");
        }
        if (e.result == TrialResult::measured && (e.item == TrialItem::turnsFreely || e.item == TrialItem::keyway)) {
            return refuse("“" + std::string(word(e.item)) + "” is answered by pass or fail, not measured.");
        }
        return layoutKnown();
    }
    Result<void> operator()(const PickupReading& e) const {
        return all({instrument(e.instrument),
                    e.value.value < Length()
                        ? Result<void>(refuse("A pickup term cannot be negative: measure it from the rail."))
                        : Result<void>(),
                    lengths({e.value.value}, "a pickup term")});
    }

    Result<void> operator()(const FindingOpened& e) const {
        if (m_facts.findings.contains(e.finding)) {
            return refuse("There is a finding " + e.finding + " already: give this one the next number.");
        }
        return all({name(e.finding, "a finding"), words(e.text, "the finding")});
    }
    Result<void> operator()(const FindingSettled& e) const {
        const auto at = m_facts.findings.find(e.finding);
        if (at == m_facts.findings.end()) {
            return refuse("There is no finding " + e.finding + " in this record.");
        }
        if (at->second.settled) {
            return refuse("Finding " + e.finding + " is settled already: open a new one.");
        }
        return words(e.done, "what was done about " + e.finding);
    }
    Result<void> operator()(const NoteAdded& e) const { return words(e.text, "the note"); }
    Result<void> operator()(const AttachmentAdded& e) const {
        if (const auto hash = sealFromHex(e.sha256); !hash || e.size < 0) {
            return refuse("The attachment “" + e.fileName + "” carries no proper SHA-256 hash or size.");
        }
        return words(e.fileName, "the attachment's file name");
    }

    Result<void> operator()(const ClosingStepDone& e) const {
        if (m_facts.closing.contains(e.step)) {
            return refuse("“" + std::string(word(e.step)) + "” is ticked already: strike that entry if it is wrong.");
        }
        for (const auto& step : allWords<ClosingStep>()) {
            if (step.value == e.step) {
                break;
            }
            if (!m_facts.closing.contains(step.value)) {
                return refuse("“" + std::string(word(e.step)) + "” comes after “" + std::string(step.word) +
                              "”: do that first.");
            }
        }
        if (e.openMinutes && (*e.openMinutes < 1 || *e.openMinutes > 1440)) {
            return refuse("The sealant's open time is given in minutes, 1 to 1440.");
        }
        return {};
    }
    Result<void> operator()(const SignedOff&) const {
        for (const auto& step : allWords<ClosingStep>()) {
            if (!m_facts.closing.contains(step.value)) {
                return refuse("The record cannot be signed off before “" + std::string(step.word) + "” is done.");
            }
        }
        return m_facts.isClosed() ? Result<void>(refuse("This build is signed off already.")) : Result<void>();
    }
    Result<void> operator()(const BuildBegun& e) const {
        if (!m_facts.isClosed()) {
            return refuse("A new build begins when the one before is signed off: finish and sign this one first.");
        }
        if (e.build != m_facts.build + 1) {
            return refuse("The next build of this engine is number " + std::to_string(m_facts.build + 1) + ".");
        }
        return words(e.why, "why the engine is built anew");
    }
    Result<void> operator()(const Struck& e) const { return words(e.why, "why the entry is struck"); }

private:
    static Result<void> all(std::initializer_list<Result<void>> conditions) {
        const auto bad = std::ranges::find_if(conditions, [](const auto& c) { return !c; });
        return bad == conditions.end() ? Result<void>() : *bad;
    }

    static Result<void> lengths(std::initializer_list<Length> values, const std::string& what) {
        for (const Length l : values) {
            if (l.magnitude() > longest) {
                return refuse(format(l, unitsOfRefusals) + " is too large for " + what + " of any engine: correct it.");
            }
        }
        return {};
    }
    static Result<void> positive(Length l, const std::string& what) {
        if (l <= Length()) {
            return refuse(format(l, unitsOfRefusals) + " cannot be " + what + ": it must be more than zero.");
        }
        return lengths({l}, what);
    }
    static Result<void> torqueAndAngle(const std::optional<Entered<Torque>>& torque,
                                       const std::optional<Entered<Angle>>& angle) {
        if (torque && (torque->value <= Torque() || torque->value > hardest)) {
            return refuse(format(torque->value, unitsOfRefusals) +
                          " cannot be a torque on this engine: it must be more than zero and at most " +
                          format(hardest, unitsOfRefusals) + ".");
        }
        if (angle && (angle->value < Angle() || angle->value > degrees(1080))) {
            return refuse(format(angle->value, unitsOfRefusals) +
                          " cannot be an angle of tightening: it must be 0 to three turns.");
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
                return refuse("Shim " + shimName + " is named twice in the stack at " + describe(at) +
                              ": there is one of it.");
            }
            const ShimFact& fact = m_facts.shims.find(shimName)->second;
            if (fact.isSetAside) {
                return refuse("Shim " + shimName + " is set aside" +
                              (fact.whyAside.empty() ? "" : " (" + fact.whyAside + ")") +
                              ": take it back into the kit first.");
            }
            if (isBuilt && fact.inStackAt && *fact.inStackAt != at) {
                return refuse("Shim " + shimName + " lies in the stack at " + describe(*fact.inStackAt) +
                              " already: the same shim cannot be in two stacks.");
            }
        }
        return {};
    }
};

} // namespace

Result<void> admit(const Facts& facts, std::string_view person, const Body& body) {
    if (person.empty()) {
        return refuse("Say who makes this entry: every entry carries a person's name.");
    }
    if (!facts.people.empty() && facts.people.find(person) == facts.people.end() &&
        !std::holds_alternative<PersonAdded>(body)) {
        return refuse("This record knows no person “" + std::string(person) +
                      "”: add them at the engine station first.");
    }
    return std::visit(Admission(facts), body);
}

} // namespace caprail
