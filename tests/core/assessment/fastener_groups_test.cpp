// SPDX-License-Identifier: GPL-3.0-or-later
/// Fastener groups as sets of places, what a specification comes to, and what a turned nut or washer does.
#include "bench.h"

#include <assessment/fastener_groups.h>
#include <assessment/gap_window.h>
#include <assessment/program_findings.h>
#include <assessment/specified.h>
#include <assessment/tightening_order.h>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <ledger/entry_json.h>

namespace caprail {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;

constexpr FastenerId rear3L{FastenerKind::mainCap, 3, Side::left, Ring::inner};
constexpr FastenerId stud1L{FastenerKind::mainCap, 1, Side::left, Ring::inner};
constexpr Position place2R{2, Side::right};
constexpr FastenerId stud2R{FastenerKind::mainCap, 2, Side::right, Ring::inner};

/// The rear cap on bolts with a thread and a torque of their own, the others on studs.
FastenerGroupSet rearCap(double torque = 65) {
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 2, "1/2-13", torque);
    group.name = "rear cap";
    group.places = NameList{{"main-3L", "main-3R"}};
    group.piece = FastenerPiece::bolt;
    return group;
}

TEST(FastenerGroup, of_places_specifies_them_and_leaves_the_rest_to_the_wider_one) {
    Bench bench;
    bench.make(rearCap());
    EXPECT_EQ(bench.facts.groupOf(rear3L)->what.torque->value, poundFeet(65));
    EXPECT_EQ(bench.facts.groupOf(stud1L)->what.torque->value, poundFeet(70));
    EXPECT_EQ(pieceOf(bench.facts, rear3L), FastenerPiece::bolt);
    EXPECT_EQ(pieceOf(bench.facts, stud1L), FastenerPiece::stud);
    EXPECT_THAT(membersOf(bench.facts, {FastenerKind::mainCap}), SizeIs(4));
    EXPECT_EQ(describePlaces(membersOf(bench.facts, {FastenerKind::mainCap, {}, "rear cap"})), "main 3");
    EXPECT_EQ(describePlaces(membersOf(bench.facts, {FastenerKind::mainCap})), "main 1, 2");
    EXPECT_EQ(describePlaces({rear3L}), "main 3 left");
}

TEST(FastenerGroup, of_the_rear_cap_is_good_at_its_own_torque) {
    Bench bench;
    bench.make(rearCap());
    for (const FastenerId f : bench.facts.layout->mainFasteners()) {
        bench.make(FastenerTightened{f, bench.facts.groupOf(f)->what.torque, {}, {}, "W1"});
    }
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::good);
}

TEST(FastenerGroup, that_takes_over_a_place_with_the_same_values_changes_nothing_and_with_others_only_that_cap) {
    Bench bench;
    bench.tightenAll();
    bench.bearings();
    FastenerGroupSet same = bench.facts.groups.at({FastenerKind::mainCap}).what;
    same.name = "rear cap";
    same.places = NameList{{"main-3L", "main-3R"}};
    bench.make(same);
    EXPECT_EQ(bench.stateOf("main-clearance:main-3"), CheckState::good);
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::good);
    bench.make(rearCap());
    EXPECT_EQ(bench.stateOf("main-clearance:main-3"), CheckState::stale) << "studs gave way to bolts: measured again";
    EXPECT_EQ(bench.stateOf("main-clearance:main-1"), CheckState::good);
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::stale);
}

TEST(FastenerGroup, is_dissolved_by_an_empty_list_and_its_places_fall_back) {
    Bench bench;
    bench.make(rearCap());
    FastenerGroupSet dissolved = rearCap();
    dissolved.places = NameList{};
    bench.make(dissolved);
    EXPECT_EQ(bench.facts.groupOf(rear3L)->what.torque->value, poundFeet(70));
    EXPECT_TRUE(membersOf(bench.facts, {FastenerKind::mainCap, {}, "rear cap"}).empty());
}

TEST(FastenerGroup, of_the_girdle_counts_what_the_layout_ties) {
    Bench bench;
    bench.group(FastenerKind::girdleNut, 10, "7/16-20", 35);
    EXPECT_THAT(membersOf(bench.facts, {FastenerKind::girdleNut}), SizeIs(6)) << "three caps, whatever was typed";
    LayoutSet layout = drafts::threeMains();
    layout.tiedLast = 2;
    bench.make(layout);
    EXPECT_THAT(membersOf(bench.facts, {FastenerKind::girdleNut}), SizeIs(4));
}

TEST(FastenerGroup, of_the_pan_rail_may_mix_studs_and_bolts) {
    Bench bench;
    bench.group(FastenerKind::panRail, 14, "1/4-20", 5);
    FastenerGroupSet studs = drafts::group(FastenerKind::panRail, 2, "5/16-18", 8);
    studs.name = "studs";
    studs.places = NameList{{"pan-3", "pan-9"}};
    studs.piece = FastenerPiece::stud;
    bench.make(studs);
    EXPECT_EQ(rowCount(bench.facts, FastenerKind::panRail), 14);
    EXPECT_EQ(pieceOf(bench.facts, {FastenerKind::panRail, 3, Side::left, Ring::inner}), FastenerPiece::stud);
    EXPECT_EQ(pieceOf(bench.facts, {FastenerKind::panRail, 4, Side::left, Ring::inner}), FastenerPiece::bolt);
    EXPECT_EQ(describePlaces(membersOf(bench.facts, {FastenerKind::panRail})), "pan 1, 2, 4 to 8, 10 to 14");
    EXPECT_THAT(tighteningOrder(bench.facts, FastenerKind::panRail), SizeIs(14));
    bench.make(FastenerTightened{{FastenerKind::panRail, 9, Side::left, Ring::inner},
                                 Entered<Torque>{poundFeet(8), ""},
                                 {},
                                 {},
                                 "W1"});
    EXPECT_TRUE(isTightAsSpecified(bench.facts, {FastenerKind::panRail, 9, Side::left, Ring::inner}));
    EXPECT_THAT(bench.refusal(FastenerLoosened{{FastenerKind::panRail, 15, Side::left, Ring::inner}, ""}),
                HasSubstr("no fastener"));
}

TEST(FastenerGroup, refuses_places_without_a_name_of_another_kind_or_twice) {
    Bench bench;
    FastenerGroupSet group = rearCap();
    group.name.reset();
    EXPECT_THAT(bench.refusal(group), HasSubstr("name of its own"));
    group = rearCap();
    group.ring = Ring::inner;
    EXPECT_THAT(bench.refusal(group), HasSubstr("names no ring"));
    group = rearCap();
    group.places = NameList{{"rod-1L"}};
    EXPECT_THAT(bench.refusal(group), HasSubstr("rod-1L"));
    group.places = NameList{{"main-3L", "main-3L"}};
    EXPECT_THAT(bench.refusal(group), HasSubstr("twice"));
    group = rearCap();
    group.sequence.names = {"main-1L"};
    EXPECT_THAT(bench.refusal(group), HasSubstr("not among the places"));
    group = rearCap();
    group.clamped = "cheese";
    EXPECT_THAT(bench.refusal(group), HasSubstr("cast iron"));
}

TEST(FastenerGroup, may_wait_for_what_its_maker_says_and_then_nothing_is_tight) {
    Bench bench;
    FastenerGroupSet group = bench.facts.groups.at({FastenerKind::rod}).what;
    group.torque.reset();
    group.source = "the bolt's maker says";
    bench.make(group);
    const Check& check = *bench.assessment.find("fasteners:rod");
    EXPECT_EQ(check.state, CheckState::notDone);
    EXPECT_THAT(check.sentence, HasSubstr("Nothing is specified for rod 1 left"));
    EXPECT_EQ(check.destination.subject, "groups");
    group.method = TighteningMethod::stretch;
    group.torque = Entered<Torque>{poundFeet(45), ""};
    EXPECT_THAT(bench.refusal(group), HasSubstr("no such value was given"));
}

TEST(FastenerGroup, of_an_earlier_record_folds_as_it_did) {
    std::ifstream lines(std::string(TEST_DATA) + "/records/version-1.jsonl");
    ASSERT_TRUE(lines);
    Facts facts;
    Ledger ledger;
    std::set<std::pair<FastenerKind, std::optional<Ring>>> kept;
    for (std::string line; std::getline(lines, line);) {
        const auto draft = fromJson(line);
        ASSERT_TRUE(draft) << draft.error().sentence;
        apply(facts, ledger.append({}, draft->person, draft->body));
        if (const auto* group = draft->body.as<FastenerGroupSet>()) {
            kept.emplace(group->group, group->ring);
        }
    }
    ASSERT_FALSE(kept.empty());
    EXPECT_EQ(facts.groups.size(), kept.size()) << "one a kind, or a kind and ring";
    for (const auto& [key, group] : facts.groups) {
        EXPECT_TRUE(key.name.empty());
        EXPECT_FALSE(group.what.places);
        EXPECT_EQ(verifiedBy(group.what) == VerifyMethod::torque, group.what.method == TighteningMethod::torque);
    }
}

// --- What a specification comes to -------------------------------------------------------------------------------

FastenerGroupSet overProof() {
    // 7/16-20 of 120 ksi at 70 lbf·ft with oil: 64 % of proof by its clamp, 119 % with torsion at the lower friction.
    FastenerGroupSet group = drafts::group(FastenerKind::mainCap, 6, "7/16-20", 70);
    group.grade = "SAE J429 grade 8";
    group.lubricant = "engine oil";
    return group;
}

TEST(OverProof, is_a_finding_that_holds_the_gate_until_somebody_takes_it) {
    Bench bench;
    bench.readyToClose();
    ASSERT_TRUE(bench.isOpen(GateKind::closing));
    FastenerGroupSet group = overProof();
    const auto entry = bench.make(group);
    const std::string name = "proof-" + std::to_string(entry);
    ASSERT_TRUE(bench.facts.findings.contains(name));
    EXPECT_THAT(bench.facts.findings.at(name).opened.what.text, HasSubstr("119 % of proof"));
    EXPECT_EQ(bench.stateOf("findings"), CheckState::out);
    bench.make(FindingSettled{name, "the stud's maker gives this value in writing"});
    EXPECT_EQ(bench.stateOf("findings"), CheckState::good);
}

TEST(OverProof, cannot_be_got_round_by_leaving_out_what_it_is_judged_by) {
    for (const auto& leaveOut : std::vector<void (*)(FastenerGroupSet&)>{[](FastenerGroupSet& g) { g.grade.clear(); },
                                                                         [](FastenerGroupSet& g) { g.lubricant.clear(); },
                                                                         [](FastenerGroupSet& g) { g.thread.clear(); },
                                                                         [](FastenerGroupSet& g) { g.grade = "strong"; }}) {
        Bench bench;
        bench.readyToClose();
        FastenerGroupSet group = overProof();
        leaveOut(group);
        const std::string name = "proof-" + std::to_string(bench.make(group));
        ASSERT_TRUE(bench.facts.findings.contains(name));
        EXPECT_THAT(bench.facts.findings.at(name).opened.what.text, HasSubstr("nobody can tell"));
        EXPECT_EQ(bench.stateOf("findings"), CheckState::out);
        EXPECT_FALSE(bench.isOpen(GateKind::closing));
    }
}

TEST(OverProof, goes_with_the_specification_that_gave_rise_to_it) {
    Bench bench;
    bench.make(overProof());
    EXPECT_THAT(bench.facts.findings, SizeIs(1));
    FastenerGroupSet lower = overProof();
    lower.torque = Entered<Torque>{poundFeet(50), ""};
    bench.make(lower);
    EXPECT_TRUE(bench.facts.findings.empty()) << "85 %";
    RulesSet rules = bench.facts.rules;
    rules.torqueScatterPercent = 40;
    bench.make(rules);
    EXPECT_THAT(bench.facts.findings, SizeIs(1)) << "91 % at a wider scatter";
}

TEST(OverProof, is_not_judged_where_grade_or_lubricant_is_not_known) {
    FastenerGroupSet group = overProof();
    group.lubricant.clear();
    EXPECT_FALSE(judgeGroup(group, 30, {}));
    group = overProof();
    group.grade.clear();
    EXPECT_FALSE(judgeGroup(group, 30, {}));
    group = overProof();
    group.method = TighteningMethod::toYield;
    EXPECT_FALSE(judgeGroup(group, 30, {})) << "to yield is meant to go there";
}

TEST(Templates, trip_no_warning_of_the_program_and_leave_the_rods_to_the_bolt_s_maker) {
    int groups = 0;
    for (const auto& file : std::filesystem::directory_iterator(TEMPLATES)) {
        std::ifstream lines(file.path());
        for (std::string line; std::getline(lines, line);) {
            const auto draft = fromJson(line);
            ASSERT_TRUE(draft) << file.path();
            const auto* group = draft->body.as<FastenerGroupSet>();
            if (group == nullptr) {
                continue;
            }
            ++groups;
            if (group->group == FastenerKind::rod) {
                EXPECT_FALSE(isSpecified(*group)) << file.path();
                EXPECT_THAT(group->source, HasSubstr("maker says"));
                continue;
            }
            const auto judged = judgeGroup(*group, 30, {});
            ASSERT_TRUE(judged) << file.path() << judged.error().sentence;
            EXPECT_TRUE(judged->warnings.empty()) << file.path() << " " << judged->warnings.front().sentence;
        }
    }
    EXPECT_GE(groups, 16);
}

// --- A nut that moved --------------------------------------------------------------------------------------------

class MovedNut : public testing::Test {
protected:
    MovedNut() {
        bench.tightenAll();
        bench.survey();
    }
    void move(double angle) {
        bench.make(RoundBegun{static_cast<std::int64_t>(bench.facts.rounds.size()) + 1, "W1"});
        RoundOutcome moved = drafts::held(static_cast<std::int64_t>(bench.facts.rounds.size()), stud2R);
        moved.outcome = Outcome::moved;
        moved.angle = Entered<Angle>{degrees(angle), ""};
        bench.make(moved);
    }
    Bench bench;
};

TEST_F(MovedNut, says_the_bound_what_is_likely_and_whether_a_reading_can_tell) {
    move(5);
    const auto after = gapAfterMovementAt(bench.facts, place2R);
    ASSERT_TRUE(after);
    EXPECT_NEAR(inThou(after->bound), 0.694, 0.001) << "0.05 in × 5°/360°";
    EXPECT_NEAR(inThou(after->likelyLeast), 0.104, 0.001);
    EXPECT_NEAR(inThou(after->likelyMost), 0.222, 0.001);
    EXPECT_FALSE(after->isJointKnown);
    EXPECT_FALSE(after->clampGained);
    const std::string words = bench.assessment.find("gap:2R")->sentence;
    EXPECT_THAT(words, HasSubstr("at most"));
    EXPECT_THAT(words, HasSubstr("as is usual for such joints"));
    EXPECT_THAT(bench.assessment.find("gap:2L")->sentence, HasSubstr("The nut of this side did not turn"));
    EXPECT_THAT(bench.assessment.find("main-clearance:main-2")->remedy, testing::Not(HasSubstr("went down")))
        << "it was never measured";
}

TEST_F(MovedNut, works_the_likely_growth_and_the_clamp_out_of_the_joint_s_own_dimensions) {
    FastenerGroupSet group = bench.facts.groups.at({FastenerKind::mainCap}).what;
    group.grade = "by hand 170 ksi";
    group.grip = Entered<Length>{inches(3), "3.000"};
    group.clamped = "cast iron";
    bench.make(group);
    move(5);
    const auto after = gapAfterMovementAt(bench.facts, place2R);
    ASSERT_TRUE(after && after->clampGained);
    EXPECT_TRUE(after->isJointKnown);
    EXPECT_EQ(after->likelyLeast, after->likelyMost);
    // By hand: k_f 1.42, k_c 4.76 Mlbf/in, C 0.230; 0.000694 in × 1.42·4.76/6.18 Mlbf/in = 760 lbf.
    EXPECT_NEAR(inThou(after->likelyMost) / inThou(after->bound), 0.23, 0.02);
    EXPECT_NEAR(inPoundsForce(*after->clampGained), 760, 40);
    EXPECT_THAT(bench.assessment.find("gap:2R")->sentence, HasSubstr("The fastener clamps by"));
}

TEST_F(MovedNut, asks_a_new_gap_back_that_the_movement_cannot_have_made) {
    move(5);
    EXPECT_THAT(bench.refusal(GapReading{place2R, 3, {thou(55), ""}, "LEAVES"}), HasSubstr("should lie within"));
    bench.make(GapReading{place2R, 3, {thou(50.3), ""}, "LEAVES"});
}

// --- The clamp by two torques, and the washer --------------------------------------------------------------------

TEST(ClampCheck, is_kept_with_the_fastener_which_is_loose_after_it) {
    Bench bench;
    const Entered<Torque> on{poundFeet(72), "72"};
    const Entered<Torque> off{poundFeet(50), "50"};
    EXPECT_THAT(bench.refusal(ClampChecked{stud1L, on, off, "W1"}), HasSubstr("tight as specified"));
    bench.tightenAll();
    EXPECT_THAT(bench.refusal(ClampChecked{stud1L, off, on, "W1"}), HasSubstr("comes loose at less"));
    EXPECT_THAT(bench.refusal(ClampChecked{stud1L, on, off, "MIC"}), HasSubstr("MIC is a micrometer"));
    bench.make(ClampChecked{stud1L, on, off, "W1"});
    EXPECT_THAT(bench.facts.fasteners.at(stud1L).clamps, SizeIs(1));
    EXPECT_TRUE(bench.facts.fasteners.at(stud1L).isLoose);
    EXPECT_NE(bench.stateOf("fasteners:main"), CheckState::good) << "it was turned back for that";
}

TEST(Washer, that_was_turned_makes_the_gap_of_its_place_stale_and_no_other) {
    Bench bench;
    bench.survey();
    bench.make(WasherWorked{place2R, WasherWork::turnedOver, "a burr"});
    EXPECT_EQ(bench.stateOf("gap:2R"), CheckState::stale);
    EXPECT_EQ(bench.stateOf("gap:2L"), CheckState::good);
    EXPECT_THAT(bench.assessment.find("gap:2R")->sentence, HasSubstr("the washer at cap 2 right was turned over"));
    EXPECT_THAT(bench.refusal(WasherWorked{{9, Side::left}, WasherWork::turned, ""}), HasSubstr("does not bear"));
}

TEST(Recheck, that_rocks_where_the_numbers_are_right_advises_the_cheap_remedies_first) {
    Bench bench;
    bench.tightenAll();
    bench.survey();
    bench.kit();
    bench.build();
    bench.make(RecheckMade{place2R, Feel::rocks, "EDGE"});
    const std::string remedy = bench.assessment.find("recheck:2R")->remedy;
    const auto at = [&](const char* words) { return remedy.find(words); };
    ASSERT_NE(at("By the numbers it should drag"), std::string::npos) << remedy;
    EXPECT_LT(at("Clean"), at("turn the washer"));
    EXPECT_LT(at("turn the washer"), at("measure the shims"));
    EXPECT_LT(at("measure the shims"), at("read the gap again"));
    EXPECT_LT(at("read the gap again"), at("change the stack"));
}

TEST(Bore, is_refused_until_every_fastener_of_its_cap_is_at_torque) {
    Bench bench;
    const JournalId main1{JournalKind::main, 1};
    const BoreReading bore{main1, BoreMethod::boreWithShells, 1, {inches(2.45), ""}, "BORE"};
    EXPECT_THAT(bench.refusal(bore), HasSubstr("tighten main 1 left"));
    bench.make(FastenerTightened{stud1L, Entered<Torque>{poundFeet(67.3), "67.3"}, {}, {}, "W1"});
    EXPECT_THAT(bench.refusal(bore), HasSubstr("tighten main 1 left")) << "67.3 is not 70";
    bench.tightenAll();
    bench.make(bore);
}

} // namespace
} // namespace caprail
