// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <shims/shim_kit.h>
#include <shims/shim_stack.h>

using namespace caprail;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

namespace {
Shim shim(const std::string& id, Length marked) {
    return Shim::marked(id, marked).value();
}

ShimKit kitOfThree() {
    ShimKit kit;
    EXPECT_TRUE(kit.add(shim("A", tenths(100))));
    EXPECT_TRUE(kit.add(shim("B", tenths(250))));
    EXPECT_TRUE(kit.add(shim("C", tenths(30))));
    return kit;
}
} // namespace

TEST(ShimKit, refuses_a_second_shim_of_one_name) {
    ShimKit kit = kitOfThree();
    const auto again = kit.add(shim("B", tenths(260)));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().sentence, "The kit already has a shim B: give the new one a name of its own.");
    EXPECT_EQ(kit.shims().size(), 3U);
}

TEST(ShimKit, refuses_shims_without_name_or_thickness) {
    EXPECT_FALSE(Shim::marked("", tenths(100)));
    EXPECT_THAT(Shim::marked("X", Length()).error().sentence, HasSubstr("thicker than 0"));
    ShimKit kit = kitOfThree();
    EXPECT_FALSE(kit.measure("A", tenths(-1)));
    EXPECT_THAT(kit.measure("Z", tenths(1)).error().sentence, HasSubstr("no shim Z"));
}

TEST(ShimKit, takes_the_mean_of_the_readings_to_the_nearest_nanometre) {
    ShimKit kit = kitOfThree();
    EXPECT_EQ(kit.find("A")->thickness(), tenths(100));
    EXPECT_FALSE(kit.find("A")->measuredThickness());
    ASSERT_TRUE(kit.measure("A", nanometres(254'000)));
    ASSERT_TRUE(kit.measure("A", nanometres(254'001)));
    EXPECT_EQ(kit.find("A")->thickness(), nanometres(254'001)); // 254 000.5, half away from zero
    ASSERT_TRUE(kit.measure("A", nanometres(254'000)));
    EXPECT_EQ(kit.find("A")->thickness(), nanometres(254'000)); // 254 000.33
}

TEST(ShimKit, flags_a_shim_that_is_off_its_marking_by_more_than_the_tolerance) {
    ShimKit kit = kitOfThree();
    EXPECT_FALSE(kit.isFlagged(*kit.find("A"))) << "never measured";
    ASSERT_TRUE(kit.measure("A", tenths(105)));
    EXPECT_FALSE(kit.isFlagged(*kit.find("A"))) << "by the tolerance exactly";
    ASSERT_TRUE(kit.measure("B", tenths(244)));
    EXPECT_TRUE(kit.isFlagged(*kit.find("B")));
    EXPECT_FALSE(ShimKit::withTolerance(tenths(-1)));
    EXPECT_EQ(ShimKit::withTolerance(tenths(2))->tolerance(), tenths(2));
}

TEST(ShimKit, does_not_set_aside_a_shim_that_is_in_a_stack) {
    ShimKit kit = kitOfThree();
    ASSERT_TRUE(kit.move("A", ShimState::inStack));
    EXPECT_THAT(kit.move("A", ShimState::setAside).error().sentence, HasSubstr("take the stack apart"));
    ASSERT_TRUE(kit.move("A", ShimState::free));
    ASSERT_TRUE(kit.move("A", ShimState::setAside));
    EXPECT_EQ(kit.find("A")->state(), ShimState::setAside);
    EXPECT_FALSE(kit.move("Z", ShimState::free));
}

TEST(ShimStack, adds_up_what_was_measured_and_what_is_only_marked) {
    ShimKit kit = kitOfThree();
    ASSERT_TRUE(kit.measure("A", tenths(102)));
    const auto stack = ShimStack::of(kit, {"A", "C"});
    ASSERT_TRUE(stack);
    EXPECT_EQ(stack->thickness(), tenths(132));
    EXPECT_EQ(stack->residual(tenths(130)), tenths(-2));
    EXPECT_FALSE(stack->isFullyMeasured());
    EXPECT_THAT(stack->unmeasured(), ElementsAre("C"));
    ASSERT_TRUE(kit.measure("C", tenths(30)));
    EXPECT_TRUE(ShimStack::of(kit, {"A", "C"})->isFullyMeasured());
}

TEST(ShimStack, of_no_shims_has_no_thickness) {
    const auto bare = ShimStack::of(kitOfThree(), {});
    ASSERT_TRUE(bare);
    EXPECT_EQ(bare->residual(tenths(7)), tenths(7));
    EXPECT_TRUE(bare->isFullyMeasured());
}

TEST(ShimStack, refuses_the_same_shim_twice_a_stranger_and_one_set_aside) {
    ShimKit kit = kitOfThree();
    EXPECT_THAT(ShimStack::of(kit, {"A", "A"}).error().sentence, HasSubstr("named twice"));
    EXPECT_THAT(ShimStack::of(kit, {"Q"}).error().sentence, HasSubstr("no shim Q"));
    ASSERT_TRUE(kit.move("B", ShimState::setAside));
    EXPECT_THAT(ShimStack::of(kit, {"B"}).error().sentence, HasSubstr("set aside"));
}
