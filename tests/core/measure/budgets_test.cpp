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
    term.scatter.repeatability = Pooled{1'000, 10};
    term.limitOfError = limit;
    term.zeroError = zero;
    return term;
}

GapMeasurement gapRead(std::size_t readings) {
    GapMeasurement gap;
    gap.readings = gap.figures = readings;
    gap.scatter.repeatability = Pooled{6'000, 30};
    gap.leafSet = "LEAVES-2";
    gap.leafLimit = nanometres(5'000);
    gap.straightedge = "EDGE-1";
    gap.straightedgeLimit = nanometres(8'000);
    return gap;
}

} // namespace

TEST(GapBudget, adds_leaves_of_one_set_in_a_line_and_the_rest_in_squares) {
    GapMeasurement gap = gapRead(2);
    gap.leaves = 3;
    gap.halfWidth = nanometres(3'000);
    const auto budget = gapBudget(gap);
    ASSERT_TRUE(budget);
    EXPECT_THAT(budget->missing, IsEmpty());
    EXPECT_NEAR(budget->combined(),
                std::sqrt(6'000.0 * 6'000 / 2 + std::pow(3 * 5'000, 2) / 3 + 64e6 / 3 + 9e6 / 3), 1e-9);
    EXPECT_EQ(budget->terms[0].degreesOfFreedom, 30.0);
}

TEST(GapBudget, gives_three_leaves_of_a_real_set_0_00061_in_and_not_0_00035) {
    GapMeasurement gap = gapRead(2);
    gap.scatter.repeatability = Pooled{0, 30};
    gap.straightedgeLimit = nanometres(1);
    gap.leafLimit = thou(0.35);
    gap.leaves = 3;
    EXPECT_NEAR(gapBudget(gap)->combined() / 25'400'000, 0.00061, 0.000005);
}

TEST(GapBudget, gives_a_median_the_uncertainty_of_a_median) {
    GapMeasurement gap = gapRead(3);
    const double u = gapBudget(gap)->terms[0].standardUncertainty;
    EXPECT_NEAR(u, 6'000 / std::sqrt(3.0) * 1.16, 1);
}

TEST(GapBudget, gains_nothing_from_a_reading_that_only_repeats_another) {
    GapMeasurement once = gapRead(1);
    once.scatter.repeatability = Pooled{0, 10};
    once.halfWidth = thou(0.5);
    GapMeasurement again = once;
    again.readings = 4;
    again.scatter.repeatability = Pooled{0, 40};
    EXPECT_EQ(Uncertainty(*gapBudget(again), Coverage::student).expanded(),
              Uncertainty(*gapBudget(once), Coverage::student).expanded());
    const double step = 12'700 / std::sqrt(3.0);
    EXPECT_GE(gapBudget(again)->combined(), std::sqrt(2 * step * step)) << "a step is lost however often it is read";
}

TEST(GapBudget, divides_what_two_people_differ_by_by_the_people_and_not_by_their_passes) {
    GapMeasurement gap = gapRead(4);
    gap.scatter.people = Pooled{8'000, 5};
    gap.people = 2;
    EXPECT_NEAR(gapBudget(gap)->terms[0].standardUncertainty, 8'000 / std::sqrt(2.0), 1e-9);
    gap.people = 1;
    EXPECT_NEAR(gapBudget(gap)->terms[0].standardUncertainty, 8'000, 1e-9)
        << "a place that one of them read carries all that people are known to differ by";
}

TEST(GapBudget, is_not_known_while_anything_is_missing_and_never_nothing) {
    GapMeasurement gap;
    gap.readings = 1;
    const auto budget = gapBudget(gap);
    ASSERT_TRUE(budget);
    EXPECT_THAT(budget->terms, IsEmpty());
    EXPECT_THAT(budget->missing,
                ElementsAre(Missing{Missing::What::repeatability, "gap"}, Missing{Missing::What::instrument, "gap"},
                            Missing{Missing::What::straightedge, ""}));
    const Uncertainty unknown(*budget, Coverage::two);
    EXPECT_FALSE(unknown.isKnown());
    EXPECT_FALSE(unknown.expanded());
    EXPECT_EQ(describe(unknown, {}), "± not known");
    EXPECT_THAT(budget->explain(Coverage::two, {}), HasSubstr("Say which straightedge"));
    GapMeasurement withoutLimit = gapRead(2);
    withoutLimit.leafLimit.reset();
    EXPECT_THAT(gapBudget(withoutLimit)->missing, ElementsAre(Missing{Missing::What::limitOfError, "LEAVES-2"}));
    withoutLimit.leafLimit = Length();
    EXPECT_EQ(gapBudget(withoutLimit)->missing.size(), 1U) << "a limit of nothing is none";
}

TEST(GapBudget, refuses_what_was_not_measured) {
    EXPECT_FALSE(gapBudget({}));
    GapMeasurement gap = gapRead(2);
    gap.leaves = 0;
    EXPECT_FALSE(gapBudget(gap));
    gap.leaves = 1;
    gap.leafLimit = nanometres(-1);
    EXPECT_FALSE(gapBudget(gap));
}

TEST(StackBudget, adds_one_term_per_shim_and_the_zero_in_a_line) {
    MeasuredTerm shim = measured("shim S1", "MIC-1", nanometres(3'000), nanometres(2'000));
    shim.scatter.repeatability = Pooled{0, 10};
    std::vector<MeasuredTerm> shims(4, shim);
    const auto budget = stackBudget(shims);
    ASSERT_TRUE(budget);
    // Four own limits in squares; four zeros in a line.
    EXPECT_NEAR(budget->combined(), std::sqrt(4 * 9e6 / 3 + std::pow(4 * 2'000, 2) / 3), 1e-9);
}

TEST(StackBudget, keeps_two_micrometers_apart) {
    MeasuredTerm a = measured("shim S1", "MIC-1", Length(), nanometres(2'000));
    a.isLimitShared = true;
    a.limitOfError = nanometres(2'000);
    a.scatter.repeatability = Pooled{0, 10};
    MeasuredTerm b = a;
    b.instrument = "MIC-2";
    EXPECT_NEAR(stackBudget(std::array{a, b})->combined(), std::sqrt(2 * 4e6 / 3), 1e-9);
    EXPECT_NEAR(stackBudget(std::array{a, a})->combined(), 4'000 / std::sqrt(3.0), 1e-9);
}

TEST(StackBudget, of_no_shims_is_nothing) {
    EXPECT_EQ(stackBudget({})->combined(), 0);
}

TEST(ResidualBudget, joins_gap_and_stack) {
    const auto gap = gapBudget(gapRead(2));
    MeasuredTerm shim = measured("shim S1", "MIC-1", nanometres(4'000));
    const auto stack = stackBudget(std::span(&shim, 1));
    const auto residual = residualBudget(*gap, *stack);
    EXPECT_DOUBLE_EQ(residual.combined(), std::hypot(gap->combined(), stack->combined()));
    EXPECT_EQ(residual.rows({}).back().sensitivity, "−1");
    shim.limitOfError.reset();
    EXPECT_FALSE(Uncertainty(residualBudget(*gap, *stackBudget(std::span(&shim, 1))), Coverage::two).isKnown());
}

TEST(ClearanceBudget, drops_the_micrometers_error_where_the_bore_gauge_was_set_in_it) {
    // Both ± 0.0001 in: 0.00016 in apart, 0.00012 in when one was set in the other.
    MeasuredTerm bore = measured("bore", "BORE-1", tenths(1));
    MeasuredTerm journal = measured("journal", "MIC-1", tenths(1));
    for (MeasuredTerm* term : {&bore, &journal}) {
        term->scatter.repeatability = Pooled{0, 10};
    }
    const auto expanded = [&] { return Uncertainty(*clearanceBudget(bore, journal), Coverage::two).expanded(); };
    EXPECT_NEAR(*expanded() / 25'400'000, 0.00016, 0.000005);
    for (MeasuredTerm* term : {&bore, &journal}) {
        term->zeroOf = "MIC-1";
        term->zeroError = tenths(1);
    }
    journal.isLimitShared = true;
    EXPECT_NEAR(*expanded() / 25'400'000, 0.00012, 0.000005);
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
    EXPECT_THAT(budgetFor(std::span(&term, 1))->missing, ElementsAre(Missing{Missing::What::limitOfError, "MIC-1"}));
    EXPECT_EQ(describe(budgetFor(std::span(&term, 1))->missing.front()), "the limit of error of MIC-1");
    term.scatter.repeatability.reset();
    EXPECT_EQ(budgetFor(std::span(&term, 1))->missing.size(), 2U);
}

TEST(MeasuredTerms, count_the_step_that_was_read_to_once_and_never_divide_it) {
    MeasuredTerm term = measured("journal", "MIC-1", nanometres(1));
    term.scatter.repeatability = Pooled{0, 10};
    term.step = tenths(5);
    term.readings = 100;
    // JCGM 100:2008, F.2.2.1: 0.29 × the step.
    const double step = 0.2887 * 12'700;
    EXPECT_NEAR(budgetFor(std::span(&term, 1))->combined(), std::hypot(step, step / 10), 1);
}

TEST(MeasuredTerms, count_what_a_difference_in_temperature_makes) {
    // 2.64 in, 5 K half-width, steel: 0.00015 in, over √3 0.000087 in.
    EXPECT_NEAR(rectangular(temperatureError(inches(2.64), celsius(5))) / 25'400'000, 0.0000876, 0.000001);
    EXPECT_EQ(usualTemperatureSpread, fahrenheit(37) - fahrenheit(32));
}

TEST(WouldDo, names_the_largest_term_and_the_limit_that_would_suffice) {
    GapMeasurement gap = gapRead(2);
    gap.scatter.repeatability = Pooled{500, 30};
    gap.leafLimit = thou(0.35); // 0.00035 in
    gap.leaves = 3;
    const auto budget = *gapBudget(gap);
    const double wanted = 12'700;
    ASSERT_GT(budget.expanded(Coverage::two), wanted);
    const auto would = whatWouldDo(budget, Coverage::two, wanted);
    ASSERT_TRUE(would && would->limitOfError);
    EXPECT_TRUE(would->term.starts_with("feeler leaf"));
    gap.leafLimit = *would->limitOfError;
    EXPECT_LE(gapBudget(gap)->expanded(Coverage::two), wanted);
    gap.leafLimit = *would->limitOfError + nanometres(5);
    EXPECT_GT(gapBudget(gap)->expanded(Coverage::two), wanted);
}

TEST(WouldDo, asks_for_readings_where_they_scatter_and_says_when_nothing_is_enough) {
    MeasuredTerm term = measured("journal", "MIC-1", nanometres(1'000));
    term.scatter.repeatability = Pooled{10'000, 1'000'000};
    term.readings = 1;
    const auto would = whatWouldDo(*budgetFor(std::span(&term, 1)), Coverage::two, 5'000);
    ASSERT_TRUE(would && would->readings);
    term.readings = *would->readings;
    EXPECT_LE(budgetFor(std::span(&term, 1))->expanded(Coverage::two), 5'000);
    term.readings = 1;
    const auto hopeless = whatWouldDo(*budgetFor(std::span(&term, 1)), Coverage::two, 100);
    EXPECT_FALSE(hopeless->readings || hopeless->limitOfError);
    EXPECT_THAT(describe(*hopeless, {}), HasSubstr("not enough"));
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
