// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit that a refusal names, from both sides: the last value that is taken and the first that is not.
#include "bench.h"

#include <assessment/specified.h>
#include <assessment/work_order.h>
#include <functional>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

const Position at2R{2, Side::right};
const JournalId main1{JournalKind::main, 1};
const FastenerId main1L{FastenerKind::mainCap, 1, Side::left, Ring::inner};
constexpr Length step = nanometres(1);

struct Limit {
    std::string says; ///< what the refusal holds
    std::vector<Body> taken, refused;
};

/// A kind with one of its members set.
template <class Kind, class Member, class Value>
Body with(Kind kind, Member Kind::*member, const Value& value) {
    kind.*member = value;
    return kind;
}

template <class Kind, class Member> Limit whole(Kind kind, Member Kind::*member, std::int64_t lo, std::int64_t hi, const char* says) {
    return {says,
            {with(kind, member, lo), with(kind, member, hi)},
            {with(kind, member, lo - 1), with(kind, member, hi + 1)}};
}

Entered<Length> length(Length l) { return {l, ""}; }

template <class Kind>
Limit largest(Kind kind, Entered<Length> Kind::*member) {
    return {"too large",
            {with(kind, member, length(inches(60)))},
            {with(kind, member, length(inches(60) + step))}};
}

template <class Kind>
Limit aboveZero(Kind kind, Entered<Length> Kind::*member) {
    return {"more than zero", {with(kind, member, length(step))}, {with(kind, member, length(Length()))}};
}

void holds(const Facts& facts, const Limit& limit) {
    for (std::size_t i = 0; i < limit.taken.size(); ++i) {
        const auto made = makesSense(facts, limit.taken[i]);
        EXPECT_TRUE(made) << limit.says << ", taken " << i << ": " << (made ? "" : made.error().sentence);
    }
    for (std::size_t i = 0; i < limit.refused.size(); ++i) {
        const auto made = makesSense(facts, limit.refused[i]);
        ASSERT_FALSE(made) << limit.says << ", refused " << i;
        EXPECT_THAT(made.error().sentence, HasSubstr(limit.says)) << i;
    }
}

} // namespace

TEST(Limits, of_the_rules_are_those_that_their_refusal_names) {
    const RulesSet rules;
    const Bench bench;
    for (const Limit& limit : {
             whole(rules, &RulesSet::minimumPasses, 1, 20, "passes 1 to 20"),
             whole(rules, &RulesSet::largestStack, 0, 50, "shims per stack 0 to 50"),
             whole(rules, &RulesSet::torqueScatterPercent, 0, 90, "torque scatter 0 to 90 %"),
             Limit{"must be positive",
                   {with(rules, &RulesSet::repeatLimit, step), with(rules, &RulesSet::kitTolerance, step),
                    with(rules, &RulesSet::counterweightMinimum, Length())},
                   {with(rules, &RulesSet::repeatLimit, Length()), with(rules, &RulesSet::kitTolerance, Length()),
                    with(rules, &RulesSet::counterweightMinimum, -step)}},
         }) {
        holds(bench.facts, limit);
    }
}

TEST(Limits, of_fastener_groups_and_wrenches_are_those_that_their_refusals_name) {
    const Bench bench;
    const FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 6, "7/16-20", 70);
    const InstrumentAdded wrench{"W9", InstrumentType::torqueWrench, "", "", {}, {}, {}, {}, {}, {}, {}};
    const auto reach = [&](double lo, double hi) {
        InstrumentAdded i = wrench;
        i.smallestTorque = Entered<Torque>{poundFeet(lo), ""};
        i.largestTorque = Entered<Torque>{poundFeet(hi), ""};
        return i;
    };
    const auto calibration = [&](const char* done, const char* due) {
        InstrumentAdded i = wrench;
        i.calibrated = *parseDate(done);
        i.due = *parseDate(due);
        return i;
    };
    for (const Limit& limit : {
             whole(group, &FastenerGroupSet::count, 1, 200, "1 to 200 fasteners"),
             whole(group, &FastenerGroupSet::steps, 1, 10, "1 to 10 steps"),
             whole(wrench, &InstrumentAdded::dueCycles, 1, 1'000'000, "at most 1000000"),
             whole(wrench, &InstrumentAdded::cycles, 0, 1'000'000, "not negative"),
             Limit{"give the smaller first", {reach(20, 20), reach(20, 250)}, {reach(250, 20)}},
             Limit{"before it was calibrated",
                   {calibration("2026-03-10", "2026-03-10"), calibration("2026-03-10", "2027-03-10")},
                   {calibration("2026-03-10", "2026-03-09")}},
         }) {
        holds(bench.facts, limit);
    }
}

TEST(Limits, of_a_torque_and_an_angle_of_tightening_are_those_that_their_refusals_name) {
    Bench bench;
    bench.layIn();
    bench.make(RoundBegun{1, "W1"});
    const auto tightened = [](Torque torque, std::optional<Angle> angle) {
        FastenerTightened t{main1L, Entered<Torque>{torque, ""}, {}, {}, "W1"};
        if (angle) {
            t.angle = Entered<Angle>{*angle, ""};
        }
        return t;
    };
    const auto outcome = [](Outcome what, std::optional<Angle> angle, std::optional<Torque> torque = {}) {
        RoundOutcome o{1, main1L, what, {}, {}, "W1"};
        if (angle) {
            o.angle = Entered<Angle>{*angle, ""};
        }
        if (torque) {
            o.torque = Entered<Torque>{*torque, ""};
        }
        return o;
    };
    const Torque least = millinewtonMetres(1), most = newtonMetres(3000);
    const Angle little(1);
    for (const Limit& limit : {
             Limit{"more than zero and at most",
                   {tightened(least, {}), tightened(most, {}), outcome(Outcome::held, {}, most)},
                   {tightened(Torque(), {}), tightened(most + least, {}), outcome(Outcome::held, {}, most + least)}},
             Limit{"0 to three turns",
                   {tightened(poundFeet(40), Angle()), tightened(poundFeet(40), degrees(1080)),
                    outcome(Outcome::moved, degrees(1080))},
                   {tightened(poundFeet(40), -little), tightened(poundFeet(40), degrees(1080) + little),
                    outcome(Outcome::moved, degrees(1080) + little)}},
             Limit{"Say by what angle",
                   {outcome(Outcome::moved, little)},
                   {outcome(Outcome::moved, {}), outcome(Outcome::moved, Angle()), outcome(Outcome::moved, -little)}},
             Limit{"cannot have held and turned",
                   {outcome(Outcome::held, {}), outcome(Outcome::held, Angle())},
                   {outcome(Outcome::held, little), outcome(Outcome::held, -little)}},
             Limit{"a torque, an angle or a stretch",
                   {FastenerTightened{main1L, {}, Entered<Angle>{degrees(90), ""}, {}, ""},
                    FastenerTightened{main1L, {}, {}, length(thou(5)), ""}},
                   {FastenerTightened{main1L, {}, {}, {}, ""}}},
         }) {
        holds(bench.facts, limit);
    }
}

TEST(Limits, of_where_and_how_often_something_is_read_are_those_that_their_refusals_name) {
    Bench bench;
    bench.band("ring gap", 16, 24);
    const JournalReading journal{main1, 1, 1, length(inches(2.448)), "MIC"};
    const BoreReading bore{main1, BoreMethod::boreWithShells, 1, length(inches(2.45)), "BORE"};
    const FitReading fit{"ring gap", 1, length(thou(20)), ""};
    bench.band(bands::rodSideClearance, 10, 20);
    const FitReading onThrow{std::string(bands::rodSideClearance), 1, length(thou(15)), ""};
    for (const Limit& limit : {
             whole(journal, &JournalReading::station, 1, 9, "stations 1 to 9"),
             whole(journal, &JournalReading::direction, 1, 9, "directions 1 to 9"),
             whole(bore, &BoreReading::station, 1, 9, "stations 1 to 9"),
             whole(fit, &FitReading::place, 1, 99, "place 1 to 99"),
             whole(GapReading{at2R, 1, length(thou(50)), ""}, &GapReading::pass, 1, 99, "1 to 99"),
             Limit{"no throw",
                   {onThrow, with(onThrow, &FitReading::place, 2)},
                   {with(onThrow, &FitReading::place, 3)}},
         }) {
        holds(bench.facts, limit);
    }
}

TEST(Limits, of_a_length_are_more_than_zero_where_a_part_has_it_and_sixty_inches_everywhere) {
    Bench bench;
    bench.kit();
    bench.band(bands::crankEndPlay, 5, 8);
    const JournalReading journal{main1, 1, 1, length(inches(2.448)), "MIC"};
    const BoreReading bore{main1, BoreMethod::boreWithShells, 1, length(inches(2.45)), "BORE"};
    const ShellMeasured shell{"T1", JournalKind::main, ShellHalf::either, length(thou(95)), false, "MIC"};
    const ShimAdded added{"X1", length(thou(10)), ""};
    const ShimMeasured measured{"S-1L", length(thou(10)), "MIC"};
    const FitReading fit{std::string(bands::crankEndPlay), 1, length(thou(6)), ""};
    const GapReading gap{at2R, 1, length(thou(50)), "LEAVES"};
    const PickupReading pickup{PickupTerm::panDepth, length(inches(7)), "DEPTH"};
    for (const Limit& limit :
         {aboveZero(journal, &JournalReading::diameter), aboveZero(bore, &BoreReading::value),
          aboveZero(shell, &ShellMeasured::thickness), aboveZero(added, &ShimAdded::marked),
          aboveZero(measured, &ShimMeasured::thickness), largest(journal, &JournalReading::diameter),
          largest(bore, &BoreReading::value), largest(shell, &ShellMeasured::thickness),
          largest(added, &ShimAdded::marked), largest(measured, &ShimMeasured::thickness),
          largest(fit, &FitReading::value), largest(gap, &GapReading::gap), largest(pickup, &PickupReading::value),
          Limit{"too large",
                {with(gap, &GapReading::gap, length(-inches(60)))},
                {with(gap, &GapReading::gap, length(-inches(60) - step))}},
          Limit{"cannot be negative",
                {with(pickup, &PickupReading::value, length(Length()))},
                {with(pickup, &PickupReading::value, length(-step))}},
          Limit{"too large",
                {BandSet{"wide", length(thou(0)), length(inches(60)), {}, ""}},
                {BandSet{"wide", length(thou(0)), length(inches(60) + step), {}, ""}}},
          Limit{"lies outside the band",
                {BandSet{"narrow", length(thou(1)), length(thou(2)), length(thou(1)), ""},
                 BandSet{"narrow", length(thou(1)), length(thou(2)), length(thou(2)), ""}},
                {BandSet{"narrow", length(thou(1)), length(thou(2)), length(thou(1) - step), ""},
                 BandSet{"narrow", length(thou(1)), length(thou(2)), length(thou(2) + step), ""}}}}) {
        holds(bench.facts, limit);
    }
}

TEST(Limits, of_a_name_are_one_to_sixty_characters_without_spaces) {
    const Bench bench;
    const auto shim = [](const std::string& name) { return Body(ShimAdded{name, length(thou(10)), ""}); };
    const auto finding = [](const std::string& name) { return Body(FindingOpened{name, "", "burr"}); };
    const auto shell = [](const std::string& name) {
        return Body(ShellMeasured{name, JournalKind::main, ShellHalf::either, length(thou(95)), true, ""});
    };
    const std::string longest(60, 'a');
    for (const auto& of : std::vector<std::function<Body(const std::string&)>>{shim, finding, shell}) {
        holds(bench.facts,
              {"1 to 60 characters without spaces",
               {of("a"), of(longest)},
               {of(""), of(longest + "a"), of("a b"), of("a\tb"), of(" a")}});
    }
}

TEST(Limits, of_what_may_be_written_are_a_word_at_least) {
    Bench bench;
    bench.make(FindingOpened{"F1", "", "burr"});
    for (const char* nothing : {"", " ", "\t\n"}) {
        holds(bench.facts, {"nothing written for",
                            {NoteAdded{"", "x"}, FindingSettled{"F1", "x"}, Struck{1, "x"}, EngineDescribed{"", "", "x", "", ""}},
                            {NoteAdded{"", nothing}, FindingSettled{"F1", nothing}, FindingOpened{"F2", "", nothing},
                             Struck{1, nothing}, EngineDescribed{"", "", nothing, "", ""}, PersonAdded{nothing, ""},
                             JudgedAgain{nothing, "x"}, BandSet{nothing, length(thou(1)), length(thou(2)), {}, ""}}});
    }
}

TEST(Limits, of_what_is_specified_are_the_digit_typed_and_three_tenths_of_a_stretch) {
    // The stretch is common practice, no source.
    Bench bench;
    const auto isTight = [&](FastenerTightened what) {
        what.fastener = main1L;
        Facts facts = bench.facts;
        facts.fasteners[main1L].tightened = Seen<FastenerTightened>{1, {}, "Mira", what};
        return isTightAsSpecified(facts, main1L);
    };
    const auto pulled = [](double newton) {
        return FastenerTightened{{}, Entered<Torque>{newtonMetres(newton), ""}, {}, {}, ""};
    };
    const auto turned = [&](double angle) {
        FastenerTightened t = pulled(100);
        t.angle = Entered<Angle>{degrees(angle), ""};
        return t;
    };
    const auto stretched = [](double tenthsThou) {
        return FastenerTightened{{}, {}, {}, length(thou(tenthsThou / 10)), ""};
    };
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 6, "7/16-20", 70);
    group.torque = Entered<Torque>{newtonMetres(100), ""};
    bench.make(group);
    EXPECT_TRUE(isTight(pulled(100)));
    EXPECT_TRUE(isTight(pulled(100.05)));
    EXPECT_FALSE(isTight(pulled(100.051)));
    EXPECT_FALSE(isTight(pulled(99.949)));
    EXPECT_FALSE(isTight(stretched(50))) << "a group that is brought to a torque is not at torque by a stretch alone";

    group.method = TighteningMethod::torqueAndAngle;
    group.angle = Entered<Angle>{degrees(90), ""};
    bench.make(group);
    EXPECT_FALSE(isTight(pulled(100))) << "the angle is missing";
    EXPECT_TRUE(isTight(turned(90)));
    EXPECT_FALSE(isTight(turned(90.1)));
    EXPECT_FALSE(isTight(turned(89.9)));

    group.method = TighteningMethod::stretch;
    group.stretch = length(thou(5));
    bench.make(group);
    EXPECT_TRUE(isTight(stretched(53)));
    EXPECT_TRUE(isTight(stretched(47)));
    EXPECT_FALSE(isTight(stretched(53.1)));
    EXPECT_FALSE(isTight(stretched(46.9)));
    EXPECT_FALSE(isTight(pulled(100))) << "a group that is brought to a stretch is not at it by a torque alone";
}
