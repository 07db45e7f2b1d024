// SPDX-License-Identifier: GPL-3.0-or-later
/// Counts, places and causes that a sentence names, where one more or one less would go unseen.
#include "bench.h"

#include <assessment/plan_aim.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

TEST(Said, how_many_more_findings_are_open) {
    Bench bench;
    bench.make(FindingOpened{"F1", "2R", "burr"});
    EXPECT_EQ(bench.assessment.find("findings")->sentence, "F1 at 2R: burr.");
    bench.make(FindingOpened{"F2", "", "nick"});
    EXPECT_EQ(bench.assessment.find("findings")->sentence, "F1 at 2R: burr. Another one is open.");
    bench.make(FindingSettled{"F1", "stoned"});
    EXPECT_EQ(bench.assessment.find("findings")->sentence, "F2: nick.");
}

TEST(Said, which_fastener_is_wrong_and_how_many_besides) {
    Bench bench;
    bench.tightenAll();
    const auto pull = [&](int cap, double torque) {
        bench.make(FastenerTightened{{FastenerKind::mainCap, cap, Side::left, Ring::inner},
                                     Entered<Torque>{poundFeet(torque), ""}, {}, {}, "W1"});
    };
    pull(1, 60);
    EXPECT_EQ(bench.assessment.find("fasteners:main")->sentence, "main 1 left is not at its specified value.");
    pull(2, 60);
    EXPECT_EQ(bench.assessment.find("fasteners:main")->sentence,
              "main 2 left and another one are not at their specified value.")
        << "the first in the order of tightening";
}

TEST(Said, which_pickup_term_is_missing_and_where_to_enter_it) {
    Bench bench;
    const auto read = [&](PickupTerm term, Length value) { bench.make(PickupReading{term, {value, ""}, "DEPTH"}); };
    read(PickupTerm::panDepth, inches(7.5));
    EXPECT_EQ(bench.assessment.find("pickup")->destination.subject, word(PickupTerm::panDepth));
    read(PickupTerm::panDepth, inches(7.5));
    EXPECT_EQ(bench.assessment.find("pickup")->destination.subject, word(PickupTerm::gasket));
}

TEST(PlanAim, is_the_band_itself_where_values_are_accepted_as_they_are) {
    Bench bench; // judged by the value alone
    bench.survey();
    const auto aim = PlanAims(bench.facts, {}).at({1, Side::left}, 3);
    ASSERT_TRUE(aim);
    EXPECT_EQ(aim->band, *Band::between(thou(-0.5), thou(0.5)));
    EXPECT_TRUE(aim->canBeProven);
    EXPECT_TRUE(aim->sentence.empty());
    RulesSet guarded;
    guarded.decision = DecisionRule::guarded;
    bench.make(guarded);
    bench.kit();
    BandSet wide = drafts::band(bands::residual, -50, 50);
    wide.why = "the gauge knows no better";
    bench.make(wide);
    const PlanAims guardedAims(bench.facts, {});
    const auto one = guardedAims.at({1, Side::left}, 1);
    const auto none = guardedAims.at({1, Side::left}, 0);
    ASSERT_TRUE(one && none);
    EXPECT_GT(one->band.lo(), none->band.lo()) << "each shim has its own error besides";
}

TEST(Layout, set_anew_may_not_lose_a_place_of_any_kind_that_has_entries) {
    Bench plain;
    LayoutSet smaller;
    static_cast<LayoutDescription&>(smaller) = plain.facts.layout->description();
    smaller.tiedLast = 2;
    LayoutSet oneRod = smaller;
    oneRod.tiedLast = 3;
    oneRod.rods = 1;
    EXPECT_TRUE(makesSense(plain.facts, smaller));
    EXPECT_TRUE(makesSense(plain.facts, oneRod));
    const auto lost = [](const Facts& facts, const LayoutSet& layout) {
        const auto made = makesSense(facts, layout);
        return made ? std::string("taken") : made.error().sentence;
    };
    Facts facts = plain.facts;
    facts.stacks[{3, Side::left}] = {};
    EXPECT_THAT(lost(facts, smaller), HasSubstr("cap 3 left"));
    facts = plain.facts;
    facts.gaps[{3, Side::right}] = {};
    EXPECT_THAT(lost(facts, smaller), HasSubstr("cap 3 right"));
    facts = plain.facts;
    facts.journals[{JournalKind::rod, 2}] = {};
    EXPECT_THAT(lost(facts, oneRod), HasSubstr("rod 2"));
    facts = plain.facts;
    facts.bores[{JournalKind::rod, 2}] = {};
    EXPECT_THAT(lost(facts, oneRod), HasSubstr("rod 2"));
    facts = plain.facts;
    facts.fasteners[{FastenerKind::rod, 2, Side::left, Ring::inner}] = {};
    EXPECT_THAT(lost(facts, oneRod), HasSubstr("rod 2 left"));
}

TEST(GroupSetAnew, is_a_change_by_each_value_that_the_clamp_depends_on_and_by_no_other) {
    const FastenerGroupSet usual = drafts::group(FastenerKind::rod, 4, "3/8-24", 45);
    const auto changes = [&](const auto& alter) {
        Bench bench;
        FastenerGroupSet group = usual;
        alter(group);
        const auto at = bench.make(group);
        return bench.facts.changeOf(Topic::groupValue, FastenerId{FastenerKind::rod, 1, Side::left, Ring::inner}).entry == at;
    };
    EXPECT_FALSE(changes([](FastenerGroupSet&) {}));
    EXPECT_FALSE(changes([](FastenerGroupSet& g) { g.steps = 4; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) { g.thread = "7/16-20"; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) { g.lubricant = "anti-seize paste"; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) { g.torque = Entered<Torque>{poundFeet(46), ""}; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) { g.angle = Entered<Angle>{degrees(10), ""}; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) { g.stretch = Entered<Length>{thou(6), ""}; }));
    EXPECT_TRUE(changes([](FastenerGroupSet& g) {
        g.method = TighteningMethod::stretch;
        g.stretch = Entered<Length>{thou(6), ""};
    }));
}

TEST(Band, keeps_the_target_that_it_was_set_with) {
    Bench bench;
    BandSet band = drafts::band(bands::residual, -0.5, 0.5);
    EXPECT_FALSE(bench.facts.bandNamed(bands::residual)->target);
    band.target = Entered<Length>{thou(0.1), ""};
    bench.make(band);
    EXPECT_EQ(bench.facts.bandNamed(bands::residual)->target, thou(0.1));
}

TEST(Attachment, carries_the_hash_of_its_bytes_and_no_size_below_zero) {
    const Bench bench;
    AttachmentAdded photo{"", "p.png", "image/png", "", std::string(64, 'a'), "", 0};
    EXPECT_TRUE(makesSense(bench.facts, photo));
    photo.size = -1;
    EXPECT_THAT(makesSense(bench.facts, photo).error().sentence, HasSubstr("no proper SHA-256 hash or size"));
    photo.size = 1;
    photo.sha256 = "aa";
    EXPECT_THAT(makesSense(bench.facts, photo).error().sentence, HasSubstr("no proper SHA-256 hash or size"));
}
