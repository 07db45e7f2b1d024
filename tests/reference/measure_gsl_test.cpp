// SPDX-License-Identifier: GPL-3.0-or-later
/// GNU Scientific Library (Debian package libgsl-dev): quantiles of Student's t, mean and standard deviation, worked
/// out by another library while the test runs.
#include <gmock/gmock.h>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_statistics_double.h>
#include <measure/statistics.h>
#include <measure/uncertainty.h>
#include <random>

using namespace caprail;

TEST(Gsl, agrees_on_students_t) {
    for (const double confidence : {0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973}) {
        for (int freedom = 1; freedom <= 200; ++freedom) {
            const double theirs = gsl_cdf_tdist_Pinv(0.5 + confidence / 2, freedom);
            EXPECT_NEAR(studentT(confidence, freedom) / theirs, 1.0, 1e-8) << confidence << ", " << freedom;
        }
    }
}

TEST(Gsl, agrees_on_mean_and_standard_deviation) {
    std::mt19937 random(7);
    std::normal_distribution<double> normal(1.4605e6, 4e3);
    for (int n = 2; n <= 60; ++n) {
        std::vector<double> values(static_cast<std::size_t>(n));
        for (double& x : values) {
            x = normal(random);
        }
        const Moments m = momentsOf(values);
        EXPECT_NEAR(m.mean / gsl_stats_mean(values.data(), 1, values.size()), 1.0, 1e-14);
        EXPECT_NEAR(m.standardDeviation / gsl_stats_sd(values.data(), 1, values.size()), 1.0, 1e-12);
    }
}
