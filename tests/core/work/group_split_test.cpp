// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <gmock/gmock.h>
#include <work/clamp_working.h>
#include <work/group_split.h>
#include <work/tightening.h>

namespace caprail {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr GroupKey allMains{FastenerKind::mainCap};

std::vector<FastenerId> rearPlaces(const WorkBench& bench) {
    return placesWith(bench.facts, {FastenerKind::mainCap, 3, Side::left, Ring::inner}, SplitBy::cap);
}

void makeAll(WorkBench& bench, std::vector<Body> entries) {
    for (Body& body : entries) {
        bench.make(std::move(body));
    }
}

TEST(SplitOff, takes_places_by_cap_by_side_by_ring_or_one_by_one) {
    WorkBench bench;
    const FastenerId touched{FastenerKind::mainCap, 2, Side::right, Ring::inner};
    EXPECT_THAT(placesWith(bench.facts, touched, SplitBy::place), ElementsAre(touched));
    EXPECT_THAT(placesWith(bench.facts, touched, SplitBy::cap), SizeIs(2));
    EXPECT_THAT(placesWith(bench.facts, touched, SplitBy::side), SizeIs(3));
    EXPECT_THAT(placesWith(bench.facts, touched, SplitBy::ring), SizeIs(6));
    EXPECT_THAT(placesWith(Facts{}, touched, SplitBy::cap), IsEmpty());
}

TEST(SplitOff, gives_places_a_group_of_their_own_that_asks_for_the_same_at_first) {
    WorkBench bench;
    bench.tightenAll();
    FastenerGroupSet group = bench.facts.groups.at(allMains).what;
    group.sequence.names = {"main-3R", "main-2L"};
    bench.make(group);
    const auto entries = splitOff(bench.facts, allMains, " rear cap ", rearPlaces(bench));
    ASSERT_TRUE(entries) << entries.error().sentence;
    ASSERT_THAT(*entries, SizeIs(1));
    makeAll(bench, *entries);
    const GroupKey rear{FastenerKind::mainCap, {}, "rear cap"};
    EXPECT_THAT(membersOf(bench.facts, rear), SizeIs(2));
    EXPECT_THAT(bench.facts.groups.at(rear).what.sequence.names, ElementsAre("main-3R"));
    EXPECT_EQ(bench.stateOf("fasteners:main"), CheckState::good) << "nothing is asked otherwise";
}

TEST(SplitOff, of_a_group_of_places_leaves_it_without_them) {
    WorkBench bench;
    makeAll(bench, *splitOff(bench.facts, allMains, "rear cap", rearPlaces(bench)));
    const GroupKey rear{FastenerKind::mainCap, {}, "rear cap"};
    const FastenerId left{FastenerKind::mainCap, 3, Side::left, Ring::inner};
    makeAll(bench, *splitOff(bench.facts, rear, "rear left", {left}));
    EXPECT_THAT(membersOf(bench.facts, rear), SizeIs(1));
    FastenerGroupSet again = bench.facts.groups.at(rear).what;
    bench.make(again);
    EXPECT_EQ(keyOf(bench.facts.groupOf(left)->what).name, "rear left") << "restating the other takes nothing back";
}

TEST(SplitOff, refuses_no_place_every_place_a_strange_one_and_a_taken_name) {
    WorkBench bench;
    const auto refused = [&](const std::string& name, const std::vector<FastenerId>& places) {
        const auto entries = splitOff(bench.facts, allMains, name, places);
        return entries ? std::string() : entries.error().sentence;
    };
    EXPECT_THAT(refused("rear", {}), HasSubstr("not none and not all"));
    EXPECT_THAT(refused("rear", bench.facts.layout->mainFasteners()), HasSubstr("not none and not all"));
    EXPECT_THAT(refused("  ", rearPlaces(bench)), HasSubstr("name"));
    EXPECT_THAT(refused("rear", {{FastenerKind::rod, 1, Side::left, Ring::inner}}), HasSubstr("rod 1 left"));
    makeAll(bench, *splitOff(bench.facts, allMains, "rear", rearPlaces(bench)));
    EXPECT_THAT(refused("rear", {{FastenerKind::mainCap, 1, Side::left, Ring::inner}}), HasSubstr("no other group"));
    EXPECT_FALSE(splitOff(bench.facts, {FastenerKind::front}, "x", {}));
}

TEST(JoinBack, lets_the_wider_group_speak_again_and_refuses_where_there_is_none) {
    WorkBench bench;
    EXPECT_FALSE(joinBack(bench.facts, allMains)) << "it lists no places";
    makeAll(bench, *splitOff(bench.facts, allMains, "rear", rearPlaces(bench)));
    const auto dissolved = joinBack(bench.facts, {FastenerKind::mainCap, {}, "rear"});
    ASSERT_TRUE(dissolved) << dissolved.error().sentence;
    bench.make(*dissolved);
    EXPECT_THAT(membersOf(bench.facts, allMains), SizeIs(6));
    EXPECT_FALSE(joinBack(bench.facts, {FastenerKind::mainCap, {}, "rear"})) << "it is dissolved already";
    bench.facts.groups.erase(GroupKey{FastenerKind::girdleNut});
    FastenerGroupSet alone = drafts::group(FastenerKind::girdleNut, 2, "7/16-20", 35);
    alone.name = "front";
    alone.places = NameList{{"girdle-1L", "girdle-1R"}};
    bench.make(alone);
    EXPECT_THAT(joinBack(bench.facts, keyOf(alone)).error().sentence, HasSubstr("No wider group"));
}

TEST(OutcomeOf, is_made_as_the_group_is_verified) {
    WorkBench bench;
    const FastenerId rod{FastenerKind::rod, 1, Side::left, Ring::inner};
    EXPECT_FALSE(outcomeOf(bench.facts, rod, "W1")) << "no round is under way";
    bench.tightenAll();
    bench.layIn();
    bench.make(RoundBegun{1, "W1"});
    EXPECT_EQ(outcomeOf(bench.facts, rod, "W1")->torque->value, poundFeet(45));
    EXPECT_EQ(outcomeOf(bench.facts, rod, "W1", Entered<Angle>{degrees(4), "4"})->outcome, Outcome::moved);
}

TEST(ClampWorking, tells_the_force_how_it_was_found_and_how_it_stands_to_what_is_aimed_at) {
    WorkBench bench;
    FastenerGroupSet group = bench.facts.groups.at(allMains).what;
    group.grade = "by hand 170 ksi";
    group.lubricant = "engine oil";
    bench.make(group);
    bench.tightenAll();
    const FastenerId f{FastenerKind::mainCap, 1, Side::left, Ring::inner};
    EXPECT_THAT(clampWorking(bench.facts, f, inchUnits), IsEmpty());
    const ClampChecked check{f, {poundFeet(70), "70"}, {poundFeet(57), "57"}, "W1"};
    bench.make(check);
    // By hand: π·(840 − 684)/0.05 = 9 802 lbf (9 801 by whole mN·m), of 10 667 lbf: 92 %.
    EXPECT_NEAR(inPoundsForce(*clampOf(bench.facts, check)), 9'802, 2);
    const auto lines = clampWorking(bench.facts, f, inchUnits);
    ASSERT_THAT(lines, SizeIs(3));
    EXPECT_THAT(lines[0], HasSubstr("Mira: 9801 lbf"));
    EXPECT_THAT(lines[2], HasSubstr("92 % of the 10667 lbf"));
}

} // namespace
} // namespace caprail
