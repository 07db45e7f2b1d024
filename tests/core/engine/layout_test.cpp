// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/layout.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

using namespace caprail;
using testing::HasSubstr;

namespace {

LayoutDescription description(std::int64_t caps, std::int64_t perCap, std::int64_t first, std::int64_t last) {
    LayoutDescription d;
    d.caps = caps;
    d.fastenersPerCap = perCap;
    d.tiedFirst = first;
    d.tiedLast = last;
    d.pickupCap = 1;
    d.dipstickCap = 1;
    return d;
}

} // namespace

TEST(EngineLayout, has_every_place_of_any_engine_from_three_to_nine_caps) {
    for (std::int64_t caps = 3; caps <= 9; ++caps) {
        for (const std::int64_t perCap : {2, 4}) {
            for (std::int64_t first = 1; first <= caps; ++first) {
                for (std::int64_t last = first; last <= caps; ++last) {
                    const auto layout = EngineLayout::from(description(caps, perCap, first, last));
                    ASSERT_TRUE(layout);
                    EXPECT_EQ(layout->positions().size(), static_cast<std::size_t>(2 * (last - first + 1)));
                    EXPECT_EQ(layout->mainFasteners().size(), static_cast<std::size_t>(caps * perCap));
                    EXPECT_EQ(layout->verifiedFasteners().size(), static_cast<std::size_t>(caps * perCap + 16));
                    std::set<std::pair<std::int64_t, std::int64_t>> points;
                    for (const FastenerId f : layout->mainFasteners()) {
                        EXPECT_TRUE(layout->has(f));
                        points.insert({layout->at(f).x.value(), layout->at(f).y.value()});
                    }
                    EXPECT_EQ(points.size(), layout->mainFasteners().size()) << "two fasteners at one point";
                }
            }
        }
    }
}

TEST(EngineLayout, refuses_the_impossible_by_name) {
    const auto refusal = [](const LayoutDescription& d) {
        const auto layout = EngineLayout::from(d);
        return layout ? std::string("taken") : layout.error().sentence;
    };
    EXPECT_THAT(refusal(description(2, 2, 1, 2)), HasSubstr("number of main caps"));
    EXPECT_THAT(refusal(description(10, 2, 1, 2)), HasSubstr("3 to 9"));
    EXPECT_THAT(refusal(description(5, 3, 1, 5)), HasSubstr("2 or 4"));
    EXPECT_THAT(refusal(description(5, 2, 0, 5)), HasSubstr("first tied cap"));
    EXPECT_THAT(refusal(description(5, 2, 3, 2)), HasSubstr("last tied cap"));
    LayoutDescription d = description(5, 2, 1, 5);
    d.girdleRing = Ring::outer;
    EXPECT_THAT(refusal(d), HasSubstr("inner pair"));
    d = description(5, 4, 1, 5);
    d.outerStudSpan = d.studSpan;
    EXPECT_THAT(refusal(d), HasSubstr("grow outwards"));
}

TEST(EngineLayout, puts_left_at_minus_and_right_at_plus_and_the_girdle_on_its_ring) {
    LayoutDescription d = description(5, 4, 2, 4);
    d.girdleRing = Ring::outer;
    const auto layout = EngineLayout::from(d);
    ASSERT_TRUE(layout);
    EXPECT_EQ(layout->at(Position{2, Side::right}).y, Length(d.outerStudSpan.value() / 2));
    EXPECT_EQ(layout->at(Position{2, Side::left}).y, -Length(d.outerStudSpan.value() / 2));
    EXPECT_EQ(layout->at(Position{3, Side::left}).x, d.capSpacing * 2);
    EXPECT_FALSE(layout->has(Position{1, Side::left}));
    EXPECT_FALSE(layout->has(FastenerId{FastenerKind::girdleNut, 5, Side::left, Ring::inner}));
}

TEST(Destination, codes_are_read_back) {
    for (const FastenerId f : {FastenerId{FastenerKind::mainCap, 3, Side::right, Ring::inner},
                               FastenerId{FastenerKind::mainCap, 3, Side::left, Ring::outer},
                               FastenerId{FastenerKind::rod, 5, Side::left, Ring::inner},
                               FastenerId{FastenerKind::girdleNut, 2, Side::right, Ring::inner},
                               FastenerId{FastenerKind::panRail, 17, Side::left, Ring::inner}}) {
        EXPECT_EQ(*parseFastener(code(f)), f) << code(f);
    }
    EXPECT_EQ(code(FastenerId{FastenerKind::mainCap, 3, Side::right, Ring::outer}), "main-3R-outer");
    EXPECT_EQ(*parsePosition("3R"), (Position{3, Side::right}));
    EXPECT_EQ(*parsePosition("cap 3 right"), (Position{3, Side::right}));
    EXPECT_EQ(*parseJournal("rod-5"), (JournalId{JournalKind::rod, 5}));
}

TEST(Destination, refuses_what_is_no_place) {
    for (const char* text : {"", "R3", "3", "3X", "0L", "3R ", "-1L", "3RR"}) {
        EXPECT_FALSE(parsePosition(text)) << text;
    }
    for (const char* text : {"main-3", "main3R", "rod-5", "pan-7L", "rod-5L-outer", "nut-3R", "main-0L"}) {
        EXPECT_FALSE(parseFastener(text)) << text;
    }
    EXPECT_FALSE(parseJournal("big-3"));
    EXPECT_FALSE(parseJournal("main-"));
}
