// SPDX-License-Identifier: GPL-3.0-or-later
/// JCGM 106:2012, Evaluation of measurement data – The role of measurement uncertainty in conformity assessment: simple
/// acceptance (8.2), guarded acceptance with a guard band w = U (8.3.2, after ISO 14253-1), guarded rejection (8.3.3).
/// From memory. With tolerance limits T_L and T_U: acceptance interval [T_L + U, T_U − U]; rejection is proven below
/// T_L − U and above T_U + U; in between lies the zone where neither is.
#include <gmock/gmock.h>
#include <measure/verdict.h>

using namespace caprail;

namespace {
const Length lower = millimetres(10.000);
const Length upper = millimetres(10.100);
const Band tolerance = Band::between(lower, upper).value();
constexpr std::int64_t expanded = 10'000;
} // namespace

TEST(Jcgm106, five_zones_of_guarded_decision) {
    const auto at = [](Length x) { return judge(x, expanded, tolerance, DecisionRule::guarded); };
    const Length one = nanometres(1);
    const Length u = nanometres(expanded);
    EXPECT_EQ(at(lower - u - one), Verdict::out);
    EXPECT_EQ(at(lower - u), Verdict::tooCloseToCall);
    EXPECT_EQ(at(lower), Verdict::tooCloseToCall);
    EXPECT_EQ(at(lower + u - one), Verdict::tooCloseToCall);
    EXPECT_EQ(at(lower + u), Verdict::in);
    EXPECT_EQ(at(upper - u), Verdict::in);
    EXPECT_EQ(at(upper - u + one), Verdict::tooCloseToCall);
    EXPECT_EQ(at(upper), Verdict::tooCloseToCall);
    EXPECT_EQ(at(upper + u), Verdict::tooCloseToCall);
    EXPECT_EQ(at(upper + u + one), Verdict::out);
}

TEST(Jcgm106, acceptance_interval_is_the_tolerance_less_two_guard_bands) {
    const auto zone = acceptanceZone(tolerance, expanded, DecisionRule::guarded);
    ASSERT_TRUE(zone);
    EXPECT_EQ(zone->hi() - zone->lo(), upper - lower - nanometres(2 * expanded));
}

TEST(Jcgm106, simple_acceptance_takes_the_tolerance_as_it_is) {
    EXPECT_EQ(judge(lower, expanded, tolerance, DecisionRule::simple), Verdict::in);
    EXPECT_EQ(judge(lower - nanometres(1), expanded, tolerance, DecisionRule::simple), Verdict::out);
}

TEST(Jcgm106, probability_and_capability_of_the_worked_example) {
    // 7.4 and 7.6.3: 13.6 measured with u = 1.8 against 12.5 to 16.3 (in any unit; here tenths of a millimetre).
    const auto tenth = [](double x) { return millimetres(x / 10); };
    const Conformity c = conformity(tenth(13.6), 180'000, Band::between(tenth(12.5), tenth(16.3)).value());
    EXPECT_NEAR(c.probability, 0.6626, 0.00005);
    EXPECT_NEAR(c.capability, 0.53, 0.005);
    EXPECT_TRUE(c.isWeak());
}

TEST(Jcgm106, probability_of_a_residual_of_nothing_with_u_as_wide_as_the_band) {
    // By hand: 2Φ(0.0005 / 0.000395) − 1, U = 0.00079 in.
    const Conformity c =
        conformity(Length(), 0.00079 / 2 * 25'400'000, Band::between(-tenths(5), tenths(5)).value());
    EXPECT_NEAR(c.probability, 0.794, 0.0005);
}
