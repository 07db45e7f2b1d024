// SPDX-License-Identifier: GPL-3.0-or-later
/// JCGM 100:2008 (the GUM), annex H.1, calibration of an end gauge, and table H.1. Inputs for the standard and the
/// comparator seen in an example of the same name; the other inputs and the results (u_c = 32 nm, effective degrees of
/// freedom 16, t at 99 % = 2.92, U = 93 nm) from memory.
#include <cmath>
#include <gmock/gmock.h>
#include <measure/uncertainty.h>

using namespace caprail;

namespace {

UncertaintyTerm line(std::string name, double nanometres, double freedom) {
    UncertaintyTerm term;
    term.name = std::move(name);
    term.standardUncertainty = nanometres;
    term.degreesOfFreedom = freedom;
    return term;
}

/// Contributions |c_i|·u(x_i) to the length of the end gauge, in nanometres.
UncertaintyBudget endGauge() {
    return *budgetOf(
        {line("calibration of the standard end gauge", 25, 18), line("repeated observations", 5.8, 24),
         line("random effects of the comparator", 3.9, 5), line("systematic effects of the comparator", 6.7, 8),
         line("difference in expansion coefficients", 2.9, 50), line("difference in temperatures", 16.6, 2)});
}

} // namespace

TEST(GumH1, combined_standard_uncertainty) {
    EXPECT_EQ(std::round(endGauge().combined()), 32);
}

TEST(GumH1, effective_degrees_of_freedom) {
    EXPECT_NEAR(*endGauge().effectiveDegreesOfFreedom(), 16.7, 0.3);
    EXPECT_EQ(std::floor(*endGauge().effectiveDegreesOfFreedom()), 16);
}

TEST(GumH1, expanded_uncertainty_at_99_percent) {
    const double t = studentT(0.99, *endGauge().effectiveDegreesOfFreedom());
    EXPECT_NEAR(t, 2.92, 0.005);
    // The GUM multiplies the rounded figures: 2.92 · 32 nm.
    EXPECT_EQ(std::round(t * std::round(endGauge().combined())), 93);
}

TEST(GumH1, uncertainty_of_the_comparison_from_its_three_parts) {
    // H.1.3.2: u(d) = 9.7 nm; H.1.6: its effective degrees of freedom are 25.6.
    const auto d = budgetOf({line("repeated", 5.8, 24), line("random", 3.9, 5), line("systematic", 6.7, 8)});
    EXPECT_NEAR(d->combined(), 9.7, 0.05);
    EXPECT_NEAR(*d->effectiveDegreesOfFreedom(), 25.6, 0.5);
}

TEST(GumH1, half_width_of_the_temperature_over_root_three) {
    // H.1.3.4: bounds ± 0.05 °C give 0.029 °C.
    EXPECT_NEAR(rectangular(0.05), 0.029, 0.0005);
}
