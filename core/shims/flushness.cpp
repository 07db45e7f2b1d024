// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <shims/flushness.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr int terms = 4;
using Row = std::array<double, terms>;

struct Fit {
    std::array<std::optional<double>, terms> coefficient;
    std::vector<double> residual;
};

using Triangle = std::array<std::array<double, terms>, terms>;

/// Column j is a sum of the free ones before it: none of those with a share in it can be told from term j.
void leaveOpen(Fit& fit, const Triangle& r, const std::array<bool, terms>& isFree, std::size_t j) {
    std::array<double, terms> share{};
    for (std::size_t k = j; k-- > 0;) {
        if (!isFree[k]) {
            continue;
        }
        double value = r[k][j];
        for (std::size_t m = k + 1; m < j; ++m) {
            value -= r[k][m] * share[m];
        }
        share[k] = value / r[k][k];
        if (std::abs(share[k]) > 1e-6) { // the columns are all of one size
            fit.coefficient[k].reset();
        }
    }
}

/// Orthogonal columns by modified Gram-Schmidt. A column that lies within those before it gives a way to change the
/// terms that no place notices; every term that such a way changes is left open, not only the last one.
Fit leastSquares(const std::vector<Row>& rows, const std::vector<double>& values) {
    const std::size_t n = rows.size();
    std::array<std::vector<double>, terms> q;
    Triangle r{};
    std::array<bool, terms> isFree{};
    Fit fit{{}, values};
    std::array<double, terms> projection{};
    for (std::size_t j = 0; j < terms; ++j) {
        std::vector<double> column(n);
        double whole = 0;
        for (std::size_t i = 0; i < n; ++i) {
            column[i] = rows[i][j];
            whole += column[i] * column[i];
        }
        for (std::size_t k = 0; k < j; ++k) {
            if (!isFree[k]) {
                continue;
            }
            double dot = 0;
            for (std::size_t i = 0; i < n; ++i) {
                dot += q[k][i] * column[i];
            }
            r[k][j] = dot;
            for (std::size_t i = 0; i < n; ++i) {
                column[i] -= dot * q[k][i];
            }
        }
        double left = 0;
        for (const double x : column) {
            left += x * x;
        }
        isFree[j] = n > 0 && left > 1e-12 * std::max(whole, 1e-300);
        if (!isFree[j]) {
            continue;
        }
        r[j][j] = std::sqrt(left);
        for (double& x : column) {
            x /= r[j][j];
        }
        q[j] = std::move(column);
        for (std::size_t i = 0; i < n; ++i) {
            projection[j] += q[j][i] * fit.residual[i];
        }
        for (std::size_t i = 0; i < n; ++i) {
            fit.residual[i] -= projection[j] * q[j][i];
        }
    }
    for (std::size_t j = terms; j-- > 0;) {
        if (!isFree[j]) {
            continue;
        }
        double value = projection[j];
        for (std::size_t k = j + 1; k < terms; ++k) {
            value -= r[j][k] * fit.coefficient[k].value_or(0);
        }
        fit.coefficient[j] = value / r[j][j];
    }
    for (std::size_t j = 0; j < terms; ++j) {
        if (!isFree[j]) {
            leaveOpen(fit, r, isFree, j);
        }
    }
    return fit;
}

} // namespace

Flushness flushnessOf(std::span<const HeightAt> heights) {
    Flushness f;
    if (heights.empty()) {
        f.sentence = Core::say("No place has a residual yet.");
        return f;
    }
    const auto along = [](const HeightAt& h) { return static_cast<double>(h.along.value()); };
    const auto [first, last] = std::minmax_element(heights.begin(), heights.end(),
                                                   [&](const auto& a, const auto& b) { return along(a) < along(b); });
    const double middle = (along(*first) + along(*last)) / 2;
    const double halfLength = (along(*last) - along(*first)) / 2;
    std::vector<Row> rows;
    std::vector<double> values;
    for (const HeightAt& h : heights) {
        // x runs from −1 to +1 over the bolted span, so that every column is of one size.
        const double x = halfLength > 0 ? (along(h) - middle) / halfLength : 0.0;
        const double s = h.side < 0 ? -1.0 : 1.0;
        rows.push_back({1.0, x, s, x * s});
        values.push_back(static_cast<double>(h.residual.value()));
    }
    const Fit fit = leastSquares(rows, values);
    const auto over = [](std::optional<double> coefficient) {
        return coefficient ? std::optional(2 * *coefficient) : std::nullopt;
    };
    f.offset = fit.coefficient[0];
    f.pitch = over(fit.coefficient[1]);
    f.roll = over(fit.coefficient[2]);
    f.twist = over(fit.coefficient[3]);
    f.localError = fit.residual;
    std::string unknown;
    const auto name = [&](bool isMissing, const char* term) {
        unknown += isMissing ? (unknown.empty() ? "" : ", ") + Core::say(term) : "";
    };
    name(!f.offset, Core::mark("offset"));
    name(!f.pitch, Core::mark("pitch"));
    name(!f.roll, Core::mark("roll"));
    name(!f.twist, Core::mark("twist"));
    if (!unknown.empty()) {
        f.sentence = halfLength > 0
                         ? Core::say("The places that have a residual cannot tell %1: that takes two caps on each "
                                     "side.",
                                     unknown)
                         : Core::say("The places that have a residual cannot tell %1: only one cap is tied.", unknown);
    }
    return f;
}

} // namespace caprail
