// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/layout.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

LayoutDescription spans() {
    LayoutDescription d;
    d.capSpacing = inches(4);
    d.railSpan = inches(10);
    return d;
}

} // namespace

TEST(PlanPlaces, hang_the_pickup_a_quarter_of_the_rails_off_the_axis_half_a_bay_behind_its_cap) {
    LayoutDescription d = spans();
    d.pickupCap = 2;
    d.pickupSide = Side::right;
    EXPECT_EQ(EngineLayout::from(d)->pickupAt(), (PlanPoint{inches(6), inches(2.5)}));
    d.pickupSide = Side::left;
    d.pickupCap = 5;
    EXPECT_EQ(EngineLayout::from(d)->pickupAt(), (PlanPoint{inches(14), inches(-2.5)})) << "before the last cap";
}

TEST(PlanPlaces, put_the_dipstick_two_fifths_of_the_rails_off_the_axis) {
    LayoutDescription d = spans();
    d.dipstickCap = 1;
    d.dipstickSide = Side::left;
    EXPECT_EQ(EngineLayout::from(d)->dipstickAt(), (PlanPoint{inches(2), inches(-4)}));
    d.dipstickSide = Side::right;
    d.dipstickCap = 5;
    EXPECT_EQ(EngineLayout::from(d)->dipstickAt(), (PlanPoint{inches(14), inches(4)}));
}

TEST(PlanPlaces, put_each_throw_in_the_middle_of_its_share_of_the_crank) {
    LayoutDescription d = spans();
    d.throws = 4;
    const auto layout = EngineLayout::from(d);
    for (int n = 1; n <= 4; ++n) {
        EXPECT_EQ(layout->throwAt(n), inches(4 * n - 2)) << n;
    }
}
