// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A record built step by step as an assembler would, for the scenario tests.
#include "../../closing.h"

#include <assessment/admission.h>
#include <assessment/judged_before.h>
#include <gtest/gtest.h>
#include <ledger/band_names.h>
#include <units/format.h>

namespace caprail {

class Bench {
public:
    /// `withTools`: false leaves the instruments out, so that a test enters its own.
    explicit Bench(bool withTools = true) {
        make(PersonAdded{"Mira", "assembler"});
        make(EngineDescribed{"Kestrel Lane", "Orrin Vale", "V8", "KL-2207", ""});
        make(drafts::threeMains());
        RulesSet rules;
        rules.decision = DecisionRule::simple; // so that a value at the edge is a question of the scenario, not of U
        make(rules);
        band(bands::residual, -0.5, 0.5);
        band(bands::mainClearance, 1.8, 2.5);
        band(bands::pickupClearance, 250, 375);
        group(FastenerKind::mainCap, 6, "7/16-20", 70);
        group(FastenerKind::rod, 4, "3/8-24", 45);
        drafts::specifyClosing(*this, 3);
        make(drafts::wrench());
        if (withTools) {
            for (const InstrumentAdded& tool : drafts::tools()) {
                make(tool);
            }
        }
    }

    /// Judged and appended like one typed in the window.
    Result<std::int64_t> tryTo(Body body) {
        std::optional<Facts> afterStrike;
        if (auto ok = mayAppend(ledger, facts, assessment, "Mira", body, {}, &afterStrike); !ok) {
            return tl::unexpected(ok.error());
        }
        const bool isStrike = body.is<Struck>();
        const Entry& entry = ledger.append({1'700'000'000'000 + ledger.size() * 1000}, "Mira", std::move(body));
        if (isStrike) {
            facts = afterStrike ? std::move(*afterStrike) : fold(ledger);
        } else {
            apply(facts, entry);
        }
        assessment = assess(facts);
        return entry.sequence;
    }
    /// As above, with a reason where one is asked for and none given; a refusal fails the test.
    std::int64_t make(Body body) {
        if (lacksReason(facts, body)) {
            body = withReason(std::move(body), "tried");
        }
        auto sequence = tryTo(std::move(body));
        EXPECT_TRUE(sequence) << (sequence ? "" : sequence.error().sentence);
        return sequence.value_or(0);
    }
    /// Made past every rule, as an import can bring it, `minutes` after the entry before it.
    void comesFromOutside(Body body, int minutes) {
        const Entry& entry =
            ledger.append({ledger.entries().back().time.milliseconds + minutes * 60'000LL}, "Mira", std::move(body));
        apply(facts, entry);
        assessment = assess(facts);
    }
    /// The sentence of a refusal; the record must be unchanged.
    std::string refusal(Body body) {
        const Seal before = ledger.seal();
        const auto sequence = tryTo(std::move(body));
        EXPECT_FALSE(sequence);
        EXPECT_EQ(ledger.seal(), before);
        return sequence ? std::string() : sequence.error().sentence;
    }

    void band(std::string_view name, double lo, double hi) { make(drafts::band(name, lo, hi)); }
    void group(FastenerKind kind, int count, const char* thread, double torque) {
        make(drafts::group(kind, count, thread, torque));
    }
    void tightenAll() {
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            const double torque = f.kind == FastenerKind::rod ? 45 : 70;
            make(FastenerTightened{f, Entered<Torque>{poundFeet(torque), ""}, {}, {}, "W1"});
        }
    }
    void bearings() {
        for (const JournalId j : facts.layout->mainJournals()) {
            for (int station = 1; station <= 2; ++station) {
                for (int direction = 1; direction <= 2; ++direction) {
                    make(JournalReading{j, station, direction, {inches(2.4480), ""}, "MIC"});
                }
            }
            make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.4501), ""}, "BORE"});
            make(BoreReading{j, BoreMethod::boreWithShells, 2, {inches(2.4503), ""}, "BORE"});
            // One place of each once more, so that it is known how well they repeat.
            make(JournalReading{j, 1, 1, {inches(2.4480), ""}, "MIC"});
            make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.4501), ""}, "BORE"});
        }
    }
    void layIn() {
        if (!facts.isCrankIn()) {
            make(CrankLaidIn{});
        }
    }
    std::int64_t gapAt(Position p, double gapThou, int pass = 1) {
        layIn();
        return make(GapReading{p, pass, {thou(gapThou), ""}, "LEAVES", {}, "EDGE"});
    }
    void twoPasses(Position p, double gapThou) {
        gapAt(p, gapThou, 1);
        gapAt(p, gapThou, 2);
    }
    void survey() {
        for (const Position p : facts.layout->positions()) {
            twoPasses(p, 50);
        }
    }
    /// One shim of 50 thou per position, measured twice: S-1L, S-1R …
    void kit() {
        for (const Position p : facts.layout->positions()) {
            make(ShimAdded{"S-" + code(p), {thou(50), ""}, ""});
            make(ShimMeasured{"S-" + code(p), {thou(50), ""}, "MIC"});
            make(ShimMeasured{"S-" + code(p), {thou(50), ""}, "MIC"});
        }
    }
    void build() {
        for (const Position p : facts.layout->positions()) {
            make(StackBuilt{p, {{"S-" + code(p)}}});
        }
    }
    void recheck() {
        for (const Position p : facts.layout->positions()) {
            make(RecheckMade{p, Feel::drags, "EDGE"});
        }
    }
    /// From the bare block to stacks that were rechecked.
    void upToTheRechecks() {
        tightenAll();
        bearings();
        survey();
        kit();
        build();
        recheck();
    }
    /// Up to the open gate of the trial fit, the girdle's nuts not yet tight.
    void upToTheFit() {
        upToTheRechecks();
        make(GirdleWaySet{});
    }
    void trialFit() {
        layIn();
        make(GirdleWaySet{});
        drafts::passTrialFit(*this, facts);
    }
    void pickup() {
        for (int pass = 0; pass < 2; ++pass) {
            make(PickupReading{PickupTerm::panDepth, {inches(7.5), ""}, "DEPTH"});
            make(PickupReading{PickupTerm::gasket, {thou(60), ""}, "MIC"});
            make(PickupReading{PickupTerm::plate, {thou(250), ""}, "MIC"});
            make(PickupReading{PickupTerm::pickupDepth, {inches(7.5), ""}, "DEPTH"});
        }
    }
    void stacks(StackMove move) {
        for (const Position p : facts.layout->positions()) {
            make(StackMoved{p, move});
        }
    }
    std::int64_t outcome(FastenerId f, Outcome what = Outcome::held, double degreesTurned = 0) {
        RoundOutcome o;
        o.round = facts.rounds.back().begun.what.round;
        o.fastener = f;
        o.outcome = what;
        if (what == Outcome::moved) {
            o.angle = Entered<Angle>{degrees(degreesTurned), ""};
        }
        o.instrument = "W1";
        o.torque = facts.groupOf(f)->what.torque;
        return make(o);
    }
    void round() {
        layIn();
        make(RoundBegun{static_cast<std::int64_t>(facts.rounds.size()) + 1, "W1"});
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            outcome(f);
        }
    }
    /// Every closing step up to `last`, each with its evidence.
    void close(ClosingStep last = ClosingStep::panFastened) { drafts::closeUpTo(*this, facts, last); }
    /// Everything up to the open closing gate.
    void readyToClose() {
        upToTheRechecks();
        trialFit();
        pickup();
        stacks(StackMove::takenOff);
        round();
    }

    [[nodiscard]] CheckState stateOf(const std::string& checkCode) const {
        const Check* check = assessment.find(checkCode);
        EXPECT_NE(check, nullptr) << checkCode;
        return check == nullptr ? CheckState::notDone : check->state;
    }
    /// Codes of the checks that hold a gate.
    [[nodiscard]] std::vector<std::string> holding(GateKind kind) const {
        std::vector<std::string> codes;
        for (const std::size_t i : assessment.gate(kind).holding) {
            codes.push_back(assessment.checks[i].code);
        }
        return codes;
    }
    [[nodiscard]] bool isOpen(GateKind kind) const { return assessment.gate(kind).isOpen; }

    Ledger ledger;
    Facts facts;
    Assessment assessment = assess(Facts{});
};

/// What a person sees of an assessment, as text: two that read the same are the same.
inline std::string seen(const Assessment& a) {
    std::string text;
    for (const Check& c : a.checks) {
        text += c.code + " " + std::string(word(c.state)) + " " + c.sentence + " " + c.remedy + " " +
                std::to_string(c.madeAt) + " " + describe(c.staleBecause.cause, {}) + "\n";
    }
    for (const Gate& g : a.gates) {
        text += std::string(word(g.kind)) + (g.isOpen ? " open\n" : " locked\n");
    }
    for (const auto& [p, g] : a.gaps) {
        text += code(p) + " " + (g.accepted ? std::to_string(g.accepted->value()) : "-") + " " +
                std::to_string(g.current.size()) + "\n";
    }
    return text + a.next.sentence + "\n";
}

} // namespace caprail
