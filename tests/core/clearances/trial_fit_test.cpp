// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/trial_fit.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

Result<TrialFitJudgement> judged(TrialFitItem item, int throwNumber, TrialFitFound found,
                                 std::optional<Length> clearance = {}) {
    return judgeTrialFit({item, throwNumber, found, clearance}, defaultCounterweightClearance(), {});
}

} // namespace

TEST(TrialFit, passes_what_passed_and_says_what_to_do_about_a_fail) {
    for (const auto& [item, name] : allWords<TrialFitItem>()) {
        const int number = needsThrow(item) ? 2 : 0;
        const auto pass = judged(item, number, TrialFitFound::pass);
        ASSERT_TRUE(pass) << name;
        EXPECT_TRUE(pass->isGood) << name;
        EXPECT_TRUE(pass->remedy.empty()) << name;
        const auto fail = judged(item, number, TrialFitFound::fail);
        ASSERT_TRUE(fail) << name;
        EXPECT_FALSE(fail->isGood) << name;
        EXPECT_FALSE(fail->remedy.empty()) << name;
        EXPECT_THAT(fail->sentence, HasSubstr(std::string(name)));
    }
}

TEST(TrialFit, holds_a_counterweight_to_its_least_clearance) {
    // Common practice, no source: 0.060 in at the closest counterweight.
    const auto enough = judged(TrialFitItem::counterweights, 3, TrialFitFound::clearance, thou(60));
    EXPECT_TRUE(enough->isGood);
    EXPECT_EQ(enough->sentence, "counterweights clear at throw 3: 0.0600 in measured, at least 0.0600 in asked.");
    EXPECT_FALSE(judged(TrialFitItem::counterweights, 3, TrialFitFound::clearance, thou(59.9))->isGood);
    EXPECT_FALSE(judged(TrialFitItem::rodBolts, 3, TrialFitFound::clearance, thou(59.9))->isGood);
}

TEST(TrialFit, holds_dipstick_and_pickup_tube_to_their_least_clearance) {
    const auto dipstick = judgeTrialFit({TrialFitItem::dipstick, 0, TrialFitFound::clearance, thou(0.5)},
                                        defaultDipstickClearance(), {});
    EXPECT_FALSE(dipstick->isGood) << "half a thousandth is none";
    EXPECT_EQ(dipstick->sentence, "dipstick clear: 0.0005 in measured, at least 0.0600 in asked.");
    EXPECT_TRUE(judgeTrialFit({TrialFitItem::pickupTube, 0, TrialFitFound::clearance, thou(100)},
                              defaultPickupTubeClearance(), {})
                    ->isGood);
    EXPECT_FALSE(judgeTrialFit({TrialFitItem::pickupTube, 0, TrialFitFound::clearance, thou(99.9)},
                               defaultPickupTubeClearance(), {})
                     ->isGood);
    EXPECT_FALSE(judged(TrialFitItem::pickupTube, 0, TrialFitFound::clearance, Length())->isGood);
}

TEST(TrialFit, touching_parts_are_never_good_even_if_the_shop_asks_for_nothing) {
    const auto touching =
        judgeTrialFit({TrialFitItem::counterweights, 1, TrialFitFound::clearance, Length()}, Length(), {});
    ASSERT_TRUE(touching);
    EXPECT_FALSE(touching->isGood);
}

TEST(TrialFit, refuses_answers_that_do_not_fit_the_question) {
    EXPECT_FALSE(judged(TrialFitItem::counterweights, 0, TrialFitFound::pass));
    EXPECT_FALSE(judged(TrialFitItem::dipstick, 2, TrialFitFound::pass));
    EXPECT_FALSE(judged(TrialFitItem::turnsFreely, 0, TrialFitFound::clearance, thou(60)));
    EXPECT_FALSE(judged(TrialFitItem::rodBolts, 1, TrialFitFound::clearance));
    EXPECT_FALSE(judged(TrialFitItem::rodBolts, 1, TrialFitFound::pass, thou(60)));
    EXPECT_FALSE(judged(TrialFitItem::rodBolts, 1, TrialFitFound::clearance, -thou(1)));
    EXPECT_FALSE(judgeTrialFit({TrialFitItem::rodBolts, 1, TrialFitFound::pass, {}}, -thou(1), {}));
    EXPECT_EQ(judged(TrialFitItem::counterweights, 0, TrialFitFound::pass).error().sentence,
              "Say at which throw “counterweights clear” was looked at: throws count from 1.");
}

TEST(TrialFit, reads_back_the_words_it_writes) {
    for (const auto& [item, name] : allWords<TrialFitItem>()) {
        EXPECT_EQ(fromWord<TrialFitItem>(name), item);
    }
}
