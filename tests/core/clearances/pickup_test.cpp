// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/pickup.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::EndsWith;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

std::vector<Length> term(std::initializer_list<Length> readings) {
    return readings;
}

/// 7.500 + 0.060 + 0.250 − 7.500 in = 0.310 in.
PickupStackUp stackUp() {
    return {term({inches(7.499), inches(7.501)}), term({inches(0.060), inches(0.060)}),
            term({inches(0.250), inches(0.250)}), term({inches(7.500), inches(7.500)})};
}

} // namespace

TEST(PickupClearance, is_pan_gasket_and_plate_less_the_pickup) {
    const auto pickup = pickupClearance(stackUp());
    ASSERT_TRUE(pickup);
    EXPECT_EQ(pickup->clearance, inches(0.310));
    EXPECT_EQ(pickup->panDepth, inches(7.500));
}

TEST(PickupClearance, without_a_plate_between_is_less_by_the_plate) {
    auto s = stackUp();
    s.plate.reset();
    EXPECT_EQ(pickupClearance(s)->clearance, inches(0.060));
}

TEST(PickupClearance, asks_for_two_readings_of_every_term_by_name) {
    auto s = stackUp();
    s.gasket.pop_back();
    const auto once = pickupClearance(s);
    ASSERT_FALSE(once);
    EXPECT_EQ(once.error().sentence, "The compressed gasket has 1 of two readings: measure it once more.");
    s = stackUp();
    s.pickupDepth.clear();
    EXPECT_EQ(pickupClearance(s).error().sentence, "The pickup depth has 0 of two readings: measure it twice.");
    s = stackUp();
    s.plate->clear();
    EXPECT_THAT(pickupClearance(s).error().sentence, HasSubstr("girdle plate"));
}

TEST(PickupClearance, takes_sealant_alone_as_a_gasket_of_nothing) {
    auto s = stackUp();
    s.gasket = term({Length(), Length()});
    EXPECT_EQ(pickupClearance(s)->clearance, inches(0.250));
    s.gasket = term({Length(), -thou(1)});
    EXPECT_FALSE(pickupClearance(s));
    s = stackUp();
    s.panDepth = term({Length(), Length()});
    EXPECT_FALSE(pickupClearance(s));
}

TEST(PickupAdvice, says_what_to_change_by_how_much) {
    // Common practice, no source: 0.250 to 0.375 in off the floor, so the middle is 0.3125 in.
    EXPECT_EQ(pickupAdvice(inches(0.2725), defaultPickupBand(), {}),
              "Raise the pickup by 0.0400 in, or fit a gasket or plate thicker by as much: the clearance then is "
              "0.3125 in, the middle of the band.");
    EXPECT_THAT(pickupAdvice(inches(0.400), defaultPickupBand(), {}), StartsWith("Lower the pickup by 0.0875 in"));
    EXPECT_THAT(pickupAdvice(inches(0.3125), defaultPickupBand(), {}), EndsWith("nothing to change."));
}
