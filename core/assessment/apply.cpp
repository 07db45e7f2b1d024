// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/facts.h>

#include <algorithm>
#include <units/format.h>
#include <base/say.h>

namespace caprail {

namespace {

const Units unitsOfPhrases; // phrases in facts are in inches; the screens show values from the entries themselves

/// Folds one entry into the facts. Each overload says what one kind of entry changes.
class Fold {
public:
    Fold(Facts& facts, const Entry& entry) : m_facts(facts), m_entry(entry) {}

    void operator()(const EngineDescribed& e) { m_facts.engine = seen(e); }

    void operator()(const LayoutSet& e) {
        if (auto layout = EngineLayout::from(e)) {
            const bool isNew = m_facts.layout && m_facts.layout->description() != layout->description();
            if (isNew) {
                changed(Topic::layout, "", Core::say("the engine layout was set anew"));
                voidRounds(FastenerKind::mainCap, Core::say("the engine layout was set anew"));
            }
            m_facts.layout = *layout;
            m_facts.layoutEntry = m_entry.sequence;
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
            changed(Topic::band, e.band,
                    Core::say("the band “%1” was set to %2", e.band, format(*band, unitsOfPhrases)));
        }
        m_facts.bands[e.band] = fact;
    }

    void operator()(const RulesSet& e) {
        m_facts.rules = e;
        m_facts.rulesEntry = m_entry.sequence;
    }

    void operator()(const FastenerGroupSet& e) {
        const std::pair key{e.group, e.ring};
        const auto before = m_facts.groups.find(key);
        if (before != m_facts.groups.end() && !sameValue(before->second.what, e)) {
            const std::string what = Core::say("what is specified for the %1 fasteners was changed", shown(e.group));
            changed(Topic::groupValue, std::string(word(e.group)), what);
            voidRounds(e.group, what);
        }
        m_facts.groups.insert_or_assign(key, seen(e));
    }

    void operator()(const PersonAdded& e) { m_facts.people.insert_or_assign(e.name, e); }
    void operator()(const InstrumentAdded& e) { m_facts.instruments.insert_or_assign(e.instrument, seen(e)); }
    void operator()(const JournalReading& e) { m_facts.journals[e.journal].push_back(seen(e)); }
    void operator()(const BoreReading& e) { m_facts.bores[e.journal].push_back(seen(e)); }
    void operator()(const ShellMeasured& e) { m_facts.shells[e.shell].push_back(seen(e)); }

    void operator()(const ShellsFitted& e) {
        const auto before = m_facts.shellsFitted.find(e.journal);
        if (before != m_facts.shellsFitted.end() &&
            (before->second.what.upper != e.upper || before->second.what.lower != e.lower)) {
            changed(Topic::shells, code(e.journal), Core::say("other shells were fitted in %1", describe(e.journal)));
        }
        m_facts.shellsFitted.insert_or_assign(e.journal, seen(e));
    }

    void operator()(const FitReading& e) { m_facts.fits[{e.fit, e.place}].push_back(seen(e)); }

    void operator()(const PartChanged& e) {
        changed(topicOf(e.part), e.place,
                (e.place.empty() ? Core::say("the %1 was changed", shown(e.part))
                                 : Core::say("the %1 at %2 was changed", shown(e.part), e.place)) +
                    (e.what.empty() ? "" : ": " + e.what));
    }

    void operator()(const FastenerTightened& e) {
        FastenerFact& fact = m_facts.fasteners[e.fastener];
        const bool sameTorque = fact.tightened && fact.tightened->what.torque && e.torque &&
                                fact.tightened->what.torque->value == e.torque->value;
        fastenerTurned(e.fastener, Core::say("%1 was tightened", describe(e.fastener)));
        // Pulling to the same torque again gives the same clamp; another torque gives another bore.
        if (fact.tightened && !sameTorque) {
            torqueChanged(e.fastener, Core::say("%1 was tightened to another value", describe(e.fastener)));
        }
        fact.tightened = seen(e);
        fact.isLoose = false;
        countPull(e.instrument);
    }

    void operator()(const FastenerLoosened& e) {
        fastenerTurned(e.fastener, Core::say("%1 was loosened", describe(e.fastener)));
        m_facts.fasteners[e.fastener].isLoose = true;
    }

    void operator()(const RoundBegun& e) {
        RoundFact round{seen(e), {}, {}};
        if (const auto on = m_facts.stacksOn(); !on.empty()) {
            round.voidedBy = {m_entry.sequence,
                              Core::say("the stack at %1 was on when it began", describe(on.front()))};
        }
        m_facts.rounds.push_back(std::move(round));
    }

    void operator()(const RoundOutcome& e) {
        const auto round =
            std::ranges::find(m_facts.rounds, e.round, [](const RoundFact& r) { return r.begun.what.round; });
        if (round != m_facts.rounds.end()) {
            round->outcomes.insert_or_assign(e.fastener, seen(e));
        }
        if (e.outcome == Outcome::moved && e.fastener.kind == FastenerKind::mainCap) {
            changed(Topic::capMovement, std::to_string(e.fastener.number),
                    e.angle ? Core::say("%1 moved %2 in verify round %3", describe(e.fastener),
                                        format(e.angle->value, unitsOfPhrases), e.round)
                            : Core::say("%1 moved in verify round %2", describe(e.fastener), e.round));
        }
        countPull(e.instrument);
    }

    void operator()(const GapReading& e) {
        // The accepted gap is the median of the standing readings; only another value of it is a change.
        std::vector<std::int64_t>& standing = standingValues(e.position);
        const auto before = doubledMedian(standing);
        m_facts.gaps[e.position].push_back(seen(e));
        const std::int64_t value = e.gap.value.value();
        standing.insert(std::ranges::upper_bound(standing, value), value);
        if (before != doubledMedian(standing)) {
            changed(Topic::gap, code(e.position), Core::say("the gap at %1 was measured again", describe(e.position)));
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
            changed(Topic::shimThickness, e.shim, Core::say("shim %1 was measured", e.shim));
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
            changed(Topic::stackAsBuilt, code(e.position),
                    Core::say("the stack at %1 was built anew", describe(e.position)));
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
            changed(Topic::stackAsBuilt, code(e.position),
                    Core::say("the stack at %1 was taken apart", describe(e.position)));
            return;
        }
        stack->second.isOn = e.move == StackMove::putBack;
        if (stack->second.isOn) {
            stackLaidOn(e.position);
        }
    }

    void operator()(const RecheckMade& e) { m_facts.rechecks.insert_or_assign(e.position, seen(e)); }
    void operator()(const JudgedAgain& e) { m_facts.judgedAgain[e.check] = m_entry.sequence; }

    void operator()(const GirdleWaySet& e) {
        if (m_facts.girdleWay && kindOf(Body(e)).kind == GirdleWaySet::kind &&
            cellsOf(Body(m_facts.girdleWay->what)) != cellsOf(Body(e))) {
            changed(Topic::girdleWay, "", Core::say("the girdle was turned another way round"));
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
        Facts next;
        next.engine = m_facts.engine;
        next.layout = m_facts.layout;
        next.layoutEntry = m_facts.layoutEntry;
        next.bands = m_facts.bands;
        next.rules = m_facts.rules;
        next.rulesEntry = m_facts.rulesEntry;
        next.groups = m_facts.groups;
        next.people = m_facts.people;
        next.instruments = m_facts.instruments;
        next.wrenchPulls = m_facts.wrenchPulls;
        next.shells = m_facts.shells;
        next.shims = m_facts.shims;
        for (auto& [name, shim] : next.shims) {
            shim.inStackAt.reset();
        }
        next.notes = m_facts.notes;
        next.attachments = m_facts.attachments;
        next.build = e.build;
        next.buildEntry = m_entry.sequence;
        m_facts = std::move(next);
    }

    void operator()(const Struck&) {}
    void operator()(const Salvaged&) {}

private:
    template <class T> Seen<T> seen(const T& what) const {
        return {m_entry.sequence, m_entry.time, m_entry.person, what};
    }

    void changed(Topic topic, const std::string& about, std::string what) {
        m_facts.changes[{topic, about}] = {m_entry.sequence, std::move(what)};
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
    void fastenerTurned(FastenerId f, const std::string& what) {
        if (f.kind == FastenerKind::mainCap) {
            changed(Topic::capMovement, std::to_string(f.number), what);
        }
        voidRounds(f.kind, what);
    }

    void torqueChanged(FastenerId f, const std::string& what) {
        if (isVerified(f.kind)) {
            changed(f.kind == FastenerKind::mainCap ? Topic::capTorque : Topic::rodTorque, std::to_string(f.number),
                    what);
        }
    }

    void voidRounds(FastenerKind kind, const std::string& what) {
        if (!isVerified(kind)) {
            return;
        }
        for (RoundFact& round : m_facts.rounds) {
            if (round.voidedBy.entry == 0) {
                round.voidedBy = {m_entry.sequence, what};
            }
        }
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
            round.voidedBy = {m_entry.sequence,
                              Core::say("the stack at %1 was laid on before the round was complete", describe(p))};
        }
    }

    void release(Position p) {
        for (auto& [name, shim] : m_facts.shims) {
            if (shim.inStackAt == p) {
                shim.inStackAt.reset();
            }
        }
    }

    /// Sorted; made anew when something felled readings since the last one.
    std::vector<std::int64_t>& standingValues(Position p) {
        StandingGaps& standing = m_facts.sortedGaps[p];
        if (const std::int64_t felledBy = m_facts.gapFelledBy(p).entry; felledBy != standing.felledBy) {
            standing = {felledBy, {}};
            for (const auto& reading : m_facts.gaps[p]) {
                if (reading.entry > felledBy) {
                    standing.sorted.push_back(reading.what.gap.value.value());
                }
            }
            std::ranges::sort(standing.sorted);
        }
        return standing.sorted;
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
    facts.lastEntry = entry.sequence;
}

} // namespace caprail
