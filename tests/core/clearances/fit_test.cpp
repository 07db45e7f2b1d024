// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/fit.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

FitToJudge endPlay(std::vector<Length> readings) {
    FitToJudge fit;
    fit.name = "Crank end play";
    fit.readings = std::move(readings);
    fit.instrument = "DI-1";
    fit.limitOfError = nanometres(5'000);
    fit.band = Band::between(thou(4), thou(8)).value();
    return fit;
}

} // namespace

TEST(Fit, in_the_middle_of_its_band_is_in) {
    const auto j = judgeFit(endPlay({thou(6), thou(6)}), Coverage::two, DecisionRule::guarded, {});
    ASSERT_TRUE(j);
    EXPECT_EQ(j->verdict, Verdict::in);
    EXPECT_EQ(j->mean, thou(6));
    EXPECT_TRUE(j->remedy.empty());
    EXPECT_EQ(j->sentence, "Crank end play: 0.0060 in ± 0.00023 in is in (0.0040 to 0.0080 in, guard bands).");
}

TEST(Fit, near_an_end_is_too_close_unless_acceptance_is_simple) {
    const auto fit = endPlay({tenths(79), tenths(79)});
    const auto guarded = judgeFit(fit, Coverage::two, DecisionRule::guarded, {});
    EXPECT_EQ(guarded->verdict, Verdict::tooCloseToCall);
    EXPECT_THAT(guarded->remedy, HasSubstr("more readings"));
    EXPECT_EQ(judgeFit(fit, Coverage::two, DecisionRule::simple, {})->verdict, Verdict::in);
}

TEST(Fit, out_of_band_says_by_how_much) {
    EXPECT_THAT(judgeFit(endPlay({thou(10), thou(10)}), Coverage::two, DecisionRule::guarded, {})->remedy,
                HasSubstr("0.0020 in above its band"));
    EXPECT_THAT(judgeFit(endPlay({thou(1), thou(1)}), Coverage::two, DecisionRule::guarded, {})->remedy,
                HasSubstr("0.0030 in below its band"));
}

TEST(Fit, of_one_reading_says_that_its_repeatability_is_not_known) {
    auto fit = endPlay({thou(6)});
    EXPECT_EQ(judgeFit(fit, Coverage::two, DecisionRule::guarded, {})->budget.missing.size(), 1U);
    fit.repeatability = Pooled{2'000, 12};
    const auto known = judgeFit(fit, Coverage::two, DecisionRule::guarded, {});
    EXPECT_TRUE(known->budget.missing.empty());
    EXPECT_GT(known->expandedUncertainty, 4'000);
}

TEST(Fit, refuses_nothing_to_judge) {
    EXPECT_FALSE(judgeFit(endPlay({}), Coverage::two, DecisionRule::guarded, {}));
    auto nameless = endPlay({thou(6)});
    nameless.name.clear();
    EXPECT_FALSE(judgeFit(nameless, Coverage::two, DecisionRule::guarded, {}));
    auto below = endPlay({thou(6)});
    below.limitOfError = -thou(1);
    EXPECT_FALSE(judgeFit(below, Coverage::two, DecisionRule::guarded, {}));
}
