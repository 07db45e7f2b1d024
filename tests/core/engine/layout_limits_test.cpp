// SPDX-License-Identifier: GPL-3.0-or-later
/// Every limit that a refused layout names, from both sides.
#include <engine/layout.h>
#include <functional>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

LayoutDescription fiveMains() {
    LayoutDescription d;
    d.fastenersPerCap = 4;
    return d;
}

std::string refusal(const LayoutDescription& d) {
    const auto layout = EngineLayout::from(d);
    return layout ? std::string("taken") : layout.error().sentence;
}

} // namespace

TEST(LayoutLimits, of_counts_are_those_that_the_refusal_names) {
    struct Count {
        std::int64_t LayoutDescription::*member;
        std::int64_t lo, hi;
        const char* says;
    };
    const Count counts[] = {{&LayoutDescription::rods, 1, 16, "connecting rods: it must be from 1 to 16"},
                            {&LayoutDescription::throws, 1, 16, "crank throws: it must be from 1 to 16"},
                            {&LayoutDescription::tiedFirst, 1, 5, "first tied cap: it must be from 1 to 5"},
                            {&LayoutDescription::tiedLast, 1, 5, "last tied cap: it must be from 1 to 5"},
                            {&LayoutDescription::pickupCap, 1, 5, "nearest to the pickup: it must be from 1 to 5"},
                            {&LayoutDescription::dipstickCap, 1, 5, "nearest to the dipstick: it must be from 1 to 5"}};
    for (const Count& count : counts) {
        LayoutDescription d = fiveMains();
        for (const std::int64_t n : {count.lo, count.hi}) {
            d.*count.member = n;
            EXPECT_EQ(refusal(d), "taken") << count.says << " " << n;
        }
        for (const std::int64_t n : {count.lo - 1, count.hi + 1}) {
            d.*count.member = n;
            EXPECT_THAT(refusal(d), HasSubstr(count.says)) << n;
        }
    }
    LayoutDescription d = fiveMains();
    d.tiedLast = 3;
    d.tiedFirst = 3;
    EXPECT_EQ(refusal(d), "taken") << "one cap may be tied alone";
    for (const std::int64_t caps : {3, 9}) {
        d = fiveMains();
        d.caps = caps;
        d.tiedLast = d.pickupCap = d.dipstickCap = 3;
        EXPECT_EQ(refusal(d), "taken") << caps;
    }
}

TEST(LayoutLimits, of_spans_are_those_that_the_refusal_names) {
    const Length step = nanometres(1);
    const auto with = [](Length LayoutDescription::*member, Length value) {
        LayoutDescription d = fiveMains();
        d.*member = value;
        return refusal(d);
    };
    EXPECT_EQ(with(&LayoutDescription::capSpacing, step), "taken");
    EXPECT_THAT(with(&LayoutDescription::capSpacing, Length()), HasSubstr("must be positive"));
    EXPECT_EQ(with(&LayoutDescription::capSpacing, inches(20)), "taken");
    EXPECT_THAT(with(&LayoutDescription::capSpacing, inches(20) + step), HasSubstr("up to 20 in"));
    EXPECT_EQ(with(&LayoutDescription::railSpan, inches(60)), "taken");
    EXPECT_THAT(with(&LayoutDescription::railSpan, inches(60) + step), HasSubstr("up to 60 in"));
    EXPECT_EQ(with(&LayoutDescription::studSpan, step), "taken");
    EXPECT_THAT(with(&LayoutDescription::studSpan, Length()), HasSubstr("must be positive"));
    const LayoutDescription usual = fiveMains();
    EXPECT_EQ(with(&LayoutDescription::outerStudSpan, usual.studSpan + step), "taken");
    EXPECT_THAT(with(&LayoutDescription::outerStudSpan, usual.studSpan), HasSubstr("grow outwards"));
    EXPECT_EQ(with(&LayoutDescription::railSpan, usual.outerStudSpan + step), "taken");
    EXPECT_THAT(with(&LayoutDescription::railSpan, usual.outerStudSpan), HasSubstr("grow outwards"));

    LayoutDescription pair = usual;
    pair.fastenersPerCap = 2;
    pair.outerStudSpan = Length();
    pair.railSpan = pair.studSpan + step;
    EXPECT_EQ(refusal(pair), "taken") << "an outer span means nothing where there is no outer pair";
    pair.railSpan = pair.studSpan;
    EXPECT_THAT(refusal(pair), HasSubstr("grow outwards"));
}
