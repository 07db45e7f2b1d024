// SPDX-License-Identifier: GPL-3.0-or-later
/// C. I. Bliss, The calculation of the dosage-mortality curve, Annals of Applied Biology 22 (1935): beetles after five
/// hours of gaseous carbon disulphide. Data and the probit fit as in A. J. Dobson, An Introduction to Generalized Linear
/// Models (chapter on binary variables), and as R's glm(cbind(killed, n − killed) ~ dose, binomial(link = "probit")) gives
/// it. Both from memory: intercept −34.935 (2.648), slope 19.728 (1.487), deviance 10.12 with 6 degrees of freedom.
#include <array>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>
#include <gmock/gmock.h>
#include <measure/probit.h>

using namespace caprail;

namespace {

// Dose in log10 mg/l, beetles, killed.
const std::array beetles{Response{1.6907, 59, 6},  Response{1.7242, 60, 13}, Response{1.7552, 62, 18},
                         Response{1.7842, 56, 28}, Response{1.8113, 63, 52}, Response{1.8369, 59, 53},
                         Response{1.8610, 62, 61}, Response{1.8839, 60, 60}};

} // namespace

TEST(ProbitOfBliss, gives_the_published_estimates_and_errors) {
    const auto fit = probitFit(beetles);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->intercept, -34.935, 0.01);
    EXPECT_NEAR(fit->slope, 19.728, 0.006);
    EXPECT_NEAR(fit->interceptError, 2.648, 0.01);
    EXPECT_NEAR(fit->slopeError, 1.487, 0.006);
    EXPECT_NEAR(fit->deviance, 10.12, 0.01);
    EXPECT_NEAR(fit->middle(), 34.935 / 19.728, 0.0005);
}

TEST(ProbitOfBliss, bounds_a_dose_as_the_delta_method_does_where_there_are_answers_enough) {
    const auto fit = probitFit(beetles);
    const double z = 1.6449; // 95 % killed
    const double dose = (z - fit->intercept) / fit->slope;
    // Delta method for (z − a)/b.
    const double variance = (fit->interceptError * fit->interceptError + 2 * dose * fit->covariance +
                             dose * dose * fit->slopeError * fit->slopeError) /
                            (fit->slope * fit->slope);
    const auto upper = upperDose(beetles, 0.95, 0.95);
    ASSERT_TRUE(upper);
    EXPECT_NEAR(*upper, dose + 1.6449 * std::sqrt(variance), 0.003);
}
