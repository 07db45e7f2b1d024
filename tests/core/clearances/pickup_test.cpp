// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/pickup.h>
#include <cmath>
#include <gmock/gmock.h>

using namespace caprail;
using testing::EndsWith;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

PickupTermReadings term(std::initializer_list<Length> readings, Length limit = thou(1)) {
    return {readings, "DG-1", limit};
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

TEST(PickupClearance, carries_the_uncertainty_of_every_term) {
    const auto pickup = pickupClearance(stackUp());
    const double limit = 25'400 / std::sqrt(3.0);
    const double pan = std::sqrt(2.0) * 25'400 / std::sqrt(2.0); // s/√n of the pan's two readings
    EXPECT_NEAR(pickup->budget.combined(), std::sqrt(4 * limit * limit + pan * pan), 1e-6);
    EXPECT_EQ(pickup->budget.terms.size(), 8U);
}

TEST(PickupClearance, asks_for_two_readings_of_every_term_by_name) {
    auto s = stackUp();
    s.gasket.readings.pop_back();
    const auto once = pickupClearance(s);
    ASSERT_FALSE(once);
    EXPECT_EQ(once.error().sentence, "The compressed gasket has 1 of two readings: measure it once more.");
    s = stackUp();
    s.pickupDepth.readings.clear();
    EXPECT_EQ(pickupClearance(s).error().sentence, "The pickup depth has 0 of two readings: measure it twice.");
    s = stackUp();
    s.plate->readings.clear();
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

TEST(PickupClearance, refuses_a_limit_of_error_below_zero) {
    auto s = stackUp();
    s.panDepth.limitOfError = -thou(1);
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

TEST(PickupClearance, is_described_with_verdict_and_advice) {
    const auto pickup = pickupClearance(stackUp());
    EXPECT_THAT(describe(*pickup, defaultPickupBand(), Coverage::two, DecisionRule::guarded, {}),
                testing::AllOf(StartsWith("Clearance 0.3100 in ± 0.00306 in is in"), EndsWith("guard bands).")));
    auto s = stackUp();
    s.plate.reset();
    EXPECT_THAT(describe(*pickupClearance(s), defaultPickupBand(), Coverage::two, DecisionRule::guarded, {}),
                HasSubstr("is out (0.2500 to 0.3750 in, guard bands). Raise the pickup by 0.2525 in"));
}
