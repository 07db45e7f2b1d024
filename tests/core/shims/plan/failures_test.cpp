// SPDX-License-Identifier: GPL-3.0-or-later
// What a search that failed may tell the next one: as little as holds for it, or a plan would be missed.
#include <gtest/gtest.h>
#include <shims/solver/search.h>

using namespace caprail::solver;

namespace {

const StateKey someState = StateKey::of(7, 3);

/// Failures of a search for a plan of six shims, |residual| up to 3, twist up to 20, with one failure in them.
class FailuresOfASearch : public testing::Test {
protected:
    void SetUp() override {
        limits.shims = 6;
        limits.largestResidual = 3;
        limits.twist = 20;
        failures.prepareFor(limits, listing);
        failures.table().remember(someState, 5);
    }
    [[nodiscard]] bool knowsAfter(const Limits& next, std::size_t nextListing) {
        failures.prepareFor(next, nextListing);
        return failures.table().knows(someState, 5);
    }

    Limits limits;
    std::size_t listing = 4;
    Failures failures;
};

TEST_F(FailuresOfASearch, hold_for_the_same_search_begun_again) {
    EXPECT_TRUE(knowsAfter(limits, listing));
    EXPECT_TRUE(failures.table().knows(someState, 4)) << "with less room it fails all the more";
    EXPECT_FALSE(failures.table().knows(someState, 6)) << "with more room it may not";
}

TEST_F(FailuresOfASearch, hold_for_narrower_limits) {
    limits.largestResidual = 2;
    limits.twist = 10;
    EXPECT_TRUE(knowsAfter(limits, listing));
}

TEST_F(FailuresOfASearch, are_forgotten_for_a_wider_band) {
    limits.largestResidual = 4;
    EXPECT_FALSE(knowsAfter(limits, listing));
    EXPECT_TRUE(failures.table().isEmpty());
}

TEST_F(FailuresOfASearch, are_forgotten_for_more_twist) {
    limits.twist = never;
    EXPECT_FALSE(knowsAfter(limits, listing));
}

TEST_F(FailuresOfASearch, are_forgotten_for_more_twist_than_a_plan_left_to_find) {
    Limits tightened = limits;
    tightened.twist = 12;
    failures.endedWith(tightened);
    EXPECT_FALSE(knowsAfter(limits, listing));
}

TEST_F(FailuresOfASearch, are_forgotten_for_another_number_of_shims) {
    limits.shims = 7;
    EXPECT_FALSE(knowsAfter(limits, listing));
}

TEST_F(FailuresOfASearch, are_forgotten_when_other_stacks_are_listed) {
    EXPECT_FALSE(knowsAfter(limits, listing + 1));
}

} // namespace
