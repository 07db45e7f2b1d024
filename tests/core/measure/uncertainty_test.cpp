// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <measure/uncertainty.h>
#include <stdexcept>

using namespace caprail;
using testing::HasSubstr;

namespace {

UncertaintyTerm term(std::string name, double u, std::optional<double> freedom = {}, std::string with = {},
                     double sensitivity = 1) {
    UncertaintyTerm t;
    t.name = std::move(name);
    t.standardUncertainty = u;
    t.degreesOfFreedom = freedom;
    t.isTypeA = freedom.has_value();
    t.correlatedWith = std::move(with);
    t.sensitivity = sensitivity;
    return t;
}

} // namespace

TEST(Budget, adds_independent_terms_in_squares) {
    const auto budget = budgetOf({term("a", 3000), term("b", 4000)});
    ASSERT_TRUE(budget);
    EXPECT_DOUBLE_EQ(budget->combined(), 5000);
    EXPECT_DOUBLE_EQ(budget->expanded(Coverage::two), 10000);
}

TEST(Budget, adds_correlated_terms_in_a_line) {
    const auto budget = budgetOf({term("zero, shim 1", 300, {}, "zero"), term("zero, shim 2", 300, {}, "zero"),
                                  term("zero, shim 3", 300, {}, "zero"), term("own", 1200)});
    EXPECT_DOUBLE_EQ(budget->combined(), 1500); // 900 and 1200
}

TEST(Budget, lets_a_common_error_drop_out_of_a_difference) {
    const auto a = budgetOf({term("zero", 500, {}, "zero of MIC-1"), term("bore", 300)});
    const auto b = budgetOf({term("zero", 500, {}, "zero of MIC-1"), term("journal", 400)});
    EXPECT_DOUBLE_EQ(difference(*a, *b).combined(), 500);
}

TEST(Budget, follows_welch_and_satterthwaite) {
    // Two equal terms with 4 degrees of freedom each have 8 together.
    const auto budget = budgetOf({term("a", 100, 4.0), term("b", 100, 4.0)});
    EXPECT_DOUBLE_EQ(*budget->effectiveDegreesOfFreedom(), 8);
}

TEST(Budget, of_known_limits_alone_has_infinite_degrees_of_freedom) {
    const auto budget = budgetOf({term("limit", 100)});
    EXPECT_FALSE(budget->effectiveDegreesOfFreedom());
    EXPECT_EQ(budget->coverageFactor(Coverage::student), 2.0);
    EXPECT_EQ(budget->rows({}).front().degreesOfFreedom, "∞");
}

TEST(Budget, widens_with_students_t_when_few_readings_stand_behind_it) {
    const auto few = budgetOf({term("a", 100, 1.0)});
    const auto many = budgetOf({term("a", 100, 50.0)});
    EXPECT_GT(few->coverageFactor(Coverage::student), 13);
    EXPECT_NEAR(many->coverageFactor(Coverage::student), 2.05, 0.005);
    EXPECT_EQ(few->coverageFactor(Coverage::two), 2.0);
}

TEST(Budget, rows_share_out_the_whole_variance) {
    const auto budget = budgetOf({term("own", 1200), term("zero 1", 450, {}, "zero"), term("zero 2", 450, {}, "zero")});
    const auto rows = budget->rows({});
    ASSERT_EQ(rows.size(), 3U);
    double sum = 0;
    for (const auto& row : rows) {
        sum += row.shareOfVariance;
    }
    EXPECT_NEAR(sum, 1.0, 1e-12);
    EXPECT_EQ(rows[0].share, "64 %");
    EXPECT_EQ(rows[1].share, "18 %");
    EXPECT_EQ(rows[1].correlatedWith, "zero");
    EXPECT_EQ(rows[0].type, "B");
    EXPECT_EQ(rows[0].standardUncertainty, "0.00005 in");
}

TEST(Budget, explains_why_plus_minus) {
    const auto budget = budgetOf({term("feeler leaf", 3'000), term("gap, repeatability", 4'000, 9.0)});
    EXPECT_EQ(budget->explain(Coverage::two, Units{LengthUnit::millimetre, TorqueUnit::newtonMetre, '.'}),
              "± 0.0100 mm = k 2.00 × u 0.0050 mm; degrees of freedom 21. The largest share is “gap, repeatability”, "
              "64 %.");
}

TEST(Budget, without_terms_is_no_uncertainty) {
    EXPECT_EQ(UncertaintyBudget().combined(), 0);
    EXPECT_EQ(UncertaintyBudget().expanded(Coverage::student), 0);
    EXPECT_EQ(UncertaintyBudget().explain(Coverage::two, {}), "Nothing was measured yet.");
    EXPECT_FALSE(Uncertainty(UncertaintyBudget(), Coverage::two).isKnown()) << "nothing is not ± 0";
}

TEST(Budget, refuses_what_is_no_uncertainty_and_names_the_term) {
    const auto below = budgetOf({term("feeler leaf", -1)});
    ASSERT_FALSE(below);
    EXPECT_EQ(below.error().sentence, "The standard uncertainty of “feeler leaf” must be a number of 0 or more.");
    EXPECT_FALSE(budgetOf({term("a", std::numeric_limits<double>::quiet_NaN())}));
    EXPECT_FALSE(budgetOf({term("a", 1, 0.0)}));
    EXPECT_FALSE(budgetOf({term("a", 1, {}, "", std::numeric_limits<double>::infinity())}));
}

TEST(Budget, never_takes_no_degrees_of_freedom_for_infinitely_many) {
    UncertaintyBudget budget;
    budget.terms.push_back(term("a", 1, 0.0));
    EXPECT_THROW(static_cast<void>(budget.combined()), std::invalid_argument);
}

TEST(StudentT, grows_as_degrees_of_freedom_get_fewer) {
    double before = 2.0;
    for (int freedom = 60; freedom >= 1; --freedom) {
        const double t = studentT(0.9545, freedom);
        EXPECT_GT(t, before) << freedom;
        before = t;
    }
}

TEST(StudentT, cuts_fractional_degrees_of_freedom_down) {
    EXPECT_EQ(studentT(0.95, 16.9), studentT(0.95, 16));
    EXPECT_GT(studentT(0.95, 0.5), studentT(0.95, 1));
}

TEST(StudentT, throws_outside_its_ranges) {
    EXPECT_THROW(studentT(1.0, 5), std::invalid_argument);
    EXPECT_THROW(studentT(0.95, 0), std::invalid_argument);
}
