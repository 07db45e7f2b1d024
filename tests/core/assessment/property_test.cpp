// SPDX-License-Identifier: GPL-3.0-or-later
/// Properties that hold for every ledger, tried on random ones. Random numbers come from std::mt19937, whose sequence
/// the C++ standard fixes, so every run tries the same ledgers.
#include "bench.h"

#include <random>

using namespace caprail;

namespace {

class RandomJob {
public:
    explicit RandomJob(unsigned seed) : m_random(seed) {}

    /// Makes entries of every kind in any order; most are refused by their gates, which is part of the test.
    void run(Bench& bench, int tries) {
        bench.layIn();
        for (int i = 0; i < tries; ++i) {
            (void)bench.tryTo(any(bench));
        }
    }

private:
    int upTo(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    Position position() { return {1 + upTo(3), upTo(2) == 0 ? Side::left : Side::right}; }
    FastenerId fastener() {
        return {upTo(3) == 0 ? FastenerKind::rod : FastenerKind::mainCap, 1 + upTo(3),
                upTo(2) == 0 ? Side::left : Side::right, Ring::inner};
    }
    std::string shim() { return "S" + std::to_string(1 + upTo(12)); }
    Entered<Length> around(double middle) { return {tenths(static_cast<std::int64_t>(middle * 10) + upTo(7) - 3), ""}; }

    Body any(Bench& bench) {
        const std::int64_t round = bench.facts.rounds.empty() ? 1 : bench.facts.rounds.back().begun.what.round;
        switch (upTo(40)) {
        case 0:
            return FastenerTightened{fastener(), Entered<Torque>{poundFeet(70 - 5 * upTo(2)), ""}, {}, {}, "W1"};
        case 1:
            return FastenerLoosened{fastener(), "looked"};
        case 2:
            return RoundBegun{round + 1, "W1"};
        case 3:
        case 4: {
            const bool moved = upTo(5) == 0;
            RoundOutcome outcome = drafts::held(round, fastener());
            outcome.outcome = moved ? Outcome::moved : Outcome::held;
            outcome.angle = moved ? std::optional(Entered<Angle>{degrees(2), ""}) : std::nullopt;
            return outcome;
        }
        case 5:
            return ShimAdded{shim(), around(25), ""};
        case 6:
            return ShimMeasured{shim(), around(25), ""};
        case 7:
            return StackBuilt{position(), {{shim(), shim()}}};
        case 8:
            return StackMoved{position(), static_cast<StackMove>(upTo(3))};
        case 9:
            return RecheckMade{position(), static_cast<Feel>(upTo(3)), ""};
        case 10:
            return BandSet{"residual", {thou(-1 - upTo(2)), ""}, {thou(1 + upTo(2)), ""}, {}, "", "tried"};
        case 11:
            return Struck{1 + upTo(static_cast<int>(bench.ledger.size())), "a slip"};
        case 12:
            return JudgedAgain{"stack:" + code(position()), "it stands"};
        case 13:
            return PartChanged{Part::panRail, "", "dressed"};
        case 14:
            return PickupReading{static_cast<PickupTerm>(upTo(4)), around(300), ""};
        case 15:
            return FindingOpened{"F" + std::to_string(1 + upTo(3)), "", "a burr"};
        case 16:
            return FindingSettled{"F" + std::to_string(1 + upTo(3)), "stoned"};
        case 17:
            return GirdleWaySet{GirdleFace::stamped, EngineEnd::rear, upTo(2) == 0 ? Side::left : Side::right};
        case 18:
            return CrankLaidIn{upTo(3) != 0, ""};
        case 19:
            return InstrumentAdded{drafts::instrument("LEAVES", InstrumentType::feelerGauge, upTo(4))};
        default:
            return GapReading{position(), 1 + upTo(3), around(50), upTo(2) == 0 ? "LEAVES" : ""};
        }
    }

    std::mt19937 m_random;
};

/// The ledger without the struck entries and the strikes themselves, with the numbers of the entries kept: what would
/// stand if they had never been made.
Facts foldLiveOnly(const Ledger& ledger) {
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        if (!ledger.isStruck(entry.sequence) && !entry.body.is<Struck>()) {
            apply(facts, entry);
        }
    }
    facts.lastEntry = ledger.size();
    return facts;
}

/// What stands as if an entry had never been made.
Facts withoutEntry(const Ledger& ledger, std::int64_t leftOut) {
    Facts facts;
    for (const Entry& entry : ledger.entries()) {
        if (entry.sequence != leftOut && !ledger.isStruck(entry.sequence)) {
            apply(facts, entry);
        }
    }
    return facts;
}

} // namespace

TEST(Property, replaying_any_prefix_then_the_rest_equals_replaying_all) {
    int entries = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        Bench bench;
        RandomJob(seed).run(bench, 250);
        entries += static_cast<int>(bench.ledger.size());
        // The bench folded one entry after another; a fresh fold sees the whole ledger at once.
        EXPECT_EQ(seen(assess(bench.ledger)), seen(bench.assessment)) << "seed " << seed;
        for (std::int64_t cut = 1; cut < bench.ledger.size(); cut += 37) {
            Ledger copy;
            for (std::int64_t n = 1; n <= cut; ++n) {
                ASSERT_TRUE(copy.appendSealed(bench.ledger.at(n)));
            }
            (void)assess(copy);
            for (std::int64_t n = cut + 1; n <= bench.ledger.size(); ++n) {
                ASSERT_TRUE(copy.appendSealed(bench.ledger.at(n)));
            }
            EXPECT_EQ(seen(assess(copy)), seen(bench.assessment)) << "seed " << seed << " cut " << cut;
        }
    }
    EXPECT_GT(entries, 40 * 40) << "the random jobs must not be refused wholesale";
}

TEST(Property, striking_an_entry_equals_never_having_made_it) {
    int strikes = 0;
    for (unsigned seed = 100; seed < 160; ++seed) {
        Bench bench;
        RandomJob job(seed);
        job.run(bench, 150);
        for (std::int64_t n = 1; n <= bench.ledger.size(); ++n) {
            if (bench.ledger.isStruck(n) || bench.ledger.at(n).body.is<Struck>()) {
                continue;
            }
            const std::string without = seen(assess(withoutEntry(bench.ledger, n)));
            if (const auto strike = bench.tryTo(Struck{n, "a slip"})) {
                ++strikes;
                EXPECT_EQ(seen(bench.assessment), without) << "seed " << seed << " entry " << n;
                EXPECT_EQ(seen(bench.assessment), seen(assess(foldLiveOnly(bench.ledger))));
                break;
            }
        }
    }
    EXPECT_GT(strikes, 30);
}

TEST(Property, what_a_strike_leaves_is_told_by_the_judging_of_it_unless_gates_must_be_judged_again) {
    Bench bench;
    RandomJob(7).run(bench, 150);
    const std::int64_t note = bench.make(NoteAdded{"", "to be struck"});
    std::optional<Facts> afterwards;
    ASSERT_TRUE(mayAppend(bench.ledger, bench.facts, bench.assessment, "Mira", NoteAdded{"", "x"}, {}, &afterwards));
    EXPECT_FALSE(afterwards) << "a note strikes nothing";
    ASSERT_TRUE(mayAppend(bench.ledger, bench.facts, bench.assessment, "Mira", Struck{note, "slip"}, {}, &afterwards));
    ASSERT_TRUE(afterwards);
    Ledger struck = bench.ledger;
    struck.append({}, "Mira", Struck{note, "slip"});
    EXPECT_EQ(seen(assess(*afterwards)), seen(assess(struck)));
    EXPECT_EQ(afterwards->notes.size() + 1, bench.facts.notes.size());
    EXPECT_EQ(afterwards->lastEntry, fold(struck).lastEntry);

    // A closing step that was never allowed counts for nothing: only `fold` knows.
    Ledger forged = bench.ledger;
    forged.append({}, "Mira", ClosingStepDone{ClosingStep::stacksRefitted, {}, ""});
    const Facts facts = fold(forged);
    ASSERT_FALSE(facts.neverValid.empty());
    afterwards.reset();
    (void)mayAppend(forged, facts, assess(facts), "Mira", Struck{note, "slip"}, {}, &afterwards);
    EXPECT_FALSE(afterwards);
}

TEST(Property, every_live_entry_of_an_accepted_ledger_is_admitted_on_replay) {
    for (unsigned seed = 200; seed < 230; ++seed) {
        Bench bench;
        RandomJob(seed).run(bench, 200);
        Facts facts;
        for (const Entry& entry : bench.ledger.entries()) {
            if (bench.ledger.isStruck(entry.sequence) || entry.body.is<Struck>()) {
                continue;
            }
            const auto ok = admit(facts, entry.person, entry.body);
            ASSERT_TRUE(ok) << "seed " << seed << " entry " << entry.sequence << ": " << ok.error().sentence;
            apply(facts, entry);
        }
    }
}

TEST(Property, a_gate_is_open_exactly_when_nothing_holds_it) {
    for (unsigned seed = 300; seed < 320; ++seed) {
        Bench bench;
        RandomJob(seed).run(bench, 120);
        for (const Gate& gate : bench.assessment.gates) {
            EXPECT_EQ(gate.isOpen, gate.holding.empty());
            for (const std::size_t i : gate.needs) {
                const bool holds = std::find(gate.holding.begin(), gate.holding.end(), i) != gate.holding.end();
                EXPECT_NE(bench.assessment.checks[i].isGood(), holds);
            }
        }
    }
}
