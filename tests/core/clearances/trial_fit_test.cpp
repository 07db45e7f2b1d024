// SPDX-License-Identifier: GPL-3.0-or-later
#include <clearances/trial_fit.h>
#include <gmock/gmock.h>

using namespace caprail;
using testing::HasSubstr;

namespace {

Result<TrialFitJudgement> judged(TrialItem item, int throwNumber, TrialResult found,
                                 std::optional<Length> clearance = {}) {
    return judgeTrialFit({item, throwNumber, found, clearance}, defaultCounterweightClearance(), {});
}

} // namespace

TEST(TrialFit, passes_what_passed_and_says_what_to_do_about_a_fail) {
    for (const auto& [item, name] : allWords<TrialItem>()) {
        const int number = isPerThrow(item) ? 2 : 0;
        const auto pass = judged(item, number, TrialResult::pass);
        ASSERT_TRUE(pass) << name;
        EXPECT_TRUE(pass->isGood) << name;
        EXPECT_TRUE(pass->remedy.empty()) << name;
        const auto fail = judged(item, number, TrialResult::fail);
        ASSERT_TRUE(fail) << name;
        EXPECT_FALSE(fail->isGood) << name;
        EXPECT_FALSE(fail->remedy.empty()) << name;
        EXPECT_THAT(fail->sentence, HasSubstr(std::string(name)));
    }
}

TEST(TrialFit, holds_a_counterweight_to_its_least_clearance) {
    // Common practice, no source: 0.060 in at the closest counterweight.
    const auto enough = judged(TrialItem::counterweights, 3, TrialResult::measured, thou(60));
    EXPECT_TRUE(enough->isGood);
    EXPECT_EQ(enough->sentence, "counterweights clear at throw 3: 0.0600 in measured, at least 0.0600 in asked.");
    EXPECT_FALSE(judged(TrialItem::counterweights, 3, TrialResult::measured, thou(59.9))->isGood);
    EXPECT_FALSE(judged(TrialItem::rodBolts, 3, TrialResult::measured, thou(59.9))->isGood);
}

TEST(TrialFit, lets_dipstick_and_pickup_tube_do_with_any_clearance) {
    EXPECT_TRUE(judged(TrialItem::dipstick, 0, TrialResult::measured, thou(5))->isGood);
    EXPECT_FALSE(judged(TrialItem::pickupTube, 0, TrialResult::measured, Length())->isGood);
}

TEST(TrialFit, touching_parts_are_never_good_even_if_the_shop_asks_for_nothing) {
    const auto touching = judgeTrialFit({TrialItem::counterweights, 1, TrialResult::measured, Length()}, Length(), {});
    ASSERT_TRUE(touching);
    EXPECT_FALSE(touching->isGood);
}

TEST(TrialFit, refuses_answers_that_do_not_fit_the_question) {
    EXPECT_FALSE(judged(TrialItem::counterweights, 0, TrialResult::pass));
    EXPECT_FALSE(judged(TrialItem::dipstick, 2, TrialResult::pass));
    EXPECT_FALSE(judged(TrialItem::turnsFreely, 0, TrialResult::measured, thou(60)));
    EXPECT_FALSE(judged(TrialItem::rodBolts, 1, TrialResult::measured));
    EXPECT_FALSE(judged(TrialItem::rodBolts, 1, TrialResult::pass, thou(60)));
    EXPECT_FALSE(judged(TrialItem::rodBolts, 1, TrialResult::measured, -thou(1)));
    EXPECT_FALSE(judgeTrialFit({TrialItem::rodBolts, 1, TrialResult::pass, {}}, -thou(1), {}));
    EXPECT_EQ(judged(TrialItem::counterweights, 0, TrialResult::pass).error().sentence,
              "Say at which throw “counterweights clear” was looked at: throws count from 1.");
}

TEST(TrialFit, reads_back_the_words_it_writes) {
    for (const auto& [item, name] : allWords<TrialItem>()) {
        EXPECT_EQ(fromWord<TrialItem>(name), item);
    }
}
