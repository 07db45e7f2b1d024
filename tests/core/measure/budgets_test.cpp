// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <cmath>
#include <gmock/gmock.h>
#include <measure/budgets.h>

using namespace caprail;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

MeasuredTerm measured(std::string name, std::string instrument, Length limit, Length zero = {}) {
    MeasuredTerm term;
    term.name = std::move(name);
    term.instrument = std::move(instrument);
    term.readings = 2;
    term.repeatability = Pooled{1'000, 10};
    term.limitOfError = limit;
    term.zeroError = zero;
    return term;
}

} // namespace

TEST(GapBudget, is_repeatability_feeler_and_straightedge) {
    GapMeasurement gap;
    gap.readings = 4;
    gap.repeatability = Pooled{6'000, 30};
    gap.leaves = 3;
    gap.feelerLimit = nanometres(5'000);
    gap.straightedgeLimit = nanometres(8'000);
    const auto budget = gapBudget(gap);
    ASSERT_TRUE(budget);
    EXPECT_THAT(budget->missing, IsEmpty());
    EXPECT_EQ(budget->terms.size(), 5U);
    EXPECT_NEAR(budget->combined(), std::sqrt(3'000.0 * 3'000 + 3 * 25e6 / 3 + 64e6 / 3), 1e-9);
    EXPECT_EQ(budget->terms[0].degreesOfFreedom, 30.0);
}

TEST(GapBudget, says_what_it_leaves_out) {
    GapMeasurement gap;
    gap.readings = 1;
    const auto budget = gapBudget(gap);
    ASSERT_TRUE(budget);
    EXPECT_THAT(budget->terms, IsEmpty());
    EXPECT_EQ(budget->missing.size(), 3U);
    EXPECT_THAT(budget->explain(Coverage::two, {}), HasSubstr("straightedge is not entered"));
}

TEST(GapBudget, refuses_what_was_not_measured) {
    EXPECT_FALSE(gapBudget({}));
    GapMeasurement gap;
    gap.readings = 2;
    gap.leaves = 0;
    EXPECT_FALSE(gapBudget(gap));
    gap.leaves = 1;
    gap.feelerLimit = nanometres(-1);
    EXPECT_FALSE(gapBudget(gap));
}

TEST(StackBudget, adds_one_term_per_shim_and_the_zero_in_a_line) {
    MeasuredTerm shim = measured("shim S1", "MIC-1", nanometres(3'000), nanometres(2'000));
    shim.repeatability = Pooled{0, 10};
    std::vector<MeasuredTerm> shims(4, shim);
    const auto budget = stackBudget(shims);
    ASSERT_TRUE(budget);
    // Four own limits in squares; four zeros in a line.
    EXPECT_NEAR(budget->combined(), std::sqrt(4 * 9e6 / 3 + std::pow(4 * 2'000, 2) / 3), 1e-9);
}

TEST(StackBudget, keeps_two_micrometers_apart) {
    MeasuredTerm a = measured("shim S1", "MIC-1", Length(), nanometres(2'000));
    a.repeatability = Pooled{0, 10};
    MeasuredTerm b = a;
    b.instrument = "MIC-2";
    EXPECT_NEAR(stackBudget(std::array{a, b})->combined(), std::sqrt(2 * 4e6 / 3), 1e-9);
    EXPECT_NEAR(stackBudget(std::array{a, a})->combined(), 4'000 / std::sqrt(3.0), 1e-9);
}

TEST(StackBudget, of_no_shims_is_nothing) {
    EXPECT_EQ(stackBudget({})->combined(), 0);
}

TEST(ResidualBudget, joins_gap_and_stack) {
    GapMeasurement gap;
    gap.readings = 1;
    gap.repeatability = Pooled{3'000, 5};
    MeasuredTerm shim = measured("shim S1", "MIC-1", Length());
    shim.readings = 1;
    shim.repeatability = Pooled{4'000, 5};
    const auto residual = residualBudget(*gapBudget(gap), *stackBudget(std::span(&shim, 1)));
    EXPECT_DOUBLE_EQ(residual.combined(), 5'000);
    EXPECT_EQ(residual.rows({}).back().sensitivity, "−1");
    EXPECT_EQ(residual.missing.size(), 3U);
}

TEST(ClearanceBudget, lets_the_setting_micrometers_zero_drop_out) {
    MeasuredTerm bore = measured("bore", "MIC-1", nanometres(3'000), nanometres(2'500));
    MeasuredTerm journal = measured("journal", "MIC-1", nanometres(3'000), nanometres(2'500));
    const double same = clearanceBudget(bore, journal)->combined();
    journal.instrument = "MIC-2";
    const double other = clearanceBudget(bore, journal)->combined();
    EXPECT_NEAR(same, std::sqrt(2 * 1e6 / 2 + 2 * 9e6 / 3), 1e-9);
    EXPECT_NEAR(other, std::sqrt(same * same + 2 * 2'500.0 * 2'500 / 3), 1e-9);
}

TEST(ClearanceBudget, counts_both_shells) {
    const auto budget = clearanceBudget(measured("housing", "BG-1", tenths(1)), measured("journal", "MIC-1", tenths(1)),
                                        {measured("upper shell", "MIC-2", tenths(1), tenths(1)),
                                         measured("lower shell", "MIC-2", tenths(1), tenths(1))});
    ASSERT_TRUE(budget);
    const double u = 2'540 / std::sqrt(3.0);
    EXPECT_NEAR(budget->combined(), std::sqrt(4 * 1e6 / 2 + 4 * u * u + 4 * u * u), 1e-9);
}

TEST(PickupBudget, has_four_terms_or_three_without_a_plate) {
    const MeasuredTerm t = measured("term", "DG-1", thou(1));
    EXPECT_EQ(pickupBudget(t, t, t, t)->terms.size(), 8U);
    EXPECT_EQ(pickupBudget(t, t, {}, t)->terms.size(), 6U);
}

TEST(MeasuredTerms, name_the_instrument_whose_limit_is_not_entered) {
    MeasuredTerm term = measured("journal", "MIC-1", Length());
    EXPECT_THAT(budgetFor(std::span(&term, 1))->missing,
                ElementsAre("The limit of error of MIC-1 is not entered: its share is left out."));
    term.repeatability.reset();
    EXPECT_EQ(budgetFor(std::span(&term, 1))->missing.size(), 2U);
}

TEST(MeasuredTerms, refuse_nothing_no_reading_and_limits_below_zero) {
    EXPECT_FALSE(budgetFor({}));
    MeasuredTerm term = measured("journal", "MIC-1", tenths(1));
    term.readings = 0;
    const auto none = budgetFor(std::span(&term, 1));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().sentence, "“journal” has no reading: measure it first.");
    term.readings = 1;
    term.zeroError = -tenths(1);
    EXPECT_FALSE(budgetFor(std::span(&term, 1)));
}
