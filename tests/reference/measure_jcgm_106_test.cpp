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
