// SPDX-License-Identifier: GPL-3.0-or-later
/// AIAG, Measurement Systems Analysis, 4th edition, chapter III: the example of ten parts, three appraisers and three
/// trials, and its analysis of variance (table III-B 10): repeatability 0.199933, reproducibility 0.226838, no
/// interaction, GRR 0.302373, part variation 1.042327, 27.9 % of the total, ndc 4 (1.41 · 1.042 / 0.302 = 4.86). Data and
/// figures from memory; the analysis was worked out anew from these data with R 4.2.2 (Debian's r-base-core), seen:
/// anova(lm(y ~ part * person)) has F 0.434 for the interaction (0.974), which goes into the error, and the mean squares
/// of anova(lm(y ~ part + person)) give the figures below.
#include <gmock/gmock.h>
#include <measure/gauge_study.h>

using namespace caprail;

namespace {

constexpr double a[3][10] = {{0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36},
                             {0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25},
                             {0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31}};
constexpr double b[3][10] = {{0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68},
                             {0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62},
                             {0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50}};
constexpr double c[3][10] = {{0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49},
                             {-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77},
                             {-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16}};

std::vector<StudyReading> study() {
    std::vector<StudyReading> readings;
    const auto take = [&](const char* person, const double (&trials)[3][10]) {
        for (int pass = 1; pass <= 3; ++pass) {
            for (int part = 0; part < 10; ++part) {
                readings.push_back({person, "part " + std::to_string(part + 1), pass, millimetres(trials[pass - 1][part])});
            }
        }
    };
    take("A", a);
    take("B", b);
    take("C", c);
    return readings;
}

} // namespace

TEST(GaugeStudyOfAiag, gives_the_published_variation_and_categories) {
    const auto result = gaugeStudy(study(), Band::between(millimetres(-2), millimetres(2)).value(), {});
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->study.repeatability / 1e6, 0.1999332, 1e-6);
    EXPECT_NEAR(result->study.reproducibility / 1e6, 0.2268375, 1e-6);
    EXPECT_NEAR(result->gauge / 1e6, 0.3023715, 1e-6);
    EXPECT_NEAR(result->study.placeToPlace / 1e6, 1.042327, 1e-5);
    EXPECT_NEAR(result->shareOfTotal, 0.2786065, 1e-6);
    EXPECT_EQ(result->categories, 4);
    EXPECT_NEAR(*result->shareOfTolerance, 6 * 0.302373 / 4, 1e-5);
    EXPECT_THAT(result->sentence, testing::HasSubstr("cannot tell good from bad"));
}
