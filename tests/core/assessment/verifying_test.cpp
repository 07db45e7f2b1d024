// SPDX-License-Identifier: GPL-3.0-or-later
/// Verify rounds as they are really made: what counts, by which method, and by whom.
#include "bench.h"

#include <assessment/fastener_groups.h>
#include <assessment/second_person.h>
#include <assessment/specified.h>
#include <assessment/tightening_order.h>
#include <gmock/gmock.h>

namespace caprail {
namespace {

using testing::HasSubstr;

constexpr FastenerId first1L{FastenerKind::mainCap, 1, Side::left, Ring::inner};
constexpr FastenerId rod1L{FastenerKind::rod, 1, Side::left, Ring::inner};

Entered<Torque> feet(double value, const char* typed) {
    return {poundFeet(value), typed};
}

/// As `group` of the bench, with what a test changes about it.
FastenerGroupSet groupNow(const Bench& bench, FastenerKind kind) {
    return bench.facts.groups.at({kind}).what;
}

class Verifying : public testing::Test {
protected:
    Verifying() {
        bench.tightenAll();
        bench.layIn();
    }
    void begin() { bench.make(RoundBegun{static_cast<std::int64_t>(bench.facts.rounds.size()) + 1, "W1"}); }
    /// Past what is judged on entry, as an import or an older program did.
    void inOldRecord(Body body) {
        const Entry& entry = bench.ledger.append({1'700'000'900'000}, "Mira", std::move(body));
        apply(bench.facts, entry);
        bench.assessment = assess(bench.facts);
    }
    /// Every fastener of the round, those of `kind` as `make` says, the others as they should be.
    template <class Make> void all(FastenerKind kind, Make make) {
        const auto number = static_cast<std::int64_t>(bench.facts.rounds.size()) + 1;
        inOldRecord(RoundBegun{number, "W1"});
        for (const FastenerId f : bench.facts.layout->verifiedFasteners()) {
            inOldRecord(f.kind == kind ? make(drafts::held(number, f)) : drafts::held(number, f));
        }
    }
    const Check& round() { return *bench.assessment.find("verify-round"); }
    Bench bench;
};

TEST_F(Verifying, counts_a_round_at_the_specified_torque) {
    all(FastenerKind::mainCap, [](RoundOutcome o) { return o; });
    EXPECT_TRUE(round().isGood()) << round().sentence;
}

TEST_F(Verifying, leads_to_the_next_fastener_of_the_round_also_after_one_moved_and_after_a_restart) {
    bench.survey();
    begin();
    const std::vector<FastenerId> order = verifyOrder(bench.facts);
    bench.make(drafts::held(1, order[0]));
    RoundOutcome moved = drafts::held(1, order[1]);
    moved.outcome = Outcome::moved;
    moved.angle = Entered<Angle>{degrees(8), "8"};
    bench.make(moved);
    const auto leadsTo = [](const Assessment& assessment) {
        EXPECT_EQ(assessment.next.destination.station, Station::fasteners);
        return assessment.next.destination.subject;
    };
    EXPECT_EQ(leadsTo(bench.assessment), code(order[2])) << "the gap that it spoiled waits until the round is finished";
    EXPECT_THAT(bench.assessment.next.sentence, HasSubstr(describe(order[2])));
    EXPECT_EQ(leadsTo(assess(bench.ledger)), code(order[2])) << "the program was closed in between";
}

TEST_F(Verifying, counts_nothing_that_was_pulled_below_what_is_specified) {
    all(FastenerKind::mainCap, [](RoundOutcome o) {
        o.torque = feet(20, "20 lbf·ft");
        return o;
    });
    EXPECT_EQ(round().state, CheckState::notProven);
    EXPECT_THAT(round().sentence, HasSubstr("pulled at 20.0 lbf·ft, and 70.0 lbf·ft is specified"));
    EXPECT_FALSE(bench.isOpen(GateKind::closing));
}

TEST_F(Verifying, counts_nothing_without_a_torque) {
    all(FastenerKind::rod, [](RoundOutcome o) {
        o.torque.reset();
        return o;
    });
    EXPECT_EQ(round().state, CheckState::notProven);
    EXPECT_THAT(round().sentence, HasSubstr("rod 1 left has an outcome without a torque"));
    EXPECT_EQ(stillToPull(bench.facts, bench.facts.rounds.back()).size(), 4U) << "the four rod bolts";
}

TEST_F(Verifying, counts_nothing_with_a_wrench_that_is_none_or_is_used_outside_its_range) {
    InstrumentAdded small = drafts::wrench("SMALL");
    small.largestTorque = Entered<Torque>{poundFeet(30), ""};
    bench.make(small);
    InstrumentAdded unknown = drafts::wrench("RANGELESS");
    unknown.smallestTorque.reset();
    unknown.largestTorque.reset();
    bench.make(unknown);
    for (const auto& [wrench, why] : {std::pair("MIC", "pulls no torque"), std::pair("SMALL", "outside the range of SMALL"),
                                      std::pair("RANGELESS", "range of RANGELESS is not known"),
                                      std::pair("GONE", "Nothing was known of GONE")}) {
        all(FastenerKind::mainCap, [&, name = wrench](RoundOutcome o) {
            o.instrument = name;
            return o;
        });
        EXPECT_EQ(round().state, CheckState::notProven) << wrench;
        EXPECT_THAT(round().sentence, HasSubstr(why));
    }
}

TEST_F(Verifying, takes_the_same_torque_in_another_unit_for_the_same) {
    all(FastenerKind::mainCap, [](RoundOutcome o) {
        o.torque = Entered<Torque>{newtonMetres(94.9), "94.9 N·m"};
        return o;
    });
    EXPECT_TRUE(round().isGood()) << round().sentence;
}

TEST(SameAsTyped, is_decided_by_the_finer_digit_and_not_by_a_wrench_s_error) {
    const auto specified = feet(70, "70 lbf·ft");
    EXPECT_TRUE(isSameAsTyped(feet(70, "70"), specified));
    EXPECT_TRUE(isSameAsTyped(Entered<Torque>{poundInches(840), "840 lbf·in"}, specified));
    EXPECT_FALSE(isSameAsTyped(feet(67.3, "67.3"), specified)) << "within 4 %, and not what is specified";
    EXPECT_FALSE(isSameAsTyped(feet(70.4, "70.4"), specified));
    EXPECT_FALSE(isSameAsTyped(feet(70, "70"), feet(70.4, "70.4 lbf·ft")));
    EXPECT_FALSE(isSameAsTyped(Entered<Torque>{newtonMetres(70), "70"}, feet(70, "70"))) << "another unit";
    EXPECT_FALSE(isSameAsTyped(Entered<Torque>{newtonMetres(11), "11 N·m"}, feet(8.4, "8.4 lbf·ft")));
    EXPECT_TRUE(isSameAsTyped(Entered<Angle>{degrees(90), "90"}, Entered<Angle>{degrees(90), ""}));
    EXPECT_FALSE(isSameAsTyped(Entered<Angle>{degrees(85), "85"}, Entered<Angle>{degrees(90), "90"}));
}

TEST_F(Verifying, does_not_take_67_3_for_full_torque_when_tightened) {
    bench.make(FastenerTightened{first1L, feet(67.3, "67.3"), {}, {}, "W1"});
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::out);
    EXPECT_FALSE(isTightAsSpecified(bench.facts, first1L));
}

TEST_F(Verifying, asks_back_what_is_far_over_the_specification_or_outside_the_wrench) {
    InstrumentAdded wrench = drafts::wrench("W20");
    wrench.smallestTorque = Entered<Torque>{poundFeet(20), ""};
    wrench.largestTorque = Entered<Torque>{poundFeet(200), ""};
    bench.make(wrench);
    EXPECT_THAT(bench.refusal(FastenerTightened{first1L, feet(170, "170"), {}, {}, "W20"}), HasSubstr("far over"));
    EXPECT_THAT(bench.refusal(FastenerTightened{first1L, feet(8, "8"), {}, {}, "W20"}), HasSubstr("range of W20"));
    begin();
    EXPECT_THAT(bench.refusal(RoundOutcome{1, first1L, Outcome::held, {}, feet(170, "170"), "W20"}),
                HasSubstr("far over"));
    bench.make(RoundOutcome{1, first1L, Outcome::held, {}, feet(170, "170!"), "W20"});
    EXPECT_EQ(stillToPull(bench.facts, bench.facts.rounds.back()).size(), 10U) << "insisted on, and it counts for nothing";
}

TEST_F(Verifying, asks_back_below_a_fifth_of_a_wrench_whose_lower_limit_is_not_marked) {
    InstrumentAdded wrench = drafts::wrench("W500");
    wrench.smallestTorque.reset();
    wrench.largestTorque = Entered<Torque>{poundFeet(500), ""};
    bench.make(wrench);
    EXPECT_THAT(bench.refusal(FastenerTightened{first1L, feet(70, "70"), {}, {}, "W500"}), HasSubstr("range of W500"));
}

TEST_F(Verifying, lets_an_outcome_that_counts_for_nothing_be_made_again_and_no_other) {
    begin();
    bench.make(RoundOutcome{1, first1L, Outcome::held, {}, feet(20, "20"), "W1"});
    bench.make(drafts::held(1, first1L));
    EXPECT_EQ(stillToPull(bench.facts, bench.facts.rounds.back()).size(), 9U);
    EXPECT_THAT(bench.refusal(drafts::held(1, first1L)), HasSubstr("already"));
    RoundOutcome moved = drafts::held(1, rod1L);
    moved.outcome = Outcome::moved;
    moved.angle = Entered<Angle>{degrees(4), "4"};
    moved.torque.reset();
    bench.make(moved);
    EXPECT_THAT(bench.refusal(drafts::held(1, rod1L)), HasSubstr("already")) << "a movement stays, torque or not";
}

// --- By method ---------------------------------------------------------------------------------------------------

TEST(VerifyMethodOf, follows_how_a_group_is_tightened) {
    FastenerGroupSet group = drafts::group(FastenerKind::rod, 4, "3/8-24", 45);
    EXPECT_EQ(verifiedBy(group), VerifyMethod::torque);
    group.verifiedBy = VerifyMethod::witnessMark;
    EXPECT_EQ(verifiedBy(group), VerifyMethod::witnessMark);
    group.verifiedBy = VerifyMethod::torque;
    for (const TighteningMethod method : {TighteningMethod::torqueAndAngle, TighteningMethod::toYield}) {
        group.method = method;
        EXPECT_EQ(verifiedBy(group), VerifyMethod::witnessMark) << "never by pulling, whatever somebody set";
    }
    group.method = TighteningMethod::stretch;
    EXPECT_EQ(verifiedBy(group), VerifyMethod::length);
    EXPECT_FALSE(isSingleUse(group));
    group.method = TighteningMethod::toYield;
    EXPECT_TRUE(isSingleUse(group));
    group.isSingleUse = false;
    EXPECT_FALSE(isSingleUse(group));
}

class ByMethod : public Verifying {
protected:
    /// The rods tightened by a method of their own, and brought to it.
    void rodsBy(TighteningMethod method) {
        FastenerGroupSet group = groupNow(bench, FastenerKind::rod);
        group.method = method;
        group.angle = Entered<Angle>{degrees(90), "90"};
        group.stretch = Entered<Length>{thou(6), "0.0060"};
        bench.make(group);
        for (const FastenerId f : bench.facts.layout->rodFasteners()) {
            FastenerTightened tightened{f, {}, {}, {}, "W1"};
            tightened.isNew = true;
            if (method == TighteningMethod::stretch) {
                tightened.stretch = group.stretch;
                tightened.instrument = "MIC";
            } else {
                tightened.torque = group.torque;
                tightened.angle = group.angle;
            }
            bench.make(tightened);
        }
    }
    /// The mains by torque, as they should be.
    void mains() {
        begin();
        for (const FastenerId f : bench.facts.layout->mainFasteners()) {
            bench.make(drafts::held(1, f));
        }
    }
};

TEST_F(ByMethod, a_fastener_by_angle_is_never_pulled_and_its_witness_mark_counts) {
    rodsBy(TighteningMethod::torqueAndAngle);
    mains();
    EXPECT_THAT(bench.refusal(drafts::held(1, rod1L)), HasSubstr("must not be pulled again"));
    for (const FastenerId f : bench.facts.layout->rodFasteners()) {
        RoundOutcome seen{1, f, Outcome::held, {}, {}, ""};
        seen.by = VerifyMethod::witnessMark;
        bench.make(seen);
    }
    EXPECT_TRUE(round().isGood()) << round().sentence;
}

TEST_F(ByMethod, a_pull_in_an_old_record_proves_nothing_of_a_fastener_by_angle) {
    rodsBy(TighteningMethod::toYield);
    all(FastenerKind::rod, [](RoundOutcome o) { return o; });
    EXPECT_EQ(round().state, CheckState::notProven);
    EXPECT_THAT(round().sentence, HasSubstr("it must not be pulled"));
}

TEST_F(ByMethod, a_stretched_fastener_is_verified_by_its_length) {
    rodsBy(TighteningMethod::stretch);
    mains();
    EXPECT_THAT(bench.refusal(drafts::held(1, rod1L)), HasSubstr("read its stretch"));
    for (const FastenerId f : bench.facts.layout->rodFasteners()) {
        RoundOutcome read{1, f, Outcome::held, {}, {}, "MIC"};
        read.by = VerifyMethod::length;
        read.stretch = Entered<Length>{f == rod1L ? thou(5.5) : thou(6.2), ""};
        bench.make(read);
    }
    EXPECT_EQ(round().state, CheckState::notProven);
    EXPECT_THAT(round().sentence, HasSubstr("rod 1 left has a stretch of 0.0055")) << "0.0060 ± 0.0003 in";
    RoundOutcome again{1, rod1L, Outcome::held, {}, {}, "MIC"};
    again.by = VerifyMethod::length;
    again.stretch = Entered<Length>{thou(5.8), ""};
    bench.make(again);
    EXPECT_TRUE(round().isGood()) << round().sentence;
}

TEST_F(ByMethod, a_single_use_fastener_tightened_twice_opens_a_finding_that_holds_the_gate) {
    rodsBy(TighteningMethod::toYield);
    EXPECT_TRUE(bench.facts.findings.empty()) << "once is what it is made for";
    FastenerTightened again = bench.facts.fasteners.at(rod1L).tightened->what;
    again.isNew.reset();
    const auto entry = bench.make(again);
    const std::string name = "single-use-" + std::to_string(entry);
    ASSERT_TRUE(bench.facts.findings.contains(name));
    EXPECT_EQ(bench.facts.findings.at(name).opened.what.place, "rod-1L");
    EXPECT_EQ(bench.stateOf("findings"), CheckState::out);
    bench.make(FindingSettled{name, "a new bolt is on its way; this one comes out"});
    again.isNew = true;
    bench.make(again);
    EXPECT_EQ(bench.stateOf("findings"), CheckState::good) << "a new piece begins anew";
    again.isNew.reset();
    bench.make(again);
    EXPECT_EQ(bench.stateOf("findings"), CheckState::out);
}

TEST_F(ByMethod, striking_the_second_tightening_takes_its_finding_back) {
    rodsBy(TighteningMethod::toYield);
    FastenerTightened again = bench.facts.fasteners.at(rod1L).tightened->what;
    again.isNew.reset();
    const auto entry = bench.make(again);
    EXPECT_EQ(bench.facts.findings.size(), 1U);
    bench.make(Struck{entry, "typed twice"});
    EXPECT_TRUE(bench.facts.findings.empty());
}

// --- Where the work goes on --------------------------------------------------------------------------------------

TEST(NextStep, follows_the_sequence_at_tightening) {
    Bench bench;
    const auto order = tighteningOrder(bench.facts, FastenerKind::mainCap);
    ASSERT_EQ(order.front().number, 2) << "from the centre cap outwards; common practice, no source";
    const Check& check = *bench.assessment.find("fasteners:main");
    EXPECT_EQ(check.destination.subject, code(order.front()));
    bench.make(FastenerTightened{order.front(), feet(70, ""), {}, {}, "W1"});
    EXPECT_EQ(bench.assessment.find("fasteners:main")->destination.subject, code(order[1]));
    FastenerGroupSet group = groupNow(bench, FastenerKind::mainCap);
    group.sequence.names = {"main-3R", "main-1L"};
    bench.make(group);
    EXPECT_EQ(bench.assessment.find("fasteners:main")->destination.subject, "main-3R") << "the group's own sequence";
}

TEST_F(Verifying, next_is_the_next_fastener_of_an_open_round_in_its_sequence_also_after_a_movement) {
    bench.survey();
    begin();
    const auto order = verifyOrder(bench.facts);
    EXPECT_EQ(bench.assessment.next.destination, (Destination{Station::fasteners, code(order[0])}));
    RoundOutcome moved = drafts::held(1, order[0]);
    moved.outcome = Outcome::moved;
    moved.angle = Entered<Angle>{degrees(8), "8"};
    bench.make(moved);
    EXPECT_EQ(bench.stateOf("gap:2L"), CheckState::stale);
    EXPECT_EQ(bench.assessment.next.destination, (Destination{Station::fasteners, code(order[1])})) << "the round is finished first";
    EXPECT_EQ(assess(fold(bench.ledger)).next.destination.subject, code(order[1])) << "and so after a restart";
}

// --- A second person ---------------------------------------------------------------------------------------------

TEST_F(Verifying, is_left_to_a_second_person_where_the_shop_s_rule_asks_for_one) {
    RulesSet rules = bench.facts.rules;
    rules.secondPersonVerifies = true;
    bench.make(rules);
    EXPECT_THAT(bench.refusal(RoundBegun{1, "W1"}), HasSubstr("let somebody else make the round"));
    bench.make(PersonAdded{"Teo", "second pair of eyes"});
    EXPECT_TRUE(mayAppend(bench.ledger, bench.facts, bench.assessment, "Teo", RoundBegun{1, "W1"}));
    all(FastenerKind::mainCap, [](RoundOutcome o) { return o; }); // an old record, by the one who tightened them
    EXPECT_EQ(round().state, CheckState::notProven);
    EXPECT_THAT(round().sentence, HasSubstr("asks for a second person"));
}

TEST(SecondPerson, signs_off_where_the_shop_s_rule_asks_for_one) {
    Bench bench;
    bench.readyToClose();
    RulesSet rules = bench.facts.rules;
    rules.secondPersonSigns = true;
    bench.make(rules);
    bench.make(PersonAdded{"Teo", "second pair of eyes"});
    // Whatever closing asks for besides is not the question here: the steps as they stand in the facts.
    Facts facts = bench.facts;
    for (const auto& [step, name] : allWords<ClosingStep>()) {
        facts.closing[step] = {facts.lastEntry, {}, "Mira", ClosingStepDone{step, {}, ""}};
    }
    const auto refused = maySecondPerson(facts, "Mira", SignedOff{"done"});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("let somebody else look at it all and sign"));
    EXPECT_TRUE(maySecondPerson(facts, "Teo", SignedOff{"done"}));
    facts.rules.secondPersonSigns = false;
    EXPECT_TRUE(maySecondPerson(facts, "Mira", SignedOff{"done"}));
}

TEST_F(Verifying, counts_it_as_a_deviation_when_the_second_person_is_ruled_out_again) {
    bench.survey();
    RulesSet rules = bench.facts.rules;
    rules.secondPersonVerifies = true;
    bench.make(rules);
    const auto before = bench.facts.deviations.size();
    rules.secondPersonVerifies = false;
    bench.make(rules);
    ASSERT_EQ(bench.facts.deviations.size(), before + 1);
    EXPECT_TRUE(std::holds_alternative<RulesChanged>(bench.facts.deviations.back().what));
}

} // namespace
} // namespace caprail

TEST(NextStep, leads_to_the_caps_torque_where_a_bore_waits_for_it) {
    Bench bench;
    const JournalId front{JournalKind::main, 1};
    for (const std::int64_t station : {1, 2}) {
        for (const std::int64_t direction : {1, 2}) {
            bench.make(JournalReading{front, station, direction, {inches(2.5), ""}, "MIC"});
        }
    }
    const auto first = looseAt(bench.facts, front);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->number, 1);
    const Check& check = *bench.assessment.find(CheckKind::mainClearance, front);
    EXPECT_EQ(check.destination, (Destination{Station::bearings, code(front)})) << "it is still a check of the bearings";
    EXPECT_EQ(bench.assessment.next.destination, (Destination{Station::fasteners, code(*first)}));
    EXPECT_THAT(check.remedy, HasSubstr(describe(*first)));
    EXPECT_THAT(bench.refusal(BoreReading{front, BoreMethod::boreWithShells, 1, {inches(2.502), ""}, "BORE"}),
                HasSubstr(describe(*first)));
}
