// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/facts.h>

#include <algorithm>
#include <ranges>
#include <assessment/girdle_plate_of.h>
#include <base/say.h>
#include <ledger/band_names.h>
#include <ledger/typed_values.h>

namespace caprail {

namespace {

/// The newest reading that a band judges; 0: none yet.
class NewestReading {
public:
    explicit NewestReading(const Facts& facts) : m_facts(facts) {}

    [[nodiscard]] std::int64_t of(std::string_view band) const {
        std::int64_t newest = 0;
        if (band == bands::residual || band == bands::twist) {
            take(m_facts.gaps, newest);
        } else if (band == bands::mainClearance || band == bands::rodClearance) {
            bearings(band == bands::mainClearance ? JournalKind::main : JournalKind::rod, newest);
        } else if (band == bands::journalTaper || band == bands::journalOutOfRound) {
            take(m_facts.journals, newest);
        } else if (band == bands::pickupClearance) {
            take(m_facts.pickup, newest);
        } else {
            for (const auto& [place, readings] : m_facts.fits) {
                newest = place.first == band ? std::max(newest, readings.back().entry) : newest;
            }
        }
        return newest;
    }
    [[nodiscard]] std::int64_t ofAny() const {
        std::int64_t newest = 0;
        take(m_facts.gaps, newest);
        take(m_facts.journals, newest);
        take(m_facts.bores, newest);
        take(m_facts.fits, newest);
        take(m_facts.pickup, newest);
        return newest;
    }

private:
    template <class Map> static void take(const Map& map, std::int64_t& newest) {
        for (const auto& [key, readings] : map) {
            newest = readings.empty() ? newest : std::max(newest, readings.back().entry);
        }
    }
    void bearings(JournalKind kind, std::int64_t& newest) const {
        const auto takeOf = [&](const auto& map) {
            for (const auto& [journal, readings] : map) {
                newest = journal.kind == kind ? std::max(newest, readings.back().entry) : newest;
            }
        };
        takeOf(m_facts.journals);
        takeOf(m_facts.bores);
    }
    const Facts& m_facts;
};

/// Folds one entry into the facts. Each overload says what one kind of entry changes.
class Fold {
public:
    Fold(Facts& facts, const Entry& entry) : m_facts(facts), m_entry(entry) {}

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
            const auto plate = girdlePlateOf(e);
            m_facts.girdlePlate = plate.value_or(std::nullopt);
            m_facts.girdleShape = plate ? girdleShapeOf(e) : GirdleShape{};
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
            if (const std::int64_t reading = NewestReading(m_facts).of(e.band); reading != 0) {
                const bool isWider = band->lo() < from.lo() || band->hi() > from.hi();
                deviates(BandChanged{e.band, from, *band, isWider, reading});
            }
        }
        m_facts.bands[e.band] = fact;
    }

    void operator()(const RulesSet& e) {
        const bool judgesOtherwise = e.decision != m_facts.rules.decision || e.coverage != m_facts.rules.coverage ||
                                     e.repeatLimit != m_facts.rules.repeatLimit ||
                                     e.minimumPasses != m_facts.rules.minimumPasses ||
                                     e.temperatureSpread != m_facts.rules.temperatureSpread;
        const std::int64_t reading = judgesOtherwise ? NewestReading(m_facts).ofAny() : 0;
        if (reading != 0) {
            deviates(RulesChanged{reading});
        }
        m_facts.rules = e;
        m_facts.rulesEntry = m_entry.sequence;
    }

    void operator()(const FastenerGroupSet& e) {
        const std::pair key{e.group, e.ring};
        const auto before = m_facts.groups.find(key);
        if (before != m_facts.groups.end() && !sameValue(before->second.what, e)) {
            changed(Topic::groupValue, e.group, GroupSetAnew{e.group});
            voidRounds(e.group, GroupSetAnew{e.group});
        }
        m_facts.groups.insert_or_assign(key, seen(e));
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
        countPull(e.instrument);
    }

    void operator()(const FastenerLoosened& e) {
        fastenerTurned(e.fastener, Loosened{e.fastener});
        m_facts.fasteners[e.fastener].isLoose = true;
    }

    void operator()(const RoundBegun& e) {
        RoundFact round{seen(e), {}, {}};
        if (const auto on = m_facts.stacksOn(); !on.empty()) {
            round.voidedBy = {m_entry.sequence, StackWasOn{on.front()}};
        }
        m_facts.rounds.push_back(std::move(round));
    }

    void operator()(const RoundOutcome& e) {
        // From the end: it is nearly always the last, and a long record has thousands.
        const auto backwards = std::views::reverse(m_facts.rounds);
        const auto round =
            std::ranges::find(backwards, e.round, [](const RoundFact& r) { return r.begun.what.round; });
        if (round != backwards.end()) {
            round->outcomes.insert_or_assign(e.fastener, seen(e));
        }
        if (e.outcome == Outcome::moved && isVerified(e.fastener.kind)) {
            const MovedInRound cause{e.fastener, e.angle ? std::optional(e.angle->value) : std::nullopt, e.round};
            if (e.fastener.kind == FastenerKind::mainCap) {
                changed(Topic::capMovement, bearingOf(e.fastener), cause);
            }
            changed(Topic::roundMovement, bearingOf(e.fastener), cause);
        }
        countPull(e.instrument);
    }

    void operator()(const GapReading& e) {
        // The accepted gap is the median of the current readings; only another value of it is a change.
        std::vector<std::int64_t>& current = currentValues(e.position);
        const auto before = doubledMedian(current);
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

    void operator()(const RecheckMade& e) { m_facts.rechecks.insert_or_assign(e.position, seen(e)); }
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

    void operator()(const TrialFitResult& e) { m_facts.trialFits.insert_or_assign({e.item, e.throwNumber}, seen(e)); }
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
        if (e.step == ClosingStep::stacksRefitted) {
            for (auto& [position, stack] : m_facts.stacks) {
                stack.isOn = true;
            }
        }
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
    }

    void operator()(const Struck&) {}
    void operator()(const Salvaged&) {}

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

    static bool sameValue(const FastenerGroupSet& a, const FastenerGroupSet& b) {
        return a.thread == b.thread && a.lubricant == b.lubricant && a.method == b.method && a.torque == b.torque &&
               a.angle == b.angle && a.stretch == b.stretch;
    }

    static bool sameShims(std::vector<std::string> a, std::vector<std::string> b) {
        std::ranges::sort(a);
        std::ranges::sort(b);
        return a == b;
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
        for (RoundFact& round : std::views::reverse(m_facts.rounds)) {
            if (round.voidedBy.entry == 0) {
                round.voidedBy = {m_entry.sequence, cause};
            } else if (!isOfOneRound(round.voidedBy.cause)) {
                return; // what voided it voided all before it: a long record has thousands
            }
        }
    }

    /// A stack that lies on voids the round that it disturbs, and no other.
    static bool isOfOneRound(const Cause& cause) {
        return std::holds_alternative<StackWasOn>(cause) || std::holds_alternative<StackLaidOn>(cause);
    }

    [[nodiscard]] bool isComplete(const RoundFact& round) const {
        return m_facts.layout && std::ranges::all_of(m_facts.layout->verifiedFasteners(),
                                                     [&](FastenerId f) { return round.outcomes.contains(f); });
    }

    /// The torques are verified with the stacks off: one laid on in the middle of a round voids it.
    void stackLaidOn(Position p) {
        if (m_facts.rounds.empty()) {
            return;
        }
        RoundFact& round = m_facts.rounds.back();
        if (round.voidedBy.entry == 0 && !isComplete(round)) {
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

    Facts& m_facts;
    const Entry& m_entry;
};

} // namespace

void apply(Facts& facts, const Entry& entry) {
    std::visit(Fold(facts, entry), entry.body);
    if (isAnyInsistedOn(entry.body)) {
        facts.deviations.push_back({entry.sequence, entry.time, entry.person, InsistedOn{std::string(kindOf(entry.body).kind)}});
    }
    facts.lastEntry = entry.sequence;
}

} // namespace caprail
