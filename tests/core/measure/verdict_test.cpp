// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <limits>
#include <measure/verdict.h>
#include <stdexcept>

using namespace caprail;

namespace {
const Band band = Band::between(tenths(20), tenths(30)).value();
constexpr double tenth = 2'540;
} // namespace

TEST(Verdict, is_in_only_when_the_whole_interval_lies_inside) {
    EXPECT_EQ(judge(tenths(25), 5 * tenth, band, DecisionRule::guarded), Verdict::in);
    EXPECT_EQ(judge(tenths(25), 5 * tenth + 1, band, DecisionRule::guarded), Verdict::tooCloseToCall);
    EXPECT_EQ(judge(tenths(22), 2 * tenth, band, DecisionRule::guarded), Verdict::in);
}

TEST(Verdict, is_out_only_when_the_whole_interval_lies_outside) {
    EXPECT_EQ(judge(tenths(33), 2 * tenth, band, DecisionRule::guarded), Verdict::out);
    EXPECT_EQ(judge(tenths(33), 3 * tenth, band, DecisionRule::guarded), Verdict::tooCloseToCall);
    EXPECT_EQ(judge(tenths(17), 2 * tenth, band, DecisionRule::guarded), Verdict::out);
}

TEST(Verdict, by_simple_acceptance_looks_at_the_value_alone) {
    EXPECT_EQ(judge(tenths(30), 9 * tenth, band, DecisionRule::simple), Verdict::in);
    EXPECT_EQ(judge(tenths(30) + nanometres(1), 9 * tenth, band, DecisionRule::simple), Verdict::out);
}

TEST(Verdict, of_an_exact_value_is_never_too_close) {
    for (int x = 15; x <= 35; ++x) {
        EXPECT_EQ(judge(tenths(x), 0, band, DecisionRule::guarded), judge(tenths(x), 0, band, DecisionRule::simple));
    }
}

TEST(Verdict, throws_for_what_is_no_uncertainty) {
    EXPECT_THROW(judge(tenths(25), -1, band, DecisionRule::guarded), std::invalid_argument);
    EXPECT_THROW(judge(tenths(25), std::numeric_limits<double>::quiet_NaN(), band, DecisionRule::guarded),
                 std::invalid_argument);
}

TEST(AcceptanceZone, is_the_band_less_a_guard_band_at_both_ends) {
    const auto zone = acceptanceZone(band, 2 * tenth, DecisionRule::guarded);
    ASSERT_TRUE(zone);
    EXPECT_EQ(zone->lo(), tenths(22));
    EXPECT_EQ(zone->hi(), tenths(28));
    EXPECT_EQ(acceptanceZone(band, 2 * tenth, DecisionRule::simple), band);
    EXPECT_FALSE(acceptanceZone(band, 5 * tenth + 1, DecisionRule::guarded));
}

TEST(AcceptanceZone, holds_exactly_the_values_that_are_in) {
    const auto zone = acceptanceZone(band, 1234.5, DecisionRule::guarded);
    ASSERT_TRUE(zone);
    EXPECT_EQ(judge(zone->lo(), 1234.5, band, DecisionRule::guarded), Verdict::in);
    EXPECT_EQ(judge(zone->hi(), 1234.5, band, DecisionRule::guarded), Verdict::in);
    EXPECT_NE(judge(zone->lo() - nanometres(1), 1234.5, band, DecisionRule::guarded), Verdict::in);
    EXPECT_NE(judge(zone->hi() + nanometres(1), 1234.5, band, DecisionRule::guarded), Verdict::in);
}

TEST(Verdict, is_none_while_the_uncertainty_is_not_known_whatever_the_rule) {
    for (const DecisionRule rule : {DecisionRule::guarded, DecisionRule::simple}) {
        EXPECT_FALSE(judge(tenths(25), Uncertainty(), band, rule));
        EXPECT_EQ(judge(tenths(25), Uncertainty({tenth, tenth / 2, 2, {}}), band, rule), Verdict::in);
    }
}

TEST(Conformity, is_weak_where_the_band_is_narrower_than_four_times_u) {
    EXPECT_TRUE(conformity(tenths(25), 2.6 * tenth, band).isWeak());
    EXPECT_FALSE(conformity(tenths(25), 2.5 * tenth, band).isWeak());
    EXPECT_EQ(conformity(tenths(25), 0, band).probability, 1);
    EXPECT_EQ(conformity(tenths(31), 0, band).probability, 0);
}

TEST(UpperLimit, judges_a_taper_at_its_upper_end_only) {
    const Band limit = atMost(tenths(5));
    EXPECT_EQ(judge(tenths(1), 3 * tenth, limit, DecisionRule::guarded), Verdict::in) << "a taper cannot be below zero";
    EXPECT_EQ(judge(tenths(4), 3 * tenth, limit, DecisionRule::guarded), Verdict::tooCloseToCall);
    EXPECT_EQ(judge(tenths(9), 3 * tenth, limit, DecisionRule::guarded), Verdict::out);
    EXPECT_EQ(describeLimits(limit, {}), "at most 0.0005 in");
    EXPECT_NEAR(conformity(tenths(5), tenth, limit).probability, 0.5, 1e-12);
}
