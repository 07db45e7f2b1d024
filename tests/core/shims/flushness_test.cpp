// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <shims/flushness.h>
#include <string>

using namespace caprail;
using ::testing::HasSubstr;

namespace {

constexpr double closeEnough = 1e-6; // nanometres

/// The residual a + b·x + c·s + d·x·s at every place of so many caps, x from −1 to +1 over their span.
std::vector<HeightAt> surface(int caps, std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t d) {
    std::vector<HeightAt> heights;
    for (int cap = 0; cap < caps; ++cap) {
        for (int side : {-1, 1}) {
            // 2·cap − (caps − 1), over caps − 1, is x; the factor keeps every height a whole number.
            const std::int64_t x = 2 * cap - (caps - 1);
            heights.push_back({inches(4.4) * cap, side, nanometres((a + c * side) * (caps - 1) + (b + d * side) * x)});
        }
    }
    return heights;
}

} // namespace

TEST(Flushness, finds_planes_and_saddles_exactly_for_three_to_nine_caps) {
    for (int caps = 3; caps <= 9; ++caps) {
        SCOPED_TRACE(caps);
        const double n = caps - 1;
        const Flushness f = flushnessOf(surface(caps, 300, -70, 45, 110));
        ASSERT_TRUE(f.offset && f.pitch && f.roll && f.twist);
        EXPECT_NEAR(*f.offset, 300 * n, closeEnough);
        EXPECT_NEAR(*f.pitch, 2 * -70 * n, closeEnough);
        EXPECT_NEAR(*f.roll, 2 * 45 * n, closeEnough);
        EXPECT_NEAR(*f.twist, 2 * 110 * n, closeEnough);
        for (double error : f.localError) {
            EXPECT_NEAR(error, 0, closeEnough);
        }
        EXPECT_EQ(f.sentence, "");
    }
}

TEST(Flushness, of_a_plate_that_lies_level_is_offset_alone) {
    const Flushness f = flushnessOf(surface(5, 1000, 0, 0, 0));
    EXPECT_NEAR(f.offset.value(), 4000, closeEnough);
    EXPECT_NEAR(f.pitch.value(), 0, closeEnough);
    EXPECT_NEAR(f.roll.value(), 0, closeEnough);
    EXPECT_NEAR(f.twist.value(), 0, closeEnough);
}

TEST(Flushness, leaves_a_single_odd_place_to_the_local_error) {
    auto heights = surface(5, 0, 0, 0, 0);
    heights[4].residual = tenths(10); // cap 3 left
    const Flushness f = flushnessOf(heights);
    ASSERT_EQ(f.localError.size(), 10U);
    for (std::size_t i = 0; i < 10; ++i) {
        if (i != 4) {
            EXPECT_LT(std::abs(f.localError[i]), f.localError[4]);
        }
    }
    EXPECT_NEAR(f.twist.value(), 0, closeEnough) << "the middle cap does not twist the plate";
}

TEST(Flushness, speaks_of_neither_pitch_nor_twist_with_one_cap) {
    const Flushness f = flushnessOf(std::vector<HeightAt>{{inches(4.4), -1, tenths(2)}, {inches(4.4), 1, tenths(6)}});
    EXPECT_NEAR(f.offset.value(), tenths(4).value(), closeEnough);
    EXPECT_NEAR(f.roll.value(), tenths(4).value(), closeEnough);
    EXPECT_FALSE(f.pitch);
    EXPECT_FALSE(f.twist);
    EXPECT_THAT(f.sentence, HasSubstr("pitch, twist"));
    EXPECT_THAT(f.sentence, HasSubstr("only one cap"));
}

TEST(Flushness, guesses_at_nothing_with_a_side_missing) {
    auto heights = surface(4, 100, 50, 0, 0);
    std::erase_if(heights, [](const HeightAt& h) { return h.side > 0; });
    const Flushness f = flushnessOf(heights);
    // One side's height may be offset or roll, its slope pitch or twist.
    EXPECT_FALSE(f.offset || f.pitch || f.roll || f.twist);
    EXPECT_THAT(f.sentence, HasSubstr("offset, pitch, roll, twist"));
    EXPECT_THAT(f.sentence, HasSubstr("two caps on each side"));
    for (double error : f.localError) {
        EXPECT_NEAR(error, 0, closeEnough) << "what is left is told all the same";
    }
}

TEST(Flushness, still_finds_every_term_with_some_places_missing) {
    auto heights = surface(5, 300, -70, 45, 110);
    heights.erase(heights.begin() + 7);
    heights.erase(heights.begin() + 2);
    const Flushness f = flushnessOf(heights);
    EXPECT_NEAR(f.twist.value(), 2 * 110 * 4, closeEnough);
    EXPECT_NEAR(f.pitch.value(), 2 * -70 * 4, closeEnough);
}

TEST(Flushness, of_nothing_says_so) {
    const Flushness f = flushnessOf({});
    EXPECT_FALSE(f.offset);
    EXPECT_THAT(f.sentence, HasSubstr("No place"));
}

TEST(Flushness, finds_planes_and_saddles_with_any_one_place_missing) {
    for (int caps = 3; caps <= 9; ++caps) {
        const auto all = surface(caps, -210, 35, -80, 64);
        for (std::size_t missing = 0; missing < all.size(); ++missing) {
            SCOPED_TRACE(std::to_string(caps) + " caps without place " + std::to_string(missing));
            auto heights = all;
            heights.erase(heights.begin() + static_cast<std::ptrdiff_t>(missing));
            const Flushness f = flushnessOf(heights);
            ASSERT_TRUE(f.offset && f.pitch && f.roll && f.twist);
            // Without an end place the span is still that of the cap's other side.
            EXPECT_NEAR(*f.pitch, 2 * 35 * (caps - 1), closeEnough);
            EXPECT_NEAR(*f.roll, 2 * -80 * (caps - 1), closeEnough);
            EXPECT_NEAR(*f.twist, 2 * 64 * (caps - 1), closeEnough);
            for (double error : f.localError) {
                EXPECT_NEAR(error, 0, closeEnough);
            }
        }
    }
}

TEST(Flushness, does_not_guess_at_the_twist_from_three_places) {
    auto heights = surface(2, 300, -70, 45, 110);
    heights.pop_back();
    const Flushness f = flushnessOf(heights);
    EXPECT_FALSE(f.offset || f.pitch || f.roll || f.twist) << "a twist lifts three corners like the other three do";
    EXPECT_THAT(f.sentence, HasSubstr("twist"));
}

TEST(Flushness, tells_no_pitch_from_a_roll_on_one_diagonal) {
    const Flushness f = flushnessOf(
        std::vector<HeightAt>{{inches(4.4), -1, nanometres(10'000)}, {inches(8.8), 1, nanometres(-10'000)}});
    EXPECT_FALSE(f.pitch);
    EXPECT_FALSE(f.roll);
    EXPECT_FALSE(f.offset) << "nor an offset from a twist";
    EXPECT_FALSE(f.twist);
}

TEST(Flushness, tells_what_a_cap_tied_on_one_side_only_leaves_to_tell) {
    // Both ends tied on the left, the middle on the right: the left side's slope may be pitch or twist.
    const Flushness f = flushnessOf(std::vector<HeightAt>{
        {inches(0), -1, nanometres(100)}, {inches(4), 1, nanometres(300)}, {inches(8), -1, nanometres(100)}});
    EXPECT_NEAR(f.offset.value(), 200, closeEnough) << "the two sides lie side by side at the middle";
    EXPECT_NEAR(f.roll.value(), 200, closeEnough);
    EXPECT_FALSE(f.pitch);
    EXPECT_FALSE(f.twist);
}
