// SPDX-License-Identifier: GPL-3.0-or-later
/// JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.2.2, example: ten resistors of 1000 Ω, each
/// compared with one standard of standard uncertainty 100 mΩ and connected in series. From memory. Their errors are those
/// of the standard, so they add up: 1.0 Ω, and not 0.32 Ω as the root of the sum of squares would have it.
#include <gmock/gmock.h>
#include <measure/uncertainty.h>

using namespace caprail;

namespace {

UncertaintyBudget tenResistors(const char* standard) {
    UncertaintyBudget budget;
    for (int i = 0; i < 10; ++i) {
        UncertaintyTerm resistor;
        resistor.name = "R" + std::to_string(i + 1);
        resistor.standardUncertainty = 0.1;
        resistor.correlatedWith = standard;
        budget.terms.push_back(std::move(resistor));
    }
    return budget;
}

} // namespace

TEST(Gum522, ten_resistors_compared_with_one_standard) {
    EXPECT_NEAR(tenResistors("R_S").combined(), 1.0, 1e-12);
    EXPECT_NEAR(tenResistors("").combined(), 0.316, 0.0005);
}

TEST(Gum522, rounding_of_an_indication_is_0_29_of_its_step) {
    // F.2.2.1: a step δx gives a rectangle of half-width δx/2: u = 0.29 δx.
    EXPECT_NEAR(rectangular(0.5), 0.29, 0.0015);
}
