// SPDX-License-Identifier: GPL-3.0-or-later
/// C. I. Bliss, The calculation of the dosage-mortality curve, Annals of Applied Biology 22 (1935): beetles after five
/// hours of gaseous carbon disulphide. Data and the probit fit as in A. J. Dobson, An Introduction to Generalized Linear
/// Models (chapter on binary variables; from memory): intercept −34.935 (2.648), slope 19.728 (1.487), deviance 10.12 with
/// 6 degrees of freedom. To more digits as worked out once with R 4.2.2 (Debian's r-base-core 4.2.2.20221110-2), seen:
/// glm(cbind(killed, n − killed) ~ dose, family = binomial(link = "probit")), its summary, deviance and vcov.
#include <array>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>
#include <gmock/gmock.h>
#include <measure/probit.h>
#include <vector>

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
    // R stops once the deviance changes by less than 1e-8 of itself.
    EXPECT_NEAR(fit->intercept, -34.93526608, 2e-4);
    EXPECT_NEAR(fit->slope, 19.72793790, 1e-4);
    EXPECT_NEAR(fit->interceptError, 2.647879, 5e-4);
    EXPECT_NEAR(fit->slopeError, 1.487213, 3e-4);
    EXPECT_NEAR(fit->covariance, -3.936428, 2e-3);
    EXPECT_NEAR(fit->deviance, 10.11975811, 1e-5);
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

TEST(ProbitOfSteps, in_nanometres_is_that_of_r) {
    // Heights of a step in nanometres, answers «rocks» of four each; glm as above with epsilon = 1e-14.
    std::vector<Response> steps;
    const std::array<std::size_t, 11> rocks{0, 0, 0, 0, 0, 0, 1, 2, 3, 4, 4};
    for (std::size_t i = 0; i < rocks.size(); ++i) {
        steps.push_back({2540.0 * (static_cast<double>(i) - 5), 4, rocks[i]});
    }
    const auto fit = probitFit(steps);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->intercept, -1.9253161318638, 1e-6);
    EXPECT_NEAR(fit->slope, 0.0003789738945, 1e-10);
    EXPECT_NEAR(fit->interceptError, 0.7343612420656, 1e-5);
    EXPECT_NEAR(fit->slopeError, 0.0001255550401, 1e-9);
    EXPECT_NEAR(fit->covariance, -8.000081907e-05, 1e-9);
    EXPECT_NEAR(fit->deviance, 0.817222257, 1e-7);
}
