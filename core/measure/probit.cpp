// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <base/say.h>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <limits>
#include <measure/probit.h>
#include <numbers>

namespace caprail {

namespace {

/// Φ(x). By the C library's erfc, right to the last digit or two: the profile below asks for it some ten thousand
/// times, and boost's works in long double.
double normalCdf(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

double normalDensity(double x) {
    return std::exp(-x * x / 2) * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

/// log Φ(x), also far out, where Φ itself is nothing.
double logCdf(double x) {
    if (x < -30) {
        return -x * x / 2 - std::log(-x * std::sqrt(2 * std::numbers::pi));
    }
    return std::log(normalCdf(x));
}

double logLikelihood(std::span<const Response> responses, double intercept, double slope) {
    double sum = 0;
    for (const Response& r : responses) {
        const double eta = intercept + slope * r.dose;
        const auto yes = static_cast<double>(r.successes);
        const auto no = static_cast<double>(r.trials - r.successes);
        sum += (yes > 0 ? yes * logCdf(eta) : 0) + (no > 0 ? no * logCdf(-eta) : 0);
    }
    return sum;
}

/// Of the saturated model: each dose with its own share.
double bestPossible(std::span<const Response> responses) {
    double sum = 0;
    for (const Response& r : responses) {
        const auto n = static_cast<double>(r.trials);
        const auto yes = static_cast<double>(r.successes);
        sum += (yes > 0 ? yes * std::log(yes / n) : 0) + (n > yes ? (n - yes) * std::log((n - yes) / n) : 0);
    }
    return sum;
}

/// What one step of weighted least squares sums up.
struct Sums {
    double w = 0, wx = 0, wxx = 0, wz = 0, wxz = 0;
    [[nodiscard]] double determinant() const { return w * wxx - wx * wx; }
};

Sums sumsAt(std::span<const Response> responses, double intercept, double slope) {
    Sums s;
    for (const Response& r : responses) {
        const double eta = std::clamp(intercept + slope * r.dose, -8.0, 8.0);
        const double p = normalCdf(eta);
        const double density = normalDensity(eta);
        const double weight = static_cast<double>(r.trials) * density * density / (p * (1 - p));
        const double share = static_cast<double>(r.successes) / static_cast<double>(r.trials);
        const double working = eta + (share - p) / density;
        s.w += weight;
        s.wx += weight * r.dose;
        s.wxx += weight * r.dose * r.dose;
        s.wz += weight * working;
        s.wxz += weight * r.dose * working;
    }
    return s;
}

/// Whether some dose parts the yes from the no, leaving at most that dose itself mixed.
bool isParted(std::span<const Response> responses) {
    const auto parts = [&](double sign) {
        double lowestYes = std::numeric_limits<double>::infinity();
        double highestNo = -std::numeric_limits<double>::infinity();
        for (const Response& r : responses) {
            lowestYes = r.successes > 0 ? std::min(lowestYes, sign * r.dose) : lowestYes;
            highestNo = r.successes < r.trials ? std::max(highestNo, sign * r.dose) : highestNo;
        }
        return lowestYes >= highestNo;
    };
    return parts(1) || parts(-1);
}

/// The greatest likelihood when the given share is reached at `dose`, over all slopes that are not below zero.
double profile(std::span<const Response> responses, double dose, double z, double steepest) {
    const auto loss = [&](double slope) { return -logLikelihood(responses, z - slope * dose, slope); };
    const auto [slope, least] = boost::math::tools::brent_find_minima(loss, 0.0, steepest, 30);
    return -std::min({least, loss(steepest), loss(0.0)});
}

} // namespace

double ProbitFit::middleError() const {
    const double m = middle();
    return std::sqrt(interceptError * interceptError + 2 * m * covariance + m * m * slopeError * slopeError) /
           std::abs(slope);
}

double ProbitFit::spreadError() const {
    return slopeError / (slope * slope);
}

Result<ProbitFit> probitFit(std::span<const Response> responses) {
    std::vector<double> doses;
    for (const Response& r : responses) {
        if (r.trials == 0 || r.successes > r.trials || !std::isfinite(r.dose)) {
            return refuse(Core::say("Of the answers at one step, none or more than all are counted: look at them."));
        }
        doses.push_back(r.dose);
    }
    std::ranges::sort(doses);
    doses.erase(std::unique(doses.begin(), doses.end()), doses.end());
    if (doses.size() < 2) {
        return refuse(Core::say("Answers at two different steps or more are needed."));
    }
    if (isParted(responses)) {
        return refuse(Core::say("One step parts all answers, so their spread is smaller than the steps tried can show: "
                                "try steps between."));
    }
    ProbitFit fit;
    Sums sums;
    constexpr int mostRounds = 100;
    for (int round = 0; round < mostRounds; ++round) {
        sums = sumsAt(responses, fit.intercept, fit.slope);
        const double slope = (sums.w * sums.wxz - sums.wx * sums.wz) / sums.determinant();
        const double intercept = (sums.wz - slope * sums.wx) / sums.w;
        const double change = std::abs(slope - fit.slope) + std::abs(intercept - fit.intercept);
        fit.intercept = intercept;
        fit.slope = slope;
        if (change < 1e-10 * (std::abs(slope) + std::abs(intercept))) {
            break;
        }
    }
    sums = sumsAt(responses, fit.intercept, fit.slope);
    fit.interceptError = std::sqrt(sums.wxx / sums.determinant());
    fit.slopeError = std::sqrt(sums.w / sums.determinant());
    fit.covariance = -sums.wx / sums.determinant();
    fit.logLikelihood = logLikelihood(responses, fit.intercept, fit.slope);
    fit.deviance = 2 * (bestPossible(responses) - fit.logLikelihood);
    return fit;
}

std::optional<double> upperDose(std::span<const Response> responses, double share, double confidence) {
    if (responses.size() < 2) {
        return {};
    }
    const double lowest = std::ranges::min(responses, {}, &Response::dose).dose;
    const double highest = std::ranges::max(responses, {}, &Response::dose).dose;
    const double range = highest - lowest;
    if (!(range > 0)) {
        return {};
    }
    double finest = range;
    for (const Response& a : responses) {
        for (const Response& b : responses) {
            finest = a.dose > b.dose ? std::min(finest, a.dose - b.dose) : finest;
        }
    }
    const double z = boost::math::quantile(boost::math::normal_distribution<double>(), share);
    const double steepest = 20 / finest; // within the finest step from never to always
    constexpr std::size_t looks = 121;
    const auto doseAt = [&](std::size_t look) {
        return lowest - range + 3 * range * static_cast<double>(look) / (looks - 1);
    };
    std::array<double, looks> likelihoods{};
    for (std::size_t i = 0; i < looks; ++i) {
        likelihoods[i] = profile(responses, doseAt(i), z, steepest);
    }
    const boost::math::chi_squared_distribution<double> chi(1);
    const double admitted = std::ranges::max(likelihoods) - boost::math::quantile(chi, 2 * confidence - 1) / 2;
    if (likelihoods.back() >= admitted) {
        return {}; // no bound within what was tried and as much again
    }
    std::size_t last = looks - 1;
    while (likelihoods[last] < admitted) {
        --last; // at the greatest of them it stops
    }
    double inside = doseAt(last);
    double outside = doseAt(looks - 1);
    for (int i = 0; i < 40; ++i) {
        const double half = (inside + outside) / 2;
        (profile(responses, half, z, steepest) >= admitted ? inside : outside) = half;
    }
    return outside;
}

} // namespace caprail
