// SPDX-License-Identifier: GPL-3.0-or-later
// The flushness fit against an independent least-squares solver: Eigen 3.4, ColPivHouseholderQR (library documentation,
// "Solving linear least squares systems"; from memory). The model, r ≈ a + b·x + c·s + d·x·s, is the job's own.
#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <random>
#include <shims/flushness.h>

using namespace caprail;

namespace {

void compare(const std::vector<HeightAt>& heights) {
    const auto n = static_cast<Eigen::Index>(heights.size());
    double first = 1e300;
    double last = -1e300;
    for (const HeightAt& h : heights) {
        first = std::min(first, inMillimetres(h.along));
        last = std::max(last, inMillimetres(h.along));
    }
    // Plain millimetres from the first cap on: unlike the code under test, neither centred nor scaled.
    Eigen::MatrixXd a(n, 4);
    Eigen::VectorXd r(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const HeightAt& h = heights[static_cast<std::size_t>(i)];
        const double x = inMillimetres(h.along) - first;
        a.row(i) << 1, x, h.side, x * h.side;
        r(i) = static_cast<double>(h.residual.value());
    }
    const Eigen::VectorXd fit = a.colPivHouseholderQr().solve(r);
    const Eigen::VectorXd left = r - a * fit;
    const double span = last - first;
    const double middle = span / 2;
    const Flushness f = flushnessOf(heights);
    ASSERT_TRUE(f.offset && f.pitch && f.roll && f.twist);
    const double tolerance = 1e-6; // nanometres
    EXPECT_NEAR(*f.offset, fit(0) + fit(1) * middle, tolerance);
    EXPECT_NEAR(*f.pitch, fit(1) * span, tolerance);
    EXPECT_NEAR(*f.roll, 2 * (fit(2) + fit(3) * middle), tolerance);
    EXPECT_NEAR(*f.twist, fit(3) * span, tolerance);
    for (Eigen::Index i = 0; i < n; ++i) {
        EXPECT_NEAR(f.localError[static_cast<std::size_t>(i)], left(i), tolerance);
    }
}

} // namespace

TEST(FlushnessAgainstEigen, agrees_for_three_to_nine_caps_with_and_without_missing_places) {
    std::mt19937 random(1974);
    const auto upTo = [&random](int n) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 300; ++round) {
        SCOPED_TRACE(round);
        const int caps = 3 + round % 7;
        std::vector<HeightAt> heights;
        for (int cap = 0; cap < caps; ++cap) {
            for (int side : {-1, 1}) {
                heights.push_back(
                    {inches(4.4) * cap + thou(static_cast<double>(upTo(50))), side, nanometres(upTo(50'000) - 25'000)});
            }
        }
        compare(heights);
        // Any two of the inner places may be missing, and every term is still determined.
        heights.erase(heights.begin() + 2 + upTo(static_cast<int>(heights.size()) - 4));
        compare(heights);
    }
}
