// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/facts.h>

#include <algorithm>
#include <assessment/described_girdle.h>
#include <assessment/fastener_groups.h>
#include <assessment/judged_before.h>
#include <assessment/program_findings.h>
#include <assessment/rule_values.h>
#include <assessment/specified.h>
#include <assessment/work_order.h>
#include <base/say.h>
#include <ledger/band_names.h>
#include <ledger/typed_values.h>

namespace caprail {

namespace {

/// Folds one entry into the facts. Each overload says what one kind of entry changes.
class Fold {
public:
    Fold(Facts& facts, const Entry& entry)
        : m_facts(facts), m_entry(entry), m_judgedBefore(judgedBefore(facts, entry.body)) {}

    void operator()(const EngineDescribed& e) { m_facts.engine = seen(e); }

    void operator()(const LayoutSet& e) {
        if (auto layout = EngineLayout::from(e)) {
            const bool isNew = m_facts.layout && m_facts.layout->description() != layout->description();
            if (isNew) {
                changed(Topic::layout, {}, LayoutSetAnew{});
                voidRounds(FastenerKind::mainCap, LayoutSetAnew{});
            }
            m_facts.layout = *layout;
            m_facts.layoutEntry = m_entry.sequence;
            // What cannot be (an import may hold it) is not known.
            const DescribedGirdle girdle = describedGirdle(e, *layout).value_or(DescribedGirdle());
            m_facts.girdlePlate = girdle.plate;
            m_facts.girdleShape = girdle.shape;
        }
    }

    void operator()(const BandSet& e) {
        const auto band = Band::between(e.lo.value, e.hi.value);
        if (!band) {
            return;
        }
        BandFact fact{*band, {}, e.source, m_entry.sequence};
        if (e.target) {
            fact.target = e.target->value;
        }
        const auto before = m_facts.bands.find(e.band);
        if (before != m_facts.bands.end() && before->second.band != fact.band) {
            const Band from = before->second.band;
            changed(Topic::band, e.band, BandSetTo{e.band, *band});
            valueChanged("band:" + e.band);
            if (m_judgedBefore != 0) {
                const bool isWider = band->lo() < from.lo() || band->hi() > from.hi();
                deviates(BandChanged{e.band, from, *band, isWider, m_judgedBefore, e.why.value_or("")});
            }
        }
        m_facts.bands[e.band] = fact;
    }

    void operator()(const RulesSet& e) {
        if (m_judgedBefore != 0) {
            deviates(RulesChanged{m_judgedBefore, m_facts.rules, e});
        }
        for (const std::string_view field : changedRules(m_facts.rules, e)) {
            valueChanged("rule:" + std::string(field));
        }
        m_facts.rules = e;
        m_facts.rules.why.reset(); // of this change, not of the next
        m_facts.rulesEntry = m_entry.sequence;
        reviewProof(m_facts);
    }

    void operator()(const FastenerGroupSet& e) {
        // What changes is what is asked of each fastener: a group that takes over a place with the same values changes
        // nothing there.
        std::map<FastenerId, std::optional<FastenerGroupSet>> before;
        for (const FastenerId f : fastenersOf(m_facts, e.group)) {
            const auto* group = m_facts.groupOf(f);
            before.emplace(f, group == nullptr ? std::nullopt : std::optional(group->what));
        }
        const auto known = m_facts.groups.find(keyOf(e));
        if (known != m_facts.groups.end() && !asksForTheSame(known->second.what, e)) {
            valueChanged(codeOf(keyOf(e)));
        }
        m_facts.groups.insert_or_assign(keyOf(e), seen(e));
        bool isOther = false;
        for (const auto& [f, was] : before) {
            const auto* is = m_facts.groupOf(f);
            if (was && (is == nullptr || !asksForTheSame(*was, is->what))) {
                changed(Topic::groupValue, f, GroupSetAnew{e.group});
                if (!isOther && m_judgedBefore != 0) {
                    deviates(GroupChanged{*was, e, m_judgedBefore});
                }
                isOther = true;
            }
        }
        if (isOther) {
            voidRounds(e.group, GroupSetAnew{e.group});
        }
        reviewProof(m_facts);
    }

    void operator()(const PersonAdded& e) { m_facts.people.insert_or_assign(e.name, e); }
    void operator()(const InstrumentAdded& e) {
        auto& statements = m_facts.instruments[e.instrument].statements;
        if (!statements.empty() && e.corrects && !e.corrects->empty()) {
            deviates(InstrumentCorrected{e.instrument, *e.corrects});
        }
        statements.push_back(seen(e));
    }
    void operator()(const JournalReading& e) { m_facts.journals[e.journal].push_back(seen(e)); }
    void operator()(const BoreReading& e) { m_facts.bores[e.journal].push_back(seen(e)); }
    void operator()(const ShellMeasured& e) { m_facts.shells[e.shell].push_back(seen(e)); }

    void operator()(const ShellsFitted& e) {
        const auto before = m_facts.shellsFitted.find(e.journal);
        if (before != m_facts.shellsFitted.end() &&
            (before->second.what.upper != e.upper || before->second.what.lower != e.lower)) {
            changed(Topic::shells, e.journal, OtherShells{e.journal});
        }
        if (m_judgedBefore != 0) {
            deviates(ShellsExchanged{e.journal, e.why.value_or(""), m_judgedBefore});
        }
        m_facts.shellsFitted.insert_or_assign(e.journal, seen(e));
    }

    void operator()(const FitReading& e) { m_facts.fits[{e.fit, e.place}].push_back(seen(e)); }

    void operator()(const PartChanged& e) {
        About about;
        if (const auto position = parsePosition(e.place); position && e.part == Part::nutAndWasher) {
            about = *position;
        } else if (const auto journal = parseJournal(e.place); journal && e.part == Part::shells) {
            about = *journal;
        }
        changed(topicOf(e.part), about, OtherPart{e.part, e.place, e.what});
        if (m_judgedBefore != 0) {
            deviates(PartReplaced{e.part, e.place, e.what, m_judgedBefore});
        }
    }

    void operator()(const CrankLaidIn& e) {
        const bool hasMoved = m_facts.crank && m_facts.crank->what.isIn != e.isIn;
        m_facts.crank = seen(e);
        if (hasMoved) {
            changed(Topic::crankLaid, {}, CrankMoved{e.isIn});
            voidRounds(FastenerKind::mainCap, CrankMoved{e.isIn});
        }
    }

    void operator()(const FastenerTightened& e) {
        FastenerFact& fact = m_facts.fasteners[e.fastener];
        const bool sameTorque = fact.tightened && fact.tightened->what.torque && e.torque &&
                                fact.tightened->what.torque->value == e.torque->value;
        fastenerTurned(e.fastener, Tightened{e.fastener});
        // Pulling to the same torque again gives the same clamp; another torque gives another bore.
        if (fact.tightened && !sameTorque) {
            torqueChanged(e.fastener);
        }
        fact.tightened = seen(e);
        fact.isLoose = false;
        countTightening(m_facts, *fact.tightened);
        countPull(e.instrument);
    }

    void operator()(const FastenerLoosened& e) {
        if (m_judgedBefore != 0) {
            deviates(FastenerLetOff{e.fastener, e.why, m_judgedBefore});
        }
        fastenerTurned(e.fastener, Loosened{e.fastener});
        m_facts.fasteners[e.fastener].isLoose = true;
    }

    /// It was turned back for that: whatever rests on it being tight no longer stands.
    void operator()(const ClampChecked& e) {
        fastenerTurned(e.fastener, Loosened{e.fastener});
        FastenerFact& fact = m_facts.fasteners[e.fastener];
        fact.isLoose = true;
        fact.clamps.push_back(seen(e));
        countPull(e.instrument);
    }

    void operator()(const WasherWorked& e) {
        changed(Topic::nutAndWasher, e.position, WasherWorkedOn{e.position, e.work});
        if (m_judgedBefore != 0) {
            deviates(WasherChanged{e.position, e.work, e.note, m_judgedBefore});
        }
    }

    void operator()(const RoundBegun& e) {
        RoundFact round{seen(e), {}, {}};
        girdleLifted();
        if (const auto on = m_facts.stacksOn(); !on.empty()) {
            round.voidedBy = {m_entry.sequence, StackWasOn{on.front()}};
        }
        m_facts.rounds.push_back(std::move(round));
    }

    void operator()(const RoundOutcome& e) {
        // From the end: it is nearly always the last, and a long record has thousands.
        const auto round = std::find_if(m_facts.rounds.rbegin(), m_facts.rounds.rend(),
                                        [&](const RoundFact& r) { return r.begun.what.round == e.round; });
        if (round != m_facts.rounds.rend()) {
            round->outcomes.insert_or_assign(e.fastener, seen(e));
        }
        if (e.outcome == Outcome::moved && isVerified(e.fastener.kind)) {
            const MovedInRound cause{e.fastener, e.angle ? std::optional(e.angle->value) : std::nullopt, e.round};
            if (e.fastener.kind == FastenerKind::mainCap) {
                changed(Topic::capMovement, bearingOf(e.fastener), cause);
            }
            changed(Topic::roundMovement, bearingOf(e.fastener), cause);
            deviates(FoundMoved{e.fastener, cause.angle, e.round});
        }
        countPull(e.instrument);
    }

    void operator()(const GapReading& e) {
        // The accepted gap is the median of the current readings; only another value of it is a change.
        std::vector<std::int64_t>& current = currentValues(e.position);
        const auto before = doubledMedian(current);
        girdleLifted();
        m_facts.gaps[e.position].push_back(seen(e));
        const std::int64_t value = e.value().value();
        current.insert(std::ranges::upper_bound(current, value), value);
        if (before != doubledMedian(current)) {
            changed(Topic::gap, e.position, GapReadAgain{e.position});
        }
    }

    void operator()(const ShimAdded& e) {
        m_facts.shims.insert_or_assign(e.shim, ShimFact{seen(e), {}, false, {}, {}});
    }

    void operator()(const ShimMeasured& e) {
        const auto shim = m_facts.shims.find(e.shim);
        if (shim == m_facts.shims.end()) {
            return;
        }
        const Length before = shim->second.thickness();
        shim->second.readings.push_back(seen(e));
        if (shim->second.thickness() != before || shim->second.readings.size() == 1) {
            changed(Topic::shimThickness, e.shim, ShimRead{e.shim});
        }
    }

    void operator()(const ShimSetAside& e) {
        const auto shim = m_facts.shims.find(e.shim);
        if (shim != m_facts.shims.end()) {
            shim->second.isSetAside = e.isAside;
            shim->second.whyAside = e.isAside ? e.why : std::string();
        }
    }

    void operator()(const StackPinned& e) {
        if (e.isPinned) {
            m_facts.pins[e.position] = e.shims.names;
        } else {
            m_facts.pins.erase(e.position);
        }
    }

    void operator()(const StackBuilt& e) {
        const bool isConfirmed =
            m_facts.stacks.contains(e.position) && sameShims(m_facts.stacks[e.position].shims, e.shims.names);
        girdleLifted();
        release(e.position);
        for (const auto& name : e.shims.names) {
            if (const auto shim = m_facts.shims.find(name); shim != m_facts.shims.end()) {
                shim->second.inStackAt = e.position;
            }
        }
        m_facts.stacks[e.position] = {m_entry.sequence, e.shims.names, true};
        if (!isConfirmed) {
            changed(Topic::stackAsBuilt, e.position, StackBuiltAnew{e.position});
        }
        stackLaidOn(e.position);
    }

    void operator()(const StackMoved& e) {
        const auto stack = m_facts.stacks.find(e.position);
        if (stack == m_facts.stacks.end()) {
            return;
        }
        girdleLifted();
        if (e.move == StackMove::takenApart) {
            release(e.position);
            m_facts.stacks.erase(stack);
            changed(Topic::stackAsBuilt, e.position, StackTakenApart{e.position});
            return;
        }
        stack->second.isOn = e.move == StackMove::putBack;
        if (stack->second.isOn) {
            stackLaidOn(e.position);
        }
    }

    void operator()(const RecheckMade& e) {
        girdleLifted();
        m_facts.rechecks.insert_or_assign(e.position, seen(e));
    }
    void operator()(const JudgedAgain& e) {
        m_facts.judgedAgain[e.check] = m_entry.sequence;
        deviates(AcceptedAgain{e.check, e.why});
    }

    void operator()(const FeelStudyBegun& e) { m_facts.feelStudies.insert_or_assign(e.study, FeelStudyFact{seen(e), {}}); }
    void operator()(const FeelAnswer& e) {
        if (const auto at = m_facts.feelStudies.find(e.study); at != m_facts.feelStudies.end()) {
            at->second.answers.push_back(seen(e));
        }
    }

    void operator()(const GirdleWaySet& e) {
        if (m_facts.girdleWay && kindOf(Body(e)).kind == GirdleWaySet::kind &&
            cellsOf(Body(m_facts.girdleWay->what)) != cellsOf(Body(e))) {
            changed(Topic::girdleWay, {}, GirdleTurnedRound{});
        }
        m_facts.girdleWay = seen(e);
    }

    void operator()(const TrialFitResult& e) {
        const TrialId place{e.item, e.throwNumber};
        if (isPerThrow(e.item) && m_facts.trialFits.contains(place)) {
            changed(Topic::throwRoom, {}, ThrowAnsweredAgain{e.throwNumber});
        }
        m_facts.trialFits.insert_or_assign(place, seen(e));
        if (looseNut(m_facts)) {
            m_facts.triedLoose.insert(m_entry.sequence);
        }
    }
    void operator()(const TurningTorqueRead& e) { m_facts.turning.insert_or_assign(e.stage, seen(e)); }
    void operator()(const OwnCheckSet& e) {
        const auto at = std::ranges::find_if(m_facts.ownChecks,
                                             [&](const auto& check) { return check.what.ownCheck == e.ownCheck; });
        if (at == m_facts.ownChecks.end()) {
            m_facts.ownChecks.push_back(seen(e));
            return;
        }
        if (m_judgedBefore != 0) {
            deviates(OwnCheckChanged{at->what.words, e.why.value_or(""), m_judgedBefore});
        }
        const OwnCheckSet& before = at->what;
        if (before.words != e.words || before.sort != e.sort || before.lo != e.lo || before.hi != e.hi) {
            changed(Topic::ownCheck, e.ownCheck, OwnCheckSetAnew{e.ownCheck});
        }
        *at = seen(e);
    }
    void operator()(const OwnCheckAnswered& e) { m_facts.ownAnswers[{e.ownCheck, e.place}].push_back(seen(e)); }
    void operator()(const PickupReading& e) { m_facts.pickup[e.term].push_back(seen(e)); }

    void operator()(const FindingOpened& e) { m_facts.findings.insert_or_assign(e.finding, FindingFact{seen(e), {}}); }
    void operator()(const FindingSettled& e) {
        if (const auto at = m_facts.findings.find(e.finding); at != m_facts.findings.end()) {
            at->second.settled = seen(e);
        }
    }
    void operator()(const NoteAdded& e) { m_facts.notes.push_back(seen(e)); }
    void operator()(const AttachmentAdded& e) { m_facts.attachments.push_back(seen(e)); }

    void operator()(const ClosingStepDone& e) {
        m_facts.closing.insert_or_assign(e.step, seen(e));
    }
    void operator()(const SignedOff& e) { m_facts.signedOff = seen(e); }

    /// What was decided about the engine and the shop's things stays; what was measured and done belongs to the build
    /// before, which the ledger keeps.
    void operator()(const BuildBegun& e) {
        static_cast<BuildFacts&>(m_facts) = BuildFacts{};
        for (auto& [name, shim] : m_facts.shims) {
            shim.inStackAt.reset();
        }
        m_facts.build = e.build;
        m_facts.buildEntry = m_entry.sequence;
        reviewProof(m_facts);
    }

    void operator()(const PartEntered& e) {
        const auto at = std::ranges::find_if(m_facts.parts, [&](const auto& part) {
            return part.what.sort == e.sort && part.what.what == e.what && part.what.place == e.place;
        });
        if (at == m_facts.parts.end()) {
            m_facts.parts.push_back(seen(e));
        } else {
            *at = seen(e);
        }
    }
    void operator()(const ZeroChecked& e) { m_facts.zeroChecks[e.instrument].push_back(seen(e)); }
    void operator()(const ValueConfirmed& e) { m_facts.confirmed.insert_or_assign(e.value, seen(e)); }
    void operator()(const BroughtIn& e) {
        m_facts.broughtIn.push_back(seen(e));
        deviates(CameFromOutside{e.fileName, e.count});
    }

    void operator()(const Struck&) {}
    void operator()(const Salvaged&) {}
    void operator()(const SealSigned&) {} // told by signaturesOf, from the ledger

private:
    template <class T> Seen<T> seen(const T& what) const {
        return {m_entry.sequence, m_entry.time, m_entry.person, what};
    }

    void changed(Topic topic, const About& about, Cause cause) {
        m_facts.changes[{topic, about}] = {m_entry.sequence, std::move(cause)};
    }

    void deviates(DeviationKind what) {
        m_facts.deviations.push_back({m_entry.sequence, m_entry.time, m_entry.person, std::move(what)});
    }

    /// The bearing that a main-cap or rod fastener clamps.
    static JournalId bearingOf(FastenerId f) {
        return {f.kind == FastenerKind::mainCap ? JournalKind::main : JournalKind::rod, f.number};
    }

    static bool sameShims(std::vector<std::string> a, std::vector<std::string> b) {
        std::ranges::sort(a);
        std::ranges::sort(b);
        return a == b;
    }

    /// What lies under the girdle was worked on, so it was off, and the pan with it: their fasteners are loose.
    void girdleLifted() {
        m_facts.girdleLifted = m_entry.sequence;
        for (auto& [f, fact] : m_facts.fasteners) {
            if (!isVerified(f.kind)) {
                fact.isLoose = true;
            }
        }
    }

    /// A main fastener that turns moves its cap; any verified fastener that turns ends the round that trusted it.
    void fastenerTurned(FastenerId f, const Cause& cause) {
        if (f.kind == FastenerKind::mainCap) {
            changed(Topic::capMovement, bearingOf(f), cause);
        }
        voidRounds(f.kind, cause);
    }

    void torqueChanged(FastenerId f) {
        if (isVerified(f.kind)) {
            changed(Topic::torque, bearingOf(f), Tightened{f, true});
        }
    }

    void voidRounds(FastenerKind kind, const Cause& cause) {
        if (!isVerified(kind)) {
            return;
        }
        // NOLINTNEXTLINE(modernize-loop-convert): clang 14 knows no views::reverse
        for (auto round = m_facts.rounds.rbegin(); round != m_facts.rounds.rend(); ++round) {
            if (round->voidedBy.entry == 0) {
                round->voidedBy = {m_entry.sequence, cause};
            } else if (!isOfOneRound(round->voidedBy.cause)) {
                return; // what voided it voided all before it: a long record has thousands
            }
        }
    }

    /// A stack that lies on voids the round that it disturbs, and no other.
    static bool isOfOneRound(const Cause& cause) {
        return std::holds_alternative<StackWasOn>(cause) || std::holds_alternative<StackLaidOn>(cause);
    }

    /// The torques are verified with the stacks off: one laid on in the middle of a round voids it.
    void stackLaidOn(Position p) {
        if (m_facts.rounds.empty()) {
            return;
        }
        RoundFact& round = m_facts.rounds.back();
        if (round.voidedBy.entry == 0 && !isComplete(m_facts, round)) {
            round.voidedBy = {m_entry.sequence, StackLaidOn{p}};
        }
    }

    void release(Position p) {
        for (auto& [name, shim] : m_facts.shims) {
            if (shim.inStackAt == p) {
                shim.inStackAt.reset();
            }
        }
    }

    /// Sorted; made anew when something invalidated readings since the last one.
    std::vector<std::int64_t>& currentValues(Position p) {
        CurrentGaps& current = m_facts.sortedGaps[p];
        if (const std::int64_t invalidatedBy = m_facts.gapInvalidatedBy(p).entry;
            invalidatedBy != current.invalidatedBy) {
            current = {invalidatedBy, {}};
            for (const auto& reading : m_facts.currentGaps(p)) {
                current.sorted.push_back(reading.what.value().value());
            }
            std::ranges::sort(current.sorted);
        }
        return current.sorted;
    }

    /// Twice the median, which is a whole number.
    [[nodiscard]] static std::optional<std::int64_t> doubledMedian(const std::vector<std::int64_t>& sorted) {
        if (sorted.empty()) {
            return {};
        }
        const std::size_t half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted[half] * 2 : sorted[half - 1] + sorted[half];
    }

    void countPull(const std::string& instrument) {
        if (!instrument.empty()) {
            ++m_facts.wrenchPulls[instrument];
        }
    }

    /// Whose figure it is was said of another one.
    void valueChanged(const std::string& code) { m_facts.confirmed.erase(code); }

    Facts& m_facts;
    const Entry& m_entry;
    std::int64_t m_judgedBefore; ///< the newest entry that was judged by what this one changes; 0: none
};

} // namespace

void apply(Facts& facts, const Entry& entry) {
    entry.body.visit(Fold(facts, entry));
    if (isAnyInsistedOn(entry.body)) {
        facts.deviations.push_back({entry.sequence, entry.time, entry.person, InsistedOn{std::string(kindOf(entry.body).kind)}});
    }
    facts.lastEntry = entry.sequence;
}

} // namespace caprail
